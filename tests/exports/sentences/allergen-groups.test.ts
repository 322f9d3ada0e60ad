import { describe, expect, it } from "vitest";
import { readSeeds } from "../../../src/app/setup/read-seeds.js";
import { allergenGroups } from "../../../src/exports/sentences/allergen-groups.js";
import { answerOf } from "../../kit/answer-of.js";

const demo = await readSeeds("seeds");

describe("an allergen as readers are shown it", () => {
  it.each([null, "GB", "US", "DE", "CA", "AU"])(
    "stands in one group alone, and what is contained on no label to read (%s)",
    (region) => {
      for (const bundle of demo.bundles) {
        const { contents } = answerOf(bundle, 4, { region });
        for (const { allergens } of [contents.plan, ...contents.meals.values()]) {
          const { contains, mayContain, open, noIngredient, absent, labels } = allergenGroups(allergens);
          const codes = [contains, mayContain, open, noIngredient, absent].flat().map(({ code }) => code);
          expect(new Set(codes).size).toBe(codes.length);
          const contained = new Set(contains.map(({ name }) => name));
          expect(labels.flatMap(({ names }) => names).filter((name) => contained.has(name))).toEqual([]);
        }
      }
    },
  );
});
