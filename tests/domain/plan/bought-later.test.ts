import { describe, expect, it } from "vitest";
import type { Warning } from "../../../src/domain/problem.js";
import { scalePlan } from "../../../src/domain/plan/scale-plan.js";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import { shop } from "../../../src/domain/plan/shop.js";
import {
  bundle,
  component,
  food,
  household,
  invented,
  keeps,
  line,
  made,
  meal,
  of,
  part,
  plan,
} from "../../kit/builders.js";

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

  it("reckons with the hour of each meal where hours count: 36 hours from nine end at nine in the evening of the next day", () => {
    const at = (hour: string) => meal(`at-${hour.slice(0, 2)}`, [line("20 g", "parsley")], { day: 1, at: hour });
    expect(later(bundle([at("08:00"), at("20:59")], [], [parsley(1.5)]))).toEqual([]);
    expect(later(bundle([at("08:00"), at("22:00")], [], [parsley(1.5)]))).toMatchObject([
      { code: "BUY_LATER", meals: ["at-22"], notBefore: 1, days: 0 },
    ]);
  });

  it("cuts another piece where what is left of one does not keep until the hour of the meal", () => {
    const keeping = [keeps(1.5)];
    const lemon = food("lemon", {
      shoppedBy: "COUNT",
      parts: [part("juice", "30 ml", [], { keeping }), part("zest", "6 g", [], { keeping })],
    });
    const lemons = (hour: string): number | undefined => {
      const zest = meal("zest", [line("6 g", of("lemon", "zest"))], { day: 0 });
      const juice = meal("juice", [line("30 ml", of("lemon", "juice"))], { day: 1, at: hour });
      const found = scalePlan(bundle([zest, juice], [], [lemon]), 1, household());
      if (!found.ok) throw new Error(JSON.stringify(found.problems));
      return shop([found.value], household()).lines[0]?.need?.high;
    };
    expect(lemons("20:00")).toBe(1);
    expect(lemons("22:00")).toBe(2);
  });
});
