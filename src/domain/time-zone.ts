import { memoizeLatest } from "./memoize.js";
import { readOrNull } from "./read-or-null.js";

/** The longest IANA name has 32 letters. */
const longestName = 60;

/** Asking the machine costs as much as a tenth of an answer, and readers live in few zones. */
const isKnown = memoizeLatest(
  "zones",
  100,
  String,
  (name: string): boolean => readOrNull(() => new Intl.DateTimeFormat("en", { timeZone: name })) !== null,
);

/** Whether a text is the IANA name of a time zone that this machine knows. Offsets such as `+01:00` know no summer time and are none. */
export const isTimeZone = (name: string): boolean =>
  name.length <= longestName && /^[A-Za-z]/.test(name) && isKnown(name);
