import { describe, expect, it } from "vitest";
import { limits } from "../../../../src/domain/engine-limits.js";
import type { Household } from "../../../../src/domain/model/household.js";
import { checkHousehold } from "../../../../src/domain/plan/check/check-household.js";
import { household, onHand } from "../../../kit/builders.js";

const problems = (facts: Partial<Household>, servings = 3) => checkHousehold(servings, household(facts));
const eaters = (...groups: readonly (readonly [count: number, portion: string])[]) =>
  problems({ eaters: groups.map(([count, portion]) => ({ count, portion })) });

describe("what a reader sends about a household", () => {
  it("may be nothing, and may be everything", () => {
    expect(problems({})).toEqual([]);
    expect(
      problems({
        eaters: [
          { count: 2, portion: "1" },
          { count: 1, portion: "1/2" },
        ],
        onHand: [onHand("flour", "2 us-cup", { useBy: "2026-02-28" })],
        session: { start: "2026-02-27T09:00:00Z", zone: "Asia/Kolkata" },
      }),
    ).toEqual([]);
  });

  it("counts as many eaters as servings", () => {
    expect(eaters([2, "1"], [1, "1/2"])).toEqual([]);
    expect(eaters([2, "1"])).toEqual([
      { code: "BAD_HOUSEHOLD", path: ["household", "eaters"], what: "EATERS_ARE_NOT_THE_SERVINGS", value: "2" },
    ]);
  });

  it.each([0, -1, Number.NaN, Infinity, limits.servings + 1])("refuses %s people", (count) => {
    expect(eaters([count, "1"])).toMatchObject([
      { code: "AMOUNT_OUT_OF_RANGE", path: ["household", "eaters", 0, "count"], value: String(count) },
    ]);
  });

  it("refuses half a person, and a portion of nothing or of more than anybody eats", () => {
    expect(eaters([1.5, "1"], [1.5, "1"])).toMatchObject([
      { code: "BAD_HOUSEHOLD", path: ["household", "eaters", 0, "count"], what: "NOT_WHOLE_PEOPLE", value: "1.5" },
      { code: "BAD_HOUSEHOLD", path: ["household", "eaters", 1, "count"] },
    ]);
    for (const portion of ["0", "101", "1/0", "half"]) {
      expect(eaters([3, portion])).toMatchObject([{ path: ["household", "eaters", 0, "portion"] }]);
    }
    expect(eaters([3, "100"])).toEqual([]);
    expect(eaters([3, "1/1000"])).toEqual([]);
  });

  it("refuses what is on hand in broken numbers, without a name, or until a day that is none", () => {
    const path = ["household", "onHand", 1];
    const withSecond = (second: Household["onHand"][number]) => problems({ onHand: [onHand("flour", "1 g"), second] });
    expect(withSecond(onHand("oats", "1/0 g"))).toMatchObject([{ code: "BAD_AMOUNT", path: [...path, "amount"] }]);
    expect(withSecond(onHand("oats", "1000000001 g"))).toMatchObject([
      { code: "AMOUNT_OUT_OF_RANGE", path: [...path, "amount"] },
    ]);
    expect(withSecond(onHand("", "1 g"))).toMatchObject([{ code: "BAD_SHAPE", path }]);
    expect(
      withSecond({ ...onHand("x", "1 g"), item: { kind: "COMPONENT", component: "x".repeat(1e6) } }),
    ).toMatchObject([{ code: "TOO_LARGE", path, size: 1e6 }]);
    expect(withSecond(onHand("oats", `1 ${"g".repeat(3000)}`))).toMatchObject([
      { code: "TOO_LARGE", path: [...path, "unit"] },
    ]);
    for (const useBy of ["soon", "2026-02-30", "2026-13-01", "2026-03-01T00:00:00Z", ""]) {
      expect(withSecond(onHand("oats", "1 g", { useBy }))).toEqual([
        { code: "BAD_HOUSEHOLD", path: [...path, "useBy"], what: "NOT_A_DATE", value: useBy },
      ]);
    }
  });

  it("refuses a session at no time and in no place", () => {
    const session = (start: string, zone: string) => problems({ session: { start, zone } });
    const noInstant = { code: "BAD_HOUSEHOLD", path: ["household", "session", "start"], what: "NOT_AN_INSTANT" };
    const noZone = { code: "BAD_HOUSEHOLD", path: ["household", "session", "zone"], what: "NOT_A_TIME_ZONE" };
    expect(session("soon", "Europe/Lisbon")).toEqual([{ ...noInstant, value: "soon" }]);
    expect(session("2026-03-01T09:00", "Europe/Lisbon")).toMatchObject([noInstant]);
    expect(session("2026-03-01T09:00:00Z", "Europe/Atlantis")).toEqual([{ ...noZone, value: "Europe/Atlantis" }]);
    expect(session("x".repeat(1e6), "y".repeat(1e6))).toEqual([
      { ...noInstant, value: "x".repeat(60) },
      { ...noZone, value: "y".repeat(60) },
    ]);
  });

  it("refuses more entries than anybody has", () => {
    const many = 1_001;
    const tooMany = (facts: Partial<Household>) =>
      problems(facts).map((each) => [each.code, each.path[1], ...(each.code === "TOO_LARGE" ? [each.what] : [])]);
    const of = <T>(value: T): T[] => Array.from({ length: many }, () => value);
    expect(tooMany({ onHand: of(onHand("flour", "1 g")) })).toEqual([["TOO_LARGE", "onHand", "things on hand"]]);
    expect(tooMany({ swaps: of({ from: "a", to: "b" }) })).toEqual([["TOO_LARGE", "swaps", "swaps"]]);
    expect(tooMany({ diets: of("vegan") })).toEqual([["TOO_LARGE", "diets", "diets"]]);
    expect(tooMany({ routes: { mode: "AS_WRITTEN", byName: of({ component: "a", route: "b" }) } })).toEqual([
      ["TOO_LARGE", "routes", "routes"],
    ]);
    expect(tooMany({ eaters: of({ count: 1, portion: "1" }) })[0]).toEqual(["TOO_LARGE", "eaters", "eaters"]);
    expect(problems({ diets: of("vegan").slice(1) })).toEqual([]);
  });
});
