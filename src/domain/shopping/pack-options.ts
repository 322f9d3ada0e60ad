import type { Dimension } from "../model/amount.js";
import type { Food, Pack } from "../model/food.js";
import { regionCovers } from "../model/region.js";
import { missingText, toDimension } from "../quantity/convert.js";
import { looseOption, type LooseOption } from "./loose-goods.js";
import { minorParts, moneyParts } from "./money.js";
import type { PackOption } from "./packs.js";

/** Where and in what money a household shops. null: anywhere; the currency is then settled by `currencyFor`. */
export interface Shop {
  readonly region: string | null;
  readonly currency: string | null;
  /** The region is not the reader's own: a food of which nothing is sold there is taken from anywhere. */
  readonly anywhereElse?: boolean;
  /** Where none is asked for, the currency of the list if anything is priced in it. */
  readonly usualCurrency?: string;
}

export interface PackShelf {
  readonly packs: readonly Pack[];
  readonly options: readonly PackOption[];
  /** Packs whose content cannot be turned into the dimension needed, with the missing fact. */
  readonly notComparable: readonly { readonly pack: Pack; readonly missing: string }[];
}

const soldHere = (pack: Pack, { region }: Shop): boolean =>
  region === null || pack.region === null || regionCovers(pack.region, region);

/** The packs of a food that this shop may have. */
function packsHere({ packs }: Food, shop: Shop): readonly Pack[] {
  const here = packs.filter((pack) => soldHere(pack, shop));
  return here.length === 0 && shop.anywhereElse === true ? packs : here;
}

interface Shelved {
  readonly pack: Pack;
  readonly content: number;
  readonly loose: LooseOption | null;
}

/** The same pack (a kilogram or 1000 g) seen twice counts as seen last; seen twice on one day, as written last. */
const latest = (packs: readonly Shelved[]): readonly Shelved[] => {
  const newest = new Map<string, Shelved>();
  for (const shelved of packs) {
    const { name, region, price, seen, loose } = shelved.pack;
    const sold = [name, shelved.content.toPrecision(12), region, price?.currency ?? null, loose !== undefined];
    const key = JSON.stringify(sold);
    const known = newest.get(key);
    if (known === undefined || known.pack.seen <= seen) newest.set(key, shelved);
  }
  return [...newest.values()];
};

const looseOf = ({ loose, ...pack }: Pack, content: number, dimension: Dimension, food: Food, { currency }: Shop) =>
  loose === undefined
    ? null
    : looseOption({ ...pack, loose }, content, dimension, food, currency === null ? 1 : minorParts(currency));

/**
 * The packs of a food on this shop's shelf, with contents in base units of the dimension needed. A price in another currency is
 * no price here. A content that is a range counts on its low end.
 */
export function packShelf(food: Food, dimension: Dimension, shop: Shop): PackShelf {
  const comparable: Shelved[] = [];
  const notComparable: { pack: Pack; missing: string }[] = [];
  for (const pack of packsHere(food, shop)) {
    const content = toDimension(pack.content, dimension, food, null);
    const loose = content.ok ? looseOf(pack, content.amount.low, dimension, food, shop) : null;
    if (!content.ok) notComparable.push({ pack, missing: missingText(content.missing) });
    else if (loose !== null && "missing" in loose) notComparable.push({ pack, missing: missingText(loose.missing) });
    else comparable.push({ pack, content: content.amount.low, loose });
  }
  const shelf = latest(comparable);
  return {
    packs: shelf.map(({ pack }) => pack),
    options: shelf.map(({ pack: { price }, content, loose }, index) => ({
      index,
      content,
      price: price !== null && price.currency === shop.currency ? moneyParts(price.amount) : null,
      ...(loose === null ? {} : { loose }),
    })),
    notComparable,
  };
}

/** The currency of a list: the one asked for, else the one most of its foods are priced in (first by code where equal). */
export function currencyFor(foods: readonly Food[], shop: Shop): string | null {
  if (shop.currency !== null) return shop.currency;
  const priced = new Map<string, number>();
  for (const food of foods) {
    const currencies = new Set(packsHere(food, shop).flatMap(({ price }) => (price === null ? [] : [price.currency])));
    for (const currency of currencies) priced.set(currency, (priced.get(currency) ?? 0) + 1);
  }
  if (shop.usualCurrency !== undefined && priced.has(shop.usualCurrency)) return shop.usualCurrency;
  const [first] = [...priced].toSorted(([a, m], [b, n]) => n - m || (a < b ? -1 : 1));
  return first?.[0] ?? null;
}
