import { describe, expect, it } from "vitest";
import type { OwnedRegion, Regions } from "../../../src/domain/model/region.js";
import { regionCovers } from "../../../src/domain/model/region.js";
import { ceilingsFor, type Ceiling } from "../../../src/domain/storage/ceilings.js";
import { lastingDays } from "../../../src/domain/storage/keeping-window.js";
import { publishedRules } from "../../imports/rules/published-rules.js";

const { safety } = publishedRules;
const places = ["FRIDGE", "FREEZER", "ROOM"] as const;
/** Whose rules there are, their members, and those who have none of their own. */
const regions = ["US", "US-WA", "US-OR", "GB", "CA", "AU", "NZ", "DE", "FR", "ES", "PL", "IE", "BR", "JP", "XA"];
const classes = safety.classes.map(({ code }) => code);

const of = (keepsAs: string, place: (typeof places)[number], scope: Regions): readonly Ceiling[] =>
  ceilingsFor(safety, keepsAs, place, { ...scope, audience: "HOUSEHOLD", date: "2026-06-01" });
const owned = (region: string, owner: OwnedRegion["owner"]): OwnedRegion => ({ region, owner });
const chain = (...all: readonly OwnedRegion[]): Regions => ({ region: all[0]?.region ?? null, regions: all });
const shortest = (ceilings: readonly Ceiling[]): number =>
  Math.min(Infinity, ...ceilings.map(({ rule }) => lastingDays(rule)));

/** Every class of the published rules, at every place. */
const everywhere = classes.flatMap((keepsAs) => places.map((place) => ({ keepsAs, place })));

describe("the rules that hold for a class of food, in every region", () => {
  it("are asked of enough classes and regions to mean something", () => {
    expect(classes.length).toBeGreaterThan(40);
    expect(everywhere.length * regions.length).toBeGreaterThan(2000);
  });

  it.each(regions)("are in %s never another region's without saying so", (region) => {
    for (const { keepsAs, place } of everywhere) {
      for (const { rule, reach, whose } of of(keepsAs, place, chain(owned(region, "READER")))) {
        const isOurs = regionCovers(rule.region, region);
        if (!isOurs) expect([keepsAs, place, reach === "REGION", whose]).toEqual([keepsAs, place, false, null]);
        if (reach === "REGION") expect([keepsAs, place, isOurs, whose]).toEqual([keepsAs, place, true, "READER"]);
      }
    }
  });

  it.each(regions)(
    "are a plan's in %s where its reader names none: the same as if the reader had named it",
    (region) => {
      for (const { keepsAs, place } of everywhere) {
        const ruled = (scope: Regions) => of(keepsAs, place, scope).map(({ rule, reach }) => [rule.id, reach]);
        expect(ruled(chain(owned(region, "PLAN")))).toEqual(ruled(chain(owned(region, "READER"))));
        expect(ruled(chain(owned(region, "PUBLISHER")))).toEqual(ruled(chain(owned(region, "READER"))));
      }
    },
  );

  it.each(regions)("are the plan's only where the reader's region, %s, has none for it", (region) => {
    for (const { keepsAs, place } of everywhere) {
      const alone = of(keepsAs, place, chain(owned(region, "READER")));
      const both = of(keepsAs, place, chain(owned(region, "READER"), owned("US", "PLAN")));
      for (const purpose of ["SAFETY", "QUALITY"] as const) {
        const [ofAlone, ofBoth] = [alone, both].map((all) => all.filter(({ rule }) => rule.purpose === purpose));
        const hasOwn = ofAlone!.some(({ reach }) => reach === "REGION");
        if (hasOwn) expect(ofBoth!.map(({ rule }) => rule.id)).toEqual(ofAlone!.map(({ rule }) => rule.id));
        for (const { rule, whose, reach } of ofBoth!) {
          if (whose !== "PLAN") continue;
          expect([keepsAs, place, hasOwn, reach]).toEqual([keepsAs, place, false, "REGION_WITHOUT_RULE"]);
          expect(regionCovers(rule.region, "US")).toBe(true);
        }
      }
    }
  });

  it("never let a class without a limit that has one elsewhere, wherever it is read", () => {
    for (const { keepsAs, place } of everywhere) {
      const nowhere = of(keepsAs, place, { region: null });
      for (const region of regions) {
        const here = of(keepsAs, place, chain(owned(region, "READER")));
        expect([keepsAs, place, region, here.length > 0]).toEqual([keepsAs, place, region, nowhere.length > 0]);
        // Leaving the region out never makes an answer longer.
        expect(shortest(nowhere)).toBeLessThanOrEqual(shortest(here));
      }
    }
  });

  it("are American for a plan of an American writer: never a British hour where the United States have a rule for it", () => {
    for (const { keepsAs, place } of everywhere) {
      const ceilings = of(keepsAs, place, chain(owned("US", "PLAN"))).map(({ rule }) => rule);
      const isRuledInUs = (rule: Ceiling["rule"]): boolean =>
        ceilings.some(
          (other) =>
            other.keepsAs === rule.keepsAs && other.purpose === rule.purpose && regionCovers(other.region, "US"),
        );
      const foreign = ceilings.filter((rule) => !regionCovers(rule.region, "US") && isRuledInUs(rule));
      expect(foreign.map(({ id }) => [keepsAs, place, id])).toEqual([]);
    }
  });
});
