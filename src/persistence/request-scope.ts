import { AsyncLocalStorage } from "node:async_hooks";

const signals = new AsyncLocalStorage<AbortSignal>();

/** Runs the work so that what it asks a server's database is ended when the signal says so, whatever lies between. */
export const withinRequest = <T>(signal: AbortSignal, work: () => T): T => signals.run(signal, work);

/** The end of the request that this is done for; undefined: it is done for none. */
export const requestSignal = (): AbortSignal | undefined => signals.getStore();
