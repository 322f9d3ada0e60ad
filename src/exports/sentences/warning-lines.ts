import type { Warning, WarningCode } from "../../domain/problem.js";
import { missingWords } from "../words/missing-fact-words.js";
import { namedWarning, type WarningNames } from "./named-warning.js";
import { warningText } from "./problem-text.js";

type Of<C extends WarningCode> = Extract<Warning, { readonly code: C }>;

/** Warnings of one kind in one sentence. Those of one kind that differ in `apart` have a sentence each. */
interface Gathered<C extends WarningCode> {
  readonly apart?: (warning: Of<C>) => string;
  readonly text: (warnings: readonly [Of<C>, ...Of<C>[]]) => string;
}

const each = <T>(values: readonly T[], of: (value: T) => string): string => [...new Set(values.map(of))].join(", ");

const servings = (count: number): string => (count === 1 ? "1 serving" : `${count} servings`);
const days = (count: number): string => (count === 1 ? "1 day" : `${count} days`);

/** What is not here has a sentence for each. */
const gathered: { readonly [C in WarningCode]?: Gathered<C> } = {
  PRICE_UNKNOWN: { text: (all) => `Not in the total: ${each(all, ({ food }) => food)}.` },
  NOT_COMBINED: {
    apart: ({ missing }) => missing,
    text: (all) =>
      `On lines of their own, because ${missingWords(all[0].missing)} is not known: ${each(all, ({ food }) => food)}.`,
  },
  EDIBLE_PORTION_UNKNOWN: {
    text: (all) =>
      `What is lost in trimming is not known: ${each(all, ({ food, form }) => (form === null ? food : `${food} (${form})`))}.` +
      ` The list has the trimmed amount; buy a little more.`,
  },
  PACK_NOT_COMPARABLE: {
    apart: ({ missing }) => missing,
    text: (all) =>
      `Packs left out, because ${missingWords(all[0].missing)} is not known: ${each(all, ({ food, pack }) => `${food} (${pack})`)}.`,
  },
  ON_HAND_NOT_COMPARABLE: {
    apart: ({ missing }) => missing,
    text: (all) =>
      `On hand and not taken off, because ${missingWords(all[0].missing)} is not known: ${each(all, ({ item }) => item)}.`,
  },
  ON_HAND_TOO_OLD: {
    text: (all) => `On hand, past its date and not counted: ${each(all, ({ item, useBy }) => `${item} (${useBy})`)}.`,
  },
  ON_HAND_NOT_NEEDED: {
    apart: ({ known }) => String(known),
    text: (all) =>
      all[0].known === false
        ? `On hand and not counted, because there is no such food: ${each(all, ({ item }) => item)}. Check how it is spelt.`
        : `On hand and not needed here: ${each(all, ({ item }) => item)}.`,
  },
  DIET_NOT_MET: {
    apart: ({ diet, known, offered }) => `${diet} ${known} ${known && offered === undefined}`,
    text: (all) =>
      all[0].known
        ? all[0].offered === undefined
          ? `Not ${all[0].diet}, and no swap is offered: ${each(all, ({ item }) => item)}.`
          : `Not ${all[0].diet}, and no swap that is offered was taken: ${each(all, ({ item }) => item)}.`
        : `Not known to be ${all[0].diet}: ${each(all, ({ item }) => item)}. Check the labels.`,
  },
  SWAP_NOT_OFFERED: {
    text: (all) =>
      `Not swapped, because no line offers it: ${each(all, ({ from, to }) => `${to} in place of ${from}`)}.`,
  },
  MADE_IN_TWO_PLANS: {
    text: (all) =>
      `Made in more than one plan, each in batches of its own: ${each(all, ({ component }) => component)}.`,
  },
  LEFT_OVER: {
    text: (all) =>
      `Left over: ${each(all, ({ component, servingsMore }) =>
        servingsMore === null ? component : `${component} (enough for ${servings(servingsMore)} more)`,
      )}.`,
  },
  BUY_LATER: {
    apart: ({ notBefore }) => String(notBefore),
    text: (all) =>
      `Buy later, not before day ${all[0].notBefore}: ${each(
        all,
        (one) => `${one.food} for ${one.meals.map((meal) => `"${meal}"`).join(" and ")} (it keeps ${days(one.days)})`,
      )}.`,
  },
  KEEPING_UNKNOWN: {
    text: (all) =>
      `Nobody says how long this keeps: ${each(all, ({ item }) => item)}. Follow local food-safety advice.`,
  },
};

/** Warnings for people: with names instead of slugs and places, one line a kind, in the order in which they were found. */
export function warningLines(warnings: readonly Warning[], names: WarningNames): readonly string[] {
  const kinds = new Map<string, [Warning, ...Warning[]]>();
  for (const warning of warnings) {
    const named = namedWarning(warning, names);
    const key = kindOf(named);
    const known = kinds.get(key);
    if (known === undefined) kinds.set(key, [named]);
    else known.push(named);
  }
  return [...new Set([...kinds.values()].map(kindText))];
}

const gatheringOf = (code: WarningCode): Gathered<WarningCode> | undefined =>
  gathered[code] as Gathered<WarningCode> | undefined;

function kindOf(warning: Warning): string {
  const gathering = gatheringOf(warning.code);
  if (gathering === undefined) return warningText(warning);
  return `${warning.code} ${gathering.apart?.(warning) ?? ""}`;
}

const kindText = (warnings: [Warning, ...Warning[]]): string =>
  gatheringOf(warnings[0].code)?.text(warnings) ?? warningText(warnings[0]);
