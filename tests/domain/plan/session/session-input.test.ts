import { describe, expect, it } from "vitest";
import type { Component, Step } from "../../../../src/domain/model/component.js";
import { noHousehold, type Household } from "../../../../src/domain/model/household.js";
import type { Line } from "../../../../src/domain/model/line.js";
import type { PlanBundle } from "../../../../src/domain/model/plan.js";
import { scalePlan } from "../../../../src/domain/plan/scale-plan.js";
import { firstKeepingClasses } from "../../../../src/domain/storage/first-keeping-classes.js";
import { sessionInput } from "../../../../src/domain/plan/session/session-input.js";
import {
  bundle,
  component,
  food,
  household,
  line,
  made,
  meal,
  of,
  onHand,
  part,
  plan,
  route,
  step,
} from "../../../kit/builders.js";

function sessionOf(written: PlanBundle, servings = 1, who: Household = noHousehold) {
  const scaled = scalePlan(written, servings, who);
  if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
  return sessionInput(scaled.value, who, firstKeepingClasses);
}

const stock = component("stock", "1 l", [line("500 g", "leek")], { title: "Leek stock", steps: [step("simmer", 45)] });
const soup = component("soup", "600 g", [line("500 ml", made("stock")), line("2 g", "salt")], {
  steps: [step("blend", 5)],
});

describe("the work of a session", () => {
  it("is every component that is made and every meal of its day, each with its steps, size and what it waits for", () => {
    const today = meal("supper", [line("600 g", made("soup"))], { title: "Soup supper", steps: [step("serve", 3)] });
    const { work } = sessionOf(bundle([today, meal("lunch", [line("10 g", "bread")], { day: 1 })], [soup, stock]), 3);
    expect(work).toEqual([
      {
        kind: "COMPONENT",
        slug: "stock",
        title: "Leek stock",
        steps: [{ ...stock.steps[0], grows: "PER_BATCH" }],
        batches: 1.5,
        loads: 1,
        uses: [],
        chills: [],
      },
      {
        kind: "COMPONENT",
        slug: "soup",
        title: "soup",
        steps: [{ ...soup.steps[0], grows: "PER_BATCH" }],
        batches: 3,
        loads: 1,
        uses: [{ line: "l1", component: "stock" }],
        chills: [],
      },
      {
        kind: "MEAL",
        slug: "supper",
        title: "Soup supper",
        steps: [{ ...today.steps[0], grows: "PER_BATCH" }],
        batches: 3,
        loads: 1,
        uses: [{ line: "l1", component: "soup" }],
      },
    ]);
  });

  it("counts the pots that a component needs", () => {
    const small = { ...stock, batch: { min: "0", max: "1", increment: null } };
    const { work } = sessionOf(bundle([meal("m", [line("5/2 l", made("stock"))])], [small]));
    expect(work[0]).toMatchObject({ batches: 2.5, loads: 3 });
  });

  it("takes the steps of the route that was taken", () => {
    const open = step("open", 1);
    const jar = { ...stock, routes: [route("jar", [line("1 l", "jar")], { steps: [open] })] };
    const who = household({ routes: { mode: "AS_WRITTEN", byName: [{ component: "stock", route: "jar" }] } });
    const { work } = sessionOf(
      bundle([meal("m", [line("1 l", made("stock"))])], [jar], [food("jar", { shoppedBy: "VOLUME" })]),
      1,
      who,
    );
    expect(work[0]?.steps).toEqual([{ ...open, grows: "PER_BATCH" }]);
  });

  it("leaves out what is on hand in full, and nothing waits for it", () => {
    const who = household({
      onHand: [onHand("stock", "2 l", { item: { kind: "COMPONENT", component: "stock" } })],
    });
    const { work } = sessionOf(bundle([meal("m", [line("600 g", made("soup"))])], [soup, stock]), 1, who);
    expect(work.map(({ slug, uses }) => [slug, uses])).toEqual([
      ["soup", []],
      ["m", [{ line: "l1", component: "soup" }]],
    ]);
  });
});

describe("the frame of a session", () => {
  const written = bundle(
    plan([meal("m", [line("1 l", made("stock"))])], { kitchen: { cooks: 2, appliances: { oven: 1 } } }),
    [stock],
  );

  it("is the kitchen of the plan, and no time of the day where the household gives none", () => {
    expect(sessionOf(written)).toMatchObject({
      kitchen: { cooks: 2, appliances: { oven: 1 } },
      start: null,
      evening: null,
      extraOrder: [],
    });
  });

  it("begins when the household says, in its zone", () => {
    const session = { start: "2026-03-01T09:00:00Z", zone: "Europe/Lisbon" };
    expect(sessionOf(written, 1, household({ session })).start).toEqual({
      instant: "2026-03-01T09:00:00Z",
      zone: "Europe/Lisbon",
    });
  });
});

/** Zest comes off before the juice is pressed: common practice, no source. */
const lemon = food("lemon", {
  shoppedBy: "COUNT",
  parts: [part("zest", "6 g"), part("juice", "45 ml", ["zest"])],
});

const uses = (id: string, facts: Partial<Step> = {}): Step => step(id, 5, { lines: ["l1"], ...facts });
const zest = line("6 g", of("lemon", "zest"));
const juice = line("45 ml", of("lemon", "juice"));
const dish = (slug: string, lines: readonly Line[], steps: readonly Step[]): Component =>
  component(slug, "100 g", lines, { steps });

describe("parts of one food", () => {
  const orders = (components: readonly Component[], lines: readonly Line[] = [], steps: readonly Step[] = []) =>
    sessionOf(
      bundle(
        [meal("m", [...components.map(({ slug }) => line("100 g", made(slug))), ...lines], { steps })],
        components,
        [lemon],
      ),
    ).extraOrder.map(({ before, after }) => [before, after].map(({ kind, slug, step: id }) => `${kind} ${slug} ${id}`));

  it("are taken in their order, across components and meals", () => {
    const cake = dish("cake", [zest], [uses("grate"), step("bake", 30)]);
    const syrup = dish("syrup", [juice], [uses("press"), step("boil", 5)]);
    expect(orders([syrup, cake])).toEqual([["COMPONENT cake grate", "COMPONENT syrup press"]]);
    const dressing = { ...juice, id: "squeeze" };
    expect(orders([cake], [dressing], [step("dress", 2, { lines: ["squeeze"] })])).toEqual([
      ["COMPONENT cake grate", "MEAL m dress"],
    ]);
  });

  it("are taken in their order by every step that uses them", () => {
    const cake = dish("cake", [zest], [uses("grate"), uses("candy")]);
    const syrup = dish("syrup", [juice], [uses("press"), uses("strain")]);
    expect(orders([cake, syrup])).toEqual([
      ["COMPONENT cake grate", "COMPONENT syrup press"],
      ["COMPONENT cake grate", "COMPONENT syrup strain"],
      ["COMPONENT cake candy", "COMPONENT syrup press"],
      ["COMPONENT cake candy", "COMPONENT syrup strain"],
    ]);
  });

  it("need no order where one step takes both, or nobody takes the first", () => {
    const both = dish("cake", [zest, juice], [step("mix", 5, { lines: ["l1", "l2"] })]);
    expect(orders([both])).toEqual([]);
    expect(orders([dish("syrup", [juice], [uses("press")])])).toEqual([]);
    expect(orders([dish("cake", [zest], [uses("grate")])])).toEqual([]);
  });

  it("need none beside whole fruit, or fruit of another kind", () => {
    const whole = dish("cake", [line("6 g", "lemon")], [uses("slice")]);
    const syrup = dish("syrup", [juice], [uses("press")]);
    const slices = { ...lemon, measures: [], densities: [] };
    const extra = sessionOf(
      bundle([meal("m", [line("100 g", made("syrup"))])], [syrup], [slices, food("orange", { parts: lemon.parts })]),
    ).extraOrder;
    expect(extra).toEqual([]);
    expect(whole.lines[0]?.item).toEqual(of("lemon"));
  });

  it("stand back where the plan itself asks for the opposite", () => {
    const cake = dish(
      "cake",
      [juice, zest],
      [
        step("press", 5, { lines: ["l1"] }),
        step("rest", 5, { after: ["press"] }),
        step("grate", 5, { lines: ["l2"], after: ["rest"] }),
      ],
    );
    expect(orders([cake])).toEqual([]);
  });

  it("stand back where the opposite follows through what one component takes of another", () => {
    const syrup = dish("syrup", [juice], [uses("press")]);
    const cake = dish("cake", [zest, line("50 g", made("syrup"))], [uses("grate"), step("soak", 1, { lines: ["l2"] })]);
    expect(orders([cake, syrup])).toEqual([]);
    expect(orders([dish("cake", [zest], [uses("grate")]), syrup])).toHaveLength(1);
  });

  it("keep their order where it is the plan's own as well", () => {
    const cake = dish(
      "cake",
      [zest, juice],
      [step("grate", 5, { lines: ["l1"] }), step("press", 5, { lines: ["l2"], after: ["grate"] })],
    );
    expect(orders([cake])).toEqual([["COMPONENT cake grate", "COMPONENT cake press"]]);
  });
});
