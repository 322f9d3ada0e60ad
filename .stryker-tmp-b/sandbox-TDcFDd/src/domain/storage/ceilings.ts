// @ts-nocheck
import type { PublishedKeepingRule, RuleAudience, StoragePlace } from "../model/keeping.js";
import { inForceOn, regionCovers } from "../model/region.js";
import { classesAround } from "./keeping-classes.js";

/** Whose rules are asked for. */
export interface RuleScope {
  /** ISO 3166 code; null: the strictest of all regions. */
  readonly region: string | null;
  readonly audience: Exclude<RuleAudience, "ANY">;
  /** ISO date on which the rules must be in force. */
  readonly date: string;
}

/**
 * How far one had to look: rules of the region asked for, of all regions because none was named, of all regions
 * because the named one has none, or also those written for other kitchens.
 */
export type RuleReach = "REGION" | "REGION_NOT_GIVEN" | "REGION_WITHOUT_RULE" | "OTHER_AUDIENCE";

/** A published rule that holds for a class of food. */
export interface Ceiling {
  readonly rule: PublishedKeepingRule;
  readonly byAnalogy: boolean;
  readonly reach: RuleReach;
}

/**
 * The published rules that hold for a class of food at a place: those in force, of the class and of every wider one.
 * A region without a rule is not a region without a limit: then the rules of all regions stand in, and after them
 * those for other kitchens. Leaving a region out therefore never makes an answer longer.
 */
export function ceilingsFor(
  rules: readonly PublishedKeepingRule[],
  keepsAs: string,
  place: StoragePlace,
  scope: RuleScope,
): readonly Ceiling[] {
  const around = new Map(classesAround(keepsAs).map(({ code, byAnalogy }) => [code as string, byAnalogy]));
  const here = rules.filter((rule) => around.has(rule.keepsAs) && rule.place === place && inForceOn(rule, scope.date));
  // Each on its own: a region's word on quality must not hide that its safety rule is missing.
  return (["SAFETY", "QUALITY"] as const).flatMap((purpose) => {
    const { found, reach } = nearest(
      here.filter((rule) => rule.purpose === purpose),
      scope,
    );
    return found.map((rule) => ({ rule, reach, byAnalogy: around.get(rule.keepsAs) ?? false }));
  });
}

function nearest(rules: readonly PublishedKeepingRule[], { region, audience }: RuleScope) {
  const forUs = rules.filter((rule) => rule.audience === "ANY" || rule.audience === audience);
  const inRegion = region === null ? [] : forUs.filter((rule) => regionCovers(rule.region, region));
  if (inRegion.length > 0) return { found: inRegion, reach: "REGION" as const };
  const widened = region === null ? ("REGION_NOT_GIVEN" as const) : ("REGION_WITHOUT_RULE" as const);
  if (forUs.length > 0) return { found: forUs, reach: widened };
  return { found: rules, reach: "OTHER_AUDIENCE" as const };
}
