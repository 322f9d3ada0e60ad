// @ts-nocheck
import type { Actor, Caller } from "../services/actor.js";
import type { Deps } from "../services/deps.js";
import { createLoaders, type Loaders } from "./loaders.js";

/** What every resolver gets. Made for one request and thrown away with it. */
export interface Context extends Caller {
  readonly deps: Deps;
  readonly loaders: Loaders;
  readonly requestId: string;
}

export const createContext = (deps: Deps, requestId: string, actor: Actor): Context => ({
  deps,
  loaders: createLoaders(deps),
  requestId,
  actor,
});
