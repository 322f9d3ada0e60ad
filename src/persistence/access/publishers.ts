import { z } from "zod";
import type { Image } from "../../domain/model/image.js";
import type { Data, Publisher } from "../data.js";
import { UnknownPublisher } from "../errors.js";
import { Prisma } from "../generated/client.js";
import { fromJson, jsonOrNull } from "../sql/json-column.js";
import { inOrder, isId } from "../sql/keys.js";
import type { Db, Session } from "../database/session.js";
import { readPage } from "../sql/read-page.js";
import { isStorable, storable } from "../sql/storable-text.js";

const columns = {
  ...{ id: true, slug: true, name: true },
  ...{ region: true, currency: true, languages: true, description: true, website: true, image: true },
} as const;

type PublisherRow = Omit<Publisher, "image"> & { readonly image: Prisma.JsonValue };

const publisherOf = ({ image, ...row }: PublisherRow): Publisher => ({
  ...row,
  image: image === null ? null : fromJson<Image>(image),
});

/** Publishers whose plans readers find, in the order of their slugs. */
const publishing = {
  order: [{ column: Prisma.sql`o.slug`, type: Prisma.sql`text`, descending: false }],
  keys: z.tuple([z.string().refine(isStorable)]),
  from: Prisma.sql`publishers o`,
  where: Prisma.sql`EXISTS (SELECT 1 FROM plans p WHERE p.publisher_id = o.id AND p.newest_revision_id IS NOT NULL)`,
  columns: Prisma.sql`b.id, b.slug, b.name, b.region, b.currency, b.languages, b.description, b.website, b.image`,
  join: Prisma.sql`JOIN publishers b ON b.slug = k.k0`,
  keysOf: ({ slug }: PublisherRow) => [slug] as const,
};

export function publisherData({ db }: Session): Data["publishers"] {
  return {
    save: async ({ slug, name }) => {
      storable({ slug, name });
      return publisherOf(
        await db.publisher.upsert({ where: { slug }, create: { slug, name }, update: { name }, select: columns }),
      );
    },
    // Not FOR UPDATE: rows that refer to the publisher may still be written by those who do not lock it.
    lock: (slug) => lock(db, slug, "FOR NO KEY UPDATE"),
    lockAlone: (slug) => lock(db, slug, "FOR UPDATE"),
    create: async ({ slug, name }) => {
      const { count } = await db.publisher.createMany({ data: [storable({ slug, name })], skipDuplicates: true });
      return count > 0;
    },
    rename: async (slug, name) => {
      const { count } = await db.publisher.updateMany({ where: storable({ slug }), data: storable({ name }) });
      return count > 0;
    },
    describe: async (slug, { region, currency, languages, description, website, image }) => {
      const facts = {
        region,
        currency,
        languages: [...languages],
        description,
        website: website ?? null,
        image: jsonOrNull(image),
      };
      const { count } = await db.publisher.updateMany({ where: storable({ slug }), data: storable(facts) });
      return count > 0;
    },
    bySlugs: async (slugs) => {
      const found = await db.publisher.findMany({ where: { slug: { in: slugs.filter(isStorable) } }, select: columns });
      return inOrder<string, Publisher>(slugs, found.map(publisherOf), ({ slug }) => slug, String);
    },
    byIds: async (ids) => {
      const found = await db.publisher.findMany({ where: { id: { in: ids.filter(isId) } }, select: columns });
      return inOrder<string, Publisher>(ids, found.map(publisherOf), ({ id }) => id, String);
    },
    page: async (request) => {
      const page = await readPage<PublisherRow, readonly [string]>(db, publishing, request);
      return { ...page, items: page.items.map(({ cursor, item }) => ({ cursor, item: publisherOf(item) })) };
    },
  };
}

/** The id behind a slug; null: there is no such publisher. */
export async function findPublisherId(db: Db, slug: string): Promise<string | null> {
  if (!isStorable(slug)) return null;
  return (await db.publisher.findUnique({ where: { slug }, select: { id: true } }))?.id ?? null;
}

/** @throws UnknownPublisher */
export async function publisherId(db: Db, slug: string): Promise<string> {
  const id = await findPublisherId(db, slug);
  if (id === null) throw new UnknownPublisher(slug);
  return id;
}

async function lock(db: Db, slug: string, strength: "FOR NO KEY UPDATE" | "FOR UPDATE"): Promise<void> {
  const [found] = isStorable(slug)
    ? await db.$queryRaw<{ id: string }[]>`SELECT id FROM publishers WHERE slug = ${slug} ${Prisma.raw(strength)}`
    : [];
  if (found === undefined) throw new UnknownPublisher(slug);
}
