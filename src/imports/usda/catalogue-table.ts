import { csvDialect } from "../tables/csv-dialect.js";
import { csvScanner } from "../tables/csv-scanner.js";
import { tableHead } from "../tables/table-head.js";
import { catalogueFoodColumns } from "./read-catalogue-food.js";
import { catalogueWeightColumns } from "./read-catalogue-weight.js";

const known = [...catalogueFoodColumns.needed, ...catalogueWeightColumns.needed];

/** Which table of the open food table a file is, by its header: weights have a measure, and foods a description. */
export async function catalogueTable(
  bytes: AsyncIterable<Uint8Array>,
  columnNames: ReadonlyMap<string, string>,
  delimiter: string | null,
): Promise<"FOODS" | "WEIGHTS"> {
  const head = await tableHead(bytes);
  const dialect = csvDialect(head.text, [...known, ...columnNames.keys()], delimiter);
  if (!dialect.ok) return "FOODS";
  const scanner = csvScanner(dialect.value.delimiter, dialect.value.newline);
  const header = [...scanner.push(head.text), ...scanner.end()][dialect.value.before];
  const names = (header?.fields ?? []).map((field) => field.trim().toLowerCase());
  const ours = names.map((name) => columnNames.get(name) ?? name);
  return ours.includes("measure") && !ours.includes("description") ? "WEIGHTS" : "FOODS";
}
