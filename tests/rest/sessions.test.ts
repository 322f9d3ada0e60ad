import ICAL from "ical.js";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { PlanBundle } from "../../src/domain/model/plan.js";
import { describeOnBothDatabases } from "../kit/databases.js";
import { bundle, component, food, line, made, meal, step } from "../kit/builders.js";
import { openRest, planOf, publisher, type RestApp } from "./open-rest.js";

// Raw mince may be out of the cold for two hours (USDA FSIS, Danger Zone), so an hour's work on each portion allows two a session.

/** A meal on each of some days, with an hour's work on raw mince for each. */
const kneaded = (slug: string, days: readonly number[]): PlanBundle => {
  const { plan, components, foods } = bundle(
    days.map((day, at) => meal(`m${at}`, [line("1 kg", made("loaf"))], { day })),
    [
      component("loaf", "1 kg", [line("1 kg", "mince")], {
        title: "Herb loaf",
        steps: [
          step("knead", 60, { text: "Knead the mince.", grows: "PER_BATCH", growthStated: true }),
          step("fry", 20, { text: "Fry it through.", appliance: "hob-ring", after: ["knead"] }),
        ],
        keepsAs: "meat-leftovers",
      }),
    ],
    [food("mince", { keepsAs: "raw-mince" })],
  );
  return { plan: { ...plan, publisher, slug, serves: 1 }, components, foods };
};

const start = "start=2026-03-28T09:00&zone=Europe/Berlin";

describeOnBothDatabases("the sessions of a plan over REST", (open) => {
  let app: RestApp;

  beforeAll(async () => {
    app = await openRest(open);
    const at = new Date("2026-03-01T09:00:00Z");
    await app.deps.data.revisions.publish(kneaded("two-days", [0, 0, 1]), at);
    await app.deps.data.revisions.publish(kneaded("no-day", [0, 0, 0]), at);
  });
  afterAll(() => app.close());

  const events = (text: string): readonly ICAL.Event[] =>
    new ICAL.Component(ICAL.parse(text) as unknown[])
      .getAllSubcomponents("vevent")
      .map((each) => new ICAL.Event(each))
      .filter(({ uid }) => uid.startsWith("session"));

  it("are the one where one serves", async () => {
    const { body, status } = await app.get(`${planOf("bean-night")}/session?servings=4`);
    expect([status, body.sessionProblems]).toEqual([200, []]);
    expect(body.sessions).toHaveLength(1);
    expect(body.sessions[0]).toMatchObject({ day: 0, totalMinutes: body.totalMinutes, tasks: body.tasks });
    expect(body).toMatchObject({ moreThanADay: false, longerThanPromised: null });
    expect(body.clearingUpMinutes).toBeGreaterThan(0);
  });

  it("are several where the work is more than a day's, and the whole is still said", async () => {
    const { body } = await app.get(`${planOf("bean-night")}/session?servings=40`);
    expect(body.moreThanADay).toBe(true);
    expect(body.cooksForADay).toBe(Math.ceil(body.handsOnMinutes / 360));
    const { text } = await app.get(`${planOf("bean-night")}.md?servings=40`);
    expect(text).toContain(`${body.cooksForADay} cooks have six hours each at most`);
    expect(body.sessions.map(({ day }: { day: number }) => day)).toEqual([0, 1]);
    expect(body.sessions.every((each: { moreThanADay: boolean }) => !each.moreThanADay)).toBe(true);
  });

  it("begin with the first of several where one cannot keep its limits, and the reason is said in words", async () => {
    const { body, status } = await app.get(`${planOf("two-days")}/session?${start}`);
    expect(status).toBe(200);
    expect(body.sessions.map(({ day }: { day: number }) => day)).toEqual([0, 1]);
    expect(body.tasks).toEqual(body.sessions[0].tasks);
    expect(body.sessionProblems.map(({ code }: { code: string }) => code)).toEqual(["WAITS_CANNOT_BE_KEPT"]);
    expect(body.sessionProblems[0].message).toContain("Herb loaf (“Knead the mince.”)");
    const { body: plan } = await app.get(`${planOf("two-days")}?${start}`);
    expect(plan.session).toBeNull();
    expect(plan.sessionProblems).toEqual(body.sessionProblems);
    expect(plan.sessions).toEqual(body.sessions);
  });

  it("are entries of a calendar, each on its day and at the same hour of the clock", async () => {
    // Clocks went forward on 2026-03-29 at 02:00 (IANA tz database, Europe/Berlin).
    for (const [plan, servings] of [
      ["two-days", 1],
      ["bean-night", 40],
    ] as const) {
      const { text, headers } = await app.get(`${planOf(plan)}.ics?servings=${servings}&${start}`);
      expect(headers["content-type"]).toMatch(/^text\/calendar/);
      const found = events(text);
      expect(found.map(({ startDate }) => startDate.toJSDate().toISOString())).toEqual([
        "2026-03-28T08:00:00.000Z",
        "2026-03-29T07:00:00.000Z",
      ]);
      expect(new Set(found.map(({ uid }) => uid)).size).toBe(2);
    }
  });

  it.each(["/session", ".ics", "/session?servings=2", ".ics?servings=2"])(
    "are refused with the reason where none can be made: %s",
    async (way) => {
      const { body, status } = await app.get(`${planOf("no-day")}${way}${way.includes("?") ? "&" : "?"}${start}`);
      expect([status, body.type]).toEqual([422, "/problems/no-session"]);
      expect(body.problems.map(({ code }: { code: string }) => code)).toEqual(["WAITS_CANNOT_BE_KEPT"]);
      for (const said of [body.detail, body.problems[0].message]) {
        expect(said).toContain("Herb loaf (“Knead the mince.”)");
        expect(said).toContain("Make fewer servings");
        expect(said).not.toMatch(/loaf\/| > /);
      }
      expect((await app.app.inject("/problems/no-session")).statusCode).toBe(200);
    },
  );
});
