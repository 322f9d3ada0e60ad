import { vocabulary, type Vocabulary } from "../../domain/plan/vocabulary.js";
import { ok, type Path, type Result } from "../../domain/problem.js";
import type { Deps } from "../deps.js";
import { rulesToday } from "../rules/find-rules.js";
import { readLocale } from "./read-household.js";
import { codeName, ruleText } from "../../exports/words/rule-words.js";
import { wordsFor } from "../../exports/words/words-for.js";
import type { Words } from "../../exports/words/words.js";

export type { Vocabulary } from "../../domain/plan/vocabulary.js";

/** Lists whose codes have names of ours, and their group of the catalogue. */
const groups = { aisle: "aisles", allergen: "allergens", appliance: "appliances" } as const;

/** Lists whose codes are named by the rules, in words that have translations. */
const ruleGroups = { diet: "dietNames", "keeping-class": "keepingClassNames" } as const;

/** Names of aisles, allergens, appliances, diets and keeping classes in the language of the locale; English ones are as they are. */
function named(found: Vocabulary, words: Words): Vocabulary {
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

/** The closed lists of today, named in a locale; null: in English. */
export async function listVocabulary(deps: Deps, asked: string | null, path: Path): Promise<Result<Vocabulary>> {
  const read = readLocale(asked, path);
  if (!read.ok) return read;
  const locale = read.value ?? "en";
  return ok(named(vocabulary(await rulesToday(deps), locale), wordsFor(locale)));
}
