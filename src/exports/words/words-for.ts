import type { Words } from "./words.js";
import { english } from "./english.js";

const byLanguage: Readonly<Record<string, Words>> = { en: english };

/** The fixed words for a BCP 47 tag; English where there are none in its language. */
export const wordsFor = (locale: string): Words => byLanguage[locale.split("-")[0]?.toLowerCase() ?? ""] ?? english;
