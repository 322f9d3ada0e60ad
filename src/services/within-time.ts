import { withinRequest } from "../persistence/request-scope.js";

/**
 * What the work comes to; ENDED, if it takes longer than so many milliseconds, or if whoever asked goes before. Its statements are
 * cancelled then, where the database can do so, and what it still comes to is nobody's.
 */
export async function withinTime<T>(
  milliseconds: number,
  gone: AbortSignal | null,
  work: (over: AbortSignal) => Promise<T>,
): Promise<T | "ENDED"> {
  // Not AbortSignal.any: one that is listened to and never aborts is kept by Node for ever, with all that its listeners hold.
  const ending = new AbortController();
  const end = (): void => ending.abort();
  const timer = setTimeout(end, milliseconds);
  gone?.addEventListener("abort", end, { once: true });
  if (gone?.aborted === true) end();
  const over = ending.signal;
  const ended = new Promise<"ENDED">((resolve) => {
    if (over.aborted) resolve("ENDED");
    over.addEventListener("abort", () => resolve("ENDED"), { once: true });
  });
  const working = withinRequest(over, () => work(over));
  // Nobody waits for it once it has ended.
  working.catch(() => undefined);
  try {
    return await Promise.race([working, ended]);
  } finally {
    clearTimeout(timer);
    gone?.removeEventListener("abort", end);
  }
}
