import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { problemText } from "../../exports/sentences/problem-text.js";
import { readBaseFoods, type BaseFoods, type BaseFoodsRead } from "../../imports/base-foods/read-base-foods.js";
import { readUsda, shippedEdition } from "../../imports/usda/read-usda.js";
import { readRulesFolder } from "./read-rules-folder.js";

/** The base foods below `seeds/base`, with what is wrong with them. */
export async function readBaseFiles(seeds: string): Promise<BaseFoodsRead> {
  const folder = join(seeds, "base");
  const bytes = (name: string) => readFile(join(seeds, name));
  const names = (await readdir(folder)).filter((name) => name.endsWith(".yaml")).sort();
  const [files, storage, cooked, foods, weights, rules] = await Promise.all([
    Promise.all(names.map(async (name) => ({ name, text: await readFile(join(folder, name), "utf8") }))),
    bytes("base/usda-fsis-home-storage.csv"),
    bytes("base/cooked-yields.csv"),
    bytes("catalogue/usda-sr26-foods.csv"),
    bytes("catalogue/usda-sr26-weights.csv"),
    readRulesFolder(join(seeds, "rules")),
  ]);
  const catalogue = { edition: shippedEdition, rows: readUsda(foods, weights).foods };
  return readBaseFoods({ files, storage, cooked, weights, catalogue, rules: rules.safety });
}

/** The base foods that come with the program. Files that do not pass the checks are a fault of the program. */
export async function readBaseFolder(seeds: string): Promise<BaseFoods> {
  const { base, problems } = await readBaseFiles(seeds);
  if (base !== null) return base;
  const [first] = problems;
  const where = first === undefined ? seeds : `${first.file}:${String(first.line)}: ${problemText(first.problem)}`;
  throw new Error(`the base foods are refused: ${where}`);
}
