// @ts-nocheck
import { describe, expect, it } from "vitest";
import type { FoodPart } from "../../../src/domain/model/food.js";
import { partKeeps } from "../../../src/domain/storage/part-keeping.js";
import { keeps, of, part } from "../../kit/builders.js";
import { ask, bought, question, ruled } from "./kept-builders.js";

const juice = (facts: Pick<FoodPart, "keepsAs" | "keeping">): FoodPart => part("juice", "48 g", ["zest"], facts);
const zest = part("zest", "6 g");

describe("how long a part keeps", () => {
  // "6 days", US household figure for fresh lemon juice: the published rules, class lemon-juice.
  it("is the stricter of the writer's word and the published ceiling", () => {
    expect(partKeeps(juice({ keepsAs: "lemon-juice" }), question())).toBe(6);
    expect(partKeeps(juice({ keepsAs: "lemon-juice", keeping: [keeps(3)] }), question())).toBe(3);
    expect(partKeeps(juice({ keepsAs: "lemon-juice", keeping: [keeps(30)] }), question())).toBe(6);
    expect(partKeeps(juice({ keeping: [keeps(2.7)] }), question())).toBe(2);
  });

  it("is unknown where nobody says, or where only the freezer is spoken of", () => {
    expect(partKeeps(zest, question())).toBeNull();
    expect(partKeeps(juice({ keeping: [keeps(90, "FREEZER")] }), question())).toBeNull();
    expect(partKeeps(juice({ keepsAs: "lemon-juice" }), question({ rules: [] }))).toBeNull();
  });

  it("follows the region: a rule of elsewhere stands in only where the region has none", () => {
    const rules = [
      ruled({ id: "here", keepsAs: "lemon-juice", region: "US", days: 5 }),
      ruled({ id: "there", keepsAs: "lemon-juice", region: "GB", days: 1 }),
    ];
    const asked = (region: string | null) => partKeeps(juice({ keepsAs: "lemon-juice" }), question({ rules, region }));
    expect([asked("US"), asked("GB"), asked(null), asked("NZ")]).toEqual([5, 1, 1, 1]);
  });
});

describe("what is said about parts that wait", () => {
  const lemon = { ...bought("lemon", null, [keeps(30)]), parts: [zest, juice({ keeping: [keeps(3)] })] };
  const meal = (slug: string, day: number, name: string) => ({
    meal: { slug, day },
    lines: [{ item: of("lemon", name), amount: null }],
  });
  const said = (...meals: readonly ReturnType<typeof meal>[]) => ask({ meals, foods: [lemon] }).warnings;

  it("O-16: names the meal, the days and the day the piece is cut", () => {
    expect(said(meal("cake", 0, "zest"), meal("drink", 4, "juice"))).toEqual([
      {
        code: "PART_TOO_OLD",
        path: ["meals", "drink"],
        food: "lemon",
        part: "juice",
        meal: "drink",
        day: 4,
        cutOn: 0,
        days: 3,
      },
    ]);
    expect(said(meal("cake", 0, "zest"), meal("drink", 3, "juice"))).toEqual([]);
  });

  it("counts what a component takes in the session", () => {
    const oil = { component: { slug: "oil", keepsAs: "leftovers", keeping: [] }, route: null };
    const components = [{ ...oil, lines: [{ item: of("lemon", "zest"), amount: null }] }];
    const { warnings } = ask({ components, meals: [meal("drink", 5, "juice")], foods: [lemon] });
    expect(warnings).toMatchObject([{ code: "PART_TOO_OLD", meal: "drink", cutOn: 0 }]);
  });

  it("is nothing where a fresh piece is cut in time, and once for a meal with two lines of it", () => {
    expect(said(meal("cake", 0, "zest"), meal("tart", 2, "zest"), meal("drink", 4, "juice"))).toEqual([]);
    const drink = meal("drink", 4, "juice");
    const twice = { ...drink, lines: [...drink.lines, ...drink.lines] };
    expect(said(meal("cake", 0, "zest"), twice)).toHaveLength(1);
  });

  it("says that nobody knows, where nobody says how long the part keeps", () => {
    expect(said(meal("drink", 0, "juice"), meal("cake", 1, "zest"))).toEqual([
      { code: "KEEPING_UNKNOWN", path: ["foods", "lemon", "parts", "zest"], item: "lemon, zest" },
    ]);
    expect(said(meal("drink", 1, "juice"), meal("cake", 1, "zest"))).toEqual([]);
  });
});
