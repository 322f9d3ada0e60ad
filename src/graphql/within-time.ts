import { withinRequest } from "../services/within-request.js";

/**
 * What the work comes to; ENDED, if it takes longer than so many milliseconds, or if whoever asked goes before. Its statements are
 * cancelled then, where the database can do so, and what it still comes to is nobody's.
 */
export async function withinTime<T>(
  milliseconds: number,
  gone: AbortSignal | null,
  work: (over: AbortSignal) => Promise<T>,
): Promise<T | "ENDED"> {
  const late = new AbortController();
  const timer = setTimeout(() => late.abort(), milliseconds);
  const over = gone === null ? late.signal : AbortSignal.any([late.signal, gone]);
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
  }
}
