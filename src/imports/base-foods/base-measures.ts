import type { Food, FoodDensity, OwnMeasure } from "../../domain/model/food.js";
import type { BaseFoodEntry } from "./base-food-schema.js";
import { fromMemory } from "./base-sources.js";

/** A weight of the open table: grams of one of a household measure, without refuse. */
export interface TableWeight {
  readonly measure: string;
  readonly grams: number;
}

/** Measures that a food sold by the piece is bought in, the first that it has. */
const boughtIn = [
  ...["piece", "head", "bunch", "tin", "jar", "bottle", "packet", "loaf", "ear", "cube", "fillet", "ball", "stalk", "sprig"],
]; // prettier-ignore

/** Aisles whose weights from memory are of what is eaten of it. */
const weighedReady: ReadonlySet<string> = new Set(["vegetables", "fruit", "fresh-herbs"]);

/** English plurals that are no plain -s. */
const plurals: Readonly<Record<string, string>> = {
  ...{ bunch: "bunches", leaf: "leaves", loaf: "loaves", glass: "glasses", pinch: "pinches" },
};

/**
 * The own measures of an entry, in grams as bought: what the open table weighs, and what writers of fruit and vegetables weighed, is
 * of the edible part, so the refuse is added once here and taken off once in the plan. A food that is bought by the piece has
 * one measure called `piece`.
 */
export function measuresOfEntry(
  { measures, shop, aisle }: BaseFoodEntry,
  share: number,
  weightAt: (place: string) => TableWeight | null,
  sourceOf: (measure: string) => OwnMeasure["source"],
): readonly OwnMeasure[] {
  const whole = shop === "COUNT" ? boughtIn.find((name) => name in measures) : undefined;
  return Object.entries(measures).flatMap(([name, written]): readonly OwnMeasure[] => {
    const { slug, words } = {
      slug: name === whole ? "piece" : name,
      words: { one: name, many: plurals[name] ?? `${name}s` },
    };
    const pieces = slug === "piece" ? 1 : null;
    const base = { name: slug, ...words, grams: null, millilitres: null, pieces };
    if ("weight" in written) {
      const weight = weightAt(written.weight);
      if (weight === null) return [];
      const { grams, source } = { grams: weight.grams / share, source: sourceOf(weight.measure) };
      const section =
        share === 1 ? source.section : `${source.section ?? ""}, ${String(weight.grams)} g of edible material`;
      return [{ ...base, grams, source: { ...source, section } }];
    }
    const { amount, unit } = written;
    const said = `one ${name}: ${String(amount)} ${unit}`;
    if (unit === "ml") return [{ ...base, millilitres: amount, source: fromMemory(said) }];
    // A head of garlic is weighed as bought.
    const isReady = weighedReady.has(aisle) && share !== 1 && name !== "head";
    const source = fromMemory(isReady ? `${said} of edible material` : said);
    return [{ ...base, grams: isReady ? amount / share : amount, source }];
  });
}

/** The density of an entry, where it gives one. */
export const densitiesOfEntry = ({ density }: BaseFoodEntry): readonly FoodDensity[] =>
  density === undefined ? [] : [{ form: null, gramsPerMl: density, source: fromMemory("density") }];

/** The edible share of an entry, where it gives one. */
export const edibleOfEntry = ({ edible }: BaseFoodEntry): Food["edible"] =>
  edible === undefined ? [] : [{ form: null, share: edible, source: fromMemory("edible share") }];
