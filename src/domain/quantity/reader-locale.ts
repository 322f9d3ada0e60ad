import { memoizeLatest } from "../memoize.js";
import { readOrNull } from "../read-or-null.js";

/** Languages that unit words and names exist in. Others get English words with their own numbers. */
export type AmountLanguage = "en" | "de" | "fr" | "es" | "pl";

/** All of them. */
export const amountLanguages = ["en", "de", "fr", "es", "pl"] as const satisfies readonly AmountLanguage[];

const languages: ReadonlySet<string> = new Set(amountLanguages);

const isAmountLanguage = (language: string): language is AmountLanguage => languages.has(language);

/** Numbers and plurals of one reader's locale. */
export interface ReaderLocale {
  readonly language: AmountLanguage;
  /** Subtags of the reader's own tag, for the names of foods; `language` may be one that has no unit words. */
  readonly tag: { readonly language: string; readonly region: string | null };
  /** A number with at most this many decimals, in Latin digits. */
  readonly decimal: (value: number, places: number) => string;
  /** What stands between whole numbers and decimals: "," in German. */
  readonly decimalMark: string;
  /** CLDR category of a shown number: "one", "few", "many", "other". */
  readonly plural: (value: number) => string;
}

/** Language and region only: extensions could ask for other digits. English for a malformed tag, and for none. */
const plainTag = (locale: string): string => {
  const { language, region }: { language?: string; region?: string } = readOrNull(() => new Intl.Locale(locale)) ?? {};
  // `und`: a place, and no language.
  if (language === undefined || language === "und") return "en";
  return region === undefined ? language : `${language}-${region}`;
};

/** Whole numbers whose category is kept: those that sentences count by. */
const mostSmall = 200;

const build = (tag: string): ReaderLocale => {
  const language = tag.slice(0, tag.indexOf("-") < 0 ? tag.length : tag.indexOf("-"));
  const known = isAmountLanguage(language) ? language : "en";
  const formats = [0, 1, 2, 3].map(
    (places) => new Intl.NumberFormat(tag, { maximumFractionDigits: places, numberingSystem: "latn" }),
  );
  const fine = new Intl.NumberFormat(tag, { maximumSignificantDigits: 2, numberingSystem: "latn" });
  const plurals = new Intl.PluralRules(known);
  const small: string[] = [];
  const region = tag.slice(tag.indexOf("-") + 1);
  return {
    language: known,
    tag: { language, region: tag.includes("-") ? region : null },
    decimal: (value, places) => {
      const format = formats[places];
      // Up to where digits are grouped, whole numbers look the same in every locale; most amounts are such.
      if (format !== undefined && value >= 1 && value < 1000 && Number.isInteger(value)) return String(value);
      return (format ?? fine).format(value);
    },
    decimalMark: fine.formatToParts(0.5).find(({ type }) => type === "decimal")?.value ?? ".",
    plural: (value) =>
      Number.isInteger(value) && value >= 0 && value < mostSmall
        ? (small[value] ??= plurals.select(value))
        : plurals.select(value),
  };
};

/** Formats of a BCP 47 tag. Endless new tags make this slower, never larger. */
export const readerLocale: (locale: string) => ReaderLocale = memoizeLatest("locale-tags", 200, String, (locale) =>
  ofTag(plainTag(locale)),
);

/** Formats are dear to make: tags that only differ in their extensions share them. */
const ofTag = memoizeLatest("locales", 200, String, build);

/** The language of a BCP 47 tag, by its shortest code (`deu-AT` is `de`, `frr` is not `fr`). English for a malformed tag, and for none. */
export const languageOf = (locale: string | null): string =>
  locale === null ? "en" : readerLocale(locale).tag.language;
