import type { AllergenPresence } from "../model/food.js";
import { inForceOn, regionCovers } from "../model/region.js";
import type { AllergenEntry, AllergenList, AllergenRules } from "./allergen-rules.js";
import { presenceOf, presenceOfAny, presenceOrder, type AllergenFood } from "./presence.js";

/** One allergen of a list, over all the foods. */
export interface AllergenFinding {
  readonly code: string;
  readonly name: string;
  /** CONTAINS if any food does, then MAY_CONTAIN, then UNKNOWN; DOES_NOT_CONTAIN only if every food is known not to. */
  readonly presence: AllergenPresence;
  /** Slugs of the foods behind each value, each food once. */
  readonly contains: readonly string[];
  readonly mayContain: readonly string[];
  readonly unknown: readonly string[];
  /** The codes that were found: `["walnut"]` for tree nuts. */
  readonly found: readonly string[];
  readonly threshold: string | null;
}

export interface AllergenStatement {
  /** The lists it answers to. Several, when no region was named or the named one has no list here. */
  readonly lists: readonly Pick<AllergenList, "id" | "region" | "law">[];
  readonly asked: string | null;
  /** REGION_NOT_GIVEN and REGION_WITHOUT_LIST: everything on any list in force. */
  readonly reach: "REGION" | "REGION_NOT_GIVEN" | "REGION_WITHOUT_LIST";
  readonly findings: readonly AllergenFinding[];
  /** Contained, and on none of these lists (coconut in the US since 2025). */
  readonly alsoContains: readonly { readonly code: string; readonly foods: readonly string[] }[];
}

/** The lists in force on an ISO date for a region; all of them where the region is null or has none. */
export function allergenListsFor(rules: Pick<AllergenRules, "lists">, region: string | null, date: string) {
  const inForce = rules.lists.filter((list) => inForceOn(list, date));
  const here = region === null ? [] : inForce.filter((list) => regionCovers(list.region, region));
  if (here.length > 0) return { lists: here, reach: "REGION" as const };
  const reach = region === null ? ("REGION_NOT_GIVEN" as const) : ("REGION_WITHOUT_LIST" as const);
  return { lists: inForce, reach };
}

/**
 * What a dish of these foods contains, may contain, does not contain, and of what nobody knows, after the lists of a
 * region on an ISO date. Unknown spreads: one food without a statement keeps the dish from being without it.
 * "May contain" comes only from a food's own data. No foods: nothing is known.
 */
export function allergenStatement(
  foods: readonly AllergenFood[],
  rules: Pick<AllergenRules, "lists">,
  region: string | null,
  date: string,
): AllergenStatement {
  const { lists, reach, entries, known } = inForceFor(rules, region, date);
  return {
    lists: lists.map(({ id, region: of, law }) => ({ id, region: of, law })),
    asked: region,
    reach,
    findings: entries.map((entry) => finding(entry, foods)),
    alsoContains: beyond(foods, known),
  };
}

interface InForce {
  readonly lists: readonly AllergenList[];
  readonly reach: AllergenStatement["reach"];
  readonly entries: readonly AllergenEntry[];
  /** Every code on any of the lists. */
  readonly known: ReadonlySet<string>;
}

/** What was asked for last: a plan and each of its meals ask the same, and so do most readers of a day. */
const lastInForce = new WeakMap<
  Pick<AllergenRules, "lists">["lists"],
  { readonly key: string; readonly found: InForce }
>();

function inForceFor(rules: Pick<AllergenRules, "lists">, region: string | null, date: string): InForce {
  const key = JSON.stringify([region, date]);
  const last = lastInForce.get(rules.lists);
  if (last?.key === key) return last.found;
  const { lists, reach } = allergenListsFor(rules, region, date);
  const entries = mergedEntries(lists);
  const known = new Set(entries.flatMap(({ code, includes }) => [code, ...includes]));
  const found: InForce = { lists, reach, entries, known };
  lastInForce.set(rules.lists, { key, found });
  return found;
}

/** Entries of several lists as one: the same code once, with all that either list counts under it. */
function mergedEntries(lists: readonly AllergenList[]): readonly AllergenEntry[] {
  const byCode = new Map<string, AllergenEntry>();
  for (const entry of lists.flatMap((list) => list.entries)) {
    const before = byCode.get(entry.code);
    const includes = [...new Set([...(before?.includes ?? []), ...entry.includes])];
    // Two laws, two thresholds: any amount is the stricter.
    const threshold = before === undefined || before.threshold === entry.threshold ? entry.threshold : null;
    byCode.set(entry.code, { ...(before ?? entry), includes, threshold });
  }
  return [...byCode.values()];
}

const slugsOf = (foods: readonly AllergenFood[]): readonly string[] => [...new Set(foods.map(({ slug }) => slug))];

function finding(entry: AllergenEntry, foods: readonly AllergenFood[]): AllergenFinding {
  const by: Readonly<Record<AllergenPresence, AllergenFood[]>> = {
    CONTAINS: [],
    MAY_CONTAIN: [],
    UNKNOWN: [],
    DOES_NOT_CONTAIN: [],
  };
  for (const food of foods) by[presenceOfAny(food, entry.includes)].push(food);
  return {
    code: entry.code,
    name: entry.name,
    presence: presenceOrder.find((presence) => by[presence].length > 0) ?? "UNKNOWN",
    contains: slugsOf(by.CONTAINS),
    mayContain: slugsOf(by.MAY_CONTAIN),
    unknown: slugsOf(by.UNKNOWN),
    found: entry.includes.filter((code) => by.CONTAINS.some((food) => presenceOf(food, code) === "CONTAINS")),
    threshold: entry.threshold,
  };
}

function beyond(foods: readonly AllergenFood[], known: ReadonlySet<string>): AllergenStatement["alsoContains"] {
  const contained = foods.flatMap(({ slug, allergens }) =>
    allergens.flatMap(({ code, presence }) => (presence === "CONTAINS" && !known.has(code) ? [{ code, slug }] : [])),
  );
  return [...new Set(contained.map(({ code }) => code))].map((code) => ({
    code,
    foods: [...new Set(contained.filter((one) => one.code === code).map(({ slug }) => slug))],
  }));
}
