import type { BaseAmount } from "../../domain/model/amount.js";
import type { Advice } from "../../domain/storage/advice.js";

/** How a reader knows the things that advice is about. */
export interface AdviceWords {
  meal(slug: string): string;
  component(slug: string): string;
  food(slug: string): string;
  amount(amount: BaseAmount, component: string): string;
}

const joined = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join("") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1) ?? ""}`;

const days = (count: number): string => (count === 1 ? "1 day" : `${shortNumber(count)} days`);

const shortNumber = (value: number): string => String(Number(value.toFixed(1)));

/** "Eat it" is plain where only one meal comes too late. */
function wayText(advice: Advice, words: AdviceWords, [only, ...others]: readonly string[]): string {
  if (advice.code !== "EAT_EARLIER" || others.length > 0 || advice.meal !== only) return adviceText(advice, words);
  return `Eat it by day ${advice.latestDay}.`;
}

/** The simplest first; what is not listed is no way out but a thing to know, and stands last. */
const waysOut: readonly Advice["code"][] = ["EAT_EARLIER", "SWAP_DAYS", "FREEZE", "MAKE_LATER", "SHOP_TWICE"];

/**
 * Ways out, the simplest first, each kind after the first with an "or"; then what to know.
 *
 * @param tooLateFor the meals that it is about, which stand beside it
 */
export function adviceTexts(
  advice: readonly Advice[],
  words: AdviceWords,
  tooLateFor: readonly string[] = [],
): readonly string[] {
  const ways = waysOut.map((code) => advice.filter((each) => each.code === code)).filter(({ length }) => length > 0);
  const known = advice.filter(({ code }) => !waysOut.includes(code));
  return [
    // What is of one kind is about other meals each, and belongs together; only another kind is another way.
    ...ways.flatMap((kind, at) =>
      kind.map((each, within) => {
        const said = wayText(each, words, tooLateFor);
        return at === 0 || within > 0 ? said : `Or ${said.charAt(0).toLowerCase()}${said.slice(1)}`;
      }),
    ),
    ...known.map((each) => adviceText(each, words)),
  ];
}

/** One or two sentences in English: what to do, for which meal, on which day after the session. */
export function adviceText(advice: Advice, words: AdviceWords): string {
  switch (advice.code) {
    case "FREEZE": {
      const portions = advice.portions.map(({ meal, day, amount }) => {
        const share = amount === null ? "the share" : words.amount(amount, advice.component);
        return `${share} for "${words.meal(meal)}" (day ${day})`;
      });
      return (
        `Freeze ${joined(portions)} on the day it is made; move it to the fridge ${days(advice.thawDaysBefore)} before.` +
        ` Once thawed it keeps ${days(advice.daysAfterThawing)}.`
      );
    }
    case "MAKE_LATER": {
      const meals = advice.meals.map(
        ({ meal, day, notBefore }) => `"${words.meal(meal)}" (day ${day}) not before day ${notBefore}`,
      );
      return `Make the share of ${words.component(advice.component)} for ${joined(meals)}.`;
    }
    case "SWAP_DAYS":
      return `Eat "${words.meal(advice.meal)}" and "${words.meal(advice.with)}" on each other's days.`;
    case "EAT_EARLIER":
      return `Eat "${words.meal(advice.meal)}" by day ${advice.latestDay}.`;
    case "SHOP_TWICE": {
      const meals = advice.meals.map((meal) => `"${words.meal(meal)}"`);
      return `Buy the ${words.food(advice.food)} for ${joined(meals)} later, not before day ${advice.notBefore}.`;
    }
    case "EAT_BEFORE":
      return (
        `Hours count here: it keeps ${shortNumber(advice.hours)} hours after it is made, which end on day ${advice.day}` +
        `${advice.until === null ? "" : `, at ${advice.until}`}.`
      );
    case "NO_PUBLISHED_RULE":
      return "No published rule covers this; the length is the writer's own word. Follow local food-safety advice.";
    case "WRITER_EXCEEDS_RULE":
      return (
        `The writer gives it ${days(advice.writerDays)}, a published rule ${days(advice.ruleDays)};` +
        ` the shorter one stands.`
      );
    case "REGION_WITHOUT_RULE":
      return `No rule for ${advice.asked} is known here; those of ${advice.used} were used. Ask your local authority.`;
  }
}
