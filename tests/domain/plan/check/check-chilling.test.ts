import { describe, expect, it } from "vitest";
import type { Component, Step } from "../../../../src/domain/model/component.js";
import { noHousehold } from "../../../../src/domain/model/household.js";
import type { Meal } from "../../../../src/domain/model/plan.js";
import { checkChilling } from "../../../../src/domain/plan/check/check-chilling.js";
import { scalePlan } from "../../../../src/domain/plan/scale-plan.js";
import { findingText } from "../../../../src/exports/sentences/finding-text.js";
import { findCautions } from "../../../../src/services/answers/state-contents.js";
import { bundle, component, line, made, meal, step } from "../../../kit/builders.js";
import { shippedRules } from "../../../kit/answer-of.js";

// Cooked food is in the refrigerator within two hours (USDA FSIS, Leftovers and Food Safety), rice within one (UK FSA, Home food
// fact checker).

const boil = step("boil", 5, { text: "Boil them.", appliance: "hob-ring", attention: "UNATTENDED" });
const drain = (text: string, facts: Partial<Step> = {}) =>
  step("drain", 2, { text, after: ["boil"], maxWait: 5, ...facts });

const scaledOf = (meals: readonly Meal[], components: readonly Component[]) => {
  const scaled = scalePlan(bundle(meals, components), 1, noHousehold);
  if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
  return scaled.value;
};

const eaten = (slug: string, day: number): Meal => meal("salad", [line("100 g", made(slug))], { day });

const found = (meals: readonly Meal[], components: readonly Component[]) =>
  checkChilling(scaledOf(meals, components), shippedRules.safety.classes).map((each) => [each.code, ...each.path]);

const pot = (steps: readonly Step[], keepsAs: string | null, slug = "pot") =>
  component(slug, "100 g", [line("100 g", "leek")], { steps, keepsAs });

describe("Cooked food that is kept", () => {
  it.each([
    ["prawns", "cooked-fish", 120],
    ["beans", "cooked-legume", 120],
    ["rice", "cooked-rice", 60],
    ["an egg", "cooked-egg", 120],
    ["what nobody classed", null, 120],
  ])("and never chilled is named, and how soon it has to be: %s", (_, keepsAs, within) => {
    const findings = checkChilling(
      scaledOf([eaten("pot", 2)], [pot([boil, drain("Drain them at once.")], keepsAs)]),
      shippedRules.safety.classes,
    );
    expect(findings).toEqual([
      {
        code: "NEVER_CHILLED",
        severity: "LOOK",
        path: ["components", "pot"],
        subject: "pot",
        meal: "salad",
        day: 2,
        within,
      },
    ]);
    expect(findingText(findings[0]!)).toContain(`no step puts it into the cold`);
    expect(found([eaten("pot", 2)], [pot([boil], keepsAs)])).toHaveLength(1);
  });

  it.each([
    "Drain, and put them in the fridge.",
    "Abgießen und in den Kühlschrank stellen.",
    "Égoutter et mettre au frigo.",
    "Escurrir y guardar en la nevera.",
    "Scolare e mettere in frigorifero.",
    "Afgieten en in de koelkast zetten.",
    "Odcedzić i wstawić do lodówki.",
  ])("and chilled is not, in a step's words or by its mark: %s", (text) => {
    expect(found([eaten("pot", 2)], [pot([boil, drain(text)], "cooked-fish")])).toEqual([]);
    expect(found([eaten("pot", 2)], [pot([boil, drain("冷蔵庫に入れる", { chills: true })], "cooked-fish")])).toEqual(
      [],
    );
  });

  it("is named although it was in the cold before it was cooked", () => {
    const soak = step("soak", 600, { text: "Soak in the fridge.", attention: "UNATTENDED" });
    const after = [soak, { ...boil, after: ["soak"] }, drain("Drain them at once.")];
    expect(found([eaten("pot", 1)], [pot(after, "cooked-legume")])).toHaveLength(1);
  });

  it("is not where all of it is eaten today, or where it needs no cold", () => {
    const hot = [boil, drain("Drain them at once.")];
    expect(found([eaten("pot", 0)], [pot(hot, "cooked-fish")])).toEqual([]);
    expect(found([eaten("pot", 3)], [pot(hot, "pantry-goods")])).toEqual([]);
  });

  it("is named where it ends up, if nothing on the way chills it", () => {
    const hot = pot([boil, drain("Drain them at once.")], "cooked-legume", "beans");
    const mixed = (text: string) =>
      component("mix", "100 g", [line("100 g", made("beans"))], {
        steps: [step("mix", 5, { text })],
        keepsAs: "potato-salad",
      });
    expect(found([eaten("mix", 1)], [hot, mixed("Mix it.")])).toEqual([["NEVER_CHILLED", "components", "mix"]]);
    expect(found([eaten("mix", 1)], [hot, mixed("Mix it and chill it.")])).toEqual([]);
  });

  it("is named by its class where no step says on what it is cooked, and not where it is bought", () => {
    const plain = step("boil", 5, { text: "Boil them." });
    expect(found([eaten("pot", 1)], [pot([plain], "cooked-fish")])).toHaveLength(1);
    expect(found([eaten("pot", 1)], [pot([plain], "raw-roots")])).toEqual([]);
  });
});

describe("The caution for readers", () => {
  it.each([null, "cooked-legume", "cooked-fish"])(
    "to cool fast stands for what is cooked, of whatever class: %s",
    (keepsAs) => {
      const scaled = scaledOf([eaten("pot", 2)], [pot([boil], keepsAs)]);
      for (const region of [null, "US", "GB", "DE"]) {
        const { cautions } = findCautions(scaled, { region }, shippedRules);
        expect(cautions.map(({ code }) => code)).toContain("cool-quickly");
      }
    },
  );

  it("stands for nothing that is not cooked", () => {
    const scaled = scaledOf([eaten("pot", 2)], [pot([step("mix", 5)], null)]);
    const { cautions } = findCautions(scaled, { region: null }, shippedRules);
    expect(cautions.map(({ code }) => code)).not.toContain("cool-quickly");
  });
});
