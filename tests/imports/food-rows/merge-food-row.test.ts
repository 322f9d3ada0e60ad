import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { AllergenPresence, Food } from "../../../src/domain/model/food.js";
import { mergeFoodRow } from "../../../src/imports/food-rows/merge-food-row.js";
import { foodColumns, foodRowReader, type FoodRow } from "../../../src/imports/food-rows/read-food-row.js";

const reader = foodRowReader({ locale: "en", source: "Table of the shop", aisle: "other", shoppedBy: "mass" });

/** A row with these cells and no other column. */
const row = (cells: Readonly<Record<string, string>>): FoodRow => {
  const read = reader({ get: (column) => cells[column] ?? "" });
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
};

const spread = row({
  ...{ slug: "moon-spread", name: "moon spread", plural: "moon spreads", also: "night spread", aisle: "breakfast" },
  ...{ "shopped-by": "count", "keeps-as": "", "grams-per-piece": "40", "energy-kcal": "610", "sodium-mg": "12" },
  ...{ contains: "peanut|milk", "may-contain": "sesame", source: "Label of the maker" },
}).food;

const laid = (cells: Readonly<Record<string, string>>, was: Food = spread, answeredFor = false) =>
  mergeFoodRow(was, row({ slug: "moon-spread", name: "moon spread", ...cells }), answeredFor);

const presences = ({ allergens }: Food) => Object.fromEntries(allergens.map(({ code, presence }) => [code, presence]));

describe("a row over a food that is there", () => {
  it("keeps every fact that the row says nothing of, whether its column is missing or empty", () => {
    expect(laid({})).toEqual({ food: spread, problems: [] });
    const empty = Object.fromEntries([...foodColumns.optional].map((column) => [column, ""]));
    expect(laid(empty)).toEqual({ food: spread, problems: [] });
  });

  it("takes the place of what it does say, and names whose the other figures are", () => {
    const { food, problems } = laid({ "energy-kcal": "600", "grams-per-piece": "45", aisle: "spreads" });
    expect(problems).toEqual([]);
    expect(food).toMatchObject({
      aisle: "spreads",
      shoppedBy: "COUNT",
      measures: [{ name: "piece", grams: 45 }],
      nutrients: {
        per100g: { energyKcal: 600, sodiumMg: 12 },
        source: { title: "Table of the shop", section: "energyKcal; the other figures: Label of the maker" },
      },
    });
    expect(presences(food)).toEqual(presences(spread));
    expect(laid({ "energy-kcal": "600", "grams-per-piece": "45", aisle: "spreads" }, food).food).toEqual(food);
  });

  it("adds a name in another language beside the names that are there", () => {
    const german = foodRowReader({ locale: "de", source: "x", aisle: "other", shoppedBy: "mass" });
    const read = german({ get: (column) => ({ slug: "moon-spread", name: "Mondcreme" })[column] ?? "" });
    if (!read.ok) throw new Error("not read");
    expect(mergeFoodRow(spread, read.value, false).food.names.map(({ one }) => one)).toEqual([
      "moon spread",
      "Mondcreme",
    ]);
  });

  it.each([
    ["free-from", "peanut", "CONTAINS", "DOES_NOT_CONTAIN"],
    ["may-contain", "milk", "CONTAINS", "MAY_CONTAIN"],
    ["free-from", "sesame", "MAY_CONTAIN", "DOES_NOT_CONTAIN"],
  ])("is put aside where %s says less of %s than is known", (column, code, was, now) => {
    const { food, problems } = laid({ [column]: code });
    expect(problems).toEqual([
      { code: "ALLERGEN_WEAKENED", path: [column], food: "moon-spread", allergen: code, was, now },
    ]);
    expect(presences(food)).toEqual(presences(spread));
  });

  it("takes an allergen away where a person answers for the row", () => {
    const { food, problems } = laid({ "free-from": "peanut" }, spread, true);
    expect([problems, presences(food)["peanut"], presences(food)["milk"]]).toEqual([
      [],
      "DOES_NOT_CONTAIN",
      "CONTAINS",
    ]);
  });

  it("never leaves less care than there was, whatever any row says", () => {
    const care: readonly AllergenPresence[] = ["CONTAINS", "MAY_CONTAIN"];
    const codes = fc.subarray(["peanut", "milk", "sesame", "egg", "soy"]).map((some) => some.join("|"));
    fc.assert(
      fc.property(codes, codes, codes, (contains, maybe, free) => {
        const column = { contains, "may-contain": maybe, "free-from": free };
        const before = laid({ contains: "peanut", "may-contain": "sesame" }).food;
        const read = reader({
          get: (name) =>
            ({ slug: "moon-spread", name: "moon spread", ...column })[name as keyof typeof column | "slug"] ?? "",
        });
        // One code in two columns is refused before it is laid over anything.
        if (!read.ok) return;
        const { food } = mergeFoodRow(before, read.value, false);
        for (const { code, presence } of before.allergens) {
          const at = care.indexOf(presence);
          if (at < 0) continue;
          const now = presences(food)[code];
          expect(care.slice(0, at + 1)).toContain(now);
        }
      }),
    );
  });
});
