import type { SignalFollower } from "../../persistence/database/change-signals.js";
import type { Deps } from "../../services/deps.js";
import { Generations } from "../../services/cache/generations.js";
import { openCache } from "../../services/cache/cache.js";
import { cachedData } from "../../services/cache/cached-data.js";
import { openChangeSignals } from "../../services/plans/change-signals.js";
import type { OpenDatabase } from "./open-database.js";

interface CachedDeps {
  readonly deps: Deps;
  close(): Promise<void>;
}

/** `Deps` with a cache that every change of the database invalidates (0 megabytes: without one), and with signals of changes. */
export async function openCachedDeps(
  { deps, database }: Pick<OpenDatabase, "deps" | "database">,
  megabytes: number,
): Promise<CachedDeps> {
  const cache = megabytes === 0 ? null : openCache(megabytes * 1024 * 1024);
  const signals = openChangeSignals();
  const { replicas } = database;
  // Replicas first: an invalidated entry must not be read again from a replica that lacks the change.
  const follower: SignalFollower = {
    heard: (signal) => {
      replicas?.heardOfWrite();
      cache?.follower.heard(signal);
      signals.follower.heard(signal);
    },
    listening: (is) => {
      if (is) replicas?.heardOfWrite();
      cache?.follower.listening(is);
      signals.follower.listening(is);
    },
  };
  const followed = await database.follow(follower);
  const close = () => followed.close();
  if (cache === null) return { deps: { ...deps, signals }, close };
  const { publicData } = deps;
  // Generations that never listen: only documents, which never change, are cached.
  const frozenOnly = { ...cache, generations: new Generations() };
  const cached = {
    data: cachedData(deps.data, cache, followed),
    ownData: cachedData(deps.data, frozenOnly, followed),
    cache,
  };
  // Reads from a replica are valid only from the generation in which it was picked.
  const ofReplica = publicData && (() => cachedData(publicData(), cache, followed, cache.generations.now()));
  return {
    deps: { ...deps, ...cached, signals, ...(ofReplica === undefined ? {} : { publicData: ofReplica }) },
    close,
  };
}
