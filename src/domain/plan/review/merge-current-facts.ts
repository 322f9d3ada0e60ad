import type { Food, FoodClaims } from "../../model/food.js";
import type { PlanBundle } from "../../model/plan.js";
import { memoize } from "../../memoize.js";
import { inheritedClaims } from "../../component/inherit-from-base.js";
import { sharedSlug } from "../../shopping/shopped-as.js";
import type { FoodsToday } from "./foods-today.js";

/** A plan with what today's catalogue says of its foods, and whose words those are. */
interface Known {
  readonly said: readonly (readonly FoodClaims[])[];
  readonly bundle: PlanBundle;
}

/** The last answer for each plan: its foods of today are the same objects until one of them changes. */
const lastOf = memoize((_: PlanBundle): { known: Known | null } => ({ known: null }));

/**
 * The plan, with what is said today of the allergens and diets of its foods beside what it froze; of each two answers the less
 * safe stands. So does what is said of the food that one of them is shopped as. The same plan where nothing else is said.
 */
export function mergeCurrentFacts(bundle: PlanBundle, today: Pick<FoodsToday, "bySlug" | "canonical">): PlanBundle {
  if (today.bySlug.size === 0) return bundle;
  const said = bundle.foods.map((food) => saidBeside(food, today));
  if (said.every((each) => each.length === 0)) return bundle;
  const last = lastOf(bundle);
  if (last.known !== null && sameWords(last.known.said, said)) return last.known.bundle;
  const foods = bundle.foods.map((food, at): Food => {
    const beside = said[at] ?? [];
    return beside.length === 0 ? food : { ...food, beside };
  });
  last.known = { said, bundle: { ...bundle, foods } };
  return last.known.bundle;
}

/** What is said today of the food that an own food builds on, as far as that one inherits it. */
const besideOwn = ({ extends: base }: Food, today: Food): FoodClaims =>
  inheritedClaims(today, base?.sameIngredients ?? false);

const saysSomething = ({ allergens, diets, singleIngredient }: FoodClaims): boolean =>
  allergens.length > 0 || diets.length > 0 || (singleIngredient ?? null) !== null;

const sameWords = (a: Known["said"], b: Known["said"]): boolean =>
  a.every((each, at) => each.length === b[at]?.length && each.every((claims, index) => claims === b[at]?.[index]));

function saidBeside(
  food: Food,
  { bySlug, canonical }: Pick<FoodsToday, "bySlug" | "canonical">,
): readonly FoodClaims[] {
  const shared = sharedSlug(food);
  if (shared === null) return [];
  const known = [...new Set([shared, canonical(shared)])].flatMap((slug) => bySlug.get(slug) ?? []);
  const now = food.owner === undefined ? known : known.map((base) => besideOwn(food, base)).filter(saysSomething);
  return now.filter((each) => !saysTheSame(each, food));
}

/** What is said of a food's allergens and diets, so that the same is the same text. */
export const wordsOfClaims = memoize(({ allergens, diets, singleIngredient }: FoodClaims): string =>
  JSON.stringify([
    allergens.map(({ code, presence, traces }) => `${code} ${presence} ${traces ?? ""}`).toSorted(),
    diets.map(({ diet, fits }) => `${diet} ${fits}`).toSorted(),
    singleIngredient ? singleIngredient.is.toSorted() : null,
  ]),
);

const saysTheSame = (a: FoodClaims, b: FoodClaims): boolean => a === b || wordsOfClaims(a) === wordsOfClaims(b);
