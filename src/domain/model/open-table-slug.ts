/** A row of the open food table, as a line names it: `usda 11233`, or the slug that it then has. */
const written = /^usda[ -](\d{5})$/i;

/** The slug of the food that a row of the open table is by itself. */
const slugOf = (ndbNo: string): string => `usda-${ndbNo}`;

/** The number in the open table that a slug names; null: it is a slug like any other. */
export const openTableNumber = (slug: string): string | null => /^usda-(\d{5})$/.exec(slug)?.[1] ?? null;

/** The slug of a food as one writes it: `usda 11233` is `usda-11233`, and everything else is as it is. */
export function foodSlug(name: string): string {
  const number = written.exec(name)?.[1];
  return number === undefined ? name : slugOf(number);
}

/** The slugs that stand in a text as numbers of the open table: `100 g usda 11233`. Each once. */
export const openTableSlugsIn = (text: string): readonly string[] => [
  ...new Set(
    [...text.matchAll(/(?<![\p{L}\p{N}-])usda[ -](\d{5})(?![\p{L}\p{N}-])/giu)].map(([name]) => foodSlug(name)),
  ),
];
