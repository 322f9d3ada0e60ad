import { BoundedCache } from "../../domain/bounded-cache.js";
import { consumeOwed, consume, type Quota, type Consumption, type RateLimitWindow } from "./rate-limit-window.js";

/** What each caller has used up of one quota. */
export interface RateLimitStore {
  readonly quota: Quota;
  /** Takes points if enough are left. A cost of 0 only looks. `points`: how many this caller has, if fewer than the others. */
  consume(caller: string, cost: number, now: Date, points?: number | null): Consumption;
  /** Takes points that are owed, as far as they are there. */
  consumeOwed(caller: string, owed: number, now: Date, points?: number | null): Consumption;
  /** How many callers are stored. */
  readonly size: number;
}

/** Callers that are stored: some ten megabytes. */
const storedCallers = 50_000;

/** Opens an in-memory store. Of more callers than `most`, those that asked longest ago are forgotten. */
export function openRateLimitStore(quota: Quota, most = storedCallers): RateLimitStore {
  const windows = new BoundedCache<RateLimitWindow>(`callers-${quota.name}`, { max: most });
  const remember = (caller: string, consumption: Consumption): Consumption => {
    if (consumption.window.spent > 0) windows.set(caller, consumption.window);
    return consumption;
  };
  const quotaOf = (points: number | null = null): Quota =>
    points === null || points >= quota.points ? quota : { ...quota, points };
  return {
    quota,
    get size() {
      return windows.size;
    },
    consume: (caller, cost, now, points) =>
      remember(caller, consume(quotaOf(points), windows.get(caller), cost, now.getTime())),
    consumeOwed: (caller, owed, now, points) =>
      remember(caller, consumeOwed(quotaOf(points), windows.get(caller), owed, now.getTime())),
  };
}
