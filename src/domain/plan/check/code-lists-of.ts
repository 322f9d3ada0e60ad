import { aisles } from "../../model/aisles.js";
import { appliances } from "../../model/appliances.js";
import type { CodeList, CodeLists } from "../../model/code-lists.js";
import { currencyCodes } from "../../model/currency-codes.js";
import { isLanguageTag, languageCodes } from "../../model/language-tags.js";
import { allergenCodes } from "../../nutrition/allergen-codes.js";
import { memoize } from "../../memoize.js";
import type { RuleSet } from "../compile/rule-set.js";

/** The lists that are the same whatever the rules say. */
export const fixedCodeLists = (): CodeLists => ({
  aisle: { codes: aisles },
  allergen: { codes: allergenCodes },
  appliance: { codes: appliances },
  currency: { codes: currencyCodes },
  language: { codes: languageCodes(), has: isLanguageTag },
});

/** Every closed list, with those that are rule data as a set of rules has them. The one place that knows all. */
export const codeListsOf = memoize((rules: Pick<RuleSet, "safety" | "allergens">): CodeLists => ({
  ...fixedCodeLists(),
  caution: { codes: rules.safety.cautions.map(({ code }) => code) },
  diet: { codes: rules.allergens.diets.map(({ code }) => code) },
  "keeping-class": { codes: rules.safety.classes.map(({ code }) => code) },
}));

/** The numbers of the open food table that there are. No number is near another, so none is offered. */
export const numbersThatAre = (has: (ndbNo: string) => boolean): CodeList => ({ codes: [], has });
