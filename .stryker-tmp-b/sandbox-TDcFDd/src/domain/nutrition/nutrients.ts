// @ts-nocheck
import type { Food, NutrientCode } from "../model/food.js";

export const nutrientCodes = [
  ...(["energyKcal", "proteinG", "fatG", "saturatedFatG", "carbohydrateG", "sugarsG", "fibreG", "sodiumMg"] as const),
  ...(["calciumMg", "ironMg", "potassiumMg", "vitaminCMg", "cholesterolMg", "waterG"] as const),
] as const satisfies readonly NutrientCode[];

export interface Span {
  readonly low: number;
  readonly high: number;
}

/** A food as it goes in: raw, because nutrients are those of the raw food. */
export interface NutritionInput {
  readonly food: Pick<Food, "slug" | "nutrients">;
  /** Grams of edible portion; null where nobody knows what it weighs (a pinch, a leaf). */
  readonly grams: Span | null;
  /** Share 0..1 of it that is poured or thrown away and not eaten (oil drained, marinade, tin liquid). Left out: none. */
  readonly discarded?: number;
}

export interface NutritionQuestion {
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
  /** Share of the weighed and eaten mass for which this nutrient is known, 0..1. Below 1 the amounts are what is known, not all there is. */
  readonly coverage: number;
  /** Every food was weighed and has a figure. false: there may be more of it. */
  readonly complete: boolean;
  /** Foods without a figure for it. */
  readonly unknown: readonly string[];
}

export interface Nutrition {
  /** Figures of raw foods, over the weight and the servings of the cooked dish (FAO, dishes from recipes). */
  readonly basis: "RAW_FOODS_OVER_COOKED_WEIGHT" | "RAW_FOODS_OVER_SERVINGS";
  /** A nutrient that no food has a figure for is left out: unknown, never zero. */
  readonly nutrients: Readonly<Partial<Record<NutrientCode, NutrientAmount>>>;
  readonly gramsPerServing: Span | null;
  /** Foods that count in no sum because nobody knows what they weigh. */
  readonly unweighed: readonly string[];
  /** Foods of which a share is not eaten, and that share. */
  readonly discarded: readonly { readonly food: string; readonly share: number }[];
}

/**
 * What is in a dish: nutrients of the raw foods added up, then divided by the cooked weight and the servings. Water that
 * boils off or soaks in changes the weight only. Ranges keep both ends.
 * @throws RangeError unless servings > 0, shares lie in 0..1, weights are ordered and not negative
 */
export function nutritionOf({ inputs, cookedGrams, servings }: NutritionQuestion): Nutrition {
  check(servings > 0 && Number.isFinite(servings), `servings must be above 0, not ${servings}`);
  if (cookedGrams !== null) check(isSpan(cookedGrams) && cookedGrams.low > 0, "a cooked weight must be above 0");
  const eaten = inputs.flatMap(({ food, grams, discarded = 0 }) => {
    check(discarded >= 0 && discarded <= 1, `the discarded share of ${food.slug} must lie in 0..1`);
    if (grams === null) return [];
    check(isSpan(grams), `the grams of ${food.slug} must be ordered and not negative`);
    return [{ food, grams: times(grams, 1 - discarded) }];
  });
  const unweighed = unique(inputs.flatMap(({ food, grams }) => (grams === null ? [food.slug] : [])));
  const amounts = nutrientCodes.flatMap((code): [NutrientCode, NutrientAmount][] => {
    const amount = amountOf(code, eaten, cookedGrams, servings);
    if (amount === null) return [];
    const unknown = unique([...amount.unknown, ...unweighed]);
    return [[code, { ...amount, unknown, complete: unknown.length === 0 }]];
  });
  return {
    basis: cookedGrams === null ? "RAW_FOODS_OVER_SERVINGS" : "RAW_FOODS_OVER_COOKED_WEIGHT",
    nutrients: Object.fromEntries(amounts),
    gramsPerServing: cookedGrams === null ? null : times(cookedGrams, 1 / servings),
    unweighed,
    discarded: inputs.flatMap(({ food, discarded = 0 }) =>
      discarded > 0 ? [{ food: food.slug, share: discarded }] : [],
    ),
  };
}

interface Eaten {
  readonly food: NutritionInput["food"];
  readonly grams: Span;
}

function amountOf(code: NutrientCode, eaten: readonly Eaten[], cooked: Span | null, servings: number) {
  const figure = ({ food }: Eaten): number | undefined => food.nutrients?.per100g[code];
  const known = eaten.filter((each) => figure(each) !== undefined);
  if (known.length === 0) return null;
  const total = sum(known.map((each) => times(each.grams, (figure(each) ?? 0) / 100)));
  return {
    total,
    perServing: times(total, 1 / servings),
    per100g: cooked === null ? null : per100(total, cooked),
    coverage: share(sum(known.map(({ grams }) => grams)), sum(eaten.map(({ grams }) => grams))),
    unknown: eaten.flatMap((each) => (figure(each) === undefined ? [each.food.slug] : [])),
  };
}

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
const sum = (spans: readonly Span[]): Span =>
  spans.reduce((all, { low, high }) => ({ low: all.low + low, high: all.high + high }), { low: 0, high: 0 });
const unique = (slugs: readonly string[]): readonly string[] => [...new Set(slugs)];

function check(holds: boolean, why: string): void {
  if (!holds) throw new RangeError(why);
}
