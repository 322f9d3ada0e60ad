import type { KnownCatalogueRow } from "../../domain/model/catalogue-row.js";
import { catalogueFacts } from "../../imports/usda/catalogue-facts.js";
import { placedWeights } from "../../domain/component/revise-catalogue-row.js";
import { measuresMoved, sameFacts } from "./compare-catalogue-rows.js";

/** What a reader would notice of a row of the open food table. */
export function catalogueRowFacts(known: KnownCatalogueRow | null): ReadonlyMap<string, string> {
  if (known === null) return new Map();
  const { row, edition } = known;
  const { densities } = catalogueFacts(row, edition);
  return new Map([
    ["edition", edition.title],
    ["description", row.description],
    ["other names", row.otherNames.join(", ")],
    ["aisle", row.aisle],
    ...Object.entries(row.per100g).map(([code, value]) => [`${code} in 100 g`, String(value)] as const),
    ["thrown away", row.refuse === null ? "not known" : `${row.refuse.percent} % ${row.refuse.what}`.trim()],
    ...row.weights.map(({ measure }) => [`one ${measure}`, gramsOf(row, measure)] as const),
    ...densities.map(
      ({ form, gramsPerMl }) => [`density${form === null ? "" : ` ${form}`}`, `${rounded(gramsPerMl)} g/ml`] as const,
    ),
  ]);
}

/** The table has some measures twice. */
const gramsOf = ({ weights }: KnownCatalogueRow["row"], measure: string): string =>
  weights.flatMap((each) => (each.measure === measure ? [`${rounded(each.grams)} g`] : [])).join(", ");

const rounded = (value: number): string => String(Number(value.toPrecision(4)));

/** Titles of the editions of what was replaced. */
export function replacedTitles(before: KnownCatalogueRow | null, after: KnownCatalogueRow): readonly string[] {
  if (before === null) return [];
  const moved = measuresMoved(before, after);
  const weights = placedWeights(before).filter(({ measure }) => moved.has(measure));
  const facts = sameFacts(before, after) ? [] : [before.edition.title];
  return [...new Set([...facts, ...weights.map(({ edition }) => edition.title)])];
}
