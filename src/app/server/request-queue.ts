/** A bounded queue for requests that arrive faster than the process can answer them. */
export interface RequestQueue {
  /** Call this for each accepted connection. */
  connected(): void;
  /** Starts a request now, or later in order of arrival; false: it would wait too long and is rejected. */
  enqueue(work: () => void): boolean;
}

/** An iteration of the event loop longer than this, in milliseconds, counts as busy. Requests that arrive in or just after one are queued. */
const slice = 5;

/** For how many iterations of the event loop new requests are accepted between two batches, as long as some arrive. */
const listening = 32;

/** Weight of the last batch in the moving average. */
const weight = 0.05;

/**
 * Node accepts one connection in each iteration of its event loop. Where each iteration computes an answer, all others wait in the
 * system's backlog, for many seconds, and the event loop delay does not show it. So requests that arrive while the process is busy are
 * accepted first and wait here, where the wait is known: nobody waits much longer than `longestWait` milliseconds, and requests that
 * would are rejected at once.
 */
export function openRequestQueue(longestWait: number): RequestQueue {
  const queue: (() => void)[] = [];
  let roundBegan: number | null = null;
  let computedUntil = -Infinity;
  let hasCome = false;
  let isPumping = false;
  /** Milliseconds per request, with everything else the loop does meanwhile: an exponential moving average. */
  let turn = slice;
  let turnsBegan = 0;
  let turns = 0;

  const pump = (roundsLeft: number): void => {
    const isQuiet = !hasCome;
    hasCome = false;
    if (!isQuiet && roundsLeft > 0) return void setImmediate(pump, roundsLeft - 1);
    const now = performance.now();
    if (turns > 0) turn += ((now - turnsBegan) / turns - turn) * weight;
    turnsBegan = now;
    // Cached answers are quick: many fit into one iteration.
    turns = Math.max(1, Math.floor(slice / turn));
    for (const work of queue.splice(0, turns)) work();
    isPumping = queue.length > 0;
    if (isPumping) setImmediate(pump, listening);
  };
  const endRound = (): void => {
    const now = performance.now();
    if (roundBegan !== null && now - roundBegan > slice) computedUntil = now;
    roundBegan = null;
  };
  return {
    connected: () => {
      hasCome = true;
    },
    enqueue: (work) => {
      const now = performance.now();
      hasCome = true;
      if (roundBegan === null) {
        roundBegan = now;
        setImmediate(endRound);
      }
      if (!isPumping && now - roundBegan < slice && now - computedUntil > slice) {
        work();
        return true;
      }
      if (queue.length * turn > longestWait) return false;
      queue.push(work);
      if (!isPumping) {
        isPumping = true;
        turns = 0;
        setImmediate(pump, listening);
      }
      return true;
    },
  };
}
