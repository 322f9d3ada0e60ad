import { standardUnits } from "../../../domain/quantity/unit.js";
import { ok, type Problem } from "../../../domain/problem.js";
import { priceColumns } from "../../../imports/prices/read-price-row.js";
import { readTable } from "../../../imports/tables/read-table.js";
import type { PriceOutlier } from "../../../persistence/imports/import-data.js";
import { feedColumns } from "../feeds/feed-columns.js";
import type { Deps } from "../../deps.js";
import { RunLost, type RunningImport } from "../running-import.js";

/**
 * How many times what is usual for its food a pack may cost for as much. The smallest packs of a shop cost up to some five times the
 * largest (common practice, no source); a slip of the decimal mark is ten. So the bound lies between.
 */
export const priceFactor = 7;

const unitSizes = [...standardUnits.values()].map(({ id, dimension, factor }) => [id, dimension, factor] as const);

/**
 * Puts staged prices aside that lie far from those of their food's other packs, until none does, so that a run that is taken up again ends as
 * one that never broke off. A row that a person has settled is believed.
 */
export async function quarantineOutliers({ data }: Deps, job: RunningImport): Promise<void> {
  if (job.mended) return;
  const { run, worker } = job;
  for (;;) {
    const found = await data.listedPacks.outliers(run.id, unitSizes, priceFactor);
    if (found.length === 0) return;
    const raws = await rawRows(job, new Set(found.map(({ line }) => line)));
    const quarantine = found.map((outlier) => ({
      ...{ line: outlier.line, part: 0, raw: raws.get(outlier.line) ?? "", offer: null },
      problems: [problemOf(outlier)],
    }));
    if (!(await data.listedPacks.setAside(run.id, worker, quarantine))) throw new RunLost(run.id);
  }
}

const problemOf = ({ food, price, ratio, packs }: PriceOutlier): Problem => ({
  ...{ code: "PRICE_OUT_OF_LINE", path: ["price"], food, price, packs },
  ratio: Number(ratio.toPrecision(4)),
});

/** The text of these lines, read again: what is staged is only what it means. */
async function rawRows(job: RunningImport, lines: ReadonlySet<number>): Promise<ReadonlyMap<number, string>> {
  const { bytes, settings } = job;
  const columns = { ...priceColumns, columnNames: feedColumns(settings) };
  const raws = new Map<number, string>();
  for await (const rows of readTable(bytes(), { columns, delimiter: settings.delimiter }, () => ok(null))) {
    for (const { line, raw } of rows) if (lines.has(line)) raws.set(line, raw);
  }
  return raws;
}
