import type { Feed, FeedData, FeedKind } from "./import-data.js";
import { toJson } from "../sql/json-column.js";
import { isId } from "../sql/keys.js";
import { findPublisherId, publisherData, publisherId } from "../access/publishers.js";
import type { Db, Session } from "../database/session.js";
import { isStorable, storable } from "../sql/storable-text.js";

/** The owner column of the operator's feeds: no publisher has it. A null could not be part of a key. */
const operatorId = "00000000-0000-0000-0000-000000000000";

interface FeedRow {
  readonly id: string;
  readonly owner: string;
  readonly slug: string;
  readonly kind: FeedKind;
  readonly settings: unknown;
  readonly cron: string | null;
  readonly zone: string;
  readonly enabled: boolean;
  readonly importPublishes: boolean;
}

export function feedData(session: Session): FeedData {
  const { db } = session;
  return {
    save: async (feed) => {
      const { publisher, slug, kind, settings, cron, zone, enabled } = storable(feed);
      const owner = publisher === null ? operatorId : await publisherId(db, publisher);
      const columns = { kind, settings: toJson(settings as object), cron, zone, enabled, importPublishes: false };
      const { id } = await db.feed.upsert({
        where: { owner_slug: { owner, slug } },
        create: { owner, slug, ...columns },
        update: columns,
        select: { id: true },
      });
      return id;
    },
    find: async (publisher, slug) => {
      const owner = await ownerOf(db, publisher);
      if (owner === null || !isStorable(slug)) return null;
      const row = await db.feed.findUnique({ where: { owner_slug: { owner, slug } } });
      return row === null ? null : feedOf(row, publisher);
    },
    byId: async (id) => {
      if (!isId(id)) return null;
      const row = await db.feed.findUnique({ where: { id } });
      return row === null ? null : ((await named(session, [row]))[0] ?? null);
    },
    all: async (publisher) => {
      const owner = publisher === undefined ? null : await ownerOf(db, publisher);
      if (publisher !== undefined && owner === null) return [];
      return named(
        session,
        await db.feed.findMany({ ...(owner === null ? {} : { where: { owner } }), orderBy: { slug: "asc" } }),
      );
    },
    remove: (id) =>
      session.transaction(async (inside) => {
        if (!isId(id)) return false;
        // A pack that no feed lists any more would hide one of the food's own.
        await inside.listedPack.deleteMany({ where: { feedId: id } });
        return (await inside.feed.deleteMany({ where: { id } })).count > 0;
      }),
  };
}

const ownerOf = async (db: Db, publisher: string | null): Promise<string | null> =>
  publisher === null ? operatorId : findPublisherId(db, publisher);

async function named(session: Session, rows: readonly FeedRow[]): Promise<readonly Feed[]> {
  const owners = await publisherData(session).byIds([...new Set(rows.map(({ owner }) => owner))]);
  const slugs = new Map(owners.flatMap((publisher) => (publisher === null ? [] : [[publisher.id, publisher.slug]])));
  // A feed whose publisher is gone is nobody's, and is passed over.
  return rows.flatMap((row) => {
    const publisher = slugs.get(row.owner) ?? null;
    return publisher === null && row.owner !== operatorId ? [] : [feedOf(row, publisher)];
  });
}

const feedOf = (
  { id, slug, kind, settings, cron, zone, enabled, importPublishes }: FeedRow,
  publisher: string | null,
): Feed => ({
  ...{ id, publisher, slug, kind, settings, cron, zone, enabled, importPublishes },
});
