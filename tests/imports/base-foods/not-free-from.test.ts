import { beforeAll, describe, expect, it } from "vitest";
import type { Food } from "../../../src/domain/model/food.js";
import { excludedBy } from "../../../src/imports/base-foods/base-claims.js";
import { readBase } from "../../kit/base-foods.js";

let foods: ReadonlyMap<string, Food>;
beforeAll(async () => {
  foods = new Map((await readBase()).whole.map((food) => [food.slug, food]));
}, 60_000);

/** Foods that are sold as one ingredient and may hold another all the same. All from memory, where no source is named. */
const notFree: readonly (readonly [slug: string, code: string, why: string])[] = [
  ["cornflour", "wheat", "Australian cornflour is sold of wheat too, and Speisestärke names no plant"],
  ["cornflour", "gluten", "the same"],
  ["icing-sugar", "wheat", "Directive 2001/111/EC, annex: up to 5 % of some starch against lumps"],
  ["glass-noodles", "sulphites", "starches: Regulation (EC) No 1333/2008, annex II, from memory"],
  ["pearl-barley", "sulphites", "Regulation (EC) No 1333/2008, annex II: sago and pearl barley, from memory"],
  ["dried-onion", "sulphites", "Regulation (EC) No 1333/2008, annex II: dried white vegetables, from memory"],
  ["onion-powder", "sulphites", "the same"],
  ["garlic-powder", "sulphites", "the same"],
  ["ground-ginger", "sulphites", "Regulation (EC) No 1333/2008, annex II: dried ginger, from memory"],
  ["frozen-herbs", "celery", "mixtures of herbs"],
  ["frozen-herbs", "mustard", "cress in mixtures of herbs"],
  ["unsweetened-chocolate", "milk", "made on the lines of milk chocolate"],
  ["unsweetened-chocolate", "soy", "lecithin"],
  ["mussels", "crustacean", "small crabs inside; labels warn of them"],
  ["soup-vermicelli", "egg", "German and Polish ones"],
];

describe("a base food", () => {
  it.each(notFree)("is not said to be free from what it may hold: %s from %s (%s)", (slug, code) => {
    expect(foods.get(slug)?.allergens.find((each) => each.code === code)?.presence).toMatch(
      /^(?:UNKNOWN|MAY_CONTAIN)$/u,
    );
  });

  it("that always holds fish, milk or egg fits no diet that leaves them out, not even perhaps", () => {
    const perhaps = [...foods.values()].flatMap(({ slug, allergens, diets }) => {
      const contained = allergens.flatMap(({ code, presence }) => (presence === "CONTAINS" ? [code] : []));
      return diets.flatMap(({ diet, fits }) =>
        diet !== "gluten-free" && fits !== false && excludedBy(diet, contained) !== undefined
          ? [`${slug} ${diet}`]
          : [],
      );
    });
    expect(perhaps).toEqual([]);
  });

  it("of one word that means wheat or rice is a question: German Reisnudeln", () => {
    const named = [...foods.values()].filter(({ names }) =>
      names.some(({ language, one, also }) => language === "de" && [one, ...also].includes("Reisnudeln")),
    );
    expect(named.map(({ slug }) => slug).toSorted()).toEqual(["orzo", "rice-noodles"]);
  });
});
