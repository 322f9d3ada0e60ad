/** Milliseconds a transaction may wait for its turn and may take. The embedded database runs them one after another. */
export const transactionTimes = { maxWait: 30_000, timeout: 120_000 } as const;
