import { openSharedPolls, type SharedPolls } from "../shared-polls.js";
import type { Signal, SignalFollower } from "../../persistence/database/change-signals.js";

/** Wakes whoever follows changes of plans, when there may be new ones. */
export interface ChangeSignals {
  /** Receives the changes of the database. */
  readonly follower: SignalFollower;
  /**
   * Calls `wake` after each change of a plan of this publisher (slug; null: of any), by whatever process, and once changes are heard
   * again after a time in which they were not. Returns what ends it.
   */
  onChange(publisher: string | null, wake: () => void): () => void;
  /** Of what no signal tells, such as the progress of imports. */
  readonly polls: SharedPolls;
  /** A read that several ask for at the same time, done once for those who have heard of the same changes. */
  share<Done>(key: string, read: () => Promise<Done>): Promise<Done>;
}

type Wake = () => void;

/** Changes that no plan's readers are told of as changes of a plan. */
const ofNoPlan: ReadonlySet<Signal> = new Set(["foods", "rules", "publishers", "listings"]);

/** Milliseconds between two looks at what no signal tells. */
const usualPause = 1_000;

export function openChangeSignals(pollPause = usualPause): ChangeSignals {
  const listeners = new Map<string | null, Set<Wake>>();
  const running = new Map<string, Promise<unknown>>();
  let count = 0;
  const wakeAll = (): void => {
    for (const wakes of listeners.values()) for (const wake of wakes) wake();
  };
  return {
    follower: {
      heard: (signal) => {
        if (ofNoPlan.has(signal)) return;
        count += 1;
        const [, publisher] = /^plan ([^/]+)\//.exec(signal) ?? [];
        if (publisher === undefined) return wakeAll();
        for (const concerned of [publisher, null]) for (const wake of listeners.get(concerned) ?? []) wake();
      },
      // What changed meanwhile was not heard.
      listening: (is) => {
        count += 1;
        if (is) wakeAll();
      },
    },
    onChange: (publisher, wake) => {
      // A function of its own, so that one that is given twice ends twice.
      const own: Wake = () => wake();
      const here = listeners.get(publisher) ?? new Set();
      listeners.set(publisher, here.add(own));
      return () => {
        here.delete(own);
        if (here.size === 0 && listeners.get(publisher) === here) listeners.delete(publisher);
      };
    },
    polls: openSharedPolls(pollPause),
    share: <Done>(key: string, read: () => Promise<Done>) => {
      // One that was begun before the last change may not have found it.
      const name = `${count} ${key}`;
      const ongoing = running.get(name) as Promise<Done> | undefined;
      if (ongoing !== undefined) return ongoing;
      const begun = read().finally(() => running.delete(name));
      running.set(name, begun);
      return begun;
    },
  };
}

/** @throws Error in a process that does not follow the database, which is a fault of its wiring */
export function signalsOf({ signals }: { readonly signals?: ChangeSignals }): ChangeSignals {
  if (signals === undefined) throw new Error("this process does not follow the changes of its database");
  return signals;
}
