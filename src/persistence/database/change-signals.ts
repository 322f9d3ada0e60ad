/** The channel that the triggers of the migration `tell_of_changes` notify. */
export const signalChannel = "prepwright_changes";

/**
 * What changed, as the triggers say it: `foods` (with packs, prices and the open food table), `rules`, `publishers`, one plan as
 * `plan north-field/bean-night`, or `plans` for a great many of them; and `listings`,
 * what lists find plans by.
 */
export type Signal = string;

/** Who is told that something stored has changed, by whatever process. */
export interface SignalFollower {
  /** It is committed: whoever reads from now on reads it. */
  heard(signal: Signal): void;
  /** Whether changes are heard from now on. Those of the time between were not. */
  listening(is: boolean): void;
}

export interface Followed {
  /** Once every change that was committed before the call was heard. At once where nothing is heard. */
  caughtUp(): Promise<void>;
  close(): Promise<void>;
}

/** Tells of changes until closed. Resolves after the first attempt to listen; it tries again for ever. */
export type FollowSignals = (follower: SignalFollower) => Promise<Followed>;

/** Texts that a process notifies to hear them itself: what was notified before is heard before. */
interface Probes {
  /** Whether this was one of ours, or of any process. */
  take(payload: string): boolean;
  /** Notifies a new one; resolves when it was heard. */
  send(notify: (payload: string) => Promise<unknown>): Promise<void>;
  /** Nobody waits any longer. */
  release(): void;
}

const probeMark = "probe ";

/** `name` tells this process from all others. */
export function createProbes(name: string): Probes {
  const waiting = new Map<string, () => void>();
  let count = 0;
  return {
    take: (payload) => {
      if (!payload.startsWith(probeMark)) return false;
      waiting.get(payload)?.();
      waiting.delete(payload);
      return true;
    },
    send: async (notify) => {
      count += 1;
      const payload = `${probeMark}${name} ${String(count)}`;
      const heard = new Promise<void>((done) => waiting.set(payload, done));
      await notify(payload);
      await heard;
    },
    release: () => {
      for (const done of waiting.values()) done();
      waiting.clear();
    },
  };
}
