/** Requests take turns where they come faster than they are computed. */
export interface RequestQueue {
  /** To be called for each connection that is taken. */
  connected(): void;
  /** Begins the work of a request, now or when its turn comes, in the order they came; false: it would wait too long and never begins. */
  enqueue(work: () => void): boolean;
}

/** A round of the event loop that takes longer than this, in milliseconds, computes. Who comes in it, or just after it, waits for a turn. */
const slice = 5;

/** For how many rounds of the event loop new requests are taken up between two turns, as long as some come. */
const listening = 32;

/** Share of the last turns in the mean of all. */
const weight = 0.05;

/**
 * Node takes up one connection in each round of its event loop. Where each round computes an answer, all others wait unseen in the
 * system's queue, for many seconds, and the delay of the loop says nothing. So whoever comes while there is something to compute is
 * taken up first, and waits here, where it is known for how long: nobody waits much longer than `longestWait` milliseconds, and those who
 * would are told at once.
 */
export function openRequestQueue(longestWait: number): RequestQueue {
  const queue: (() => void)[] = [];
  let roundBegan: number | null = null;
  let computedUntil = -Infinity;
  let hasCome = false;
  let isPumping = false;
  /** What a turn takes in milliseconds, with all else that the loop does meanwhile: the mean of the last, the newer the heavier. */
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
    // Of answers that lie ready there is room for many in a round.
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
