import { english } from "./messages/english.js";
import type { Words } from "./words.js";

/** Groups of the catalogue that translate texts of the published rules, and names of packs. */
type RuleGroup = "allergenNames" | "dietNames" | "cautionTexts" | "keepingClassNames" | "ruleTexts" | "packNames";

const keysByText = (group: Readonly<Record<string, string>>): ReadonlyMap<string, string> =>
  new Map(Object.entries(group).map(([key, text]) => [text, key]));

const keys: Readonly<Record<RuleGroup, ReadonlyMap<string, string>>> = {
  allergenNames: keysByText(english.allergenNames),
  dietNames: keysByText(english.dietNames),
  cautionTexts: keysByText(english.cautionTexts),
  keepingClassNames: keysByText(english.keepingClassNames),
  ruleTexts: keysByText(english.ruleTexts),
  packNames: keysByText(english.packNames),
};

/**
 * A text of the rules in the reader's language. A translation belongs to the very words it was made from: rules that an operator
 * changed are shown as they are written.
 */
export function ruleText(group: RuleGroup, text: string, words: Words): string {
  const key = words.language === "en" ? undefined : keys[group].get(text);
  return key === undefined ? text : ((words[group] as Readonly<Record<string, string>>)[key] ?? text);
}

/** The group of codes of a closed list that have names. */
type CodeGroup = "aisles" | "allergens" | "appliances" | "diets";

/** What a code is called: "dairy and eggs"; one that is on no list by its own words. */
export const codeName = (group: CodeGroup, code: string, words: Pick<Words, CodeGroup>): string => {
  const names = words[group] as Readonly<Record<string, string>>;
  return (Object.hasOwn(names, code) ? names[code] : undefined) ?? code.replaceAll("-", " ");
};
