import { withTimeout } from "./with-timeout.js";
import type { PersistenceLog } from "./persistence-log.js";

/** Where a server stands in the log of writes, in bytes from its beginning. Rejects where it does not answer. */
type ReadPosition = () => Promise<number>;

interface WatchedReplica<T> {
  /** For the log: host and port. */
  readonly name: string;
  readonly position: ReadPosition;
  readonly value: T;
}

export interface ReplicaState {
  readonly name: string;
  readonly usable: boolean;
  /** Milliseconds by which its rows may be older than the primary's; Infinity: not known. */
  readonly behindMs: number;
}

interface ReplicaWatchOptions {
  /** The most milliseconds an answer of a replica may be older than the primary's. */
  readonly maxLagMs: number;
  /** Milliseconds of a clock that only goes forward. */
  readonly now: () => number;
  readonly log: PersistenceLog | undefined;
}

export interface ReplicaWatch<T> {
  /** One that may be asked now, by turns; null: none may. */
  pick(): T | null;
  /** It failed to answer: it is not asked again before it was found well. */
  failed(value: T, error: unknown): void;
  /** From now on nothing is asked that does not hold all that is committed by now. */
  heardOfWrite(): void;
  states(): readonly ReplicaState[];
  /** Looks now; resolves when all have answered or failed to. */
  look(): Promise<void>;
  close(): void;
}

/** A look at the servers may take so long, in milliseconds. */
const patience = 2_000;

/** The least pause between two looks, in milliseconds, however much is heard of. */
const shortest = 20;

interface Known<T> extends WatchedReplica<T> {
  /** Its rows are no older than the primary's were then. */
  freshAsOf: number;
  reached: number;
  /** It answered when it was looked at last, and has not failed since. */
  well: boolean;
  failures: number;
  /** null: never looked at. */
  wasUsable: boolean | null;
  /** Why it did not answer the last look; null: it did. */
  silentBecause: unknown;
}

/**
 * Keeps an eye on replicas. Each look asks the primary where it stands, then each replica: one that has reached where the primary
 * stood at some time holds all that was committed until then. So what a replica answers is never older than `maxLagMs`, whatever
 * clocks say; one that is silent, or falls behind, drops out by itself, and so do all while the primary does not answer.
 */
export function watchReplicas<T>(
  primary: ReadPosition,
  replicas: readonly WatchedReplica<T>[],
  { maxLagMs, now, log }: ReplicaWatchOptions,
): ReplicaWatch<T> {
  const known = replicas.map((each): Known<T> => ({
    ...each,
    freshAsOf: -Infinity,
    reached: 0,
    well: false,
    failures: 0,
    wasUsable: null,
    silentBecause: null,
  }));
  const every = Math.min(1_000, Math.max(shortest, maxLagMs / 4));
  /** Where the primary stood, the newest first. */
  let marks: readonly { readonly at: number; readonly position: number }[] = [];
  let heard = 0;
  /** How much was heard of before the primary was asked last; only then `floor` covers it. */
  let heardInFloor = 0;
  let floor = 0;
  let primarySilent = false;
  let turn = 0;
  let looking: Promise<void> | null = null;
  let timer: NodeJS.Timeout | null = null;
  let soon = false;
  let closed = false;

  const usable = (each: Known<T>): boolean =>
    each.well && heard === heardInFloor && each.reached >= floor && now() - each.freshAsOf <= maxLagMs;

  const askAll = async (): Promise<void> => {
    const heardBefore = heard;
    const at = now();
    const position = await withTimeout(primary(), patience).catch((error: unknown) => {
      if (!primarySilent) log?.warn({ err: error }, "the primary does not say where it stands; replicas drop out soon");
      return null;
    });
    primarySilent = position === null;
    if (position !== null) {
      marks = [{ at, position }, ...marks.filter((mark) => at - mark.at <= maxLagMs)];
      if (heardBefore !== heardInFloor) floor = position;
      heardInFloor = heardBefore;
    }
    await Promise.all(known.map((each) => askOne(each)));
    if (heard === heardInFloor) for (const each of known) tell(each);
  };

  const tell = (each: Known<T>): void => {
    const is = usable(each);
    if (is === each.wasUsable) return;
    each.wasUsable = is;
    const facts = { replica: each.name };
    if (is) log?.info(facts, "a replica is read from");
    else if (each.silentBecause === null) log?.warn(facts, "a replica is behind; the primary takes over");
    else log?.warn({ ...facts, err: each.silentBecause }, "a replica does not answer; the primary takes over");
  };

  const askOne = async (each: Known<T>): Promise<void> => {
    const { failures } = each;
    const position = await withTimeout(each.position(), patience).catch((error: unknown) => {
      each.silentBecause = error;
      return null;
    });
    // A read that failed meanwhile says more than this look.
    each.well = position !== null && failures === each.failures;
    if (position === null) return;
    each.silentBecause = null;
    each.reached = position;
    each.freshAsOf = marks.find((mark) => mark.position <= position)?.at ?? each.freshAsOf;
  };

  const look = (): Promise<void> =>
    (looking ??= askAll().finally(() => {
      looking = null;
      const waiting = heard !== heardInFloor || known.some((each) => each.well && each.reached < floor);
      lookIn(waiting ? shortest : every);
    }));

  const lookIn = (ms: number): void => {
    if (closed) return;
    if (timer !== null) clearTimeout(timer);
    timer = setTimeout(() => {
      timer = null;
      void look();
    }, ms).unref();
    soon = ms <= shortest;
  };

  void look();
  return {
    pick: () => {
      const well = known.filter(usable);
      turn += 1;
      return well[turn % well.length]?.value ?? null;
    },
    failed: (value, error) => {
      for (const each of known.filter((one) => one.value === value)) {
        each.well = false;
        each.failures += 1;
        log?.warn({ replica: each.name, err: error }, "a replica failed to answer; the primary did");
      }
      if (looking === null && !soon) lookIn(0);
    },
    heardOfWrite: () => {
      heard += 1;
      if (looking === null && !soon) lookIn(0);
    },
    states: () => known.map((each) => ({ name: each.name, usable: usable(each), behindMs: now() - each.freshAsOf })),
    look,
    close: () => {
      closed = true;
      if (timer !== null) clearTimeout(timer);
    },
  };
}
