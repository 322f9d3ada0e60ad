import type { ScaledLine } from "../../../domain/plan/scaled.js";
import { resolvedMealSteps, resolvedSteps } from "../../../domain/plan/session/resolved-steps.js";
import { wholeDay, type DaySession } from "../../../domain/plan/session/split-session.js";
import type { SessionTask } from "../../../domain/prep-session/session.js";
import type { PlanView } from "../plan-view.js";
import { stepsWithLines } from "../parts/steps-with-lines.js";

/** One piece of work as it stands on the screen in the kitchen. */
export interface CookStep {
  readonly task: SessionTask;
  /** Days after the first day of cooking. */
  readonly day: number;
  /** What it takes; where it is done in parts, at the first of them for all. */
  readonly lines: readonly ScaledLine[];
  /** Minutes from its start to the end of the day's work; null where the steps fit no order. */
  readonly minutesLeft: number | null;
  /** What goes on by itself when it begins. */
  readonly alongside: readonly SessionTask[];
  /** A day makes only so many of all the batches, so amounts of the whole do not hold. */
  readonly share: { readonly batches: number; readonly all: number } | null;
  /** Nothing was done to this dish before. */
  readonly isFirst: boolean;
  /** Nothing else is done to this dish afterwards. */
  readonly isLast: boolean;
}

/** The sessions that a plan is cooked in; none where the steps fit no order. */
export function cookingDays({ answer }: PlanView): readonly DaySession[] {
  if (answer.sessions.length > 1) return answer.sessions;
  return answer.session === null ? answer.sessions : [wholeDay(answer.scaled, answer.session)];
}

const isOf = (a: SessionTask, b: SessionTask): boolean => a.of.kind === b.of.kind && a.of.slug === b.of.slug;

type LinesOf = (task: SessionTask) => readonly ScaledLine[];

/** Lines by the step that takes them first, of everything that is made or put together. */
function linesByStep({ answer }: PlanView): LinesOf {
  const lines = new Map<string, readonly ScaledLine[]>();
  const note = (kind: string, slug: string, { steps, others }: ReturnType<typeof stepsWithLines>): void => {
    steps.forEach(({ step, lines: own }, at) =>
      lines.set(`${kind} ${slug} ${step.id}`, at === 0 ? [...others, ...own] : own),
    );
  };
  for (const made of answer.scaled.components)
    note("COMPONENT", made.component.slug, stepsWithLines(resolvedSteps(made), made.lines));
  for (const meal of answer.scaled.meals)
    note("MEAL", meal.meal.slug, stepsWithLines(resolvedMealSteps(meal), meal.lines));
  return ({ of, step, kind }) => (kind === "WASH" ? [] : (lines.get(`${of.kind} ${of.slug} ${step}`) ?? []));
}

/** All the work in its order, day after day. */
export function cookSteps(view: PlanView): readonly CookStep[] {
  const linesOf = linesByStep(view);
  return cookingDays(view).flatMap(({ day, components, session }) => {
    const shares = new Map(components.map(({ slug, batches }) => [slug, batches]));
    return session.tasks.map((task, at) => {
      const made = view.answer.scaled.components.find(({ component }) => component.slug === task.of.slug);
      const batches = shares.get(task.of.slug);
      const isShare =
        task.of.kind === "COMPONENT" && made !== undefined && batches !== undefined && batches < made.batches - 1e-9;
      return {
        task,
        day,
        lines: isShare || (task.load !== null && task.load.first > 1) ? [] : linesOf(task),
        minutesLeft: Math.max(0, session.totalMinutes - task.startMinute),
        alongside: session.tasks.filter(
          (other) =>
            other !== task &&
            other.attention === "UNATTENDED" &&
            other.eveningBefore === task.eveningBefore &&
            other.startMinute <= task.startMinute &&
            other.endMinute > task.startMinute,
        ),
        share: isShare ? { batches, all: made.batches } : null,
        isFirst: !session.tasks.slice(0, at).some((other) => isOf(other, task)),
        isLast: !session.tasks.slice(at + 1).some((other) => isOf(other, task)),
      };
    });
  });
}
