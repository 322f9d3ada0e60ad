import { memoizeLatest } from "../../domain/memoize.js";
import type { CatalogueEdition, CatalogueRow } from "../../domain/model/catalogue-row.js";
import type { EdiblePortion, Food, FoodDensity, FoodNutrients, OwnMeasure } from "../../domain/model/food.js";
import type { Source } from "../../domain/model/source.js";
import { readHouseholdMeasure } from "./household-measure.js";

/** What a row of the open table says about a food, in the shape of a food's own facts. */
export interface CatalogueFacts extends Pick<Food, "densities" | "measures" | "edible"> {
  readonly nutrients: FoodNutrients;
}

/** Every fact with the edition and the place in it. Weights of own measures are of edible material, as printed. */
export function catalogueFacts(row: CatalogueRow, { title }: CatalogueEdition): CatalogueFacts {
  const sourceOf = (section: string, edition = title): Source => ({ kind: "PUBLISHED", title: edition, section });
  return {
    ...measuresOf(row, sourceOf),
    edible: edibleOf(row, sourceOf),
    nutrients: { per100g: row.per100g, source: sourceOf(`NDB ${row.ndbNo}, ${row.description}`) },
  };
}

type SourceOf = (section: string, edition?: string) => Source;

function edibleOf({ ndbNo, refuse }: CatalogueRow, sourceOf: SourceOf): readonly EdiblePortion[] {
  if (refuse === null) return [];
  const { percent, what } = refuse;
  const section = `Food description file, NDB ${ndbNo}, refuse ${percent} %${what === "" ? "" : ` (${what})`}`;
  return [{ form: null, share: 1 - Number(percent) / 100, source: sourceOf(section) }];
}

/** Of several measures of one form the largest is the least rounded. */
function measuresOf({ ndbNo, weights }: CatalogueRow, sourceOf: SourceOf) {
  const densities = new Map<string | null, FoodDensity & { readonly millilitres: number }>();
  const measures = new Map<string, OwnMeasure>();
  for (const { measure, grams, edition } of weights) {
    const read = readMeasure(measure);
    const source = sourceOf(`Weight file, NDB ${ndbNo}, "${measure}"`, edition?.title);
    if (read.kind === "OWN" && !measures.has(read.name) && !measures.has(read.name.replace(/s$/, ""))) {
      const { name, one } = read;
      measures.set(name, { name, one, many: one, grams, millilitres: null, pieces: null, source });
    }
    if (read.kind !== "VOLUME") continue;
    const { millilitres } = read;
    for (const form of read.forms)
      if ((densities.get(form)?.millilitres ?? 0) < millilitres)
        densities.set(form, { form, gramsPerMl: grams / millilitres, source, millilitres });
  }
  const plain = [...densities.values()].map(({ form, gramsPerMl, source }): FoodDensity => ({
    form,
    gramsPerMl,
    source,
  }));
  return { densities: plain, measures: [...measures.values()] };
}

/** The same few measures stand in thousands of rows. */
const readMeasure = memoizeLatest("household-measures", 5_000, String, readHouseholdMeasure);
