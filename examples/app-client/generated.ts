/** Internal type. DO NOT USE DIRECTLY. */
type Exact<T extends { [key: string]: unknown }> = { [K in keyof T]: T[K] };
/** Internal type. DO NOT USE DIRECTLY. */
export type Incremental<T> = T | { [P in keyof T]?: P extends ' $fragmentName' | '__typename' ? T[P] : never };
import type { DocumentTypeDecoration } from '@graphql-typed-document-node/core';
/** What is known about an allergen in a food or a meal. */
export type AllergenPresence =
  /** It is contained. */
  | 'CONTAINS'
  /** A source states that it is not in there. */
  | 'DOES_NOT_CONTAIN'
  /** Traces are possible. */
  | 'MAY_CONTAIN'
  /** Nothing is stated. Never treat it as absent. */
  | 'UNKNOWN';

/** How many of an appliance there are. */
export type ApplianceInput = {
  /** Code of an appliance that the plan uses, such as `oven-shelf`. */
  readonly appliance: string;
  /** How many, from 0 to 100: shelves, rings, blenders. */
  readonly count: number;
};

/** A number of people who eat the same share of a serving. */
export type EatersInput = {
  /** How many people. */
  readonly count: number;
  /** The share of a serving each of them eats, such as `1/2` for a small child. */
  readonly portion: string;
};

/** A reader's side of a plan, sent with the query and never stored. Leave out what does not matter. */
export type HouseholdInput = {
  /** Allergens that nobody at the table eats: codes, or their names in any language (`milk`, `Sellerie`); a group stands for all its members. Works like a diet: swaps that are known to be without them are taken, and what contains one, may contain traces, or is not known, is a warning. Nothing is said to be free from anything. */
  readonly avoidAllergens?: ReadonlyArray<string>;
  /** ISO 4217 code to pay in. */
  readonly currency?: string | null | undefined;
  /** Codes of the diets to keep to. Repeating one changes nothing. */
  readonly diets?: ReadonlyArray<string>;
  /** Foods that nobody at the table likes, by their slugs or names in any language. A swap or a route without them is taken where the writer offers one, optional lines of them are left out; where one stays, a warning names the meals. */
  readonly dislikes?: ReadonlyArray<string>;
  /** Who eats, if not everybody eats a whole serving. The counts add up to the servings asked for, or are the servings where none are. */
  readonly eaters?: ReadonlyArray<EatersInput> | null | undefined;
  /** The reader's own kitchen. Default: the one the plan assumes. */
  readonly kitchen?: KitchenInput | null | undefined;
  /** BCP 47 tag of the reader's language. */
  readonly locale?: string | null | undefined;
  /** Measures to show amounts in. Default: those of the plan. */
  readonly measures?: MeasureSystem | null | undefined;
  /** What is already in the kitchen. Lines that only differ in the amount are added up. */
  readonly onHand?: ReadonlyArray<OnHandInput>;
  /** ISO 3166 code of where the reader shops and eats: picks packs, keeping rules and allergen lists. Default: the region of the plan, or else of its publisher; without either the strictest rules of all regions. */
  readonly region?: string | null | undefined;
  /** How to get components that can be made or bought. */
  readonly routes?: RoutesInput | null | undefined;
  /** When the prep session begins; gives dates to what keeps until when. */
  readonly sessionStart?: SessionStartInput | null | undefined;
  /** Foods to swap wherever a line offers it. Repeating one changes nothing. */
  readonly swaps?: ReadonlyArray<SwapInput>;
};

/** What differs from the kitchen the plan assumes. */
export type KitchenInput = {
  /** Appliances of which there are more or fewer than the plan assumes. */
  readonly appliances?: ReadonlyArray<ApplianceInput>;
  /** How many cook together, from 1 to 20. Default: as many as the plan assumes. */
  readonly cooks?: number | null | undefined;
};

/** The measures a plan is written in, or a reader cooks in. They differ in their cups and spoons. */
export type MeasureSystem =
  /** Australian: cup of 250 ml and a tablespoon of 20 ml. */
  | 'AUSTRALIAN'
  /** Grams and millilitres only. */
  | 'METRIC'
  /** Metric with a cup of 250 ml and a tablespoon of 15 ml. */
  | 'METRIC_CUP'
  /** UK imperial: imperial pints and fluid ounces, ounces, pounds. */
  | 'UK_IMPERIAL'
  /** US customary: cup of 236.588 ml, ounces, pounds, Fahrenheit. */
  | 'US_CUSTOMARY';

/**
 * Something already in the kitchen: a food, or a component made earlier. `{ food: "carrot", amount: "500g" }`, `{ food: "Möhren", amount: "ein halber Beutel" }`,
 * `{ food: "carrot", amount: "500", unit: "g" }`.
 */
export type OnHandInput = {
  /**
   * How much there is: a number beside `unit`, or without it an amount as people say it: `500g`, `1/2 lb`, `half a bag`, `2 tins`, `une bouteille`. Numbers are
   * written as in the language of `locale`; without one, as in English. A word for a pack means the pack of that name that is sold in `region`; where
   * packs of several sizes are called so, the answer is AMBIGUOUS_UNIT with the choices, such as `bag (500 g)`.
   */
  readonly amount: string;
  /** Also take it for a food it can be turned into with more work: dry beans for tinned. Otherwise that is only offered. */
  readonly asOtherForm?: boolean;
  /** Slug of a component. Give this or `food`. */
  readonly component?: string | null | undefined;
  /**
   * A food: its slug, its name in any language ("Möhren"), or `usda 11233`, its number in the open food table. A name of several foods is answered with
   * AMBIGUOUS_FOOD, one of none with UNKNOWN_FOOD. Give this or `component`.
   */
  readonly food?: string | null | undefined;
  /** Code of a unit, such as `g` or `piece`, or a measure of the food's own, such as `own:tin`. Leave it out where `amount` says it. */
  readonly unit?: string | null | undefined;
  /** Not counted for meals after this day. */
  readonly useBy?: string | null | undefined;
};

/** The route for one component. */
export type RouteChoiceInput = {
  /** Slug of the component. */
  readonly component: string;
  /** Name of one of its routes. */
  readonly route: string;
};

/** How to choose between making and buying. */
export type RouteMode =
  /** As the plan says. */
  | 'AS_WRITTEN'
  /** What costs least. */
  | 'CHEAPEST'
  /** What takes the least work. */
  | 'LEAST_WORK';

/** How to get components that can be made or bought. */
export type RoutesInput = {
  /** Choices for single components. */
  readonly byName?: ReadonlyArray<RouteChoiceInput>;
  /** The rule for all components that are not named. */
  readonly mode?: RouteMode;
};

/** When the prep session begins. Give `instant` or `local`. */
export type SessionStartInput = {
  /** A point in time. */
  readonly instant?: string | null | undefined;
  /** What the clock on the kitchen wall says, such as `2026-03-01T10:00`. */
  readonly local?: string | null | undefined;
  /** IANA name of the reader's time zone, such as `Europe/Lisbon`. */
  readonly zone: string;
};

/** Take one food for another, wherever a line offers that swap. */
export type SwapInput = {
  /** Slug of the food as written, or `usda 11233`: its number in the open food table. */
  readonly from: string;
  /** Slug of the food to take, or its number in the open food table. */
  readonly to: string;
};

export type WeekendQueryVariables = Exact<{
  publisher: string;
  slug: string;
  servings: number;
  household?: HouseholdInput | null | undefined;
}>;


export type WeekendQuery = { readonly plan: { readonly title: string, readonly revision: number, readonly scaling: { readonly scaled: { readonly session: { readonly totalMinutes: number, readonly handsOnMinutes: number, readonly tasks: ReadonlyArray<{ readonly text: string, readonly startMinute: number, readonly endMinute: number }> } | null, readonly shoppingList: { readonly aisles: ReadonlyArray<{ readonly name: string, readonly lines: ReadonlyArray<{ readonly food: { readonly name: string }, readonly need: { readonly text: string } | null, readonly buy: ReadonlyArray<{ readonly count: number, readonly pack: { readonly name: string } }> }> }> }, readonly allergens: { readonly findings: ReadonlyArray<{ readonly name: string, readonly presence: AllergenPresence }> }, readonly warnings: ReadonlyArray<{ readonly message: string }> } | null, readonly problems: ReadonlyArray<{ readonly where: string, readonly text: string }> } } | null };

export class TypedDocumentString<TResult, TVariables>
  extends String
  implements DocumentTypeDecoration<TResult, TVariables>
{
  __apiType?: NonNullable<DocumentTypeDecoration<TResult, TVariables>['__apiType']>;
  private value: string;
  public __meta__?: Record<string, any> | undefined;

  constructor(value: string, __meta__?: Record<string, any> | undefined) {
    super(value);
    this.value = value;
    this.__meta__ = __meta__;
  }

  override toString(): string & DocumentTypeDecoration<TResult, TVariables> {
    return this.value;
  }
}

export const WeekendDocument = new TypedDocumentString(`
    query Weekend($publisher: String!, $slug: String!, $servings: Int!, $household: HouseholdInput) {
  plan(publisher: $publisher, slug: $slug) {
    title
    revision
    scaling(servings: $servings, household: $household) {
      scaled {
        session {
          totalMinutes
          handsOnMinutes
          tasks {
            text
            startMinute
            endMinute
          }
        }
        shoppingList {
          aisles {
            name
            lines {
              food {
                name
              }
              need {
                text
              }
              buy {
                count
                pack {
                  name
                }
              }
            }
          }
        }
        allergens {
          findings {
            name
            presence
          }
        }
        warnings {
          message
        }
      }
      problems {
        where
        text
      }
    }
  }
}
    `) as unknown as TypedDocumentString<WeekendQuery, WeekendQueryVariables>;