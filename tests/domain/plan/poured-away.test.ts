import { describe, expect, it } from "vitest";
import type { Component } from "../../../src/domain/model/component.js";
import type { Line } from "../../../src/domain/model/line.js";
import { noHousehold } from "../../../src/domain/model/household.js";
import { planNutrition } from "../../../src/domain/plan/contents/contents.js";
import { scalePlan } from "../../../src/domain/plan/scale-plan.js";
import { bundle, component, density, food, invented, line, made, meal, step } from "../../kit/builders.js";

// Common practice, no source: dissolved salt x poured / all water at draining. Figures of salt and water: USDA SR 26, NDB 02047, 14411.
const salt = food("salt", { nutrients: { per100g: { energyKcal: 0, sodiumMg: 38_758 }, source: invented } });
const water = food("water", {
  shoppedBy: "VOLUME",
  nutrients: { per100g: { energyKcal: 0, sodiumMg: 4, waterG: 99.9 }, source: invented },
});
const foods = [salt, water];

const grains: readonly Line[] = [
  { ...line("400 g", "barley"), id: "grain" },
  { ...line("1600 ml", "water"), id: "water" },
  { ...line("8 g", "salt"), id: "salt" },
];
const boil = step("boil", 40, { appliance: "hob-ring", lines: ["grain", "water", "salt"] });
const drain = step("drain", 3, { after: ["boil"], appliance: "sink" });

const pot = (facts: Partial<Component>, yields = "1150 g"): Component => ({
  ...component("boiled", yields, [], { lines: grains, ...facts }),
});

/** Grams of the salt that are eaten of one batch, and why not the rest. */
function saltEaten(made_: Component, extra: readonly Line[] = []) {
  const scaled = scalePlan(
    bundle([meal("m", [line("1 batch", made("boiled")), ...extra])], [made_], foods),
    1,
    noHousehold,
  );
  if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
  const { plan } = planNutrition(scaled.value, 1);
  const why = plan.notEaten.find((each) => each.food === "salt")?.why ?? [];
  const sodium = plan.nutrients.sodiumMg?.total;
  const ofWater = (plan.notEaten.find((each) => each.food === "water")?.share?.low ?? 0) * 1600;
  // What the water that stays brings itself.
  const grams = ((sodium?.low ?? 0) - (1600 - ofWater) * 0.04) / 387.58;
  return { grams, why, plan };
}

describe("the salt of drained water", () => {
  it("goes in the share of the water that is poured away: 850 of 1600 ml, 3.75 of 8 g stay", () => {
    const { grams, why, plan } = saltEaten(pot({ steps: [boil, { ...drain, drains: true }] }));
    expect(grams).toBeCloseTo(3.75, 9);
    expect(why).toEqual(["DRAINED"]);
    expect(plan.notEaten.map((each) => [each.food, each.share?.low])).toEqual([
      ["water", 850 / 1600],
      ["salt", 850 / 1600],
    ]);
  });

  it("stays where nothing is drained, and where the writer says that a step does not drain", () => {
    expect(saltEaten(pot({ steps: [boil] })).grams).toBeCloseTo(8, 9);
    expect(saltEaten(pot({ steps: [boil, { ...drain, drains: false }], keepsAs: "cooked-grain" })).grams).toBeCloseTo(
      8,
      9,
    );
  });

  it("stays where it goes in after the draining, with it, or in no step at all", () => {
    const later = step("dress", 2, { after: ["drain"], lines: ["salt"] });
    const unsalted = { ...boil, lines: ["grain", "water"] };
    const drained = { ...drain, drains: true };
    expect(saltEaten(pot({ steps: [unsalted, drained, later] })).grams).toBeCloseTo(8, 9);
    expect(saltEaten(pot({ steps: [unsalted, { ...drained, lines: ["salt"] }] })).grams).toBeCloseTo(8, 9);
    expect(saltEaten(pot({ steps: [unsalted, drained] })).grams).toBeCloseTo(8, 9);
  });

  it("is of the last water only: a soak that is thrown away, or drained before, holds none of it", () => {
    const soaked = [...grains, { ...line("2000 ml", "water"), id: "soak" }];
    const soak = step("soak", 600, { lines: ["grain", "soak"] });
    const rinse = step("rinse", 3, { after: ["soak"], appliance: "sink", drains: true });
    const steps = [soak, rinse, { ...boil, after: ["rinse"] }, { ...drain, drains: true }];
    expect(scaledShare(pot({ lines: soaked, steps }))).toBeCloseTo(850 / 1600, 9);
    const thrown = soaked.map((each) => (each.id === "soak" ? { ...each, eaten: "0" } : each));
    const unmarked = steps.map((each) => (each.id === "rinse" ? { ...each, drains: false } : each));
    expect(scaledShare(pot({ lines: thrown, steps: unmarked }))).toBeCloseTo(850 / 1600, 9);
  });

  it("is left to the writer, who may say what of it is eaten", () => {
    const said = grains.map((each) => (each.id === "salt" ? { ...each, eaten: "2/5" } : each));
    const { grams, why } = saltEaten(pot({ lines: said, steps: [boil, { ...drain, drains: true }] }));
    expect(grams).toBeCloseTo(3.2, 9);
    expect(why).toEqual(["STATED"]);
  });

  it("is counted whole, and said to be, where nobody weighed what is drained or the weights contradict each other", () => {
    const steps = [boil, { ...drain, drains: true }];
    const poured = saltEaten(pot({ steps }, "1000 ml"));
    expect(poured.grams).toBeCloseTo(8, 9);
    expect(poured.why).toEqual(["DRAINED_UNWEIGHED"]);
    expect(saltEaten(pot({ steps }, "380 g")).why).toEqual(["DRAINED_UNWEIGHED"]);
    expect(saltEaten(pot({ steps, densities: [density(1.15)] }, "1000 ml")).grams).toBeCloseTo(3.75, 9);
  });

  it("follows the pot as it grows: water by the started batch, salt below proportion", () => {
    const grown = grains.map((each): Line => {
      if (each.id === "water") return { ...each, rule: "PER_BATCH" };
      return each.id === "salt" ? { ...each, rule: "POWER", exponent: 0.85 } : each;
    });
    const steps = [boil, { ...drain, drains: true }];
    const of = bundle([meal("m", [line("3/2 batch", made("boiled"))])], [pot({ lines: grown, steps })], foods);
    const scaled = scalePlan(of, 1, noHousehold);
    if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
    const share = planNutrition(scaled.value, 1).plan.notEaten.find((each) => each.food === "salt")?.share;
    // 1.5 batches stand in 2 x 1600 ml and take up 1.5 x 750.
    expect(share?.low).toBeCloseTo(1 - (1.5 * 750) / 3200, 9);
  });

  describe("of a boiled pulse or grain whose steps do not say", () => {
    const byClass = (facts: Partial<Component>, yields?: string) =>
      saltEaten(pot({ keepsAs: "cooked-grain", ...facts }, yields));

    it("goes the same way, and the answer says on what ground", () => {
      const { grams, why } = byClass({ steps: [boil, drain] });
      expect(grams).toBeCloseTo(3.75, 9);
      expect(why).toEqual(["DRAINED_BY_CLASS"]);
      expect(byClass({ steps: [boil], keepsAs: "cooked-vegetable" }).grams).toBeCloseTo(8, 9);
    });

    it("goes from the pot in which it boils, in the same step or a later one on the same heat", () => {
      const first = { ...boil, lines: ["grain", "water"] };
      const simmer = step("simmer", 5, { after: ["boil"], appliance: "hob-ring", lines: ["salt"] });
      expect(byClass({ steps: [first, simmer, { ...drain, after: ["simmer"] }] }).grams).toBeCloseTo(3.75, 9);
      const fry = { ...simmer, after: ["drain"] };
      expect(byClass({ steps: [first, drain, fry] }).grams).toBeCloseTo(8, 9);
      const dress = step("dress", 5, { after: ["drain"], lines: ["salt"] });
      expect(byClass({ steps: [first, drain, dress] }).grams).toBeCloseTo(8, 9);
    });

    it("stays where so little water is left over that it may as well boil off: bulgur, rice by absorption", () => {
      const absorbed = {
        lines: grains.map((each) => (each.id === "water" ? { ...line("800 ml", "water"), id: "water" } : each)),
      };
      expect(byClass({ ...absorbed, steps: [boil] }).why).toEqual([]);
    });
  });

  it("is counted whole in a meal that drains, since nobody says what the meal takes up", () => {
    const cooked = meal("m", [line("320 g", "pasta"), line("3 l", "water"), line("20 g", "salt")], {
      steps: [
        step("boil", 10, { lines: ["pasta", "water", "salt"] }),
        step("drain", 1, { after: ["boil"], drains: true }),
      ],
    });
    const lines = cooked.lines.map((each, at) => ({ ...each, id: ["pasta", "water", "salt"][at] ?? "" }));
    const scaled = scalePlan(bundle([{ ...cooked, lines }], [], foods), 1, noHousehold);
    if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
    const { plan } = planNutrition(scaled.value, 1);
    expect(plan.notEaten.map((each) => [each.food, each.why])).toEqual([
      ["water", ["DRAINED_UNWEIGHED"]],
      ["salt", ["DRAINED_UNWEIGHED"]],
    ]);
    expect(plan.gramsPerServing).toBeNull();
    expect(plan.nutrients.sodiumMg).toMatchObject({ atLeast: false });
  });
});

function scaledShare(made_: Component): number | undefined {
  return saltEaten(made_).plan.notEaten.find((each) => each.food === "salt")?.share?.low;
}
