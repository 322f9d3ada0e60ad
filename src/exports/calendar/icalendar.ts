import type { PlanAnswer } from "../../domain/plan/plan-answer.js";
import { sessionDate } from "../../domain/plan/session/session-date.js";
import { failed, ok, type Result } from "../../domain/problem.js";
import type { Addresses } from "../addresses.js";
import { eventProperties, type CalendarFrame } from "./calendar-event.js";
import { keepingEvents, mealEvents, sessionEvents } from "./calendar-events.js";
import { calendarLines, calendarText } from "./calendar-lines.js";
import { nameBook } from "../words/name-book.js";

/**
 * A plan as a calendar (RFC 5545): what is begun the evening before, the session or the several it is divided over, the days of the meals and up to when things
 * keep. The same plan always has the same UIDs and a later revision a higher SEQUENCE, so importing it again moves entries
 * instead of doubling them. Nothing depends on a clock. Problems: BAD_SHAPE without a session start, and those of the session.
 */
export function icalendar(answer: PlanAnswer, addresses: Addresses): Result<string> {
  const { household, publication, sessions, sessionProblems, scaled, reader } = answer;
  const sessionDay = sessionDate(household);
  if (household.session === null || sessionDay === null) {
    const path = ["household", "sessionStart"];
    return failed([{ code: "BAD_SHAPE", path, expected: "the start of the session", got: "nothing" }]);
  }
  if (sessions.length === 0) return failed(sessionProblems);
  const first = household.session;
  const book = nameBook(scaled.bundle, reader);
  const { title } = scaled.bundle.plan;
  const frame: CalendarFrame = {
    uid: `${[publication.slug, publication.publisher.slug].map(encodeURIComponent).join(".")}@${new URL(addresses.plan).host}`,
    revision: publication.revision,
    publishedAt: publication.publishedAt,
    address: addresses.revision,
  };
  const events = [
    ...sessions.flatMap((each) => sessionEvents(each, first, answer, addresses, book)),
    ...mealEvents(answer, sessionDay, first.zone, book),
    ...keepingEvents(answer, first.zone, book),
  ];
  return ok(
    calendarLines([
      ["BEGIN", "VCALENDAR"],
      ["VERSION", "2.0"],
      ["PRODID", `-//Prepwright//Prepwright//${book.words.language.toUpperCase()}`],
      ["CALSCALE", "GREGORIAN"],
      ["NAME", calendarText(title)],
      ["X-WR-CALNAME", calendarText(title)],
      ...events.flatMap((event) => eventProperties(event, frame)),
      ["END", "VCALENDAR"],
    ]),
  );
}
