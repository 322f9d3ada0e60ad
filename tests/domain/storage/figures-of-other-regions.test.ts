import { beforeAll, describe, expect, it } from "vitest";
import type { Food } from "../../../src/domain/model/food.js";
import { regionCovers, type OwnedRegion } from "../../../src/domain/model/region.js";
import type { Basis, KeepingQuestion, StorageGuidance } from "../../../src/domain/storage/guidance.js";
import { readBase } from "../../kit/base-foods.js";
import { ask, bought, guidanceOf, kept, says } from "./kept-builders.js";

/** Those with published rules of their own, a member of the Union, and those of whom nothing is known here. */
const regions = ["US", "US-WA", "GB", "AU", "CA", "DE", "FR", "ES", "PL", "JP"];

const asked = (region: string | null): Partial<KeepingQuestion> => ({
  region,
  regions: region === null ? [] : [{ region, owner: "READER" }],
});
const holdsIn = (region: string, basis: Basis): boolean => basis.region === null || regionCovers(basis.region, region);

let base: readonly Food[];
beforeAll(async () => {
  base = (await readBase()).whole;
}, 60_000);

const guidanceFor = (region: string | null): readonly StorageGuidance[] =>
  ask({ foods: base.map((food) => ({ ...food, alwaysThere: false })) }, asked(region)).guidance;

const figure = (days: number, region: string) => ({
  ...says("FRIDGE", days, { source: { kind: "PUBLISHED" as const, title: "test parameter", section: null } }),
  region,
});

describe("figures on how long base foods keep", () => {
  it("are enough, from elsewhere, to mean something", () => {
    const foreign = guidanceFor("GB").filter(({ basis }) => basis.some((each) => each.decides && each.region === "US"));
    expect(foreign.length).toBeGreaterThan(300);
  });

  it.each(regions)("are for a reader in %s never another region's without saying so", (region) => {
    for (const { subject, place, basis, scope } of guidanceFor(region)) {
      const decides = basis.find((each) => each.decides)!;
      // A rule for other kitchens says that first, and its region beside it.
      if (decides.region === null || scope?.reach === "OTHER_AUDIENCE") continue;
      const said = [subject.slug, place, scope?.asked, scope?.used, scope?.reach === "REGION"];
      expect(said).toEqual([subject.slug, place, region, decides.region, holdsIn(region, decides)]);
    }
  });

  it.each(regions)("of the authority in %s itself come first", (region) => {
    for (const { subject, place, basis } of guidanceFor(region)) {
      const own = basis.map((each) => holdsIn(region, each));
      expect([subject.slug, place, own]).toEqual([subject.slug, place, own.toSorted((a, b) => Number(b) - Number(a))]);
    }
  });

  it("name the region they hold in where the reader names none", () => {
    for (const { subject, place, basis, scope } of guidanceFor(null)) {
      const decides = basis.find((each) => each.decides)!;
      if (decides.region === null || scope?.reach === "OTHER_AUDIENCE") continue;
      expect([subject.slug, place, scope?.reach, scope?.used]).toEqual([
        subject.slug,
        place,
        "REGION_NOT_GIVEN",
        decides.region,
      ]);
    }
  });
});

describe("a figure that is published for a region", () => {
  it("is the region's own there, and another's elsewhere", () => {
    const foods = [bought("beans", null, [figure(5, "US")])];
    const scopeIn = (region: string) => guidanceOf(ask({ foods }, asked(region)), "beans").scope;
    expect(scopeIn("US")).toEqual({ asked: "US", used: "US", reach: "REGION", whose: "READER" });
    expect(scopeIn("US-WA")).toEqual({ asked: "US-WA", used: "US", reach: "REGION", whose: "READER" });
    expect(scopeIn("GB")).toEqual({ asked: "GB", used: "US", reach: "REGION_WITHOUT_RULE", whose: null });
  });

  it("is the plan's where the plan is of that region and the reader of another", () => {
    const regionsOfBoth: readonly OwnedRegion[] = [
      { region: "GB", owner: "READER" },
      { region: "US", owner: "PLAN" },
    ];
    const answer = ask({ foods: [bought("beans", null, [figure(5, "US")])] }, { region: "GB", regions: regionsOfBoth });
    expect(guidanceOf(answer, "beans").scope).toEqual({
      asked: "GB",
      used: "US",
      reach: "REGION_WITHOUT_RULE",
      whose: "PLAN",
    });
  });

  // Food Standards Agency (UK), "Cooking your food": leftovers within 48 hours.
  it("stands behind the reader's own authority, which decides where it is stricter", () => {
    const foods = [bought("beans", "cooked-legume", [figure(4, "US")])];
    const { basis, scope } = guidanceOf(ask({ foods }, asked("GB")), "beans", "FRIDGE");
    expect(basis.map(({ rule, region, decides }) => [rule, region, decides])).toEqual([
      ["uk-leftovers", "GB", true],
      [null, "US", false],
    ]);
    expect(scope).toMatchObject({ used: "GB", reach: "REGION" });
  });

  it("decides where it is stricter than the reader's own authority, which is quoted all the same, and first", () => {
    const foods = [bought("beans", "cooked-legume", [figure(1, "US")])];
    const { basis, scope, days } = guidanceOf(ask({ foods }, asked("GB")), "beans", "FRIDGE");
    expect(days).toBe(1);
    expect(basis.map(({ rule, region, decides }) => [rule, region, decides])).toEqual([
      ["uk-leftovers", "GB", false],
      [null, "US", true],
    ]);
    expect(scope).toMatchObject({ used: "US", reach: "REGION_WITHOUT_RULE" });
  });

  it("changes nothing about a writer's own word, which is of no region", () => {
    const components = [kept("beans", null, [says("FRIDGE", 3)])];
    expect(guidanceOf(ask({ components }, asked("GB")), "beans").scope).toBeNull();
  });
});
