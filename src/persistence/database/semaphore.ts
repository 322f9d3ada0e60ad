import { DatabaseUnavailable } from "../errors.js";

/** Runs work as soon as one of its slots is free, first come, first served. */
export type Semaphore = <T>(work: () => Promise<T>) => Promise<T>;

/**
 * Runs at most `most` pieces of work at a time; the others wait for at most `patience` milliseconds.
 *
 * Past that, it rejects with DatabaseUnavailable.
 */
export function createSemaphore(most: number, patience: number): Semaphore {
  let running = 0;
  const waiting: (() => void)[] = [];
  const turn = (): Promise<void> =>
    new Promise((begin, refuse) => {
      const waiter = (): void => {
        clearTimeout(timer);
        begin();
      };
      const timer = setTimeout(() => {
        waiting.splice(waiting.indexOf(waiter), 1);
        refuse(new DatabaseUnavailable(`${most} transactions were open all along for ${patience} ms`));
      }, patience);
      waiting.push(waiter);
    });
  return async (work) => {
    if (running < most) running += 1;
    // The one that ends hands its slot over, so that nobody jumps the queue.
    else await turn();
    try {
      return await work();
    } finally {
      const next = waiting.shift();
      if (next === undefined) running -= 1;
      else next();
    }
  };
}

/** No limit. */
export const unlimited: Semaphore = (work) => work();
