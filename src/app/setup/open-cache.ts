import type { SignalFollower } from "../../persistence/database/signals.js";
import type { Deps } from "../../services/deps.js";
import { Generations } from "../../services/cache/generations.js";
import { openMemory } from "../../services/cache/cache.js";
import { rememberData } from "../../services/cache/cached-data.js";
import type { OpenDatabase } from "./open-database.js";

export interface RememberingDeps {
  readonly deps: Deps;
  close(): Promise<void>;
}

/** The services' tools with a memory that is told of every change of the database; 0: without one. */
export async function openMemoryOf(
  { deps, database }: Pick<OpenDatabase, "deps" | "database">,
  megabytes: number,
): Promise<RememberingDeps> {
  if (megabytes === 0) return { deps, close: () => Promise.resolve() };
  const memory = openMemory(megabytes * 1024 * 1024);
  const { replicas } = database;
  // Replicas first: what is dropped from memory must not be read again from one that does not have it yet.
  const follower: SignalFollower = {
    heard: (signal) => {
      replicas?.heardOfWrite();
      memory.follower.heard(signal);
    },
    listening: (is) => {
      if (is) replicas?.heardOfWrite();
      memory.follower.listening(is);
    },
  };
  const followed = await database.follow(follower);
  const { publicData } = deps;
  // Documents never change; by a count that never hears of anything, nothing else is kept or found.
  const frozenOnly = { ...memory, generations: new Generations() };
  const kept = {
    data: rememberData(deps.data, memory, followed),
    ownData: rememberData(deps.data, frozenOnly, followed),
    memory,
  };
  // Of a replica that was picked before a change was heard, nothing is taken for what is true after it.
  const ofReplica = publicData && (() => rememberData(publicData(), memory, followed, memory.generations.now()));
  return {
    deps: { ...deps, ...kept, ...(ofReplica === undefined ? {} : { publicData: ofReplica }) },
    close: () => followed.close(),
  };
}
