import { regionCovers } from "../../domain/model/region.js";
import { memoizeLatest, memoize } from "../../domain/memoize.js";
import type { Food } from "../../domain/model/food.js";
import type { Household } from "../../domain/model/household.js";
import type { PlanBundle } from "../../domain/model/plan.js";
import { dietJudge, type DietJudge } from "../../domain/nutrition/diets.js";
import type { DietRule } from "../../domain/nutrition/allergen-rules.js";
import { asFrozen, type FoodsToday } from "../../domain/plan/review/foods-today.js";
import type { KeepingQuestion } from "../../domain/storage/guidance.js";
import { foodKeeps } from "../../domain/storage/food-keeping.js";
import { partKeeps } from "../../domain/storage/part-keeping.js";
import { sharedSlug } from "../../domain/shopping/shopped-as.js";
import type { Clock, Deps } from "../deps.js";
import { utcDay } from "../../domain/utc-day.js";

/** Reads foods as known today, in the order asked for; null where there is none. */
export type FoodReader = (slugs: readonly string[]) => Promise<readonly (Food | null)[]>;

/** Reads which food each slug is to be shopped as, where that is another; null where it is its own. */
type SynonymReader = (slugs: readonly string[]) => Promise<readonly (string | null)[]>;

interface CatalogueReaders {
  readonly readFoods: FoodReader;
  readonly readSynonyms: SynonymReader;
  /** Reads what is asked of the keeping rules; only where a food or a part waits for a later day. */
  readonly readQuestion: () => Promise<KeepingQuestion>;
}

/** Which food each slug is one with, from the catalogue of today. */
export const findSynonyms = (deps: Deps, slugs: readonly string[]): Promise<readonly (string | null)[]> =>
  deps.data.foods.synonyms(slugs);

/** Judges remembered for one set of rules: as many as its lines of regions make a difference, and readers come from. */
const keptJudges = 64;

/** Which of the regions that the rules have lines for cover one: regions of which the same do are judged alike. */
const linesFor = (rules: readonly DietRule[], region: string | null): string =>
  [...new Set(rules.flatMap(({ breaks }) => breaks.flatMap((line) => line.region ?? [])))]
    .filter((line) => region !== null && regionCovers(line, region))
    .join(" ");

const judges = memoize((rules: readonly DietRule[]) =>
  memoizeLatest(
    "diet-judges",
    keptJudges,
    (region: string | null) => linesFor(rules, region),
    (region) => dietJudge(rules, region),
  ),
);

/** The same judge for the same rules and regions that have the same lines, since plans stay compiled by it. */
export const judgeFor = (rules: readonly DietRule[], region: string | null): DietJudge => judges(rules)(region);

const dateOf = (clock: Clock): string => utcDay(clock());

/** What is known today of the foods of some plans and of what the household has on hand. */
export async function foodsToday(
  bundles: readonly PlanBundle[],
  household: Household,
  rules: readonly DietRule[],
  clock: Clock,
  { readFoods, readSynonyms, readQuestion }: CatalogueReaders,
): Promise<FoodsToday> {
  const onHand = household.onHand.flatMap(({ item }) => (item.kind === "FOOD" ? [item.food] : []));
  const slugs = [
    ...new Set([
      ...bundles.flatMap(({ foods }) => foods.flatMap((food) => sharedSlug(food) ?? [])),
      ...onHand,
      ...household.dislikes,
    ]),
  ];
  const same = new Map<string, string>();
  (await readSynonyms(slugs)).forEach((other, at) => {
    const slug = slugs[at];
    if (other !== null && slug !== undefined) same.set(slug, other);
  });
  const found = await readFoods([...new Set([...slugs, ...same.values()])]);
  const question = bundles.some(publishedFoodWaits) ? await readQuestion() : null;
  return {
    date: dateOf(clock),
    canonical: (slug) => same.get(slug) ?? slug,
    bySlug: new Map(found.flatMap((food) => (food === null ? [] : [[food.slug, food] as const]))),
    fitsDiet: judgeFor(rules, household.region),
    partKeeps: question === null ? asFrozen.partKeeps : (part, at) => partKeeps(part, question, at),
    foodKeeps: question === null ? asFrozen.foodKeeps : (food, at) => foodKeeps(food, question, at),
  };
}

/** A meal of a later day takes a food or a part, and the time of some food or part has a published ceiling. */
const publishedFoodWaits = ({ plan, foods }: PlanBundle): boolean =>
  foods.some(({ keepsAs, parts }) => [{ keepsAs }, ...parts].some((each) => (each.keepsAs ?? null) !== null)) &&
  plan.meals.some(({ day, lines }) => day > 0 && lines.some(({ item }) => item.kind === "FOOD"));
