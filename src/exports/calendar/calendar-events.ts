import type { PlanAnswer } from "../../domain/plan/plan-answer.js";
import type { Household } from "../../domain/model/household.js";
import { daysAfter, instantAt, laterStart } from "../../domain/plan/session/session-date.js";
import type { MealTime } from "../../domain/storage/keeping-window.js";
import type { DaySession } from "../../domain/plan/session/split-session.js";
import type { Addresses } from "../addresses.js";
import type { CalendarEvent } from "./calendar-event.js";
import { keepingRow } from "../sentences/keeping-row.js";
import { lineText } from "../words/line-text.js";
import type { NameBook } from "../words/name-book.js";
import { daySentences, sessionSentences } from "../sentences/session-sentences.js";

/** A session of some day, and what is begun the evening before it. */
export function sessionEvents(
  each: DaySession,
  first: NonNullable<Household["session"]>,
  answer: PlanAnswer,
  addresses: Addresses,
  { words }: NameBook,
): readonly CalendarEvent[] {
  const { day, session } = each;
  const { start } = laterStart(first, day);
  const later = day === 0 ? "" : `-day-${day}`;
  const end = new Date(Date.parse(start) + Math.ceil(session.totalMinutes) * 60_000).toISOString();
  const said =
    answer.sessions.length > 1 ? daySentences(each, answer, words) : sessionSentences(session, answer, words);
  const evening = session.tasks.filter(({ eveningBefore }) => eveningBefore);
  return [
    ...evening.map((task): CalendarEvent => ({
      thing: `evening${later}-${task.id}`,
      summary: words.eveningTaskOf({ title: task.of.title }),
      description: task.text,
      at: { start: task.startsAt ?? start, end: task.endsAt },
      alarm: "PT0S",
      busy: task.attention === "HANDS_ON",
    })),
    {
      thing: `session${later}`,
      summary: words.sessionOf({ title: answer.scaled.bundle.plan.title }),
      description: [...said, `${words.shoppingList}: ${addresses.list}`].join("\n"),
      at: { start, end },
      alarm: "-PT30M",
      busy: true,
    },
  ];
}

/** The day of every meal, and the hour where its writer gives one. */
export const mealEvents = (
  answer: PlanAnswer,
  sessionDay: string,
  zone: string,
  book: NameBook,
): readonly CalendarEvent[] =>
  answer.scaled.meals
    .toSorted((a, b) => a.meal.day - b.meal.day)
    .map(({ meal, lines }): CalendarEvent => ({
      thing: `meal-${meal.slug}`,
      summary: meal.title,
      description: lines.map((line) => lineText(line, book)).join("\n"),
      at: mealMoment(meal, sessionDay, zone),
      alarm: null,
      busy: false,
    }));

function mealMoment({ day, at }: MealTime, sessionDay: string, zone: string): CalendarEvent["at"] {
  const date = daysAfter(sessionDay, day);
  return at === undefined ? { date } : { start: instantAt(date, at, zone), end: null };
}

/** Morning of a whole day, and some hours before an end that has an hour. */
const reminders = { DAYS: "PT9H", HOURS: "-PT3H" } as const;

/** Up to when each component that is made keeps where it is kept cold or on the shelf, with both words and the deferral. */
export function keepingEvents(answer: PlanAnswer, zone: string, book: NameBook): readonly CalendarEvent[] {
  const { storage, scaled, cautions } = answer;
  const made = new Set(scaled.components.flatMap(({ component, batches }) => (batches > 0 ? [component.slug] : [])));
  const deferral = cautions.cautions.filter(({ code }) => code === "local-rules").map(({ text }) => text);
  return storage.guidance.flatMap((guidance): readonly CalendarEvent[] => {
    const { subject, place, lastDay, keepUntil, counts } = guidance;
    if (subject.kind !== "COMPONENT" || !made.has(subject.slug) || place === "FREEZER") return [];
    if (lastDay === null || keepUntil === null) return [];
    const row = keepingRow(guidance, book, zone);
    return [
      {
        thing: `keep-${subject.slug}-${place.toLowerCase()}`,
        summary:
          counts === "HOURS" ? book.words.keepsUntilNow({ thing: row.what }) : book.words.lastDay({ thing: row.what }),
        description: [`${row.where}: ${row.keeps}`, row.how, ...row.whoSays, ...deferral]
          .filter((line) => line !== "")
          .join("\n"),
        at: counts === "HOURS" ? { start: keepUntil, end: null } : { date: lastDay },
        alarm: reminders[counts],
        busy: false,
      },
    ];
  });
}
