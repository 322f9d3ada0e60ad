import type { KeepingRule } from "../../domain/model/keeping.js";
import type { BaseFoodEntry } from "./base-food-schema.js";
import { fromMemory, storageSource } from "./base-sources.js";
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

const places = { room: "ROOM", fridge: "FRIDGE", freezer: "FREEZER" } as const;

/** Days from memory, of foods that the table leaves out: how long they stay good, wherever; never how long they are safe. */
export const rememberedKeeping = (keeps: BaseFoodEntry["keeps"]): readonly KeepingRule[] =>
  (["room", "fridge", "freezer"] as const).flatMap((place) => {
    const days = keeps[place];
    if (days === undefined) return [];
    const source = fromMemory(`keeps ${String(days)} days (${place})`);
    return [{ place: places[place], days, container: null, condition: null, purpose: "QUALITY", source }];
  });
