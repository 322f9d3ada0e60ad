// @ts-nocheck
import type { Food } from "../../domain/model/food.js";

/**
 * A writer's food with what the open table knows beside it. The writer's facts come first and override: a density of a
 * form, a measure of a name, the edible portion and the nutrients are taken from the table only where the writer has none.
 * Nutrients are taken whole or not at all, because they have one source. Everything else is the writer's.
 */
export function mergeCatalogueFood(writers: Food, catalogue: Food): Food {
  const forms = new Set(writers.densities.map(({ form }) => form));
  const names = new Set(writers.measures.map(({ name }) => name));
  const edible = new Set(writers.edible.map(({ form }) => form));
  return {
    ...writers,
    densities: [...writers.densities, ...catalogue.densities.filter(({ form }) => !forms.has(form))],
    measures: [...writers.measures, ...catalogue.measures.filter(({ name }) => !names.has(name))],
    edible: [...writers.edible, ...catalogue.edible.filter(({ form }) => !edible.has(form))],
    nutrients: writers.nutrients ?? catalogue.nutrients,
  };
}

/** Each food with its entry in the catalogue, where its number is in it. */
export const withCatalogue = (foods: readonly Food[], catalogue: ReadonlyMap<string, Food>): readonly Food[] =>
  foods.map((food) => {
    const entry = food.ndbNo === null ? undefined : catalogue.get(food.ndbNo);
    return entry === undefined ? food : mergeCatalogueFood(food, entry);
  });
