import type { PlanAnswer } from "../../../domain/plan/plan-answer.js";
import type { InSlices } from "../../../domain/counted-work.js";
import { resolvedMealSteps } from "../../../domain/plan/session/resolved-steps.js";
import { sessionDate } from "../../../domain/plan/session/session-date.js";
import { heatText } from "../../words/degree-text.js";
import { aside, heading, listOf, paragraph, plain, section, text, type Block, type Lines } from "../document.js";
import { hourText } from "../../words/clock-text.js";
import { dayText } from "../../sentences/keeping-row.js";
import { lineText } from "../../words/line-text.js";
import type { SessionStep, SessionWork } from "../../../domain/prep-session/session.js";
import { stepTime } from "../../words/step-time.js";
import type { NameBook } from "../../words/name-book.js";
import { introductionBlocks, notesBlocks } from "./words-section.js";
import type { MealTime } from "../../../domain/storage/keeping-window.js";

/** What is eaten on which day: lines and finishing steps of every meal, scaled for the reader. */
export function* mealsSectionInSlices({ scaled, household }: PlanAnswer, book: NameBook): InSlices<readonly Block[]> {
  const sessionDay = sessionDate(household);
  const blocks: Block[] = [];
  for (const eaten of scaled.meals.toSorted((a, b) => a.meal.day - b.meal.day)) {
    yield;
    const { meal, lines, factor } = eaten;
    const steps = resolvedMealSteps(eaten).map((step) => stepLines(step, { batches: factor, loads: 1 }, book));
    blocks.push(
      heading(3, meal.title),
      paragraph([text(mealTime(meal, sessionDay, book))]),
      ...introductionBlocks(meal),
      ...listOf(
        "ITEMS",
        lines.map((line) => plain(lineText(line, book))),
      ),
      ...listOf("STEPS", steps),
      ...notesBlocks(meal, book.words),
    );
  }
  return section(2, book.words.meals, blocks);
}

/** The day of a meal, and the hour where its writer gives one. */
function mealTime({ day, at }: MealTime, sessionDay: string | null, book: NameBook): string {
  const named = dayText(day, sessionDay, book);
  return at === undefined ? named : book.words.eatenAt({ day: named, time: hourText(at, book.reader.locale) });
}

/** A step in the writer's words, how long it takes for all that is made, and how hot. */
export function stepLines(
  step: SessionStep,
  work: Pick<SessionWork, "batches" | "loads">,
  { reader }: Pick<NameBook, "reader">,
): Lines {
  const time = stepTime(step, work);
  const heat = heatText(step, reader);
  return [[text(step.text), ...(time === null ? [] : [aside(time)]), ...(heat === null ? [] : [aside(heat)])]];
}
