import { edibleShare } from "../../domain/component/edible.js";
import type { Food, OwnMeasure } from "../../domain/model/food.js";
import type { CatalogueFacts } from "./catalogue-facts.js";

/**
 * A writer's food with what the open table knows beside it. The writer's facts come first and override: a density of a
 * form, a measure of a name, the edible portion and the nutrients are taken from the table only where the writer has none.
 * Nutrients are taken whole or not at all, because they have one source. Everything else is the writer's, and what neither
 * knows stays unknown.
 */
export function mergeCatalogueFood(writers: Food, catalogue: CatalogueFacts): Food {
  const forms = new Set(writers.densities.map(({ form }) => form));
  const names = new Set(writers.measures.map(({ name }) => name));
  const edible = new Set(writers.edible.map(({ form }) => form));
  const merged = {
    ...writers,
    densities: [...writers.densities, ...catalogue.densities.filter(({ form }) => !forms.has(form))],
    edible: [...writers.edible, ...catalogue.edible.filter(({ form }) => !edible.has(form))],
    nutrients: writers.nutrients ?? catalogue.nutrients,
  };
  const share = edibleShare(merged, null) ?? 1;
  const measures = catalogue.measures.filter(({ name }) => !names.has(name)).map((each) => asBought(each, share));
  return { ...merged, measures: [...writers.measures, ...measures] };
}

/**
 * The table weighs its household measures without refuse ("edible material", its documentation of the weight file); a food's own
 * measures are what a shopper carries home.
 */
function asBought(measure: OwnMeasure, share: number): OwnMeasure {
  if (share === 1 || measure.grams === null) return measure;
  const section = `${measure.source.section ?? ""}, ${measure.grams} g of edible material`;
  return { ...measure, grams: measure.grams / share, source: { ...measure.source, section } };
}
