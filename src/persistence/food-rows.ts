import type { Food, FoodName } from "../domain/model/food.js";
import { foldText } from "./fold-words.js";
import type { Prisma } from "./generated/client.js";
import { fromJson } from "./json-column.js";
import { dateText, sourceOf } from "./source-columns.js";

export const foodTree = {
  words: { orderBy: [{ entry: "asc" }, { place: "asc" }] },
  packs: { orderBy: { position: "asc" } },
} as const satisfies Prisma.FoodInclude;

export type FoodRow = Prisma.FoodGetPayload<{ include: typeof foodTree }>;

export function foodOf(row: FoodRow): Food {
  return {
    slug: row.slug,
    names: namesOf(row.words),
    aisle: row.aisle,
    shoppedBy: row.shoppedBy,
    ndbNo: row.ndbNo,
    densities: fromJson(row.densities),
    measures: fromJson(row.measures),
    parts: fromJson(row.parts),
    edible: fromJson(row.edible),
    yields: fromJson(row.yields),
    allergens: fromJson(row.allergens),
    diets: fromJson(row.diets),
    nutrients: fromJson(row.nutrients),
    keepsAs: row.keepsAs,
    keeping: fromJson(row.keeping),
    packs: row.packs.map((pack) => ({
      id: pack.id,
      name: pack.name,
      content: { low: pack.contentLow, high: pack.contentHigh, unit: pack.contentUnit },
      price:
        pack.priceAmount === null || pack.priceCurrency === null
          ? null
          : { amount: pack.priceAmount, currency: pack.priceCurrency },
      region: pack.region,
      seen: dateText(pack.seen),
      source: sourceOf(pack),
    })),
    alwaysThere: row.alwaysThere,
  };
}

/** Word forms in order of entry and place: one, many, then the other words. */
function namesOf(words: FoodRow["words"]): readonly FoodName[] {
  const entries = [...new Set(words.map(({ entry }) => entry))];
  return entries.flatMap((each) => {
    const [one, many, ...also] = words.filter(({ entry }) => entry === each);
    if (one === undefined || many === undefined) return [];
    const { language, region } = one;
    return [{ language, region, one: one.text, many: many.text, also: also.map(({ text }) => text) }];
  });
}

/** Columns of the table `foods`, named as in the database; the rest of a food is rows of two other tables. */
export const foodColumns = (food: Food) => ({
  slug: food.slug,
  aisle: food.aisle,
  shopped_by: food.shoppedBy,
  ndb_no: food.ndbNo,
  keeps_as: food.keepsAs,
  always_there: food.alwaysThere,
  densities: food.densities,
  measures: food.measures,
  parts: food.parts,
  edible: food.edible,
  yields: food.yields,
  allergens: food.allergens,
  diets: food.diets,
  nutrients: food.nutrients,
  keeping: food.keeping,
});

export const wordRows = (foodId: string, food: Food) =>
  food.names.flatMap(({ language, region, one, many, also }, entry) =>
    [one, many, ...also].map((text, place) => ({
      food_id: foodId,
      entry,
      place,
      language,
      region,
      text,
      folded: foldText(text),
    })),
  );

export const packRows = (foodId: string, food: Food) =>
  food.packs.map(({ id, name, content, price, region, seen, source }, position) => ({
    food_id: foodId,
    position,
    id,
    name,
    content_low: content.low,
    content_high: content.high,
    content_unit: content.unit,
    price_amount: price?.amount ?? null,
    price_currency: price?.currency ?? null,
    region,
    seen,
    source_kind: source.kind,
    source_title: source.title,
    source_section: source.section,
  }));
