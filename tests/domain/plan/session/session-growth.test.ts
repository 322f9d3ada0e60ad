import { describe, expect, it } from "vitest";
import type { Step } from "../../../../src/domain/model/component.js";
import { noHousehold, type Household } from "../../../../src/domain/model/household.js";
import type { PlanBundle } from "../../../../src/domain/model/plan.js";
import { scaledSession } from "../../../../src/domain/plan/session/scaled-session.js";
import { scalePlan } from "../../../../src/domain/plan/scale-plan.js";
import type { PrepSession } from "../../../../src/domain/prep-session/session.js";
import { firstKeepingClasses } from "../../../../src/domain/storage/first-keeping-classes.js";
import { bundle, component, line, made, meal, step } from "../../../kit/builders.js";

function sessionOf(written: PlanBundle, servings: number, kitchen: Household["kitchen"] = null): PrepSession {
  const household = { ...noHousehold, kitchen };
  const scaled = scalePlan(written, servings, household);
  if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
  const found = scaledSession(scaled.value, household, firstKeepingClasses);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value;
}

const alone = (rest: Partial<Step> = {}): Partial<Step> => ({ attention: "UNATTENDED", ...rest });
const rings = { cooks: null, appliances: { "hob-ring": 4, "oven-shelf": 2 } };
/** One batch a person; the writer says nothing of how steps grow. */
const pot = (steps: readonly Step[], rest: Parameters<typeof component>[3] = {}): PlanBundle =>
  bundle(
    [meal("m", [line("1 kg", made("pot"))], { day: 1 })],
    [
      component("pot", "1 kg", [line("500 g", "leek"), line("5/2 l", "water")], {
        steps: [...steps],
        keepsAs: "cooked-vegetable",
        ...rest,
      }),
    ],
  );

const times = ({ tasks }: PrepSession, id: string) =>
  tasks.filter((task) => task.step === id).map((task) => task.endMinute - task.startMinute);

describe("A writer's plan that leaves `grows` out", () => {
  it("takes longer with the hands for more people, and no longer to rest", () => {
    const bread = pot([step("knead", 8), step("rest", 60, { ...alone(), after: ["knead"] })]);
    for (const [servings, hands] of [
      [1, 8],
      [4, 32],
      [12, 96],
      [40, 320],
    ] as const) {
      const session = sessionOf(bread, servings);
      expect(session.handsOnMinutes).toBe(hands);
      expect(times(session, "rest")).toEqual([60]);
    }
  });

  it("boils 8.75 batches in five pots where a pot takes two", () => {
    const steps = [step("boil", 30, { ...alone({ appliance: "hob-ring" }), lines: ["l1"] })];
    const written = pot(steps, { batch: { min: "0", max: "2", increment: null } });
    const eaters = [{ count: 1, portion: "35/4" }];
    const household = { ...noHousehold, eaters, kitchen: rings };
    const scaled = scalePlan(written, 1, household);
    if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
    const found = scaledSession(scaled.value, household, firstKeepingClasses);
    if (!found.ok) throw new Error(JSON.stringify(found.problems));
    expect(times(found.value, "boil")).toEqual([30, 30, 30, 30, 30]);
    // Four rings: the fifth pot waits.
    expect(found.value.totalMinutes).toBe(60);
  });

  it("divides what no household pot holds, where the writer names no limit", () => {
    const written = pot([step("boil", 30, { ...alone({ appliance: "hob-ring" }), lines: ["l1", "l2"] })]);
    // 3 kg and litres a batch: 21 at seven, and a pot holds ten.
    expect(times(sessionOf(written, 7, rings), "boil")).toHaveLength(3);
    expect(times(sessionOf(written, 3, rings), "boil")).toHaveLength(1);
  });

  it("takes the pots one after another in a kitchen of one ring", () => {
    const written = pot([step("boil", 30, { ...alone({ appliance: "hob-ring" }), lines: ["l1"] })], {
      batch: { min: "0", max: "2", increment: null },
    });
    const one = { cooks: 1, appliances: { "hob-ring": 1 } };
    expect(sessionOf(written, 8, one).totalMinutes).toBe(120);
    expect(sessionOf(written, 8, rings).totalMinutes).toBe(30);
  });

  it("keeps a step as long as its writer says where `grows: fixed` is written", () => {
    const written = pot([step("stir", 8, { growthStated: true })]);
    expect(sessionOf(written, 12).handsOnMinutes).toBe(8);
  });
});

describe("Coming to the boil", () => {
  const boil = (rest: Partial<Step>) =>
    step("boil", 30, { ...alone({ appliance: "hob-ring" }), lines: ["l1", "l2"], ...rest });
  const big = { batch: { min: "0", max: "4", increment: null } };

  it("grows with what is in the pot, and the hold does not", () => {
    const written = pot([boil({ heatUpMinutes: 12 })], big);
    expect(times(sessionOf(written, 1, rings), "boil")).toEqual([42]);
    expect(times(sessionOf(written, 3, rings), "boil")).toEqual([36 + 30]);
    // Two pots of three batches each.
    expect(times(sessionOf(written, 6, rings), "boil")).toEqual([66, 66]);
  });

  it("takes longer for more litres where the writer gives one time for both", () => {
    // 356 kJ a litre from 15 to 100 °C; 1.2 kW in the pot: five minutes. Two batches more are five litres more.
    expect(times(sessionOf(pot([boil({})], big), 3, rings), "boil")).toEqual([30 + 25]);
    expect(times(sessionOf(pot([boil({})], big), 1, rings), "boil")).toEqual([30]);
  });
});

describe("What is hot", () => {
  const drained = [
    step("boil", 30, { ...alone({ appliance: "hob-ring" }), lines: ["l1", "l2"] }),
    step("drain", 4, { appliance: "sink", after: ["boil"] }),
    step("chill", 3, { after: ["drain"], minWait: 20, maxWait: 300 }),
  ];
  const other = component("dough", "1 kg", [line("500 g", "leek")], {
    steps: [step("knead", 50)],
    keepsAs: "dry-crumb",
  });
  const both = (servings: number): PrepSession => {
    const { plan, components, foods } = pot(drained, { batch: { min: "0", max: "1", increment: null } });
    const meals = plan.meals.map((each) => ({
      ...each,
      lines: [...each.lines, line("1 kg", made("dough"), { id: "x" })],
    }));
    return sessionOf({ plan: { ...plan, meals }, components: [...components, other], foods }, servings, rings);
  };

  it.each([1, 3, 6])(
    "is drained within ten minutes of each pot's end, and cold within two hours, for %s",
    (servings) => {
      const { tasks } = both(servings);
      const pots = tasks.filter((task) => task.step === "boil");
      expect(pots).toHaveLength(servings);
      pots.forEach((boiled, at) => {
        const drain = tasks.filter((task) => task.step === "drain")[at]!;
        const chill = tasks.filter((task) => task.step === "chill")[at]!;
        expect(drain.startMinute - boiled.endMinute).toBeLessThanOrEqual(10);
        expect(chill.endMinute - boiled.endMinute).toBeLessThanOrEqual(120);
      });
    },
  );

  it.each(["Put it straight into the fridge.", "Sofort in den Kühlschrank stellen.", "Mettre aussitôt au frais."])(
    "waits no longer than its words allow: %s",
    (text) => {
      const written = pot([step("blend", 5), { ...step("chill", 1, { after: ["blend"] }), text }]);
      const { tasks } = sessionOf(written, 3);
      const [blend, chill] = ["blend", "chill"].map((id) => tasks.find((task) => task.step === id)!);
      expect(chill!.startMinute - blend!.endMinute).toBeLessThanOrEqual(5);
    },
  );
});

describe("What is eaten warm today", () => {
  const steps = [
    step("boil", 30, { ...alone({ appliance: "hob-ring" }), lines: ["l1", "l2"] }),
    step("chill", 5, { after: ["boil"], minWait: 20, maxWait: 90 }),
  ];
  const eaten = (...days: readonly number[]): PlanBundle => {
    const { plan, components, foods } = pot(steps);
    const meals = days.map((day) =>
      meal(`day-${day}`, [line("1 kg", made("pot"))], { day, steps: [step("serve", 4, { lines: ["l1"] })] }),
    );
    return { plan: { ...plan, meals }, components, foods };
  };

  it("is taken from the pot, before the rest is put into the cold", () => {
    const { tasks } = sessionOf(eaten(0, 1), 1, rings);
    const [serve, chill] = ["serve", "chill"].map((id) => tasks.find((task) => task.step === id)!);
    expect(serve!.startMinute).toBeLessThan(chill!.endMinute);
    expect(serve!.startMinute).toBeGreaterThanOrEqual(30);
  });

  it("is not chilled at all where nothing is left of it", () => {
    expect(sessionOf(eaten(0), 1, rings).tasks.map((task) => task.step)).toEqual(["boil", "serve"]);
  });
});
