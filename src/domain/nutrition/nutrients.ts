import { runToEnd, type InSlices } from "../counted-work.js";
import type { Food, NutrientCode } from "../model/food.js";

export const nutrientCodes = [
  ...(["energyKcal", "proteinG", "fatG", "saturatedFatG", "carbohydrateG", "sugarsG", "fibreG", "sodiumMg"] as const),
  ...(["calciumMg", "ironMg", "potassiumMg", "vitaminCMg", "cholesterolMg", "waterG"] as const),
] as const satisfies readonly NutrientCode[];

export interface Span {
  readonly low: number;
  readonly high: number;
}

/** A food as it is eaten: raw, because nutrients are those of the raw food. */
export interface NutritionInput {
  readonly food: Pick<Food, "slug" | "nutrients">;
  /** Grams of edible portion that are eaten; null where nobody knows what it weighs (a pinch, a leaf). */
  readonly grams: Span | null;
  /** Why there is more of it than `grams`. Left out: there is no more. */
  readonly rest?: readonly ("TO_TASTE" | "EXTRA" | "UNWEIGHED")[];
  /** Some of it may be left out. */
  readonly mayBeLeftOut?: boolean;
  /** Grams that are thrown or poured away, as far as they can be weighed; not in `grams`. */
  readonly notEaten?: Span;
  /** Why those are not eaten. */
  readonly why?: readonly NotEatenReason[];
}

/**
 * STATED: the writer says what of it is eaten. DRAINED: it leaves with the water of a step that says it drains.
 * DRAINED_BY_CLASS: the same of a boiled pulse or grain. DRAINED_UNWEIGHED: it leaves so in part, nobody can say how much, and
 * all of it is counted.
 */
export type NotEatenReason = "STATED" | "DRAINED" | "DRAINED_BY_CLASS" | "DRAINED_UNWEIGHED";

interface NutritionQuestion {
  readonly inputs: readonly NutritionInput[];
  /** What the whole weighs when it is ready to eat; null: not measured, then nothing can be said per 100 g. */
  readonly cookedGrams: Span | null;
  readonly servings: number;
}

export interface NutrientAmount {
  readonly total: Span;
  readonly perServing: Span;
  /** Per 100 g as eaten; null without a cooked weight. */
  readonly per100g: Span | null;
  /**
   * Share of the food that bears energy for which this nutrient is known, 0..1, by dry weight; a food whose water nobody knows
   * counts whole. Below 1 the amounts are what is known, not all there is.
   */
  readonly coverage: number;
  /** Every food was weighed and has a figure. false: there may be more of it. */
  readonly complete: boolean;
  /** Not complete, and what is not known can only add to it: nothing counted may be left out, lost in cooking or poured away. */
  readonly atLeast: boolean;
  /** Of the raw foods: cooking destroys some, which is not taken off. */
  readonly raw: boolean;
  /** Foods without a figure for it, and foods with one of which some is not weighed. */
  readonly unknown: readonly string[];
}

/** How much of a food is not eaten. */
export interface NotEaten {
  readonly food: string;
  /** Of what goes in; null where that cannot be weighed. */
  readonly share: Span | null;
  readonly why: readonly NotEatenReason[];
}

export interface Nutrition {
  /** Figures of raw foods, over the weight and the servings of the cooked dish (FAO, dishes from recipes). */
  readonly basis: "RAW_FOODS_OVER_COOKED_WEIGHT" | "RAW_FOODS_OVER_SERVINGS";
  /** A nutrient that no food has a figure for is left out: unknown, never zero. */
  readonly nutrients: Readonly<Partial<Record<NutrientCode, NutrientAmount>>>;
  readonly gramsPerServing: Span | null;
  /** Foods of which some or all counts in no sum because nobody knows what it weighs, added to taste or not. */
  readonly unweighed: readonly string[];
  /** Foods of which more goes in than was weighed: to taste, or more for serving. What is known of them counts. */
  readonly added: readonly string[];
  /** Foods whose energy nobody gives, so that they are missing from it. */
  readonly missing: readonly string[];
  readonly notEaten: readonly NotEaten[];
}

/** Nutrients that heat and air destroy: figures of raw foods are more than what is eaten. */
const lostInCooking: ReadonlySet<NutrientCode> = new Set(["vitaminCMg"]);

/**
 * What is in a dish: nutrients of the raw foods added up, then divided by the cooked weight and the servings. Water that
 * boils off or soaks in changes the weight only. Ranges keep both ends.
 * @throws RangeError unless servings > 0 and weights are ordered and not negative
 */
export const nutritionOf = (question: NutritionQuestion): Nutrition => runToEnd(nutritionOfInSlices(question));

/** The same, a turn for each nutrient. */
export function* nutritionOfInSlices({ inputs, cookedGrams, servings }: NutritionQuestion): InSlices<Nutrition> {
  check(servings > 0 && Number.isFinite(servings), `servings must be above 0, not ${servings}`);
  if (cookedGrams !== null) check(isSpan(cookedGrams) && cookedGrams.low > 0, "a cooked weight must be above 0");
  for (const { food, grams } of inputs) {
    check(grams === null || isSpan(grams), `the grams of ${food.slug} must be ordered and not negative`);
  }
  const amounts: [NutrientCode, NutrientAmount][] = [];
  for (const code of nutrientCodes) {
    yield;
    const amount = amountOf(code, inputs, cookedGrams, servings);
    if (amount !== null) amounts.push([code, amount]);
  }
  yield;
  return {
    basis: cookedGrams === null ? "RAW_FOODS_OVER_SERVINGS" : "RAW_FOODS_OVER_COOKED_WEIGHT",
    nutrients: Object.fromEntries(amounts),
    gramsPerServing: cookedGrams === null ? null : times(cookedGrams, 1 / servings),
    unweighed: slugs(inputs, ({ grams, rest = [] }) => grams === null || rest.includes("UNWEIGHED")),
    added: slugs(inputs, ({ rest = [] }) => rest.includes("TO_TASTE") || rest.includes("EXTRA")),
    missing: slugs(inputs, (each) => isEaten(each) && figure(each, "energyKcal") === undefined),
    notEaten: notEatenOf(inputs),
  };
}

const figure = ({ food }: NutritionInput, code: NutrientCode): number | undefined => food.nutrients?.per100g[code];

const isWeighedWhole = ({ grams, rest = [] }: NutritionInput): boolean => grams !== null && rest.length === 0;

/** Something of it is eaten, whether or not it can be weighed. */
const isEaten = (input: NutritionInput): boolean => !isWeighedWhole(input) || (input.grams?.high ?? 0) > 0;

/** A food that adds nothing to a nutrient leaves nothing of it open, however much of it there is. */
const isOpen = (input: NutritionInput, code: NutrientCode): boolean => {
  const value = figure(input, code);
  return isEaten(input) && (value === undefined || (value > 0 && !isWeighedWhole(input)));
};

const adds = (input: NutritionInput, code: NutrientCode): boolean =>
  (figure(input, code) ?? 0) > 0 && (input.grams?.high ?? 0) > 0;

/** Its share is an estimate, which may be too much. */
const isEstimate = ({ why = [] }: NutritionInput): boolean => why.some((each) => each !== "STATED");

function amountOf(
  code: NutrientCode,
  inputs: readonly NutritionInput[],
  cooked: Span | null,
  servings: number,
): NutrientAmount | null {
  const known = inputs.filter((each) => figure(each, code) !== undefined && (each.grams !== null || isEaten(each)));
  if (known.every(({ grams }) => grams === null)) return null;
  const total = sumOfSpans(
    known.flatMap((each) => (each.grams === null ? [] : [times(each.grams, (figure(each, code) ?? 0) / 100)])),
  );
  const unknown = slugs(inputs, (each) => isOpen(each, code));
  const complete = unknown.length === 0;
  const raw = lostInCooking.has(code);
  const mayBeLess = raw || inputs.some((each) => adds(each, code) && (each.mayBeLeftOut === true || isEstimate(each)));
  return {
    total,
    perServing: times(total, 1 / servings),
    per100g: cooked === null ? null : per100(total, cooked),
    coverage: coverageOf(code, inputs),
    complete,
    atLeast: !complete && !mayBeLess,
    raw,
    unknown,
  };
}

/** Share by dry weight: a litre of water, or a pound of leaves, must not hide a packet of pasta. */
function coverageOf(code: NutrientCode, inputs: readonly NutritionInput[]): number {
  const bearing = inputs.filter((each) => figure(each, "energyKcal") !== 0 && each.grams !== null);
  const dry = (each: NutritionInput): Span =>
    times(each.grams ?? { low: 0, high: 0 }, 1 - Math.min(100, figure(each, "waterG") ?? 0) / 100);
  return share(
    sumOfSpans(bearing.filter((each) => figure(each, code) !== undefined).map(dry)),
    sumOfSpans(bearing.map(dry)),
  );
}

function notEatenOf(inputs: readonly NutritionInput[]): readonly NotEaten[] {
  const partly = new Map<string, NutritionInput[]>();
  for (const each of inputs) {
    if ((each.why ?? []).length === 0) continue;
    const known = partly.get(each.food.slug);
    if (known === undefined) partly.set(each.food.slug, [each]);
    else known.push(each);
  }
  return [...partly].map(([food, those]) => {
    const away = sumOfSpans(those.flatMap(({ notEaten }) => notEaten ?? []));
    const all = sumOfSpans([away, ...those.flatMap(({ grams }) => grams ?? [])]);
    return {
      food,
      share: all.low > 0 ? { low: away.low / all.high, high: Math.min(1, away.high / all.low) } : null,
      why: unique(those.flatMap(({ why = [] }) => why)),
    };
  });
}

const slugs = (inputs: readonly NutritionInput[], are: (input: NutritionInput) => boolean): readonly string[] =>
  unique(inputs.filter(are).map(({ food }) => food.slug));

/** Least nutrient over the heaviest dish, most over the lightest. */
const per100 = (total: Span, cooked: Span): Span => ({
  low: (total.low / cooked.high) * 100,
  high: (total.high / cooked.low) * 100,
});

/** The worse of the two ends; nothing weighed is nothing missing. */
const share = (part: Span, whole: Span): number =>
  Math.min(whole.low > 0 ? part.low / whole.low : 1, whole.high > 0 ? part.high / whole.high : 1);

const isSpan = ({ low, high }: Span): boolean => low >= 0 && high >= low && Number.isFinite(high);
const times = ({ low, high }: Span, factor: number): Span => ({ low: low * factor, high: high * factor });
export const sumOfSpans = (spans: readonly Span[]): Span =>
  spans.reduce((all, { low, high }) => ({ low: all.low + low, high: all.high + high }), { low: 0, high: 0 });
const unique = <T>(values: readonly T[]): readonly T[] => [...new Set(values)];

function check(holds: boolean, why: string): void {
  if (!holds) throw new RangeError(why);
}
