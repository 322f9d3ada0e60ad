import type { NutrientCode } from "../../../domain/model/food.js";
import type { NamedNutrientLimit } from "./named-nutrients.js";

/** What a caller may leave out. */
export type Maybe<T> = T | null | undefined;

/** What somebody wants plans to be like. Everything may be left out. */
export interface WantedPlans extends Readonly<Partial<Record<NamedNutrientLimit, Maybe<number>>>> {
  readonly publisher?: Maybe<string>;
  readonly search?: Maybe<string>;
  readonly usesFood?: Maybe<string>;
  readonly usesComponent?: Maybe<string>;
  readonly diets?: Maybe<readonly string[]>;
  readonly withoutAllergens?: Maybe<readonly string[]>;
  readonly region?: Maybe<string>;
  readonly maxSessionMinutes?: Maybe<number>;
  readonly maxHandsOnMinutes?: Maybe<number>;
  readonly maxFoodsToBuy?: Maybe<number>;
  readonly withoutAppliances?: Maybe<readonly string[]>;
  readonly maxCostPerServing?: Maybe<{ readonly amount: string; readonly currency: string }>;
  readonly nutrients?: Maybe<
    readonly { readonly nutrient: NutrientCode; readonly min?: Maybe<number>; readonly max?: Maybe<number> }[]
  >;
  readonly usesAnyOf?: Maybe<readonly string[]>;
  readonly usesAllOf?: Maybe<readonly string[]>;
  readonly foodsAtHand?: Maybe<readonly string[]>;
  readonly language?: Maybe<string>;
  readonly tags?: Maybe<readonly string[]>;
  readonly publishedAfter?: Maybe<Date>;
}
