import { describe, expect, it } from "vitest";
import type { KeptMeal } from "../../../src/domain/storage/guidance.js";
import { ask, eaten, guidanceOf, kept, ruled, says } from "./kept-builders.js";

const rules = [ruled({ id: "uk-leftovers", counts: "HOURS", days: 2, printed: "48 hours", region: "GB" })];
const nine = { start: "2026-11-29T09:00:00Z", zone: "Europe/London" };
const eatenAt = (slug: string, day: number, at: string): KeptMeal => {
  const { meal, lines } = eaten(slug, day, "stew");
  return { meal: { ...meal, at }, lines };
};
const late = (meals: readonly KeptMeal[], session: typeof nine | null, published = rules): readonly string[] =>
  guidanceOf(
    ask({ components: [kept("stew", "leftovers")], meals }, { rules: published, region: "GB", session }),
    "stew",
  ).tooLateFor;

describe.each([
  ["from 09:00, where no start is given", null],
  ["from a session at 09:00", nine],
])("48 hours %s", (_, session) => {
  // Food Standards Agency (UK), Cooking your food: leftovers within 48 hours. 18:00 two days later are 57.
  it("are over before the supper two days later, and not before the breakfast", () => {
    expect(late([eaten("supper", 2, "stew")], session)).toEqual(["supper"]);
    expect(late([eaten("supper", 1, "stew"), eatenAt("breakfast", 2, "08:30")], session)).toEqual([]);
    expect(late([eatenAt("on the minute", 2, "09:00"), eatenAt("a minute after", 2, "09:01")], session)).toEqual([
      "a minute after",
    ]);
  });

  it("bring advice that comes in time itself", () => {
    const meals = [eaten("supper", 2, "stew")];
    const answer = ask({ components: [kept("stew", "leftovers")], meals }, { rules, region: "GB", session });
    expect(guidanceOf(answer, "stew").advice).toContainEqual({
      code: "MAKE_LATER",
      component: "stew",
      meals: [{ meal: "supper", day: 2, notBefore: 1 }],
    });
    expect(guidanceOf(answer, "supper").advice).toContainEqual({ code: "EAT_EARLIER", meal: "supper", latestDay: 1 });
  });

  it("say on which day they end, to whoever eats on it in time", () => {
    const meals = [eatenAt("breakfast", 2, "08:30")];
    const answer = ask({ components: [kept("stew", "leftovers")], meals }, { rules, region: "GB", session });
    expect(guidanceOf(answer, "stew").advice).toContainEqual(
      expect.objectContaining({ code: "EAT_BEFORE", day: 2, hours: 48 }),
    );
  });
});

it("48 hours from an evening end in the evening two days later, in the zone of the session", () => {
  const evening = { start: "2026-11-29T20:00:00+01:00", zone: "Europe/Warsaw" };
  expect(late([eaten("supper", 2, "stew"), eatenAt("midnight snack", 2, "23:00")], evening)).toEqual([
    "midnight snack",
  ]);
});

it("hours are elapsed time where the clocks go back: 48 of them end an hour earlier on the wall", () => {
  // Europe/London, night to Sunday 25 October 2026
  const saturday = { start: "2026-10-24T18:00:00+01:00", zone: "Europe/London" };
  expect(late([eatenAt("at five", 2, "17:00"), eatenAt("at six", 2, "18:00")], saturday)).toEqual(["at six"]);
});

it("days last until midnight, whatever the hour of the meal", () => {
  const days = [ruled({ id: "days", days: 2, region: "GB" })];
  expect(late([eatenAt("late", 2, "23:59"), eatenAt("early", 3, "00:00")], null, days)).toEqual(["early"]);
  expect(late([eatenAt("late", 2, "23:59"), eatenAt("early", 3, "00:00")], nine, days)).toEqual(["early"]);
});

describe("a range", () => {
  // USDA FSIS, Leftovers and Food Safety: 3 to 4 days
  const range = [ruled({ id: "leftovers-fridge", days: 4, daysFrom: 3, printed: "3 to 4 days" })];
  const of = (words: Parameters<typeof kept>[2] = []) =>
    guidanceOf(
      ask({ components: [kept("stew", "leftovers", words)], meals: [eaten("m", 4, "stew")] }, { rules: range }),
      "stew",
    );

  it("is planned by its lower end, and both ends are told", () => {
    expect(of()).toMatchObject({ days: 3, upToDays: 4, tooLateFor: ["m"] });
    expect(of().basis[0]).toMatchObject({ days: 4, daysFrom: 3, printed: "3 to 4 days" });
  });

  it("is cut by whatever is stricter, and a writer inside it does not exceed it", () => {
    expect(of([says("FRIDGE", 3)])).toMatchObject({ days: 3, upToDays: null });
    expect(of([says("FRIDGE", 2)])).toMatchObject({ days: 2, upToDays: null });
    expect(of([says("FRIDGE", 4)]).advice.map(({ code }) => code)).not.toContain("WRITER_EXCEEDS_RULE");
    expect(of([says("FRIDGE", 5)]).advice.map(({ code }) => code)).toContain("WRITER_EXCEEDS_RULE");
  });
});
