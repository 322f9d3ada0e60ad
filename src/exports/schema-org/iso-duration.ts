import { Temporal } from "temporal-polyfill";

/** ISO 8601: `PT2H30M` of minutes; whole minutes, a started one counts, `PT0S` of none. Days are not used: they differ in length. */
export const isoDuration = (minutes: number): string =>
  Temporal.Duration.from({ minutes: Math.max(0, Math.ceil(minutes - 1e-9)) })
    .round({ largestUnit: "hour" })
    .toString();
