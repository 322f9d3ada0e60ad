import { describe, expect, it } from "vitest";
import type { AllergenPresence } from "../../../src/domain/model/food.js";
import type { Line } from "../../../src/domain/model/line.js";
import { asStated } from "../../../src/domain/nutrition/diets.js";
import { chooseSwap, swapsNotOffered } from "../../../src/domain/plan/choose-swap.js";
import { food, household, invented, line, made, swap } from "../../kit/builders.js";

const fits = (diet: string, answer: boolean | null) => ({ diet, fits: answer, source: invented });
const foods = new Map(
  [
    food("bulgur", { diets: [fits("gluten-free", false)] }),
    food("buckwheat", { diets: [fits("gluten-free", true), fits("vegan", true)] }),
    food("millet", { diets: [fits("vegan", true)] }),
    food("oats", {}),
  ].map((each) => [each.slug, each]),
);
const chosen = (from: Line, wishes: Parameters<typeof household>[0]) => {
  const { swap: taken, warnings } = chooseSwap(from, household(wishes), foods, asStated, ["meals", "m", "lines", "l1"]);
  return { taken: taken?.food ?? null, warnings };
};
const bulgur = line("200 g", "bulgur", { swaps: [swap("buckwheat"), swap("millet", "1", ["gluten-free"])] });

describe("choosing a swap for a household that avoids an allergen or does not like a food", () => {
  const said = (presence: AllergenPresence) => ({ allergens: [{ code: "milk", presence, source: invented }] });
  const known = new Map(
    [
      food("butter", said("CONTAINS")),
      food("oil", said("DOES_NOT_CONTAIN")),
      food("lard", said("DOES_NOT_CONTAIN")),
      food("spread", {}),
      food("margarine", said("MAY_CONTAIN")),
    ].map((each) => [each.slug, each]),
  );
  const taken = (own: string, swaps: readonly string[], wishes: Parameters<typeof household>[0]) => {
    const written = line("20 g", own, { swaps: swaps.map((each) => swap(each)) });
    const { swap: found, disliked, warnings } = chooseSwap(written, household(wishes), known, asStated, path);
    return [found?.food ?? null, disliked, warnings.map((each) => ("presence" in each ? each.presence : each.code))];
  };
  const path = ["meals", "m", "lines", "l1"];
  const noMilk = { avoidAllergens: ["milk"] };

  it("takes only what is known to be without it: neither what nobody knows nor what may hold traces", () => {
    expect(taken("butter", ["spread", "margarine", "oil"], noMilk)).toEqual(["oil", null, []]);
    expect(taken("butter", ["spread", "margarine"], noMilk)).toEqual([null, null, ["CONTAINS"]]);
    expect(taken("spread", ["oil"], noMilk)).toEqual(["oil", null, []]);
    expect(taken("spread", [], noMilk)).toEqual([null, null, ["UNKNOWN"]]);
    expect(taken("margarine", [], noMilk)).toEqual([null, null, ["MAY_CONTAIN"]]);
    expect(taken("oil", ["butter"], noMilk)).toEqual([null, null, []]);
  });

  it("warns of a swap that is asked for by name and contains it", () => {
    expect(taken("oil", ["butter"], { ...noMilk, swaps: [{ from: "oil", to: "butter" }] })).toEqual([
      "butter",
      null,
      ["CONTAINS"],
    ]);
  });

  it("puts what must not be eaten before what is not liked", () => {
    expect(taken("butter", ["oil", "lard"], { ...noMilk, dislikes: ["oil"] })).toEqual(["lard", null, []]);
    expect(taken("butter", ["oil"], { ...noMilk, dislikes: ["oil"] })).toEqual(["oil", "oil", []]);
    expect(taken("oil", ["butter"], { ...noMilk, dislikes: ["oil"] })).toEqual([null, "oil", []]);
    expect(taken("oil", ["butter"], { dislikes: ["oil"] })).toEqual(["butter", null, []]);
    expect(taken("oil", [], { dislikes: ["oil"] })).toEqual([null, "oil", []]);
  });
});

describe("choosing a swap", () => {
  it("leaves a line alone when nobody wishes anything", () => {
    expect(chosen(bulgur, {})).toEqual({ taken: null, warnings: [] });
  });

  it("takes the swap asked for by name, wherever a line offers it", () => {
    expect(chosen(bulgur, { swaps: [{ from: "bulgur", to: "millet" }] }).taken).toBe("millet");
    expect(chosen(bulgur, { swaps: [{ from: "oats", to: "millet" }] }).taken).toBeNull();
  });

  it("goes on to the reader's next wish where a line does not offer the first, and keeps the reader's order", () => {
    const [first, second] = [
      { from: "bulgur", to: "oats" },
      { from: "bulgur", to: "millet" },
    ];
    expect(chosen(bulgur, { swaps: [first, second] }).taken).toBe("millet");
    const all = [second, { from: "bulgur", to: "buckwheat" }];
    expect(chosen(bulgur, { swaps: all }).taken).toBe("millet");
    expect(chosen(bulgur, { swaps: all.toReversed() }).taken).toBe("buckwheat");
  });

  it("takes the first swap that serves every diet, by the food's own facts before the writer's word", () => {
    expect(chosen(bulgur, { diets: ["gluten-free"] })).toEqual({ taken: "buckwheat", warnings: [] });
    expect(chosen(bulgur, { diets: ["gluten-free", "vegan"] }).taken).toBe("buckwheat");
    const onlyMillet = { ...bulgur, swaps: bulgur.swaps.slice(1) };
    // The writer's word chooses the swap; whether millet fits is still not known, and is said.
    expect(chosen(onlyMillet, { diets: ["gluten-free"] })).toEqual({
      taken: "millet",
      warnings: [
        {
          code: "DIET_NOT_MET",
          path: ["meals", "m", "lines", "l1"],
          diet: "gluten-free",
          item: "millet",
          known: false,
        },
      ],
    });
    const contradicted = line("200 g", "oats", { swaps: [swap("bulgur", "1", ["gluten-free"])] });
    expect(chosen(contradicted, { diets: ["gluten-free"] }).taken).toBeNull();
  });

  it("does not swap what fits already", () => {
    const fitting = line("200 g", "buckwheat", { swaps: [swap("millet", "1", ["gluten-free"])] });
    expect(chosen(fitting, { diets: ["gluten-free"] })).toEqual({ taken: null, warnings: [] });
  });

  it("says of what still does not fit whether that is known, and never takes unknown for fitting", () => {
    const path = ["meals", "m", "lines", "l1"];
    expect(chosen(line("200 g", "bulgur"), { diets: ["gluten-free"] }).warnings).toEqual([
      { code: "DIET_NOT_MET", path, diet: "gluten-free", item: "bulgur", known: true },
    ]);
    expect(chosen(line("200 g", "oats"), { diets: ["gluten-free"] }).warnings).toEqual([
      { code: "DIET_NOT_MET", path, diet: "gluten-free", item: "oats", known: false },
    ]);
    const named = chosen(bulgur, { diets: ["halal"], swaps: [{ from: "bulgur", to: "millet" }] });
    expect(named.warnings).toEqual([{ code: "DIET_NOT_MET", path, diet: "halal", item: "millet", known: false }]);
  });

  it("never swaps a component", () => {
    const dal = line("1 batch", made("dal"), { swaps: [swap("oats")] });
    expect(chosen(dal, { diets: ["gluten-free"], swaps: [{ from: "dal", to: "oats" }] })).toEqual({
      taken: null,
      warnings: [],
    });
  });

  it("names a wish that no line of the plan offers", () => {
    const at = household({
      swaps: [
        { from: "bulgur", to: "millet" },
        { from: "bulgur", to: "oats" },
        { from: "oats", to: "millet" },
      ],
    });
    expect(swapsNotOffered([bulgur, line("1 batch", made("dal"))], at)).toEqual([
      { code: "SWAP_NOT_OFFERED", path: ["household", "swaps"], from: "bulgur", to: "oats" },
      { code: "SWAP_NOT_OFFERED", path: ["household", "swaps"], from: "oats", to: "millet" },
    ]);
  });
});
