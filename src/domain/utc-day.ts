/** The day of an instant in UTC, as an ISO date. */
export const utcDay = (at: Date): string => at.toISOString().slice(0, 10);
