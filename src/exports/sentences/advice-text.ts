import type { BaseAmount } from "../../domain/model/amount.js";
import type { Advice } from "../../domain/storage/advice.js";
import { andList } from "../words/and-list.js";
import type { Words } from "../words/words.js";

/** How a reader knows the things that advice is about. */
export interface AdviceWords {
  meal(slug: string): string;
  component(slug: string): string;
  food(slug: string): string;
  amount(amount: BaseAmount, component: string): string;
  readonly words: Words;
}

/** The first way out of several, or another one. */
type Way = "first" | "other";

/** "Eat it" is plain where only one meal comes too late. */
function wayText(advice: Advice, book: AdviceWords, [only, ...others]: readonly string[], way: Way): string {
  if (advice.code !== "EAT_EARLIER" || others.length > 0 || advice.meal !== only) return adviceText(advice, book, way);
  return book.words.advice.EAT_IT_EARLIER({ day: advice.latestDay, way });
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
  book: AdviceWords,
  tooLateFor: readonly string[] = [],
): readonly string[] {
  const ways = waysOut.map((code) => advice.filter((each) => each.code === code)).filter(({ length }) => length > 0);
  const known = advice.filter(({ code }) => !waysOut.includes(code));
  return [
    // What is of one kind is about other meals each, and belongs together; only another kind is another way.
    ...ways.flatMap((kind, at) =>
      kind.map((each, within) => wayText(each, book, tooLateFor, at === 0 || within > 0 ? "first" : "other")),
    ),
    ...known.map((each) => adviceText(each, book)),
  ];
}

const tenths = (value: number): number => Number(value.toFixed(1));

/** One or two sentences: what to do, for which meal, on which day after the session. */
export function adviceText(advice: Advice, book: AdviceWords, way: Way = "first"): string {
  const { words } = book;
  const say = words.advice;
  const quoted = (meal: string): string => words.quoted({ name: book.meal(meal) });
  const days = (count: number): string => words.days({ count: tenths(count) });
  switch (advice.code) {
    case "FREEZE": {
      const portions = advice.portions.map(({ meal, day, amount }) =>
        amount === null
          ? say.shareUnknown({ meal: book.meal(meal), day })
          : say.share({ amount: book.amount(amount, advice.component), meal: book.meal(meal), day }),
      );
      const [before, after] = [days(advice.thawDaysBefore), days(advice.daysAfterThawing)];
      return say.FREEZE({ portions: andList(portions, words), before, after, way });
    }
    case "MAKE_LATER": {
      const meals = advice.meals.map(({ meal, day, notBefore }) =>
        say.laterMeal({ meal: book.meal(meal), day, notBefore }),
      );
      return say.MAKE_LATER({ component: book.component(advice.component), meals: andList(meals, words), way });
    }
    case "SWAP_DAYS":
      return say.SWAP_DAYS({ meal: book.meal(advice.meal), with: book.meal(advice.with), way });
    case "EAT_EARLIER":
      return say.EAT_EARLIER({ meal: book.meal(advice.meal), day: advice.latestDay, way });
    case "SHOP_TWICE": {
      const meals = andList(advice.meals.map(quoted), words);
      return say.SHOP_TWICE({ food: book.food(advice.food), meals, day: advice.notBefore, way });
    }
    case "EAT_BEFORE":
      return say.EAT_BEFORE({ hours: tenths(advice.hours), day: advice.day, until: advice.until ?? "none" });
    case "NO_PUBLISHED_RULE":
      return say.NO_PUBLISHED_RULE;
    case "WRITER_EXCEEDS_RULE":
      return say.WRITER_EXCEEDS_RULE({ writer: days(advice.writerDays), rule: days(advice.ruleDays) });
    case "REGION_WITHOUT_RULE":
      return say.REGION_WITHOUT_RULE({ asked: advice.asked, used: advice.used });
  }
}
