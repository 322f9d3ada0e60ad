import { describe, expect, it } from "vitest";
import { inOven, planned, session, step, taskOf, timesOf, unattended, work } from "./builders.js";
import { sessionFaults } from "./session-faults.js";

describe("One oven, one hob, one cook (O-30)", () => {
  const a = work("a", [inOven("bake", 40, 200)]);
  const b = work("b", [inOven("bake", 25, 200)]);
  const c = work("c", [inOven("bake", 20, 160)]);
  const beans = work("beans", [unattended("boil", 60, { appliance: "hob-ring" })]);

  it("bakes equal temperatures together and the odd one after them: 60 minutes, not 145", () => {
    const input = session([a, b, c, beans]);
    const plan = planned(input);
    expect(plan.totalMinutes).toBe(60);
    expect(plan.optimal).toBe(true);
    expect(plan.handsOnMinutes).toBe(0);
    expect(sessionFaults(input, plan)).toEqual([]);
    const [from, to] = timesOf(plan, "c/bake");
    for (const id of ["a/bake", "b/bake"]) {
      const [start, end] = timesOf(plan, id);
      expect(end <= from || to <= start).toBe(true);
    }
  });

  it("takes 70 minutes with a fourth tray, which has to wait for a shelf", () => {
    const input = session([a, b, c, beans, work("b2", [inOven("bake", 25, 200)])]);
    const plan = planned(input);
    expect(plan.totalMinutes).toBe(70);
    expect(plan.optimal).toBe(true);
    expect(sessionFaults(input, plan)).toEqual([]);
  });

  it("says why each task of the longest chain waits", () => {
    const plan = planned(session([a, work("d", [inOven("bake", 20, 160), step("box", 5, { after: ["bake"] })])]));
    expect(plan.totalMinutes).toBe(60);
    const kinds = plan.criticalPath.map(({ because }) => because.kind);
    expect(plan.criticalPath.map(({ task }) => task)).toEqual(["d/bake", "a/bake"]);
    expect(kinds).toEqual(["BEGINNING", "TEMPERATURE"]);
  });

  it("lets rings of one hob have different temperatures", () => {
    const ring = (id: string, celsius: number) =>
      work(id, [unattended("cook", 30, { appliance: "hob-ring", temperatureC: celsius })]);
    expect(planned(session([ring("a", 95), ring("b", 120)])).totalMinutes).toBe(30);
  });
});

describe("Twice the food (O-14)", () => {
  const roots = (batches: number) =>
    work(
      "roots",
      [
        step("chop", 6, { grows: "PER_BATCH" }),
        inOven("roast", 25, 220, { after: ["chop"], grows: "PER_LOAD", loadBatches: "1" }),
      ],
      { batches },
    );

  it("doubles the chopping and leaves a tray at 25 minutes; two trays share the oven", () => {
    const plan = planned(session([roots(2)]));
    expect(timesOf(plan, "roots/chop")).toEqual([0, 12]);
    expect(timesOf(plan, "roots/roast/1")).toEqual([12, 37]);
    expect(timesOf(plan, "roots/roast/2")).toEqual([12, 37]);
    expect(taskOf(plan, "roots/roast/2").load).toEqual({ first: 2, last: 2, of: 2 });
    expect(plan.totalMinutes).toBe(37);
  });

  it("runs trays beyond the shelves one after another", () => {
    const plan = planned(session([roots(3)]));
    expect(plan.totalMinutes).toBe(18 + 25 + 25);
  });

  it("never stretches unattended time, even where the writer marked it as growing", () => {
    const plan = planned(session([work("dal", [unattended("simmer", 40, { grows: "PER_BATCH" })], { batches: 4 })]));
    expect(plan.totalMinutes).toBe(40);
  });

  it("keeps the session of a crowd computable by running many loads in blocks", () => {
    const input = session([roots(400)]);
    const plan = planned(input);
    expect(plan.tasks.length).toBeLessThan(12);
    expect(plan.totalMinutes).toBe(2400 + 200 * 25);
    expect(sessionFaults(input, plan)).toEqual([]);
  });

  it("starts a load's next step as soon as that load is ready", () => {
    const trays = work(
      "crisps",
      [
        step("spread", 10, { grows: "PER_LOAD", loadBatches: "1" }),
        inOven("bake", 20, 180, { after: ["spread"], grows: "PER_LOAD", loadBatches: "1" }),
      ],
      { batches: 2 },
    );
    const plan = planned(session([trays]));
    expect(timesOf(plan, "crisps/bake/1")).toEqual([10, 30]);
    expect(plan.totalMinutes).toBe(40);
  });
});

describe("Order", () => {
  it("finishes a component before the step that uses it, and not before steps that do not", () => {
    const dal = work("dal", [unattended("boil", 30, { appliance: "hob-ring" })]);
    const spread = work("spread", [step("toast", 6), step("blend", 5, { after: ["toast"], lines: ["dal"] })], {
      uses: [{ line: "dal", component: "dal" }],
    });
    const plan = planned(session([spread, dal]));
    expect(timesOf(plan, "spread/toast")).toEqual([0, 6]);
    expect(timesOf(plan, "spread/blend")).toEqual([30, 35]);
    expect(plan.order).toContainEqual({ before: "dal/boil", after: "spread/blend", minWait: 0, maxWait: null });
  });

  it("reaches through a component without steps to what that one uses", () => {
    const dal = work("dal", [unattended("boil", 30)]);
    const jar = work("jar", [], { uses: [{ line: "l1", component: "dal" }] });
    const meal = work("bowl", [step("serve", 2)], { kind: "MEAL", uses: [{ line: "l1", component: "jar" }] });
    expect(timesOf(planned(session([meal, jar, dal])), "meal:bowl/serve")).toEqual([30, 32]);
  });

  it("takes the zest before the juice when asked to", () => {
    const juice = work("a-dressing", [step("squeeze", 4)]);
    const zest = work("b-crumbs", [step("grate", 3)]);
    const plan = planned(
      session([juice, zest], {
        extraOrder: [
          {
            before: { kind: "COMPONENT", slug: "b-crumbs", step: "grate" },
            after: { kind: "COMPONENT", slug: "a-dressing", step: "squeeze" },
          },
        ],
      }),
    );
    expect(timesOf(plan, "b-crumbs/grate")).toEqual([0, 3]);
    expect(timesOf(plan, "a-dressing/squeeze")).toEqual([3, 7]);
  });

  it("keeps least and greatest waits, the latter from whichever step ends last", () => {
    const roots = work("roots", [
      inOven("roast", 40, 200),
      unattended("sauce", 10, { appliance: "hob-ring" }),
      step("box", 4, { after: ["roast", "sauce"], minWait: 20, maxWait: 30 }),
    ]);
    const busy = work("busy", [step("knead", 62)]);
    const plan = planned(session([roots, busy]));
    const [start] = timesOf(plan, "roots/box");
    expect(start).toBeGreaterThanOrEqual(60);
    expect(start).toBeLessThanOrEqual(70);
    expect(plan.totalMinutes).toBe(66);
  });

  it("needs two cooks to be in two places", () => {
    const chop = (slug: string) => work(slug, [step("chop", 10)]);
    const input = session([chop("a"), chop("b")], { kitchen: { cooks: 2, appliances: {} } });
    const plan = planned(input);
    expect(plan.totalMinutes).toBe(10);
    expect(plan.tasks.flatMap(({ cooks }) => cooks).sort()).toEqual([1, 2]);
    expect(planned(session([chop("a"), chop("b")])).totalMinutes).toBe(20);
  });

  it("frees the hands as early as the shortest session allows", () => {
    const bread = work("bread", [step("knead", 10), unattended("rest", 60, { after: ["knead"] })]);
    const salad = work("salad", [step("wash", 5), step("dress", 5, { after: ["wash"] })]);
    const plan = planned(session([salad, bread]));
    expect(plan.totalMinutes).toBe(70);
    expect(plan.handsFreeMinute).toBe(20);
    expect(plan.handsFreeOptimal).toBe(true);
  });
});

describe("Washing a machine between uses", () => {
  const sauce = (slug: string, leaves?: string) =>
    work(slug, [
      step("blend", 4, { appliance: "blender", washMinutes: 3, ...(leaves === undefined ? {} : { leaves }) }),
    ]);

  it("washes after a use when another use leaves something else", () => {
    const input = session([sauce("pesto", "garlic"), sauce("lemon-cream", "lemon")]);
    const plan = planned(input);
    expect(plan.tasks.filter(({ kind }) => kind === "WASH")).toHaveLength(2);
    expect(plan.totalMinutes).toBe(14);
    expect(sessionFaults(input, plan)).toEqual([]);
  });

  it("does not wash between uses that leave the same, nor after the only use", () => {
    expect(planned(session([sauce("a", "garlic"), sauce("b", "garlic")])).totalMinutes).toBe(8);
    expect(planned(session([sauce("a")])).totalMinutes).toBe(4);
  });

  it("washes once after all loads of a step", () => {
    const big = work(
      "pesto",
      [step("blend", 4, { appliance: "blender", washMinutes: 3, grows: "PER_LOAD", loadBatches: "1" })],
      { batches: 3 },
    );
    const input = session([big, sauce("cream", "cream")]);
    const plan = planned(input);
    expect(plan.totalMinutes).toBe(12 + 3 + 4 + 3);
    expect(sessionFaults(input, plan)).toEqual([]);
  });
});

describe("A larger session", () => {
  it("says how far it may be from the shortest when the budget is spent", () => {
    const works = Array.from({ length: 14 }, (_, k) =>
      work(`c${k}`, [
        step("cut", 3 + ((k * 7) % 11)),
        inOven("bake", 20 + ((k * 13) % 25), 160 + 20 * (k % 3), { after: ["cut"] }),
        step("box", 2 + (k % 4), { after: ["bake"] }),
      ]),
    );
    const input = session(works);
    const plan = planned(input);
    expect(sessionFaults(input, plan)).toEqual([]);
    expect(plan.lowerBoundMinutes).toBeLessThanOrEqual(plan.totalMinutes);
    expect(plan.gap).toBeCloseTo((plan.totalMinutes - plan.lowerBoundMinutes) / plan.lowerBoundMinutes, 12);
    expect(plan.optimal).toBe(plan.gap === 0);
  });

  it("is the same every time", () => {
    const works = Array.from({ length: 8 }, (_, k) =>
      work(`c${k}`, [step("cut", 3 + k), inOven("bake", 20 + k, 160 + 20 * (k % 2), { after: ["cut"] })]),
    );
    expect(planned(session(works))).toEqual(planned(session(works)));
  });
});

describe("An oven", () => {
  it("is lit no earlier than it has to be for what goes in", () => {
    const heat = inOven("heat", 15, 200);
    const bake = inOven("bake", 30, 200, { after: ["heat", "cut"], lines: ["l1"] });
    const plan = planned(session([work("roots", [heat, step("cut", 50), bake])]));
    expect(timesOf(plan, "roots/heat")).toEqual([35, 50]);
    expect(plan.totalMinutes).toBe(80);
  });

  it("takes a tray as late as the hands that box it are busy", () => {
    const tray = work("roots", [inOven("bake", 30, 200), step("box", 5, { after: ["bake"], maxWait: 90 })]);
    const plan = planned(session([tray, work("dough", [step("knead", 80)])]));
    const [, baked] = timesOf(plan, "roots/bake");
    expect(timesOf(plan, "roots/box")[0]).toBe(baked);
  });
});
