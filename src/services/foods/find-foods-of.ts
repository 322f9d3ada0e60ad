import { inheritFromBase, withOwnPacks } from "../../domain/component/inherit-from-base.js";
import type { Food } from "../../domain/model/food.js";
import { mayUse, type Actor } from "../access/actor.js";
import type { Data } from "../deps.js";
import { readStorable } from "../storable-text.js";
import { inheritFacts } from "./inherit-facts.js";
import { withOpenTable } from "./open-table-foods.js";

/**
 * Foods as a publisher's plans find them today, in the order asked for: its own go before those that all share, and nobody
 * else's are seen. Last, `usda-11233` is a row of the open table. With what they inherit; null where there is none.
 */
export async function findFoodsOf(
  data: Data,
  publisher: string,
  slugs: readonly string[],
): Promise<readonly (Food | null)[]> {
  if (slugs.length === 0) return [];
  const own = (await ownFoods(data, publisher, slugs)).map((draft) => draft?.value ?? null);
  const bases = own.flatMap((food) => food?.extends?.food ?? []);
  const shared = await sharedFoods(data, [...slugs, ...bases]);
  const found = slugs.map((slug, at) => {
    const food = own[at] ?? null;
    return food === null ? (shared.get(slug) ?? null) : asOwn(publisher, food, shared);
  });
  const packs = await ownPacks(data, publisher, slugs);
  const foods = await inheritFacts({ data }, await withOpenTable(data, slugs, found));
  return foods.map((food, at) => {
    const own = packs[at]?.value;
    return food === null || own === undefined ? food : withOwnPacks(publisher, food, own);
  });
}

/** A food as its publisher's document says it, laid over its base; null: its base is gone. */
export function asOwn(publisher: string, food: Food, shared: ReadonlyMap<string, Food>): Food | null {
  const owned = { ...food, owner: publisher };
  if (owned.extends === undefined) return owned;
  const base = shared.get(owned.extends.food);
  return base === undefined ? null : inheritFromBase(owned, base);
}

/** Foods that all publishers share, by slug, without what they inherit. */
export async function sharedFoods(
  { foods }: Pick<Data, "foods">,
  slugs: readonly string[],
): Promise<ReadonlyMap<string, Food>> {
  const found = slugs.length === 0 ? [] : await readStorable([...new Set(slugs)], (slug) => [slug], foods.bySlugs);
  return new Map(found.flatMap((food) => (food === null ? [] : [[food.slug, food] as const])));
}

export const ownFoods = (data: Pick<Data, "publisherFoods">, publisher: string, slugs: readonly string[]) =>
  data.publisherFoods.drafts(slugs.map((slug) => ({ publisher, slug })));

const ownPacks = (data: Pick<Data, "publisherPacks">, publisher: string, slugs: readonly string[]) =>
  data.publisherPacks.drafts(slugs.map((slug) => ({ publisher, slug })));

/**
 * Whether a food in somebody's documents is one that all publishers are to share: the operator's are, as they always were, but
 * for those that build on another.
 */
export const isShared = (actor: Actor, food: { readonly extends?: unknown }): boolean =>
  mayUse(actor, "WRITE", null) && !isImport(actor) && (food.extends ?? null) === null;

/** A feed's documents are its publisher's, although the service itself saves them. */
const isImport = (actor: Actor): boolean => actor.kind === "PROGRAM" && actor.name.startsWith("import ");
