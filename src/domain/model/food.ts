import type { Measured, Money, Dimension } from "./amount.js";
import type { KeepingRule } from "./keeping.js";
import type { Source } from "./source.js";

/** A food's name in one language, optionally only in one region ("courgette" in GB, "zucchini" in US). */
export interface FoodName {
  readonly language: string;
  readonly region: string | null;
  readonly one: string;
  readonly many: string;
  /** What numbers of the CLDR category "many" take, where that is another form than `many`: Polish 2 jabłka, but 5 jabłek. */
  readonly counted?: string;
  /** Other words for exactly the same food, singular and plural. */
  readonly also: readonly string[];
}

/** Mass of a millilitre. `form` null is the food as bought; "chopped" and "whole" are different densities. */
export interface FoodDensity {
  readonly form: string | null;
  readonly gramsPerMl: number;
  readonly source: Source;
}

/** A measure only this food (or component) has: 1 clove, 1 stick, 1 tin. At least one of the three facts is set. `"piece"` is the whole item. */
export interface OwnMeasure {
  readonly name: string;
  readonly one: string;
  readonly many: string;
  readonly grams: number | null;
  readonly millilitres: number | null;
  readonly pieces: number | null;
  readonly source: Source;
}

/** A co-product: what one piece gives besides the rest of it. Pieces to buy = the maximum over parts, never the sum. */
export interface FoodPart {
  readonly name: string;
  readonly perPiece: Measured;
  /** Parts that must be taken before this one: juice lists "zest". */
  readonly after: readonly string[];
  readonly source: Source;
  /** Class of published keeping ceilings of the part by itself, counted from the day its piece is first cut. */
  readonly keepsAs?: string | null;
  /** The same in the writer's word. Without either, nobody knows how long the part waits for its use. */
  readonly keeping?: readonly KeepingRule[];
  /** Figures of the part by itself: those of the whole are not its own. Absent: nobody gives any. */
  readonly nutrients?: FoodNutrients;
}

/** Share (0..1] of the food as bought that is left once prepared in this way. `form` null is the usual trimming. */
export interface EdiblePortion {
  readonly form: string | null;
  readonly share: number;
  readonly source: Source;
}

/** This food turns into another (dry lentils into cooked): grams of the other for one gram of this. */
interface FoodYield {
  readonly food: string;
  readonly gramsPerGram: number;
  readonly source: Source;
}

export type AllergenPresence = "CONTAINS" | "MAY_CONTAIN" | "DOES_NOT_CONTAIN" | "UNKNOWN";

/** What is known about traces, from cross-contact or a warning on a label. UNKNOWN until somebody says so. */
export type TracesPresence = Exclude<AllergenPresence, "CONTAINS">;

/**
 * An allergen that is not listed for a food is UNKNOWN, never absent. `code` is one of nutrition/allergens.ts.
 * DOES_NOT_CONTAIN vouches for ingredients and traces alike, unless `traces` says otherwise.
 */
export interface FoodAllergen {
  readonly code: string;
  readonly presence: AllergenPresence;
  /** What the source says of traces, where that is not what `presence` says. */
  readonly traces?: TracesPresence;
  readonly source: Source;
}

/** A food of one ingredient with nothing added: a carrot, dry lentils. Other allergens are no ingredient of it, by nature. */
export interface SingleIngredient {
  /** Codes of the allergens that the ingredient is itself: `["egg"]` of an egg. */
  readonly is: readonly string[];
  readonly source: Source;
}

/** What somebody says of a food's allergens and diets. */
export interface FoodClaims {
  readonly allergens: readonly FoodAllergen[];
  readonly diets: readonly FoodDiet[];
  /** Absent or null: nobody says that it is one ingredient. */
  readonly singleIngredient?: SingleIngredient | null;
}

export type NutrientCode =
  | "energyKcal"
  | "proteinG"
  | "fatG"
  | "saturatedFatG"
  | "carbohydrateG"
  | "sugarsG"
  | "fibreG"
  | "sodiumMg"
  | "calciumMg"
  | "ironMg"
  | "potassiumMg"
  | "vitaminCMg"
  | "cholesterolMg"
  | "waterG";

/** Per 100 g of edible portion. A missing nutrient was not measured; it is never zero. */
export interface FoodNutrients {
  readonly per100g: Readonly<Partial<Record<NutrientCode, number>>>;
  readonly source: Source;
}

/** A diet statement about a food: `fits` null is not known. Diet codes: nutrition/diets.ts. */
export interface FoodDiet {
  readonly diet: string;
  readonly fits: boolean | null;
  readonly source: Source;
}

/** Sold as much as one asks for: onions from a crate, nuts from a bin. */
export interface Loose {
  /** The smallest amount a shop weighs or measures out; null: as its scales do by size (shopping/loose-goods.ts). */
  readonly step: Measured | null;
}

export interface Pack {
  readonly id: string;
  /** As sold: "tin", "bag", "punnet". */
  readonly name: string;
  /** Of what is loose: how much the price is for, such as 1 kg. */
  readonly content: Measured;
  readonly price: Money | null;
  /** ISO 3166 code, or null for anywhere. */
  readonly region: string | null;
  /** ISO date the price was seen. */
  readonly seen: string;
  readonly source: Source;
  /** Absent: sold in whole packs only. */
  readonly loose?: Loose;
}

/** The food that a publisher's own builds on. */
interface FoodBase {
  /** Its slug among the foods that all publishers share. */
  readonly food: string;
  /** Both are made of the same: only then what is not in the base food is not in this one either. */
  readonly sameIngredients: boolean;
  /** Codes of allergens that this one contains beside those of its base; left out: none. */
  readonly adds?: readonly string[];
  /** Ids of the packs that are its own; the others are its base's, and bought at the prices of today. Left out: none. */
  readonly packs?: readonly string[];
}

/** Facts that every food has and that one may leave to its base. */
export type LeftToBase = "aisle" | "shoppedBy" | "alwaysThere";

export interface Food extends FoodClaims {
  readonly slug: string;
  /** At least one; the first is the fallback. */
  readonly names: readonly FoodName[];
  readonly aisle: string;
  /** The dimension a shopper asks for it in. Needs are converted to it where the food's facts allow. */
  readonly shoppedBy: Dimension;
  /** Number of this food in the open USDA table, or null. */
  readonly ndbNo: string | null;
  readonly densities: readonly FoodDensity[];
  readonly measures: readonly OwnMeasure[];
  readonly parts: readonly FoodPart[];
  readonly edible: readonly EdiblePortion[];
  readonly yields: readonly FoodYield[];
  readonly nutrients: FoodNutrients | null;
  /** Class of published keeping ceilings (storage/rule.ts), or null if none applies. */
  readonly keepsAs: string | null;
  readonly keeping: readonly KeepingRule[];
  /** Sold unchilled and kept on a shelf until it is opened: dry goods, tins, oils, jars. Absent: nobody says. */
  readonly shelfStable?: boolean;
  readonly packs: readonly Pack[];
  /** Water from the tap, salt of the house: counted and named, but never on the list. */
  readonly alwaysThere: boolean;
  /** Of a food as its document says it, which waits for its base: what it leaves to that. */
  readonly leaves?: readonly LeftToBase[];
  /** Slug of the publisher whose own food it is. Absent: all publishers share it. */
  readonly owner?: string;
  /** Absent: it builds on no other. */
  readonly extends?: FoodBase;
  /** What others say of the same food beside it, such as the catalogue of today. Of two answers the less safe stands. Never stored. */
  readonly beside?: readonly FoodClaims[];
}
