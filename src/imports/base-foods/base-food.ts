import type { Food } from "../../domain/model/food.js";
import type { CatalogueFacts } from "../usda/catalogue-facts.js";
import type { BaseFoodEntry } from "./base-food-schema.js";
import { claimsOfEntry } from "./base-claims.js";
import { keepingOf, rememberedKeeping } from "./base-keeping.js";
import { densitiesOfEntry, edibleOfEntry, measuresOfEntry, type TableWeight } from "./base-measures.js";
import { partsOfEntry, type PartFacts } from "./base-parts.js";
import { fromMemory } from "./base-sources.js";
import { namesOf } from "./read-base-names.js";
import type { StorageRow } from "./storage-table.js";

/** What an entry takes from published tables. */
interface EntryFacts {
  /** Of its number in the open table; null: it names none. */
  readonly catalogue: CatalogueFacts | null;
  /** By the place of a weight under its number. */
  readonly weights: ReadonlyMap<string, TableWeight>;
  readonly storage: readonly StorageRow[];
  readonly cooked: Food["yields"][number] | null;
  readonly parts: ReadonlyMap<string, PartFacts>;
}

/** The food that an entry describes. What the open table knows of it stays there, and is inherited by its number. */
export function foodOfEntry(slug: string, entry: BaseFoodEntry, facts: EntryFacts): Food {
  const edible = edibleOfEntry(entry);
  const share = edible[0]?.share ?? facts.catalogue?.edible[0]?.share ?? 1;
  const parts = partsOfEntry(facts.parts);
  const title = facts.catalogue?.nutrients.source;
  const sourceOf = (measure: string) =>
    title === undefined
      ? fromMemory(measure)
      : { ...title, section: `Weight file, NDB ${entry.usda ?? ""}, "${measure}"` };
  return {
    slug,
    names: namesOf(entry.names),
    aisle: entry.aisle.replaceAll(" ", "-"),
    shoppedBy: entry.shop,
    ndbNo: entry.usda,
    densities: [...densitiesOfEntry(entry), ...parts.densities],
    measures: measuresOfEntry(entry, share, (place) => facts.weights.get(place) ?? null, sourceOf),
    parts: parts.parts,
    edible,
    yields: facts.cooked === null ? [] : [facts.cooked],
    ...claimsOfEntry(entry),
    nutrients: null,
    keepsAs: entry["keeps-as"],
    keeping: [...keepingOf(facts.storage), ...rememberedKeeping(entry.keeps)],
    packs: [],
    alwaysThere: false,
    ...(entry.stable ? { shelfStable: true } : {}),
  };
}
