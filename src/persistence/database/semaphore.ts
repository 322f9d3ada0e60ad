import { DatabaseUnavailable } from "../errors.js";

/** Runs some work once its turn has come, in the order asked. */
export type Semaphore = <T>(work: () => Promise<T>) => Promise<T>;

/**
 * At most so many at a time; the others wait, and are refused where that takes longer than `patience` milliseconds.
 *
 * The work rejects with DatabaseUnavailable then.
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
    // Whoever ends hands its place over, so that nobody comes in between.
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

/** All at once. */
export const unlimited: Semaphore = (work) => work();
