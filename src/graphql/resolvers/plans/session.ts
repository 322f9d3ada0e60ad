import { temperatureIn } from "../../../exports/words/degree-text.js";
import { clearingUpMinutes, cooksForADay, sessionLength } from "../../../domain/plan/session/session-length.js";
import { criticalText } from "../../../exports/sentences/session-text.js";
import type {
  CriticalTaskResolvers,
  LateMealResolvers,
  PrepSessionResolvers,
  SessionComponentResolvers,
  SessionTaskResolvers,
} from "../../generated/resolver-types.js";
import type {
  CriticalTaskParent,
  LateMealParent,
  PrepSessionParent,
  SessionComponentParent,
  SessionTaskParent,
} from "../../parent-types.js";
import { componentIn, mealIn } from "../../frozen-plan.js";
import type { FieldsToResolve } from "../fields-to-resolve.js";
import { keepable } from "./keepable.js";
import { componentParent, mealParent } from "../make-parents.js";
import { wordsFor } from "../../../exports/words/words-for.js";

const tasksOf = ({ session, frozen, degrees }: PrepSessionParent, ids: readonly string[]): SessionTaskParent[] =>
  ids.flatMap((id) => session.tasks.filter((task) => task.id === id)).map((task) => ({ task, frozen, degrees }));

export const prepSessionResolvers: FieldsToResolve<PrepSessionResolvers, PrepSessionParent> = {
  day: ({ day }) => day,
  components: ({ components, frozen }) => components.map((each) => ({ ...each, frozen })),
  tasks: ({ session, frozen, degrees }) => session.tasks.map((task) => ({ task, frozen, degrees })),
  totalMinutes: ({ session }) => session.totalMinutes,
  longerThanPromised: ({ session, cooks, frozen: { bundle } }) => sessionLength(session, { bundle }, cooks).promised,
  moreThanADay: ({ session, cooks, frozen: { bundle } }) => sessionLength(session, { bundle }, cooks).overDay,
  cooksForADay: ({ session }) => cooksForADay(session),
  clearingUpMinutes: ({ session }) => clearingUpMinutes(session),
  lateMeals: ({ late, frozen }) => late.map((each) => ({ ...each, frozen })),
  handsOnMinutes: ({ session }) => session.handsOnMinutes,
  handsFreeMinute: ({ session }) => session.handsFreeMinute,
  criticalPath: (parent) => parent.session.criticalPath.map((critical) => ({ critical, parent })),
  order: ({ session }) => session.order,
  eveningBefore: (parent) => tasksOf(parent, parent.session.eveningBefore),
  assumedAppliances: ({ session }) => session.assumedAppliances,
  optimal: ({ session }) => session.optimal,
  lowerBoundMinutes: ({ session }) => session.lowerBoundMinutes,
  gap: ({ session }) => session.gap,
};

export const lateMealResolvers: FieldsToResolve<LateMealResolvers, LateMealParent> = {
  meal: ({ meal, frozen }) => mealParent(frozen, mealIn(frozen, meal)),
};

export const sessionComponentResolvers: FieldsToResolve<SessionComponentResolvers, SessionComponentParent> = {
  component: ({ slug, frozen }) => componentParent(frozen, componentIn(frozen, slug)),
  batches: ({ batches }) => batches,
  loads: ({ loads }) => loads,
};

export const sessionTaskResolvers: FieldsToResolve<SessionTaskResolvers, SessionTaskParent> = {
  code: ({ task }) => task.id,
  kind: ({ task }) => task.kind,
  of: ({ task, frozen }) => keepable(frozen, task.of),
  text: ({ task }) => task.text,
  attention: ({ task }) => task.attention,
  startMinute: ({ task }) => task.startMinute,
  endMinute: ({ task }) => task.endMinute,
  startsAt: ({ task }) => task.startsAt,
  endsAt: ({ task }) => task.endsAt,
  cooks: ({ task }) => task.cooks,
  appliance: ({ task }) => task.appliance,
  lanes: ({ task }) => task.lanes,
  temperatureC: ({ task }) => task.temperatureC,
  temperature: ({ task, degrees }) => temperatureIn(task, degrees),
  firstLoad: ({ task }) => task.load?.first ?? null,
  lastLoad: ({ task }) => task.load?.last ?? null,
  loads: ({ task }) => task.load?.of ?? null,
  eveningBefore: ({ task }) => task.eveningBefore,
};

export const criticalTaskResolvers: FieldsToResolve<CriticalTaskResolvers, CriticalTaskParent> = {
  task: ({ critical, parent }) => {
    const [task] = tasksOf(parent, [critical.task]);
    if (task === undefined) throw new Error(`the critical path names ${critical.task}, which is no task`);
    return task;
  },
  because: ({ critical }) => critical.because.kind,
  waitsFor: ({ critical, parent }) => tasksOf(parent, critical.because.tasks),
  text: ({ critical, parent }) => criticalText(critical, parent.session, wordsFor(parent.locale)),
};
