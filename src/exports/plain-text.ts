import type { BaseAmount } from "../domain/model/amount.js";
import type { Component } from "../domain/model/component.js";
import type { Food, Pack } from "../domain/model/food.js";
import type { PlanAnswer } from "../domain/plan/plan-answer.js";
import type { Cost, ScaledComponent, ScaledLine, ShoppingLine, ShoppingList } from "../domain/plan/scaled.js";
import type { MeasureFacts } from "../domain/quantity/convert.js";
import { presentAmount, presentInUnit, type PresentedAmount } from "../domain/quantity/format.js";
import { toNumber } from "../domain/quantity/rational.js";
import type { AdviceWords } from "./advice-text.js";
import { keepingLines } from "./keeping-text.js";
import { warningText } from "./problem-text.js";

/** What is written out, and for whom. */
export type PlainTextInput = Pick<PlanAnswer, "scaled" | "list" | "storage" | "reader">;

/** A plan computed, as text for a terminal: components, meals, list by aisle, keeping, warnings. Lines end in \n. */
export function plainText({ scaled, list, storage, reader }: PlainTextInput): string {
  const { plan } = scaled.bundle;
  const amount = (base: BaseAmount, facts: MeasureFacts): string => presentAmount(base, facts, reader).text;
  const words: AdviceWords = {
    meal: (slug) => plan.meals.find((meal) => meal.slug === slug)?.title ?? slug,
    component: (slug) => componentOf(slug)?.title ?? slug,
    food: (slug) => nameOf(foodOf(slug) ?? slug, false),
    amount: (base, slug) => amount(base, componentOf(slug) ?? noFacts),
  };
  const warnings = [...scaled.warnings, ...list.warnings, ...storage.warnings].map(warningText);
  return [
    `${plan.title}, for ${scaled.servings}`,
    ...section(
      "Make ahead",
      scaled.components.flatMap((made) => componentLines(made, amount)),
    ),
    ...section(
      "Eat",
      scaled.meals.toSorted((a, b) => a.meal.day - b.meal.day).map(({ meal }) => `  day ${meal.day}  ${meal.title}`),
    ),
    ...section("Buy", aisles(list, amount)),
    ...section("", [costLine(list.cost, scaled.servings)]),
    ...section(
      "Keep",
      keepingLines(storage, words).map((line) => `  ${line}`),
    ),
    ...section(
      "Mind",
      warnings.map((line) => `  ${line}`),
    ),
    "",
  ].join("\n");

  function componentLines(made: ScaledComponent, show: typeof amount): readonly string[] {
    const { component } = made;
    const sizes = [
      `${shortNumber(made.batches)} ${made.batches === 1 ? "batch" : "batches"}`,
      `${show(made.made, component)} made`,
      made.leftOver.high > 0 ? `${show(made.leftOver, component)} left over` : "nothing left over",
    ];
    return [`  ${component.title}: ${sizes.join(", ")}`, ...made.lines.map((line) => `    ${lineText(line)}`)];
  }

  function lineText(line: ScaledLine): string {
    const [food, facts] = named(line);
    const { preparation } = line.line;
    if (line.amount === null) return [nameOf(food, true), preparation, "to taste"].filter(isSet).join(", ");
    const shown =
      line.inUnit === null || reader.converts
        ? presentAmount(line.amount, facts, reader)
        : presentInUnit(line.inUnit.low, line.inUnit.high, line.inUnit.unit, facts, reader);
    return [counted(shown, food, facts), partOf(line), preparation].filter(isSet).join(", ");
  }

  function componentOf(slug: string): Component | undefined {
    return scaled.bundle.components.find((component) => component.slug === slug);
  }

  function foodOf(slug: string): Food | undefined {
    return scaled.bundle.foods.find((food) => food.slug === slug);
  }

  function named({ item }: ScaledLine): readonly [Named, MeasureFacts] {
    if (item.kind === "COMPONENT") {
      const component = componentOf(item.component);
      return [component?.title ?? item.component, component ?? noFacts];
    }
    const food = foodOf(item.food);
    return [food ?? item.food, food ?? noFacts];
  }
}

type Named = Food | string;

const isSet = (text: string | null): text is string => text !== null;

const nameOf = (named: Named, several: boolean): string => {
  if (typeof named === "string") return named;
  const [name] = named.names;
  return (several ? name?.many : name?.one) ?? named.slug;
};

/** "3 onions", not "3 onions onion": the word for the whole piece is the food's own name already. */
function counted({ text, value, upTo, unit }: PresentedAmount, named: Named, facts: MeasureFacts): string {
  if (unit.id !== "piece") return `${text} ${nameOf(named, false)}`;
  return facts.measures.some(({ name }) => name === "piece") ? text : `${text} ${nameOf(named, (upTo ?? value) > 1)}`;
}

const partOf = ({ item }: ScaledLine): string | null => (item.kind === "FOOD" ? item.part : null);

const noFacts: MeasureFacts = { densities: [], measures: [] };

const contentOf = ({ content: { low, high, unit } }: Pack, food: Food): string =>
  presentInUnit(toNumber(low), toNumber(high), unit, food, { measures: "METRIC", locale: "en" }).text;

const section = (title: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : ["", ...(title === "" ? [] : [title]), ...lines];

const shortNumber = (value: number): string => String(Number(value.toFixed(2)));

function aisles(list: ShoppingList, amount: (base: BaseAmount, facts: MeasureFacts) => string): readonly string[] {
  const names = [...new Set(list.lines.map(({ food }) => food.aisle))];
  return names.flatMap((aisle) => [
    `  ${aisle}`,
    ...list.lines.filter(({ food }) => food.aisle === aisle).map((line) => `    ${shoppingText(line, amount)}`),
  ]);
}

function shoppingText(line: ShoppingLine, amount: (base: BaseAmount, facts: MeasureFacts) => string): string {
  const name = line.food.names[0]?.one ?? line.food.slug;
  const need = line.need === null ? "to taste" : amount(line.need, line.food);
  const packs = line.buy
    .map(({ pack, count }) => `${count} × ${pack.name} of ${contentOf(pack, line.food)}`)
    .join(" + ");
  const price = line.cost.atTill === null ? "" : ` = ${line.cost.atTill.amount} ${line.cost.atTill.currency}`;
  return `${name}: ${need}${packs === "" ? "" : `  →  ${packs}${price}`}`;
}

function costLine(cost: Cost, servings: number): string {
  if (cost.atTill === null) return "  No price is known.";
  const each = cost.perServing === null ? "" : `, ${cost.perServing.amount} for each of ${servings}`;
  const rest = cost.unpriced.length === 0 ? "" : `; without a price: ${cost.unpriced.join(", ")}`;
  return `  At the till: ${cost.atTill.amount} ${cost.atTill.currency}${each}${rest}`;
}
