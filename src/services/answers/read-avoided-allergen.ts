import { memoize } from "../../domain/memoize.js";
import { usualSpelling } from "../../domain/model/code-lists.js";
import { spokenAllergens, spokenOfSeveral } from "../../domain/model/spoken-allergens.js";
import { allergenCodes, isAllergenCode } from "../../domain/nutrition/allergen-codes.js";
import { failed, ok, type Path, type Result } from "../../domain/problem.js";
import { amountLanguages } from "../../domain/quantity/reader-locale.js";
import { nearestCodes } from "../../domain/quantity/naming/nearest-words.js";
import { codeName } from "../../exports/words/rule-words.js";
import { wordsFor } from "../../exports/words/words-for.js";
import { foldText } from "../../persistence/sql/fold-words.js";

/** No allergen is called by more characters. */
const longestName = 80;

/** As names are compared: without case, accents and hyphens, and with letters of a keyboard that has no others. */
const folded = (text: string): string =>
  foldText(text)
    .replaceAll("œ", "oe")
    .replaceAll("ł", "l")
    .replaceAll("ß", "ss")
    .replaceAll("-", " ")
    .replace(/\s+/gu, " ");

const own = <T>(table: Readonly<Record<string, T>>, key: string): T | undefined =>
  Object.hasOwn(table, key) ? table[key] : undefined;

/** What each name stands for in the languages that have fixed words; one that stands for several, for all of them. */
const codesByName = memoize((codes: readonly string[]): ReadonlyMap<string, ReadonlySet<string>> => {
  const found = new Map<string, Set<string>>();
  for (const language of amountLanguages)
    for (const code of codes) {
      const name = folded(codeName("allergens", code, wordsFor(language)));
      found.set(name, (found.get(name) ?? new Set()).add(own(spokenAllergens, name) ?? code));
    }
  return found;
});

/** An allergen that a household avoids, by its code or by its name in any language. Most often one code. */
export function readAvoidedAllergen(given: string, locale: string | null, path: Path): Result<readonly string[]> {
  const name = folded(given.slice(0, longestName + 1));
  if (name.length <= longestName) {
    const code = usualSpelling("allergen", name.replaceAll(" ", "-"));
    if (isAllergenCode(code)) return ok([code]);
    const spoken = own(spokenAllergens, name);
    if (spoken !== undefined) return ok([spoken]);
    const codes = codesByName(allergenCodes).get(name);
    if (codes !== undefined) return ok([...codes]);
  }
  const written = given.length > longestName ? `${given.slice(0, longestName)}…` : given;
  return failed([{ code: "UNKNOWN_CODE", path, list: "allergen", written, nearest: nearestTo(name, locale) }]);
}

/** Names in the reader's language that may have been meant; codes where nobody says which that is. */
function nearestTo(name: string, locale: string | null): readonly string[] {
  const shown = (code: string): string => (locale === null ? code : codeName("allergens", code, wordsFor(locale)));
  const several = own(spokenOfSeveral, name);
  if (several !== undefined) return several.map(shown);
  const names = new Map([...allergenCodes.map((code) => [folded(shown(code)), code] as const), ...allNames()]);
  const near = nearestCodes(name, [...names.keys()]).map((each) => shown(names.get(each) ?? each));
  return [...new Set(near)];
}

const allNames = (): readonly (readonly [string, string])[] => [
  ...[...codesByName(allergenCodes)].map(([name, codes]) => [name, [...codes][0] ?? name] as const),
  ...Object.entries(spokenAllergens),
];
