// @ts-nocheck
import type { BaseAmount } from "../domain/model/amount.js";
import type { Advice } from "../domain/storage/advice.js";

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
      return `Or make the share of ${words.component(advice.component)} for ${joined(meals)}.`;
    }
    case "SWAP_DAYS":
      return `Or eat "${words.meal(advice.meal)}" and "${words.meal(advice.with)}" on each other's days.`;
    case "EAT_EARLIER":
      return `Or eat "${words.meal(advice.meal)}" on day ${advice.latestDay} at the latest.`;
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
