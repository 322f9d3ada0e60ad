// @ts-nocheck
import path from "node:path";
import { describe, expect, it } from "vitest";
import { readSeeds } from "../../seeds/load-seeds.js";
import { noHousehold } from "../../src/domain/model/household.js";
import type { Household } from "../../src/domain/model/household.js";
import type { PlanBundle } from "../../src/domain/model/plan.js";
import type { ScaledPlan } from "../../src/domain/plan/scaled.js";
import { scalePlan } from "../../src/domain/plan/scale-plan.js";

const { bundles } = await readSeeds(path.resolve(import.meta.dirname, "../../seeds"));
const called = bundles.map((bundle) => ({ slug: bundle.plan.slug, bundle }));

const scaled = (bundle: PlanBundle, servings: number, household: Household = noHousehold): ScaledPlan => {
  const result = scalePlan(bundle, servings, household);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

const bundleCalled = (slug: string): PlanBundle => {
  const found = bundles.find(({ plan }) => plan.slug === slug);
  if (found === undefined) throw new Error(`the demo has no plan ${slug}`);
  return found;
};

const made = (plan: ScaledPlan, slug: string) => {
  const found = plan.components.find(({ component }) => component.slug === slug);
  if (found === undefined) throw new Error(`${plan.bundle.plan.slug} makes no ${slug}`);
  return found;
};

describe.each(called)("the demo's plan $slug", ({ bundle }) => {
  it.each([1, 4, 7, 12])("can be cooked for %i", (servings) => {
    const plan = scaled(bundle, servings);
    expect(plan.components).toHaveLength(bundle.components.length);
    for (const { component, made: all, used, leftOver, batches } of plan.components) {
      expect(batches, component.slug).toBeGreaterThan(0);
      expect(used.high, component.slug).toBeGreaterThan(0);
      expect(leftOver.low, component.slug).toBeGreaterThanOrEqual(0);
      expect(all.low - used.high).toBeCloseTo(leftOver.low, 6);
    }
  });
});

describe("the demo's plans", () => {
  // Two people eat 12 crisps in two meals, four eat 24; they are baked twenty at a time.
  it("leave crisps over, since they are baked in whole batches", () => {
    const plan = bundleCalled("eggs-and-oats");
    expect(made(scaled(plan, 2), "oat-crisps")).toMatchObject({ batches: 1, leftOver: { high: 8 } });
    expect(made(scaled(plan, 4), "oat-crisps")).toMatchObject({ batches: 2, leftOver: { high: 16 } });
  });

  it("swap barley for buckwheat at a table without gluten", () => {
    const plan = scaled(bundleCalled("roots-and-barley"), 4, { ...noHousehold, diets: ["gluten-free"] });
    const items = made(plan, "boiled-barley").lines.map(({ item }) => (item.kind === "FOOD" ? item.food : ""));
    expect(items).toContain("buckwheat-groats");
    expect(items).not.toContain("pearl-barley");
  });

  it("buy lentils in tins for whoever asks", () => {
    const routes = { mode: "AS_WRITTEN", byName: [{ component: "boiled-lentils", route: "tinned" }] } as const;
    const lentils = made(scaled(bundleCalled("lentils-and-greens"), 2, { ...noHousehold, routes }), "boiled-lentils");
    expect(lentils.route?.name).toBe("tinned");
    expect(lentils.lines).toHaveLength(1);
  });
});
