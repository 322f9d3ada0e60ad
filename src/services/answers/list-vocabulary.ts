import { problemMessages, warningMessages } from "../../domain/message-parameters.js";
import { namedAllergens, ruledRegions, type RuleSubject } from "../../domain/plan/ruled-regions.js";
import { vocabulary, type ClosedLists, type NamedCode } from "../../domain/plan/vocabulary.js";
import { ok, type Path, type Result } from "../../domain/problem.js";
import { amountLanguages } from "../../domain/quantity/reader-locale.js";
import { problemTitle, warningTitle } from "../../exports/sentences/problem-title.js";
import { currencyIn, languageIn, ruledRegionIn } from "../../exports/page/country-name.js";
import { codeName, ruleText } from "../../exports/words/rule-words.js";
import { wordsFor } from "../../exports/words/words-for.js";
import type { Words } from "../../exports/words/words.js";
import { utcDay } from "../../domain/utc-day.js";
import type { Deps } from "../deps.js";
import { findRules } from "../rules/find-rules.js";
import { readLocale } from "./read-household.js";

/** A kind of problem or warning: its title, and what its parameters are called. */
interface VocabularyMessage {
  readonly code: string;
  readonly title: string;
  readonly parameters: readonly string[];
}

/** The closed lists, and what the service knows beyond them today. */
export interface Vocabulary extends ClosedLists {
  readonly problemKinds: readonly VocabularyMessage[];
  readonly warningKinds: readonly VocabularyMessage[];
  readonly allergens: readonly (NamedCode & ReturnType<typeof namedAllergens>[number])[];
  readonly regionsWithRules: readonly (NamedCode & {
    readonly rules: readonly RuleSubject[];
    readonly holdsIn: readonly string[] | null;
  })[];
  readonly currenciesWithPrices: readonly NamedCode[];
  readonly languagesOfWords: readonly NamedCode[];
}

/** Lists whose codes have names of ours, and their group of the catalogue. */
const groups = { aisle: "aisles", allergen: "allergens", appliance: "appliances" } as const;

/** Lists whose codes are named by the rules, in words that have translations. */
const ruleGroups = { diet: "dietNames", "keeping-class": "keepingClassNames" } as const;

/** Names of aisles, allergens, appliances, diets and keeping classes in the language of the locale; English ones are as they are. */
function named(found: ClosedLists, words: Words): ClosedLists {
  if (words.language === "en") return found;
  const lists = found.lists.map(({ list, codes }) => ({
    list,
    codes: codes.map((each) => {
      if (Object.hasOwn(ruleGroups, list))
        return { ...each, name: ruleText(ruleGroups[list as keyof typeof ruleGroups], each.name, words) };
      return list in groups ? { ...each, name: codeName(groups[list as keyof typeof groups], each.code, words) } : each;
    }),
  }));
  return { ...found, lists };
}

/** The closed lists of today and what is known beyond them, named in a locale; null: in English. */
export async function listVocabulary(deps: Deps, asked: string | null, path: Path): Promise<Result<Vocabulary>> {
  const read = readLocale(asked, path);
  if (!read.ok) return read;
  const locale = read.value ?? "en";
  const words = wordsFor(locale);
  const today = utcDay(deps.clock());
  const [rules, currencies] = await Promise.all([findRules(deps, today), deps.data.foods.currencies()]);
  return ok({
    ...named(vocabulary(rules, locale), words),
    problemKinds: problemMessages.map((each) => ({ ...each, title: problemTitle(each.code, words) })),
    warningKinds: warningMessages.map((each) => ({ ...each, title: warningTitle(each.code, words) })),
    allergens: namedAllergens(rules, today).map(({ code, namedBy }) => ({
      code,
      name: codeName("allergens", code, words),
      namedBy: namedBy.map((each) => ({ ...each, name: ruleText("allergenNames", each.name, words) })),
    })),
    regionsWithRules: ruledRegions(rules, today).map((each) => ({ ...each, name: ruledRegionIn(each.code, locale) })),
    currenciesWithPrices: currencies.map((code) => ({ code, name: currencyIn(code, locale) })),
    languagesOfWords: amountLanguages.map((code) => ({ code, name: languageIn(code, locale) })),
  });
}
