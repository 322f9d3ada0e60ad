import type { AllergenPresence, TracesPresence } from "../model/food.js";
import { groupOf } from "./allergen-codes.js";
import type { AllergenEntry, DietRule } from "./allergen-rules.js";
import { claimsOf, type AllergenFood } from "./allergen-claims.js";
import { asIngredient, asIngredientOfAny, gravestIngredient, weakest, type AsIngredient } from "./ingredient.js";
import { presenceOf } from "./allergen-presence.js";
import { gravest } from "./allergen-statements.js";
import { tracesOfAny } from "./allergen-traces.js";

/** One allergen in one food, as an ingredient. */
export interface FoodAsIngredient extends AsIngredient {
  readonly food: string;
}

/** One allergen as an ingredient of a dish. */
export interface DishAsIngredient extends AsIngredient {
  /** Each food once, in the order of the dish. */
  readonly foods: readonly FoodAsIngredient[];
  /** Slugs of the foods that say nothing of it: look at their labels. */
  readonly unknown: readonly string[];
  /** Foods that are called gluten-free, which says nothing of their cereals as such. */
  readonly glutenFreeOnly: readonly string[];
}

/** One allergen of a list, over all the foods. */
export interface AllergenFinding {
  readonly code: string;
  readonly name: string;
  /** The least safe of `asIngredient` and `traces`; DOES_NOT_CONTAIN only where both are, of every food. */
  readonly presence: AllergenPresence;
  readonly asIngredient: DishAsIngredient;
  /** MAY_CONTAIN if the data of any food say so; not known until somebody states it of every food. */
  readonly traces: TracesPresence;
  /** Slugs of the foods behind each value, each food once. */
  readonly contains: readonly string[];
  readonly mayContain: readonly string[];
  readonly unknown: readonly string[];
  /** The codes that were found: `["walnut"]` for tree nuts. */
  readonly found: readonly string[];
  readonly threshold: string | null;
}

/** What is known of one entry of a law's list, over all foods of a dish. */
export function allergenFinding(
  entry: AllergenEntry,
  foods: readonly AllergenFood[],
  diets: readonly DietRule[],
): AllergenFinding {
  const { includes } = entry;
  const each = foods.map((food) => {
    const as = asIngredientOfAny(food, includes, diets);
    const traces = tracesOfAny(food, includes);
    return { food, as, traces, presence: presenceOf(as, traces) };
  });
  const slugsWith = (wanted: AllergenPresence): readonly string[] =>
    once(each.flatMap(({ food, presence }) => (presence === wanted ? [food.slug] : [])));
  const inIt = each.filter(({ as }) => as.presence === "CONTAINS").map(({ food }) => food);
  return {
    code: entry.code,
    name: entry.name,
    presence: gravest(
      each.map(({ presence }) => presence),
      "UNKNOWN",
    ),
    asIngredient: dishAsIngredient(
      each.map(({ food, as }) => ({ food: food.slug, ...as })),
      glutenFreeOnly(
        entry,
        each.flatMap(({ food, as }) => (as.presence === "UNKNOWN" ? [food] : [])),
      ),
    ),
    traces: gravest(
      each.map(({ traces }) => traces),
      "UNKNOWN",
    ),
    contains: slugsWith("CONTAINS"),
    mayContain: slugsWith("MAY_CONTAIN"),
    unknown: slugsWith("UNKNOWN"),
    found: includes.filter((code) => inIt.some((food) => asIngredient(food, code, diets).presence === "CONTAINS")),
    threshold: entry.threshold,
  };
}

const once = (slugs: readonly string[]): readonly string[] => [...new Set(slugs)];

function dishAsIngredient(all: readonly FoodAsIngredient[], glutenFree: readonly string[]): DishAsIngredient {
  const byFood = new Map<string, FoodAsIngredient[]>();
  for (const each of all) {
    const known = byFood.get(each.food);
    if (known === undefined) byFood.set(each.food, [each]);
    else known.push(each);
  }
  const foods = [...byFood].map(([food, said]) => ({ food, ...gravestIngredient(said) }));
  const worst = gravestIngredient(foods);
  const { presence, basis, source } = worst.presence === "DOES_NOT_CONTAIN" ? weakest(foods) : worst;
  return {
    ...{ presence, basis, source, foods, glutenFreeOnly: glutenFree },
    unknown: foods.flatMap((each) => (each.presence === "UNKNOWN" ? [each.food] : [])),
  };
}

/** Wheat starch may be called gluten-free and is wheat all the same, so that is said where it leaves a cereal open. */
const glutenFreeOnly = ({ includes }: AllergenEntry, open: readonly AllergenFood[]): readonly string[] =>
  includes.some((code) => groupOf(code) === "gluten")
    ? once(open.filter(calledGlutenFree).map(({ slug }) => slug))
    : [];

const calledGlutenFree = (food: AllergenFood): boolean =>
  claimsOf(food).some(({ diets }) => diets.some(({ diet, fits }) => diet === "gluten-free" && fits === true));
