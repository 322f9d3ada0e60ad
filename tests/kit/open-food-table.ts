import { readFileSync } from "node:fs";
import type { CatalogueRow } from "../../src/domain/model/catalogue-row.js";
import { readUsda } from "../../src/imports/usda/read-usda.js";

const bytes = (name: string): Uint8Array => readFileSync(new URL(`../../seeds/catalogue/${name}`, import.meta.url));

/** The committed open food table, by number. */
export const openFoodTable: ReadonlyMap<string, CatalogueRow> = readUsda(
  bytes("usda-sr26-foods.csv"),
  bytes("usda-sr26-weights.csv"),
).foods;
