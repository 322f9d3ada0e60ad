import type { CatalogueEdition, CatalogueWeight, KnownCatalogueRow } from "../../domain/model/catalogue-row.js";
import type { Problem } from "../../domain/problem.js";
import { catalogueTable } from "../../imports/usda/catalogue-table.js";
import { catalogueFoodColumns, catalogueFoodReader } from "../../imports/usda/read-catalogue-food.js";
import {
  catalogueWeightColumns,
  catalogueWeightReader,
  type CatalogueWeightRow,
} from "../../imports/usda/read-catalogue-weight.js";
import {
  placedWeights,
  withFacts,
  withWeight,
  type CatalogueFoodFacts,
} from "../../domain/component/revise-catalogue-row.js";
import { readTable, type TableOptions } from "../../imports/tables/read-table.js";
import { checksumOf } from "../../persistence/sql/canonical-json.js";
import { feedColumns } from "../imports/feeds/feed-columns.js";
import type { Data, Deps } from "../deps.js";
import { loadTable, type ComparedRows } from "../imports/rows/load-table.js";
import type { Loaded, RunningImport } from "../imports/running-import.js";
import { sameFacts } from "./compare-catalogue-rows.js";

/**
 * Loads an edition of the open food table, or corrections of it: a table of foods, or one of weights. A food keeps the weights it
 * has; a weight takes the place of what its food has under that measure. Nothing goes because a file does not name it.
 */
export async function loadCatalogueRows(deps: Deps, job: RunningImport): Promise<Loaded> {
  const { bytes, settings } = job;
  const { delimiter, locale } = settings;
  const names = feedColumns(settings);
  const options = (columns: Omit<TableOptions["columns"], "columnNames">): TableOptions => ({
    columns: { ...columns, columnNames: names },
    delimiter,
  });
  const edition = editionOf(job);
  const begin = (data: Data): Promise<void> => data.catalogue.lock();
  if ((await catalogueTable(bytes(), names, delimiter)) === "WEIGHTS") {
    return loadTable<CatalogueWeightRow>(deps, job, {
      begin,
      rows: () => readTable(bytes(), options(catalogueWeightColumns), catalogueWeightReader(locale)),
      keyOf: ({ ndbNo, measure }) => `${ndbNo} ${measure}`,
      compare: (data, read) => compareWeights(data, job, edition, read),
    });
  }
  return loadTable<CatalogueFoodFacts>(deps, job, {
    begin,
    rows: () => readTable(bytes(), options(catalogueFoodColumns), catalogueFoodReader(locale)),
    keyOf: ({ ndbNo }) => ndbNo,
    compare: (data, read) => compareFoods(data, edition, read),
  });
}

/** What a feed brings is an edition of its own for each source it has named. */
function editionOf({ feed, settings: { source } }: RunningImport): CatalogueEdition {
  return { code: `${feed.slug}-${checksumOf(source).slice(0, 12)}`, title: source };
}

async function compareFoods(
  data: Data,
  edition: CatalogueEdition,
  read: readonly CatalogueFoodFacts[],
): Promise<ComparedRows<CatalogueFoodFacts>> {
  const before = await data.catalogue.byNumbers(read.map(({ ndbNo }) => ndbNo));
  const moved = read.flatMap((facts, at) => {
    const was = before[at] ?? null;
    const row = withFacts(was, facts, edition);
    return was !== null && sameFacts(was, row) ? [] : [{ was, row }];
  });
  const known = before.filter((each) => each !== null).length;
  const created = read.length - known;
  return {
    ...{ created, changed: moved.length - created, known, refused: new Map() },
    changes: moved.map(({ was, row }) => ({ key: row.row.ndbNo, before: was, after: row })),
    save: () => data.catalogue.save(moved.map(({ row }) => row)),
  };
}

async function compareWeights(
  data: Data,
  { run }: RunningImport,
  edition: CatalogueEdition,
  read: readonly CatalogueWeightRow[],
): Promise<ComparedRows<CatalogueWeightRow>> {
  const numbers = [...new Set(read.map(({ ndbNo }) => ndbNo))];
  const found = await data.catalogue.byNumbers(numbers);
  const before = new Map(found.flatMap((each) => (each === null ? [] : [[each.row.ndbNo, each]])));
  const after = new Map(before);
  // A dry run saves nothing, so that what its earlier rows would do to a food stands in its notes alone.
  const noted = run.kind === "DRY_RUN" ? await data.importRuns.changesOf(run.id, numbers) : [];
  for (const each of noted) after.set(each.key, each.after as KnownCatalogueRow);
  const refused = new Map<CatalogueWeightRow, readonly Problem[]>();
  const moved = new Set<string>();
  const counts = { created: 0, changed: 0, known: 0 };
  for (const weight of read) {
    const { ndbNo, measure, grams } = weight;
    const row = after.get(ndbNo);
    if (row === undefined) {
      refused.set(weight, [unknownFood(ndbNo)]);
      continue;
    }
    const there = placedWeights(row).filter((each) => each.measure === measure);
    if (there.length > 0) counts.known += 1;
    if (isOnly(there, grams, edition)) continue;
    counts[there.length === 0 ? "created" : "changed"] += 1;
    moved.add(ndbNo);
    after.set(ndbNo, withWeight(row, { measure, grams, edition }));
  }
  const rows = [...moved].flatMap((ndbNo) => after.get(ndbNo) ?? []);
  return {
    ...{ ...counts, refused },
    changes: rows.map((row) => ({ key: row.row.ndbNo, before: before.get(row.row.ndbNo) ?? null, after: row })),
    save: () => data.catalogue.save(rows),
  };
}

const isOnly = (there: readonly Required<CatalogueWeight>[], grams: number, { code }: CatalogueEdition): boolean =>
  there.length === 1 && there.every((each) => each.grams === grams && each.edition.code === code);

const unknownFood = (ndbNo: string): Problem => ({
  code: "BAD_SHAPE",
  path: ["ndb_no"],
  expected: "the number of a food that the table has; import its foods before their weights",
  got: ndbNo,
});
