import { describe, expect, it } from "vitest";
import { foodColumns, foodRowReader, type FoodRow } from "../../../src/imports/food-rows/read-food-row.js";
import { readTable } from "../../../src/imports/tables/read-table.js";

import type { TableRow } from "../../../src/imports/tables/read-table.js";

async function* once(text: string): AsyncGenerator<Uint8Array> {
  yield Buffer.from(text);
}

async function rowsOf(text: string, locale = "en"): Promise<readonly TableRow<FoodRow>[]> {
  const rows: TableRow<FoodRow>[] = [];
  const options = { locale, source: "Allotment society, food table", aisle: "other", shoppedBy: "mass" } as const;
  const columns = { ...foodColumns, columnNames: new Map<string, string>() };
  for await (const batch of readTable(once(text), { columns, delimiter: null }, foodRowReader(options)))
    rows.push(...batch);
  return rows;
}

describe("a table of foods", () => {
  it("gives foods whose every fact has its source, and leaves empty cells unknown", async () => {
    const text = [
      "slug,name,plural,also,aisle,shopped-by,grams-per-piece,edible-percent,energy-kcal,protein-g,contains,may-contain,source",
      "moon-turnip,moon turnip,moon turnips,pale turnip|night turnip,roots,count,85,81,28,0.9,,celery,",
      "moon-cheese,moon cheese,,,dairy,mass,,,402,,milk,,Label of the dairy",
    ].join("\n");
    const [turnip, cheese] = (await rowsOf(text)).map((row) => (row.ok ? row.value.food : row.problems));
    const source = { kind: "PUBLISHED", title: "Allotment society, food table", section: null };
    expect(turnip).toMatchObject({
      slug: "moon-turnip",
      names: [{ language: "en", one: "moon turnip", many: "moon turnips", also: ["pale turnip", "night turnip"] }],
      shoppedBy: "COUNT",
      measures: [{ name: "piece", grams: 85, source }],
      edible: [{ form: null, share: 0.81, source }],
      nutrients: { per100g: { energyKcal: 28, proteinG: 0.9 }, source },
      allergens: [{ code: "celery", presence: "MAY_CONTAIN", source }],
    });
    expect(cheese).toMatchObject({
      allergens: [{ code: "milk", presence: "CONTAINS", source: { title: "Label of the dairy" } }],
      nutrients: { per100g: { energyKcal: 402 } },
      measures: [],
    });
  });

  it("reads numbers by the language of the file, and never guesses one", async () => {
    const text =
      "slug;name;protein-g;energy-kcal\nmilch;Milch;3,4;64\nsahne;Sahne;2.4;300\nkaese;Käse;1.000,5;400\nquark;Quark;2-Jan;70\n";
    const rows = await rowsOf(text, "de");
    expect(
      rows.map((row) =>
        row.ok ? row.value.food.nutrients?.per100g.proteinG : row.problems.map(({ code, path }) => [code, ...path]),
      ),
    ).toEqual([3.4, [["BAD_SHAPE", "protein-g"]], [["BAD_SHAPE", "protein-g"]], [["CELL_IS_A_DATE", "protein-g"]]]);
  });

  it("lists what is wrong under the columns of the row", async () => {
    const rows = await rowsOf("slug,name,aisle,shopped-by,edible-percent,usda\nBad Slug,,roots,by-the-yard,0,1\n");
    const [row] = rows;
    expect(row?.ok).toBe(false);
    if (row?.ok === false) {
      expect(row.problems.map(({ path }) => path[0])).toEqual(
        expect.arrayContaining(["slug", "name", "shopped-by", "edible-percent", "usda"]),
      );
    }
  });
});
