import { entriesIn, languages, readings, type Language } from "../tests/exports/words/catalogue-entries.js";

/**
 * `npm run words -- cautionTexts pl` prints the fixed words whose key contains a text, in English and in a language: below
 * each key a line a language, with every form that its numbers and choices ask for. Without a language: in all of them.
 */
const asked = process.argv.slice(2);
const isLanguage = (word: string): word is Language => (languages as readonly string[]).includes(word);
const keys = asked.filter((word) => !isLanguage(word));
const shown = asked.some(isLanguage) ? languages.filter((each) => each === "en" || asked.includes(each)) : languages;

const columns = shown.map((language) => ({ language, entries: entriesIn(language) }));
for (const [at, { path }] of entriesIn("en").entries()) {
  if (keys.length > 0 && !keys.some((key) => path.includes(key))) continue;
  process.stdout.write(`${path}\n`);
  for (const { language, entries } of columns) {
    const entry = entries[at];
    if (entry !== undefined) process.stdout.write(`  ${language}  ${readings(entry, language).join(" | ")}\n`);
  }
}
