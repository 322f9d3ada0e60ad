import type { Actor, Caller } from "../services/access/actor.js";
import type { Deps } from "../services/deps.js";
import { depsForActor } from "../services/deps-for-actor.js";
import { createLoaders, type Loaders } from "./loaders.js";

/** What every resolver gets. Made for one request and thrown away with it. */
export interface Context extends Caller {
  readonly deps: Deps;
  readonly loaders: Loaders;
  readonly requestId: string;
  /** Of a subscription, while it begins: tells that it is over. Left out: it is none. */
  readonly over?: AbortSignal;
}

/** Tells that a subscription is over. */
export function subscribed({ over }: Context): AbortSignal {
  if (over === undefined) throw new Error("a subscription is run as another operation");
  return over;
}

export function createContext(all: Deps, requestId: string, actor: Actor): Context {
  const deps = depsForActor(all, actor);
  return { deps, loaders: createLoaders(deps, actor), requestId, actor };
}
