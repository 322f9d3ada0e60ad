import type { Food, Pack } from "../model/food.js";

/**
 * Under what a food is shopped: foods of one name here go on one line of a list. A publisher's own food is shopped as the food
 * that it builds on, unless it contains an allergen which that does not; without a base it is its publisher's alone, whatever
 * others call theirs.
 *
 * @param canonical the slug under which a food that all publishers share is shopped
 */
export function shoppedAs(food: Food, canonical: (slug: string) => string = (slug) => slug): string {
  const { owner, extends: base, slug } = food;
  if (owner === undefined) return canonical(slug);
  if (base === undefined) return `${owner}/${slug}`;
  return [canonical(base.food), ...(base.adds ?? [])].join("+");
}

/** The slug of the food, among those that all publishers share, of which today's facts are this one's too; null: there is none. */
export const sharedSlug = ({ owner, extends: base, slug }: Food): string | null =>
  owner === undefined ? slug : (base?.food ?? null);

/**
 * One food for a line of own foods that are shopped as one: the facts of `named`, and the packs of all, in any order of them. A
 * publisher's own packs go before those of the base food, which are the ones of today where that is known.
 */
export function withAllPacks(named: Food, own: readonly Food[], base: Food | null): Food {
  const packs = new Map<string, Pack>();
  for (const { packs: all, extends: made } of own)
    for (const pack of all) {
      if (made !== undefined && base !== null && made.packs?.includes(pack.id) !== true) continue;
      const known = packs.get(pack.id);
      if (known === undefined || JSON.stringify(known) < JSON.stringify(pack)) packs.set(pack.id, pack);
    }
  for (const pack of base?.packs ?? []) if (!packs.has(pack.id)) packs.set(pack.id, pack);
  return { ...named, packs: [...packs.values()].toSorted((a, b) => (a.id < b.id ? -1 : 1)) };
}
