import type { Followed } from "../../persistence/database/change-signals.js";
import { documentSize } from "../../persistence/plans/frozen-document.js";
import type { Data } from "../deps.js";
import type { Dependency } from "./generations.js";
import type { Cache, CacheName } from "./cache.js";
import { cachedReads, type CachedReadsOptions } from "./cached-reads.js";

/** Bytes of heap per byte of JSON, for a parsed document with what is compiled from it: see docs/speed.md. */
const documentFactor = 6;
const objectFactor = 3;

const sizeOf = (value: object): number => JSON.stringify(value).length;

/**
 * The same data access with a read-through cache for what public answers are made of. Frozen documents and rule sets never
 * change; other entries are invalidated by changes. Transactions, writers and programs bypass it.
 *
 * Callers read their own writes: a write resolves once this process has heard of it.
 *
 * @param asOf the generation that the reads are valid from; null: the current one at the time of each read
 */
export function cachedData(
  data: Data,
  cache: Cache,
  followed: Pick<Followed, "caughtUp">,
  asOf: number | null = null,
): Data {
  const { publishers, foods, revisions, planFacts, ruleSets, listedPacks, catalogue, feeds, images } = data;
  const keep = <Key, Value>(
    cacheName: CacheName,
    name: string,
    read: (keys: readonly Key[]) => Promise<readonly (Value | null)[]>,
    more: Omit<CachedReadsOptions<Key, Value>, "cacheName" | "name" | "asOf" | "read">,
  ) => cachedReads(cache, { cacheName, name, read, asOf, ...more });
  const afterwards =
    <Given extends readonly unknown[], Done>(write: (...given: Given) => Promise<Done>) =>
    async (...given: Given): Promise<Done> => {
      const done = await write(...given);
      await followed.caughtUp();
      return done;
    };
  const on =
    (dependence: Dependency): (() => Dependency) =>
    () =>
      dependence;
  const inForce = keep(
    "pointers",
    "rules in force",
    (dates: readonly string[]) => Promise.all(dates.map(ruleSets.inForce)),
    {
      keyOf: String,
      dependenceOf: on("rules"),
      bytesOf: () => 100,
    },
  );
  const removedImages = keep(
    "pointers",
    "removed pictures",
    (publishersOf: readonly string[]) => Promise.all(publishersOf.map(images.removed)),
    {
      keyOf: String,
      dependenceOf: on("publishers"),
      bytesOf: (hashes) => 100 + hashes.length * 80,
    },
  );
  // One list, kept by its reader (persistence/foods/food-names.ts): here it is only known to be the list of now.
  const names = keep("foods", "food names", (keys: readonly "all"[]) => Promise.all(keys.map(() => foods.names())), {
    keyOf: String,
    dependenceOf: on("foods"),
    bytesOf: () => 100,
  });
  const currencies = keep(
    "foods",
    "currencies",
    (keys: readonly "all"[]) => Promise.all(keys.map(() => foods.currencies())),
    { keyOf: String, dependenceOf: on("foods"), bytesOf: (codes) => 100 + codes.length * 10 },
  );
  return {
    ...data,
    publishers: {
      ...publishers,
      save: afterwards(publishers.save),
      create: afterwards(publishers.create),
      rename: afterwards(publishers.rename),
      describe: afterwards(publishers.describe),
      bySlugs: keep("pointers", "publisher", publishers.bySlugs, {
        keyOf: String,
        dependenceOf: on("publishers"),
        bytesOf: () => 500,
      }),
    },
    foods: {
      ...foods,
      save: afterwards(foods.save),
      remove: afterwards(foods.remove),
      names: async () => (await names(["all"]))[0] ?? [],
      currencies: async () => (await currencies(["all"]))[0] ?? [],
      bySlugs: keep("foods", "food", foods.bySlugs, {
        keyOf: String,
        dependenceOf: on("foods"),
        bytesOf: (food) => sizeOf(food) * objectFactor,
      }),
      // Most foods are nobody else's other word: that there is none is worth as much as the word.
      synonyms: keep("foods", "synonym", foods.synonyms, {
        keyOf: String,
        dependenceOf: on("foods"),
        bytesOf: () => 100,
        cachesMissing: true,
      }),
    },
    revisions: {
      ...revisions,
      publish: afterwards(revisions.publish),
      withdraw: afterwards(revisions.withdraw),
      summaries: keep("pointers", "plan", revisions.summaries, {
        keyOf: ({ publisher, slug, revision }) => `${publisher}/${slug}/${String(revision)}`,
        dependenceOf: ({ publisher, slug }) => `plan ${publisher}/${slug}`,
        bytesOf: (summary) => sizeOf(summary) * objectFactor,
      }),
      withdrawn: keep("pointers", "withdrawn plan", revisions.withdrawn, {
        keyOf: ({ publisher, slug }) => `${publisher}/${slug}`,
        dependenceOf: ({ publisher, slug }) => `plan ${publisher}/${slug}`,
        bytesOf: (summary) => sizeOf(summary) * objectFactor,
      }),
      bundles: keep("documents", "document", revisions.bundles, {
        keyOf: String,
        dependenceOf: () => null,
        bytesOf: (bundle) => documentSize(bundle) * documentFactor,
      }),
    },
    planFacts: { ...planFacts, save: afterwards(planFacts.save) },
    ruleSets: {
      ...ruleSets,
      add: afterwards(ruleSets.add),
      inForce: async (date) => (await inForce([date]))[0] ?? null,
    },
    catalogue: {
      ...catalogue,
      load: afterwards(catalogue.load),
      byNumbers: keep("foods", "catalogue", catalogue.byNumbers, {
        keyOf: String,
        dependenceOf: on("foods"),
        bytesOf: (known) => sizeOf(known) * objectFactor,
        // The open table may not be loaded.
        cachesMissing: true,
      }),
    },
    images: {
      ...images,
      name: afterwards(images.name),
      remove: afterwards(images.remove),
      removed: async (publisher) => (await removedImages([publisher]))[0] ?? [],
    },
    feeds: { ...feeds, save: afterwards(feeds.save), remove: afterwards(feeds.remove) },
    listedPacks: {
      ...listedPacks,
      merge: afterwards(listedPacks.merge),
      undo: afterwards(listedPacks.undo),
    },
    transaction: afterwards(data.transaction) as Data["transaction"],
  };
}
