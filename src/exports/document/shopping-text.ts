import type { BaseAmount } from "../../domain/model/amount.js";
import type { Food } from "../../domain/model/food.js";
import type { Reader } from "../../domain/plan/plan-answer.js";
import type { ShoppingLine, Use } from "../../domain/plan/scaled.js";
import { presentAmount } from "../../domain/quantity/format.js";
import { isNamedAfterFood } from "../../domain/quantity/piece-words.js";
import { readerLocale } from "../../domain/quantity/reader-locale.js";
import { foodWords } from "../words/food-words.js";
import { moneyText } from "../words/money-text.js";
import { noFacts } from "../words/name-book.js";
import { packsText, takenText } from "../words/packs-text.js";
import { partName, partText, partWord } from "../words/part-words.js";
import { wordsFor } from "../words/words-for.js";

/** A line of the list in words; every way out takes its parts from here. */
interface ShoppingText {
  readonly food: string;
  /** "835 g"; "to taste" where nobody gave an amount. */
  readonly need: string;
  /** "200 g on hand"; null where nothing is. */
  readonly onHand: string | null;
  /** "1 × bag of 200 g + 2 × bag of 400 g"; null where no pack is known or nothing must be bought. */
  readonly packs: string | null;
  /** The packs, or the amount itself: "3 lemons". null: nothing, or nobody can say how much. */
  readonly take: string | null;
  /** Every line that takes it may be left out. */
  readonly optional: boolean;
  /** "4.75 XTS"; null where it is not known. */
  readonly price: string | null;
  /** "juice 90 ml": parts of the pieces bought that nothing takes; one each. */
  readonly over: readonly string[];
}

export function shoppingText(line: ShoppingLine, reader: Reader): ShoppingText {
  const { food, need, onHand, buy, cost } = line;
  const { language } = readerLocale(reader.locale).tag;
  const words = wordsFor(reader.locale);
  const show = (amount: BaseAmount): string => presentAmount(amount, food, reader).text;
  return {
    food: foodWords(food, reader.locale).one,
    need: need === null ? words.toTaste : line.open ? `${show(need)}, ${words.plusMore}` : show(need),
    onHand: onHand === null || onHand.high === 0 ? null : words.onHand({ amount: show(onHand) }),
    packs: packsText(line, reader),
    take: takenText(line, reader),
    optional: isOptional(line),
    price: buy.length === 0 || cost.atTill === null ? null : moneyText(cost.atTill, reader),
    over: line.partsOver.map(
      ({ part, pieces, amount }) => `${partWord(part, language)} ${overText(pieces, amount, reader)}`,
    ),
  };
}

/** The food's own words and densities are those of whole pieces, not of a part. */
const overText = (pieces: number, amount: BaseAmount | null, reader: Reader): string =>
  presentAmount(amount ?? { dimension: "COUNT", low: pieces, high: pieces }, noFacts, reader).text;

/**
 * "Kale and barley salad 508 g"; one for each line of the plans that takes the food, which may be thousands.
 *
 * @param severalPlans name the plan of every use too
 */
export const usesTexts = ({ food, uses }: ShoppingLine, reader: Reader, severalPlans: boolean): readonly string[] =>
  uses.map((use) => useText(use, food, reader, severalPlans));

/** "Lemon yoghurt: juice of 1 lemon", "Kale and barley salad 508 g". */
function useText({ bundle, meal, component, part, amount }: Use, food: Food, reader: Reader, plan: boolean): string {
  const where = [plan ? bundle.plan.title : null, component?.title ?? meal?.title ?? null];
  const user = where.filter((each) => each !== null).join(": ");
  if (part !== null) return [user, partOfPieces(part, amount, food, reader)].filter((each) => each !== "").join(": ");
  return [user, amount === null ? "" : presentAmount(amount, food, reader).text]
    .filter((each) => each !== "")
    .join(" ");
}

/** A part's `amount` counts the pieces of the food that it takes. */
function partOfPieces(part: string, amount: BaseAmount | null, food: Food, reader: Reader): string {
  const { language } = readerLocale(reader.locale).tag;
  const { one } = foodWords(food, reader.locale);
  if (amount === null) return partName(one, part, language);
  const number = presentAmount(amount, noFacts, reader).text;
  const pieces = { number, several: amount.high > 1, named: isNamedAfterFood(food) };
  return partText({ food: one, part, amount: presentAmount(amount, food, reader).text, pieces }, language);
}

/** Whatever takes it may be left out. */
export const isOptional = ({ uses }: ShoppingLine): boolean =>
  uses.length > 0 && uses.every(({ optional }) => optional);

/** What is on hand is enough. */
export const isCovered = ({ onHand, toBuy }: ShoppingLine): boolean =>
  onHand !== null && onHand.high > 0 && toBuy !== null && toBuy.high === 0;

/** Lines that nothing is bought for, because enough is on hand. */
export const coveredLines = (lines: readonly ShoppingLine[]): readonly ShoppingLine[] => lines.filter(isCovered);

/** Lines that something is bought for, in the order of the list, each aisle once. */
export function byAisle(lines: readonly ShoppingLine[]): readonly (readonly [string, readonly ShoppingLine[]])[] {
  const aisles = new Map<string, ShoppingLine[]>();
  for (const line of lines) {
    if (isCovered(line)) continue;
    const known = aisles.get(line.food.aisle);
    if (known === undefined) aisles.set(line.food.aisle, [line]);
    else known.push(line);
  }
  return [...aisles];
}
