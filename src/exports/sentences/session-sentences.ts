import type { Household } from "../../domain/model/household.js";
import type { ScaledPlan } from "../../domain/plan/scaled.js";
import { kitchenOf } from "../../domain/plan/session/session-input.js";
import { clearingUpMinutes, cooksForADay, sessionLength } from "../../domain/plan/session/session-length.js";
import { lateMeals } from "../../domain/plan/session/late-meals.js";
import { wholeDay, type DaySession } from "../../domain/plan/session/split-session.js";
import type { PrepSession } from "../../domain/prep-session/session.js";
import type { Reader } from "../../domain/plan/plan-answer.js";
import { hourText } from "../words/clock-text.js";
import { minutesText } from "../words/minutes-text.js";
import type { Words } from "../words/words.js";

interface Asked {
  readonly scaled: ScaledPlan;
  readonly household: Household;
  /** Whose clock hours are written for; absent: one of 24 hours. */
  readonly reader?: Reader;
}

const takes = (session: PrepSession, words: Words): string =>
  words.sessionTakes({ all: minutesText(session.totalMinutes), hands: minutesText(session.handsOnMinutes) });

const clearing = (session: PrepSession, words: Words): readonly string[] => {
  const minutes = clearingUpMinutes(session);
  return minutes > 0 ? [words.clearingUp({ minutes: minutesText(minutes) })] : [];
};

const lengthOf = (session: PrepSession, { scaled, household }: Asked) =>
  sessionLength(session, scaled, kitchenOf(scaled.bundle.plan.kitchen, household).cooks);

/** What a reader should know before the day: how long it takes, and whether that is too long. */
export function lengthSentences(session: PrepSession, asked: Asked, words: Words): readonly string[] {
  const { promised, overDay } = lengthOf(session, asked);
  return [
    ...(promised === null ? [] : [words.longerThanPromised({ promised: minutesText(promised) })]),
    ...(overDay ? [words.moreThanADay({ cooks: cooksForADay(session) })] : []),
  ];
}

/** Meals that their hour comes too early for. */
export function lateSentences(
  session: DaySession,
  { scaled, household, reader }: Asked,
  words: Words,
): readonly string[] {
  const hour = (time: string): string => (reader === undefined ? time : hourText(time, reader.locale));
  const titles = new Map(scaled.meals.map(({ meal }) => [meal.slug, meal.title]));
  return lateMeals(session, scaled, household).map(({ meal, at, readyAt }) =>
    words.lateMeal({ meal: titles.get(meal) ?? meal, at: hour(at), ready: readyAt === null ? "none" : hour(readyAt) }),
  );
}

/** All of it in one session. */
export const sessionSentences = (session: PrepSession, asked: Asked, words: Words): readonly string[] => [
  takes(session, words),
  ...clearing(session, words),
  ...lengthSentences(session, asked, words),
  ...lateSentences(wholeDay(asked.scaled, session), asked, words),
];

/** One of several days' work: how long it takes, what is made, and what the day needs. */
export function daySentences(each: DaySession, asked: Asked, words: Words): readonly string[] {
  const { day, components, session } = each;
  const made = asked.scaled.components.filter(({ component }) =>
    components.some(({ slug }) => slug === component.slug),
  );
  return [
    takes(session, words),
    ...clearing(session, words),
    ...(lengthOf(session, asked).overDay ? [words.stillMoreThanADay({ cooks: cooksForADay(session) })] : []),
    ...(made.length > 0 ? [words.madeThen({ things: made.map(({ component: { title } }) => title).join(", ") })] : []),
    ...lateSentences(each, asked, words),
    ...(day > 0 ? [words.buyRawThen] : []),
  ];
}
