import type { InSlices, Work } from "../../domain/counted-work.js";
import type { Food } from "../../domain/model/food.js";
import { memoize, memoizeLatestInSlices } from "../../domain/memoize.js";
import { foodSlug } from "../../domain/model/open-table-slug.js";
import type { PlanBundle } from "../../domain/model/plan.js";
import { mostOffered, nearestFoods } from "../../domain/quantity/naming/nearest-foods.js";
import {
  compileFoodNamesInSlices,
  findFood,
  readersFoodName,
  type FoodMatch,
  type FoodNames,
} from "../../domain/quantity/food-name.js";
import { languageOf } from "../../domain/quantity/reader-locale.js";
import type { Path, Problem } from "../../domain/problem.js";
import type { FoodReader } from "../foods/foods-today.js";
import { runInSlices, type Sliced } from "../time-slices.js";
import { longestHouseholdList, readLocale, type GivenHousehold } from "./read-household.js";
import { noFoods, type OnHandFoods } from "./read-on-hand.js";

/** The foods that readers may name. */
export interface FoodCatalogue {
  /** Foods as known today, in the order asked for; null where there is none. */
  readonly bySlugs: FoodReader;
  /** Every food that anybody may name, by its names in all languages. */
  readonly names: () => Promise<FoodNames>;
}

/**
 * Finds what is on hand, and what is not liked, by slug, number in the open food table, or name ("Möhren", "chick peas"): first among the foods of the plans, then among all. In
 * the reader's language, or else in any. A name of several foods is a question, one of none is refused with the foods near it.
 */
export async function findOnHandFoods(
  given: GivenHousehold,
  bundles: readonly PlanBundle[],
  catalogue: FoodCatalogue,
  sliced: Sliced,
): Promise<OnHandFoods> {
  const [onHand, dislikes] = [ofSize(given.onHand), ofSize(given.dislikes)];
  if (onHand.length === 0 && dislikes.length === 0) return noFoods;
  const inPlans = new Set(bundles.flatMap(({ foods }) => foods.map(({ slug }) => slug)));
  const locale = readLocale(given.locale ?? null, []);
  const language = locale.ok && locale.value !== null ? languageOf(locale.value) : null;
  const written = [...new Set([...onHand.flatMap(({ food }) => food ?? []), ...dislikes])];
  const others = written.filter((food) => !inPlans.has(foodSlug(food)));
  const today = new Map<string, Food>();
  const readFoods = async (slugs: readonly string[]): Promise<void> => {
    const unread = [...new Set(slugs)].filter((slug) => !today.has(slug));
    if (unread.length === 0) return;
    for (const food of await catalogue.bySlugs(unread)) if (food !== null) today.set(food.slug, food);
  };
  await readFoods(others.map(foodSlug));
  const names = others.filter((food) => !today.has(foodSlug(food)));
  const inThem =
    names.length === 0
      ? new Map<string, FoodMatch>()
      : await runInSlices(sliced, (work) => matchesIn(bundles, names, language, work));
  const unknown = names.filter((name) => inThem.get(name)?.kind === "NONE");
  const all = unknown.length === 0 ? null : await catalogue.names();
  const inAll =
    all === null
      ? new Map<string, Called>()
      : await runInSlices(sliced, (work) => matchesInAll(all, unknown, language, work));
  const matches = names.map(
    (name) => [name, inAll.get(name) ?? { match: inThem.get(name) ?? none, near: [] }] as const,
  );
  const slugs = new Map(matches.flatMap(([name, { match }]) => (match.kind === "FOUND" ? [[name, match.slug]] : [])));
  const spoken = onHand.flatMap(({ food, unit }) =>
    food === null || food === undefined || isSaid(unit) ? [] : [slugs.get(food) ?? foodSlug(food)],
  );
  const offered = matches.flatMap(([, { match, near }]) => (match.kind === "AMBIGUOUS" ? match.slugs : near));
  await readFoods([...spoken, ...[...slugs.values(), ...offered].filter((slug) => !inPlans.has(slug))]);
  const called = (slug: string): string => {
    const food = today.get(slug) ?? bundles.flatMap(({ foods }) => foods).find((each) => each.slug === slug);
    return (food && readersFoodName(food, language ?? "en", given.region ?? null)?.many) ?? slug;
  };
  const faults = new Map(
    matches.flatMap(([name, { match, near }]) =>
      match.kind === "FOUND" ? [] : [[name, (path: Path) => faultOf(name, match, near, called, path)] as const],
    ),
  );
  return { slugs, faults, today };
}

/** A list that is too long is refused, so that nothing is looked up for it. */
const ofSize = <T>(list: readonly T[] | null | undefined): readonly T[] =>
  list === null || list === undefined || list.length > longestHouseholdList ? [] : list;

const isSaid = (unit: string | null | undefined): boolean => (unit ?? "").trim() !== "";

const none: FoodMatch = { kind: "NONE" };

/** Names of foods; of those that one name would stand for twice, the slugs. */
const toldApart = (slugs: readonly string[], called: (slug: string) => string): readonly string[] => {
  const names = slugs.map(called);
  return slugs.map((slug, at) => {
    const name = names[at] ?? slug;
    return names.indexOf(name) === names.lastIndexOf(name) ? name : slug;
  });
};

/** The most foods that a question offers. */
const mostChoices = 8;

function faultOf(
  name: string,
  match: FoodMatch,
  near: readonly string[],
  called: (slug: string) => string,
  path: Path,
): Problem {
  const food = name.length > 60 ? `${name.slice(0, 60)}…` : name;
  if (match.kind === "AMBIGUOUS")
    return { code: "AMBIGUOUS_FOOD", path, food, candidates: toldApart(match.slugs.slice(0, mostChoices), called) };
  const nearest = [...new Set(near.map(called))];
  return { code: "UNKNOWN_FOOD", path, food, offer: { nearest, rows: [], slug: null, language: "en", reader: true } };
}

/** A name is looked up in each of its forms before it is known that a list has no such food. */
const stepsInOneLanguage = 2;
const stepsInAnyLanguage = 8;
/** Of a name of none: those near it are looked for. */
const stepsOfNearest = 300;

/** What names mean in some plans: in the reader's language, or else in any. Each name is looked up in each plan. */
function* matchesIn(
  bundles: readonly PlanBundle[],
  written: readonly string[],
  language: string | null,
  work: Work,
): InSlices<Map<string, FoodMatch>> {
  const plans = [];
  for (const { foods } of new Set(bundles)) plans.push(yield* compileFoodNamesInSlices(foods, work));
  const matches = new Map<string, FoodMatch>();
  for (const name of written) matches.set(name, yield* matchIn(plans, name, language, work));
  return matches;
}

function* matchIn(lists: readonly FoodNames[], name: string, language: string | null, work: Work): InSlices<FoodMatch> {
  for (const spoken of new Set([language, null])) {
    const found = new Set<string>();
    for (const names of lists) {
      work.step(spoken === null ? stepsInAnyLanguage : stepsInOneLanguage);
      yield;
      const match = findFood(names, name, spoken, null, work);
      if (match.kind === "FOUND") found.add(match.slug);
      else if (match.kind === "AMBIGUOUS") for (const slug of match.slugs) found.add(slug);
    }
    const [slug, ...more] = found;
    if (slug !== undefined)
      return more.length === 0 ? { kind: "FOUND", slug } : { kind: "AMBIGUOUS", slugs: [...found].toSorted() };
  }
  return none;
}

interface Called {
  readonly match: FoodMatch;
  /** Slugs of foods that may have been meant. */
  readonly near: readonly string[];
}

/** No food is called by more characters. */
const longestName = 200;

interface NameAsked {
  readonly names: FoodNames;
  readonly name: string;
  readonly language: string | null;
  readonly work: Work;
}

/** All names are laid out once for each state of the foods. A household goes with many plans, and what a name means here does not depend on them. */
const calledIn = memoize((_: FoodNames["foods"]) =>
  memoizeLatestInSlices(
    "names-on-hand",
    2_000,
    ({ name, language }: NameAsked) => `${language ?? ""} ${name}`,
    function* ({ names, name, language, work }): InSlices<Called> {
      const match = yield* matchIn([names], name, language, work);
      if (match.kind !== "NONE") return { match, near: [] };
      work.step(stepsOfNearest);
      yield;
      // A misspelt slug is a misspelt name with hyphens.
      const words = name.replaceAll("-", " ");
      const near = nearestFoods(names, words, language, mostOffered);
      return { match, near: near.length > 0 ? near : nearestFoods(names, words, null, mostOffered) };
    },
  ),
);

function* matchesInAll(
  names: FoodNames,
  written: readonly string[],
  language: string | null,
  work: Work,
): InSlices<Map<string, Called>> {
  const found = new Map<string, Called>();
  for (const name of written) {
    work.step(1);
    const isName = name.length <= longestName;
    found.set(name, isName ? yield* calledIn(names.foods)({ names, name, language, work }) : { match: none, near: [] });
  }
  return found;
}
