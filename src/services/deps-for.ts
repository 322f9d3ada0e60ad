import type { Actor } from "./actor.js";
import type { Deps } from "./deps.js";

/**
 * `Deps` for one request. Who shows no token only reads what is published, and may be answered by a replica; who shows one finds
 * its own writes at once, in the primary.
 */
export const depsFor = (deps: Deps, actor: Actor): Deps =>
  actor.kind === "ANYONE" && deps.publicData !== undefined ? { ...deps, data: deps.publicData() } : deps;
