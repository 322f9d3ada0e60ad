import { randomUUID } from "node:crypto";
import { setTimeout as wait } from "node:timers/promises";
import type { Sql } from "../../src/persistence/sql/plain-sql.js";
import { askGraphql, publisher, publishPlan, savePlan } from "../kit/plan-writer.js";

export interface LoadOptions {
  /** Asked before each request, so that it may choose among instances. */
  readonly address: () => string;
  readonly token: string;
  readonly writers: number;
  readonly readers: number;
}

export interface LoadCounts {
  readonly writes: number;
  readonly reads: number;
  /** Requests that had no answer or an error; a write is tried again under its key until it is acknowledged. */
  readonly failedWrites: number;
  readonly failedReads: number;
  /** Reads that found another title than that of their revision, or an older revision than was acknowledged a second before. */
  readonly wrong: number;
  /** Reads that found an older revision than was acknowledged before: of another instance, which had not heard of it yet. */
  readonly behind: number;
  /** The longest that an acknowledged revision was not found, from its acknowledgement to the beginning of such a read. */
  readonly mostBehindMs: number;
  /** The longest time without any write that was acknowledged, and without any read that was answered. */
  readonly longestPauseOfWritesMs: number;
  readonly longestPauseOfReadsMs: number;
  readonly slowestReadMs: number;
}

export interface Load {
  /** Resolves once so many more writes are acknowledged; the milliseconds until the first of them. */
  untilWritten(more: number): Promise<number>;
  counts(): LoadCounts;
  /** Ends when every write that was begun is acknowledged. Rejects when that takes longer than two minutes. */
  stop(): Promise<LoadCounts>;
  /** What is missing, and what is there twice or was never asked for. */
  audit(sql: Sql): Promise<{ readonly lost: number; readonly doubled: number }>;
}

/** Within this every instance has to have heard of what another one wrote, on a machine that is busy with this very load, in milliseconds. */
const hearing = 1_000;

interface Published {
  readonly title: string;
  /** When it was acknowledged, on the clock that only goes forward. */
  readonly at: number;
}

const planQuery = `query ($slug: String!) { plan(publisher: "${publisher}", slug: $slug) { revision title scaled(servings: 3) { servings } } }`;

/**
 * Writers that each save and publish a plan of their own by turns, under idempotency keys, and readers who show no token. Every title
 * is used once, so that what is lost, doubled or wrong shows.
 */
export function startLoad({ address, token, writers, readers }: LoadOptions): Load {
  const published = new Map<string, Published[]>();
  const counts = {
    writes: 0,
    reads: 0,
    failedWrites: 0,
    failedReads: 0,
    wrong: 0,
    behind: 0,
    mostBehindMs: 0,
    slowestReadMs: 0,
  };
  const pauseOfWrites = stopwatch();
  const pauseOfReads = stopwatch();
  const reasons = new Map<string, number>();
  let stopping = false;
  let deadline = Infinity;

  const note = (error: unknown): void => {
    // For a reader of the run: what failed, without the parts that are always different.
    const text = reasonOf(error).replace(/[0-9a-f-]{36}|\d+/g, "…");
    reasons.set(text, (reasons.get(text) ?? 0) + 1);
  };
  const untilAcknowledged = async <T>(write: (idempotencyKey: string) => Promise<T>): Promise<T> => {
    const key = randomUUID();
    for (;;) {
      try {
        const done = await write(key);
        counts.writes += 1;
        pauseOfWrites.lap();
        return done;
      } catch (error) {
        note(error);
        counts.failedWrites += 1;
        if (performance.now() > deadline) throw error;
        await wait(50);
      }
    }
  };
  const write = async (slug: string): Promise<void> => {
    const done: Published[] = [];
    published.set(slug, done);
    let expectedVersion: number | null = null;
    while (!stopping) {
      const title = `${slug} turn ${done.length + 1}`;
      const draft: { slug: string; title: string; expectedVersion: number | null } = { slug, title, expectedVersion };
      const version: number = await untilAcknowledged((idempotencyKey) =>
        savePlan(address(), token, { ...draft, idempotencyKey }),
      );
      expectedVersion = version;
      await untilAcknowledged((idempotencyKey) =>
        publishPlan(address(), token, { slug, expectedVersion: version, idempotencyKey }),
      );
      done.push({ title, at: performance.now() });
    }
  };
  const read = async (turn: number): Promise<void> => {
    for (let n = turn; !stopping; n += 1) {
      const slugs = [...published.keys()];
      const slug = slugs[n % slugs.length] ?? "";
      const due = [...(published.get(slug) ?? [])];
      const asked = performance.now();
      try {
        const { plan } = await askGraphql<{ plan: { revision: number; title: string } | null }>(
          ...([address(), null, planQuery, { slug }] as const),
        );
        counts.reads += 1;
        pauseOfReads.lap();
        const behindMs = asked - (due[plan?.revision ?? 0]?.at ?? asked);
        const isMixed = plan !== null && plan.title !== `${slug} turn ${plan.revision}`;
        if (isMixed || behindMs > hearing) counts.wrong += 1;
        else if (behindMs > 0) counts.behind += 1;
        counts.mostBehindMs = Math.max(counts.mostBehindMs, Math.round(behindMs));
      } catch (error) {
        note(error);
        counts.failedReads += 1;
        await wait(50);
      }
      counts.slowestReadMs = Math.max(counts.slowestReadMs, Math.round(performance.now() - asked));
      await wait(5);
    }
  };
  const names = Array.from({ length: writers }, (_, n) => `plan-${n}`);
  const work = Promise.all([...names.map(write), ...Array.from({ length: readers }, (_, n) => read(n))]);
  const found = (): LoadCounts => ({
    ...counts,
    longestPauseOfWritesMs: pauseOfWrites.longest(),
    longestPauseOfReadsMs: pauseOfReads.longest(),
  });
  // A failure is heard by whoever stops the load.
  work.catch(() => undefined);
  return {
    untilWritten: async (more) => {
      const begin = performance.now();
      const before = counts.writes;
      let first: number | null = null;
      while (counts.writes < before + more) {
        if (performance.now() - begin > 120_000) throw new Error("nothing was written for two minutes");
        if (first === null && counts.writes > before) first = performance.now() - begin;
        await wait(2);
      }
      return Math.round(first ?? performance.now() - begin);
    },
    counts: found,
    stop: async () => {
      stopping = true;
      deadline = performance.now() + 120_000;
      await work;
      for (const [text, times] of reasons) process.stderr.write(`${times} x ${text}\n`);
      return found();
    },
    audit: async (sql) => {
      let lost = 0;
      let doubled = 0;
      for (const [slug, done] of published) {
        const titles = done.map(({ title }) => title);
        const { rows } = await sql.query(
          `SELECT r.title FROM revisions r JOIN plans p ON p.publisher_id = r.publisher_id AND p.id = r.plan_id WHERE p.slug = $1`,
          [slug],
        );
        const there = rows.map(({ title }) => String(title));
        lost += titles.filter((title) => !there.includes(title)).length;
        doubled += there.length - new Set(there.filter((title) => titles.includes(title))).size;
      }
      return { lost, doubled };
    },
  };
}

const reasonOf = (error: unknown): string =>
  error instanceof Error
    ? [error.message, ...(error.cause instanceof Error ? [error.cause.message] : [])].join(": ")
    : String(error);

/** The longest time between two laps. */
function stopwatch(): { lap(): void; longest(): number } {
  let last = performance.now();
  let longest = 0;
  return {
    lap: () => {
      longest = Math.max(longest, performance.now() - last);
      last = performance.now();
    },
    longest: () => Math.round(longest),
  };
}

/** The middle one and the largest, of milliseconds. */
export function spread(times: readonly number[]): { readonly median: number; readonly most: number } {
  const sorted = [...times].sort((a, b) => a - b);
  return { median: sorted[Math.floor(sorted.length / 2)] ?? 0, most: sorted.at(-1) ?? 0 };
}
