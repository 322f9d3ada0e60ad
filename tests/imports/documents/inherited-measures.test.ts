import { describe, expect, it } from "vitest";
import { readDocuments } from "../../../src/imports/documents/read-documents.js";
import { resolveDocuments } from "../../../src/imports/documents/resolve-documents.js";
import { catalogueFacts } from "../../../src/imports/usda/catalogue-facts.js";
import { mergeCatalogueFood } from "../../../src/imports/usda/merge-catalogue-food.js";
import { shippedEdition } from "../../../src/imports/usda/read-usda.js";
import { openFoodTable } from "../../kit/open-food-table.js";

const text = `
kind: food
slug: carrot
names: { en: carrot }
aisle: vegetables
shopped-by: mass
usda: "11124"
---
kind: component
slug: grated-carrots
title: Grated carrots
lines:
  - { food: carrot, amount: 2 medium }
yield: { amount: 100 g }
`;

describe("lines that name a measure of the open food table", () => {
  const { documents, problems } = readDocuments(text, "carrots.yaml");
  const nothing = { foods: [], components: [] };

  it("are read where the food inherits it, and the food stays as it was written", () => {
    expect(problems).toEqual([]);
    const resolved = resolveDocuments(documents, {
      ...nothing,
      inherit: (food) => {
        const row = openFoodTable.get(food.ndbNo ?? "");
        return row === undefined ? food : mergeCatalogueFood(food, catalogueFacts(row, shippedEdition));
      },
    });
    expect(resolved.problems).toEqual([]);
    expect(resolved.components[0]?.value.lines[0]?.amount).toEqual({ low: "2", high: "2", unit: "own:medium" });
    expect(resolved.foods[0]?.value).toMatchObject({ ndbNo: "11124", measures: [], nutrients: null });
  });

  it("are a fault where it does not", () => {
    expect(resolveDocuments(documents, nothing).problems.map(({ problem }) => problem.code)).toEqual(["UNKNOWN_UNIT"]);
  });
});
