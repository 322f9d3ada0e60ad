import type { Food } from "../../domain/model/food.js";
import { publisherId } from "../access/publishers.js";
import type { Data, Draft, DraftWriting, OwnedSlug, OwnFoodNames } from "../data.js";
import type { Db, Session } from "../database/session.js";
import { documentColumns, marksOf, type MarkColumns } from "../drafts/draft-document.js";
import { saveOneRow } from "../drafts/save-one-row.js";
import { Prisma } from "../generated/client.js";
import { fromJson, toJson } from "../sql/json-column.js";
import { inOrderOf, ownedBy } from "../sql/owned-name.js";
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
        where: { OR: ownedBy(names) },
        include: { publisher: { select: { slug: true } } },
      });

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
  return saveOneRow(db, tableOf(db, kind), kind, key, columns, expected);
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
