import type { Household } from "../../domain/model/household.js";
import type { PlanBundle } from "../../domain/model/plan.js";
import { askedRegion, ruledRegion, type OwnedRegion } from "../../domain/model/region.js";
import { memoize } from "../../domain/memoize.js";
import type { RuleSet } from "../../domain/plan/compile/rule-set.js";
import type { Deps, Publisher } from "../deps.js";
import { findPublishers } from "../access/find-publishers.js";

export { noHousehold } from "../../domain/model/household.js";

/** Reads publishers by slug, in the order asked for; null where there is none. */
export type PublisherReader = (slugs: readonly string[]) => Promise<readonly (Publisher | null)[]>;

export const publisherReader =
  (deps: Deps): PublisherReader =>
  (slugs) =>
    findPublishers(deps, slugs);

/** Every region that a rule of the set speaks of. */
const ruledBy = memoize(({ keeping, handling }: RuleSet["safety"]) =>
  memoize(({ lists, diets, claims }: RuleSet["allergens"]): ReadonlySet<string> => {
    const breaks = diets.flatMap((diet) => diet.breaks.flatMap(({ region }) => region ?? []));
    return new Set([...[...keeping, ...handling, ...lists, ...claims].map(({ region }) => region), ...breaks]);
  }),
);

/**
 * Where the answer for a household is to hold: the reader's own region goes before that of the plans, that before their
 * publishers', and the same for the currency. Parts of countries of which no rule speaks become their country here, before
 * anything is computed or kept. Several plans have a region together only where they agree.
 */
export async function resolveRegion(
  household: Household,
  bundles: readonly PlanBundle[],
  { safety, allergens }: RuleSet,
  readPublishers: PublisherReader,
): Promise<Household> {
  const slugs = [...new Set(bundles.map(({ plan }) => plan.publisher))];
  const publishers = await readPublishers(slugs);
  const ruled = ruledBy(safety)(allergens);
  const own = askedRegion(household);
  const given: readonly (readonly [OwnedRegion["owner"], string | null])[] = [
    ["READER", own],
    ["PLAN", agreed(bundles.map(({ plan }) => plan.region ?? null))],
    ["PUBLISHER", agreed(publishers.map((publisher) => publisher?.region ?? null))],
  ];
  const regions = given.flatMap(([owner, region]): OwnedRegion[] =>
    region === null ? [] : [{ owner, region: ruledRegion(region, ruled) }],
  );
  // A plan for another country than its publisher's is not priced in its publisher's money.
  const priced = own === null && (regions.length < 2 || regions[0]?.region === regions[1]?.region);
  const currencyOf = new Map(publishers.map((publisher, at) => [slugs[at], publisher?.currency ?? null]));
  const usualCurrency =
    own === null
      ? agreed(bundles.map(({ plan }) => plan.currency ?? (priced ? (currencyOf.get(plan.publisher) ?? null) : null)))
      : null;
  return {
    ...household,
    region: regions[0]?.region ?? null,
    regions,
    ...(own !== null && { shopsIn: own }),
    ...(usualCurrency !== null && { usualCurrency }),
  };
}

/** What all say alike; null where one says nothing or another thing. */
function agreed(said: readonly (string | null)[]): string | null {
  const [first = null, ...others] = new Set(said);
  return others.length === 0 ? first : null;
}
