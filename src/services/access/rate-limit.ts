import { anyone, type Actor } from "./actor.js";
import { openBudgetBook, type BudgetBook } from "./rate-limit-store.js";
import type { Clock } from "../deps.js";
import { windowSeconds, type Spending } from "./rate-limit-window.js";

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

/** A caller has spent its budget. The answer is 429, in the form that errors have on the route. */
export class QuotaExceeded extends Error {
  override readonly name = "QuotaExceeded";
  readonly statusCode = 429;
  readonly headers: Readonly<Record<string, string>>;

  constructor(
    /** Name of the budget. */
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

/** What callers may spend, and have spent, in this process. */
export interface RateLimit {
  /**
   * Charges who asks: its token, and without one its address; null: there is no limit.
   * @throws QuotaExceeded
   */
  admit(actor: Actor, address: string, points: number): Charged | null;
  /** Charges who asked what computing took beyond what was charged before. It refuses nothing: the next request finds less. */
  settle(actor: Actor, address: string, owed: number): Charged | null;
  /**
   * Charges an address for a token that was not taken. Right ones are never asked: whoever shares an address with a guesser must not
   * be kept out by it.
   * @throws QuotaExceeded where there were too many, or no points are left
   */
  refuseToken(address: string, points: number): Charged | null;
}

/** Opens the books of a process. Each process counts for itself: see docs/decisions/0012. */
export function openRateLimit(settings: RateLimitSettings, clock: Clock): RateLimit {
  const addresses = bookOf("address", settings.perAddress);
  const tokens = bookOf("token", settings.perToken);
  const refused = bookOf("refused-tokens", settings.refusedTokensPerAddress);
  // The program asks nobody, and has no address.
  const bookFor = (actor: Actor): BudgetBook | null =>
    actor.kind === "PROGRAM" ? null : actor.kind === "TOKEN" ? tokens : addresses;
  const nameOf = (actor: Actor, address: string): string => (actor.kind === "TOKEN" ? actor.token : address);
  const admit: RateLimit["admit"] = (actor, address, points) => {
    const book = bookFor(actor);
    if (book === null) return null;
    const spending = book.spend(nameOf(actor, address), points, clock());
    if (!spending.ok) {
      throw exceeded(book, spending, `This costs ${points} points, and ${spending.left} are left of this minute's.`);
    }
    return { fields: () => fieldsOf(book, spending) };
  };
  return {
    admit,
    settle: (actor, address, owed) => {
      const book = bookFor(actor);
      if (book === null) return null;
      const spending = book.settle(nameOf(actor, address), owed, clock());
      return { fields: () => fieldsOf(book, spending) };
    },
    refuseToken: (address, points) => {
      const spending = refused?.spend(address, 1, clock());
      if (refused && spending && !spending.ok) {
        throw exceeded(refused, spending, "Too many access tokens from this address were not taken.");
      }
      return points === 0 ? null : admit(anyone, address, points);
    },
  };
}

const bookOf = (name: string, points: number): BudgetBook | null =>
  points === 0 ? null : openBudgetBook({ name, points });

const exceeded = (book: BudgetBook, spending: Spending, what: string): QuotaExceeded =>
  new QuotaExceeded(book.budget.name, spending.renewsIn, fieldsOf(book, spending), what);

const fieldsOf = ({ budget }: BudgetBook, { left, renewsIn }: Spending): RateLimitFields => ({
  "ratelimit-policy": `"${budget.name}";q=${budget.points};w=${windowSeconds}`,
  ratelimit: `"${budget.name}";r=${left};t=${renewsIn}`,
});
