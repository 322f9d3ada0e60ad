import { readOrNull } from "../read-or-null.js";

/**
 * A BCP 47 tag as the runtime's own formats take it: English for a malformed one, and nothing of private use (RFC 5646, 2.2.7), of which
 * ICU reads some as settings of its own and then refuses the tag: `en-x-yes`.
 */
export const intlTag = (locale: string): string =>
  readOrNull(() => new Intl.Locale(locale))
    ?.toString()
    .replace(/-x(?:-.*)?$/, "") ?? "en";
