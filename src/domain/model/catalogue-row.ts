import type { NutrientCode } from "./food.js";

/** One printing of the open food table. */
export interface CatalogueEdition {
  /** Short name, such as `usda-sr26`. */
  readonly code: string;
  readonly title: string;
}

/** A food of the open table as it is printed there. What it means for a writer's food is imports/usda's to say. */
export interface CatalogueRow {
  /** Five digits. */
  readonly ndbNo: string;
  readonly description: string;
  readonly otherNames: readonly string[];
  /** Where a shopper looks for its group of foods. */
  readonly aisle: string;
  /** Per 100 g of edible portion. A missing one was not measured. */
  readonly per100g: Readonly<Partial<Record<NutrientCode, number>>>;
  /** What is thrown away of it as purchased, in percent as printed, and what that is; null: the table does not say. */
  readonly refuse: { readonly percent: string; readonly what: string } | null;
  readonly weights: readonly CatalogueWeight[];
}

/** Grams of one household measure, of edible material without refuse. */
export interface CatalogueWeight {
  readonly measure: string;
  readonly grams: number;
  /** Where it stands; left out: where its row does. */
  readonly edition?: CatalogueEdition;
}

/** A food of the open table, and the edition it stands in. */
export interface KnownCatalogueRow {
  readonly row: CatalogueRow;
  readonly edition: CatalogueEdition;
}
