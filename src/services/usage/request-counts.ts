import type { CountedRequests } from "../deps.js";

/** The name of a plan, as an address or an operation says it. There may be none of that name. */
export interface NamedPlan {
  /** Slug. */
  readonly publisher: string;
  /** Slug. */
  readonly plan: string;
}

/** A request that was answered or refused. */
interface CountedRequest {
  /** Id; null: it had none. */
  readonly token: string | null;
  readonly points: number;
  /** Its points of that minute were used up. */
  readonly isRefused: boolean;
  /** Those that a reader asked for and was given. */
  readonly plans: readonly NamedPlan[];
}

/** Sums of requests since they were last taken out. Nothing of who asked, but for tokens. */
interface RequestCounts {
  /** Counts a request of a day such as `2026-12-01`. */
  count(request: CountedRequest, day: string): void;
  /** The sums so far, which begin again; null: there are none. */
  take(): CountedRequests | null;
  /** Whether as many are counted as are kept: more are left out until these are taken. */
  readonly isFull: boolean;
}

/** Tokens and plans that are counted between two writes: a megabyte. Names of plans that are none cost their callers points. */
const mostCounted = 5_000;

export function openRequestCounts(most = mostCounted): RequestCounts {
  let tokens = new Map<string, { token: string; day: string; requests: number; refused: number; points: number }>();
  let plans = new Map<string, { publisher: string; plan: string; day: string; requests: number }>();
  const sumIn = <Sum>(sums: Map<string, Sum>, key: string, none: () => Sum): Sum | null => {
    const known = sums.get(key);
    if (known !== undefined || sums.size >= most) return known ?? null;
    const sum = none();
    sums.set(key, sum);
    return sum;
  };
  return {
    count: (request, day) => {
      const { token } = request;
      if (token !== null) {
        const none = () => ({ token, day, requests: 0, refused: 0, points: 0 });
        const sum = sumIn(tokens, `${token} ${day}`, none);
        if (sum !== null) {
          sum.requests += 1;
          sum.points += request.points;
          if (request.isRefused) sum.refused += 1;
        }
      }
      for (const { publisher, plan } of request.plans) {
        const sum = sumIn(plans, `${publisher}/${plan} ${day}`, () => ({ publisher, plan, day, requests: 0 }));
        if (sum !== null) sum.requests += 1;
      }
    },
    take: () => {
      if (tokens.size === 0 && plans.size === 0) return null;
      const taken = { tokens: [...tokens.values()], plans: [...plans.values()] };
      [tokens, plans] = [new Map(), new Map()];
      return taken;
    },
    get isFull() {
      return tokens.size >= most || plans.size >= most;
    },
  };
}
