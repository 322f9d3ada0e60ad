// @ts-nocheck
import type { BaseAmount } from "../../domain/model/amount.js";
import type { Component } from "../../domain/model/component.js";
import type { Food, Pack } from "../../domain/model/food.js";
import type { PlanBundle } from "../../domain/model/plan.js";
import type { Reader } from "../../domain/plan/plan-answer.js";
import type { ScaledLine, ShoppingLine } from "../../domain/plan/scaled.js";
import type { Subject } from "../../domain/storage/guidance.js";
import type { MeasureFacts } from "../../domain/quantity/convert.js";
import { readersFoodName } from "../../domain/quantity/food-name.js";
import { presentAmount, presentInUnit, type PresentedAmount } from "../../domain/quantity/format.js";
import { toNumber } from "../../domain/quantity/rational.js";
import type { AdviceWords } from "../advice-text.js";

/** A line in its pieces, so that each page can set them as it likes. Read one after the other they are the line. */
export interface LineWords {
  /** `200 g`, `3 onions`; null for an amount to taste. */
  readonly amount: string | null;
  /** null where the amount names the food already. */
  readonly name: string | null;
  /** How it is prepared, which part, to taste, if wanted. */
  readonly rest: readonly string[];
}

/** Names and amounts of one plan, as one reader knows them. */
export interface PlanWords extends AdviceWords {
  readonly reader: Reader;
  amountOf(amount: BaseAmount, facts: MeasureFacts): string;
  line(line: ScaledLine): LineWords;
  subject(subject: Subject): string;
  /** A food or a component. */
  thing(slug: string): string;
  foodNames(slugs: readonly string[]): string;
}

const noFacts: MeasureFacts = { densities: [], measures: [] };

/** A food's name for a reader, of one or of several. */
export function foodName(
  food: Food,
  { locale }: Pick<Reader, "locale">,
  region: string | null,
  several = false,
): string {
  const [language = "en"] = locale.split("-");
  const name = readersFoodName(food, language, region);
  return (several ? name?.many : name?.one) ?? food.slug;
}

/** "3 onions", not "3 onions onion": the word for the whole piece is the food's own name already. */
const namesItself = ({ unit }: PresentedAmount, { measures }: MeasureFacts): boolean =>
  unit.id === "piece" && measures.some(({ name }) => name === "piece");

export function planWords({ plan, components, foods }: PlanBundle, reader: Reader, region: string | null): PlanWords {
  const componentOf = (slug: string): Component | undefined => components.find((each) => each.slug === slug);
  const foodOf = (slug: string): Food | undefined => foods.find((each) => each.slug === slug);
  const amountOf = (amount: BaseAmount, facts: MeasureFacts): string => presentAmount(amount, facts, reader).text;
  const food = (slug: string): string => {
    const found = foodOf(slug);
    return found === undefined ? slug : foodName(found, reader, region);
  };
  const foodsOf = (slug: string): string => {
    const found = foodOf(slug);
    return found === undefined ? slug : foodName(found, reader, region, true);
  };
  const words: PlanWords = {
    reader,
    meal: (slug) => plan.meals.find((meal) => meal.slug === slug)?.title ?? slug,
    component: (slug) => componentOf(slug)?.title ?? slug,
    food,
    amount: (amount, slug) => amountOf(amount, componentOf(slug) ?? noFacts),
    amountOf,
    subject: ({ kind, slug }) =>
      kind === "MEAL" ? words.meal(slug) : kind === "COMPONENT" ? words.component(slug) : foodsOf(slug),
    thing: (slug) => componentOf(slug)?.title ?? food(slug),
    foodNames: (slugs) => slugs.map(foodsOf).join(", "),
    line: ({ line, item, amount, inUnit }) => {
      const facts = item.kind === "FOOD" ? (foodOf(item.food) ?? noFacts) : (componentOf(item.component) ?? noFacts);
      const name = (several: boolean): string =>
        item.kind === "COMPONENT" ? words.component(item.component) : (several ? foodsOf : food)(item.food);
      const rest = [
        item.kind === "FOOD" ? item.part : null,
        line.preparation,
        amount === null ? "to taste" : null,
        line.extra ? "and some more" : null,
        line.optional ? "if you like" : null,
        line.mark,
      ].filter((each) => each !== null);
      if (amount === null) return { amount: null, name: name(true), rest };
      const shown =
        inUnit === null || reader.converts
          ? presentAmount(amount, facts, reader)
          : presentInUnit(inUnit.low, inUnit.high, inUnit.unit, facts, reader);
      const several = shown.unit.id === "piece" && (shown.upTo ?? shown.value) > 1;
      return { amount: shown.text, name: namesItself(shown, facts) ? null : name(several), rest };
    },
  };
  return words;
}

const packText = (pack: Pack, food: Food, count: number, reader: Reader): string => {
  const { low, high, unit } = pack.content;
  const content = (times: number): string =>
    presentInUnit(times * toNumber(low), times * toNumber(high), unit, food, reader).text;
  const single = low === "1" && high === "1" && (unit === "piece" || unit.startsWith("own:"));
  return single ? content(count) : `${count} × ${pack.name} of ${content(1)}`;
};

/** `2 × bag of 400 g + 1 × bag of 200 g`; null where no pack is known. A pack of one head is `1 head`. */
export const packsText = ({ buy, food }: ShoppingLine, reader: Reader): string | null =>
  buy.length === 0 ? null : buy.map(({ pack, count }) => packText(pack, food, count, reader)).join(" + ");

/** `dairy-and-eggs` to `Dairy and eggs`. */
export function aisleName(aisle: string): string {
  const words = aisle.replaceAll("-", " ");
  return words.charAt(0).toUpperCase() + words.slice(1);
}
