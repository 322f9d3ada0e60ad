import { describe, expect, it } from "vitest";
import type { Warning } from "../../../src/domain/problem.js";
import { scalePlan } from "../../../src/domain/plan/scale-plan.js";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import { shop } from "../../../src/domain/plan/shop.js";
import { bundle, component, food, household, invented, line, made, meal, plan } from "../../kit/builders.js";

const parsley = (days: number | null, facts = {}) =>
  food("parsley", {
    keeping: days === null ? [] : [{ place: "FRIDGE", days, container: null, condition: null, source: invented }],
    ...facts,
  });
const on = (day: number, slug = `day-${day}`) => meal(slug, [line("20 g", "parsley")], { day });

function later(...given: readonly PlanBundle[]): readonly Warning[] {
  const scaled = given.map((each) => {
    const found = scalePlan(each, 1, household());
    if (!found.ok) throw new Error(JSON.stringify(found.problems));
    return found.value;
  });
  return shop(scaled, household()).warnings.filter(({ code }) => code === "BUY_LATER");
}

describe("a list on which a food does not keep until all its meals", () => {
  it("says on which later trip to buy the share of which meals", () => {
    expect(later(bundle([on(0), on(2), on(4), on(5)], [], [parsley(3)]))).toEqual([
      {
        code: "BUY_LATER",
        path: ["foods", "parsley"],
        food: "parsley",
        meals: ["day-4", "day-5"],
        notBefore: 2,
        days: 3,
      },
    ]);
    expect(
      later(bundle([on(3), on(7)], [], [parsley(2)])).map((each) => "notBefore" in each && each.notBefore),
    ).toEqual([1, 5]);
  });

  it("says nothing where it keeps, where nobody says how long, and of what is cooked in the session", () => {
    expect(later(bundle([on(3)], [], [parsley(3)]))).toEqual([]);
    expect(later(bundle([on(9)], [], [parsley(null)]))).toEqual([]);
    expect(later(bundle([on(9)], [], [parsley(1, { alwaysThere: true })]))).toEqual([]);
    const sauce = component("sauce", "100 g", [line("20 g", "parsley")]);
    expect(later(bundle([meal("supper", [line("50 g", made("sauce"))], { day: 9 })], [sauce], [parsley(1)]))).toEqual(
      [],
    );
  });

  it("names the plan where there are several, each counted from its own session", () => {
    const second = bundle(plan([on(4)], { slug: "second" }), [], [parsley(3)]);
    expect(later(bundle([on(5)], [], [parsley(3)]), second)).toMatchObject([
      { path: ["plans", 0, "foods", "parsley"], meals: ["day-5"], notBefore: 2 },
      { path: ["plans", 1, "foods", "parsley"], meals: ["day-4"], notBefore: 1 },
    ]);
  });
});
