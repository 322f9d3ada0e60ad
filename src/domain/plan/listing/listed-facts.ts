import type { AllergenPresence, NutrientCode, TracesPresence } from "../../model/food.js";
import type { FactLabel } from "./fact-labels.js";

/** An allergen of a plan, in the regions where the same is said of it; `regions` null: everywhere. */
export interface ListedAllergen {
  readonly code: string;
  readonly regions: readonly string[] | null;
  /** As an ingredient. */
  readonly presence: AllergenPresence;
  readonly traces: TracesPresence;
}

/** Of a serving; null: that end is not known. */
export interface ListedAmount {
  readonly low: number | null;
  readonly high: number | null;
}

/** A serving's cost where and in what money it was asked for; `amount` null: the price of some food is not known. */
export interface ListedCost {
  readonly market: string;
  readonly currency: string;
  /** A decimal string. */
  readonly amount: string | null;
}

/** What a list finds a plan by and shows of it: of its own servings, routes and kitchen, without swaps. */
export interface ListedFacts {
  readonly labels: readonly FactLabel[];
  readonly allergens: readonly ListedAllergen[];
  /** The longest of its sessions; null: its steps fit no order. */
  readonly sessionMinutes: number | null;
  /** Of all its sessions. */
  readonly handsOnMinutes: number | null;
  /** From its first meal to its last, both counted. */
  readonly days: number;
  readonly servings: number;
  /** Slugs, as they are shopped, of foods of which something is to be bought. */
  readonly bought: readonly string[];
  readonly nutrients: Readonly<Partial<Record<NutrientCode, ListedAmount>>>;
  readonly costs: readonly ListedCost[];
  /** ISO date of the prices. */
  readonly costsOf: string;
}

/** In the order in which their figures are stored, which never changes: new ones come last. */
export const listedNutrients: readonly NutrientCode[] = [
  "energyKcal",
  "proteinG",
  "fatG",
  "saturatedFatG",
  "carbohydrateG",
  "sugarsG",
  "fibreG",
  "sodiumMg",
  "calciumMg",
  "ironMg",
  "potassiumMg",
  "vitaminCMg",
  "cholesterolMg",
  "waterG",
];
