import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { problemText } from "../../exports/sentences/problem-text.js";
import {
  readBaseFoods,
  type BaseFoods,
  type BaseFoodsInput,
  type BaseFoodsRead,
} from "../../imports/base-foods/read-base-foods.js";
import { readUsda, shippedEdition } from "../../imports/usda/read-usda.js";
import { readRulesFolder } from "./read-rules-folder.js";

/** The published tables that entries refer to, as text. */
export interface BaseTables {
  readonly storage: string;
  readonly cooked: string;
  readonly weights: string;
}

export async function readBaseTables(seeds: string): Promise<BaseTables> {
  const [storage, cooked, weights] = await Promise.all(
    ["base/usda-fsis-home-storage.csv", "base/cooked-yields.csv", "catalogue/usda-sr26-weights.csv"].map((name) =>
      readFile(join(seeds, name), "utf8"),
    ),
  );
  if (storage === undefined || cooked === undefined || weights === undefined)
    throw new Error("the base has three tables");
  return { storage, cooked, weights };
}

/** The tables as the reader of entries takes them. */
export function tableBytes({ storage, cooked, weights }: BaseTables): Pick<BaseFoodsInput, keyof BaseTables> {
  const encoder = new TextEncoder();
  return { storage: encoder.encode(storage), cooked: encoder.encode(cooked), weights: encoder.encode(weights) };
}

/** The base foods below `seeds/base`, with what is wrong with them. */
export async function readBaseFiles(seeds: string): Promise<BaseFoodsRead> {
  const folder = join(seeds, "base");
  const names = (await readdir(folder)).filter((name) => name.endsWith(".yaml")).sort();
  const [files, tables, foods, rules] = await Promise.all([
    Promise.all(names.map(async (name) => ({ name, text: await readFile(join(folder, name), "utf8") }))),
    readBaseTables(seeds),
    readFile(join(seeds, "catalogue/usda-sr26-foods.csv")),
    readRulesFolder(join(seeds, "rules")),
  ]);
  const bytes = tableBytes(tables);
  const catalogue = { edition: shippedEdition, rows: readUsda(foods, bytes.weights).foods };
  return readBaseFoods({ files, ...bytes, catalogue, rules: rules.safety });
}

/** The base foods that come with the program. Files that do not pass the checks are a fault of the program. */
export async function readBaseFolder(seeds: string): Promise<BaseFoods> {
  const { base, problems } = await readBaseFiles(seeds);
  if (base !== null) return base;
  const [first] = problems;
  const where = first === undefined ? seeds : `${first.file}:${String(first.line)}: ${problemText(first.problem)}`;
  throw new Error(`the base foods are invalid: ${where}`);
}
