import type { BaseAmount } from "../../model/amount.js";
import type { Step } from "../../model/component.js";
import type { Food } from "../../model/food.js";
import type { Path } from "../../problem.js";
import { inDimension } from "../../quantity/convert.js";
import type { Finding } from "./finding.js";
import type { ScaledLine } from "../scaled.js";

/** The least a kitchen measures: 1 g on a scale, an eighth of a US teaspoon, an eighth of a piece. Common practice, no source. */
export const leastMeasured: Readonly<Record<BaseAmount["dimension"], number>> = {
  MASS: 1,
  VOLUME: 4.92892159375 / 8,
  COUNT: 1 / 8,
};

const nameOf = ({ item }: ScaledLine): string => (item.kind === "FOOD" ? item.food : item.component);

/** Whether a kitchen can measure it in some dimension that the food's facts lead to. */
function measurable(amount: BaseAmount, line: ScaledLine, food: Food | null): boolean {
  const ways = (["MASS", "VOLUME", "COUNT"] as const).flatMap((dimension) => {
    if (dimension === amount.dimension) return [amount];
    const converted = food === null ? null : inDimension(amount, dimension, food, line.line.form);
    return converted?.ok === true ? [converted.amount] : [];
  });
  return ways.some(({ dimension, high }) => high >= leastMeasured[dimension] * (1 - 1e-9));
}

/** A line that no step mentions is only a fault where the writer says of steps what they use at all. */
function inNoStep(lines: readonly ScaledLine[], steps: readonly Step[], path: Path): Finding[] {
  const used = new Set(steps.flatMap((step) => step.lines));
  if (used.size === 0) return [];
  return lines
    .filter(({ line }) => !used.has(line.id) && !line.optional)
    .map((line) => ({
      code: "LINE_IN_NO_STEP",
      severity: "LOOK",
      path: [...path, "lines", line.line.id],
      item: nameOf(line),
    }));
}

/** Seasoning may be to taste; a component or something counted, weighed and bought fresh should have an amount. */
function withoutAmount(line: ScaledLine, path: Path): Finding[] {
  if (line.amount !== null || line.item.kind === "FOOD") return [];
  return [{ code: "AMOUNT_MISSING", severity: "LOOK", path, item: nameOf(line) }];
}

/** What readers would stumble over in the lines of one meal or component. */
export function checkScaledLines(
  lines: readonly ScaledLine[],
  steps: readonly Step[],
  path: Path,
  foods: ReadonlyMap<string, Food>,
): readonly Finding[] {
  return [
    ...inNoStep(lines, steps, path),
    ...lines.flatMap((line): Finding[] => {
      const at = [...path, "lines", line.line.id];
      const { amount } = line;
      if (amount === null) return withoutAmount(line, at);
      const food = line.item.kind === "FOOD" ? (foods.get(line.item.food) ?? null) : null;
      if (line.item.kind === "COMPONENT" || amount.high === 0 || measurable(amount, line, food)) return [];
      return [{ code: "NOT_MEASURABLE", severity: "LOOK", path: at, item: nameOf(line), amount }];
    }),
  ];
}
