import type { MeasureSystem } from "../model/amount.js";

/** Whose cups and spoons people of a country cook by; null: no country is known. Common practice, no source. */
export const measuresOfRegion = (region: string | null): MeasureSystem =>
  region === "US" ? "US_CUSTOMARY" : region === "AU" ? "AUSTRALIAN" : "METRIC";

/** The same for a language tag: `en-US` is American, `en` and `de-CH` are metric. */
export const measuresOfLocale = (locale: string): MeasureSystem =>
  measuresOfRegion(/-([A-Z]{2})$/.exec(locale)?.[1] ?? null);
