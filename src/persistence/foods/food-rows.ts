import type { Food, FoodName } from "../../domain/model/food.js";
import { foldText } from "../sql/fold-words.js";
import { Prisma } from "../generated/client.js";

/** One word form of a name. */
type Word = readonly [entry: number, language: string, region: string | null, text: string, place: number];

/** Where the form after numbers stands: behind all other words, so that a release that does not know it reads it as one of them. */
const placeOfCounted = 1000;

/** JSON columns, and packs, are in the shape of the domain already; names are put together from their words. */
export type FoodRow = Omit<Food, "names"> & { readonly id: string; readonly words: readonly Word[] };

/** The words of a food f. */
export const wordsOfFood = Prisma.sql`
  (SELECT jsonb_agg(jsonb_build_array(w.entry, w.language, w.region, w.text, w.place) ORDER BY w.entry, w.place)
    FROM food_words w WHERE w.food_id = f.id)`;

/** A pack that is not sold loose has no such key. */
const looseOf = (column: Prisma.Sql): Prisma.Sql =>
  Prisma.sql`CASE WHEN ${column} IS NULL THEN '{}' ELSE jsonb_build_object('loose', ${column}) END`;

/**
 * Foods f with everything that belongs to them. A pack that a price list names goes before one of the same id in the food's
 * own document; of several lists the one seen last. Written by hand, because this is read often: the client's own joins took
 * nearly three times as long. Slugs of foods sort by bytes, those of listed packs do not: without the collation of the
 * latter every food would read all listed packs.
 */
export const selectFoods = Prisma.sql`
  SELECT f.id, f.slug, f.aisle, f.shopped_by AS "shoppedBy", f.ndb_no AS "ndbNo", f.keeps_as AS "keepsAs",
    f.always_there AS "alwaysThere", f.densities, f.measures, f.parts, f.edible, f.yields, f.allergens, f.diets,
    f.single_ingredient AS "singleIngredient", f.nutrients, f.keeping,
    f.shelf_stable AS "shelfStable", ${wordsOfFood} AS words,
    COALESCE((SELECT jsonb_agg(jsonb_build_object(
        'id', k.id, 'name', k.name, 'region', k.region, 'seen', k.seen,
        'content', jsonb_build_object('low', k.content_low, 'high', k.content_high, 'unit', k.content_unit),
        'price', CASE WHEN k.price_amount IS NOT NULL
          THEN jsonb_build_object('amount', k.price_amount, 'currency', k.price_currency) END,
        'source', jsonb_build_object('kind', k.source_kind, 'title', k.source_title, 'section', k.source_section)
      ) || ${looseOf(Prisma.sql`k.loose`)} ORDER BY k.position) FROM packs k WHERE k.food_id = f.id
        AND NOT EXISTS (SELECT FROM listed_packs o WHERE o.food = f.slug COLLATE "default" AND o.pack_id = k.id)), '[]')
    || COALESCE((SELECT jsonb_agg(l.pack ORDER BY l.pack_id) FROM (
        SELECT DISTINCT ON (p.pack_id) p.pack_id, jsonb_build_object(
          'id', p.pack_id, 'name', p.name, 'region', p.region, 'seen', p.seen,
          'content', jsonb_build_object('low', p.content_low, 'high', p.content_high, 'unit', p.content_unit),
          'price', CASE WHEN p.price_amount IS NOT NULL
            THEN jsonb_build_object('amount', p.price_amount, 'currency', p.price_currency) END,
          'source', jsonb_build_object('kind', 'PUBLISHED', 'title', COALESCE(d.settings->>'source', d.slug), 'section', NULL)
        ) || ${looseOf(Prisma.sql`p.loose`)} AS pack
        FROM listed_packs p JOIN feeds d ON d.id = p.feed_id WHERE p.food = f.slug COLLATE "default"
        ORDER BY p.pack_id, p.seen DESC, d.slug) l), '[]') AS packs
  FROM foods f`;

export function foodOf({ id: _id, words, slug, singleIngredient, shelfStable, ...facts }: FoodRow): Food {
  return {
    slug,
    names: namesOf(words),
    ...facts,
    ...(singleIngredient ? { singleIngredient } : {}),
    ...(shelfStable === true ? { shelfStable } : {}),
  };
}

/** Word forms in order of entry and place: one, many, the other words, then the form after numbers where there is one. */
export function namesOf(words: readonly Word[]): readonly FoodName[] {
  const entries = [...new Set(words.map(([entry]) => entry))];
  return entries.flatMap((each) => {
    const [one, many, ...others] = words.filter(([entry]) => entry === each);
    if (one === undefined || many === undefined) return [];
    const [, language, region] = one;
    const also = others.filter(([, , , , place]) => place !== placeOfCounted).map(([, , , text]) => text);
    const counted = others.length > also.length ? { counted: others.at(-1)?.[3] ?? many[3] } : {};
    return [{ language, region, one: one[3], many: many[3], ...counted, also }];
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
  single_ingredient: food.singleIngredient ?? null,
  nutrients: food.nutrients,
  keeping: food.keeping,
  shelf_stable: food.shelfStable ?? false,
});

export const wordRows = (foodId: string, food: Food) =>
  food.names.flatMap(({ language, region, one, many, counted, also }, entry) =>
    [
      ...[one, many, ...also].map((text, place) => ({ text, place })),
      ...(counted === undefined ? [] : [{ text: counted, place: placeOfCounted }]),
    ].map(({ text, place }) => ({
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
  food.packs.map(({ id, name, content, price, region, seen, source, loose }, position) => ({
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
    loose: loose ?? null,
  }));
