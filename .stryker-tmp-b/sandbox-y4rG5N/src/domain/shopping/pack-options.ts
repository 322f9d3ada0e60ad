// @ts-nocheck
function stryNS_9fa48() {
  var g = typeof globalThis === 'object' && globalThis && globalThis.Math === Math && globalThis || new Function("return this")();
  var ns = g.__stryker__ || (g.__stryker__ = {});
  if (ns.activeMutant === undefined && g.process && g.process.env && g.process.env.__STRYKER_ACTIVE_MUTANT__) {
    ns.activeMutant = g.process.env.__STRYKER_ACTIVE_MUTANT__;
  }
  function retrieveNS() {
    return ns;
  }
  stryNS_9fa48 = retrieveNS;
  return retrieveNS();
}
stryNS_9fa48();
function stryCov_9fa48() {
  var ns = stryNS_9fa48();
  var cov = ns.mutantCoverage || (ns.mutantCoverage = {
    static: {},
    perTest: {}
  });
  function cover() {
    var c = cov.static;
    if (ns.currentTestId) {
      c = cov.perTest[ns.currentTestId] = cov.perTest[ns.currentTestId] || {};
    }
    var a = arguments;
    for (var i = 0; i < a.length; i++) {
      c[a[i]] = (c[a[i]] || 0) + 1;
    }
  }
  stryCov_9fa48 = cover;
  cover.apply(null, arguments);
}
function stryMutAct_9fa48(id) {
  var ns = stryNS_9fa48();
  function isActive(id) {
    if (ns.activeMutant === id) {
      if (ns.hitCount !== void 0 && ++ns.hitCount > ns.hitLimit) {
        throw new Error('Stryker: Hit count limit reached (' + ns.hitCount + ')');
      }
      return true;
    }
    return false;
  }
  stryMutAct_9fa48 = isActive;
  return isActive(id);
}
import type { Dimension } from "../model/amount.js";
import type { Food, Pack } from "../model/food.js";
import { missingText, toDimension } from "../quantity/convert.js";
import { moneyParts } from "./money.js";
import type { PackOption } from "./packs.js";

/** Where and in what money a household shops. null: anywhere; the currency is then settled by `currencyFor`. */
export interface Shop {
  readonly region: string | null;
  readonly currency: string | null;
}
export interface PackShelf {
  readonly packs: readonly Pack[];
  readonly options: readonly PackOption[];
  /** Packs whose content cannot be turned into the dimension needed, with the missing fact. */
  readonly notComparable: readonly {
    readonly pack: Pack;
    readonly missing: string;
  }[];
}
const soldHere = stryMutAct_9fa48("332") ? () => undefined : (stryCov_9fa48("332"), (() => {
  const soldHere = (pack: Pack, {
    region
  }: Shop): boolean => stryMutAct_9fa48("335") ? (region === null || pack.region === null) && pack.region === region : stryMutAct_9fa48("334") ? false : stryMutAct_9fa48("333") ? true : (stryCov_9fa48("333", "334", "335"), (stryMutAct_9fa48("337") ? region === null && pack.region === null : stryMutAct_9fa48("336") ? false : (stryCov_9fa48("336", "337"), (stryMutAct_9fa48("339") ? region !== null : stryMutAct_9fa48("338") ? false : (stryCov_9fa48("338", "339"), region === null)) || (stryMutAct_9fa48("341") ? pack.region !== null : stryMutAct_9fa48("340") ? false : (stryCov_9fa48("340", "341"), pack.region === null)))) || (stryMutAct_9fa48("343") ? pack.region !== region : stryMutAct_9fa48("342") ? false : (stryCov_9fa48("342", "343"), pack.region === region)));
  return soldHere;
})());
interface Shelved {
  readonly pack: Pack;
  readonly content: number;
}

/** The same pack (a kilogram or 1000 g) seen twice counts as seen last; seen twice on one day, as written last. */
const latest = (packs: readonly Shelved[]): readonly Shelved[] => {
  if (stryMutAct_9fa48("344")) {
    {}
  } else {
    stryCov_9fa48("344");
    const newest = new Map<string, Shelved>();
    for (const shelved of packs) {
      if (stryMutAct_9fa48("345")) {
        {}
      } else {
        stryCov_9fa48("345");
        const {
          name,
          region,
          price,
          seen
        } = shelved.pack;
        const key = JSON.stringify(stryMutAct_9fa48("346") ? [] : (stryCov_9fa48("346"), [name, shelved.content.toPrecision(12), region, stryMutAct_9fa48("347") ? price?.currency && null : (stryCov_9fa48("347"), (stryMutAct_9fa48("348") ? price.currency : (stryCov_9fa48("348"), price?.currency)) ?? null)]));
        const known = newest.get(key);
        if (stryMutAct_9fa48("351") ? known === undefined && known.pack.seen <= seen : stryMutAct_9fa48("350") ? false : stryMutAct_9fa48("349") ? true : (stryCov_9fa48("349", "350", "351"), (stryMutAct_9fa48("353") ? known !== undefined : stryMutAct_9fa48("352") ? false : (stryCov_9fa48("352", "353"), known === undefined)) || (stryMutAct_9fa48("356") ? known.pack.seen > seen : stryMutAct_9fa48("355") ? known.pack.seen < seen : stryMutAct_9fa48("354") ? false : (stryCov_9fa48("354", "355", "356"), known.pack.seen <= seen)))) newest.set(key, shelved);
      }
    }
    return stryMutAct_9fa48("357") ? [] : (stryCov_9fa48("357"), [...newest.values()]);
  }
};

/**
 * The packs of a food on this shop's shelf, with contents in base units of the dimension needed. A price in another currency is
 * no price here. A content that is a range counts on its low end.
 */
export function packShelf(food: Food, dimension: Dimension, shop: Shop): PackShelf {
  if (stryMutAct_9fa48("358")) {
    {}
  } else {
    stryCov_9fa48("358");
    const comparable: Shelved[] = stryMutAct_9fa48("359") ? ["Stryker was here"] : (stryCov_9fa48("359"), []);
    const notComparable: {
      pack: Pack;
      missing: string;
    }[] = stryMutAct_9fa48("360") ? ["Stryker was here"] : (stryCov_9fa48("360"), []);
    for (const pack of food.packs) {
      if (stryMutAct_9fa48("361")) {
        {}
      } else {
        stryCov_9fa48("361");
        if (stryMutAct_9fa48("364") ? false : stryMutAct_9fa48("363") ? true : stryMutAct_9fa48("362") ? soldHere(pack, shop) : (stryCov_9fa48("362", "363", "364"), !soldHere(pack, shop))) continue;
        const content = toDimension(pack.content, dimension, food, null);
        if (stryMutAct_9fa48("366") ? false : stryMutAct_9fa48("365") ? true : (stryCov_9fa48("365", "366"), content.ok)) comparable.push(stryMutAct_9fa48("367") ? {} : (stryCov_9fa48("367"), {
          pack,
          content: content.amount.low
        }));else notComparable.push(stryMutAct_9fa48("368") ? {} : (stryCov_9fa48("368"), {
          pack,
          missing: missingText(content.missing)
        }));
      }
    }
    const shelf = latest(comparable);
    return stryMutAct_9fa48("369") ? {} : (stryCov_9fa48("369"), {
      packs: shelf.map(stryMutAct_9fa48("370") ? () => undefined : (stryCov_9fa48("370"), ({
        pack
      }) => pack)),
      options: shelf.map(stryMutAct_9fa48("371") ? () => undefined : (stryCov_9fa48("371"), ({
        pack: {
          price
        },
        content
      }, index) => stryMutAct_9fa48("372") ? {} : (stryCov_9fa48("372"), {
        index,
        content,
        price: (stryMutAct_9fa48("375") ? price !== null || price.currency === shop.currency : stryMutAct_9fa48("374") ? false : stryMutAct_9fa48("373") ? true : (stryCov_9fa48("373", "374", "375"), (stryMutAct_9fa48("377") ? price === null : stryMutAct_9fa48("376") ? true : (stryCov_9fa48("376", "377"), price !== null)) && (stryMutAct_9fa48("379") ? price.currency !== shop.currency : stryMutAct_9fa48("378") ? true : (stryCov_9fa48("378", "379"), price.currency === shop.currency)))) ? moneyParts(price.amount) : null
      }))),
      notComparable
    });
  }
}

/** The currency of a list: the one asked for, else the one most of its foods are priced in (first by code where equal). */
export function currencyFor(foods: readonly Food[], shop: Shop): string | null {
  if (stryMutAct_9fa48("380")) {
    {}
  } else {
    stryCov_9fa48("380");
    if (stryMutAct_9fa48("383") ? shop.currency === null : stryMutAct_9fa48("382") ? false : stryMutAct_9fa48("381") ? true : (stryCov_9fa48("381", "382", "383"), shop.currency !== null)) return shop.currency;
    const priced = new Map<string, number>();
    for (const food of foods) {
      if (stryMutAct_9fa48("384")) {
        {}
      } else {
        stryCov_9fa48("384");
        const currencies = new Set(stryMutAct_9fa48("385") ? food.packs.flatMap(({
          price
        }) => price === null ? [] : [price.currency]) : (stryCov_9fa48("385"), food.packs.filter(stryMutAct_9fa48("386") ? () => undefined : (stryCov_9fa48("386"), pack => soldHere(pack, shop))).flatMap(stryMutAct_9fa48("387") ? () => undefined : (stryCov_9fa48("387"), ({
          price
        }) => (stryMutAct_9fa48("390") ? price !== null : stryMutAct_9fa48("389") ? false : stryMutAct_9fa48("388") ? true : (stryCov_9fa48("388", "389", "390"), price === null)) ? stryMutAct_9fa48("391") ? ["Stryker was here"] : (stryCov_9fa48("391"), []) : stryMutAct_9fa48("392") ? [] : (stryCov_9fa48("392"), [price.currency])))));
        for (const currency of currencies) priced.set(currency, stryMutAct_9fa48("393") ? (priced.get(currency) ?? 0) - 1 : (stryCov_9fa48("393"), (stryMutAct_9fa48("394") ? priced.get(currency) && 0 : (stryCov_9fa48("394"), priced.get(currency) ?? 0)) + 1));
      }
    }
    const [first] = (stryMutAct_9fa48("395") ? [] : (stryCov_9fa48("395"), [...priced])).toSorted(stryMutAct_9fa48("396") ? () => undefined : (stryCov_9fa48("396"), ([a, m], [b, n]) => stryMutAct_9fa48("399") ? n - m && (a < b ? -1 : 1) : stryMutAct_9fa48("398") ? false : stryMutAct_9fa48("397") ? true : (stryCov_9fa48("397", "398", "399"), (stryMutAct_9fa48("400") ? n + m : (stryCov_9fa48("400"), n - m)) || ((stryMutAct_9fa48("404") ? a >= b : stryMutAct_9fa48("403") ? a <= b : stryMutAct_9fa48("402") ? false : stryMutAct_9fa48("401") ? true : (stryCov_9fa48("401", "402", "403", "404"), a < b)) ? stryMutAct_9fa48("405") ? +1 : (stryCov_9fa48("405"), -1) : 1))));
    return stryMutAct_9fa48("406") ? first?.[0] && null : (stryCov_9fa48("406"), (stryMutAct_9fa48("407") ? first[0] : (stryCov_9fa48("407"), first?.[0])) ?? null);
  }
}