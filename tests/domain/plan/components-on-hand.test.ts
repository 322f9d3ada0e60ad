import { describe, expect, it } from "vitest";
import type { Household, OnHand } from "../../../src/domain/model/household.js";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import type { Warning } from "../../../src/domain/problem.js";
import { asFrozen } from "../../../src/domain/plan/review/foods-today.js";
import { scalePlan, scalePlans } from "../../../src/domain/plan/scale-plan.js";
import type { ScaledComponent, ScaledPlan } from "../../../src/domain/plan/scaled.js";
import { shop } from "../../../src/domain/plan/shop.js";
import {
  bundle,
  component,
  density,
  household,
  line,
  made,
  meal,
  onHand,
  own,
  plan,
  route,
} from "../../kit/builders.js";

const whole = { min: "1", max: null, increment: "1" };

const stock = component("stock", "1 l", [line("500 g", "bones")], { measures: [own("jar", { millilitres: 400 })] });
const dal = component("dal", "1 kg", [line("400 g", "lentils"), line("500 ml", made("stock"))], { batch: whole });
const week = bundle(
  [
    meal("monday", [line("300 g", made("dal"))], { day: 0 }),
    meal("thursday", [line("400 g", made("dal")), line("200 ml", made("stock"))], { day: 3 }),
  ],
  [stock, dal],
);

const there = (slug: string, amount: string, facts: Partial<OnHand> = {}): OnHand =>
  onHand(slug, amount, { item: { kind: "COMPONENT", component: slug }, ...facts });

/** The session is on the 2nd of March, though in UTC it is still the 1st. */
const withStock = (...entries: readonly OnHand[]): Household =>
  household({ onHand: entries, session: { start: "2026-03-01T22:30:00Z", zone: "Asia/Tokyo" } });

const scaled = (of: PlanBundle, servings: number, who: Household): ScaledPlan => {
  const result = scalePlan(of, servings, who);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

const partOf = ({ components }: ScaledPlan, slug: string): ScaledComponent =>
  components.find((each) => each.component.slug === slug)!;

describe("a component that is there already", () => {
  it("comes off the demand before batches are counted, and off what its batches take", () => {
    const without = scaled(week, 2, household());
    expect(partOf(without, "dal").batches).toBe(2);
    expect(partOf(without, "stock").used.high).toBe(1400);
    const some = scaled(week, 2, withStock(there("dal", "400 g")));
    expect(partOf(some, "dal")).toMatchObject({
      batches: 1,
      used: { low: 1000, high: 1000 },
      onHand: { low: 400, high: 400 },
      leftOver: { low: 0 },
    });
    expect(partOf(some, "stock").used.high).toBe(900);
  });

  it("is never taken beyond the demand; nothing is made then, and nothing bought for it", () => {
    const plenty = scaled(week, 1, withStock(there("dal", "3 kg"), there("stock", "1 l")));
    expect(partOf(plenty, "dal")).toMatchObject({ batches: 0, loads: 0, onHand: { high: 700 }, used: { high: 0 } });
    expect(partOf(plenty, "stock")).toMatchObject({ batches: 0, onHand: { high: 200 } });
    expect(shop([plenty], household()).lines).toEqual([]);
    expect(plenty.warnings).toEqual([]);
  });

  it("is compared in batches, in its own measures, and by its own density", () => {
    expect(partOf(scaled(week, 1, withStock(there("dal", "1/2 batch"))), "dal").onHand.high).toBe(500);
    expect(partOf(scaled(week, 1, withStock(there("stock", "1 own:jar"))), "stock").onHand.high).toBe(400);
    const thick = { ...dal, densities: [density(1.1)] };
    const plain = bundle([meal("monday", [line("700 g", made("dal"))])], [thick, stock]);
    expect(partOf(scaled(plain, 1, withStock(there("dal", "200 ml"))), "dal").onHand.high).toBeCloseTo(220, 10);
  });

  it("is left alone where the fact to compare is missing, and that is said", () => {
    const { components, warnings } = scaled(week, 1, withStock(there("dal", "200 ml")));
    expect(components.map((each) => each.onHand.high)).toEqual([0, 0]);
    expect(warnings).toContainEqual({
      code: "ON_HAND_NOT_COMPARABLE",
      path: ["household", "onHand", 0],
      item: "dal",
      missing: "DENSITY",
    });
  });

  it("with a date covers the meals up to it, counted in the zone of the session", () => {
    const until = (useBy: string): number =>
      partOf(scaled(week, 2, withStock(there("dal", "2 kg", { useBy }))), "dal").onHand.high;
    expect(until("2026-03-02")).toBe(600);
    expect(until("2026-03-04")).toBe(600);
    expect(until("2026-03-05")).toBe(1400);
  });

  it("goes into other components on the day of the session", () => {
    const soon = scaled(week, 2, withStock(there("stock", "2 l", { useBy: "2026-03-02" })));
    expect(partOf(soon, "stock")).toMatchObject({ onHand: { high: 1000 }, used: { high: 400 } });
  });

  it("that is past its date is left out and named; without a session, today is the day it is held to", () => {
    const old = there("dal", "2 kg", { useBy: "2026-03-01" });
    const { warnings, components } = scaled(week, 1, withStock(old));
    expect(components.map((each) => each.onHand.high)).toEqual([0, 0]);
    expect(warnings).toContainEqual({
      code: "ON_HAND_TOO_OLD",
      path: ["household", "onHand", 0],
      item: "dal",
      useBy: "2026-03-01",
    });
    const onDay = (date: string) => {
      const result = scalePlan(week, 1, household({ onHand: [old] }), { ...asFrozen, date });
      if (!result.ok) throw new Error(JSON.stringify(result.problems));
      return result.value;
    };
    expect(partOf(onDay("2026-02-26"), "dal").onHand.high).toBe(700);
    expect(partOf(onDay("2026-03-01"), "dal").onHand.high).toBe(300);
    expect(partOf(onDay("2026-05-01"), "dal").onHand.high).toBe(0);
    expect(onDay("2026-05-01").warnings.map(({ code }) => code)).toContain("ON_HAND_TOO_OLD");
  });

  it("that is left lying because of the day of a meal is named with that meal", () => {
    const notInTime = (...entries: readonly OnHand[]) =>
      scaled(week, 2, withStock(...entries)).warnings.filter(({ code }) => code === "ON_HAND_NOT_IN_TIME");
    const path = ["household", "onHand", 0];
    expect(notInTime(there("dal", "2 kg", { useBy: "2026-03-04" }))).toEqual([
      { code: "ON_HAND_NOT_IN_TIME", path, item: "dal", useBy: "2026-03-04", meals: ["thursday"] },
    ]);
    expect(notInTime(there("dal", "2 kg", { useBy: "2026-03-05" }))).toEqual([]);
    expect(notInTime(there("dal", "600 g", { useBy: "2026-03-04" }))).toEqual([]);
    expect(notInTime(there("dal", "2 kg", { useBy: "2026-03-04" }), there("dal", "5 kg"))).toEqual([]);
  });

  it("takes first what is first to go, over several entries", () => {
    const both = withStock(there("dal", "500 g"), there("dal", "250 g", { useBy: "2026-03-02" }));
    expect(partOf(scaled(week, 1, both), "dal")).toMatchObject({ onHand: { high: 700 }, batches: 0 });
  });

  it("that no meal needs is named", () => {
    const { warnings } = scaled(week, 1, withStock(there("dal", "1 g"), there("soup", "1 l")));
    expect(warnings.filter(({ code }) => code === "ON_HAND_NOT_NEEDED")).toEqual([
      { code: "ON_HAND_NOT_NEEDED", path: ["household", "onHand", 1], item: "soup" },
    ]);
  });

  it("that only a way not taken would need is named too", () => {
    const bought = { ...dal, routes: [route("jar", [line("1 kg", "jar-of-dal")])] };
    const who = {
      ...withStock(there("stock", "1 l")),
      routes: { mode: "AS_WRITTEN" as const, byName: [{ component: "dal", route: "jar" }] },
    };
    const plain = bundle([meal("monday", [line("700 g", made("dal"))])], [bought, stock]);
    expect(scaled(plain, 1, who).warnings).toContainEqual({
      code: "ON_HAND_NOT_NEEDED",
      path: ["household", "onHand", 0],
      item: "stock",
    });
  });

  it("leaves less to make, so that its own left-over is counted from what is made", () => {
    const { warnings } = scaled(week, 1, withStock(there("dal", "200 g")));
    expect(warnings).toContainEqual({
      code: "LEFT_OVER",
      path: ["components", "dal"],
      component: "dal",
      servingsMore: null,
    });
    expect(partOf(scaled(week, 1, withStock(there("dal", "200 g"))), "dal").leftOver.low).toBe(500);
  });
});

describe("several plans for one list", () => {
  const named = (slug: string, of: PlanBundle): PlanBundle => ({ ...of, plan: { ...of.plan, slug } });
  const [first, second] = [named("autumn", week), named("spring", week)];

  const all = (portions: Parameters<typeof scalePlans>[0], who: Household): readonly ScaledPlan[] => {
    const result = scalePlans(portions, who);
    if (!result.ok) throw new Error(JSON.stringify(result.problems));
    return result.value;
  };
  const madeTwice = (plans: readonly ScaledPlan[], who = household()): readonly Warning[] =>
    shop(plans, who).warnings.filter(({ code }) => code === "MADE_IN_TWO_PLANS");
  const taken = (plans: readonly ScaledPlan[]): number[] => plans.map((each) => partOf(each, "dal").onHand.high);

  it("take what is on hand once between them, the same one first whatever the order", () => {
    const who = withStock(there("dal", "1 kg"));
    const one = { bundle: first, servings: 1 };
    const two = { bundle: second, servings: 1 };
    expect(taken(all([one, two], who))).toEqual([700, 300]);
    expect(taken(all([two, one], who))).toEqual([300, 700]);
    expect(all([two, one], who).map(({ bundle: { plan: of } }) => of.slug)).toEqual(["spring", "autumn"]);
  });

  it("take turns by publisher, then plan, then servings", () => {
    const who = withStock(there("dal", "1 kg"));
    const other = { ...first, plan: { ...first.plan, publisher: "a-society", slug: "zzz" } };
    const portions = [
      { bundle: first, servings: 2 },
      { bundle: first, servings: 1 },
      { bundle: other, servings: 1 },
    ];
    expect(taken(all(portions, who))).toEqual([0, 300, 700]);
  });

  it("share an entry to its last gram, and each entry on its own", () => {
    const who = withStock(there("dal", "300 g", { useBy: "2026-03-02" }), there("dal", "800 g"), there("stock", "1 l"));
    const plans = all(
      [
        { bundle: first, servings: 1 },
        { bundle: second, servings: 1 },
      ],
      who,
    );
    expect(taken(plans)).toEqual([700, 400]);
    expect(plans.map((each) => partOf(each, "stock").onHand.high)).toEqual([200, 700]);
  });

  it("are each made in their own session, and the list says what is made twice", () => {
    const plans = all(
      [
        { bundle: first, servings: 1 },
        { bundle: second, servings: 1 },
      ],
      household(),
    );
    expect(plans.map((each) => partOf(each, "dal").batches)).toEqual([1, 1]);
    expect(madeTwice(plans)).toEqual(
      ["stock", "dal"].map((slug) => ({
        code: "MADE_IN_TWO_PLANS",
        path: ["components", slug],
        component: slug,
        plans: ["autumn", "spring"],
      })),
    );
    expect(shop(plans, household()).lines.find(({ food }) => food.slug === "lentils")!.need!.high).toBe(800);
    expect(madeTwice(plans.slice(0, 1))).toEqual([]);
  });

  it("do not speak of a component made twice where two publishers only share its name, or one of them has it", () => {
    const theirs = { ...second, plan: { ...second.plan, publisher: "other-society" } };
    const portions = [
      { bundle: first, servings: 1 },
      { bundle: theirs, servings: 1 },
    ];
    expect(madeTwice(all(portions, household()))).toEqual([]);
    const who = withStock(there("dal", "700 g"), there("stock", "200 ml"));
    expect(madeTwice(all([portions[0]!, { bundle: second, servings: 1 }], who), who)).toEqual([]);
  });

  it("do not call a component useless that another of them needs", () => {
    const soup = component("soup", "1 l", [line("1 kg", "leek")]);
    const other = bundle(plan([meal("lunch", [line("300 ml", made("soup"))])], { slug: "soups" }), [soup]);
    const who = withStock(there("soup", "100 ml"), there("cake", "1 piece"));
    const plans = all(
      [
        { bundle: first, servings: 1 },
        { bundle: other, servings: 1 },
      ],
      who,
    );
    const useless = plans.map(({ warnings }) =>
      warnings.flatMap((each) => (each.code === "ON_HAND_NOT_NEEDED" ? [each.item] : [])),
    );
    expect(useless).toEqual([["cake"], ["cake"]]);
  });

  it("say which of them is at fault, all at once", () => {
    const asked = (a: number, b: number) =>
      scalePlans(
        [
          { bundle: first, servings: a },
          { bundle: second, servings: 1 },
          { bundle: second, servings: b },
        ],
        household(),
      );
    expect(asked(0, 1.5)).toMatchObject({
      ok: false,
      problems: [
        { code: "SERVINGS_OUT_OF_RANGE", path: ["plans", 0, "servings"] },
        { code: "SERVINGS_OUT_OF_RANGE", path: ["plans", 2, "servings"] },
      ],
    });
    expect(asked(1, 1).ok).toBe(true);
  });

  it("say which of them cannot be computed", () => {
    const broken = bundle([meal("lunch", [line("1 g", made("nothing"))])]);
    expect(
      scalePlans(
        [
          { bundle: first, servings: 1 },
          { bundle: broken, servings: 1 },
        ],
        household(),
      ),
    ).toMatchObject({
      ok: false,
      problems: [{ code: "UNKNOWN_COMPONENT", path: ["plans", 1, "meals", "lunch", "lines", "l1"] }],
    });
  });

  it("name the plan in what they say about their lines", () => {
    const cups = bundle([meal("bread", [line("1 us-cup", "flour")])]);
    const plans = all(
      [
        { bundle: first, servings: 1 },
        { bundle: cups, servings: 1 },
      ],
      household(),
    );
    expect(shop(plans, household()).warnings).toContainEqual({
      code: "NOT_COMBINED",
      path: ["plans", 1, "meals", "bread", "lines", "l1"],
      food: "flour",
      missing: "DENSITY",
    });
  });
});
