import type { DraftKind } from "../../domain/problem.js";
import type { Db } from "../database/session.js";
import { StaleDraft } from "../errors.js";
import { firstVersion } from "./discard-draft.js";

interface Key {
  readonly publisherId: string;
  readonly slug: string;
}

/** A table of drafts with one row each. */
interface TableOfDrafts<Columns> {
  createMany(asked: {
    data: (Key & Columns & { version: number })[];
    skipDuplicates: true;
  }): PromiseLike<{ readonly count: number }>;
  updateMany(asked: {
    where: Key & { version: number };
    data: Columns & { version: { increment: number } };
  }): PromiseLike<{ readonly count: number }>;
  findUnique(asked: {
    where: { publisherId_slug: Key };
    select: { version: true };
  }): PromiseLike<{ readonly version: number } | null>;
}

/** Inside a transaction. Returns the new version. @throws StaleDraft */
export async function saveOneRow<Columns>(
  db: Db,
  table: TableOfDrafts<Columns>,
  kind: DraftKind,
  key: Key,
  columns: Columns,
  expected: number | null,
): Promise<number> {
  const { count } =
    expected === null
      ? await table.createMany({
          data: [{ ...key, ...columns, version: await firstVersion(db, { ...key, kind }) }],
          skipDuplicates: true,
        })
      : await table.updateMany({
          where: { ...key, version: expected },
          data: { ...columns, version: { increment: 1 } },
        });
  const saved = await table.findUnique({ where: { publisherId_slug: key }, select: { version: true } });
  if (count === 0 || saved === null) throw new StaleDraft(key.slug, expected, saved?.version ?? null);
  return saved.version;
}
