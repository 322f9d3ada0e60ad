import type { BaseAmount } from "../../model/amount.js";
import type { Step } from "../../model/component.js";
import type { Credit, WordsOfPlan } from "../../model/writers-words.js";
import { usualMealTime } from "../../model/plan.js";
import type { Path } from "../../problem.js";
import { presentAmount } from "../../quantity/format.js";
import type { StorageAnswer } from "../../storage/guidance.js";
import { frozenTranslations } from "../translate/texts-of.js";
import { lineContext } from "./line-context.js";
import type { PlanContents } from "../plan-answer.js";
import type { ScaledLine, ScaledPlan, ShoppingList } from "../scaled.js";

/** What a reader would notice a change of. */
export type FactKind =
  | "TITLE"
  | "SUMMARY"
  | "SERVES"
  | "PROMISED_TIME"
  | "CLAIM"
  | "CURRENCY"
  | "INTRODUCTION"
  | "NOTES"
  | "TIPS"
  | "TAG"
  | "EQUIPMENT"
  | "CREDIT"
  | "LICENCE"
  | "TRANSLATION"
  | "MEAL"
  | "DAY"
  | "MEAL_TIME"
  | "COMPONENT"
  | "BATCHES"
  | "INGREDIENT"
  | "AMOUNT"
  | "NEED"
  | "STEP"
  | "KEEPING"
  | "ALLERGEN"
  | "DIET"
  | "NUTRITION"
  | "COST";

/** One thing a plan says, at one path. Equal `exact` texts say the same; `text` is rounded for a kitchen. */
export interface PlanFact {
  readonly kind: FactKind;
  readonly path: Path;
  readonly exact: string;
  readonly text: string;
}

/** A plan computed at its own servings, as written. */
export interface ComputedPlan {
  readonly scaled: ScaledPlan;
  readonly list: ShoppingList;
  readonly storage: StorageAnswer;
  readonly contents: PlanContents;
}

const fact = (kind: FactKind, path: Path, text: string | number, exact: string = String(text)): PlanFact => ({
  kind,
  path,
  exact,
  text: String(text),
});

/** Everything a plan tells its readers, each thing once. */
export function planFacts(computed: ComputedPlan): readonly PlanFact[] {
  return [
    ...head(computed),
    ...meals(computed),
    ...components(computed),
    ...needs(computed),
    ...told(computed),
    ...translated(computed),
  ];
}

function head({ scaled: { bundle } }: ComputedPlan): readonly PlanFact[] {
  const { title, summary, serves, promisedMinutes, claims, currency, licence } = bundle.plan;
  return [
    fact("TITLE", ["title"], title),
    fact("SERVES", ["serves"], serves),
    ...(summary === null ? [] : [fact("SUMMARY", ["summary"], summary)]),
    ...(promisedMinutes === null ? [] : [fact("PROMISED_TIME", ["promised-time"], promisedMinutes)]),
    ...claims.map((claim) => fact("CLAIM", ["claims", claim], claim)),
    ...(currency === undefined ? [] : [fact("CURRENCY", ["currency"], currency)]),
    ...(licence === undefined ? [] : [fact("LICENCE", ["licence"], licence)]),
    ...wordFacts(bundle.plan, []),
  ];
}

const meals = ({ scaled }: ComputedPlan): readonly PlanFact[] =>
  scaled.meals.flatMap(({ meal, lines }) => {
    const path = ["meals", meal.slug];
    return [
      fact("MEAL", path, meal.title),
      fact("DAY", [...path, "day"], meal.day),
      fact("MEAL_TIME", [...path, "at"], meal.at ?? usualMealTime),
      ...lineFacts(lines, path, scaled),
      ...stepFacts(meal.steps, path),
      ...wordFacts(meal, path),
    ];
  });

const components = ({ scaled }: ComputedPlan): readonly PlanFact[] =>
  scaled.components.flatMap(({ component, route, batches, lines }) => {
    const path = ["components", component.slug];
    return [
      fact("COMPONENT", path, component.title),
      fact("BATCHES", [...path, "batches"], Number(batches.toFixed(3)), exactNumber(batches)),
      ...lineFacts(lines, path, scaled),
      ...stepFacts(route?.steps ?? component.steps, path),
      ...wordFacts(component, path),
    ];
  });

/** Letters of a text that are shown of what changed in it. */
const mostShown = 300;

const cut = (text: string): string => (text.length > mostShown ? `${text.slice(0, mostShown)}…` : text);

function wordFacts(words: WordsOfPlan, owner: Path): readonly PlanFact[] {
  const texts = [
    ["INTRODUCTION", "introduction", words.introduction],
    ["NOTES", "notes", words.notes],
    ["TIPS", "tips", words.tips],
  ] as const;
  return [
    ...texts.flatMap(([kind, key, text]) => (text === undefined ? [] : [fact(kind, [...owner, key], cut(text), text)])),
    ...(words.tags ?? []).map((tag) => fact("TAG", [...owner, "tags", tag], tag)),
    ...(words.equipment ?? []).map((each, at) => fact("EQUIPMENT", [...owner, "equipment", at], each)),
    ...(words.credits ?? []).map((credit, at) => fact("CREDIT", [...owner, "credits", at], creditWords(credit))),
  ];
}

const creditWords = ({ name, url, licence, adapted }: Credit): string =>
  [name, url, licence, adapted === true ? "adapted" : undefined].filter((each) => each !== undefined).join(", ");

function lineFacts(lines: readonly ScaledLine[], owner: Path, { bundle }: ScaledPlan): readonly PlanFact[] {
  const { foods, components: made } = lineContext(bundle);
  return lines.flatMap(({ line, item, amount }) => {
    const path = [...owner, "lines", line.id];
    const slug = item.kind === "FOOD" ? item.food : item.component;
    const part = item.kind === "FOOD" && item.part !== null ? [item.part] : [];
    const words = [slug, ...part, line.form, line.preparation, line.optional ? "optional" : null, line.mark];
    const named = fact("INGREDIENT", path, words.filter((word) => word !== null).join(", "));
    if (amount === null) return [named];
    const facts = item.kind === "FOOD" ? foods.get(item.food) : made.get(item.component)?.component;
    if (facts === undefined) throw new Error(`a line of ${slug}, which the plan does not hold`);
    const { text } = presentAmount(amount, facts, bundle.plan);
    return [named, fact("AMOUNT", [...path, "amount"], text, exactAmount(amount))];
  });
}

const stepFacts = (steps: readonly Step[], owner: Path): readonly PlanFact[] =>
  steps.map((step) => {
    const heat = step.temperatureC === null ? "" : `, ${step.temperatureC} °C`;
    return fact("STEP", [...owner, "steps", step.id], `${step.text} (${step.minutes} min${heat})`);
  });

const needs = ({ list, scaled }: ComputedPlan): readonly PlanFact[] =>
  list.lines.flatMap(({ food, need }) =>
    need === null
      ? []
      : [
          fact(
            "NEED",
            ["foods", food.slug, "need"],
            presentAmount(need, food, scaled.bundle.plan).text,
            exactAmount(need),
          ),
        ],
  );

function told({ storage, contents, list }: ComputedPlan): readonly PlanFact[] {
  const roots = { COMPONENT: "components", MEAL: "meals", FOOD: "foods" } as const;
  const { atTill } = list.cost;
  return [
    ...storage.guidance.map(({ subject, place, days }) =>
      fact(
        "KEEPING",
        [roots[subject.kind], subject.slug, "keeping", place],
        Number(days.toFixed(2)),
        exactNumber(days),
      ),
    ),
    ...contents.plan.allergens.findings.flatMap(({ code, presence, asIngredient }) => [
      fact("ALLERGEN", ["allergens", code], presence),
      fact("ALLERGEN", ["allergens", code, "as-ingredient"], asIngredient.presence),
    ]),
    ...contents.plan.diets.map(({ diet, fits }) => fact("DIET", ["diets", diet], dietWord(fits))),
    ...(atTill === null ? [] : [fact("COST", ["cost", "at-till"], `${atTill.amount} ${atTill.currency}`)]),
  ];
}

const dietWord = (fits: boolean | null): string => (fits === null ? "UNKNOWN" : fits ? "FITS" : "DOES_NOT_FIT");

/** Doubles that differ in the last digits only are one number. */
const exactNumber = (value: number): string => String(Number(value.toPrecision(9)));

const baseUnits = { MASS: "g", VOLUME: "ml", COUNT: "pieces" } as const;

const exactAmount = ({ dimension, low, high }: BaseAmount): string =>
  `${[...new Set([exactNumber(low), exactNumber(high)])].join("–")} ${baseUnits[dimension]}`;

/** Every text in another language that readers have or would have, once. */
const translated = ({ scaled: { bundle } }: ComputedPlan): readonly PlanFact[] =>
  frozenTranslations(bundle).flatMap(({ of, language, texts }) =>
    texts.map(({ path, text }) => {
      const before = of.kind === "PLAN" ? [] : ["components", of.slug];
      return fact("TRANSLATION", ["translations", language, ...before, ...path], text);
    }),
  );
