import type { BaseAmount } from "../model/amount.js";
import type { Advice } from "./advice.js";
import type { KeepingQuestion, KeptMeal, Subject } from "./guidance.js";
import { limitsOf, strictest, type Limit, type LimitsByPlace } from "./keeping-limits.js";
import { laterTrips } from "./later-trips.js";
import { endOf, isPast, lastDayFor, lastingDays, type MealTime } from "./keeping-window.js";

/** What can be done for the meals a component is too old for: freeze their portions, or make it later. */
export function componentAdvice(
  component: string,
  late: readonly KeptMeal[],
  limits: LimitsByPlace,
  madeDay: number,
  question: KeepingQuestion,
): readonly Advice[] {
  const fridge = strictest(limits.get("FRIDGE") ?? []);
  if (late.length === 0) return [];
  return [
    ...(limits.has("FREEZER") && fridge !== null ? freeze(component, late, fridge, madeDay, question) : []),
    ...makeLater(component, late, limits, madeDay, question),
  ];
}

/** Frozen when made, so nothing of its time is used up; after thawing the shorter of what is left and the thawing rule. */
function freeze(
  component: string,
  late: readonly KeptMeal[],
  fridge: Limit,
  madeDay: number,
  question: KeepingQuestion,
): readonly Advice[] {
  const thawed: Subject = { kind: "COMPONENT", slug: component };
  const thawRules =
    limitsOf({ subject: thawed, keepsAs: "thawed", keeping: [], madeDay }, question).get("FRIDGE") ?? [];
  const shorter = strictest([fridge, ...thawRules]);
  const daysAfterThawing = (shorter ?? fridge).end.day - madeDay;
  const thawDaysBefore = 1;
  if (daysAfterThawing < thawDaysBefore) return [];
  return [
    {
      code: "FREEZE",
      component,
      portions: late.map(({ meal, lines }) => ({
        meal: meal.slug,
        day: meal.day,
        amount: portionOf(component, lines),
      })),
      thawDaysBefore,
      daysAfterThawing,
      thawRule: shorter === null || shorter === fridge ? null : shorter.basis.rule,
    },
  ];
}

/** How much of a component these lines take; null where amounts cannot be added. */
export function portionOf(component: string, lines: KeptMeal["lines"]): BaseAmount | null {
  const amounts = lines.flatMap(({ item, amount }) =>
    item.kind === "COMPONENT" && item.component === component ? [amount] : [],
  );
  return (
    amounts.reduce<BaseAmount | null | undefined>((sum, next) => {
      if (sum === undefined) return next;
      if (sum === null || next === null || sum.dimension !== next.dimension) return null;
      return { dimension: sum.dimension, low: sum.low + next.low, high: sum.high + next.high };
    }, undefined) ?? null
  );
}

function makeLater(
  component: string,
  late: readonly KeptMeal[],
  limits: LimitsByPlace,
  madeDay: number,
  question: KeepingQuestion,
): readonly Advice[] {
  const ends = (["FRIDGE", "ROOM"] as const).flatMap((place) => strictest(limits.get(place) ?? [])?.end.day ?? []);
  if (ends.length === 0 || Math.max(...ends) < madeDay) return [];
  const meals = late.map(({ meal }) => ({
    meal: meal.slug,
    day: meal.day,
    notBefore: firstDayFor(meal, limits, madeDay, question),
  }));
  return [{ code: "MAKE_LATER", component, meals }];
}

/** The first day on which it may be made and still keeps until a meal: at the latest, the day of the meal. */
function firstDayFor(meal: MealTime, limits: LimitsByPlace, madeDay: number, { session }: KeepingQuestion): number {
  for (let later = 1; madeDay + later < meal.day; later += 1) {
    const keeps = (["FRIDGE", "ROOM"] as const).some((place) => {
      const here = limits.get(place) ?? [];
      const ends = here.map((limit) => endOf(limit.span, limit.madeDay + later, session));
      return here.length > 0 && ends.every((end) => !isPast(meal, end, session));
    });
    if (keeps) return madeDay + later;
  }
  return meal.day;
}

/** What can be done for a meal that comes too late: change places with one that keeps longer, or eat it earlier. */
export function mealAdvice(
  late: KeptMeal,
  main: Limit,
  meals: readonly KeptMeal[],
  endOfOther: (meal: KeptMeal) => Limit | null,
  { session }: KeepingQuestion,
): readonly Advice[] {
  const fits = (other: KeptMeal): boolean => {
    if (other.meal.day >= late.meal.day || isPast({ ...late.meal, day: other.meal.day }, main.end, session))
      return false;
    const end = endOfOther(other)?.end;
    return end !== undefined && !isPast({ ...other.meal, day: late.meal.day }, end, session);
  };
  const swap = meals.find(fits);
  const latestDay = lastDayFor(late.meal.at, main.end, session);
  return [
    ...(swap === undefined ? [] : [{ code: "SWAP_DAYS" as const, meal: late.meal.slug, with: swap.meal.slug }]),
    ...(latestDay < 0 ? [] : [{ code: "EAT_EARLIER" as const, meal: late.meal.slug, latestDay }]),
  ];
}

/** A fresh food that would not last until its meals is bought a second time, or as often as that takes. */
export const foodAdvice = (
  food: string,
  late: readonly KeptMeal[],
  main: Limit,
  { session }: KeepingQuestion,
): readonly Advice[] =>
  laterTrips(
    late.map(({ meal }) => ({
      slug: meal.slug,
      day: meal.day,
      keeps: Math.max(0, lastDayFor(meal.at, main.end, session)),
    })),
  ).map(({ meals, notBefore }) => ({ code: "SHOP_TWICE", food, meals: meals.map(({ slug }) => slug), notBefore }));

/** What a reader should know about the limit itself: hours that count, a writer alone or beyond the rule, a region without rules. */
export function limitAdvice(
  limits: readonly Limit[],
  decides: Limit,
  keepsAs: string | null,
  uses: readonly KeptMeal[],
  { region, session }: KeepingQuestion,
): readonly Advice[] {
  const own = limits.filter(({ basis }) => basis.of.slug === decides.basis.of.slug);
  const rule = strictest(own.filter(({ basis }) => basis.kind === "PUBLISHED"));
  const writer = strictest(own.filter(({ basis }) => basis.kind === "WRITER"));
  const day = Math.floor(decides.end.clock);
  const lastDayMeal = uses.some(({ meal }) => meal.day === day && !isPast(meal, decides.end, session));
  const advice: Advice[] = [];
  if (decides.counts === "HOURS" && lastDayMeal)
    advice.push({ code: "EAT_BEFORE", day, hours: lastingDays(decides.span) * 24, until: decides.end.until });
  if (rule === null) advice.push({ code: "NO_PUBLISHED_RULE", keepsAs });
  else if (writer !== null && strictest([writer, rule]) === rule && writer.basis.days > rule.basis.days)
    advice.push({
      code: "WRITER_EXCEEDS_RULE",
      writerDays: writer.basis.days,
      ruleDays: rule.basis.days,
      rule: rule.basis.rule ?? "",
    });
  if (region !== null && rule?.reach === "REGION_WITHOUT_RULE")
    advice.push({ code: "REGION_WITHOUT_RULE", asked: region, used: rule.basis.region ?? "INT" });
  return advice;
}
