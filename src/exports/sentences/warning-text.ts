import type { Warning } from "../../domain/problem.js";
import { missingWords } from "../words/missing-fact-words.js";
import { pathText } from "../words/path-text.js";
import { codeName } from "../words/rule-words.js";
import type { Words } from "../words/words.js";

const list = (values: readonly string[]): string => values.join(", ");

/** One sentence or two: where it is, what was not done, and what would help. */
export function warningText(warning: Warning, words: Words): string {
  const { path } = warning;
  return (path.length === 0 ? "" : `${pathText(path)}: `) + warningSentence(warning, words);
}

function warningSentence(warning: Warning, words: Words): string {
  const say = words.warning;
  const days = (count: number): string => words.days({ count });
  const missing = "missing" in warning ? missingWords(warning.missing, words) : "";
  switch (warning.code) {
    case "NOT_COMBINED":
      return say.NOT_COMBINED({ food: warning.food, missing });
    case "PART_NOT_COUNTED":
      return say.PART_NOT_COUNTED({ food: warning.food, part: warning.part, missing });
    case "EDIBLE_PORTION_UNKNOWN":
      return say.EDIBLE_PORTION_UNKNOWN({ food: warning.food, form: warning.form ?? "none" });
    case "PRICE_UNKNOWN":
      return warning.food === null ? words.noPrice : say.PRICE_UNKNOWN({ food: warning.food });
    case "PACK_NOT_COMPARABLE":
      return say.PACK_NOT_COMPARABLE({ pack: warning.pack, food: warning.food, missing });
    case "ON_HAND_NOT_COMPARABLE":
      return say.ON_HAND_NOT_COMPARABLE({ item: warning.item, missing });
    case "ON_HAND_IN_OTHER_FORM": {
      const [gives, wouldTake] = [grams(warning.gives), grams(warning.wouldTake)];
      return say.ON_HAND_IN_OTHER_FORM({ from: warning.from, gives, item: warning.item, wouldTake });
    }
    case "ON_HAND_NOT_NEEDED":
      return say.ON_HAND_NOT_NEEDED({ item: warning.item });
    case "ON_HAND_TOO_OLD":
      return say.ON_HAND_TOO_OLD({ item: warning.item, date: warning.useBy });
    case "ON_HAND_NOT_IN_TIME": {
      const { item, useBy: date, meals } = warning;
      return say.ON_HAND_NOT_IN_TIME({ item, date, meals: list(meals), count: meals.length });
    }
    case "DIET_NOT_MET": {
      const offered = warning.known ? list(warning.offered ?? []) : "";
      return say.DIET_NOT_MET({
        item: warning.item,
        diet: dietIn(warning.diet, words),
        offered,
        how: dietHow(warning),
      });
    }
    case "ALLERGEN_NOT_AVOIDED":
      return say.ALLERGEN_NOT_AVOIDED({
        item: warning.item,
        allergen: codeName("allergens", warning.allergen, words),
        offered: list(warning.offered ?? []),
        how: allergenHow(warning),
      });
    case "DISLIKE_NOT_AVOIDED":
      return say.DISLIKE_NOT_AVOIDED({ item: warning.item, meals: quotedList(warning.meals, words) });
    case "DISLIKE_LEFT_OUT":
      return say.DISLIKE_LEFT_OUT({ item: warning.item, meals: quotedList(warning.meals, words) });
    case "SWAP_NOT_OFFERED":
      return say.SWAP_NOT_OFFERED({ to: warning.to, from: warning.from });
    case "SWAP_NOT_CONVERTIBLE":
      return say.SWAP_NOT_CONVERTIBLE({ to: warning.to, from: warning.from, missing });
    case "MADE_IN_TWO_PLANS":
      return say.MADE_IN_TWO_PLANS({ component: warning.component, plans: list(warning.plans) });
    case "LEFT_OVER":
      return warning.servingsMore === null
        ? say.LEFT_OVER({ component: warning.component })
        : say.LEFT_OVER_FOR({ component: warning.component, count: warning.servingsMore });
    case "PART_TOO_OLD": {
      const { part, food, meal, day, cutOn } = warning;
      return say.PART_TOO_OLD({ part, food, keeps: days(warning.days), meal, day, cutOn });
    }
    case "BUY_LATER": {
      const meals = quotedList(warning.meals, words);
      return say.BUY_LATER({ food: warning.food, keeps: days(warning.days), meals, day: warning.notBefore });
    }
    case "MEAL_BEFORE_SESSION":
      return say.MEAL_BEFORE_SESSION({ meal: warning.meal, at: warning.at, start: warning.start });
    case "KEEPING_UNKNOWN":
      return say.KEEPING_UNKNOWN({ item: warning.item });
    case "KEEPING_CLASS_UNKNOWN":
      return say.KEEPING_CLASS_UNKNOWN({ item: warning.item, keepsAs: warning.keepsAs });
    case "REGION_NOT_GIVEN":
      return say.REGION_NOT_GIVEN({ used: warning.used });
  }
}

const quotedList = (names: readonly string[], words: Words): string =>
  list(names.map((name) => words.quoted({ name })));

const grams = (value: number): string => `${Math.round(value)} g`;

/** Writers in English know diets by their codes. */
export const dietIn = (code: string, words: Words): string =>
  words.language === "en" ? code : codeName("diets", code, words);

/** Nobody knows whether it fits; no swap is offered; none that is was taken. */
export const dietHow = (warning: Extract<Warning, { code: "DIET_NOT_MET" }>): "unknown" | "none" | "some" =>
  !warning.known ? "unknown" : warning.offered === undefined ? "none" : "some";

/** Nobody knows; there may be traces; no swap is offered; none that is was taken. */
export const allergenHow = ({
  presence,
  offered,
}: Extract<Warning, { code: "ALLERGEN_NOT_AVOIDED" }>): "unknown" | "may" | "none" | "some" => {
  if (presence === "UNKNOWN") return "unknown";
  if (presence === "MAY_CONTAIN") return "may";
  return offered === undefined ? "none" : "some";
};
