import { beforeAll, describe, expect, it } from "vitest";
import { readSeeds } from "../../../src/app/setup/read-seeds.js";
import { noHousehold } from "../../../src/domain/model/household.js";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import { scalePlan } from "../../../src/domain/plan/scale-plan.js";
import { storageGuidance } from "../../../src/domain/storage/storage-guidance.js";
import { shop } from "../../../src/domain/plan/shop.js";
import { plainText } from "../../../src/exports/document/plain-text.js";

const household = { ...noHousehold, region: "XA", currency: "XTS" };

function textOf(bundle: PlanBundle, servings: number): string {
  const scaled = scalePlan(bundle, servings, household);
  if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
  const { components, meals } = scaled.value;
  const keeping = storageGuidance(
    { components, meals, foods: bundle.foods },
    { rules: [], classes: [], region: null, today: "2026-03-01", session: null },
  );
  const reader = { measures: bundle.plan.measures, locale: bundle.plan.locale, converts: false };
  return plainText({
    scaled: scaled.value,
    list: shop([scaled.value], household),
    storage: keeping,
    reader,
  });
}

describe("a computed plan as text", () => {
  let bundles: readonly PlanBundle[];

  beforeAll(async () => {
    ({ bundles } = await readSeeds("seeds"));
  });

  it("of every demo plan has all its parts and no holes", () => {
    expect(bundles.length).toBeGreaterThan(2);
    for (const bundle of bundles) {
      const text = textOf(bundle, 7);
      expect(text.startsWith(`${bundle.plan.title}, for 7\n\n`)).toBe(true);
      expect(text).toContain("\nMake ahead\n");
      expect(text).toContain("\nBuy\n");
      expect(text).toMatch(/\nKeep\n {2}.+: \d.* days? (in the fridge|at room temperature)/);
      expect(text).not.toMatch(/undefined|null|NaN|\[object/);
      for (const { title } of bundle.plan.meals) expect(text).toContain(title);
    }
  });

  it("says a whole piece once, and what is left over", () => {
    const text = bundles.map((bundle) => textOf(bundle, 7)).join("\n");
    expect(text).not.toMatch(/\b(\w+)s? \1s?\b(?=[,\n])/);
    expect(text).toMatch(/ made, (nothing|.+) left over/);
  });
});
