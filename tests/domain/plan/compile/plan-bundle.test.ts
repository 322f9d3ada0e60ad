import path from "node:path";
import { describe, expect, it } from "vitest";
import { readSeeds } from "../../../../seeds/load-seeds.js";
import { bundleOf } from "../../../../src/domain/plan/compile/plan-bundle.js";

const { plans, components, foods } = await readSeeds(path.resolve(import.meta.dirname, "../../../../seeds"));
const planCalled = (slug: string) => {
  const plan = plans.find((each) => each.slug === slug);
  if (plan === undefined) throw new Error(`the demo has no plan ${slug}`);
  return plan;
};
const slugs = (list: readonly { readonly slug: string }[]): string[] => list.map(({ slug }) => slug);

describe("the bundle of a plan", () => {
  it("holds what its lines, components of components, routes and swaps lead to, and nothing else", () => {
    const bundle = bundleOf(planCalled("lentils-and-greens"), components, foods);
    expect(slugs(bundle.components)).toEqual([
      "boiled-lentils",
      "braised-red-cabbage",
      "garlic-greens",
      "lemon-yoghurt",
      "lentil-walnut-spread",
    ]);
    expect(slugs(bundle.foods)).toEqual(expect.arrayContaining(["tinned-lentils", "sunflower-seeds", "dill", "lemon"]));
    expect(slugs(bundle.foods)).not.toContain("pearl-barley");
  });

  it("reaches a component that only another component uses", () => {
    expect(slugs(bundleOf(planCalled("eggs-and-oats"), components, foods).components)).toContain("toasted-seeds");
  });

  it("ends where components go round in a circle, and leaves out what it is not given", () => {
    const [first] = components.filter(({ slug }) => slug === "boiled-lentils");
    if (first === undefined) throw new Error("the demo has no boiled lentils");
    const [line] = first.lines;
    if (line === undefined) throw new Error("boiled lentils have no lines");
    const loops = { ...first, lines: [{ ...line, item: { kind: "COMPONENT" as const, component: first.slug } }] };
    const bundle = bundleOf(planCalled("lentils-and-greens"), [loops], []);
    expect(slugs(bundle.components)).toEqual(["boiled-lentils"]);
    expect(bundle.foods).toEqual([]);
  });

  it("is the same whatever else the publisher owns", () => {
    const plan = planCalled("bean-night");
    const whole = bundleOf(plan, components, foods);
    expect(bundleOf(plan, whole.components, whole.foods)).toEqual(whole);
  });
});
