/** How long an answer asks to be left alone, in milliseconds; RFC 9110, 10.2.3, has seconds or a date. 0: it does not say. */
export function retryAfterOf(text: string | null, now: Date): number {
  if (text === null) return 0;
  if (/^\d{1,9}$/.test(text)) return Number(text) * 1000;
  const time = Date.parse(text);
  return Number.isNaN(time) ? 0 : Math.max(0, time - now.getTime());
}
