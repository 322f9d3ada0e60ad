import type { CatalogueEdition, CatalogueRow, CatalogueWeight, KnownCatalogueRow } from "../model/catalogue-row.js";

/** What a row of the table of foods says; weights stand in a table of their own. */
export type CatalogueFoodFacts = Omit<CatalogueRow, "weights">;

/** The weights of a row, each with the edition it stands in. */
export const placedWeights = ({ row, edition }: KnownCatalogueRow): readonly Required<CatalogueWeight>[] =>
  row.weights.map(({ measure, grams, edition: own = edition }) => ({ measure, grams, edition: own }));

/** A row with these weights. Only one of another edition than the row's needs to say so. */
export const withWeights = (
  { row, edition }: KnownCatalogueRow,
  weights: readonly Required<CatalogueWeight>[],
): KnownCatalogueRow => ({
  edition,
  row: {
    ...row,
    weights: weights.map(({ measure, grams, edition: own }) =>
      own.code === edition.code ? { measure, grams } : { measure, grams, edition: own },
    ),
  },
});

/** What another edition says of a food, with the weights it had. */
export const withFacts = (
  before: KnownCatalogueRow | null,
  facts: CatalogueFoodFacts,
  edition: CatalogueEdition,
): KnownCatalogueRow =>
  withWeights({ row: { ...facts, weights: [] }, edition }, before === null ? [] : placedWeights(before));

/** A weight in the place of what the row has under that measure, or behind the others. */
export function withWeight(before: KnownCatalogueRow, weight: Required<CatalogueWeight>): KnownCatalogueRow {
  const weights = placedWeights(before);
  const at = weights.findIndex(({ measure }) => measure === weight.measure);
  const others = weights.filter(({ measure }) => measure !== weight.measure);
  return withWeights(before, at < 0 ? [...others, weight] : others.toSpliced(at, 0, weight));
}

/** A row with those weights of an older one that stand in one of these editions. */
export const withWeightsOf = (
  row: KnownCatalogueRow,
  older: KnownCatalogueRow | null,
  editions: ReadonlySet<string>,
): KnownCatalogueRow =>
  (older === null ? [] : placedWeights(older))
    .filter(({ edition }) => editions.has(edition.code))
    .reduce(withWeight, row);
