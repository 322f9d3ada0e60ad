// @ts-nocheck
import { readFileSync } from "node:fs";
import { parse } from "csv-parse/sync";

export type Row = Readonly<Record<string, string>>;

/** A published table of check values, copied into the fixtures; every row names its source. */
export const referenceTable = (name: string): readonly Row[] =>
  parse(readFileSync(new URL(`../../fixtures/reference/${name}.csv`, import.meta.url), "utf8"), { columns: true });

/** What a failing row should show: who published the number. */
export const sourceOf = (row: Row): string =>
  `${row["source"]}, ${row["source_section"] ?? ""} [${row["read_or_memory"]}]`;
