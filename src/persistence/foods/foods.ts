import { z } from "zod";
import type { Food } from "../../domain/model/food.js";
import { checksumOf } from "../sql/canonical-json.js";
import type { Data, FoodFilter } from "../data.js";
import type { Page, PageRequest } from "../sql/page.js";
import { foodColumns, foodOf, packRows, selectFoods, wordRows, type FoodRow } from "./food-rows.js";
import { foodNames } from "./food-names.js";
import { baseFoodData } from "./base-foods.js";
import { Prisma } from "../generated/client.js";
import { inOrder, isId } from "../sql/keys.js";
import { readPage } from "../sql/read-page.js";
import { transactionSession, type Db, type Session } from "../database/session.js";
import { isStorable, storable } from "../sql/storable-text.js";
import { synonymsOf } from "./synonyms.js";

interface FoodsSaved {
  readonly changed: number;
  /** Slugs. */
  readonly added: readonly string[];
  readonly replaced: readonly string[];
}

export function foodData(session: Session): Data["foods"] {
  const { db } = session;
  return {
    save: async (foods) => saveFoods(session, storable(foods), false),
    ...baseFoodData(session, (db, foods) => saveFoods(transactionSession(db), foods, true)),
    bySlugs: (slugs) => foodsBySlugs(db, slugs),
    byIds: async (ids) => {
      const rows = await db.$queryRaw<FoodRow[]>`${selectFoods} WHERE f.id = ANY(${ids.filter(isId)}::uuid[])`;
      const found = rows.map((row) => ({ id: row.id, food: foodOf(row) }));
      return inOrder(ids, found, ({ id }) => id, String);
    },
    idsBySlugs: async (slugs) => {
      const rows = await db.food.findMany({
        where: { slug: { in: slugs.filter(isStorable) } },
        select: { id: true, slug: true },
      });
      return inOrder(slugs, rows, ({ slug }) => slug, String).map((row) => row?.id ?? null);
    },
    page: (filter, request) => foodPage(db, filter, request),
    measures: async () => {
      const rows = await db.$queryRaw<Pick<Food, "slug" | "measures">[]>`SELECT slug, measures FROM foods`;
      return new Map(rows.map(({ slug, measures }) => [slug, measures]));
    },
    names: () => foodNames(db),
    currencies: () => pricedCurrencies(db),
    remove: async (slugs) => (await db.food.deleteMany({ where: { slug: { in: slugs.filter(isStorable) } } })).count,
    synonyms: (slugs) => synonymsOf(db, slugs),
  };
}

async function foodsBySlugs(db: Db, slugs: readonly string[]): Promise<readonly (Food | null)[]> {
  const rows = await db.$queryRaw<FoodRow[]>`${selectFoods} WHERE f.slug = ANY(${slugs.filter(isStorable)}::text[])`;
  return inOrder(slugs, rows.map(foodOf), ({ slug }) => slug, String);
}

/** From one currency to the next by its index, so that a million prices in three currencies are three look-ups. */
async function pricedCurrencies(db: Db): Promise<readonly string[]> {
  const rows = await db.$queryRaw<{ currency: string }[]>`
    WITH RECURSIVE own AS (
      SELECT min(price_currency) AS currency FROM packs
      UNION ALL SELECT (SELECT min(p.price_currency) FROM packs p WHERE p.price_currency > own.currency) FROM own WHERE own.currency IS NOT NULL
    ), listed AS (
      SELECT min(price_currency) AS currency FROM listed_packs
      UNION ALL SELECT (SELECT min(l.price_currency) FROM listed_packs l WHERE l.price_currency > listed.currency) FROM listed WHERE listed.currency IS NOT NULL
    )
    SELECT currency FROM own WHERE currency IS NOT NULL UNION SELECT currency FROM listed WHERE currency IS NOT NULL ORDER BY currency`;
  return rows.map(({ currency }) => currency);
}

/**
 * Five statements, however many foods. The last of several with one slug counts. What somebody saved is theirs from then on; foods
 * of the base (`asBase`) take the place of those of the base before it, and of nothing else.
 */
async function saveFoods(session: Session, given: readonly Food[], asBase: boolean): Promise<FoodsSaved> {
  // In one order always, so that two saves of the same foods cannot wait for each other.
  const foods = [...new Map(given.map((food) => [food.slug, food])).values()].toSorted((a, b) =>
    a.slug < b.slug ? -1 : 1,
  );
  if (foods.length === 0) return { changed: 0, added: [], replaced: [] };
  const columns = Prisma.raw(storedColumns.join(", "));
  const replaced = Prisma.raw(
    storedColumns
      .slice(1)
      .map((name) => `${name} = excluded.${name}`)
      .join(", "),
  );
  const mayReplace = asBase
    ? Prisma.sql`f.base_hash = f.content_hash AND f.content_hash <> excluded.content_hash`
    : Prisma.sql`f.content_hash <> excluded.content_hash OR f.base_hash IS NOT NULL`;
  return session.transaction(async (db) => {
    const rows = JSON.stringify(
      foods.map((food) => {
        const hash = checksumOf(food);
        return { ...foodColumns(food), content_hash: hash, base_hash: asBase ? hash : null };
      }),
    );
    const changed = await db.$queryRaw<{ id: string; slug: string; is_new: boolean }[]>`
      INSERT INTO foods AS f (${columns}) SELECT ${columns} FROM jsonb_populate_recordset(NULL::foods, ${rows}::jsonb)
      ON CONFLICT (slug) DO UPDATE SET ${replaced}, updated_at = now() WHERE ${mayReplace}
      RETURNING id, slug, xmax = 0 AS is_new`;
    const ids = new Map(changed.map(({ id, slug }) => [slug, id]));
    const saved = foods.flatMap((food) => {
      const id = ids.get(food.slug);
      return id === undefined ? [] : [{ id, food }];
    });
    if (saved.length > 0) await replaceParts(db, saved);
    const slugs = (isNew: boolean) => changed.filter(({ is_new }) => is_new === isNew).map(({ slug }) => slug);
    return { changed: saved.length, added: slugs(true).toSorted(), replaced: slugs(false).toSorted() };
  });
}

/** What a save writes, the slug first; the id and the time of the change are the table's own. */
const storedColumns = [
  ...["slug", "aisle", "shopped_by", "ndb_no", "keeps_as", "always_there", "shelf_stable", "densities", "measures"],
  ...["parts", "edible", "yields", "allergens", "diets", "single_ingredient", "nutrients", "keeping", "content_hash"],
  "base_hash",
];

async function replaceParts(db: Db, saved: readonly { readonly id: string; readonly food: Food }[]): Promise<void> {
  const ids = saved.map(({ id }) => id);
  await db.foodWord.deleteMany({ where: { foodId: { in: ids } } });
  await db.pack.deleteMany({ where: { foodId: { in: ids } } });
  const words = JSON.stringify(saved.flatMap(({ id, food }) => wordRows(id, food)));
  await db.$executeRaw`
    INSERT INTO food_words SELECT * FROM jsonb_populate_recordset(NULL::food_words, ${words}::jsonb)`;
  const packs = saved.flatMap(({ id, food }) => packRows(id, food));
  if (packs.length === 0) return;
  await db.$executeRaw`
    INSERT INTO packs SELECT * FROM jsonb_populate_recordset(NULL::packs, ${JSON.stringify(packs)}::jsonb)`;
}

const foodKeys = z.tuple([z.string().refine(isStorable)]);

/** In the order of slugs. Two statements: the slugs of the page, and their foods. */
async function foodPage(db: Db, { aisle }: FoodFilter, request: PageRequest): Promise<Page<Food>> {
  const where = [
    Prisma.sql`TRUE`,
    ...(aisle === null ? [] : [isStorable(aisle) ? Prisma.sql`f.aisle = ${aisle}` : Prisma.sql`FALSE`]),
  ];
  const page = await readPage<{ slug: string }, readonly [string]>(
    db,
    {
      order: [{ column: Prisma.sql`f.slug`, type: Prisma.sql`text`, descending: false }],
      keys: foodKeys,
      from: Prisma.sql`foods f`,
      where: Prisma.join(where, " AND "),
      columns: Prisma.sql`k.k0 AS slug`,
      join: Prisma.empty,
      keysOf: ({ slug }) => [slug],
    },
    request,
  );
  const foods = await foodsBySlugs(
    db,
    page.items.map(({ item }) => item.slug),
  );
  // A food that was deleted between the two statements is left out.
  const items = page.items.flatMap(({ cursor }, index) => {
    const item = foods[index];
    return item ? [{ cursor, item }] : [];
  });
  return { ...page, items };
}
