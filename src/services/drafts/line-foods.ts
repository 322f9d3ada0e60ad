import { compileFoodNames, plainWords, type FoodNames, type NamedFood } from "../../domain/quantity/food-name.js";
import type { Food } from "../../domain/model/food.js";
import type { Deps } from "../deps.js";
import { inheritFacts } from "../foods/inherit-facts.js";

/** Letters of a name's longest word that every form of it has: "Möhr" of "Möhren". */
const stemLength = 4;

const stemOf = (name: string): string =>
  plainWords(name)
    .split(" ")
    .reduce((longest, word) => (word.length > longest.length ? word : longest), "")
    .slice(0, stemLength);

/** Whether some words, plain, may hold this name. */
export const mayHold = (text: string, name: string): boolean => text.includes(stemOf(name));

/** What some lines may name. */
interface FoodsForLines {
  /** All foods by their names; with their facts where a line may name them. */
  readonly named: readonly NamedFood[];
  /** Those that a line may name, and what they turn into, with what they inherit. */
  readonly foods: readonly Food[];
}

/**
 * The names of all foods, and what reading these lines may need to know of those they may name: how they are sold and measured,
 * with what they inherit, and what they turn into.
 */
export async function foodsForLines(deps: Pick<Deps, "data">, lines: readonly string[]): Promise<FoodsForLines> {
  const named = await deps.data.foods.names();
  const text = plainWords(lines.join(" "));
  const mayBeNamed = ({ names }: NamedFood): boolean =>
    names.some(({ one, many, also }) => [one, many, ...also].some((name) => mayHold(text, name)));
  const known = new Map<string, Food>();
  for (let wanted = named.filter(mayBeNamed).map(({ slug }) => slug); wanted.length > 0;) {
    const found = (await deps.data.foods.bySlugs(wanted)).filter((food) => food !== null);
    for (const food of await inheritFacts(deps, found)) known.set(food.slug, food);
    wanted = found.flatMap(({ yields }) => yields.map(({ food }) => food)).filter((slug) => !known.has(slug));
    // A food that is gone would be asked for again and again.
    if (found.length === 0) break;
  }
  return { named: named.map((food) => ({ ...food, ...known.get(food.slug) })), foods: [...known.values()] };
}

/** The names of all foods, laid out to read these lines by. */
export const lineFoods = async (deps: Pick<Deps, "data">, lines: readonly string[]): Promise<FoodNames> =>
  compileFoodNames((await foodsForLines(deps, lines)).named);
