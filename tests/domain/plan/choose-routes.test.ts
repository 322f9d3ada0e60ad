import { describe, expect, it } from "vitest";
import type { Component, Route } from "../../../src/domain/model/component.js";
import type { Household, RouteMode } from "../../../src/domain/model/household.js";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import { scalePlan } from "../../../src/domain/plan/scale-plan.js";
import { workOf } from "../../../src/domain/plan/session/work-of.js";
import { bundle, component, food, household, line, made, meal, pack, route, step } from "../../kit/builders.js";

/** One meal of a batch of each. */
const plate = (components: readonly Component[], foods: Parameters<typeof bundle>[2] = []): PlanBundle =>
  bundle(
    [
      meal(
        "m",
        components.map(({ slug }) => line("1 batch", made(slug))),
      ),
    ],
    components,
    foods,
  );

function chosen(whole: PlanBundle, routes: Partial<Household["routes"]>, servings = 1): Record<string, string | null> {
  const at = household({ currency: "XTS", routes: { mode: "AS_WRITTEN", byName: [], ...routes } });
  const result = scalePlan(whole, servings, at);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return Object.fromEntries(
    result.value.components.map(({ component: { slug }, route: taken }) => [slug, taken?.name ?? null]),
  );
}
const by = (mode: RouteMode) => ({ mode });
const priced = (slug: string, price: string | null) => food(slug, { packs: [pack("100 g", price)] });

const beans = (tins: Partial<Route> = {}, dry: Partial<Component> = {}): Component =>
  component("beans", "300 g", [line("100 g", "dry-beans")], {
    routes: [route("tins", [line("300 g", "tinned-beans")], tins)],
    ...dry,
  });

describe("the route asked for by name", () => {
  it("is taken, and what only the other way needed is not made", () => {
    const stew = component("stew", "1 kg", [line("1 batch", made("stock"))], {
      routes: [route("cube", [line("1 g", "cube")])],
    });
    const whole = bundle(
      [meal("m", [line("1 batch", made("stew"))])],
      [stew, component("stock", "1 l", [line("1 l", "water")])],
    );
    expect(chosen(whole, {})).toEqual({ stew: null, stock: null });
    expect(chosen(whole, { byName: [{ component: "stew", route: "cube" }] })).toEqual({ stew: "cube" });
  });

  it("may be the one that the writer wrote", () => {
    const cheaper = plate([beans()], [priced("dry-beans", "9.00"), priced("tinned-beans", "0.10")]);
    expect(chosen(cheaper, by("CHEAPEST"))).toEqual({ beans: "tins" });
    const written = { mode: "CHEAPEST" as const, byName: [{ component: "beans", route: "as-written" }] };
    expect(chosen(cheaper, written)).toEqual({ beans: null });
  });

  it("is refused with the names there are where the component has none of that name, and is no matter in another plan", () => {
    const whole = plate([beans()]);
    const ask = (name: string, slug: string) =>
      scalePlan(whole, 1, household({ routes: { mode: "AS_WRITTEN", byName: [{ component: slug, route: name }] } }));
    expect(ask("jar", "beans")).toEqual({
      ok: false,
      problems: [
        {
          code: "UNKNOWN_ROUTE",
          path: ["household", "routes", "byName", 0, "route"],
          component: "beans",
          route: "jar",
          known: ["as-written", "tins"],
        },
      ],
    });
    expect(ask("jar", "somebody-elses").ok).toBe(true);
  });
});

describe("the cheapest routes", () => {
  it("are those with the lowest till, and as written where nothing is saved", () => {
    const prices = (dry: string | null, tin: string | null) =>
      chosen(plate([beans()], [priced("dry-beans", dry), priced("tinned-beans", tin)]), by("CHEAPEST"));
    expect(prices("4.00", "1.00")).toEqual({ beans: "tins" });
    expect(prices("2.00", "1.00")).toEqual({ beans: null });
    expect(prices("3.00", "1.00")).toEqual({ beans: null });
  });

  it("never take a price that nobody knows for a low one", () => {
    const prices = (dry: string | null, tin: string | null) =>
      chosen(plate([beans()], [priced("dry-beans", dry), priced("tinned-beans", tin)]), by("CHEAPEST"));
    expect(prices("90.00", null)).toEqual({ beans: null });
    expect(prices(null, "90.00")).toEqual({ beans: "tins" });
  });

  it("look at the whole list: a pack that is bought anyhow makes a route cheaper", () => {
    const shared = [
      food("dry-beans", { packs: [pack("100 g", "2.00")] }),
      food("tinned-beans", { packs: [pack("600 g", "3.00")] }),
    ];
    expect(chosen(plate([beans()], shared), by("CHEAPEST"))).toEqual({ beans: null });
    const half = bundle(
      [meal("m", [line("1 batch", made("beans")), line("300 g", "tinned-beans")])],
      [beans()],
      shared,
    );
    expect(chosen(half, by("CHEAPEST"))).toEqual({ beans: "tins" });
  });

  it("are found by trying every choice where two are only cheaper together", () => {
    // A sack for both: either alone would buy the sack and its own dear things too.
    const two = ["a", "b"].map((slug) =>
      component(slug, "1 kg", [line("100 g", `${slug}-dear`)], { routes: [route("sack", [line("100 g", "sack")])] }),
    );
    const foods = [priced("a-dear", "3.00"), priced("b-dear", "3.00"), food("sack", { packs: [pack("1 kg", "5.00")] })];
    expect(chosen(plate(two, foods), by("CHEAPEST"))).toEqual({ a: "sack", b: "sack" });
  });

  it("are found one by one where there are too many to try every choice", () => {
    const many = Array.from({ length: 12 }, (_, at) =>
      component(`c${at}`, "1 kg", [line("100 g", at % 3 === 0 ? "cheap" : "dear")], {
        routes: [route("other", [line("100 g", at % 3 === 0 ? "dear" : "cheap")])],
      }),
    );
    const found = chosen(plate(many, [priced("cheap", "1.00"), priced("dear", "5.00")]), by("CHEAPEST"));
    expect(
      Object.entries(found).every(([slug, name]) => name === (Number(slug.slice(1)) % 3 === 0 ? null : "other")),
    ).toBe(true);
  });
});

describe("the least work", () => {
  it("counts the hands before the clock, and as written where it is equal", () => {
    const work = (tins: readonly Parameters<typeof step>[], dry: readonly Parameters<typeof step>[]) =>
      chosen(
        plate([beans({ steps: tins.map((each) => step(...each)) }, { steps: dry.map((each) => step(...each)) })]),
        by("LEAST_WORK"),
      );
    expect(work([["open", 5]], [["boil", 10]])).toEqual({ beans: "tins" });
    expect(work([["open", 5]], [["boil", 60, { attention: "UNATTENDED" }]])).toEqual({ beans: null });
    expect(
      work(
        [["open", 5]],
        [
          ["sort", 5],
          ["boil", 60, { attention: "UNATTENDED" }],
        ],
      ),
    ).toEqual({ beans: "tins" });
    expect(work([["open", 5]], [["boil", 5]])).toEqual({ beans: null });
  });

  it("O-14: hands grow with the pot where the writer says so, what boils by itself does not, and loads come one by one", () => {
    const steps = [
      step("chop", 6, { grows: "PER_BATCH" }),
      step("sort", 4, { growthStated: true }),
      step("boil", 40, { attention: "UNATTENDED", grows: "PER_BATCH" }),
      step("roast", 25, { attention: "UNATTENDED", grows: "PER_LOAD", loadBatches: "1" }),
      step("blend", 3, { grows: "PER_LOAD" }),
    ];
    const pot = component("pot", "1 kg", [line("1 g", "salt")], {
      steps,
      batch: { min: "1", max: "2", increment: "1" },
    });
    const work = (servings: number) => {
      const result = scalePlan(plate([pot]), servings, household());
      if (!result.ok) throw new Error("refused");
      return workOf(result.value);
    };
    expect(work(1)).toEqual([6 + 4 + 3, 6 + 4 + 40 + 25 + 3]);
    expect(work(2)).toEqual([12 + 4 + 3, 12 + 4 + 40 + 50 + 3]);
    expect(work(4)).toEqual([24 + 4 + 6, 24 + 4 + 40 + 100 + 6]);
  });

  it("does not count the steps of what is not made", () => {
    const none = bundle(
      [meal("m", [line(null, made("dip"))])],
      [component("dip", "1 kg", [line("1 g", "salt")], { steps: [step("stir", 5)] })],
    );
    const result = scalePlan(none, 1, household());
    expect(result.ok && workOf(result.value)).toEqual([0, 0]);
  });
});
