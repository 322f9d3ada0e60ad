import type { CatalogueEdition, CatalogueRow, KnownCatalogueRow } from "../../domain/model/catalogue-row.js";
import type { Batched, Page, PageRequest } from "../sql/page.js";

export type { KnownCatalogueRow } from "../../domain/model/catalogue-row.js";

/** The open food table: an edition that came with the program, and what was imported over it. */
export interface CatalogueData {
  /**
   * Puts an edition that comes with the program in place of the one before; false: it was there, with this very content. Rows and
   * weights that were imported stay.
   */
  load(edition: CatalogueEdition, contentHash: string, rows: readonly CatalogueRow[]): Promise<boolean>;
  /** Of the edition that came with the program; null: none, or it is to be loaded again. */
  contentHash(): Promise<string | null>;
  /** Lets the next start load the edition that comes with the program again, though it is the same. */
  forgetHash(): Promise<void>;
  /** Keeps all other writers of the table out until the end of the transaction. */
  lock(): Promise<void>;
  /** Puts rows in place of those of their numbers. An edition that is not known yet is one that was imported. */
  save(rows: readonly KnownCatalogueRow[]): Promise<void>;
  remove(numbers: readonly string[]): Promise<void>;
  byNumbers: Batched<string, KnownCatalogueRow>;
  /** The shortest descriptions first. `search`: words, or beginnings of words, in any order. */
  page(search: string | null, request: PageRequest): Promise<Page<KnownCatalogueRow>>;
}
