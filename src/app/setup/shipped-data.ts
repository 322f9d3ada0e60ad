import { hash } from "node:crypto";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { CatalogueRow } from "../../domain/model/catalogue-row.js";
import type { Component } from "../../domain/model/component.js";
import type { Food } from "../../domain/model/food.js";
import type { Plan } from "../../domain/model/plan.js";
import type { Translation } from "../../domain/model/translation.js";
import type { RuleSet } from "../../domain/plan/compile/rule-set.js";
import { problemText } from "../../exports/sentences/problem-text.js";
import { hasCode } from "../../persistence/database/has-code.js";
import type { DemoImage } from "./read-demo-images.js";
import type { BaseTables } from "./read-base-folder.js";
import type { ShippedBaseFoods } from "../../services/foods/load-base-foods.js";
import type { ShippedCatalogue } from "../../services/foods/load-catalogue.js";

/** The demo, read and checked. */
interface DemoData {
  readonly publisher: { readonly slug: string; readonly name: string };
  readonly foods: readonly Food[];
  readonly components: readonly Component[];
  readonly plans: readonly Plan[];
  readonly translations: readonly Translation[];
  readonly images: readonly DemoImage[];
}

/** Data that comes with the program, by the name of the file the build puts it in. */
interface Shipped {
  readonly demo: DemoData;
  readonly "catalogue-edition": ShippedCatalogue;
  readonly catalogue: readonly CatalogueRow[];
  readonly rules: RuleSet;
  readonly "base-edition": ShippedBaseFoods;
  readonly "base-foods": readonly Food[];
  readonly "base-tables": BaseTables;
}

/** From the documents below `seeds`. What does not pass the checks is a fault of the program. */
const readers: { readonly [Name in keyof Shipped]: (root: string) => Promise<Shipped[Name]> } = {
  demo: async (root) => {
    const { readSeeds } = await import("./read-seeds.js");
    const { publisher, foods, components, plans, translations, problems } = await readSeeds(join(root, "seeds"));
    const [first] = problems;
    if (first !== undefined) throw new Error(`${first.file}:${first.line}: ${problemText(first.problem)}`);
    const { readDemoImages } = await import("./read-demo-images.js");
    const images = await readDemoImages(join(root, "seeds/images"));
    return { publisher, foods, components, plans, translations, images };
  },
  "catalogue-edition": async (root) => {
    const { edition, hash } = await readCatalogue(root);
    return { edition, hash };
  },
  catalogue: async (root) => (await readCatalogue(root)).rows,
  "base-edition": async (root) => {
    const { edition, foods } = await readBase(root);
    return { ...edition, hash: hash("sha256", JSON.stringify(foods)) };
  },
  "base-foods": async (root) => (await readBase(root)).foods,
  "base-tables": async (root) => (await import("./read-base-folder.js")).readBaseTables(join(root, "seeds")),
  rules: async (root) => {
    const { readRulesFolder } = await import("./read-rules-folder.js");
    return readRulesFolder(join(root, "seeds/rules"));
  },
};

const readBase = async (root: string) => (await import("./read-base-folder.js")).readBaseFolder(join(root, "seeds"));

/** The open food table as it is committed. */
async function readCatalogue(root: string): Promise<ShippedCatalogue & { readonly rows: readonly CatalogueRow[] }> {
  const { readUsda, shippedEdition: edition } = await import("../../imports/usda/read-usda.js");
  const [foodBytes, weightBytes] = await Promise.all(
    ["foods", "weights"].map((name) => readFile(join(root, "seeds/catalogue", `usda-sr26-${name}.csv`))),
  );
  if (foodBytes === undefined || weightBytes === undefined) throw new Error("the open food table has two files");
  const { foods, problems } = readUsda(foodBytes, weightBytes);
  const [first] = problems;
  if (first !== undefined) throw new Error(`${first.file}:${first.line}: ${problemText(first.problem)}`);
  const rows = [...foods.values()];
  return { edition, hash: hash("sha256", JSON.stringify(rows)), rows };
}

/** Reads the documents themselves: what the build does once, so that a start need not. */
export const readShippedDocuments = <Name extends keyof Shipped>(name: Name, root: string): Promise<Shipped[Name]> =>
  readers[name](root);

/** What the build left beside this file, or else the documents: there is no build when the sources run by themselves. */
export async function readShipped<Name extends keyof Shipped>(name: Name, root: string): Promise<Shipped[Name]> {
  const built = await readFile(new URL(`./${name}.json`, import.meta.url), "utf8").catch((error: unknown) => {
    if (hasCode(error, "ENOENT")) return null;
    throw error;
  });
  if (built === null) return readShippedDocuments(name, root);
  return JSON.parse(built) as Shipped[Name];
}
