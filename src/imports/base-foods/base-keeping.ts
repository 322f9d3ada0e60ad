import type { KeepingRule } from "../../domain/model/keeping.js";
import { storageSource } from "./base-sources.js";
import type { StorageRow } from "./storage-table.js";

const conditions = { PURCHASE: "from purchase", OPENING: "after opening" } as const;

/**
 * The keeping times of a food from its lines of the table: for each place, unopened and after opening apart, the shortest. Freezer
 * and pantry times are of quality.
 */
export function keepingOf(rows: readonly StorageRow[]): readonly KeepingRule[] {
  const shortest = new Map<string, StorageRow>();
  for (const row of rows) {
    const key = `${row.place} ${row.from === "OPENING" ? "OPENING" : ""}`;
    const known = shortest.get(key);
    if (known === undefined || row.days < known.days) shortest.set(key, row);
  }
  return [...shortest.values()].map(({ id, name, place, from, days, printed }): KeepingRule => ({
    place,
    days,
    container: null,
    condition: from === null ? null : conditions[from],
    purpose: place === "FRIDGE" ? "SAFETY" : "QUALITY",
    region: "US",
    source: storageSource(`id ${String(id)} (${name}), ${printed}`),
  }));
}
