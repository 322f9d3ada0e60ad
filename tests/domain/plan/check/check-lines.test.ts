import { describe, expect, it } from "vitest";
import type { Step } from "../../../../src/domain/model/component.js";
import type { Food } from "../../../../src/domain/model/food.js";
import { noHousehold } from "../../../../src/domain/model/household.js";
import type { Line } from "../../../../src/domain/model/line.js";
import { checkScaledLines, leastMeasured } from "../../../../src/domain/plan/check/check-lines.js";
import { lineContext } from "../../../../src/domain/plan/compile/line-context.js";
import { scalePlan } from "../../../../src/domain/plan/scale-plan.js";
import { bundle, component, density, food, line, made, meal, own, step } from "../../../kit/builders.js";

const stock = component("stock", "1 l", [line("500 g", "leek")]);

function look(lines: readonly Line[], facts: Partial<Food> = {}, steps: readonly Step[] = []) {
  const scaled = scalePlan(bundle([meal("m", lines)], [stock], [food("it", facts)]), 1, noHousehold);
  if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
  const { foods } = lineContext(scaled.value.bundle);
  return checkScaledLines(scaled.value.meals[0]?.lines ?? [], steps, ["meals", "m"], foods);
}
const taken = line("100 ml", made("stock"));

describe("lines that readers stumble over", () => {
  const stir = step("stir", 1, { lines: ["l1"] });
  const serve = step("serve", 1, { lines: ["l2"] });

  it("are those that no step uses, where steps say what they use", () => {
    const lines = [taken, line("10 g", "it"), line("10 g", "salt")];
    expect(look(lines, {}, [stir])).toEqual([
      { code: "LINE_IN_NO_STEP", severity: "LOOK", path: ["meals", "m", "lines", "l2"], item: "it" },
      { code: "LINE_IN_NO_STEP", severity: "LOOK", path: ["meals", "m", "lines", "l3"], item: "salt" },
    ]);
    expect(look([line("10 g", "it"), taken], {}, [stir]).map(({ path }) => path.at(-1))).toEqual(["l2"]);
    expect(look(lines.slice(0, 2), {}, [stir, serve])).toEqual([]);
    expect(look(lines, {}, [step("stir", 1)])).toEqual([]);
    expect(look(lines)).toEqual([]);
  });

  it("are not those that may be left out", () => {
    expect(look([taken, line("10 g", "it", { optional: true })], {}, [stir])).toEqual([]);
  });

  it("are components without an amount; seasoning may be to taste", () => {
    expect(look([line(null, "it"), line(null, made("stock")), taken])).toEqual([
      { code: "AMOUNT_MISSING", severity: "LOOK", path: ["meals", "m", "lines", "l2"], item: "stock" },
    ]);
  });
});

describe("an amount that no kitchen measures", () => {
  const found = (amount: string, facts: Partial<Food> = {}) => look([taken, line(amount, "it", { id: "x" })], facts);

  it("is told with the amount", () => {
    expect(found("1/2 g")).toEqual([
      {
        code: "NOT_MEASURABLE",
        severity: "LOOK",
        path: ["meals", "m", "lines", "x"],
        item: "it",
        amount: { dimension: "MASS", low: 0.5, high: 0.5 },
      },
    ]);
  });

  it.each([
    ["a gram on a scale", "1 g", "99/100 g", {}],
    ["an eighth of a teaspoon", "1/8 us-tsp", "1/9 us-tsp", { shoppedBy: "VOLUME" }],
    ["an eighth of a piece", "1/8 piece", "1/9 piece", { shoppedBy: "COUNT" }],
  ] as const)("is below %s", (_, least, less, facts) => {
    expect(found(least, facts)).toEqual([]);
    expect(found(less, facts)).toHaveLength(1);
  });

  it("is one in every dimension that the food's facts lead to", () => {
    // 0.4 g of a powder of 0.5 g/ml are 0.8 ml, more than the 0.62 ml of an eighth of a teaspoon
    expect(found("2/5 g", { densities: [density(0.5)] })).toEqual([]);
    expect(found("1/5 g", { densities: [density(0.5)] })).toHaveLength(1);
    expect(found("1/2 g", { measures: [own("piece", { grams: 2, pieces: 1 })] })).toEqual([]);
    expect(leastMeasured.VOLUME).toBeCloseTo(0.616115, 6);
  });

  it("is none where the range reaches what can be measured, where nothing is wanted, or of a component", () => {
    expect(found("1/2-2 g")).toEqual([]);
    expect(look([taken, line("0 g", "it")])).toEqual([]);
    expect(look([line("1/100 ml", made("stock"))])).toEqual([]);
  });
});
