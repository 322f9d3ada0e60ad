import { memoizeLatest } from "../../domain/memoize.js";
import { assignedRegions, countryOf } from "../../domain/model/region-codes.js";
import { intlTag } from "../../domain/quantity/intl-tag.js";
import type { NameBook } from "../words/name-book.js";
import { dateLocale } from "./dates.js";

type Named = readonly [locale: string, type: "region" | "currency" | "language", style: "long" | "short"];

const namesIn = memoizeLatest(
  "display-names",
  60,
  JSON.stringify as (asked: Named) => string,
  ([locale, type, style]: Named) => new Intl.DisplayNames(intlTag(locale), { type, style, fallback: "code" }),
);

const assigned: ReadonlySet<string> = new Set(assignedRegions);

/** `UK` for GB, `Germany` for DE, `United States (WA)`; a code that stands for no country stays. */
export function countryName(region: string, book: Pick<NameBook, "reader" | "words">): string {
  return countryIn(region, dateLocale(book), "short");
}

export function countryIn(region: string, locale: string, style: "long" | "short"): string {
  const country = countryOf(region);
  if (!assigned.has(country)) return region;
  const name = namesIn([locale, "region", style]).of(country) ?? country;
  return region === country ? name : `${name} (${region.slice(3)})`;
}

export const currencyIn = (code: string, locale: string): string =>
  namesIn([locale, "currency", "long"]).of(code) ?? code;

export const languageIn = (tag: string, locale: string): string => namesIn([locale, "language", "long"]).of(tag) ?? tag;

/** Regions of published rules that are no country. ISO 3166, and UN M.49 for the world. */
const groups: Readonly<Record<string, readonly string[]>> = { INT: ["001"], EU: ["EU"], ANZ: ["AU", "NZ"] };

/** `European Union` for EU, `Australia and New Zealand` for ANZ, `world` for INT, otherwise a country. */
export function ruledRegionIn(region: string, locale: string): string {
  const group = groups[region];
  if (group === undefined) return countryIn(region, locale, "long");
  const names = group.map((each) => namesIn([locale, "region", "long"]).of(each) ?? each);
  return new Intl.ListFormat(intlTag(locale)).format(names);
}
