import type { Food } from "../../domain/model/food.js";
import { publisherId } from "../access/publishers.js";
import type { Data, Draft, DraftWriting, OwnedSlug, OwnFoodNames } from "../data.js";
import type { Db, Session } from "../database/session.js";
import { firstVersion } from "../drafts/discard-draft.js";
import { documentColumns, marksOf, type MarkColumns } from "../drafts/draft-document.js";
import { StaleDraft } from "../errors.js";
import { Prisma } from "../generated/client.js";
import { fromJson, toJson } from "../sql/json-column.js";
import { inOrder } from "../sql/keys.js";
import { ownedName, slugsByPublisher } from "../sql/owned-name.js";
import { isStorable, storable } from "../sql/storable-text.js";

/**
 * Publishers' own foods, or the packs that they add to others (`PACKS`), which are foods that say nothing else: drafts of their
 * documents, and what was published of them.
 */
export function publisherFoodData(session: Session, kind: Kind): Data["publisherFoods"] {
  const { db } = session;
  return {
    saveDraft: async (publisher, food, expectedVersion, writing) =>
      session.transaction((inside) =>
        saveDraft(inside, kind, publisher, storable(food), expectedVersion, storable(writing)),
      ),
    drafts: async (names) => inOrderOf(names, await rowsOf(db, kind, names), draftOf),
    published: async (names) =>
      inOrderOf(names, await rowsOf(db, kind, names), ({ published }) =>
        published === null ? null : fromJson(published),
      ),
    names: (publisher, as) => ownFoodNames(db, publisher, as),
    notePublished: async (publisher, foods) => {
      await session.transaction(async (inside) => {
        const owner = await publisherId(inside, publisher);
        for (const food of foods)
          await tableOf(inside, kind).updateMany({
            where: { publisherId: owner, slug: food.slug },
            data: { published: toJson(food) },
          });
      });
    },
  };
}

type Kind = "FOOD" | "PACKS";

/** Both tables have the same columns. */
const tableOf = (db: Db, kind: Kind): Db["publisherFood"] =>
  kind === "FOOD" ? db.publisherFood : (db.publisherPacks as unknown as Db["publisherFood"]);

type Row = MarkColumns & {
  readonly slug: string;
  readonly value: Prisma.JsonValue;
  readonly published: Prisma.JsonValue;
  readonly publisher: { readonly slug: string };
};

const rowsOf = async (db: Db, kind: Kind, names: readonly OwnedSlug[]): Promise<readonly Row[]> =>
  names.length === 0
    ? []
    : tableOf(db, kind).findMany({
        where: {
          OR: slugsByPublisher(names).map(({ publisher, slugs }) => ({
            slug: { in: slugs },
            publisher: { slug: publisher },
          })),
        },
        include: { publisher: { select: { slug: true } } },
      });

function inOrderOf<T>(names: readonly OwnedSlug[], rows: readonly Row[], read: (row: Row) => T): readonly (T | null)[] {
  const keys = names.map(({ publisher, slug }) => ownedName(publisher, slug));
  const found = inOrder(keys, rows, (row) => ownedName(row.publisher.slug, row.slug), String);
  return found.map((row) => (row === null ? null : read(row)));
}

const draftOf = (row: Row): Draft<Food> => ({ ...marksOf(row), value: fromJson(row.value) });

/** @throws StaleDraft, UnknownPublisher */
async function saveDraft(
  db: Db,
  kind: Kind,
  publisher: string,
  food: Food,
  expected: number | null,
  writing: DraftWriting,
): Promise<number> {
  const owner = await publisherId(db, publisher);
  const key = { publisherId: owner, slug: food.slug };
  const columns = { title: food.names[0]?.one ?? food.slug, value: toJson(food), ...documentColumns(writing) };
  const { count } =
    expected === null
      ? await tableOf(db, kind).createMany({
          data: [{ ...key, ...columns, version: await firstVersion(db, { ...key, kind }) }],
          skipDuplicates: true,
        })
      : await tableOf(db, kind).updateMany({
          where: { ...key, version: expected },
          data: { ...columns, version: { increment: 1 } },
        });
  const saved = await tableOf(db, kind).findUnique({ where: { publisherId_slug: key }, select: { version: true } });
  if (count === 0 || saved === null) throw new StaleDraft(food.slug, expected, saved?.version ?? null);
  return saved.version;
}

/** Of every food only what it is looked up by. */
async function ownFoodNames(db: Db, publisher: string, as: "SAVED" | "PUBLISHED"): Promise<readonly OwnFoodNames[]> {
  if (!isStorable(publisher)) return [];
  const food = as === "SAVED" ? Prisma.sql`f.value` : Prisma.sql`f.published`;
  return db.$queryRaw<OwnFoodNames[]>`
    SELECT f.slug, COALESCE(${food}->'names', '[]') AS names, ${food}->>'aisle' AS aisle, ${food}->'extends'->>'food' AS base
    FROM publisher_foods f JOIN publishers p ON p.id = f.publisher_id
    WHERE p.slug = ${publisher}::text AND ${food} IS NOT NULL ORDER BY f.slug`;
}
