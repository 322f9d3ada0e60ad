import type { OwnedRegion } from "./region.js";
import type { MeasureSystem, RationalText, UnitRef } from "./amount.js";

export interface OnHand {
  readonly item:
    { readonly kind: "FOOD"; readonly food: string } | { readonly kind: "COMPONENT"; readonly component: string };
  readonly amount: RationalText;
  readonly unit: UnitRef;
  /** ISO date; not counted for meals after it. */
  readonly useBy: string | null;
  /** Also take it for a food it can be turned into (dry beans for tinned), which adds work; otherwise that is only offered. */
  readonly asOtherForm: boolean;
  /** Where it stands among what the reader wrote; left out: where it stands here. */
  readonly place?: number;
}

/** Per component; AS_WRITTEN makes it as the plan says. */
export type RouteMode = "AS_WRITTEN" | "CHEAPEST" | "LEAST_WORK";

/** A reader's side, sent with the query and never stored. Every part is optional to the reader; absent parts are null or empty here. */
export interface Household {
  readonly measures: MeasureSystem | null;
  /** ISO 3166 code: picks rules and allergen lists. The reader's own, or else that of the plan or its publisher (`regions`). */
  readonly region: string | null;
  /** Whose regions those are, nearest first; left out: `region` is the reader's own. */
  readonly regions?: readonly OwnedRegion[];
  /** Where the reader shops, to the part of a country; left out: in `region`. */
  readonly shopsIn?: string;
  /** ISO 4217 code. */
  readonly currency: string | null;
  /** The publisher's, for prices where the reader names neither a currency nor a region. */
  readonly usualCurrency?: string;
  /** BCP 47 tag. */
  readonly locale: string | null;
  readonly diets: readonly string[];
  /** Codes of allergens that nobody at the table eats. */
  readonly avoidAllergens: readonly string[];
  /** Slugs of foods that nobody at the table likes: left out where a writer offers a way. */
  readonly dislikes: readonly string[];
  /** Who eats, as counts and shares of a serving; the counts add up to the servings asked for. null: all eat a whole one. */
  readonly eaters: readonly { readonly count: number; readonly portion: RationalText }[] | null;
  /** Food slugs: wherever a line offers `to` as a swap for `from`, take it. */
  readonly swaps: readonly { readonly from: string; readonly to: string }[];
  readonly routes: {
    readonly mode: RouteMode;
    readonly byName: readonly { readonly component: string; readonly route: string }[];
  };
  readonly onHand: readonly OnHand[];
  /** When the session begins: an instant (ISO, UTC) and an IANA zone. */
  readonly session: { readonly start: string; readonly zone: string } | null;
  /** What differs from the kitchen the plan assumes; cooks null: as many as there. */
  readonly kitchen: { readonly cooks: number | null; readonly appliances: Readonly<Record<string, number>> } | null;
}

export const noHousehold: Household = {
  measures: null,
  region: null,
  currency: null,
  locale: null,
  diets: [],
  avoidAllergens: [],
  dislikes: [],
  eaters: null,
  swaps: [],
  routes: { mode: "AS_WRITTEN", byName: [] },
  onHand: [],
  session: null,
  kitchen: null,
};
