import type { Source } from "../../domain/model/source.js";
import type { Problem } from "../../domain/problem.js";
import { readTable, type TableProblem } from "../usda/table-rows.js";

/** What a gram of dry food weighs once it is cooked, and who says so. */
export interface CookedYield {
  readonly gramsPerGram: number;
  readonly source: Source;
}

/** The yields of seeds/base/cooked-yields.csv by their ids. */
export function readCookedYields(
  bytes: Uint8Array,
  file: string,
): { readonly yields: ReadonlyMap<string, CookedYield>; readonly problems: readonly TableProblem[] } {
  const table = readTable(bytes, file, ["yield_id", "in_qty", "out_qty", "source", "source_section"]);
  const problems: TableProblem[] = [...table.problems];
  const yields = new Map<string, CookedYield>();
  for (const { field, line } of table.rows) {
    const gramsPerGram = Number(field("out_qty")) / Number(field("in_qty"));
    const source: Source = { kind: "PUBLISHED", title: field("source"), section: field("source_section") };
    if (gramsPerGram > 0 && Number.isFinite(gramsPerGram)) yields.set(field("yield_id"), { gramsPerGram, source });
    else {
      const problem: Problem = {
        code: "BAD_SHAPE",
        path: ["out_qty"],
        expected: "a weight above 0",
        got: field("out_qty"),
      };
      problems.push({ file, line, column: (table.columns.get("out_qty") ?? 0) + 1, problem });
    }
  }
  return { yields, problems };
}
