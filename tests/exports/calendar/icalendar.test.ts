import fc from "fast-check";
import ICAL from "ical.js";
import { Temporal } from "temporal-polyfill";
import { describe, expect, it } from "vitest";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import type { PlanAnswer } from "../../../src/domain/plan/plan-answer.js";
import { calendarLines, calendarText } from "../../../src/exports/calendar/calendar-lines.js";
import { icalendar } from "../../../src/exports/calendar/icalendar.js";
import { legibleText } from "../../../src/exports/words/legible-text.js";
import * as build from "../../kit/builders.js";
import { addresses, answerOf, demo, demoBundle, publication, sundayHousehold } from "../demo-answer.js";
import { hostileText } from "../hostile-text.js";

function textOf(answer: PlanAnswer): string {
  const made = icalendar(answer, addresses);
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  return made.value;
}

/** Events as a parser that we did not write (ical.js) reads them. */
const eventsOf = (text: string): readonly ICAL.Event[] =>
  new ICAL.Component(ICAL.parse(text) as unknown[]).getAllSubcomponents("vevent").map((each) => new ICAL.Event(each));

const eventOf = (text: string, thing: string): ICAL.Event => {
  const found = eventsOf(text).find(({ uid }) => uid.startsWith(`${thing}.`));
  if (found === undefined)
    throw new Error(
      `no ${thing} among ${eventsOf(text)
        .map(({ uid }) => uid)
        .join(" ")}`,
    );
  return found;
};

/** A soak of so many hours that has to end when the session begins. */
const soaking = (hours: number): PlanBundle =>
  build.bundle(build.plan([build.meal("bowl", [build.line("300 g", build.made("beans"))])]), [
    build.component("beans", "300 g", [build.line("100 g", "lentils")], {
      steps: [
        build.step("soak", hours * 60, { attention: "UNATTENDED", eveningBefore: true }),
        build.step("boil", 30, { after: ["soak"], maxWait: 0 }),
      ],
      keeping: [{ place: "FRIDGE", days: 3, container: "box", condition: null, source: build.invented }],
    }),
  ]);

const localTime = (time: ICAL.Time, zone: string): string =>
  Temporal.Instant.from(time.toJSDate().toISOString()).toZonedDateTimeISO(zone).toString({ timeZoneName: "never" });

describe("a plan as a calendar", () => {
  it("is what the golden file shows", async () => {
    const text = textOf(await answerOf(demoBundle("bean-night"), 7, sundayHousehold));
    await expect(text).toMatchFileSnapshot("../../golden/plan.ics");
  });

  it("is RFC 5545 in its lines: CRLF, at most 75 octets, no broken character", async () => {
    for (const bundle of demo.bundles) {
      const text = textOf(await answerOf(bundle, 3, sundayHousehold));
      expect(text.endsWith("END:VCALENDAR\r\n")).toBe(true);
      const lines = text.split("\r\n");
      expect(lines.join("")).not.toMatch(/[\r\n]/);
      for (const line of lines) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
    }
  });

  it("has what RFC 5545 demands of every event, each UID once", async () => {
    for (const bundle of demo.bundles) {
      const text = textOf(await answerOf(bundle, 3, sundayHousehold));
      const calendar = new ICAL.Component(ICAL.parse(text) as unknown[]);
      expect(calendar.getFirstPropertyValue("version")).toBe("2.0");
      expect(calendar.getFirstPropertyValue("prodid")).toMatch(/.+/);
      const events = eventsOf(text);
      expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
      for (const { component } of events) {
        expect(String(component.getFirstPropertyValue("dtstamp"))).toBe("2026-02-20T06:30:00Z");
        expect(component.getAllProperties("dtstart")).toHaveLength(1);
        for (const alarm of component.getAllSubcomponents("valarm")) {
          for (const name of ["action", "trigger", "description"]) expect(alarm.getAllProperties(name)).toHaveLength(1);
        }
      }
    }
  });

  it("O-29: a soak of 12 hours from 22:00 ends at 09:00 in the night the clocks go back in New York", async () => {
    // The zone went from UTC-4 to UTC-5 on 2026-11-01 at 02:00 (IANA tz database, America/New_York).
    const zone = "America/New_York";
    const text = textOf(await answerOf(soaking(12), 1, { sessionStart: { local: "2026-11-01T09:00", zone } }));
    const soak = eventOf(text, "evening-beans%2Fsoak");
    expect(localTime(soak.startDate, zone)).toBe("2026-10-31T22:00:00-04:00");
    expect(localTime(soak.endDate, zone)).toBe("2026-11-01T09:00:00-05:00");
    expect(soak.endDate.subtractDateTz(soak.startDate).toSeconds()).toBe(12 * 3600);
    expect(eventOf(text, "meal-bowl").startDate.toString()).toBe("2026-11-01");
  });

  it("is right in the night the clocks go forward, and in a zone of half an hour", async () => {
    // UTC+1 to UTC+2 on 2026-03-29 at 02:00 (Europe/Berlin); UTC+5:30 all year (Asia/Kolkata): IANA tz database.
    const spring = textOf(
      await answerOf(soaking(10), 1, { sessionStart: { local: "2026-03-29T08:00", zone: "Europe/Berlin" } }),
    );
    const soak = eventOf(spring, "evening-beans%2Fsoak");
    expect(localTime(soak.startDate, "Europe/Berlin")).toBe("2026-03-28T21:00:00+01:00");
    expect(localTime(soak.endDate, "Europe/Berlin")).toBe("2026-03-29T08:00:00+02:00");

    // 23:30 UTC is the next day there.
    const half = textOf(
      await answerOf(soaking(10), 1, { sessionStart: { instant: "2026-05-09T19:00:00Z", zone: "Asia/Kolkata" } }),
    );
    expect(localTime(eventOf(half, "session").startDate, "Asia/Kolkata")).toBe("2026-05-10T00:30:00+05:30");
    expect(eventOf(half, "meal-bowl").startDate.toString()).toBe("2026-05-10");
    expect(eventOf(half, "keep-beans-fridge").startDate.toString()).toBe("2026-05-13");
  });

  it("keeps its UIDs and raises its SEQUENCE in a later revision, for other servings and another day", async () => {
    const bundle = demoBundle("bean-night");
    const first = eventsOf(textOf(await answerOf(bundle, 4, sundayHousehold, { revision: 3 })));
    const later = { ...sundayHousehold, sessionStart: { instant: "2026-03-08T09:00:00Z", zone: "Europe/London" } };
    const retitled = { ...bundle, plan: { ...bundle.plan, title: "Beans again" } };
    const second = eventsOf(textOf(await answerOf(retitled, 6, later, { revision: 4 })));
    expect(second.map(({ uid }) => uid)).toEqual(first.map(({ uid }) => uid));
    expect(first.every(({ sequence }) => sequence === 3)).toBe(true);
    expect(second.every(({ sequence }) => sequence === 4)).toBe(true);
  });

  it("reminds of the soak, the session and the last days, with the writer's word and the published one", async () => {
    const text = textOf(await answerOf(demoBundle("bean-night"), 4, { ...sundayHousehold, region: "GB" }));
    const beans = eventOf(text, "keep-boiled-kidney-beans-fridge");
    expect(beans.description).toMatch(/The writer says 3 days.*\n.*A published rule \(GB\) says 48 hours/);
    expect(beans.description).toContain("are not a promise");
    const alarmed = eventsOf(text).filter(({ component }) => component.getAllSubcomponents("valarm").length > 0);
    expect(alarmed.map(({ uid }) => uid.split(/[-.]/)[0])).toEqual(
      expect.arrayContaining(["evening", "session", "keep"]) as string[],
    );
    expect(text).not.toMatch(/\bsafe to\b/i);
  });

  it("needs the start of a session, and says so", async () => {
    const made = icalendar(await answerOf(soaking(8), 1), addresses);
    expect(made).toMatchObject({
      ok: false,
      problems: [{ code: "BAD_SHAPE", path: ["household", "sessionStart"] }],
    });
  });

  it("changes with nothing but its input", async () => {
    const answer = await answerOf(soaking(8), 1, sundayHousehold);
    expect(textOf(answer)).toBe(textOf({ ...answer, publication: { ...publication, slug: answer.publication.slug } }));
  });
});

describe("a line of a calendar", () => {
  it("reads back as the text it was made of, whatever the text", () => {
    fc.assert(
      fc.property(hostileText, (words) => {
        const text = calendarLines([
          ["BEGIN", "VCALENDAR"],
          ["SUMMARY", calendarText(words)],
          ["END", "VCALENDAR"],
        ]);
        for (const line of text.split("\r\n")) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
        const read = new ICAL.Component(ICAL.parse(text) as unknown[]);
        expect(read.getAllSubcomponents()).toEqual([]);
        expect(read.getFirstPropertyValue("summary")).toBe(legibleText(words).replace(/\r\n?/g, "\n"));
      }),
      { numRuns: 1000 },
    );
  });
});
