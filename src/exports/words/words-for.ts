import { memoizeLatest } from "../../domain/memoize.js";
import { readerLocale, type AmountLanguage } from "../../domain/quantity/reader-locale.js";
import type { Translation } from "./message.js";
import { english } from "./messages/english.js";
import { french } from "./messages/french.js";
import { german } from "./messages/german.js";
import { polish } from "./messages/polish.js";
import { spanish } from "./messages/spanish.js";
import { speak } from "./speak.js";
import type { Words } from "./words.js";

/** null: the catalogue is in this language already. */
const translations: Readonly<Record<AmountLanguage, Translation<typeof english> | null>> = {
  en: null,
  de: german,
  fr: french,
  es: spanish,
  pl: polish,
};

/** The fixed words for a BCP 47 tag; English where there are none in its language. Endless new tags make this slower, never larger. */
export const wordsFor: (locale: string) => Words = memoizeLatest("words", 60, String, (locale) => {
  const { language } = readerLocale(locale);
  return { language, ...speak(english, translations[language], locale) };
});
