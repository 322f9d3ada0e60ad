import { describe, expect, it } from "vitest";
import { toDimension } from "../../../src/domain/quantity/convert.js";
import { catalogueFacts } from "../../../src/imports/usda/catalogue-facts.js";
import { mergeCatalogueFood } from "../../../src/imports/usda/merge-catalogue-food.js";
import { shippedEdition } from "../../../src/imports/usda/read-usda.js";
import type { Food } from "../../../src/domain/model/food.js";
import { referenceTable, sourceOf, type Row } from "../../domain/quantity/reference-table.js";
import { food } from "../../kit/builders.js";
import { openFoodTable } from "../../kit/open-food-table.js";

/** A food of which its writer says nothing but the number. */
const inherited = (ndbNo: string): Food | null => {
  const row = openFoodTable.get(ndbNo);
  return row === undefined ? null : mergeCatalogueFood(food("it", { ndbNo }), catalogueFacts(row, shippedEdition));
};

const numberIn = (row: Row): string => /NDB (\d{5})/.exec(row["source_section"] ?? "")?.[1] ?? "";

/** Rows of later releases that are about a food the committed table has too. */
const known = (table: string, section: RegExp): readonly { readonly ndb: string; readonly row: Row }[] =>
  referenceTable(table).flatMap((row) => {
    const ndb = numberIn(row);
    return section.test(row["source_section"] ?? "") && openFoodTable.has(ndb) ? [{ ndb, row }] : [];
  });

// The tables print Release 28; Release 26 printed something else for these, as figure by figure in its own file.
const edibleOfRelease26: Readonly<Record<string, number>> = { "11233": 0.61 };
const gramsOfRelease26: Readonly<Record<string, number>> = { '20037 "cup"': 195 };

describe("the edible portion that a food inherits", () => {
  const rows = known("yields", /^Food Description file/);

  it("is published for dozens of its foods", () => expect(rows.length).toBeGreaterThan(45));

  it.each(rows)("is what the row of $ndb does not throw away", ({ ndb, row }) => {
    expect(inherited(ndb)?.edible[0]?.share, sourceOf(row)).toBeCloseTo(
      edibleOfRelease26[ndb] ?? Number(row["yield_pct"]) / 100,
      9,
    );
  });
});

describe("the cups that a food inherits", () => {
  const rows = known("densities", /^Weight file, NDB \d{5}, "(cup|tbsp|tsp)/).filter(({ ndb, row }) => {
    const measure = /"([^"]*)/.exec(row["source_section"] ?? "")?.[1];
    return openFoodTable.get(ndb)?.weights.some((weight) => weight.measure === measure);
  });

  it("are published for dozens of its foods", () => expect(rows.length).toBeGreaterThan(60));

  it.each(rows)("weigh what the row of $ndb says", ({ ndb, row }) => {
    const measure = /"([^"]*)/.exec(row["source_section"] ?? "")?.[1] ?? "";
    const found = inherited(ndb);
    const density = found?.densities.find(({ source }) => source.section === `Weight file, NDB ${ndb}, "${measure}"`);
    // Of several measures of one form the largest counts; a smaller one is rounded more.
    if (density === undefined) return expect(found?.densities.length, sourceOf(row)).toBeGreaterThan(0);
    const unit = `us-${/^(cup|tbsp|tsp)/.exec(measure)?.[1]}`;
    const weighed = toDimension(
      { low: "1", high: "1", unit },
      "MASS",
      { ...food("it"), densities: [density] },
      density.form,
    );
    const times = Number.parseFloat(row["measure"] ?? "");
    const grams = gramsOfRelease26[`${ndb} "${measure}"`] ?? Number(row["mass_g"]);
    return expect(weighed.ok && weighed.amount.low * times, sourceOf(row)).toBeCloseTo(grams, 6);
  });
});
