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
  const owners = new Map<string, string | undefined>();
  for (const { packs: all, extends: made, owner } of own.toSorted(byOwner))
    for (const pack of all) {
      if (made !== undefined && base !== null && made.packs?.includes(pack.id) !== true) continue;
      const known = packs.get(pack.id);
      const isMore = known === undefined || JSON.stringify(known) < JSON.stringify(pack);
      const isSame = known !== undefined && JSON.stringify(known) === JSON.stringify(pack);
      // Two publishers may call two packs the same; both are on the shelf.
      const isOthers = known !== undefined && !isSame && owners.get(pack.id) !== owner;
      const id = isOthers ? `${pack.id}-${owner}` : pack.id;
      if (!isOthers && !isMore) continue;
      packs.set(id, isOthers ? { ...pack, id } : pack);
      owners.set(id, owner);
    }
  for (const pack of base?.packs ?? []) if (!packs.has(pack.id)) packs.set(pack.id, pack);
  return { ...named, packs: [...packs.values()].toSorted((a, b) => (a.id < b.id ? -1 : 1)) };
}

const byOwner = (a: Food, b: Food): number => {
  const [first = "", second = ""] = [a.owner, b.owner];
  return first < second ? -1 : first > second ? 1 : 0;
};
