import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { noHousehold, type Household } from "../../../../src/domain/model/household.js";
import type { PlanBundle } from "../../../../src/domain/model/plan.js";
import { comparePlans } from "../../../../src/domain/plan/review/compare-plans.js";
import { lateMeals } from "../../../../src/domain/plan/session/late-meals.js";
import { icalendar } from "../../../../src/exports/calendar/icalendar.js";
import { planJson } from "../../../../src/exports/json/plan.js";
import { planMarkdown } from "../../../../src/exports/document/markdown.js";
import { blankForm } from "../../../../src/exports/page/form/plan-form.js";
import { planPage } from "../../../../src/exports/page/plan-page.js";
import { warningText } from "../../../../src/exports/sentences/warning-text.js";
import { bundle, component, line, made, meal, plan, step } from "../../../kit/builders.js";
import { answerOf, shippedRules } from "../../../kit/answer-of.js";
import { addresses } from "../../../exports/demo-answer.js";
import { wordsFor } from "../../../../src/exports/words/words-for.js";

const links = { origin: "https://plans.example", style: "/p-assets/page.css", ticks: null, cook: null };

/** An hour of chopping and a quarter of an hour at the table, for a meal at some hour. */
const lunch = (at: string | undefined, day = 0): PlanBundle =>
  bundle(
    plan(
      [
        meal("lunch", [line("1 kg", made("salad"))], {
          title: "Cold lunch",
          day,
          ...(at === undefined ? {} : { at }),
          ...(day === 0 ? { steps: [step("lay", 15)] } : {}),
        }),
      ],
      { locale: "en-GB" },
    ),
    [component("salad", "1 kg", [line("1 kg", "leek")], { steps: [step("chop", 60)], keepsAs: "cooked-vegetable" })],
  );

const at = (start: string, zone = "Europe/London"): Partial<Household> => ({ session: { start, zone } });
const lateOf = (written: PlanBundle, household: Partial<Household> = {}) => {
  const answer = answerOf(written, 1, household);
  return answer.sessions.flatMap((each) => lateMeals(each, answer.scaled, { ...noHousehold, ...household }));
};
const warned = (written: PlanBundle, household: Partial<Household> = {}) =>
  answerOf(written, 1, household).scaled.warnings.filter(({ code }) => code === "MEAL_BEFORE_SESSION");

describe("A meal with an hour of its own on the day of the session", () => {
  it("is late where the hour comes before the session, or before the meal is finished in it", () => {
    // From 09:00: chopped at 10:00, on the table at 10:15.
    expect(lateOf(lunch("08:00"))).toEqual([{ meal: "lunch", at: "08:00", readyAt: "10:15" }]);
    expect(lateOf(lunch("10:14"))).toEqual([{ meal: "lunch", at: "10:14", readyAt: "10:15" }]);
    expect(lateOf(lunch("10:15"))).toEqual([]);
    expect(lateOf(lunch(undefined), at("2026-03-01T20:00:00Z"))).toEqual([]);
    expect(lateOf(lunch("08:00", 1))).toEqual([]);
  });

  it("goes by the clock of the session's place, over a change of clocks and past midnight", () => {
    // Europe/Berlin went from UTC+1 to UTC+2 on 2026-03-29 at 02:00 (IANA tz database): 01:30 and 75 minutes is 03:45.
    expect(lateOf(lunch("03:40"), at("2026-03-29T00:30:00Z", "Europe/Berlin"))).toMatchObject([{ readyAt: "03:45" }]);
    expect(lateOf(lunch("23:50"), at("2026-03-01T23:00:00Z"))).toMatchObject([{ readyAt: null }]);
    expect(lateOf(lunch("14:30"), at("2026-05-01T08:00:00Z", "Asia/Kolkata"))).toMatchObject([{ readyAt: "14:45" }]);
  });

  it("is warned of before any session is put in order, where the hour comes before it begins", () => {
    expect(warned(lunch("08:00"))).toEqual([
      { code: "MEAL_BEFORE_SESSION", path: ["meals", "lunch"], meal: "lunch", at: "08:00", start: "09:00" },
    ]);
    expect(warned(lunch("10:00"), at("2026-03-01T11:00:00Z"))).toMatchObject([{ start: "11:00" }]);
    expect(warned(lunch("09:00"))).toEqual([]);
    expect(warned(lunch("08:00", 2))).toEqual([]);
    expect(warningText(warned(lunch("08:00"))[0]!, wordsFor("en"))).toMatch(/eaten at 08:00 .* begins at 09:00/);
  });

  it("is late whenever it is warned of", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 23 }), fc.integer({ min: 0, max: 59 }), (hour, minute) => {
        const time = [hour, minute].map((each) => String(each).padStart(2, "0")).join(":");
        if (warned(lunch(time)).length > 0) expect(lateOf(lunch(time))).toHaveLength(1);
      }),
    );
  });
});

describe("The hour of a meal", () => {
  const answer = answerOf(lunch("10:10"), 1, at("2026-03-01T09:00:00Z"));

  it("stands on the page, in Markdown, in JSON and in the calendar, with what is late for it", () => {
    const markdown = planMarkdown(answer, addresses, null);
    expect(markdown).toContain("Sunday, 1 March 2026, at 10:10");
    const html = planPage({
      publication: answer.publication,
      bundle: answer.scaled.bundle,
      form: blankForm,
      diets: shippedRules.allergens.diets,
      answer,
      problems: [],
      links,
    });
    expect(html).toMatch(/Sun, 1 Mar .{0,30}at 10:10/);
    for (const said of [markdown, html])
      expect(said).toMatch(/Cold lunch.{1,9}is to be eaten at 10:10.{1,9}is ready at 10:15/);
    expect(planJson(answer)).toMatchObject({
      meals: [{ at: "10:10" }],
      sessions: [{ lateMeals: [{ meal: "lunch", at: "10:10", readyAt: "10:15" }] }],
    });
    const calendar = icalendar(answer, addresses);
    expect(calendar.ok && calendar.value.replaceAll("\r\n ", "")).toContain("UID:meal-lunch");
    expect(calendar.ok && calendar.value).toContain("DTSTART:20260301T101000Z\r\nSUMMARY:Cold lunch");
  });

  it("is not made up where the writer gives none", () => {
    const without = answerOf(lunch(undefined), 1, at("2026-03-01T09:00:00Z"));
    expect(planMarkdown(without, addresses, null)).not.toMatch(/, at \d/);
    const calendar = icalendar(without, addresses);
    expect(calendar.ok && calendar.value).toContain("DTSTART;VALUE=DATE:20260301");
  });

  it("is what two revisions are compared by", () => {
    const changes = (before: PlanBundle, after: PlanBundle) =>
      comparePlans(answerOf(before, 1), answerOf(after, 1)).filter(({ kind }) => kind === "MEAL_TIME");
    expect(changes(lunch(undefined), lunch("12:30"))).toEqual([
      { kind: "MEAL_TIME", path: ["meals", "lunch", "at"], before: "18:00", after: "12:30" },
    ]);
    expect(changes(lunch(undefined), lunch("18:00"))).toEqual([]);
  });
});
