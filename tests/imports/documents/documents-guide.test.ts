import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { readDocuments } from "../../../src/imports/documents/read-documents.js";
import { resolveDocuments } from "../../../src/imports/documents/resolve-documents.js";

const guide = readFileSync(path.resolve(import.meta.dirname, "../../../docs/documents.md"), "utf8");
const examples = [...guide.matchAll(/```yaml\n([\s\S]*?)```/g)].map(([, text = ""]) => text);
const [whole = "", ...others] = examples;

const readFoods = (text: string) =>
  resolveDocuments(readDocuments(text, "kale.yaml").documents, { foods: [], components: [] }).foods.map(
    ({ value }) => value,
  );

const first = resolveDocuments(readDocuments(whole, "docs/documents.md").documents, { foods: [], components: [] });
/** Foods that all publishers share, for examples that build on them. */
const [kale, carrot] = ["kale", "carrot"].map((slug) =>
  readFoods(readFileSync(path.resolve(import.meta.dirname, `../../../seeds/foods/${slug}.yaml`), "utf8")),
) as [ReturnType<typeof readFoods>, ReturnType<typeof readFoods>];
const known = {
  bases: new Map(kale.map((food) => [food.slug, food])),
  foods: [...first.foods.map(({ value }) => value), ...kale, ...carrot],
  components: first.components.map(({ value }) => value),
};

describe("the writers' guide", () => {
  it("begins with a whole plan that reads without a fault", () => {
    expect(readDocuments(whole, "docs/documents.md").problems).toEqual([]);
    expect(first.problems).toEqual([]);
    expect([first.foods.length, first.components.length, first.plans.length]).toEqual([3, 1, 1]);
    expect(first.components[0]?.value.lines[0]?.amount).toEqual({ low: "2", high: "2", unit: "metric-cup" });
  });

  it("goes on with examples that build on it", () => {
    expect(others.length).toBeGreaterThanOrEqual(2);
    const components = [...known.components];
    for (const text of others) {
      const read = readDocuments(text, "docs/documents.md");
      expect(read.problems).toEqual([]);
      expect(read.count).toBe(1);
      const resolved = resolveDocuments(read.documents, { ...known, components });
      expect(resolved.problems).toEqual([]);
      components.push(...resolved.components.map(({ value }) => value));
    }
  });

  it("names every key that a line or a step may have", () => {
    const keys = ["plus-more", "measured", "form", "rule", "optional", "mark", "swaps", "preparation", "part"];
    const stepKeys = ["hands", "appliance", "celsius", "evening-before", "wait-at-least", "load-batches"];
    for (const key of [...keys, ...stepKeys]) expect(guide).toContain(key);
  });
});
