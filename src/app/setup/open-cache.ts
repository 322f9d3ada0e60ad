import type { SignalFollower } from "../../persistence/database/signals.js";
import type { Deps } from "../../services/deps.js";
import { Generations } from "../../services/cache/generations.js";
import { openCache } from "../../services/cache/cache.js";
import { cachedData } from "../../services/cache/cached-data.js";
import type { OpenDatabase } from "./open-database.js";

export interface CachedDeps {
  readonly deps: Deps;
  close(): Promise<void>;
}

/** The services' tools with a memory that is told of every change of the database; 0: without one. */
export async function openCachedDeps(
  { deps, database }: Pick<OpenDatabase, "deps" | "database">,
  megabytes: number,
): Promise<CachedDeps> {
  if (megabytes === 0) return { deps, close: () => Promise.resolve() };
  const cache = openCache(megabytes * 1024 * 1024);
  const { replicas } = database;
  // Replicas first: what is dropped from memory must not be read again from one that does not have it yet.
  const follower: SignalFollower = {
    heard: (signal) => {
      replicas?.heardOfWrite();
      cache.follower.heard(signal);
    },
    listening: (is) => {
      if (is) replicas?.heardOfWrite();
      cache.follower.listening(is);
    },
  };
  const followed = await database.follow(follower);
  const { publicData } = deps;
  // Documents never change; by a count that never hears of anything, nothing else is kept or found.
  const frozenOnly = { ...cache, generations: new Generations() };
  const cached = {
    data: cachedData(deps.data, cache, followed),
    ownData: cachedData(deps.data, frozenOnly, followed),
    cache,
  };
  // Of a replica that was picked before a change was heard, nothing is taken for what is true after it.
  const ofReplica = publicData && (() => cachedData(publicData(), cache, followed, cache.generations.now()));
  return {
    deps: { ...deps, ...cached, ...(ofReplica === undefined ? {} : { publicData: ofReplica }) },
    close: () => followed.close(),
  };
}
