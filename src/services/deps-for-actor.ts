import type { Actor } from "./access/actor.js";
import type { Deps } from "./deps.js";

/**
 * `Deps` for one request. Who shows no token only reads what is published, and may be answered from the cache or by a replica; who shows
 * one finds at once, in the primary, what they wrote through whichever instance.
 */
export function depsForActor(deps: Deps, actor: Actor): Deps {
  if (actor.kind === "ANYONE") {
    if (deps.publicData === undefined) return deps;
    return { ...deps, data: deps.publicData(), ownData: deps.ownData ?? deps.data };
  }
  return deps.ownData === undefined ? deps : { ...deps, data: deps.ownData };
}
