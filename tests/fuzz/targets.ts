import { readFile, readdir } from "node:fs/promises";
import { join } from "node:path";
import { compileFoodNames } from "../../src/domain/quantity/food-name.js";
import { readDocuments } from "../../src/imports/documents/read-documents.js";
import { resolveDocuments } from "../../src/imports/documents/resolve-documents.js";
import { foodColumns, foodRowReader } from "../../src/imports/food-rows/read-food-row.js";
import { priceColumns, priceRowReader } from "../../src/imports/prices/read-price-row.js";
import { readRecipes } from "../../src/imports/recipes/read-recipes.js";
import { recipeDraft } from "../../src/imports/recipes/recipe-draft.js";
import { catalogueTable } from "../../src/imports/usda/catalogue-table.js";
import { catalogueFoodColumns, catalogueFoodReader } from "../../src/imports/usda/read-catalogue-food.js";
import { catalogueWeightColumns, catalogueWeightReader } from "../../src/imports/usda/read-catalogue-weight.js";
import { fileKind } from "../../src/imports/images/image-signature.js";
import { readImage } from "../../src/imports/images/read-image.js";
import { sampleImages } from "../kit/sample-images.js";
import { readTable, type TableRow } from "../../src/imports/tables/read-table.js";
import { problemText } from "../../src/exports/sentences/problem-text.js";

/** A reader of files from outside, and good files to begin from. `read` throws where it does not keep its word. */
export interface FuzzTarget {
  readonly name: string;
  readonly seeds: readonly Buffer[];
  read(bytes: Buffer): Promise<void>;
}

const filesIn = async (folder: string): Promise<readonly Buffer[]> =>
  Promise.all((await readdir(folder)).sort().map((name) => readFile(join(folder, name))));

async function* pieces(bytes: Buffer): AsyncGenerator<Uint8Array> {
  for (let from = 0; from < bytes.length; from += 4_096) yield bytes.subarray(from, from + 4_096);
}

/** Every row is there once, in the order of the file, and every refused one says why. */
async function checkRows(rows: AsyncGenerator<readonly TableRow<unknown>[]>): Promise<void> {
  let line = 0;
  for await (const batch of rows) {
    for (const row of batch) {
      if (row.line < line) throw new Error(`line ${String(row.line)} comes after line ${String(line)}`);
      line = row.line;
      if (row.ok) continue;
      if (row.problems.length === 0) throw new Error(`line ${String(row.line)} is refused without a reason`);
      for (const problem of row.problems) problemText(problem);
    }
  }
}

export async function fuzzTargets(): Promise<readonly FuzzTarget[]> {
  const known = { foods: [], components: [] };
  const names = compileFoodNames([]);
  const columnNames = new Map<string, string>();
  return [
    {
      name: "images",
      seeds: Object.values(await sampleImages()),
      read: async (bytes) => {
        const read = await readImage(bytes);
        if (!read.ok) return read.problems.forEach((problem) => void problemText(problem));
        for (const { bytes: made, format } of read.value.made)
          if (fileKind(made) !== format) throw new Error(`what should be ${format} is something else`);
      },
    },
    {
      name: "recipes",
      seeds: await filesIn("tests/fixtures/imports/recipes"),
      read: async (bytes) => {
        const { records, problems, count } = readRecipes(bytes, "file");
        if (records.length + problems.length !== count) throw new Error("a recipe is neither read nor refused");
        for (const { recipe } of records) {
          if (recipe === null) continue;
          recipeDraft(recipe, {
            publisher: "p",
            slug: "s",
            locale: "en",
            measures: "METRIC",
            region: null,
            foods: names,
          });
        }
        for (const { problem } of problems) problemText(problem);
        await Promise.resolve();
      },
    },
    {
      name: "prices",
      seeds: await filesIn("tests/fixtures/imports/prices"),
      read: (bytes) =>
        checkRows(
          readTable(
            pieces(bytes),
            { columns: { ...priceColumns, columnNames }, delimiter: null },
            priceRowReader({
              locale: null,
              measures: "METRIC",
              currency: "XTS",
              region: null,
              seen: "2026-03-01",
              source: "x",
              findFood: (slug) => ({ kind: "FOUND", slug }),
              measuresOf: () => [],
            }),
          ),
        ),
    },
    {
      name: "foods",
      seeds: await filesIn("tests/fixtures/imports/foods"),
      read: (bytes) =>
        checkRows(
          readTable(
            pieces(bytes),
            { columns: { ...foodColumns, columnNames }, delimiter: null },
            foodRowReader({ locale: "en", source: "x", aisle: "other", shoppedBy: "mass" }),
          ),
        ),
    },
    {
      name: "catalogue",
      seeds: await filesIn("tests/fixtures/imports/catalogue"),
      read: async (bytes) => {
        const table = await catalogueTable(pieces(bytes), columnNames, null);
        const columns = table === "FOODS" ? catalogueFoodColumns : catalogueWeightColumns;
        const readRow = table === "FOODS" ? catalogueFoodReader(null) : catalogueWeightReader(null);
        await checkRows(
          readTable<unknown>(pieces(bytes), { columns: { ...columns, columnNames }, delimiter: null }, readRow),
        );
      },
    },
    {
      name: "documents",
      seeds: [...(await filesIn("seeds/components")), ...(await filesIn("seeds/plans"))],
      read: async (bytes) => {
        const { documents, problems } = readDocuments(bytes.toString("utf8"), "file");
        for (const { problem } of [...problems, ...resolveDocuments(documents, known).problems]) problemText(problem);
        await Promise.resolve();
      },
    },
  ];
}
