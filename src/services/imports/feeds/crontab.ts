import cronParser from "cron-parser";

/** Whether a text is a time of five fields as crontab has them: minute, hour, day of the month, month, day of the week. */
export function isCron(text: string): boolean {
  if (text.trim().split(/\s+/).length !== 5) return false;
  try {
    return cronParser.parseExpression(text).hasNext();
  } catch (error) {
    // The library throws plain errors, and nothing else can go wrong in it.
    if (error instanceof Error) return false;
    throw error;
  }
}

/** The last time, at or before an instant, that a crontab of that zone names. */
export const lastTick = (cron: string, zone: string, now: Date): Date =>
  cronParser
    .parseExpression(cron, { currentDate: new Date(now.getTime() + 1), tz: zone })
    .prev()
    .toDate();
