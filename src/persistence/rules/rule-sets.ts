import type { RuleSet } from "../../domain/plan/compile/rule-set.js";
import { firstKeepingClasses } from "../../domain/storage/first-keeping-classes.js";
import { checksumOf } from "../sql/canonical-json.js";
import type { Data, RuleSetSummary } from "../data.js";
import { Prisma } from "../generated/client.js";
import { fromJson } from "../sql/json-column.js";
import { inOrder, isId } from "../sql/keys.js";
import type { Db, Session } from "../database/session.js";
import { utcDay } from "../../domain/utc-day.js";
import { storable } from "../sql/storable-text.js";

/**
 * Number of the shape sets are stored in now. What an older program would read wrongly raises it; what it passes over, as the classes of
 * food, does not, since two releases run side by side while a service is changed over.
 */
const contentFormat = 1;

type StoredRuleSet = Omit<RuleSet, "safety"> & {
  readonly safety: Omit<RuleSet["safety"], "classes"> & Partial<Pick<RuleSet["safety"], "classes">>;
};

type SummaryRow = Omit<RuleSetSummary, "inForceFrom" | "inForceTo"> & {
  readonly inForceFrom: Date;
  readonly inForceTo: Date | null;
};

/** Every set with the day its successor begins. There are few of them, so the window runs over all. */
const dated = Prisma.sql`
  SELECT id, code, title, in_force_from AS "inForceFrom", loaded_at AS "loadedAt", checksum,
    lead(in_force_from) OVER (ORDER BY in_force_from, loaded_at, id DESC) AS "inForceTo"
  FROM rule_sets`;

export function ruleSetData({ db }: Session): Data["ruleSets"] {
  return {
    add: async (set, loadedAt) => {
      const checksum = checksumOf(storable(set));
      const added = await db.$executeRaw`
        INSERT INTO rule_sets (code, title, in_force_from, loaded_at, checksum, format, content)
        VALUES (${set.code}, ${set.title}, ${set.inForceFrom}::date, ${loadedAt.toISOString()}::timestamptz, ${checksum},
          ${contentFormat}, ${JSON.stringify(set)}::jsonb)
        ON CONFLICT (code) DO NOTHING`;
      const [summary] = await summaries(db, Prisma.sql`code = ${set.code}`);
      if (summary === undefined) throw new Error(`rule set ${set.code} is not there after it was loaded`);
      return { summary, added: added === 1, same: summary.checksum === checksum };
    },
    inForce: async (date) => {
      const rows = await db.$queryRaw<{ readonly id: string }[]>`
        SELECT id FROM (
          (SELECT 1 AS rank, id FROM rule_sets WHERE in_force_from <= ${date}::date
            ORDER BY in_force_from DESC, loaded_at DESC, id LIMIT 1)
          UNION ALL
          (SELECT 2, id FROM rule_sets ORDER BY in_force_from, loaded_at, id DESC LIMIT 1)
        ) AS either ORDER BY rank LIMIT 1`;
      return rows[0]?.id ?? null;
    },
    all: () => summaries(db, Prisma.sql`TRUE`),
    byIds: async (ids) => {
      const rows = await summaries(db, Prisma.sql`id = ANY(${ids.filter(isId)}::uuid[])`);
      return inOrder(ids, rows, ({ id }) => id, String);
    },
    contents: async (ids) => {
      const rows = await db.ruleSet.findMany({
        where: { id: { in: ids.filter(isId) } },
        select: { id: true, code: true, format: true, content: true },
      });
      const found = rows.map(({ id, code, format, content }) => ({ id, set: contentOf(code, format, content) }));
      return inOrder(ids, found, ({ id }) => id, String).map((each) => each?.set ?? null);
    },
  };
}

/** Newest first. */
async function summaries(db: Db, where: Prisma.Sql): Promise<readonly RuleSetSummary[]> {
  const rows = await db.$queryRaw<SummaryRow[]>`
    SELECT * FROM (${dated}) AS d WHERE ${where} ORDER BY "inForceFrom" DESC, "loadedAt" DESC, id`;
  return rows.map(({ id, code, title, inForceFrom, inForceTo, loadedAt, checksum }) => ({
    id,
    code,
    title,
    inForceFrom: utcDay(inForceFrom),
    inForceTo: inForceTo && utcDay(inForceTo),
    loadedAt,
    checksum,
  }));
}

/** Reads content of any release so far: the sets of 0.1.0 were written for the classes that stood in the program. */
function contentOf(code: string, format: number, content: Prisma.JsonValue): RuleSet {
  if (format > contentFormat) throw new Error(`rule set ${code} was loaded by a newer version of the program`);
  const set = fromJson<StoredRuleSet>(content);
  return { ...set, safety: { ...set.safety, classes: set.safety.classes ?? firstKeepingClasses } };
}
