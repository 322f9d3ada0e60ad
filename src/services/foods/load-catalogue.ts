import type { CatalogueEdition, CatalogueRow } from "../../domain/model/catalogue-row.js";
import type { Deps } from "../deps.js";

/** The open food table as it comes with the program. */
export interface ShippedCatalogue {
  readonly edition: CatalogueEdition;
  /** SHA-256 of the rows, hex. */
  readonly hash: string;
}

/** At the start of a process: the open food table that comes with the program, unless it is there already. */
export async function loadCatalogue(
  { data, log }: Pick<Deps, "data" | "log">,
  { edition, hash }: ShippedCatalogue,
  readRows: () => Promise<readonly CatalogueRow[]>,
): Promise<void> {
  if ((await data.catalogue.contentHash()) === hash) return;
  const rows = await readRows();
  if (await data.catalogue.load(edition, hash, rows)) {
    log.info({ edition: edition.code, foods: rows.length }, "open food table loaded");
  }
}
