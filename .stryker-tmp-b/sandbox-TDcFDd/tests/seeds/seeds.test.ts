// @ts-nocheck
import path from "node:path";
import { describe, expect, it } from "vitest";
import { readSeeds } from "../../seeds/load-seeds.js";
import type { Line } from "../../src/domain/model/line.js";
import { toDimension } from "../../src/domain/quantity/convert.js";

const directory = path.resolve(import.meta.dirname, "../../seeds");
const seeds = await readSeeds(directory);
const { foods, components, plans, bundles } = seeds;

const componentLines = components.flatMap(({ lines, routes }) => [...lines, ...routes.flatMap((route) => route.lines)]);
const mealLines = plans.flatMap(({ meals }) => meals.flatMap(({ lines }) => lines));
const lines = [...componentLines, ...mealLines];
const taking = (part: string) => (line: Line) => line.item.kind === "FOOD" && line.item.part === part;

describe("the demo data", () => {
  it("has no problems", () => {
    expect(seeds.problems).toEqual([]);
  });

  it("reads the same twice", async () => {
    const again = await readSeeds(directory);
    expect(again.bundles).toEqual(bundles);
  });

  it("belongs to one invented publisher", () => {
    expect(seeds.publisher).toEqual({ slug: "third-gate-allotments", name: "The Third Gate Allotment Society" });
    expect(new Set(plans.map(({ publisher }) => publisher))).toEqual(new Set([seeds.publisher.slug]));
  });

  it("shows at least 60 foods, 20 of them in five languages, 25 in several packs", () => {
    const languages = (food: (typeof foods)[number]) => new Set(food.names.map(({ language }) => language));
    expect(foods.length).toBeGreaterThanOrEqual(60);
    const spoken = foods.filter((food) => ["en", "de", "fr", "es", "pl"].every((tag) => languages(food).has(tag)));
    expect(spoken.length).toBeGreaterThanOrEqual(20);
    expect(foods.filter(({ packs }) => packs.length > 1).length).toBeGreaterThanOrEqual(25);
  });

  it("names every food in English, and no two foods alike", () => {
    const english = foods.flatMap(({ slug, names }) =>
      [
        ...new Set(
          names.filter(({ language }) => language === "en").flatMap(({ one, many, also }) => [one, many, ...also]),
        ),
      ].map((word) => ({ word: word.toLowerCase(), slug })),
    );
    for (const { slug, names } of foods) expect(names[0]?.language, slug).toBe("en");
    const owners = new Map<string, string>();
    for (const { word, slug } of english) {
      expect(owners.get(word) ?? slug, `"${word}" means two foods`).toBe(slug);
      owners.set(word, slug);
    }
  });

  it("shows prices in the test currency and region only, all of them invented", () => {
    for (const { slug, packs } of foods) {
      for (const { price, region, source } of packs) {
        expect({ slug, currency: price?.currency, region, kind: source.kind }).toEqual({
          slug,
          currency: "XTS",
          region: "XA",
          kind: "INVENTED",
        });
      }
    }
  });

  it("says of no food what it is free from", () => {
    const presences = foods.flatMap(({ allergens }) => allergens.map(({ presence }) => presence));
    expect(new Set(presences)).toEqual(new Set(["CONTAINS"]));
  });

  it("uses packs that can be compared with what a shopper asks for", () => {
    for (const food of foods)
      for (const { id, content } of food.packs)
        expect(toDimension(content, food.shoppedBy, food, null), `${food.slug} ${id}`).toMatchObject({ ok: true });
  });
});

describe("the demo's plans", () => {
  it("are four, of three to five meals, each from four to seven components", () => {
    expect(plans).toHaveLength(4);
    for (const { plan, components: used } of bundles) {
      expect(plan.meals.length, plan.slug).toBeGreaterThanOrEqual(3);
      expect(plan.meals.length, plan.slug).toBeLessThanOrEqual(5);
      expect(used.length, plan.slug).toBeGreaterThanOrEqual(4);
      expect(used.length, plan.slug).toBeLessThanOrEqual(7);
    }
  });

  it("spread over the session's day and the five after it", () => {
    expect(new Set(plans.flatMap(({ meals }) => meals.map(({ day }) => day)))).toEqual(new Set([0, 1, 2, 3, 4, 5]));
  });

  it("leave no component without a plan", () => {
    const used = new Set(bundles.flatMap((bundle) => bundle.components.map(({ slug }) => slug)));
    expect(components.map(({ slug }) => slug).filter((slug) => !used.has(slug))).toEqual([]);
  });

  it("share a component between two plans, and build one component on another", () => {
    const counts = components.map(({ slug }) => bundles.filter((each) => each.components.some((c) => c.slug === slug)));
    expect(Math.max(...counts.map((list) => list.length))).toBeGreaterThanOrEqual(2);
    expect(componentLines.some(({ item }) => item.kind === "COMPONENT")).toBe(true);
  });

  it("take zest and juice of lemons, whites and yolks of eggs in different components", () => {
    for (const part of ["zest", "juice", "white", "yolk"])
      expect(lines.filter(taking(part)).length, part).toBeGreaterThan(0);
    for (const component of components)
      expect(component.lines.some(taking("white")) && component.lines.some(taking("yolk"))).toBe(false);
  });

  it("use every rule of scaling", () => {
    expect(new Set(lines.map(({ rule }) => rule))).toEqual(new Set(["PROPORTIONAL", "PER_BATCH", "POWER", "TO_TASTE"]));
  });

  it("offer a gluten-free swap, a bought route and whole batches, and soak the evening before", () => {
    expect(lines.some(({ swaps }) => swaps.some(({ diets }) => diets.includes("gluten-free")))).toBe(true);
    expect(components.some(({ routes }) => routes.some(({ kind }) => kind === "BUY"))).toBe(true);
    expect(components.some(({ batch }) => batch.min === "1" && batch.increment === "1")).toBe(true);
    expect(components.some(({ steps }) => steps.some(({ eveningBefore }) => eveningBefore))).toBe(true);
  });

  it("use every line of a component in one of its steps", () => {
    for (const made of [
      ...components,
      ...components.flatMap(({ routes }) => routes),
      ...plans.flatMap((p) => p.meals),
    ]) {
      const used = new Set(made.steps.flatMap((step) => step.lines));
      expect(made.lines.map(({ id }) => id).filter((id) => !used.has(id))).toEqual([]);
    }
  });

  it("ask their kitchens for appliances that these have", () => {
    for (const { plan, components: used } of bundles) {
      const steps = [...used, ...plan.meals].flatMap((each) => each.steps);
      for (const { appliance } of steps)
        if (appliance !== null) expect(plan.kitchen.appliances[appliance] ?? 0, appliance).toBeGreaterThan(0);
    }
  });

  // FDA, Bad Bug Book, 2nd edition 2012, Phytohaemagglutinin chapter: soak at least 5 hours, discard the water,
  // boil in fresh water for 30 minutes.
  it("soak red kidney beans for five hours or more, throw the water away and boil them hard for half an hour", () => {
    const beans = components.find(({ slug }) => slug === "boiled-kidney-beans");
    const [soak, rinse, boil] = beans?.steps ?? [];
    expect(soak?.minutes).toBeGreaterThanOrEqual(300);
    expect(rinse?.text).toMatch(/throw .* away/i);
    expect(boil?.minutes).toBeGreaterThanOrEqual(30);
    expect(boil?.after).toEqual([rinse?.id]);
  });
});
