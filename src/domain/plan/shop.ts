import { restOf } from "../engine-limits.js";
import { runToEnd, unlimitedWork, type InSlices, type Work } from "../counted-work.js";
import { memoize } from "../memoize.js";
import type { PlanBundle } from "../model/plan.js";
import type { Food, Pack } from "../model/food.js";
import { regionsOf } from "../model/region.js";
import type { Household } from "../model/household.js";
import type { Warning, WarningCode } from "../problem.js";
import { costsOf, type Cost, type LineCost, type PackCount } from "../shopping/cost.js";
import { mergeNeeds, partsOver, type Contribution, type MergedNeed } from "../shopping/merge.js";
import { cachedPackOptions } from "../shopping/cached-pack-options.js";
import { currencyFor, type Shop } from "../shopping/pack-options.js";
import { weighedOut } from "../shopping/loose-goods.js";
import { shoppedAs, withAllPacks } from "../shopping/shopped-as.js";
import { moneyOf } from "../shopping/money.js";
import { choosePacks, paidFor, type PackOption } from "../shopping/packs.js";
import { boughtLater } from "./bought-later.js";
import { contributionsOf, restated, type Restated, type Source } from "./contributions.js";
import { effectiveServings } from "./contents/eaters.js";
import { useFoodStock } from "./food-stock.js";
import { asFrozen, type FoodsToday } from "./review/foods-today.js";
import { lineContext } from "./compile/line-context.js";
import type { ScaledPlan, ShoppingLine, ShoppingList, Use } from "./scaled.js";
import { laterPartWarnings } from "./later-part-warnings.js";

/** What plans say that a reader of the list alone should hear too: what is missing on it, and what is on it all the same. */
const carried: ReadonlySet<WarningCode> = new Set<WarningCode>([
  "NOT_COMBINED",
  "PART_NOT_COUNTED",
  "EDIBLE_PORTION_UNKNOWN",
  "DIET_NOT_MET",
  "ALLERGEN_NOT_AVOIDED",
  "DISLIKE_NOT_AVOIDED",
  "DISLIKE_LEFT_OUT",
  "SWAP_NOT_OFFERED",
]);

/** With the place of the plan in the path where there are several. */
const carriedOver = (plans: readonly ScaledPlan[]): Warning[] =>
  plans.flatMap(({ warnings }, at) =>
    warnings
      .filter(({ code }) => carried.has(code))
      .map((each) => (plans.length > 1 ? { ...each, path: ["plans", at, ...each.path] } : each)),
  );

const useOf = ({ source, part, dimension, low, high }: Contribution<Source>): Use => ({
  bundle: source.scaled.bundle,
  meal: source.meal,
  component: source.component,
  part,
  asWritten: source.line.line.written,
  amount: dimension === null ? null : { dimension, low, high },
  optional: source.line.line.optional,
});

interface Bought {
  readonly buy: readonly PackCount[];
  readonly cost: LineCost;
  readonly warnings: readonly Warning[];
}

/** Lines that are looked at in one turn. */
const linesInTurn = 500;

/** Lines that an entry on hand is compared with in one step. */
const entriesInStep = 4;

/** What is weighed out counts as one pack, with the price the till will ask for it. */
function packCount(pack: Pack, option: PackOption, count: number, currency: string | null): PackCount {
  if (option.loose === undefined) return { pack, count };
  const price = option.price === null || currency === null ? null : moneyOf(paidFor(option, count), currency);
  const weighed = { ...pack, content: weighedOut(option.loose, count), price };
  return { pack: weighed, count: 1, weighedFrom: pack };
}

/** Chooses packs for one line. Without packs the amount itself is what to buy, and its price is not known. */
function buyLine(line: MergedNeed<Source>, toBuy: number, food: Food, shop: Shop, work: Work): Bought {
  const path = ["foods", food.slug];
  const unpriced: Warning = { code: "PRICE_UNKNOWN", path, food: food.slug };
  const unknown = { food: food.slug, atTill: null, usedShare: 0 };
  if (line.dimension === null) return { buy: [], cost: unknown, warnings: [] };
  if (toBuy <= 0) return { buy: [], cost: { food: food.slug, atTill: 0, usedShare: 0 }, warnings: [] };
  const shelf = cachedPackOptions(food, line.dimension, shop);
  const warnings = shelf.notComparable.map(({ pack, missing }): Warning => ({
    code: "PACK_NOT_COMPARABLE",
    path,
    food: food.slug,
    pack: pack.name,
    missing,
  }));
  const choice = choosePacks(toBuy, shelf.options, work);
  if (choice === null) return { buy: [], cost: unknown, warnings: [...warnings, unpriced] };
  const buy: PackCount[] = [];
  for (const [at, count] of choice.counts.entries())
    if (count > 0) buy.push(packCount(shelf.packs[at]!, shelf.options[at]!, count, shop.currency));
  if (choice.price === null) return { buy, cost: unknown, warnings: [...warnings, unpriced] };
  return {
    buy,
    cost: { food: food.slug, atTill: choice.price, usedShare: Math.min(1, toBuy / choice.content) },
    warnings,
  };
}

/** Where nothing that is to be bought has a price, that is said once and not of each food. */
function saidOnce(warnings: readonly Warning[], { atTill, unpriced }: Cost): readonly Warning[] {
  if (atTill !== null || unpriced.length < 2) return warnings;
  const others = warnings.filter(({ code }) => code !== "PRICE_UNKNOWN");
  return others.length === warnings.length ? warnings : [...others, { code: "PRICE_UNKNOWN", path: [], food: null }];
}

/** Components that more than one of the plans makes, each in its own session (docs/decisions/0002). */
function madeTwice(plans: readonly ScaledPlan[]): Warning[] {
  const makers = new Map<string, { readonly component: string; readonly slugs: string[] }>();
  for (const { bundle, components } of plans) {
    for (const { component, batches } of components) {
      if (batches === 0) continue;
      const key = JSON.stringify([bundle.plan.publisher, component.slug]);
      const known = makers.get(key);
      if (known === undefined) makers.set(key, { component: component.slug, slugs: [bundle.plan.slug] });
      else known.slugs.push(bundle.plan.slug);
    }
  }
  return [...makers.values()].flatMap(({ component, slugs }): Warning[] =>
    slugs.length < 2 ? [] : [{ code: "MADE_IN_TWO_PLANS", path: ["components", component], component, plans: slugs }],
  );
}

const hasOwnFoods = memoize(({ foods }: PlanBundle) => foods.some(({ owner }) => owner !== undefined));

/**
 * Foods as the plans froze them. Where two plans froze one food differently and nothing newer is known, which one is taken must
 * not hang on the order of the plans.
 */
function* frozenFoods(plans: readonly ScaledPlan[]): InSlices<ReadonlyMap<string, Food>> {
  const [only, another] = plans;
  if (only !== undefined && another === undefined && !hasOwnFoods(only.bundle)) return lineContext(only.bundle).foods;
  const found = new Map<string, Food>();
  for (const { bundle } of plans) {
    yield;
    for (const food of bundle.foods) {
      const name = shoppedAs(food);
      const known = found.get(name);
      if (known === undefined) found.set(name, food);
      else if (known !== food && isRather(food, known)) found.set(name, food);
    }
  }
  return found;
}

/** What all publishers share goes before what one made of it. */
function isRather(food: Food, known: Food): boolean {
  const [isOwn, wasOwn] = [food.owner !== undefined, known.owner !== undefined];
  return isOwn === wasOwn ? JSON.stringify(known) < JSON.stringify(food) : wasOwn;
}

/**
 * The foods of lines on which publishers' own foods are, by what they are shopped as: the shared food as it is known, or else the
 * one that the plans froze, with the packs of all.
 */
function ownLines(
  plans: readonly ScaledPlan[],
  canonical: FoodsToday["canonical"],
  find: (slug: string) => Food | null,
): ReadonlyMap<string, Food> {
  const groups = new Map<string, Food[]>();
  for (const { bundle } of plans)
    for (const food of hasOwnFoods(bundle) ? bundle.foods : []) {
      if (food.owner === undefined) continue;
      const name = shoppedAs(food, canonical);
      groups.set(name, [...(groups.get(name) ?? []), food]);
    }
  return new Map(
    [...groups].map(([name, foods]): [string, Food] => {
      const [first] = foods.toSorted((a, b) => (JSON.stringify(a) < JSON.stringify(b) ? 1 : -1));
      const isAlone = new Set(foods.map(({ owner, slug }) => `${owner}/${slug}`)).size === 1;
      const usesShared = plans.some(({ bundle }) =>
        bundle.foods.some((food) => food.owner === undefined && canonical(food.slug) === name),
      );
      const known = find(name);
      const base = known?.owner === undefined ? known : null;
      const named = isAlone && !usesShared ? first! : (base ?? first!);
      return [name, withAllPacks(named, foods, base)];
    }),
  );
}

/** Where a household shops; a plan's or publisher's region is only a guess at it. */
function shopOf(household: Household): Shop {
  const { shopsIn, region, currency, usualCurrency } = household;
  return {
    region: shopsIn ?? region,
    currency,
    anywhereElse: regionsOf(household)[0]?.owner !== "READER",
    ...(usualCurrency !== undefined && { usualCurrency }),
  };
}

/**
 * One list for any number of scaled plans: needs merged over all of them, then what is on hand, then whole packs, each
 * rounded once and last. Every line names its uses, which account for its need.
 */
export const shop = (
  plans: readonly ScaledPlan[],
  household: Household,
  today: FoodsToday = asFrozen,
  work: Work = unlimitedWork,
): ShoppingList => runToEnd(shopInSlices(plans, household, today, work));

/** The same turn by turn. */
export function* shopInSlices(
  plans: readonly ScaledPlan[],
  household: Household,
  today: FoodsToday,
  work: Work,
): InSlices<ShoppingList> {
  const frozen = yield* frozenFoods(plans);
  const find = (slug: string): Food | null => today.bySlug.get(slug) ?? frozen.get(slug) ?? null;
  const own = ownLines(plans, today.canonical, find);
  const current = (food: Food): Food =>
    (own.size === 0 ? null : own.get(shoppedAs(food, today.canonical))) ??
    (food.owner === undefined ? (find(today.canonical(food.slug)) ?? find(food.slug)) : null) ??
    food;
  const all: Restated[] = [];
  for (const plan of plans) {
    yield;
    const found = contributionsOf(plan, today.partKeeps);
    work.step(3 * found.length + 1);
    for (const each of found) {
      if (all.length % linesInTurn === 0) yield;
      all.push(restated(each, current(each.food)));
    }
  }
  yield;
  const needs = mergeNeeds(
    all.map(({ contribution }) => contribution),
    today.canonical,
  );
  yield;
  work.step(6 * needs.length + household.onHand.length * (1 + needs.length / entriesInStep));
  const findOnHand = (slug: string): Food | null =>
    find(slug) ?? needs.find(({ food }) => food.slug === slug)?.food ?? null;
  const stock = useFoodStock(needs, household, today.canonical, findOnHand, today.date);
  const place = shopOf(household);
  const currency = currencyFor(
    needs.map(({ food }) => food),
    place,
  );
  const toBuy = needs.map(({ high }, at) => restOf(high, stock.covered[at]!));
  const bought: Bought[] = [];
  const till = { ...place, currency };
  for (const [at, line] of needs.entries()) {
    yield;
    bought.push(buyLine(line, toBuy[at]!, line.food, till, work));
  }
  const servings = plans.reduce((sum, scaled) => sum + effectiveServings(scaled.servings, household), 0);
  const costs = costsOf(
    bought.map(({ cost }) => cost),
    servings,
    currency,
  );
  const lines = needs.map((line, at): ShoppingLine => {
    const { dimension, low, high, food, open, contributions } = line;
    const of = (value: number): ShoppingLine["need"] =>
      dimension === null ? null : { dimension, low: value, high: value };
    return {
      food,
      need: dimension === null ? null : { dimension, low, high },
      onHand: of(stock.covered[at]!),
      toBuy: of(toBuy[at]!),
      buy: bought[at]!.buy,
      cost: costs.lines[at]!,
      uses: contributions.map(useOf),
      partsOver: partsOver(food, contributions),
      open,
    };
  });
  const waiting: Warning[] = [];
  const later: Warning[] = [];
  for (const line of needs) {
    yield;
    waiting.push(...laterPartWarnings(line, plans));
    later.push(...boughtLater(line, plans, today.foodKeeps));
  }
  const warnings = [
    ...carriedOver(plans),
    ...all.flatMap(({ warning }) => (warning === null ? [] : [warning])),
    ...waiting,
    ...later,
    ...stock.warnings,
    ...saidOnce(
      bought.flatMap((each) => each.warnings),
      costs.list,
    ),
    ...(plans.length > 1 ? madeTwice(plans) : []),
  ];
  return { lines, cost: costs.list, warnings };
}
