import type { PublishedKeepingRule, RuleAudience, StoragePlace } from "../model/keeping.js";
import { inForceOn, regionCovers, regionsOf, type RegionOwner, type Regions } from "../model/region.js";
import { classesAround, isKeepingClass } from "./keeping-classes.js";
import type { KeepingRules } from "./rule.js";
import { lastingDays, plannedSpan } from "./keeping-window.js";

/** Whose rules are asked for. */
interface RuleScope extends Regions {
  readonly audience: Exclude<RuleAudience, "ANY">;
  /** ISO date on which the rules must be in force. */
  readonly date: string;
}

/**
 * How far one had to look: rules of the nearest region, of all regions because none was named, of a further one or of all
 * because the nearest has none, or also those written for other kitchens.
 */
export type RuleReach = "REGION" | "REGION_NOT_GIVEN" | "REGION_WITHOUT_RULE" | "OTHER_AUDIENCE";

/** A published rule that holds for a class of food. */
export interface Ceiling {
  readonly rule: PublishedKeepingRule;
  readonly byAnalogy: boolean;
  readonly reach: RuleReach;
  /** Whose region it holds in; null: the rules of all regions stand in. */
  readonly whose: RegionOwner | null;
}

/**
 * The published rules that hold for a class of food at a place: those in force, of the class and of every wider one. The reader's
 * region goes first, then the plan's, then its publisher's. A narrower class beats a wider one of another region where it is
 * stricter. A region without a rule is not a region without a limit: then the
 * rules of all regions stand in, and after them those for other kitchens. Leaving a region out therefore never makes an answer
 * longer. A class that the set does not know is read as the strictest of all at that place, never as one without a limit.
 */
export function ceilingsFor(
  { keeping, classes }: KeepingRules,
  keepsAs: string,
  place: StoragePlace,
  scope: RuleScope,
): readonly Ceiling[] {
  if (!isKeepingClass(keepsAs, classes)) return ofAnyClass({ keeping, classes }, place, scope);
  const around = classesAround(keepsAs, classes);
  return ofClasses(keeping, new Map(around.map(({ code, throughAnalogy }) => [code, throughAnalogy])), place, scope);
}

/** For food that may be of any class: the strictest of all of them, wherever it was published. */
function ofAnyClass({ keeping, classes }: KeepingRules, place: StoragePlace, scope: RuleScope): readonly Ceiling[] {
  const { audience, date } = scope;
  const anywhere = { region: null, audience, date };
  const found = ofClasses(keeping, new Map(classes.map(({ code }) => [code, true])), place, anywhere);
  const asked = regionsOf(scope).length > 0;
  return strictestOf(asked ? found.map((ceiling) => ({ ...ceiling, reach: "REGION_WITHOUT_RULE" })) : found);
}

/** Of each purpose the rule that ends first: all rules of all classes would tell a reader nothing. */
const strictestOf = (ceilings: readonly Ceiling[]): readonly Ceiling[] =>
  (["SAFETY", "QUALITY"] as const).flatMap((purpose) =>
    ceilings
      .filter(({ rule }) => rule.purpose === purpose)
      .toSorted((a, b) => lastingDays(plannedSpan(a.rule)) - lastingDays(plannedSpan(b.rule)))
      .slice(0, 1),
  );

function ofClasses(
  rules: readonly PublishedKeepingRule[],
  around: ReadonlyMap<string, boolean>,
  place: StoragePlace,
  scope: RuleScope,
): readonly Ceiling[] {
  const here = rules.filter((rule) => around.has(rule.keepsAs) && rule.place === place && inForceOn(rule, scope.date));
  // Each on its own: a region's word on quality must not hide that its safety rule is missing.
  return (["SAFETY", "QUALITY"] as const).flatMap((purpose) => {
    const ofPurpose = here.filter((rule) => rule.purpose === purpose);
    const { found, reach, whose } = nearest(ofPurpose, scope);
    const byAnalogy = (rule: PublishedKeepingRule): boolean => around.get(rule.keepsAs) ?? false;
    const borrowed = whose === null ? [] : stricterOfNarrower(ofPurpose, found, [...around.keys()], scope);
    return [
      ...found.map((rule) => ({ rule, reach, whose, byAnalogy: byAnalogy(rule) })),
      ...borrowed.map((rule) => ({
        rule,
        reach: "REGION_WITHOUT_RULE" as const,
        whose: null,
        byAnalogy: byAnalogy(rule),
      })),
    ];
  });
}

/**
 * Rules of other regions for a narrower class than the region speaks of, where they are stricter: chilled food may stand out for
 * four hours, garlic in oil never. A region's general rule is no word on a food that is more dangerous than most.
 */
function stricterOfNarrower(
  rules: readonly PublishedKeepingRule[],
  ofRegion: readonly PublishedKeepingRule[],
  narrowToWide: readonly string[],
  { audience }: RuleScope,
): readonly PublishedKeepingRule[] {
  const narrowest = Math.min(...ofRegion.map(({ keepsAs }) => narrowToWide.indexOf(keepsAs)));
  const narrower = new Set(narrowToWide.slice(0, narrowest));
  const lasting = (rule: PublishedKeepingRule): number => lastingDays(plannedSpan(rule));
  const strictest = Math.min(...ofRegion.map(lasting));
  return rules.filter(
    (rule) =>
      narrower.has(rule.keepsAs) &&
      (rule.audience === "ANY" || rule.audience === audience) &&
      lasting(rule) < strictest,
  );
}

interface Nearest {
  readonly found: readonly PublishedKeepingRule[];
  readonly reach: RuleReach;
  readonly whose: RegionOwner | null;
}

function nearest(rules: readonly PublishedKeepingRule[], { audience, ...scope }: RuleScope): Nearest {
  const forUs = rules.filter((rule) => rule.audience === "ANY" || rule.audience === audience);
  const regions = regionsOf(scope);
  for (const [at, { region, owner }] of regions.entries()) {
    const found = forUs.filter((rule) => regionCovers(rule.region, region));
    if (found.length > 0) return { found, reach: at === 0 ? "REGION" : "REGION_WITHOUT_RULE", whose: owner };
  }
  const reach = regions.length === 0 ? "REGION_NOT_GIVEN" : "REGION_WITHOUT_RULE";
  if (forUs.length > 0) return { found: forUs, reach, whose: null };
  return { found: rules, reach: "OTHER_AUDIENCE", whose: null };
}
