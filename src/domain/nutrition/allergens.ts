import { runToEnd, unlimitedWork, type InSlices, type Work } from "../counted-work.js";
import { inForceOn, regionCovers, type RegionOwner } from "../model/region.js";
import { allergenFinding, type AllergenFinding } from "./allergen-finding.js";
import type { AllergenEntry, AllergenList, AllergenRules } from "./allergen-rules.js";
import { unlistedAllergens, type UnlistedAllergen } from "./unlisted-allergens.js";
import type { AllergenFood } from "./allergen-claims.js";

export type { AllergenFinding } from "./allergen-finding.js";

/** A food whose label is to be looked at, and for what. */
export interface LabelToRead {
  readonly food: string;
  /** Codes of the allergens, those left out that the dish contains anyway. */
  readonly allergens: readonly string[];
}

export interface AllergenStatement {
  /** The lists it answers to. Several, when no region was named or the named one has no list here. */
  readonly lists: readonly Pick<AllergenList, "id" | "region" | "law">[];
  readonly asked: string | null;
  /** Who named the region whose lists were used; null: nobody. */
  readonly whose?: RegionOwner | null;
  /** REGION_NOT_GIVEN and REGION_WITHOUT_LIST: everything on any list in force. */
  readonly reach: "REGION" | "REGION_NOT_GIVEN" | "REGION_WITHOUT_LIST";
  readonly findings: readonly AllergenFinding[];
  /** What is not known as an ingredient, by food. */
  readonly labelsToRead: readonly LabelToRead[];
  /** Contained, and on none of these lists (coconut in the US since 2025). */
  readonly alsoContains: readonly UnlistedAllergen[];
}

/** The lists in force on an ISO date for a region; all of them where the region is null or has none. */
function allergenListsFor(rules: Pick<AllergenRules, "lists">, region: string | null, date: string) {
  const inForce = rules.lists.filter((list) => inForceOn(list, date));
  const here = region === null ? [] : inForce.filter((list) => regionCovers(list.region, region));
  if (here.length > 0) return { lists: here, reach: "REGION" as const };
  const reach = region === null ? ("REGION_NOT_GIVEN" as const) : ("REGION_WITHOUT_LIST" as const);
  return { lists: inForce, reach };
}

/**
 * What a dish of these foods contains, may contain, does not contain, and of what nobody knows, after the lists of a
 * region on an ISO date. Unknown spreads: one food without a statement keeps the dish from being without it. As an ingredient
 * something is also absent where that follows from a diet or from the food's nature; of traces only a statement counts.
 * "May contain" comes only from a food's own data. No foods: nothing is known.
 */
export const allergenStatement = (
  foods: readonly AllergenFood[],
  rules: Pick<AllergenRules, "lists" | "diets">,
  region: string | null,
  date: string,
): AllergenStatement => runToEnd(allergenStatementInSlices(foods, rules, region, date, unlimitedWork));

/** Steps in which one food is held against one entry of a list. */
const stepsOfFood = 2;

/** The same turn by turn. */
export function* allergenStatementInSlices(
  foods: readonly AllergenFood[],
  rules: Pick<AllergenRules, "lists" | "diets">,
  region: string | null,
  date: string,
  work: Work,
): InSlices<AllergenStatement> {
  const { lists, reach, entries, known } = inForceFor(rules, region, date);
  const findings: AllergenFinding[] = [];
  for (const entry of entries) {
    yield;
    work.step(stepsOfFood * foods.length);
    findings.push(allergenFinding(entry, foods, rules.diets));
  }
  return {
    lists: lists.map(({ id, region: of, law }) => ({ id, region: of, law })),
    asked: region,
    reach,
    findings,
    labelsToRead: labelsToRead(findings),
    alsoContains: unlistedAllergens(foods, known),
  };
}

/** Of what the dish contains anyway no label needs to be read. */
function labelsToRead(findings: readonly AllergenFinding[]): readonly LabelToRead[] {
  const byFood = new Map<string, string[]>();
  for (const { code, presence, asIngredient } of findings) {
    if (presence === "CONTAINS") continue;
    for (const food of asIngredient.unknown) byFood.set(food, [...(byFood.get(food) ?? []), code]);
  }
  return [...byFood].map(([food, allergens]) => ({ food, allergens }));
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
