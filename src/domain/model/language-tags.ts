import { isCountryCode } from "./region-codes.js";

/** The regions of language tags are those of ISO 3166-1; a number of three digits is an area of UN M.49. */
const tag = /^([a-z]{2,3})(?:-([A-Z][a-z]{3}))?(?:-([A-Z]{2}|\d{3}))?$/;

const known = (type: "language" | "script" | "region") =>
  new Intl.DisplayNames("en", { type, fallback: "none", languageDisplay: "standard" });

const names = { language: known("language"), script: known("script"), region: known("region") };

const letters = [..."abcdefghijklmnopqrstuvwxyz"];
let twoLetters: readonly string[] | null = null;

/** The languages that ISO 639-1 has a code for, as the runtime's CLDR knows them. */
export function languageCodes(): readonly string[] {
  twoLetters ??= letters.flatMap((a) =>
    letters.flatMap((b) => (names.language.of(a + b) === undefined ? [] : [a + b])),
  );
  return twoLetters;
}

/**
 * Whether a reader's locale is of a language, script and region that exist. Wider than `isLanguageTag`, because a browser sends it:
 * variants and extensions are allowed, and so are languages of three letters that the runtime has no name for.
 */
export function isReadersLocale(tag: string): boolean {
  const { language, script, region } = new Intl.Locale(tag);
  return (
    (language.length === 3 || names.language.of(language) !== undefined) &&
    (script === undefined || names.script.of(script) !== undefined) &&
    (region === undefined || names.region.of(region) !== undefined || isCountryCode(region))
  );
}

/** The code of a language by its English name, or by its own: `German`, `deutsch`. null: no language is called so. */
export const languageCalled = (name: string): string | null =>
  (codesByName ??= namesOfLanguages()).get(name.trim().toLowerCase()) ?? null;

/** The runtime loads the words of a language the first time it names something in it: all of them take some 80 ms, so that is done once. */
let codesByName: ReadonlyMap<string, string> | null = null;

function namesOfLanguages(): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const code of languageCodes()) {
    for (const locale of ["en", code]) {
      const name = new Intl.DisplayNames(locale, { type: "language" }).of(code)?.toLowerCase();
      if (name !== undefined && !found.has(name)) found.set(name, code);
    }
  }
  return found;
}

/** Whether a text is a language tag of languages, scripts and regions that exist: `en`, `en-GB`, `sr-Latn`, `es-419`. */
export function isLanguageTag(text: string): boolean {
  const [, language, script, region] = tag.exec(text) ?? [];
  return (
    language !== undefined &&
    names.language.of(language) !== undefined &&
    (script === undefined || names.script.of(script) !== undefined) &&
    (region === undefined || names.region.of(region) !== undefined)
  );
}
