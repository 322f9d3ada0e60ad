import { describe, expect, it } from "vitest";
import type { Swap } from "../../../src/domain/model/line.js";
import { checkBundle } from "../../../src/domain/plan/check/check-bundle.js";
import { scalePlan } from "../../../src/domain/plan/scale-plan.js";
import {
  bundle,
  component,
  food,
  household,
  line,
  made,
  meal,
  measured,
  plan,
  step,
  swap,
} from "../../kit/builders.js";

const frying = (own: Swap["own"]) => {
  const tofu: Swap = { ...swap("tofu"), ...(own === undefined ? {} : { own }) };
  const omelette = component("omelette", "180 g", [line("200 g", "egg", { preparation: "beaten", swaps: [tofu] })], {
    steps: [step("fry", 5), step("rest", 3)],
    keepsAs: "cooked-egg",
  });
  return bundle(plan([meal("supper", [line("180 g", made("omelette"))])]), [omelette], [food("egg"), food("tofu")]);
};
const vegan = household({ swaps: [{ from: "egg", to: "tofu" }] });
const scaled = (own: Swap["own"], who = vegan) => {
  const result = scalePlan(frying(own), 2, who);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value.components[0]!;
};

describe("a food that stands in for another", () => {
  it("is not prepared as the other was", () => {
    expect(scaled(undefined).lines[0]?.line.preparation).toBeNull();
    expect(scaled({ preparation: "crumbled" }).lines[0]?.line.preparation).toBe("crumbled");
    expect(scaled({ preparation: "crumbled" }, household()).lines[0]?.line.preparation).toBe("beaten");
  });

  it("brings its own minutes and words, and leaves other steps", () => {
    const { component: swapped } = scaled({ steps: [{ id: "fry", text: "Fry until brown.", minutes: 12 }] });
    expect(swapped.steps.map(({ id, minutes }) => [id, minutes])).toEqual([
      ["fry", 12],
      ["rest", 3],
    ]);
    expect(swapped.steps[0]?.text).toBe("Fry until brown.");
    const asWritten = scaled({ steps: [{ id: "fry", minutes: 12 }] }, household()).component;
    expect(asWritten.steps[0]?.minutes).toBe(5);
  });

  it("brings its own yield and class", () => {
    const { component: swapped, batches } = scaled({ yield: measured("90 g"), keepsAs: "cooked-vegetable" });
    expect(swapped.keepsAs).toBe("cooked-vegetable");
    expect(batches).toBeCloseTo(scaled(undefined).batches * 2, 9);
    expect(scaled({ keepsAs: "cooked-vegetable" }, household()).component.keepsAs).toBe("cooked-egg");
  });

  it.each([
    ["a step that is none", { steps: [{ id: "bake", minutes: 5 }] }, "fry | rest"],
    ["minutes that are none", { steps: [{ id: "fry", minutes: -1 }] }, "minutes"],
    ["a yield of another kind", { yield: measured("2 piece") }, "g"],
  ] as const)("is refused with %s, and says what is there", (_, own, expected) => {
    const problems = checkBundle(frying(own));
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ path: expect.arrayContaining(["components", "omelette", "swaps", "tofu"]) });
    expect(JSON.stringify(problems[0])).toContain(expected);
  });

  it("brings no yield and no class to a meal, which has none", () => {
    const own = { yield: measured("90 g"), keepsAs: "cooked-vegetable" };
    const salad = bundle(
      plan([meal("salad", [line("100 g", "egg", { swaps: [{ ...swap("tofu"), own }] })])]),
      [],
      [food("egg"), food("tofu")],
    );
    expect(checkBundle(salad).map(({ code }) => code)).toEqual(["BAD_SHAPE", "BAD_SHAPE"]);
  });
});
