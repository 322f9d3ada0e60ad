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
