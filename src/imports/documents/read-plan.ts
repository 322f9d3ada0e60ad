import type { Meal, Plan, PlanTime } from "../../domain/model/plan.js";
import { ok, type Path, type Result } from "../../domain/problem.js";
import { readLocalTime, type LocalTime } from "./read-local-time.js";
import { combine, every, mapResult } from "./combine-results.js";
import type { MealDocument, PlanDocument } from "./schemas/plan-schema.js";
import { readLines, stepLineIds } from "./lines/read-lines.js";
import type { KnownItems } from "./lines/read-lines.js";
import { readSteps } from "./read-steps.js";
import { readWords } from "./read-words.js";
import { readingContextOf } from "./reading-context.js";
import type { ReadingContext } from "./reading-context.js";

/** A plan as the model has it. Paths of problems lead into the document. */
export function readPlan(document: PlanDocument, known: KnownItems): Result<Plan> {
  const reading = readingContextOf(document);
  const read = combine({
    meals: every(
      document.meals.map((meal, index) => readMeal(meal, document.serves, known, reading, ["meals", index])),
    ),
    publishAt: readTime(document["publish-at"], ["publish-at"]),
    withdrawAt: readTime(document["withdraw-at"], ["withdraw-at"]),
  });
  return mapResult(read, ({ meals }) => ({
    publisher: document.publisher,
    slug: document.slug,
    title: document.title,
    summary: document.summary,
    locale: document.locale,
    measures: document["measured-in"],
    serves: document.serves,
    meals,
    kitchen: document.kitchen,
    promisedMinutes: document["promised-time"],
    ...(document.region !== null && { region: document.region }),
    ...(document.currency !== null && { currency: document.currency }),
    claims: document.claims,
    ...(document.image !== undefined && { image: document.image }),
    ...(document["publish-at"] !== undefined && { publishAt: document["publish-at"] }),
    ...(document["withdraw-at"] !== undefined && { withdrawAt: document["withdraw-at"] }),
    ...(document.licence !== undefined && { licence: document.licence }),
    ...readWords(document),
  }));
}

/** Only read to find what is wrong with it: the writer's own words are kept. */
const readTime = (given: PlanTime | undefined, path: Path): Result<LocalTime | null> =>
  given === undefined ? ok(null) : readLocalTime(given, path);

function readMeal(
  meal: MealDocument,
  planServes: number,
  known: KnownItems,
  reading: ReadingContext,
  path: Path,
): Result<Meal> {
  const read = combine({
    lines: readLines(meal.lines, known, reading, [...path, "lines"]),
    steps: readSteps(meal.steps, stepLineIds(meal.lines), [...path, "steps"]),
  });
  return mapResult(read, (values) => ({
    slug: meal.slug,
    title: meal.title,
    day: meal.day,
    ...(meal.at === undefined ? {} : { at: meal.at }),
    serves: meal.serves ?? planServes,
    ...values,
    ...(meal.image !== undefined && { image: meal.image }),
    ...readWords(meal),
  }));
}
