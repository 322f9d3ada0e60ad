import type { Food } from "../../domain/model/food.js";
import type { BaseFoodData } from "./base-food-data.js";
import type { Db, Session } from "../database/session.js";

/** Only one process loads them at a time. */
const lock = "SELECT pg_advisory_xact_lock(hashtext('base foods'))";

/** @param save puts foods in the place of those of the base before */
export function baseFoodData(
  session: Session,
  save: (db: Db, foods: readonly Food[]) => Promise<{ readonly changed: number }>,
): BaseFoodData {
  return {
    baseEdition: () => newest(session.db),
    loadBase: ({ code, title }, contentHash, foods) =>
      session.transaction(async (db) => {
        await db.$executeRawUnsafe(lock);
        const before = await newest(db);
        if (before !== null && before.code >= code) return null;
        const saved = await save(db, foods);
        await db.baseFoodEdition.create({ data: { code, title, contentHash, foods: foods.length } });
        return saved;
      }),
  };
}

const newest = (db: Db) => db.baseFoodEdition.findFirst({ orderBy: { code: "desc" } });
