import { memoize } from "../memoize.js";
import { runToEnd, unlimitedWork, type InSlices, type Work } from "../counted-work.js";
import type { Component } from "../model/component.js";
import { askedRegion } from "../model/region.js";
import type { Warning } from "../problem.js";
import { componentAdvice, foodAdvice, limitAdvice, mealAdvice } from "./find-advice.js";
import type {
  KeepingQuestion,
  Kept,
  KeptComponent,
  KeptFood,
  KeptMeal,
  StorageAnswer,
  StorageGuidance,
  Subject,
} from "./guidance.js";
import { componentsIn, factsOfRoute, inheritedLimits, type Inherited } from "./inherited-limits.js";
import { isKeepingClass } from "./keeping-classes.js";
import { limitsOf, mainPlace, nearestFirst, strictest, type Limit, type LimitsByPlace } from "./keeping-limits.js";
import { partKeeps, waitingPartWarning, waitingParts, type PartUse } from "./part-keeping.js";
import { isPast } from "./keeping-window.js";

/** A component on its own, made as written: what `storageGuidance` takes where there is no plan. */
export const keptComponent = (component: Component): KeptComponent => ({
  component,
  route: null,
  lines: component.lines.map(({ item }) => ({ item, amount: null })),
});

/**
 * How long everything keeps: each component, meal and food at each place somebody speaks about, on whose authority,
 * which meals are too late for it, and what can be done. A meal or a composite keeps as its shortest part, counted from
 * when that part was made. Days come from rules alone; where nobody says, the answer is unknown, never a default.
 * @throws RangeError when the session's instant or zone is none
 */
export const storageGuidance = (kept: Kept, question: KeepingQuestion): StorageAnswer =>
  runToEnd(storageGuidanceInSlices(kept, question, unlimitedWork));

/** Steps in which the guidance of one thing is put together, and how many things are in one turn. */
const stepsOfThing = 20;
const thingsInTurn = 20;

/** The same turn by turn. */
export function* storageGuidanceInSlices(kept: Kept, question: KeepingQuestion, work: Work): InSlices<StorageAnswer> {
  const ofComponent = inheritedLimits(kept.components, question);
  const used = new Set([...kept.components, ...kept.meals].flatMap(({ lines }) => [...foodsIn(lines)]));
  const foods = kept.foods.filter((food) => !food.alwaysThere && (used.size === 0 || used.has(food.slug)));
  yield;
  const foodLimits = new Map(
    foods.map((food) => {
      const subject: Subject = { kind: "FOOD", slug: food.slug };
      return [food.slug, limitsOf({ subject, keepsAs: food.keepsAs, keeping: food.keeping, madeDay: 0 }, question)];
    }),
  );
  // Each meal that comes too late asks it of every other.
  const shortestIn = memoize((meal: KeptMeal) => shortestOf(meal, ofComponent, foodLimits));
  const componentUses = usesBy(kept.meals, componentsIn);
  const foodUses = usesBy(kept.meals, foodsIn);
  const makers = [
    ...kept.components.map((component) => () => componentEntry(component, componentUses, ofComponent, question)),
    ...kept.meals.map((meal) => () => mealEntry(meal, kept.meals, shortestIn, question)),
    ...foods
      .filter((food) => !isSilent(food, foodLimits))
      .map(
        ({ slug }) =>
          () =>
            foodEntry(slug, foodLimits.get(slug) ?? new Map(), foodUses, question),
      ),
  ];
  const entries: Entry[] = [];
  for (const make of makers) {
    if (entries.length % thingsInTurn === 0) yield;
    work.step(stepsOfThing);
    entries.push(make());
  }
  yield;
  const guidance = entries.flatMap((entry) => entry.guidance);
  const unknown = entries.flatMap((entry) => entry.unknown ?? []);
  yield;
  const ofClasses = unknownClasses(kept.components, foods, question);
  yield;
  const ofGuidance = warningsOf(guidance, unknown, kept.meals, question);
  const ofParts: Warning[] = [];
  for (const food of foods) {
    yield;
    ofParts.push(...partWarnings(food, kept, question));
  }
  const warnings = [...ofClasses, ...ofGuidance, ...ofParts];
  return { guidance, unknown, warnings };
}

/** What keeps on a shelf and has no figure: nobody needs to be told that nobody says. */
const isSilent = ({ slug, shelfStable }: KeptFood, limits: ReadonlyMap<string, LimitsByPlace>): boolean =>
  shelfStable === true && (limits.get(slug)?.size ?? 0) === 0;

/** Classes that the rules do not know: what is said of these is the strictest of all, and readers are told why. */
function unknownClasses(
  components: readonly KeptComponent[],
  foods: readonly KeptFood[],
  { classes }: KeepingQuestion,
): readonly Warning[] {
  const named = [
    ...components.map(({ component, route }) => ({
      path: ["components", component.slug],
      item: component.slug,
      keepsAs: factsOfRoute(component, route).keepsAs,
    })),
    ...foods.map(({ slug, keepsAs }) => ({ path: ["foods", slug], item: slug, keepsAs })),
    ...foods.flatMap(({ slug, parts }) =>
      parts.map(({ name, keepsAs = null }) => ({
        path: ["foods", slug, "parts", name],
        item: `${slug}, ${name}`,
        keepsAs,
      })),
    ),
  ];
  return named.flatMap(({ path, item, keepsAs }): readonly Warning[] =>
    keepsAs === null || isKeepingClass(keepsAs, classes)
      ? []
      : [{ code: "KEEPING_CLASS_UNKNOWN", path, item, keepsAs }],
  );
}

/** Parts of a food that wait too long, where no piece is cut late enough for them. */
function partWarnings(food: KeptFood, { components, meals }: Kept, question: KeepingQuestion): readonly Warning[] {
  if (food.parts.length < 2) return [];
  const usesIn = (lines: KeptMeal["lines"], day: number, meal: string | null): readonly PartUse[] =>
    lines.flatMap(({ item }) =>
      item.kind === "FOOD" && item.food === food.slug && item.part !== null
        ? [{ part: item.part, day, meal, plan: 0 }]
        : [],
    );
  const uses = [
    ...components.flatMap(({ lines, madeDay = 0 }) => usesIn(lines, madeDay, null)),
    ...meals.flatMap(({ meal, lines }) => usesIn(lines, meal.day, meal.slug)),
  ];
  const keeps = new Map(food.parts.map((part) => [part.name, partKeeps(part, question)]));
  return waitingParts(uses, (part) => keeps.get(part) ?? null)
    .filter(({ freshToo }) => !freshToo)
    .map((waiting) => waitingPartWarning(food.slug, waiting));
}

interface Entry {
  readonly guidance: readonly StorageGuidance[];
  readonly unknown?: { readonly subject: Subject; readonly part: Subject };
}

/** Each food of a plan asks it of every meal, so it is found once. */
const foodsIn = memoize(
  (lines: KeptMeal["lines"]): ReadonlySet<string> =>
    new Set(lines.flatMap(({ item }) => (item.kind === "FOOD" ? [item.food] : []))),
);

/** The meals that use each component or each food, by its slug and in the order of their days. */
function usesBy(
  meals: readonly KeptMeal[],
  slugsIn: (lines: KeptMeal["lines"]) => ReadonlySet<string>,
): (slug: string) => readonly KeptMeal[] {
  const found = new Map<string, KeptMeal[]>();
  for (const meal of meals.toSorted((a, b) => a.meal.day - b.meal.day)) {
    for (const slug of slugsIn(meal.lines)) {
      const known = found.get(slug);
      if (known === undefined) found.set(slug, [meal]);
      else known.push(meal);
    }
  }
  return (slug) => found.get(slug) ?? [];
}

function componentEntry(
  { component, route, madeDay = 0 }: KeptComponent,
  usesOf: (slug: string) => readonly KeptMeal[],
  limitsFor: (slug: string) => Inherited,
  question: KeepingQuestion,
): Entry {
  const subject: Subject = { kind: "COMPONENT", slug: component.slug };
  const found = limitsFor(component.slug);
  if (!found.known) return { guidance: [], unknown: { subject, part: found.part } };
  const main = mainPlace(found.limits);
  const uses = usesOf(component.slug);
  const late = main === null ? [] : uses.filter(({ meal }) => isPast(meal, main.end, question.session));
  const keepsAs = route?.keepsAs ?? component.keepsAs;
  const guidance = [...found.limits].map(([place, limits]): StorageGuidance => {
    const here = guidanceAt(subject, place, limits, madeDay, question);
    if (place !== main?.place) return here;
    const waysOut = componentAdvice(component.slug, late, found.limits, madeDay, question);
    return {
      ...here,
      tooLateFor: late.map(({ meal }) => meal.slug),
      advice: [...waysOut, ...limitAdvice(limits, main, keepsAs, uses, question)],
    };
  });
  return { guidance: mainFirst(guidance, main) };
}

function mealEntry(
  kept: KeptMeal,
  meals: readonly KeptMeal[],
  shortestIn: (meal: KeptMeal) => Shortest,
  question: KeepingQuestion,
): Entry {
  const subject: Subject = { kind: "MEAL", slug: kept.meal.slug };
  const shortest = shortestIn(kept);
  if ("part" in shortest) return { guidance: [], unknown: { subject, part: shortest.part } };
  const main = strictest(shortest.limits);
  if (main === null) return { guidance: [], unknown: { subject, part: subject } };
  // Food that goes in as it was bought is bought later for a later meal: its own guidance says so, and the meal comes in time.
  const made = strictest(shortest.limits.filter(({ basis }) => basis.of.kind !== "FOOD"));
  const late = made !== null && isPast(kept.meal, made.end, question.session) ? made : null;
  const endOfOther = (other: KeptMeal): Limit | null => {
    const limits = shortestIn(other);
    return "part" in limits ? null : strictest(limits.limits);
  };
  return {
    guidance: [
      {
        ...guidanceAt(subject, main.place, shortest.limits, 0, question),
        tooLateFor: late === null ? [] : [kept.meal.slug],
        advice: late === null ? [] : mealAdvice(kept, late, meals, endOfOther, question),
      },
    ],
  };
}

type Shortest = { readonly limits: readonly Limit[] } | { readonly part: Subject };

/** What decides for each part of a meal; foods nobody speaks about (salt, oil) do not count, components do. */
function shortestOf(
  { lines }: KeptMeal,
  ofComponent: (slug: string) => Inherited,
  ofFood: ReadonlyMap<string, LimitsByPlace>,
): Shortest {
  const parts = [...componentsIn(lines)].map(ofComponent);
  const unknown = parts.find((part) => !part.known);
  if (unknown !== undefined && !unknown.known) return { part: unknown.part };
  const foods = [...foodsIn(lines)].map((slug) => ofFood.get(slug) ?? new Map<never, never>());
  const places = [...parts.map((part) => (part.known ? part.limits : new Map<never, never>())), ...foods];
  return { limits: places.flatMap((limits) => mainPlace(limits) ?? []) };
}

function foodEntry(
  slug: string,
  limits: LimitsByPlace,
  usesOf: (slug: string) => readonly KeptMeal[],
  question: KeepingQuestion,
): Entry {
  const subject: Subject = { kind: "FOOD", slug };
  const main = mainPlace(limits);
  if (main === null) return { guidance: [], unknown: { subject, part: subject } };
  const uses = usesOf(slug);
  const late = uses.filter(({ meal }) => isPast(meal, main.end, question.session));
  const guidance = [...limits].map(([place, here]): StorageGuidance => {
    const plain = guidanceAt(subject, place, here, 0, question);
    if (place !== main.place) return plain;
    return { ...plain, tooLateFor: late.map(({ meal }) => meal.slug), advice: foodAdvice(slug, late, main, question) };
  });
  return { guidance: mainFirst(guidance, main) };
}

const mainFirst = (guidance: readonly StorageGuidance[], main: Limit | null): readonly StorageGuidance[] =>
  guidance.toSorted((a, b) => Number(b.place === main?.place) - Number(a.place === main?.place));

/** `limits` is never empty. */
function guidanceAt(
  subject: Subject,
  place: Limit["place"],
  limits: readonly Limit[],
  madeDay: number,
  question: KeepingQuestion,
): StorageGuidance {
  const decides = strictest(limits);
  if (decides === null) throw new RangeError(`no limits at ${place} for ${subject.slug}`);
  const own = ({ basis }: Limit): boolean => basis.of.slug === subject.slug && basis.of.kind === subject.kind;
  const container = limits.find((limit) => own(limit) && limit.container !== null)?.container ?? null;
  const { of, purpose, condition } = decides.basis;
  const widest = limits.find(({ reach }) => reach !== null && reach !== "REGION") ?? limits.find(({ reach }) => reach);
  const upTo = Math.min(...limits.map(({ basis }) => basis.days));
  const ruled = decides.reach === null ? widest : decides;
  return {
    subject,
    place,
    days: Math.max(0, decides.end.day - madeDay),
    upToDays: decides.basis.daysFrom === null || upTo <= decides.basis.daysFrom ? null : upTo,
    counts: decides.counts,
    purpose,
    lastDay: decides.end.lastDay,
    keepUntil: decides.end.until,
    container: decides.container ?? container,
    condition,
    basis: nearestFirst(limits, question).map((limit) => ({ ...limit.basis, decides: limit === decides })),
    limitedBy: own(decides) ? null : of,
    scope: ruled?.reach
      ? {
          asked: askedRegion(question),
          used: ruled.basis.region ?? "INT",
          reach: ruled.reach,
          whose: ruled.whose,
        }
      : null,
    tooLateFor: [],
    advice: [],
  };
}

function warningsOf(
  guidance: readonly StorageGuidance[],
  unknown: StorageAnswer["unknown"],
  meals: readonly KeptMeal[],
  { region }: KeepingQuestion,
): readonly Warning[] {
  const waiting = new Set(meals.flatMap(({ meal, lines }) => (meal.day > 0 ? [...foodsIn(lines)] : [])));
  const folder = { COMPONENT: "components", MEAL: "meals", FOOD: "foods" } as const;
  const told = unknown.filter(
    ({ subject }) => subject.kind !== "FOOD" || meals.length === 0 || waiting.has(subject.slug),
  );
  const used = guidance.flatMap(({ scope }) => (scope?.reach === "REGION_NOT_GIVEN" ? [scope.used] : []));
  return [
    ...(region === null && used.length > 0
      ? [{ code: "REGION_NOT_GIVEN" as const, path: [], used: [...new Set(used)].sort().join(", ") }]
      : []),
    ...told.map(({ subject, part }): Warning => ({
      code: "KEEPING_UNKNOWN",
      path: [folder[subject.kind], subject.slug],
      item: part.slug,
    })),
  ];
}
