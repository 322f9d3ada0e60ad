import type { Food } from "../../domain/model/food.js";
import {
  compileFoodNamesInSlices,
  namesBefore,
  type FoodNames,
  type NamedFood,
} from "../../domain/quantity/food-name.js";
import { mayUse, type Actor } from "../access/actor.js";
import type { Data, Deps } from "../deps.js";
import { isStorable } from "../storable-text.js";
import { runInSlices } from "../time-slices.js";
import { findFoodsOf } from "./find-foods-of.js";
import { findPublishedFoods } from "./find-own-food.js";
import { inheritFacts } from "./inherit-facts.js";

/** Whose own foods are named beside those that all share: as they are saved, or as they were published. */
export interface NamesSeen {
  readonly publisher: string;
  readonly as: "SAVED" | "PUBLISHED";
}

/** A publisher's own foods as somebody may see them; null: nobody was named. */
export const seenBy = (actor: Actor, publisher: string | null): NamesSeen | null =>
  publisher === null || !isStorable(publisher)
    ? null
    : { publisher, as: mayUse(actor, "READ_DRAFTS", publisher) ? "SAVED" : "PUBLISHED" };

/** The names that foods are found by, and their foods. */
interface NamedFoods {
  readonly names: FoodNames;
  /** What `names` was laid out from, those that go first in front. */
  readonly lists: readonly (readonly NamedFood[])[];
  /** With what they inherit, in the order asked for. */
  readFoods(slugs: readonly string[]): Promise<readonly (Food | null)[]>;
}

/** Every food that somebody may name. Names that all share are laid out once for each state of the foods. */
export async function namesFor(deps: Pick<Deps, "data" | "work">, seen: NamesSeen | null): Promise<NamedFoods> {
  const { data } = deps;
  const shared = await data.foods.names();
  const names = await runInSlices(deps, (work) => compileFoodNamesInSlices(shared, work));
  if (seen === null) {
    const readFoods = async (slugs: readonly string[]) => inheritFacts(deps, await data.foods.bySlugs(slugs));
    return { names, lists: [shared], readFoods };
  }
  const own = await ownNames(data, seen, shared);
  const { publisher, as } = seen;
  const first = await runInSlices(deps, (work) => compileFoodNamesInSlices(own, work));
  return {
    names: namesBefore(first, names),
    lists: [own, shared],
    readFoods: (slugs) =>
      as === "SAVED" ? findFoodsOf(data, publisher, slugs) : findPublishedFoods(data, publisher, slugs),
  };
}

/** Own foods by the names that their documents give them; those that give none by the names of what they build on. */
async function ownNames(
  data: Data,
  { publisher, as }: NamesSeen,
  shared: readonly NamedFood[],
): Promise<readonly NamedFood[]> {
  const found = await data.publisherFoods.names(publisher, as);
  const bases = new Set(found.flatMap(({ names, base }) => (names.length === 0 && base !== null ? [base] : [])));
  const known = new Map(shared.flatMap((food) => (bases.has(food.slug) ? [[food.slug, food] as const] : [])));
  return found.map(({ slug, names, aisle, base }) => ({
    slug,
    aisle: aisle ?? "other",
    names: names.length > 0 ? names : (known.get(base ?? "")?.names ?? []),
    own: true,
  }));
}
