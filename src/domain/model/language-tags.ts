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
