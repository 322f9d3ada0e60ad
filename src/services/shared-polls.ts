/** Something that is read again and again, once for all who watch it. */
export interface SharedPolls {
  /**
   * Reads at once, and then again and again, and tells what was found. Those who watch the same key share each read. Returns what ends it.
   */
  watch<Found>(key: string, read: () => Promise<Found>, tell: (found: Promise<Found>) => void): () => void;
}

interface Poll {
  readonly listeners: Set<(found: Promise<unknown>) => void>;
  timer: NodeJS.Timeout | undefined;
}

/** @param pause milliseconds between the end of a read and the next */
export function openSharedPolls(pause: number): SharedPolls {
  const polls = new Map<string, Poll>();
  const begin = (key: string, read: () => Promise<unknown>): Poll => {
    const poll: Poll = { listeners: new Set(), timer: undefined };
    const look = (): void => {
      const found = read();
      for (const tell of poll.listeners) tell(found);
      const again = (): void => {
        if (poll.listeners.size > 0) poll.timer = setTimeout(look, pause).unref();
      };
      found.then(again, again);
    };
    polls.set(key, poll);
    queueMicrotask(look);
    return poll;
  };
  return {
    watch: <Found>(key: string, read: () => Promise<Found>, tell: (found: Promise<Found>) => void) => {
      const poll = polls.get(key) ?? begin(key, read);
      const own = (found: Promise<unknown>): void => tell(found as Promise<Found>);
      poll.listeners.add(own);
      return () => {
        poll.listeners.delete(own);
        if (poll.listeners.size > 0) return;
        clearTimeout(poll.timer);
        if (polls.get(key) === poll) polls.delete(key);
      };
    },
  };
}
