import type { Problem, Result } from "../../domain/problem.js";
import type { PrepSession } from "../../domain/prep-session/session.js";
import type { DaySession } from "../../domain/plan/session/split-session.js";
import { list, named, type Json } from "./named-schema.js";
import {
  daySessionJson,
  daySessionSchema,
  sessionJson,
  sessionSchema,
  timetableJson,
  type SessionFor,
} from "./session.js";
import { sessionProblemJson, warningSchema } from "./warning.js";
import { wordsFor } from "../words/words-for.js";

export const sessionAnswerSchema = named(
  "SessionAnswer",
  "The work of a plan: all of it in one session, or where that fits no order the first of several.",
  sessionSchema.extend({
    sessions: list(
      daySessionSchema,
      "The sessions to do it in, by day. One where one serves; several where one fits no order or is more than a day's work for its cooks.",
    ),
    sessionProblems: list(
      warningSchema,
      "Why all of it fits no single session. The fields beside it are then those of the first of `sessions`.",
    ),
  }),
);

interface SessionAnswer extends SessionFor {
  readonly whole: Result<PrepSession>;
  /** At least one. */
  readonly days: readonly [DaySession, ...DaySession[]];
}

export function sessionAnswerJson({ whole, days, ...asked }: SessionAnswer): Json<typeof sessionAnswerSchema> {
  const problems: readonly Problem[] = whole.ok ? [] : whole.problems;
  return {
    ...(whole.ok ? sessionJson(whole.value, asked) : timetableJson(days[0], asked)),
    sessions: days.map((each) => daySessionJson(each, asked)),
    sessionProblems: problems.map((problem) =>
      sessionProblemJson(problem, asked.scaled, wordsFor(asked.reader.locale)),
    ),
  };
}
