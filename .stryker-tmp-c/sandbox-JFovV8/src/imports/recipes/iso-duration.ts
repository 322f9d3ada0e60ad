// @ts-nocheck
const shape =
  /^P(?:(\d+(?:[.,]\d+)?)W|(?:(\d+(?:[.,]\d+)?)D)?(?:T(?:(\d+(?:[.,]\d+)?)H)?(?:(\d+(?:[.,]\d+)?)M)?(?:(\d+(?:[.,]\d+)?)S)?)?)$/;

const minutesIn = [7 * 24 * 60, 24 * 60, 60, 1, 1 / 60] as const;

/** The longest a recipe is believed to take: a year in minutes. */
export const longestDuration = 366 * 24 * 60;

/**
 * Minutes of an ISO 8601 duration (`PT1H30M`, `PT1.5H`, `P0DT1H45M`, `P1W`); null for anything else. Months and years have
 * no length of their own and are not taken. Only the last part may have decimals, as the standard says.
 */
export function isoDurationMinutes(text: string): number | null {
  const found = shape.exec(text.trim());
  if (found === null) return null;
  const parts = found.slice(1);
  const given = parts.filter((part) => part !== undefined);
  if (given.length === 0 || text.trim().endsWith("T")) return null;
  if (given.slice(0, -1).some((part) => /[.,]/.test(part))) return null;
  const minutes = parts.reduce((sum, part, at) => sum + Number((part ?? "0").replace(",", ".")) * minutesIn[at]!, 0);
  return minutes <= longestDuration ? minutes : null;
}
