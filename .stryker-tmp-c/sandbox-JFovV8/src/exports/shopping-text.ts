// @ts-nocheck
import type { BaseAmount } from "../domain/model/amount.js";
import type { Food, Pack } from "../domain/model/food.js";
import type { Reader } from "../domain/plan/plan-answer.js";
import type { ShoppingLine, Use } from "../domain/plan/scaled.js";
import { presentAmount, presentInUnit } from "../domain/quantity/format.js";
import { toNumber } from "../domain/quantity/rational.js";
import { foodWords } from "./food-words.js";
import { moneyText } from "./money-text.js";
import { wordsFor } from "./words.js";

/** A line of the list in words; every way out takes its parts from here. */
export interface ShoppingText {
  readonly food: string;
  /** "835 g"; "to taste" where nobody gave an amount. */
  readonly need: string;
  /** "200 g on hand"; null where nothing is. */
  readonly onHand: string | null;
  /** "1 × bag of 200 g + 2 × bag of 400 g"; null where no pack is known or nothing must be bought. */
  readonly packs: string | null;
  /** "4.75 XTS"; null where it is not known. */
  readonly price: string | null;
  /** "Kale and barley salad 508 g"; one each. */
  readonly uses: readonly string[];
}

/** @param severalPlans name the plan of every use too */
export function shoppingText(line: ShoppingLine, reader: Reader, severalPlans: boolean): ShoppingText {
  const { food, need, onHand, buy, cost, uses } = line;
  const words = wordsFor(reader.locale);
  const show = (amount: BaseAmount): string => presentAmount(amount, food, reader).text;
  const packs = buy.map(({ pack, count }) => words.packOf(String(count), pack.name, contentOf(pack, food, reader)));
  return {
    food: foodWords(food, reader.locale).one,
    need: need === null ? words.toTaste : line.open ? `${show(need)}, ${words.plusMore}` : show(need),
    onHand: onHand === null || onHand.high === 0 ? null : words.onHand(show(onHand)),
    packs: packs.length === 0 ? null : packs.join(" + "),
    price: buy.length === 0 || cost.atTill === null ? null : moneyText(cost.atTill),
    uses: uses.map((use) => useText(use, show, severalPlans)),
  };
}

const contentOf = ({ content: { low, high, unit } }: Pack, food: Food, reader: Reader): string =>
  presentInUnit(toNumber(low), toNumber(high), unit, food, reader).text;

function useText({ bundle, meal, component, part, amount }: Use, show: (amount: BaseAmount) => string, plan: boolean) {
  const where = [plan ? bundle.plan.title : null, component?.title ?? meal?.title ?? null];
  const what = [where.filter((each) => each !== null).join(": "), part].filter((each) => each !== null && each !== "");
  return [what.join(", "), amount === null ? null : show(amount)].filter((each) => each !== null).join(" ");
}

/** Lines in the order of the list, each aisle once. */
export function byAisle(lines: readonly ShoppingLine[]): readonly (readonly [string, readonly ShoppingLine[]])[] {
  const aisles = new Map<string, ShoppingLine[]>();
  for (const line of lines) {
    const known = aisles.get(line.food.aisle);
    if (known === undefined) aisles.set(line.food.aisle, [line]);
    else known.push(line);
  }
  return [...aisles];
}

/** A code as words: "dairy-and-eggs" is "dairy and eggs". */
export const codeWords = (code: string): string => code.replaceAll("-", " ");
