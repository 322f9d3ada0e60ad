import type { Food } from "../../domain/model/food.js";
import type { BaseFoodData, BaseFoodsChanged } from "./base-food-data.js";
import type { Db, Session } from "../database/session.js";

/** Only one process loads them at a time. */
const lock = "SELECT pg_advisory_xact_lock(hashtext('base foods'))";

/** @param save puts foods in the place of those of the base before */
export function baseFoodData(
  session: Session,
  save: (db: Db, foods: readonly Food[]) => Promise<Omit<BaseFoodsChanged, "kept">>,
): BaseFoodData {
  return {
    baseEdition: () => newest(session.db),
    loadBase: ({ code, title }, contentHash, foods) =>
      session.transaction(async (db) => {
        await db.$executeRawUnsafe(lock);
        const before = await newest(db);
        if (before !== null && before.code >= code) return null;
        const kept = await saved(db, foods);
        const { added, replaced } = await save(db, foods);
        await db.baseFoodEdition.create({ data: { code, title, contentHash, foods: foods.length } });
        return { added, replaced, kept };
      }),
  };
}

const newest = (db: Db) => db.baseFoodEdition.findFirst({ orderBy: { code: "desc" } });

/** Slugs that somebody else has a food under. */
async function saved(db: Db, foods: readonly Food[]): Promise<readonly string[]> {
  const slugs = foods.map(({ slug }) => slug);
  const rows = await db.$queryRaw<{ slug: string }[]>`
    SELECT slug FROM foods WHERE slug = ANY(${slugs}::text[]) AND base_hash IS DISTINCT FROM content_hash ORDER BY slug`;
  return rows.map(({ slug }) => slug);
}
