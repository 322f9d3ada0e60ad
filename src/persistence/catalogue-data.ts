import type { CatalogueEdition, CatalogueRow } from "../domain/model/catalogue-row.js";
import type { Batched, Page, PageRequest } from "./data.js";

/** A food of the open table, and the edition it stands in. */
export interface KnownCatalogueRow {
  readonly row: CatalogueRow;
  readonly edition: CatalogueEdition;
}

/** The open food table, one edition at a time. */
export interface CatalogueData {
  /** Puts an edition in place of what is there; false: it was there, with this very content. */
  load(edition: CatalogueEdition, contentHash: string, rows: readonly CatalogueRow[]): Promise<boolean>;
  /** Of the edition that is there; null: none. */
  contentHash(): Promise<string | null>;
  byNumbers: Batched<string, KnownCatalogueRow>;
  /** The shortest descriptions first. `search`: words, or beginnings of words, in any order. */
  page(search: string | null, request: PageRequest): Promise<Page<KnownCatalogueRow>>;
}
