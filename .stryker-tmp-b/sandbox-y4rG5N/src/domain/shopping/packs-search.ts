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
import { sameShare } from "../limits.js";
import { contentGrid, greatestCommonDivisor } from "./packs-grid.js";
import { LabelQueue } from "./packs-queue.js";

/** A pack with a content in base units, > 0, and a price in whole parts of the currency unit, >= 0. */
export interface PricedPack {
  readonly content: number;
  readonly price: number;
}
export interface Cover {
  /** How many of each pack, in the order given. */
  readonly counts: readonly number[];
  /** False only where the search gave up at `mostLabels`. */
  readonly proved: boolean;
}

/** Selections one search looks at before it gives up. Real shelves take some ten; 50 contrived packs some ten thousand. */
export const mostLabels = 100_000;

/** A shortfall that is nothing but the last digits of a double: 800.0000000001 g are covered by 800 g. */
export const coverSlack = stryMutAct_9fa48("500") ? () => undefined : (stryCov_9fa48("500"), (() => {
  const coverSlack = (need: number): number => stryMutAct_9fa48("501") ? Math.max(need * sameShare, 0.01) : (stryCov_9fa48("501"), Math.min(stryMutAct_9fa48("502") ? need / sameShare : (stryCov_9fa48("502"), need * sameShare), 0.01));
  return coverSlack;
})());

/** Room for the last digits of a bound: a bound may be a little too low, never too high. */
const boundSlack = 1e-13;
const tieShare = 1e-12;
interface Best {
  price: number;
  /** 0 for anything up to the slack. */
  waste: number;
  packs: number;
  label: number;
  bulk: number;
}

/** The most content for the money; among equals the largest, so that fewer are carried. */
const bulkOf = stryMutAct_9fa48("503") ? () => undefined : (stryCov_9fa48("503"), (() => {
  const bulkOf = (packs: readonly PricedPack[]): number => packs.reduce((best, pack, at) => {
    if (stryMutAct_9fa48("504")) {
      {}
    } else {
      stryCov_9fa48("504");
      const [mine, theirs] = stryMutAct_9fa48("505") ? [] : (stryCov_9fa48("505"), [stryMutAct_9fa48("506") ? pack.price / packs[best]!.content : (stryCov_9fa48("506"), pack.price * packs[best]!.content), stryMutAct_9fa48("507") ? packs[best]!.price / pack.content : (stryCov_9fa48("507"), packs[best]!.price * pack.content)]);
      return (stryMutAct_9fa48("510") ? mine < theirs && mine === theirs && pack.content > packs[best]!.content : stryMutAct_9fa48("509") ? false : stryMutAct_9fa48("508") ? true : (stryCov_9fa48("508", "509", "510"), (stryMutAct_9fa48("513") ? mine >= theirs : stryMutAct_9fa48("512") ? mine <= theirs : stryMutAct_9fa48("511") ? false : (stryCov_9fa48("511", "512", "513"), mine < theirs)) || (stryMutAct_9fa48("515") ? mine === theirs || pack.content > packs[best]!.content : stryMutAct_9fa48("514") ? false : (stryCov_9fa48("514", "515"), (stryMutAct_9fa48("517") ? mine !== theirs : stryMutAct_9fa48("516") ? true : (stryCov_9fa48("516", "517"), mine === theirs)) && (stryMutAct_9fa48("520") ? pack.content <= packs[best]!.content : stryMutAct_9fa48("519") ? pack.content >= packs[best]!.content : stryMutAct_9fa48("518") ? true : (stryCov_9fa48("518", "519", "520"), pack.content > packs[best]!.content)))))) ? at : best;
    }
  }, 0);
  return bulkOf;
})());

/**
 * Best-first over selections of packs other than the bulk pack, each of which is then filled up with the bulk pack. A label
 * is one selection. Two labels whose contents differ by whole bulk packs can be filled up to the same total, so the dearer
 * (or, where equal, the one of more packs) is dropped unless it is also the smaller: at most a few labels for every
 * remainder of the bulk pack, however large the need.
 */
class CoverSearch {
  private readonly bulk: number;
  private readonly ratio: number;
  private readonly largest: number;
  private readonly grid: readonly number[];
  private readonly gridBulk: number;
  private readonly priceStep: number;
  private readonly others: readonly {
    readonly at: number;
    readonly regret: number;
  }[];
  private readonly target: number;
  private readonly slack: number;
  /** No total comes closer to the need: with 50 g packs, 120 g waste 30 g at least. */
  private readonly leastWaste: number;
  private readonly queue = new LabelQueue();
  private readonly price: number[] = stryMutAct_9fa48("521") ? ["Stryker was here"] : (stryCov_9fa48("521"), []);
  private readonly content: number[] = stryMutAct_9fa48("522") ? ["Stryker was here"] : (stryCov_9fa48("522"), []);
  private readonly count: number[] = stryMutAct_9fa48("523") ? ["Stryker was here"] : (stryCov_9fa48("523"), []);
  private readonly remainder: number[] = stryMutAct_9fa48("524") ? ["Stryker was here"] : (stryCov_9fa48("524"), []);
  private readonly regret: number[] = stryMutAct_9fa48("525") ? ["Stryker was here"] : (stryCov_9fa48("525"), []);
  private readonly parent: number[] = stryMutAct_9fa48("526") ? ["Stryker was here"] : (stryCov_9fa48("526"), []);
  private readonly added: number[] = stryMutAct_9fa48("527") ? ["Stryker was here"] : (stryCov_9fa48("527"), []);
  /** Newest label of each remainder, and the one before it. */
  private readonly newest = new Map<number, number>();
  private readonly older: number[] = stryMutAct_9fa48("528") ? ["Stryker was here"] : (stryCov_9fa48("528"), []);
  private best: Best = stryMutAct_9fa48("529") ? {} : (stryCov_9fa48("529"), {
    price: Infinity,
    waste: Infinity,
    packs: Infinity,
    label: stryMutAct_9fa48("530") ? +1 : (stryCov_9fa48("530"), -1),
    bulk: 0
  });
  constructor(private readonly packs: readonly PricedPack[], private readonly need: number) {
    if (stryMutAct_9fa48("531")) {
      {}
    } else {
      stryCov_9fa48("531");
      this.bulk = bulkOf(packs);
      const {
        price,
        content
      } = packs[this.bulk]!;
      this.ratio = stryMutAct_9fa48("532") ? price * content : (stryCov_9fa48("532"), price / content);
      this.largest = stryMutAct_9fa48("533") ? Math.min(...packs.map(pack => pack.content)) : (stryCov_9fa48("533"), Math.max(...packs.map(stryMutAct_9fa48("534") ? () => undefined : (stryCov_9fa48("534"), pack => pack.content))));
      this.slack = coverSlack(need);
      this.target = stryMutAct_9fa48("535") ? need + this.slack : (stryCov_9fa48("535"), need - this.slack);
      this.grid = contentGrid(packs.map(stryMutAct_9fa48("536") ? () => undefined : (stryCov_9fa48("536"), pack => pack.content)));
      this.gridBulk = this.grid[this.bulk]!;
      const unit = stryMutAct_9fa48("537") ? content * this.gridBulk : (stryCov_9fa48("537"), content / this.gridBulk);
      this.leastWaste = stryMutAct_9fa48("538") ? Math.max(0, Math.ceil(this.target / unit * (1 - boundSlack)) * unit - need) - tieShare * need : (stryCov_9fa48("538"), (stryMutAct_9fa48("539") ? Math.min(0, Math.ceil(this.target / unit * (1 - boundSlack)) * unit - need) : (stryCov_9fa48("539"), Math.max(0, stryMutAct_9fa48("540") ? Math.ceil(this.target / unit * (1 - boundSlack)) * unit + need : (stryCov_9fa48("540"), (stryMutAct_9fa48("541") ? Math.ceil(this.target / unit * (1 - boundSlack)) / unit : (stryCov_9fa48("541"), Math.ceil(stryMutAct_9fa48("542") ? this.target / unit / (1 - boundSlack) : (stryCov_9fa48("542"), (stryMutAct_9fa48("543") ? this.target * unit : (stryCov_9fa48("543"), this.target / unit)) * (stryMutAct_9fa48("544") ? 1 + boundSlack : (stryCov_9fa48("544"), 1 - boundSlack)))) * unit)) - need)))) + (stryMutAct_9fa48("545") ? tieShare / need : (stryCov_9fa48("545"), tieShare * need)));
      this.priceStep = stryMutAct_9fa48("548") ? packs.reduce((step, pack) => greatestCommonDivisor(step, pack.price), 0) && 1 : stryMutAct_9fa48("547") ? false : stryMutAct_9fa48("546") ? true : (stryCov_9fa48("546", "547", "548"), packs.reduce(stryMutAct_9fa48("549") ? () => undefined : (stryCov_9fa48("549"), (step, pack) => greatestCommonDivisor(step, pack.price)), 0) || 1);
      this.others = packs.flatMap(stryMutAct_9fa48("550") ? () => undefined : (stryCov_9fa48("550"), (pack, at) => (stryMutAct_9fa48("553") ? at !== this.bulk : stryMutAct_9fa48("552") ? false : stryMutAct_9fa48("551") ? true : (stryCov_9fa48("551", "552", "553"), at === this.bulk)) ? stryMutAct_9fa48("554") ? ["Stryker was here"] : (stryCov_9fa48("554"), []) : stryMutAct_9fa48("555") ? [] : (stryCov_9fa48("555"), [stryMutAct_9fa48("556") ? {} : (stryCov_9fa48("556"), {
        at,
        regret: this.regretOf(pack)
      })]))).toSorted(stryMutAct_9fa48("557") ? () => undefined : (stryCov_9fa48("557"), (a, b) => stryMutAct_9fa48("560") ? (a.regret - b.regret || packs[b.at]!.content - packs[a.at]!.content) && a.at - b.at : stryMutAct_9fa48("559") ? false : stryMutAct_9fa48("558") ? true : (stryCov_9fa48("558", "559", "560"), (stryMutAct_9fa48("562") ? a.regret - b.regret && packs[b.at]!.content - packs[a.at]!.content : stryMutAct_9fa48("561") ? false : (stryCov_9fa48("561", "562"), (stryMutAct_9fa48("563") ? a.regret + b.regret : (stryCov_9fa48("563"), a.regret - b.regret)) || (stryMutAct_9fa48("564") ? packs[b.at]!.content + packs[a.at]!.content : (stryCov_9fa48("564"), packs[b.at]!.content - packs[a.at]!.content)))) || (stryMutAct_9fa48("565") ? a.at + b.at : (stryCov_9fa48("565"), a.at - b.at)))));
    }
  }

  /** What a pack costs more than the same content of the bulk pack; exactly 0 where that is only the last digits. */
  private regretOf(pack: PricedPack): number {
    if (stryMutAct_9fa48("566")) {
      {}
    } else {
      stryCov_9fa48("566");
      const regret = stryMutAct_9fa48("567") ? pack.price + this.ratio * pack.content : (stryCov_9fa48("567"), pack.price - (stryMutAct_9fa48("568") ? this.ratio / pack.content : (stryCov_9fa48("568"), this.ratio * pack.content)));
      return (stryMutAct_9fa48("572") ? regret > pack.price * tieShare : stryMutAct_9fa48("571") ? regret < pack.price * tieShare : stryMutAct_9fa48("570") ? false : stryMutAct_9fa48("569") ? true : (stryCov_9fa48("569", "570", "571", "572"), regret <= (stryMutAct_9fa48("573") ? pack.price / tieShare : (stryCov_9fa48("573"), pack.price * tieShare)))) ? 0 : regret;
    }
  }

  /** No way of filling up such a selection beats the best cover known. */
  private hopeless(price: number, content: number, count: number): boolean {
    if (stryMutAct_9fa48("574")) {
      {}
    } else {
      stryCov_9fa48("574");
      const {
        best
      } = this;
      const rest = stryMutAct_9fa48("575") ? this.target + content : (stryCov_9fa48("575"), this.target - content);
      const atLeast = stryMutAct_9fa48("576") ? Math.ceil((price + this.ratio * rest) / this.priceStep * (1 - boundSlack)) / this.priceStep : (stryCov_9fa48("576"), Math.ceil(stryMutAct_9fa48("577") ? (price + this.ratio * rest) / this.priceStep / (1 - boundSlack) : (stryCov_9fa48("577"), (stryMutAct_9fa48("578") ? (price + this.ratio * rest) * this.priceStep : (stryCov_9fa48("578"), (stryMutAct_9fa48("579") ? price - this.ratio * rest : (stryCov_9fa48("579"), price + (stryMutAct_9fa48("580") ? this.ratio / rest : (stryCov_9fa48("580"), this.ratio * rest)))) / this.priceStep)) * (stryMutAct_9fa48("581") ? 1 + boundSlack : (stryCov_9fa48("581"), 1 - boundSlack)))) * this.priceStep);
      if (stryMutAct_9fa48("584") ? atLeast === best.price : stryMutAct_9fa48("583") ? false : stryMutAct_9fa48("582") ? true : (stryCov_9fa48("582", "583", "584"), atLeast !== best.price)) return stryMutAct_9fa48("588") ? atLeast <= best.price : stryMutAct_9fa48("587") ? atLeast >= best.price : stryMutAct_9fa48("586") ? false : stryMutAct_9fa48("585") ? true : (stryCov_9fa48("585", "586", "587", "588"), atLeast > best.price);
      return stryMutAct_9fa48("591") ? best.waste <= this.leastWaste || count + Math.ceil(rest / this.largest * (1 - boundSlack)) >= best.packs : stryMutAct_9fa48("590") ? false : stryMutAct_9fa48("589") ? true : (stryCov_9fa48("589", "590", "591"), (stryMutAct_9fa48("594") ? best.waste > this.leastWaste : stryMutAct_9fa48("593") ? best.waste < this.leastWaste : stryMutAct_9fa48("592") ? true : (stryCov_9fa48("592", "593", "594"), best.waste <= this.leastWaste)) && (stryMutAct_9fa48("597") ? count + Math.ceil(rest / this.largest * (1 - boundSlack)) < best.packs : stryMutAct_9fa48("596") ? count + Math.ceil(rest / this.largest * (1 - boundSlack)) > best.packs : stryMutAct_9fa48("595") ? true : (stryCov_9fa48("595", "596", "597"), (stryMutAct_9fa48("598") ? count - Math.ceil(rest / this.largest * (1 - boundSlack)) : (stryCov_9fa48("598"), count + Math.ceil(stryMutAct_9fa48("599") ? rest / this.largest / (1 - boundSlack) : (stryCov_9fa48("599"), (stryMutAct_9fa48("600") ? rest * this.largest : (stryCov_9fa48("600"), rest / this.largest)) * (stryMutAct_9fa48("601") ? 1 + boundSlack : (stryCov_9fa48("601"), 1 - boundSlack)))))) >= best.packs)));
    }
  }
  private dominated(price: number, content: number, count: number, remainder: number): boolean {
    if (stryMutAct_9fa48("602")) {
      {}
    } else {
      stryCov_9fa48("602");
      const bulk = this.packs[this.bulk]!;
      for (let other = stryMutAct_9fa48("603") ? this.newest.get(remainder) && -1 : (stryCov_9fa48("603"), this.newest.get(remainder) ?? (stryMutAct_9fa48("604") ? +1 : (stryCov_9fa48("604"), -1))); stryMutAct_9fa48("607") ? other < 0 : stryMutAct_9fa48("606") ? other > 0 : stryMutAct_9fa48("605") ? false : (stryCov_9fa48("605", "606", "607"), other >= 0); other = this.older[other]!) {
        if (stryMutAct_9fa48("608")) {
          {}
        } else {
          stryCov_9fa48("608");
          const fill = Math.round(stryMutAct_9fa48("609") ? (content - this.content[other]!) * bulk.content : (stryCov_9fa48("609"), (stryMutAct_9fa48("610") ? content + this.content[other]! : (stryCov_9fa48("610"), content - this.content[other]!)) / bulk.content));
          if (stryMutAct_9fa48("614") ? fill >= 0 : stryMutAct_9fa48("613") ? fill <= 0 : stryMutAct_9fa48("612") ? false : stryMutAct_9fa48("611") ? true : (stryCov_9fa48("611", "612", "613", "614"), fill < 0)) continue;
          const dearer = stryMutAct_9fa48("615") ? price - this.price[other]! + fill * bulk.price : (stryCov_9fa48("615"), (stryMutAct_9fa48("616") ? price + this.price[other]! : (stryCov_9fa48("616"), price - this.price[other]!)) - (stryMutAct_9fa48("617") ? fill / bulk.price : (stryCov_9fa48("617"), fill * bulk.price)));
          if (stryMutAct_9fa48("620") ? dearer > 0 && dearer === 0 && count >= this.count[other]! + fill : stryMutAct_9fa48("619") ? false : stryMutAct_9fa48("618") ? true : (stryCov_9fa48("618", "619", "620"), (stryMutAct_9fa48("623") ? dearer <= 0 : stryMutAct_9fa48("622") ? dearer >= 0 : stryMutAct_9fa48("621") ? false : (stryCov_9fa48("621", "622", "623"), dearer > 0)) || (stryMutAct_9fa48("625") ? dearer === 0 || count >= this.count[other]! + fill : stryMutAct_9fa48("624") ? false : (stryCov_9fa48("624", "625"), (stryMutAct_9fa48("627") ? dearer !== 0 : stryMutAct_9fa48("626") ? true : (stryCov_9fa48("626", "627"), dearer === 0)) && (stryMutAct_9fa48("630") ? count < this.count[other]! + fill : stryMutAct_9fa48("629") ? count > this.count[other]! + fill : stryMutAct_9fa48("628") ? true : (stryCov_9fa48("628", "629", "630"), count >= (stryMutAct_9fa48("631") ? this.count[other]! - fill : (stryCov_9fa48("631"), this.count[other]! + fill)))))))) return stryMutAct_9fa48("632") ? false : (stryCov_9fa48("632"), true);
        }
      }
      return stryMutAct_9fa48("633") ? true : (stryCov_9fa48("633"), false);
    }
  }
  private keepIfBetter(label: number): void {
    if (stryMutAct_9fa48("634")) {
      {}
    } else {
      stryCov_9fa48("634");
      const bulk = this.packs[this.bulk]!;
      const fill = stryMutAct_9fa48("635") ? Math.min(0, Math.ceil((this.target - this.content[label]!) / bulk.content)) : (stryCov_9fa48("635"), Math.max(0, Math.ceil(stryMutAct_9fa48("636") ? (this.target - this.content[label]!) * bulk.content : (stryCov_9fa48("636"), (stryMutAct_9fa48("637") ? this.target + this.content[label]! : (stryCov_9fa48("637"), this.target - this.content[label]!)) / bulk.content))));
      const price = stryMutAct_9fa48("638") ? this.price[label]! - fill * bulk.price : (stryCov_9fa48("638"), this.price[label]! + (stryMutAct_9fa48("639") ? fill / bulk.price : (stryCov_9fa48("639"), fill * bulk.price)));
      const {
        best
      } = this;
      if (stryMutAct_9fa48("643") ? price <= best.price : stryMutAct_9fa48("642") ? price >= best.price : stryMutAct_9fa48("641") ? false : stryMutAct_9fa48("640") ? true : (stryCov_9fa48("640", "641", "642", "643"), price > best.price)) return;
      const over = stryMutAct_9fa48("644") ? this.content[label]! + fill * bulk.content + this.need : (stryCov_9fa48("644"), (stryMutAct_9fa48("645") ? this.content[label]! - fill * bulk.content : (stryCov_9fa48("645"), this.content[label]! + (stryMutAct_9fa48("646") ? fill / bulk.content : (stryCov_9fa48("646"), fill * bulk.content)))) - this.need);
      const waste = (stryMutAct_9fa48("650") ? over > this.slack : stryMutAct_9fa48("649") ? over < this.slack : stryMutAct_9fa48("648") ? false : stryMutAct_9fa48("647") ? true : (stryCov_9fa48("647", "648", "649", "650"), over <= this.slack)) ? 0 : over;
      const packs = stryMutAct_9fa48("651") ? this.count[label]! - fill : (stryCov_9fa48("651"), this.count[label]! + fill);
      if (stryMutAct_9fa48("654") ? price !== best.price : stryMutAct_9fa48("653") ? false : stryMutAct_9fa48("652") ? true : (stryCov_9fa48("652", "653", "654"), price === best.price)) {
        if (stryMutAct_9fa48("655")) {
          {}
        } else {
          stryCov_9fa48("655");
          const more = stryMutAct_9fa48("656") ? waste + best.waste : (stryCov_9fa48("656"), waste - best.waste);
          const equal = stryMutAct_9fa48("660") ? Math.abs(more) > tieShare * this.need : stryMutAct_9fa48("659") ? Math.abs(more) < tieShare * this.need : stryMutAct_9fa48("658") ? false : stryMutAct_9fa48("657") ? true : (stryCov_9fa48("657", "658", "659", "660"), Math.abs(more) <= (stryMutAct_9fa48("661") ? tieShare / this.need : (stryCov_9fa48("661"), tieShare * this.need)));
          if (stryMutAct_9fa48("663") ? false : stryMutAct_9fa48("662") ? true : (stryCov_9fa48("662", "663"), equal ? stryMutAct_9fa48("667") ? packs < best.packs : stryMutAct_9fa48("666") ? packs > best.packs : stryMutAct_9fa48("665") ? false : stryMutAct_9fa48("664") ? true : (stryCov_9fa48("664", "665", "666", "667"), packs >= best.packs) : stryMutAct_9fa48("671") ? more <= 0 : stryMutAct_9fa48("670") ? more >= 0 : stryMutAct_9fa48("669") ? false : stryMutAct_9fa48("668") ? true : (stryCov_9fa48("668", "669", "670", "671"), more > 0))) return;
        }
      }
      this.best = stryMutAct_9fa48("672") ? {} : (stryCov_9fa48("672"), {
        price,
        waste,
        packs,
        label,
        bulk: fill
      });
    }
  }
  private addLabel(parent: number, at: number, regret: number): void {
    if (stryMutAct_9fa48("673")) {
      {}
    } else {
      stryCov_9fa48("673");
      const pack = (stryMutAct_9fa48("677") ? at >= 0 : stryMutAct_9fa48("676") ? at <= 0 : stryMutAct_9fa48("675") ? false : stryMutAct_9fa48("674") ? true : (stryCov_9fa48("674", "675", "676", "677"), at < 0)) ? stryMutAct_9fa48("678") ? {} : (stryCov_9fa48("678"), {
        price: 0,
        content: 0
      }) : this.packs[at]!;
      const price = stryMutAct_9fa48("679") ? (this.price[parent] ?? 0) - pack.price : (stryCov_9fa48("679"), (stryMutAct_9fa48("680") ? this.price[parent] && 0 : (stryCov_9fa48("680"), this.price[parent] ?? 0)) + pack.price);
      const content = stryMutAct_9fa48("681") ? (this.content[parent] ?? 0) - pack.content : (stryCov_9fa48("681"), (stryMutAct_9fa48("682") ? this.content[parent] && 0 : (stryCov_9fa48("682"), this.content[parent] ?? 0)) + pack.content);
      const count = (stryMutAct_9fa48("686") ? at >= 0 : stryMutAct_9fa48("685") ? at <= 0 : stryMutAct_9fa48("684") ? false : stryMutAct_9fa48("683") ? true : (stryCov_9fa48("683", "684", "685", "686"), at < 0)) ? 0 : stryMutAct_9fa48("687") ? this.count[parent]! - 1 : (stryCov_9fa48("687"), this.count[parent]! + 1);
      const remainder = (stryMutAct_9fa48("691") ? at >= 0 : stryMutAct_9fa48("690") ? at <= 0 : stryMutAct_9fa48("689") ? false : stryMutAct_9fa48("688") ? true : (stryCov_9fa48("688", "689", "690", "691"), at < 0)) ? 0 : stryMutAct_9fa48("692") ? (this.remainder[parent]! + this.grid[at]!) * this.gridBulk : (stryCov_9fa48("692"), (stryMutAct_9fa48("693") ? this.remainder[parent]! - this.grid[at]! : (stryCov_9fa48("693"), this.remainder[parent]! + this.grid[at]!)) % this.gridBulk);
      if (stryMutAct_9fa48("695") ? false : stryMutAct_9fa48("694") ? true : (stryCov_9fa48("694", "695"), this.dominated(price, content, count, remainder))) return;
      const label = this.price.length;
      this.price.push(price);
      this.content.push(content);
      this.count.push(count);
      this.remainder.push(remainder);
      this.regret.push(regret);
      this.parent.push(parent);
      this.added.push(at);
      this.older.push(stryMutAct_9fa48("696") ? this.newest.get(remainder) && -1 : (stryCov_9fa48("696"), this.newest.get(remainder) ?? (stryMutAct_9fa48("697") ? +1 : (stryCov_9fa48("697"), -1))));
      this.newest.set(remainder, label);
      this.keepIfBetter(label);
      if (stryMutAct_9fa48("701") ? content >= this.target : stryMutAct_9fa48("700") ? content <= this.target : stryMutAct_9fa48("699") ? false : stryMutAct_9fa48("698") ? true : (stryCov_9fa48("698", "699", "700", "701"), content < this.target)) this.queue.push(label, regret, stryMutAct_9fa48("702") ? count + content / this.packs[this.bulk]!.content : (stryCov_9fa48("702"), count - (stryMutAct_9fa48("703") ? content * this.packs[this.bulk]!.content : (stryCov_9fa48("703"), content / this.packs[this.bulk]!.content))));
    }
  }
  private addPacksTo(label: number): void {
    if (stryMutAct_9fa48("704")) {
      {}
    } else {
      stryCov_9fa48("704");
      for (const {
        at,
        regret
      } of this.others) {
        if (stryMutAct_9fa48("705")) {
          {}
        } else {
          stryCov_9fa48("705");
          const sum = stryMutAct_9fa48("706") ? this.regret[label]! - regret : (stryCov_9fa48("706"), this.regret[label]! + regret);
          if (stryMutAct_9fa48("710") ? (this.ratio * this.target + sum) * (1 - boundSlack) <= this.best.price : stryMutAct_9fa48("709") ? (this.ratio * this.target + sum) * (1 - boundSlack) >= this.best.price : stryMutAct_9fa48("708") ? false : stryMutAct_9fa48("707") ? true : (stryCov_9fa48("707", "708", "709", "710"), (stryMutAct_9fa48("711") ? (this.ratio * this.target + sum) / (1 - boundSlack) : (stryCov_9fa48("711"), (stryMutAct_9fa48("712") ? this.ratio * this.target - sum : (stryCov_9fa48("712"), (stryMutAct_9fa48("713") ? this.ratio / this.target : (stryCov_9fa48("713"), this.ratio * this.target)) + sum)) * (stryMutAct_9fa48("714") ? 1 + boundSlack : (stryCov_9fa48("714"), 1 - boundSlack)))) > this.best.price)) break;
          const pack = this.packs[at]!;
          const filled = stryMutAct_9fa48("715") ? Math.max(this.target, this.content[label]! + pack.content) : (stryCov_9fa48("715"), Math.min(this.target, stryMutAct_9fa48("716") ? this.content[label]! - pack.content : (stryCov_9fa48("716"), this.content[label]! + pack.content)));
          if (stryMutAct_9fa48("719") ? false : stryMutAct_9fa48("718") ? true : stryMutAct_9fa48("717") ? this.hopeless(this.price[label]! + pack.price, filled, this.count[label]! + 1) : (stryCov_9fa48("717", "718", "719"), !this.hopeless(stryMutAct_9fa48("720") ? this.price[label]! - pack.price : (stryCov_9fa48("720"), this.price[label]! + pack.price), filled, stryMutAct_9fa48("721") ? this.count[label]! - 1 : (stryCov_9fa48("721"), this.count[label]! + 1)))) this.addLabel(label, at, sum);
        }
      }
    }
  }
  run(): Cover {
    if (stryMutAct_9fa48("722")) {
      {}
    } else {
      stryCov_9fa48("722");
      this.addLabel(stryMutAct_9fa48("723") ? +1 : (stryCov_9fa48("723"), -1), stryMutAct_9fa48("724") ? +1 : (stryCov_9fa48("724"), -1), 0);
      let label = this.queue.pop();
      while (stryMutAct_9fa48("726") ? label !== null || this.price.length <= mostLabels : stryMutAct_9fa48("725") ? false : (stryCov_9fa48("725", "726"), (stryMutAct_9fa48("728") ? label === null : stryMutAct_9fa48("727") ? true : (stryCov_9fa48("727", "728"), label !== null)) && (stryMutAct_9fa48("731") ? this.price.length > mostLabels : stryMutAct_9fa48("730") ? this.price.length < mostLabels : stryMutAct_9fa48("729") ? true : (stryCov_9fa48("729", "730", "731"), this.price.length <= mostLabels)))) {
        if (stryMutAct_9fa48("732")) {
          {}
        } else {
          stryCov_9fa48("732");
          if (stryMutAct_9fa48("735") ? false : stryMutAct_9fa48("734") ? true : stryMutAct_9fa48("733") ? this.hopeless(this.price[label]!, this.content[label]!, this.count[label]!) : (stryCov_9fa48("733", "734", "735"), !this.hopeless(this.price[label]!, this.content[label]!, this.count[label]!))) this.addPacksTo(label);
          label = this.queue.pop();
        }
      }
      return stryMutAct_9fa48("736") ? {} : (stryCov_9fa48("736"), {
        counts: this.counts(),
        proved: stryMutAct_9fa48("739") ? label !== null : stryMutAct_9fa48("738") ? false : stryMutAct_9fa48("737") ? true : (stryCov_9fa48("737", "738", "739"), label === null)
      });
    }
  }
  private counts(): readonly number[] {
    if (stryMutAct_9fa48("740")) {
      {}
    } else {
      stryCov_9fa48("740");
      const counts = this.packs.map(stryMutAct_9fa48("741") ? () => undefined : (stryCov_9fa48("741"), (_, at) => (stryMutAct_9fa48("744") ? at !== this.bulk : stryMutAct_9fa48("743") ? false : stryMutAct_9fa48("742") ? true : (stryCov_9fa48("742", "743", "744"), at === this.bulk)) ? this.best.bulk : 0));
      for (let label = this.best.label; stryMutAct_9fa48("747") ? label <= 0 : stryMutAct_9fa48("746") ? label >= 0 : stryMutAct_9fa48("745") ? false : (stryCov_9fa48("745", "746", "747"), label > 0); label = this.parent[label]!) stryMutAct_9fa48("748") ? counts[this.added[label]!]! -= 1 : (stryCov_9fa48("748"), counts[this.added[label]!]! += 1);
      return counts;
    }
  }
}

/**
 * The cheapest cover of an amount by whole packs; among equals the least waste, then the fewest packs, then a fixed choice
 * that depends on nothing but the packs' order. Exact (Gomory's group relaxation of the knapsack cover, with the bound on
 * what the rest must cost), unless `proved` is false.
 *
 * @param need base units, > 0 and finite
 * @param packs at least one
 */
export function cheapestCover(need: number, packs: readonly PricedPack[]): Cover {
  if (stryMutAct_9fa48("749")) {
    {}
  } else {
    stryCov_9fa48("749");
    const [only, another] = packs;
    // Most shelves hold one pack worth having, and then there is nothing to search.
    if (stryMutAct_9fa48("752") ? only !== undefined || another === undefined : stryMutAct_9fa48("751") ? false : stryMutAct_9fa48("750") ? true : (stryCov_9fa48("750", "751", "752"), (stryMutAct_9fa48("754") ? only === undefined : stryMutAct_9fa48("753") ? true : (stryCov_9fa48("753", "754"), only !== undefined)) && (stryMutAct_9fa48("756") ? another !== undefined : stryMutAct_9fa48("755") ? true : (stryCov_9fa48("755", "756"), another === undefined)))) {
      if (stryMutAct_9fa48("757")) {
        {}
      } else {
        stryCov_9fa48("757");
        return stryMutAct_9fa48("758") ? {} : (stryCov_9fa48("758"), {
          counts: stryMutAct_9fa48("759") ? [] : (stryCov_9fa48("759"), [Math.ceil(stryMutAct_9fa48("760") ? (need - coverSlack(need)) * only.content : (stryCov_9fa48("760"), (stryMutAct_9fa48("761") ? need + coverSlack(need) : (stryCov_9fa48("761"), need - coverSlack(need))) / only.content))]),
          proved: stryMutAct_9fa48("762") ? false : (stryCov_9fa48("762"), true)
        });
      }
    }
    return new CoverSearch(packs, need).run();
  }
}