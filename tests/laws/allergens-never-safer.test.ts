import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { AllergenPresence } from "../../src/domain/model/food.js";
import { allergenCodes, groupOf } from "../../src/domain/nutrition/allergen-codes.js";
import { allergenStatement } from "../../src/domain/nutrition/allergens.js";
import { dietStatements, type DietFood } from "../../src/domain/nutrition/diets.js";
import { invented } from "../kit/builders.js";
import { publishedRules } from "../imports/rules/published-rules.js";
import { fits, has } from "../domain/nutrition/allergen-foods.js";

const { allergens: rules } = publishedRules;
const region = fc.constantFrom(null, "US", "FR", "GB", "CA", "NZ", "XA");
const today = "2026-11-25";

/** What is really in a food, and some of the true things that could be said about it. */
interface Truth {
  readonly contains: ReadonlySet<string>;
  readonly animal: boolean;
  readonly food: DietFood;
}

const groups = ["gluten", "tree-nut"];
const leaves = allergenCodes.filter((code) => !groups.includes(code));

const truth: fc.Arbitrary<Truth> = fc
  .record({
    slug: fc.constantFrom("a", "b", "c", "d"),
    inside: fc.subarray([...leaves], { maxLength: 3 }),
    animal: fc.boolean(),
    said: fc.oneof(fc.subarray([...allergenCodes]), fc.constant([...allergenCodes])),
    vague: fc.subarray([...allergenCodes], { maxLength: 3 }),
    diets: fc.subarray(["vegan", "gluten-free", "no-milk"]),
    single: fc.boolean(),
  })
  .map(({ slug, inside, animal, said, vague, diets, single }) => {
    const members = inside.flatMap((code) => groupOf(code) ?? []);
    const contains = new Set<string>([...inside, ...members]);
    const presence = (code: string): AllergenPresence => (contains.has(code) ? "CONTAINS" : "DOES_NOT_CONTAIN");
    const really: Readonly<Record<string, boolean>> = {
      vegan: !animal && !["milk", "egg", "fish", "crustacean", "mollusc"].some((code) => contains.has(code)),
      "gluten-free": !contains.has("gluten"),
      "no-milk": !contains.has("milk"),
    };
    const allergens = [
      ...said.filter((code) => !vague.includes(code)).map((code) => has(code, presence(code))),
      ...vague.map((code) => has(code, contains.has(code) ? "MAY_CONTAIN" : "UNKNOWN")),
    ];
    return {
      contains,
      animal,
      food: {
        slug,
        allergens,
        diets: diets.map((diet) => fits(diet, really[diet] ?? null)),
        // Who says so has listed what the ingredient is itself.
        ...(single ? { singleIngredient: { is: [...contains], source: invented } } : {}),
      },
    };
  });

const dish = fc.array(truth, { minLength: 1, maxLength: 4 });

/** The dish with one fact less: the n-th of all that is known. That something is not known is a doubt, not a fact. */
function without(foods: readonly DietFood[], at: number) {
  const facts = foods.flatMap(({ allergens, diets, singleIngredient }) => [
    ...allergens.filter(({ presence }) => presence !== "UNKNOWN"),
    ...diets,
    ...(singleIngredient ? [singleIngredient] : []),
  ]);
  const forgotten = facts[at % Math.max(1, facts.length)];
  const rest = foods.map(({ singleIngredient, ...food }): DietFood => ({
    ...food,
    ...(singleIngredient && singleIngredient !== forgotten ? { singleIngredient } : {}),
    allergens: food.allergens.filter((each) => each !== forgotten),
    diets: food.diets.filter((each) => each !== forgotten),
  }));
  // "May contain" is known of traces, and a doubt about the ingredient, which is what diets are judged by.
  const isDoubt = forgotten !== undefined && "presence" in forgotten && forgotten.presence === "MAY_CONTAIN";
  return { rest, isDoubt };
}

describe("what is said about allergens and diets", () => {
  it("is never that something is absent which is there", () => {
    fc.assert(
      fc.property(dish, region, (truths, where) => {
        const inside = new Set(truths.flatMap(({ contains }) => [...contains]));
        const foods = truths.map(({ food }) => food);
        const { findings } = allergenStatement(foods, rules, where, today);
        const lists = rules.lists.flatMap(({ entries }) => entries);
        for (const { code, presence } of findings) {
          const least = lists.filter((entry) => entry.code === code).map(({ includes }) => includes);
          const common = leaves.filter((leaf) => least.every((includes) => includes.includes(leaf)));
          if (presence === "DOES_NOT_CONTAIN") expect(common.filter((leaf) => inside.has(leaf))).toEqual([]);
        }
        for (const { diet, fits: met } of dietStatements(foods, rules, where)) {
          if (met !== true) continue;
          if (diet === "vegan") expect(truths.some(({ animal }) => animal)).toBe(false);
          const broken = { "gluten-free": "gluten", "no-milk": "milk", "no-tree-nuts": "almond", "no-egg": "egg" }[
            diet
          ];
          if (broken !== undefined) expect([...inside]).not.toContain(broken);
        }
      }),
      { numRuns: 400 },
    );
  });

  it("becomes no safer by forgetting a fact", () => {
    fc.assert(
      fc.property(dish, region, fc.nat(500), (truths, where, at) => {
        const before = truths.map(({ food }) => food);
        const { rest: after, isDoubt } = without(before, at);
        const absent = (foods: readonly DietFood[]): readonly string[] =>
          allergenStatement(foods, rules, where, today).findings.flatMap(({ code, presence, asIngredient, traces }) =>
            Object.entries({ both: presence, ingredient: asIngredient.presence, traces }).flatMap(([about, said]) =>
              said === "DOES_NOT_CONTAIN" ? [`${about} ${code}`] : [],
            ),
          );
        // A list leaves some nuts out (chestnuts in the EU). Beside "none on the list" those are named, so that is no "none".
        const { alsoContains } = allergenStatement(after, rules, where, today);
        const named = new Set<string | null>(alsoContains.map(({ code }) => groupOf(code)));
        const none = absent(after).filter((each) => !named.has(each.replace(/^\w+ /, "")));
        const met = (foods: readonly DietFood[]): readonly string[] =>
          dietStatements(foods, rules, where).flatMap((each) => (each.fits === true ? [each.diet] : []));
        expect(absent(before)).toEqual(expect.arrayContaining([...none]));
        if (!isDoubt) expect(met(before)).toEqual(expect.arrayContaining([...met(after)]));
      }),
      { numRuns: 400 },
    );
  });

  it("becomes no safer by adding a food of which nobody knows anything", () => {
    fc.assert(
      fc.property(dish, region, (truths, where) => {
        const foods = [...truths.map(({ food }) => food), { slug: "mystery", allergens: [], diets: [] }];
        for (const finding of allergenStatement(foods, rules, where, today).findings) {
          expect(finding.presence).not.toBe("DOES_NOT_CONTAIN");
          expect(finding.unknown).toContain("mystery");
        }
        for (const each of dietStatements(foods, rules, where)) expect(each.fits).not.toBe(true);
      }),
    );
  });

  it("hides nothing known by what is not known: a food, a doubt, or somebody who says less", () => {
    const known = (foods: readonly DietFood[], where: string | null): readonly string[] => {
      const { findings } = allergenStatement(foods, rules, where, today);
      const broken = dietStatements(foods, rules, where).flatMap((each) => (each.fits === false ? [each.diet] : []));
      return [...findings.flatMap(({ code, presence }) => (presence === "CONTAINS" ? [code] : [])), ...broken];
    };
    fc.assert(
      fc.property(dish, region, fc.constantFrom(...allergenCodes), (truths, where, doubted) => {
        const foods = truths.map(({ food }) => food);
        const before = known(foods, where);
        const doubts = foods.map((food) => ({ ...food, allergens: [...food.allergens, has(doubted, "UNKNOWN")] }));
        const beside = foods.map((food) => ({ ...food, beside: [{ allergens: [], diets: [] }] }));
        const mystery = [{ slug: "mystery", allergens: [], diets: [] }, ...foods];
        for (const after of [doubts, beside, mystery])
          expect(known(after, where)).toEqual(expect.arrayContaining([...before]));
      }),
    );
  });

  it("becomes no safer by what anybody says beside it", () => {
    fc.assert(
      fc.property(truth, truth, region, ({ food }, other, where) => {
        const safe = (one: DietFood): readonly string[] => [
          ...allergenStatement([one], rules, where, today).findings.flatMap(({ code, presence, asIngredient }) => [
            ...(presence === "DOES_NOT_CONTAIN" ? [code] : []),
            ...(asIngredient.presence === "DOES_NOT_CONTAIN" ? [`ingredient ${code}`] : []),
          ]),
          ...dietStatements([one], rules, where).flatMap(({ diet, fits: met }) => (met === true ? [diet] : [])),
        ];
        const both = safe({ ...food, beside: [other.food] });
        expect(safe(food)).toEqual(expect.arrayContaining([...both]));
        expect(safe(other.food)).toEqual(expect.arrayContaining([...both]));
      }),
    );
  });

  it("does not hang on the order of the foods", () => {
    fc.assert(
      fc.property(dish, region, (truths, where) => {
        const foods = truths.map(({ food }) => food);
        const presences = (of: readonly DietFood[]) =>
          allergenStatement(of, rules, where, today).findings.map(({ presence }) => presence);
        expect(presences(foods.toReversed())).toEqual(presences(foods));
      }),
    );
  });
});
