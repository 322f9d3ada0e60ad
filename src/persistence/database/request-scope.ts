import { AsyncLocalStorage } from "node:async_hooks";
import { setMaxListeners } from "node:events";

const signals = new AsyncLocalStorage<AbortSignal>();
let underWay = 0;

/**
 * Does the work so that what it asks a server's database is ended when the signal says so, whatever lies between, and for as long as
 * it has not come to an end itself.
 */
export async function withinRequest<T>(signal: AbortSignal, work: () => Promise<T>): Promise<T> {
  // Each of its statements listens to it while it runs: as many at once as there are connections, which Node takes for a leak from 11 on.
  setMaxListeners(0, signal);
  underWay += 1;
  try {
    return await signals.run(signal, work);
  } finally {
    underWay -= 1;
    // While anything is under way, Node notes down every promise and timer of the process; answers from memory need none of it.
    if (underWay === 0) signals.disable();
  }
}

/** The end of the request that this is done for; undefined: it is done for none. */
export const requestSignal = (): AbortSignal | undefined => signals.getStore();
