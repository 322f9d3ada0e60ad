import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Step } from "../../../src/domain/model/component.js";
import { defaultLimits } from "../../../src/domain/prep-session/cooling.js";
import { planSession } from "../../../src/domain/prep-session/schedule.js";
import { session, step, unattended, work } from "./builders.js";

// Two hours at room temperature in all: USDA FSIS, Danger Zone (40 °F - 140 °F). Food that is cooked in two goes stands as
// warm between them as after the last.

const cold = { within: 120, neverStands: false };
const boiled = (id: string, minutes: number, rest: Partial<Step> = {}): Step =>
  unattended(id, minutes, { appliance: "hob-ring", grows: "PER_LOAD", ...rest });
const byHand = (id: string, after: readonly string[], rest: Partial<Step> = {}): Step =>
  step(id, 6, { after, grows: "PER_LOAD", ...rest });

const twiceBoiled = (minutes: number): readonly Step[] => [
  boiled("boil", minutes),
  byHand("drain", ["boil"]),
  boiled("boil-again", minutes + 20, { after: ["drain"] }),
  byHand("drain-again", ["boil-again"]),
  byHand("chill", ["drain-again"], { chills: true }),
];

describe("What is cooked in two goes", () => {
  it("stands no longer between them than it may before the cold, however many loads", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 50 }),
        fc.integer({ min: 1, max: 6 }),
        fc.integer({ min: 1, max: 3 }),
        (minutes, loads, rings) => {
          const beans = work("beans", twiceBoiled(minutes), { batches: loads, loads });
          const kitchen = { cooks: 1, appliances: { "hob-ring": rings } };
          const found = planSession(session([beans], { kitchen, limits: defaultLimits(beans, cold) }), {
            conflictLimit: 2000,
          });
          if (!found.ok) {
            expect(found.problems.map(({ code }) => code)).toEqual(["WAITS_CANNOT_BE_KEPT"]);
            return;
          }
          const of = (id: string) => found.value.tasks.filter((task) => task.step === id);
          for (const first of of("boil")) {
            const again = of("boil-again").filter(({ load }) => load === null || load.first === first.load?.first);
            for (const second of again) expect(second.startMinute - first.endMinute).toBeLessThanOrEqual(120);
          }
        },
      ),
      { numRuns: 40 },
    );
  });

  it("is limited from the last heat before each, and not across a step that chills it, nor where nothing needs the cold", () => {
    const ends = (steps: readonly Step[], rule: typeof cold | null = cold) =>
      defaultLimits(work("it", steps), rule)
        .filter(({ max, until }) => max === 120 && until === "START")
        .map(({ from, to }) => [from.step, to.step]);
    const chilled = twiceBoiled(20).map((each) => (each.id === "drain" ? { ...each, chills: true } : each));
    const thrice = [...twiceBoiled(20), boiled("fry", 10, { after: ["drain-again"] })];
    expect(ends(twiceBoiled(20))).toEqual([["boil", "boil-again"]]);
    expect(ends(thrice)).toEqual([["boil", "boil-again"], ["boil-again", "fry"]]); // prettier-ignore
    expect(ends(chilled)).toEqual([]);
    expect(ends(twiceBoiled(20), null)).toEqual([]);
  });
});
