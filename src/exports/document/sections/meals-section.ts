import type { PlanAnswer } from "../../../domain/plan/plan-answer.js";
import type { InSlices } from "../../../domain/counted-work.js";
import type { ScaledLine } from "../../../domain/plan/scaled.js";
import { resolvedMealSteps } from "../../../domain/plan/session/resolved-steps.js";
import { sessionDate } from "../../../domain/plan/session/session-date.js";
import { heatText } from "../../words/degree-text.js";
import { aside, heading, listOf, paragraph, section, text, type Block, type Line, type Lines } from "../document.js";
import { hourText } from "../../words/clock-text.js";
import { dayText } from "../../sentences/keeping-row.js";
import { itemLanguage, lineWords } from "../../words/line-words.js";
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
      heading(3, meal.title, book.languageOf(meal.title)),
      paragraph([text(mealTime(meal, sessionDay, book))]),
      ...introductionBlocks(meal, book),
      ...listOf(
        "ITEMS",
        lines.map((line) => [lineInlines(line, book)]),
      ),
      ...listOf("STEPS", steps),
      ...notesBlocks(meal, book),
    );
  }
  return section(2, book.words.meals, blocks);
}

/** The day of a meal, and the hour where its writer gives one. */
function mealTime({ day, at }: MealTime, sessionDay: string | null, book: NameBook): string {
  const named = dayText(day, sessionDay, book);
  return at === undefined ? named : book.words.eatenAt({ day: named, time: hourText(at, book.reader.locale) });
}

/** A line as `lineText` says it, each part in its language. */
export function lineInlines(line: ScaledLine, book: NameBook): Line {
  const { amount, name, details, mark } = lineWords(line, book);
  const named = itemLanguage(line, book);
  const parts = [
    ...(name === null ? [] : [{ said: name, language: named }]),
    ...details.map(({ text: said, isWriters }) => ({ said, language: isWriters ? book.languageOf(said) : null })),
  ];
  const first = name === null && amount !== null ? [{ said: amount, language: named }] : [];
  const all = [...first, ...parts];
  return [
    ...(name !== null && amount !== null ? [text(amount)] : []),
    ...all.map(({ said, language }, at) => text(at < all.length - 1 ? `${said},` : said, language)),
    ...(mark === null ? [] : [text(`(${mark})`, book.languageOf(mark))]),
  ];
}

/** A step in the writer's words, how long it takes for all that is made, and how hot. */
export function stepLines(
  step: SessionStep,
  work: Pick<SessionWork, "batches" | "loads">,
  { reader, languageOf }: Pick<NameBook, "reader" | "languageOf">,
): Lines {
  const time = stepTime(step, work);
  const heat = heatText(step, reader);
  return [
    [
      text(step.text, languageOf(step.text)),
      ...(time === null ? [] : [aside(time)]),
      ...(heat === null ? [] : [aside(heat)]),
    ],
  ];
}
