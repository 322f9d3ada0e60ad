import { countryOf } from "../model/region-codes.js";
import type { MeasureSystem } from "../model/amount.js";

/** Only these regions have cups or spoons of their own; New Zealand's spoon holds 15 ml, Australia's 20. */
const byRegion: Readonly<Record<string, MeasureSystem>> = {
  US: "US_CUSTOMARY",
  AU: "AUSTRALIAN",
  NZ: "METRIC_CUP",
  CA: "METRIC_CUP",
  GB: "UK_IMPERIAL",
};

/** Measures a region's cooks mean by "cup" and "tbsp": ISO 3166 code in, METRIC for regions without cups, null for none. */
export const measuresOfRegion = (region: string | null): MeasureSystem | null =>
  region === null ? null : (byRegion[countryOf(region)] ?? "METRIC");
