/** How many points one caller may use in a minute. */
export interface Quota {
  /** As in the header fields and in `violated-policies`. */
  readonly name: string;
  readonly points: number;
}

/** Length of every window, in seconds. */
export const windowSeconds = 60;

/** What a caller has spent since its window began. It begins with the first point, so that not all end at once. */
export interface RateLimitWindow {
  /** Milliseconds since the epoch. */
  readonly since: number;
  readonly spent: number;
}

export interface Consumption {
  /** The points of a whole window. */
  readonly points: number;
  /** Whether the points were there. If not, nothing was taken. */
  readonly ok: boolean;
  readonly window: RateLimitWindow;
  readonly left: number;
  /** Whole seconds, at least one, until the window resets. */
  readonly renewsIn: number;
}

/** Steps that a point pays for. What computing took beyond its price is charged afterwards, so that no price is far too low. */
const stepsPerPoint = 8;

/** Points that are still owed for computing, once it is known what it took. */
export const pointsOwed = (steps: number, paid: number): number => Math.max(0, Math.ceil(steps / stepsPerPoint) - paid);

/** Takes points that are owed already, at most what is left. */
export function consumeOwed(quota: Quota, known: RateLimitWindow | undefined, owed: number, now: number): Consumption {
  const { left } = consume(quota, known, 0, now);
  return consume(quota, known, Math.min(owed, left), now);
}

/**
 * Takes points from a quota. What costs more than the whole quota takes all of it, so that nothing is out of reach for ever.
 * A clock that was set back begins a new window: nobody waits for the old time to come round.
 */
export function consume(quota: Quota, known: RateLimitWindow | undefined, cost: number, now: number): Consumption {
  const length = windowSeconds * 1000;
  const stands = known !== undefined && known.spent > 0 && now >= known.since && now < known.since + length;
  const window = stands ? known : { since: now, spent: 0 };
  const taken = Math.min(cost, quota.points);
  const ok = window.spent + taken <= quota.points;
  const after = ok ? { since: window.since, spent: window.spent + taken } : window;
  return {
    ok,
    points: quota.points,
    window: after,
    left: quota.points - after.spent,
    renewsIn: Math.ceil((after.since + length - now) / 1000),
  };
}
