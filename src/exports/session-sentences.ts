import type { Household } from "../domain/model/household.js";
import type { ScaledPlan } from "../domain/plan/scaled.js";
import { kitchenOf } from "../domain/plan/session-input.js";
import { clearingUpMinutes, sessionLength } from "../domain/plan/session-length.js";
import type { DaySession } from "../domain/plan/split-session.js";
import type { PrepSession } from "../domain/prep-session/session.js";
import { minutesText } from "./minutes-text.js";
import type { Words } from "./words.js";

interface Asked {
  readonly scaled: ScaledPlan;
  readonly household: Household;
}

const takes = (session: PrepSession, words: Words): string =>
  words.sessionTakes(minutesText(session.totalMinutes), minutesText(session.handsOnMinutes));

const clearing = (session: PrepSession, words: Words): readonly string[] => {
  const minutes = clearingUpMinutes(session);
  return minutes > 0 ? [words.clearingUp(minutesText(minutes))] : [];
};

const lengthOf = (session: PrepSession, { scaled, household }: Asked) =>
  sessionLength(session, scaled, kitchenOf(scaled.bundle.plan.kitchen, household).cooks);

/** What a reader should know before the day: how long it takes, and whether that is too long. */
export function lengthSentences(session: PrepSession, asked: Asked, words: Words): readonly string[] {
  const { promised, overDay } = lengthOf(session, asked);
  return [
    ...(promised === null ? [] : [words.longerThanPromised(minutesText(promised))]),
    ...(overDay ? [words.moreThanADay] : []),
  ];
}

/** All of it in one session. */
export const sessionSentences = (session: PrepSession, asked: Asked, words: Words): readonly string[] => [
  takes(session, words),
  ...clearing(session, words),
  ...lengthSentences(session, asked, words),
];

/** One of several days' work: how long it takes, what is made, and what the day needs. */
export function daySentences({ day, components, session }: DaySession, asked: Asked, words: Words): readonly string[] {
  const made = asked.scaled.components.filter(({ component }) =>
    components.some(({ slug }) => slug === component.slug),
  );
  return [
    takes(session, words),
    ...clearing(session, words),
    ...(lengthOf(session, asked).overDay ? [words.stillMoreThanADay] : []),
    ...(made.length > 0 ? [words.madeThen(made.map(({ component: { title } }) => title).join(", "))] : []),
    ...(day > 0 ? [words.buyRawThen] : []),
  ];
}
