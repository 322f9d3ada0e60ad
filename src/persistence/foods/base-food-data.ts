import type { Food } from "../../domain/model/food.js";

/** An edition of the base foods, as it was loaded. */
interface BaseFoodEditionLoaded {
  /** The day it was made. */
  readonly code: string;
  readonly title: string;
  /** How many it has. */
  readonly foods: number;
  /** SHA-256 of its foods, hex. */
  readonly contentHash: string;
  readonly loadedAt: Date;
}

/** What an edition did to the foods of the database, by slug. */
export interface BaseFoodsChanged {
  readonly added: readonly string[];
  readonly replaced: readonly string[];
  /** Foods that somebody saved under a slug of the edition: theirs stay. */
  readonly kept: readonly string[];
}

/** The base foods, which stand among the others until somebody saves one of their slugs. */
export interface BaseFoodData {
  /** The one in force; null: none was loaded. */
  baseEdition(): Promise<BaseFoodEditionLoaded | null>;
  /**
   * Puts an edition in the place of the one before, all of it or nothing. A food that somebody saved under a slug of it stays, and
   * so does one that it no longer has. null: one of this day or a later one is in force.
   */
  loadBase(
    edition: { readonly code: string; readonly title: string },
    contentHash: string,
    foods: readonly Food[],
  ): Promise<BaseFoodsChanged | null>;
}
