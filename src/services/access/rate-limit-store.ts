import { countedCache } from "../../domain/cache-table.js";
import { consumeOwed, consume, type Quota, type Consumption, type RateLimitWindow } from "./rate-limit-window.js";

/** What each caller has used up of one quota. */
export interface RateLimitStore {
  readonly quota: Quota;
  /** Takes points if enough are left. A cost of 0 only looks. */
  consume(caller: string, cost: number, now: Date): Consumption;
  /** Takes points that are owed, as far as they are there. */
  consumeOwed(caller: string, owed: number, now: Date): Consumption;
  /** How many callers are stored. */
  readonly size: number;
}

/** Callers that are stored: some ten megabytes. */
const storedCallers = 50_000;

/**
 * Opens an in-memory store. It never holds more than `most` callers, however many come: there are two halves, and
 * when the new one is full, the old one is dropped and the new one is the old one. Who asks is moved to the new half, so nobody
 * is forgotten before half as many others have asked since. (One Map in the order of asking would be simpler, but in V8 each
 * look at its first key passes over all that were deleted before it.)
 */
export function openRateLimitStore(quota: Quota, most = storedCallers): RateLimitStore {
  let old = new Map<string, RateLimitWindow>();
  let young = new Map<string, RateLimitWindow>();
  const windowOf = (caller: string): RateLimitWindow | undefined => young.get(caller) ?? old.get(caller);
  const remember = (caller: string, consumption: Consumption): Consumption => {
    if (consumption.window.spent > 0) young.set(caller, consumption.window);
    if (young.size >= most / 2) {
      count.evicted += old.size;
      old = young;
      young = new Map();
    }
    count.entries = count.weight = old.size + young.size;
    return consumption;
  };
  const store: RateLimitStore = {
    quota,
    get size() {
      return old.size + young.size;
    },
    consume: (caller, cost, now) => remember(caller, consume(quota, windowOf(caller), cost, now.getTime())),
    consumeOwed: (caller, owed, now) => remember(caller, consumeOwed(quota, windowOf(caller), owed, now.getTime())),
  };
  const count = countedCache(`callers-${quota.name}`, store);
  return store;
}
