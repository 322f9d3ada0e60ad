import { describe, expect, it } from "vitest";
import type { MeasureSystem } from "../../../src/domain/model/amount.js";
import { noHousehold } from "../../../src/domain/model/household.js";
import { scalePlan } from "../../../src/domain/plan/scale-plan.js";
import { showFor, showScaledLine } from "../../../src/exports/words/shown-amount.js";
import { bundle, food, line, meal, plan } from "../../kit/builders.js";

/** What a reader is shown of lines in a plan of some measures who asks for measures, or (null) for none. */
function shown(written: MeasureSystem, asked: MeasureSystem | null, ...amounts: readonly string[]): readonly string[] {
  const lines = amounts.map((amount, at) => line(amount, `food-${at}`));
  const facts = { measures: written, locale: "en" } as const;
  const whole = bundle(
    plan([meal("supper", lines)], facts),
    [],
    lines.map((_, at) => food(`food-${at}`)),
  );
  const scaled = scalePlan(whole, 1, noHousehold);
  if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
  const show = showFor({ ...noHousehold, measures: asked }, facts);
  return scaled.value.meals[0]!.lines.map((each, at) => showScaledLine(each, whole.foods[at]!, show)?.text ?? "");
}

describe("a line in other units than its plan's measures", () => {
  it("is shown in the reader's, where the reader names any, even the plan's own", () => {
    // 200 g are 7.05 oz, 500 g 1.10 lb, 250 ml 1.06 US cups (NIST Handbook 44).
    expect(shown("US_CUSTOMARY", "US_CUSTOMARY", "200 g", "500 g", "1 lb", "1 us-cup")).toEqual([
      "7 oz",
      "1 lb 1¾ oz",
      "1 lb",
      "1 cup",
    ]);
    expect(shown("METRIC", "METRIC", "8 oz", "1 lb", "200 g")).toEqual(["225 g", "450 g", "200 g"]);
  });

  it("stays as it is written for a reader who names none", () => {
    expect(shown("US_CUSTOMARY", null, "200 g", "1 lb")).toEqual(["200 g", "1 lb"]);
    expect(shown("METRIC", null, "8 oz", "200 g")).toEqual(["8 oz", "200 g"]);
  });
});
