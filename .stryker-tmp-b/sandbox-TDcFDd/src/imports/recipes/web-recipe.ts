// @ts-nocheck
import type { Path, Problem } from "../../domain/problem.js";
import type { RecipeYield } from "./recipe-yield.js";

export interface WebStep {
  /** Name of the section it stands in, or null. */
  readonly section: string | null;
  readonly text: string;
}

/** A recipe as a page publishes it for machines (schema.org Recipe), read but not yet understood. */
export interface WebRecipe {
  readonly name: string;
  readonly description: string | null;
  readonly author: string | null;
  /** Where the page says it lives; only ever http or https. */
  readonly url: string | null;
  readonly language: string | null;
  readonly prepMinutes: number | null;
  readonly cookMinutes: number | null;
  readonly totalMinutes: number | null;
  readonly yield: RecipeYield;
  /** The writer's own words, untouched but for entities and white space. */
  readonly ingredients: readonly string[];
  readonly steps: readonly WebStep[];
  /** Where in its file. */
  readonly path: Path;
  /** Fields that are not what the vocabulary says; the rest of the recipe stands. */
  readonly faults: readonly Problem[];
}
