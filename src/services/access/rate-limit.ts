import { anyone, type Actor } from "./actor.js";
import { openRateLimitStore, type RateLimitStore } from "./rate-limit-store.js";
import type { Clock } from "../deps.js";
import { windowSeconds, type Consumption } from "./rate-limit-window.js";

/** Points a minute; 0: no limit. */
export interface RateLimitSettings {
  readonly perAddress: number;
  readonly perToken: number;
  /** Access tokens that are not taken. */
  readonly refusedTokensPerAddress: number;
}

/** The header fields of the RateLimit draft (draft-ietf-httpapi-ratelimit-headers), revision 11. */
type RateLimitFields = Readonly<Record<"ratelimit-policy" | "ratelimit", string>>;

/** A caller was charged. */
export interface Charged {
  /** What is left. */
  fields(): RateLimitFields;
}

/** A caller has used up its quota. The answer is 429, in the form that errors have on the route. */
export class QuotaExceeded extends Error {
  override readonly name = "QuotaExceeded";
  readonly statusCode = 429;
  readonly headers: Readonly<Record<string, string>>;

  constructor(
    /** Name of the quota. */
    readonly policy: string,
    /** Seconds. */
    readonly retryAfter: number,
    fields: RateLimitFields,
    what: string,
  ) {
    super(`${what} Ask again in ${retryAfter} s.`);
    this.headers = { ...fields, "retry-after": String(retryAfter) };
  }
}

/** The rate limits of this process, and what callers have used. */
export interface RateLimit {
  /**
   * Charges who asks: its token, and without one its address; null: there is no limit.
   * @throws QuotaExceeded
   */
  charge(actor: Actor, address: string, points: number): Charged | null;
  /** Charges who asked what computing took beyond what was charged before. It refuses nothing: the next request finds less. */
  chargeOwed(actor: Actor, address: string, owed: number): Charged | null;
  /**
   * Charges an address for a token that was not taken. Right ones are never asked: whoever shares an address with a guesser must not
   * be kept out by it.
   * @throws QuotaExceeded where there were too many, or no points are left
   */
  refuseToken(address: string, points: number): Charged | null;
}

/** Opens the rate limits of a process. Each process counts for itself: see docs/decisions/0012. */
export function openRateLimit(settings: RateLimitSettings, clock: Clock): RateLimit {
  const addresses = openStore("address", settings.perAddress);
  const tokens = openStore("token", settings.perToken === 0 ? Number.MAX_SAFE_INTEGER : settings.perToken);
  const refused = openStore("refused-tokens", settings.refusedTokensPerAddress);
  // The program asks nobody, and has no address.
  const storeFor = (actor: Actor): RateLimitStore | null => {
    if (actor.kind !== "TOKEN") return actor.kind === "ANYONE" ? addresses : null;
    return settings.perToken === 0 && (actor.pointsPerMinute ?? null) === null ? null : tokens;
  };
  const nameOf = (actor: Actor, address: string): string => (actor.kind === "TOKEN" ? actor.token : address);
  const pointsOf = (actor: Actor): number | null => (actor.kind === "TOKEN" ? (actor.pointsPerMinute ?? null) : null);
  const charge: RateLimit["charge"] = (actor, address, points) => {
    const store = storeFor(actor);
    if (store === null) return null;
    const consumption = store.consume(nameOf(actor, address), points, clock(), pointsOf(actor));
    if (!consumption.ok) {
      throw exceeded(
        store,
        consumption,
        `This costs ${points} points, and ${consumption.left} are left of this minute's.`,
      );
    }
    return { fields: () => fieldsOf(store, consumption) };
  };
  return {
    charge,
    chargeOwed: (actor, address, owed) => {
      const store = storeFor(actor);
      if (store === null) return null;
      const consumption = store.consumeOwed(nameOf(actor, address), owed, clock(), pointsOf(actor));
      return { fields: () => fieldsOf(store, consumption) };
    },
    refuseToken: (address, points) => {
      const consumption = refused?.consume(address, 1, clock());
      if (refused && consumption && !consumption.ok) {
        throw exceeded(refused, consumption, "Too many access tokens from this address were not taken.");
      }
      return points === 0 ? null : charge(anyone, address, points);
    },
  };
}

const openStore = (name: string, points: number): RateLimitStore | null =>
  points === 0 ? null : openRateLimitStore({ name, points });

const exceeded = (store: RateLimitStore, consumption: Consumption, what: string): QuotaExceeded =>
  new QuotaExceeded(store.quota.name, consumption.renewsIn, fieldsOf(store, consumption), what);

const fieldsOf = ({ quota }: RateLimitStore, { points, left, renewsIn }: Consumption): RateLimitFields => ({
  "ratelimit-policy": `"${quota.name}";q=${points};w=${windowSeconds}`,
  ratelimit: `"${quota.name}";r=${left};t=${renewsIn}`,
});
