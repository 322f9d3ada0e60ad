import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { noHousehold } from "../../../../src/domain/model/household.js";
import type { PlanBundle } from "../../../../src/domain/model/plan.js";
import { comparePlans } from "../../../../src/domain/plan/review/compare-plans.js";
import type { ComputedPlan } from "../../../../src/domain/plan/compile/plan-facts.js";
import { scalePlan } from "../../../../src/domain/plan/scale-plan.js";
import { shop } from "../../../../src/domain/plan/shop.js";
import { storageGuidance } from "../../../../src/domain/storage/storage-guidance.js";
import { readRulesFolder } from "../../../../src/app/setup/read-rules-folder.js";
import { stateContents } from "../../../../src/services/answers/state-contents.js";
import { arbitraryPlan, everyRun } from "../../../kit/arbitrary/arbitrary-plan.js";
import { bundle, component, food, keeps, line, made, meal, pack, plan, step } from "../../../kit/builders.js";

const rules = await readRulesFolder("seeds/rules");
const today = "2026-03-01";

function computed(given: PlanBundle): ComputedPlan {
  const scaled = scalePlan(given, given.plan.serves, noHousehold);
  if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
  const { components, meals } = scaled.value;
  const question = { rules: rules.safety.keeping, classes: rules.safety.classes, region: null, today, session: null };
  return {
    scaled: scaled.value,
    list: shop([scaled.value], noHousehold),
    storage: storageGuidance({ components, meals, foods: given.foods }, question),
    contents: stateContents(scaled.value, noHousehold, rules, () => new Date(`${today}T09:00:00Z`)),
  };
}
const compare = (before: PlanBundle, after: PlanBundle) => comparePlans(computed(before), computed(after));

const barley = (days: number, price: string | null, allergen: "CONTAINS" | "UNKNOWN") =>
  food("barley", {
    packs: price === null ? [] : [pack("500 g", price)],
    allergens: [{ code: "barley", presence: allergen, source: { kind: "INVENTED", title: "test", section: null } }],
    keeping: [keeps(days)],
  });

const week = (grams: string, day = 1, soak = 30, foods = [barley(3, "1.10", "CONTAINS")]) =>
  bundle(
    plan([meal("bowl", [line("400 g", made("boiled"))], { day })]),
    [
      component("boiled", "400 g", [line(grams, "barley", { id: "grain" })], {
        steps: [step("boil", soak)],
        keeping: [keeps(3)],
      }),
    ],
    foods,
  );

describe("two states of a plan", () => {
  it("of which neither differs say nothing, whatever the plan", () => {
    fc.assert(
      fc.property(arbitraryPlan(), (given) => {
        expect(compare(given, structuredClone(given))).toEqual([]);
      }),
      { ...everyRun, numRuns: 60 },
    );
  });

  it("tell of an amount that changed, in the line and in what is needed", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 900 }), fc.integer({ min: 1, max: 900 }), (before, after) => {
        const found = compare(week(`${before} g`), week(`${after} g`));
        const kinds = found.map(({ kind, path }) => `${kind} ${path.join(".")}`);
        if (before === after) expect(kinds).toEqual([]);
        else {
          expect(kinds).toContain("AMOUNT components.boiled.lines.grain.amount");
          expect(kinds).toContain("NEED foods.barley.need");
        }
      }),
    );
    expect(compare(week("100 g"), week("150 g")).find(({ kind }) => kind === "AMOUNT")).toEqual({
      kind: "AMOUNT",
      path: ["components", "boiled", "lines", "grain", "amount"],
      before: "100 g",
      after: "150 g",
    });
  });

  it("show an amount unrounded where rounding would hide that it changed", () => {
    const found = compare(week("501 g"), week("502 g"));
    expect(found).toContainEqual(expect.objectContaining({ kind: "AMOUNT", before: "501 g", after: "502 g" }));
    for (const { before, after } of found) expect(before).not.toBe(after);
  });

  it("swap what was and what is when they are swapped", () => {
    fc.assert(
      fc.property(arbitraryPlan(), arbitraryPlan(), (a, b) => {
        const turned = compare(b, a).map(({ before, after, ...rest }) => ({ ...rest, before: after, after: before }));
        const key = (each: object): string => JSON.stringify(each, ["kind", "path", "before", "after"]);
        expect(compare(a, b).map(key).toSorted()).toEqual(turned.map(key).toSorted());
      }),
      { ...everyRun, numRuns: 30 },
    );
  });

  it("tell of days, steps, keeping, allergens and cost", () => {
    const only = (after: PlanBundle) =>
      compare(week("200 g"), after).map(({ kind, before, after: is }) => [kind, before, is]);
    expect(only(week("200 g", 2))).toEqual([["DAY", "1", "2"]]);
    expect(only(week("200 g", 1, 45))).toEqual([["STEP", "boil (30 min)", "boil (45 min)"]]);
    expect(only(week("200 g", 1, 30, [barley(1, "1.10", "CONTAINS")]))).toContainEqual(["KEEPING", "3", "1"]);
    expect(only(week("200 g", 1, 30, [barley(3, "1.30", "CONTAINS")]))).toEqual([["COST", "1.10 XTS", "1.30 XTS"]]);
    expect(only(week("200 g", 1, 30, [barley(3, null, "CONTAINS")]))).toEqual([["COST", "1.10 XTS", null]]);
    expect(only(week("200 g", 1, 30, [barley(3, "1.10", "UNKNOWN")]))).toContainEqual([
      "ALLERGEN",
      "CONTAINS",
      "UNKNOWN",
    ]);
  });

  it("tell of what is new and what is gone", () => {
    const one = week("200 g");
    const more = bundle(
      plan([...one.plan.meals, meal("toast", [line("50 g", "bread", { id: "slice" })])]),
      one.components,
      [...one.foods, food("bread")],
    );
    const added = compare(one, more);
    expect(added).toContainEqual({ kind: "MEAL", path: ["meals", "toast"], before: null, after: "toast" });
    expect(added).toContainEqual({
      kind: "AMOUNT",
      path: ["meals", "toast", "lines", "slice", "amount"],
      before: null,
      after: "50 g",
    });
    expect(compare(more, one)).toContainEqual({ kind: "MEAL", path: ["meals", "toast"], before: "toast", after: null });
  });
});
