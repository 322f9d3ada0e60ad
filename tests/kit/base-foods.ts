import { readBaseFolder } from "../../src/app/setup/read-base-folder.js";
import { readRulesFolder } from "../../src/app/setup/read-rules-folder.js";
import { readShippedDocuments } from "../../src/app/setup/shipped-data.js";
import type { Food } from "../../src/domain/model/food.js";
import { shippedEdition } from "../../src/imports/usda/read-usda.js";
import { catalogueFacts } from "../../src/imports/usda/catalogue-facts.js";
import { mergeCatalogueFood } from "../../src/imports/usda/merge-catalogue-food.js";

/** The base foods as written, with what each inherits from the open table, and the rules that come beside them. */
export async function readBase() {
  const { edition, foods } = await readBaseFolder("seeds");
  const rows = new Map((await readShippedDocuments("catalogue", ".")).map((row) => [row.ndbNo, row]));
  const whole = foods.map((food): Food => {
    const row = rows.get(food.ndbNo ?? "");
    return row === undefined ? food : mergeCatalogueFood(food, catalogueFacts(row, shippedEdition));
  });
  return { edition, foods, whole, rules: await readRulesFolder("seeds/rules") };
}
