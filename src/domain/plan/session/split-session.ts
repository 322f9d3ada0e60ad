import { runToEnd, unlimitedWork, type InSlices } from "../../counted-work.js";
import { usualMealTime } from "../../model/plan.js";
import type { Household } from "../../model/household.js";
import type { KeepingClass } from "../../model/keeping.js";
import type { PrepSession, SessionBudget } from "../../prep-session/session.js";
import { minutesOf } from "../../prep-session/task.js";
import { dayShares, type DayShares } from "../contents/day-shares.js";
import type { ScaledComponent, ScaledPlan } from "../scaled.js";
import { scaledSessionInSlices } from "./scaled-session.js";
import { laterStart } from "./session-date.js";
import { kitchenOf } from "./session-input.js";
import { dayOfWork } from "./session-length.js";
import { resolvedMealSteps, resolvedSteps } from "./resolved-steps.js";

/** What is made of a component in one session. */
export interface SessionComponent {
  readonly slug: string;
  readonly batches: number;
  readonly loads: number;
}

/** One of the sessions that a plan is made in. */
export interface DaySession {
  /** Days after the first session. */
  readonly day: number;
  readonly components: readonly SessionComponent[];
  readonly session: PrepSession;
}

const sizesOf = (components: readonly ScaledComponent[]): readonly SessionComponent[] =>
  components
    .filter(({ batches }) => batches > 0)
    .map(({ component: { slug }, batches, loads }) => ({ slug, batches, loads }));

/** All that is made, in one session. */
export const wholeDay = ({ components }: ScaledPlan, session: PrepSession): DaySession => ({
  day: 0,
  components: sizesOf(components),
  session,
});

/** More sessions than this are no help to anybody. */
const mostSessions = 4;
/** Of plans over many days, fewer ways to divide them are looked at. */
const manyDays = 7;
/**
 * Dead ends that the search of one day may meet for each of its two aims. The steps that all days share would else be spent on the
 * last minutes of one of them, and none be left for the next division.
 */
const conflictsOfADay = 300;
/** Divisions that are put in order before a plan counts as one that cannot be divided. */
const mostTries = 8;

interface Division {
  readonly days: readonly number[];
  readonly shares: DayShares;
  /** Minutes of work with the hands on each day. */
  readonly hands: readonly number[];
}

const longestOf = ({ hands }: Pick<Division, "hands">): number => Math.max(...hands);

const handsOf = ({ batches, loads, ...made }: ScaledComponent): number =>
  resolvedSteps({ batches, loads, ...made })
    .filter(({ attention }) => attention === "HANDS_ON")
    .reduce((sum, step) => sum + minutesOf(step, { batches, loads }), 0);

function mealHands({ meals }: ScaledPlan): number {
  return meals
    .filter(({ meal }) => meal.day === 0)
    .flatMap((each) => resolvedMealSteps(each).map((step) => ({ step, batches: each.factor, loads: 1 })))
    .filter(({ step }) => step.attention === "HANDS_ON")
    .reduce((sum, { step, ...work }) => sum + minutesOf(step, work), 0);
}

/** Ascending choices of up to `most` of some days. */
function choices(days: readonly number[], most: number): readonly (readonly number[])[] {
  if (most === 0 || days.length === 0) return [[]];
  const [first, ...rest] = days;
  return [...choices(rest, most), ...choices(rest, most - 1).map((each) => [first!, ...each])];
}

const stepsOfDivision = ({ components, meals }: ScaledPlan): number =>
  [...components, ...meals].reduce((sum, { lines }) => sum + lines.length, components.length);

/** Every way to divide a plan over days on which something of it is eaten. */
function* divisionsOf(
  scaled: ScaledPlan,
  classes: readonly KeepingClass[],
  { work = unlimitedWork, shouldStop = () => false }: SessionBudget,
): InSlices<readonly Division[]> {
  const eaten = [...new Set(scaled.meals.map(({ meal }) => meal.day))]
    .filter((day) => day > 0)
    .toSorted((a, b) => a - b);
  const more = (eaten.length > manyDays ? mostSessions - 1 : mostSessions) - 1;
  const atTable = mealHands(scaled);
  const found: Division[] = [];
  for (const later of choices(eaten, more)) {
    if (later.length === 0) continue;
    if (found.length > 0 && shouldStop()) break;
    yield;
    const days = [0, ...later];
    for (const divides of [false, true]) {
      work.step(stepsOfDivision(scaled));
      const shares = dayShares(scaled, classes, days, divides);
      if (!shares.every((made, at) => at === 0 || made.length > 0)) continue;
      const hands = shares.map(
        (made, at) => made.reduce((sum, each) => sum + handsOf(each), 0) + (at === 0 ? atTable : 0),
      );
      found.push({ days, shares, hands });
    }
  }
  return found;
}

const minutesOfClock = (time: string): number => Number(time.slice(0, 2)) * 60 + Number(time.slice(3, 5));

interface Asked {
  readonly scaled: ScaledPlan;
  readonly household: Household;
  readonly classes: readonly KeepingClass[];
  /** Local time at which sessions begin, `HH:MM`. */
  readonly from: string;
}

/** From when a later session begins until what is made in it is on the table; of the first, its own meals are part. */
function minutesUntilMeals(day: number, { scaled, from }: Asked): number {
  if (day === 0) return Number.POSITIVE_INFINITY;
  const meals = scaled.meals.filter(({ meal }) => meal.day === day);
  return Math.min(...meals.map(({ meal }) => minutesOfClock(meal.at ?? usualMealTime))) - minutesOfClock(from);
}

/** Puts every day of a division in order; null: some day keeps no order, or is not done before its meal. */
function* ordered(
  { days, shares }: Division,
  asked: Asked,
  budget: SessionBudget,
): InSlices<readonly DaySession[] | null> {
  const { scaled, household, classes } = asked;
  const found: DaySession[] = [];
  // Later days have less work and an hour by which it is done, so they tell soonest that a division does not serve.
  for (const [at, day] of [...days.entries()].toReversed()) {
    const components = shares[at]!;
    const session = household.session && laterStart(household.session, day);
    const done = yield* scaledSessionInSlices(
      scaled,
      { ...household, session },
      classes,
      { conflictLimit: conflictsOfADay, ...budget, explain: false },
      { day, components },
    );
    if (!done.ok) return null;
    if (done.value.totalMinutes > minutesUntilMeals(day, asked)) return null;
    found.unshift({ day, components: sizesOf(components), session: done.value });
  }
  return found;
}

/**
 * A plan's work over several days: what is eaten later is made later, up to the day on which it is eaten, and in parts
 * where that is not enough. As few sessions as keep each day within a day's work; where none do, the shortest longest day.
 * Empty: no division keeps the limits of its steps, or none is lighter than `lighterThan`.
 *
 * @param lighterThan minutes of hands of the whole in one session, where there is one
 */
export const splitSession = (asked: Asked, lighterThan: number, budget: SessionBudget = {}): readonly DaySession[] =>
  runToEnd(splitInSlices(asked, lighterThan, budget));

/** The same turn by turn. */
export function* splitInSlices(
  asked: Asked,
  lighterThan: number,
  budget: SessionBudget,
): InSlices<readonly DaySession[]> {
  const { scaled, household, classes } = asked;
  const { cooks } = kitchenOf(scaled.bundle.plan.kitchen, household);
  const cap = dayOfWork * cooks;
  const inTime = ({ days, hands }: Division): boolean =>
    days.every((day, at) => hands[at]! / cooks <= minutesUntilMeals(day, asked));
  const rank = (one: Division): number => Math.max(cap, longestOf(one));
  const divisions = yield* divisionsOf(scaled, classes, budget);
  const open = divisions
    .filter((one) => longestOf(one) < lighterThan && inTime(one))
    .toSorted((a, b) => rank(a) - rank(b) || a.days.length - b.days.length || longestOf(a) - longestOf(b));
  for (const division of open.slice(0, mostTries)) {
    const found = yield* ordered(division, asked, budget);
    if (found !== null) return found;
  }
  return [];
}
