import type { Measured } from "../../../domain/model/amount.js";
import type { OwnMeasure } from "../../../domain/model/food.js";
import type { Line, LineItem, Swap, SwapOwn } from "../../../domain/model/line.js";
import { failed, ok } from "../../../domain/problem.js";
import type { Path, Result } from "../../../domain/problem.js";
import { combine, every, mapResult } from "../combine-results.js";
import { ruleWords } from "../schemas/line-schema.js";
import type { LineDocument } from "../schemas/line-schema.js";
import { readRatio } from "../read-ratio.js";
import type { ReadingContext } from "../reading-context.js";

/** Own measures of what a line can name; null where nothing of that name is known. */
export interface KnownItems {
  readonly foodMeasures: (food: string) => readonly OwnMeasure[] | null;
  readonly componentMeasures: (component: string) => readonly OwnMeasure[] | null;
}

/** Lines of one component, route or meal. `path` leads to the list in the document. */
export function readLines(
  lines: readonly LineDocument[],
  known: KnownItems,
  reading: ReadingContext,
  path: Path,
): Result<readonly Line[]> {
  const ids = lineIds(lines);
  const repeated = ids.findIndex((id, index) => ids.indexOf(id) !== index);
  if (repeated >= 0)
    return failed([{ code: "DUPLICATE", path: [...path, repeated, "id"], value: ids[repeated] ?? "" }]);
  return every(lines.map((line, index) => readLine(line, ids[index] ?? "", known, reading, [...path, index])));
}

/** A line without a name of its own is called after what it names, so that a line put in above changes nothing. */
export function lineIds(lines: readonly LineDocument[]): readonly string[] {
  const given = new Set(lines.flatMap(({ id }) => (id === undefined ? [] : [id])));
  const taken = new Map<string, number>();
  return lines.map((line) => {
    if (line.id !== undefined) return line.id;
    const base = [line.food ?? line.component ?? "line", ...(line.part === null ? [] : [line.part])].join("-");
    let count = (taken.get(base) ?? 0) + 1;
    while (given.has(count === 1 ? base : `${base}-${count}`)) count++;
    taken.set(base, count);
    return count === 1 ? base : `${base}-${count}`;
  });
}

/** The names that steps may use; null: a line is open, and what it will be called with it. */
export const stepLineIds = (lines: readonly LineDocument[]): readonly string[] | null =>
  lines.some(({ open }) => open !== undefined) ? null : lineIds(lines);

function readLine(
  line: LineDocument,
  id: string,
  known: KnownItems,
  reading: ReadingContext,
  path: Path,
): Result<Line> {
  if (line.open !== undefined) return failed([{ code: "LINE_OPEN", path, written: line.text ?? "", ...line.open }]);
  const measures = itemMeasures(line, known, path);
  if (!measures.ok) return measures;
  const read = combine({
    amount: line.amount === null ? ok(null) : reading.amount(line.amount, measures.value, [...path, "amount"]),
    each: line.each === null ? ok(null) : reading.amount(line.each, [], [...path, "each"]),
    swaps: every(line.swaps.map((swap, index) => readSwap(swap, known, reading, [...path, "swaps", index]))),
  });
  return mapResult(read, ({ amount, each, swaps }) => ({
    id,
    item: itemOf(line),
    written: line.written ?? line.amount ?? ruleWords.TO_TASTE,
    amount,
    ...(each === null ? {} : { each }),
    extra: line["plus-more"],
    measured: line.measured,
    form: line.form,
    preparation: line.preparation,
    rule: line.rule.rule,
    exponent: line.rule.exponent,
    optional: line.optional,
    ...eatenOf(line),
    mark: line.mark,
    swaps,
  }));
}

/** All of it is what a line without a word on it means. */
const eatenOf = (line: LineDocument): Pick<Line, "eaten"> => {
  const eaten = line["thrown-away"] ? "0" : line.eaten;
  return eaten === null || eaten === "1" ? {} : { eaten };
};

const itemOf = ({ food, part, component }: LineDocument): LineItem =>
  component === undefined ? { kind: "FOOD", food: food ?? "", part: part } : { kind: "COMPONENT", component };

function itemMeasures(line: LineDocument, known: KnownItems, path: Path): Result<readonly OwnMeasure[]> {
  const { food, component } = line;
  if (component !== undefined) {
    const measures = known.componentMeasures(component);
    if (measures !== null) return ok(measures);
    return failed([{ code: "UNKNOWN_COMPONENT", path: [...path, "component"], component }]);
  }
  const measures = known.foodMeasures(food ?? "");
  if (measures !== null) return ok(measures);
  return failed([{ code: "UNKNOWN_FOOD", path: [...path, "food"], food: food ?? "" }]);
}

function readSwap(
  swap: LineDocument["swaps"][number],
  known: KnownItems,
  reading: ReadingContext,
  path: Path,
): Result<Swap> {
  if (known.foodMeasures(swap.food) === null)
    return failed([{ code: "UNKNOWN_FOOD", path: [...path, "food"], food: swap.food }]);
  const read = combine({
    ratio: readRatio(swap.ratio, [...path, "ratio"]),
    yields: swap.yield === undefined ? ok(null) : reading.amount(swap.yield, [], [...path, "yield"]),
  });
  return mapResult(read, ({ ratio, yields }) => {
    const own = ownOf(swap, yields);
    return {
      food: swap.food,
      ratio,
      diets: swap.diets,
      note: swap.note,
      ...(Object.keys(own).length === 0 ? {} : { own }),
    };
  });
}

const ownOf = (
  { preparation, form, "keeps-as": keepsAs, steps }: LineDocument["swaps"][number],
  yields: Measured | null,
): SwapOwn => ({
  ...(preparation === undefined ? {} : { preparation }),
  ...(form === undefined ? {} : { form }),
  ...(yields === null ? {} : { yield: yields }),
  ...(keepsAs === undefined ? {} : { keepsAs }),
  ...(steps.length === 0
    ? {}
    : {
        steps: steps.map(({ id, do: text, time: minutes }) => ({
          id,
          ...(text === undefined ? {} : { text }),
          ...(minutes === undefined ? {} : { minutes }),
        })),
      }),
});
