import type { KnownCatalogueRow } from "../../domain/model/catalogue-row.js";
import { placedWeights } from "../../domain/component/revise-catalogue-row.js";
import { checksumOf } from "../../persistence/sql/canonical-json.js";

/** Whether two rows of a food say the same of it and stand in the same edition, apart from weights. */
export const sameFacts = (one: KnownCatalogueRow, other: KnownCatalogueRow): boolean => factsOf(one) === factsOf(other);

const factsOf = ({ row, edition }: KnownCatalogueRow): string =>
  checksumOf({ ...row, weights: [], edition: edition.code });

/** Measures that do not weigh the same in both rows, or not by the same edition. */
export function measuresMoved(one: KnownCatalogueRow, other: KnownCatalogueRow): ReadonlySet<string> {
  const [before, after] = [weightsOf(one), weightsOf(other)];
  return new Set([...before.keys(), ...after.keys()].filter((measure) => before.get(measure) !== after.get(measure)));
}

/** What a row says of each measure; the table has some twice. */
function weightsOf(known: KnownCatalogueRow): ReadonlyMap<string, string> {
  const said = new Map<string, string>();
  for (const { measure, grams, edition } of placedWeights(known))
    said.set(measure, `${said.get(measure) ?? ""} ${String(grams)} ${edition.code}`);
  return said;
}
