import type { Warning, WarningCode } from "../../domain/problem.js";
import { missingWords } from "../words/missing-fact-words.js";
import { namedWarning, type WarningNames } from "./named-warning.js";
import { allergenHow, dietHow, dietIn, warningText } from "./warning-text.js";
import type { Words } from "../words/words.js";
import { andList } from "../words/and-list.js";
import { codeName } from "../words/rule-words.js";

type Of<C extends WarningCode> = Extract<Warning, { readonly code: C }>;

/** Warnings of one kind in one sentence. Those of one kind that differ in `apart` have a sentence each. */
interface Gathered<C extends WarningCode> {
  readonly apart?: (warning: Of<C>) => string;
  readonly text: (warnings: readonly [Of<C>, ...Of<C>[]], words: Words) => string;
}

const each = <T>(values: readonly T[], of: (value: T) => string): string => [...new Set(values.map(of))].join(", ");

/** What is not here has a sentence for each. */
const gathered: { readonly [C in WarningCode]?: Gathered<C> } = {
  PRICE_UNKNOWN: {
    text: (all, words) =>
      all.some(({ food }) => food === null)
        ? words.noPrice
        : words.withoutPrice({ foods: each(all, ({ food }) => food ?? "") }),
  },
  NOT_COMBINED: {
    apart: ({ missing }) => missing,
    text: (all, words) =>
      words.gathered.NOT_COMBINED({ ...missingOf(all, words), things: each(all, ({ food }) => food) }),
  },
  EDIBLE_PORTION_UNKNOWN: {
    text: (all, { gathered: say }) =>
      say.EDIBLE_PORTION_UNKNOWN({
        things: each(all, ({ food, form }) => (form === null ? food : `${food} (${form})`)),
      }),
  },
  PACK_NOT_COMPARABLE: {
    apart: ({ missing }) => missing,
    text: (all, words) =>
      words.gathered.PACK_NOT_COMPARABLE({
        ...missingOf(all, words),
        things: each(all, ({ food, pack }) => `${food} (${pack})`),
      }),
  },
  ON_HAND_NOT_COMPARABLE: {
    apart: ({ missing }) => missing,
    text: (all, words) =>
      words.gathered.ON_HAND_NOT_COMPARABLE({ ...missingOf(all, words), things: each(all, ({ item }) => item) }),
  },
  ON_HAND_TOO_OLD: {
    text: (all, { gathered: say }) =>
      say.ON_HAND_TOO_OLD({ things: each(all, ({ item, useBy }) => `${item} (${useBy})`) }),
  },
  ON_HAND_NOT_NEEDED: {
    text: (all, { gathered: say }) => say.ON_HAND_NOT_NEEDED({ things: each(all, ({ item }) => item) }),
  },
  DIET_NOT_MET: {
    apart: ({ diet, known, offered }) => `${diet} ${known} ${known && offered === undefined}`,
    text: (all, words) =>
      words.gathered.DIET_NOT_MET({
        diet: dietIn(all[0].diet, words),
        things: each(all, ({ item }) => item),
        how: dietHow(all[0]),
      }),
  },
  ALLERGEN_NOT_AVOIDED: {
    apart: (warning) => `${warning.allergen} ${allergenHow(warning)}`,
    text: (all, words) =>
      words.gathered.ALLERGEN_NOT_AVOIDED({
        allergen: codeName("allergens", all[0].allergen, words),
        things: each(all, ({ item }) => item),
        how: allergenHow(all[0]),
      }),
  },
  SWAP_NOT_OFFERED: {
    text: (all, words) =>
      words.gathered.SWAP_NOT_OFFERED({
        things: each(all, ({ from, to }) => `${to} ${words.inPlaceOf({ food: from })}`),
      }),
  },
  MADE_IN_TWO_PLANS: {
    text: (all, { gathered: say }) => say.MADE_IN_TWO_PLANS({ things: each(all, ({ component }) => component) }),
  },
  LEFT_OVER: {
    text: (all, { gathered: say }) =>
      say.LEFT_OVER({
        things: each(all, ({ component, servingsMore }) =>
          servingsMore === null ? component : say.enoughFor({ component, count: servingsMore }),
        ),
      }),
  },
  BUY_LATER: {
    apart: ({ notBefore }) => String(notBefore),
    text: (all, words) =>
      words.gathered.BUY_LATER({
        day: all[0].notBefore,
        things: each(all, ({ food, meals, days: count }) =>
          words.gathered.shareToBuy({
            food,
            meals: andList(
              meals.map((name) => words.quoted({ name })),
              words,
            ),
            keeps: words.days({ count }),
          }),
        ),
      }),
  },
  KEEPING_UNKNOWN: {
    text: (all, { gathered: say }) => say.KEEPING_UNKNOWN({ things: each(all, ({ item }) => item) }),
  },
};

const missingOf = ([{ missing }]: readonly [{ readonly missing: string }, ...unknown[]], words: Words) => ({
  missing: missingWords(missing, words),
});

/** Warnings for people: with names instead of slugs and places, one line a kind, in the order in which they were found. */
export function warningLines(warnings: readonly Warning[], names: WarningNames, words: Words): readonly string[] {
  const kinds = new Map<string, [Warning, ...Warning[]]>();
  for (const warning of warnings) {
    const named = namedWarning(warning, names);
    const key = kindOf(named, words);
    const known = kinds.get(key);
    if (known === undefined) kinds.set(key, [named]);
    else known.push(named);
  }
  return [...new Set([...kinds.values()].map((each) => kindText(each, words)))];
}

const gatheringOf = (code: WarningCode): Gathered<WarningCode> | undefined =>
  gathered[code] as Gathered<WarningCode> | undefined;

function kindOf(warning: Warning, words: Words): string {
  const gathering = gatheringOf(warning.code);
  if (gathering === undefined) return warningText(warning, words);
  return `${warning.code} ${gathering.apart?.(warning) ?? ""}`;
}

const kindText = (warnings: [Warning, ...Warning[]], words: Words): string =>
  gatheringOf(warnings[0].code)?.text(warnings, words) ?? warningText(warnings[0], words);
