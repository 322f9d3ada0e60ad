import type { Step } from "../../domain/model/component.js";
import type { PlanAnswer } from "../../domain/plan/plan-answer.js";
import { sessionDate } from "../../domain/plan/session-date.js";
import { aside, heading, listOf, paragraph, plain, section, text, type Block, type Lines } from "../document.js";
import { dayText } from "../keeping-row.js";
import { lineText } from "../line-text.js";
import { writtenMinutes } from "../../domain/prep-session/growth.js";
import { minutesText } from "../minutes-text.js";
import type { NameBook } from "../name-book.js";

/** What is eaten on which day: lines and finishing steps of every meal, scaled for the reader. */
export function mealsSection({ scaled, household }: PlanAnswer, book: NameBook): readonly Block[] {
  const sessionDay = sessionDate(household);
  const meals = scaled.meals.toSorted((a, b) => a.meal.day - b.meal.day);
  return section(
    2,
    book.words.meals,
    meals.flatMap(({ meal, lines }) => [
      heading(3, meal.title),
      paragraph([text(dayText(meal.day, sessionDay, book))]),
      ...listOf(
        "ITEMS",
        lines.map((line) => plain(lineText(line, book))),
      ),
      ...listOf("STEPS", meal.steps.map(stepLines)),
    ]),
  );
}

/** A step in the writer's words, and how long it takes. */
export const stepLines = (step: Pick<Step, "text" | "minutes" | "heatUpMinutes" | "temperatureC">): Lines => [
  [
    text(step.text),
    ...(writtenMinutes(step) > 0 ? [aside(minutesText(writtenMinutes(step)))] : []),
    ...(step.temperatureC === null ? [] : [aside(`${step.temperatureC} °C`)]),
  ],
];
