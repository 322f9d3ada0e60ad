import { wordsOfName } from "../../quantity/food-name.js";
import { languageOf } from "../../quantity/reader-locale.js";
import type { PlanBundle } from "../../model/plan.js";
import { textsOfComponent, textsOfPlan } from "../translate/texts-of.js";

/** Texts of one language, or (null) of none in particular. */
export interface SearchedTexts {
  readonly language: string | null;
  readonly text: string;
}

/** The most characters that are read of one plan in one language: a plan of this length is found by what stands first in it. */
const mostCharacters = 40_000;

/** Steps say "stir" in every plan. */
const isSearched = (path: readonly string[]): boolean => !path.includes("steps") && !path.includes("cautions");

/** All that a plan is looked for by: what it, its meals and components are called and say of themselves, and the names of its foods. */
export function searchedTexts({ plan, components, foods, translations = [] }: PlanBundle): readonly SearchedTexts[] {
  const byLanguage = new Map<string, string[]>();
  const add = (language: string, text: string): void =>
    void byLanguage.set(language, [...(byLanguage.get(language) ?? []), text]);
  const own = languageOf(plan.locale);
  add(own, plan.title);
  for (const texts of [textsOfPlan(plan), ...components.map(textsOfComponent)])
    for (const { path, text } of texts.values()) if (isSearched(path)) add(own, text);
  for (const { language, texts } of translations) for (const { text } of texts) add(languageOf(language), text);
  for (const tag of plan.tags ?? []) add(own, tag);
  for (const { names } of foods)
    for (const name of names) for (const word of wordsOfName(name)) add(name.language, word);
  return [...byLanguage].map(([language, texts]) => ({ language, text: texts.join("\n").slice(0, mostCharacters) }));
}
