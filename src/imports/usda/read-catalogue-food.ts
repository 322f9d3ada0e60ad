import type { CatalogueRow } from "../../domain/model/catalogue-row.js";
import type { NutrientCode } from "../../domain/model/food.js";
import { failed, gatherProblems, ok, type Result } from "../../domain/problem.js";
import type { Cells, TableColumns } from "../tables/read-table.js";
import { badCell } from "../tables/bad-cell.js";
import { catalogueNumber, numberOfFood } from "./catalogue-number.js";
import { aisleOf } from "./food-group-aisles.js";
import type { CatalogueFoodFacts } from "../../domain/component/revise-catalogue-row.js";

const nutrientColumns = {
  energyKcal: "kcal",
  proteinG: "protein_g",
  fatG: "fat_g",
  saturatedFatG: "sat_fat_g",
  carbohydrateG: "carbohydrate_g",
  sugarsG: "sugars_g",
  fibreG: "fibre_g",
  sodiumMg: "sodium_mg",
  calciumMg: "calcium_mg",
  ironMg: "iron_mg",
  potassiumMg: "potassium_mg",
  vitaminCMg: "vitamin_c_mg",
  cholesterolMg: "cholesterol_mg",
  waterG: "water_g",
} as const satisfies Record<NutrientCode, string>;
const nutrients = Object.entries(nutrientColumns) as readonly [NutrientCode, string][];

/** A row says all that is known of a food, so a column that is missing would read as thousands of facts taken back. */
export const catalogueFoodColumns: Omit<TableColumns, "columnNames"> = {
  needed: [
    ...["ndb_no", "food_group", "description", "other_names", "refuse", "refuse_pct"],
    ...Object.values(nutrientColumns),
  ],
  optional: [],
};

/** The most in 100 g: grams of it, or milligrams; of kilocalories what pure fat has, and a margin. */
const mostOf = (code: NutrientCode): number => (code === "energyKcal" ? 1000 : code.endsWith("Mg") ? 100_000 : 100);

/** The longest description, and list of other names, in characters. */
const longestText = 500;

/** A reader for the rows of the table of foods. Every fault of a row is listed, each under the name of its column. */
export function catalogueFoodReader(locale: string | null): (cells: Cells) => Result<CatalogueFoodFacts> {
  return (cells) => {
    const { problems, note } = gatherProblems();
    const ndbNo = note(numberOfFood(cells.get("ndb_no")));
    const description = cells.get("description");
    if (description === "" || description.length > longestText)
      problems.push(badCell("description", `a description of at most ${String(longestText)} characters`, description));
    for (const column of ["other_names", "refuse"]) {
      const written = cells.get(column);
      if (written.length > longestText)
        problems.push(badCell(column, `at most ${String(longestText)} characters`, written));
    }
    const measured = nutrients.flatMap(([code, column]): readonly [NutrientCode, number][] => {
      const value = note(nutrientOf(code, column, cells.get(column), locale));
      return value === null ? [] : [[code, value]];
    });
    const refuse = note(refuseOf(cells, locale));
    if (problems.length > 0 || ndbNo === null) return failed(problems);
    const otherNames = cells
      .get("other_names")
      .split(",")
      .map((name) => name.trim())
      .filter((name) => name !== "");
    const aisle = aisleOf(cells.get("food_group"));
    return ok({ ndbNo, description, otherNames, aisle, per100g: Object.fromEntries(measured), refuse });
  };
}

function nutrientOf(code: NutrientCode, column: string, written: string, locale: string | null): Result<number | null> {
  const read = catalogueNumber(column, written, locale);
  if (!read.ok || read.value === null) return read as Result<null>;
  const most = mostOf(code);
  return Number(read.value) <= most
    ? ok(Number(read.value))
    : failed([badCell(column, `at most ${String(most)} in 100 g`, written)]);
}

function refuseOf(cells: Cells, locale: string | null): Result<CatalogueRow["refuse"]> {
  const written = cells.get("refuse_pct");
  const read = catalogueNumber("refuse_pct", written, locale);
  if (!read.ok) return read;
  if (read.value === null) return ok(null);
  return Number(read.value) < 100
    ? ok({ percent: read.value, what: cells.get("refuse") })
    : failed([badCell("refuse_pct", "a percentage below 100", written)]);
}
