import { DatabaseUnavailable } from "../persistence/errors.js";
import type { Log } from "./deps.js";

export { DatabaseUnavailable };

/** What callers are told while the database is away. */
export const unavailableMessage =
  "The database cannot be reached at the moment. Ask again in a moment; send a change again under its idempotency key.";

/** Seconds: restarts take about as long, and whoever comes too early is told the same again. */
export const unavailableHeaders: Readonly<Record<string, string>> = { "retry-after": "2" };

/** One line a request: while it lasts, every request has the same cause, and where it came up says nothing. */
export const logUnavailable = (log: Log, requestId: string, away: DatabaseUnavailable): void =>
  log.warn({ requestId, reason: away.message }, "a request could not be answered without the database");
