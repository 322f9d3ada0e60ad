import type { Pack } from "../../domain/model/food.js";
import { toNumber } from "../../domain/quantity/rational.js";
import { standardUnit } from "../../domain/quantity/unit.js";
import type { Problem } from "../../domain/problem.js";

/** Other packs that a problem names. */
const mostNamed = 5;

/** A pack, and what one gram, millilitre, piece or own measure of it costs. */
interface PricedPack {
  readonly pack: Pack;
  readonly each: number;
}

/**
 * Of the packs of one food those that cost more than `factor` times as much, or less than one `factor`th, for the same amount as is usual:
 * by the packs that are known, else by the others of the file. Of two packs of a file that disagree so, both. What is not sold in the same
 * currency and the same kind of measure is not compared.
 */
export function findOutlyingPrices(
  food: string,
  written: readonly Pack[],
  known: readonly Pack[],
  factor: number,
): ReadonlyMap<Pack, Problem> {
  const said = new Set(written.map(({ id }) => id));
  const before = grouped(known.filter(({ id }) => !said.has(id)));
  const found = new Map<Pack, Problem>();
  for (const [kind, packs] of grouped(written)) {
    const others = before.get(kind) ?? [];
    for (const one of packs) {
      const held = others.length > 0 ? others : packs.length === 2 ? packs.filter((each) => each !== one) : packs;
      const ratio = one.each / usual(held);
      if (ratio <= factor && ratio * factor >= 1) continue;
      const named = held.filter((each) => each !== one).map(({ pack }) => pack.id);
      found.set(one.pack, {
        ...{ code: "PRICE_OUT_OF_LINE", path: ["price"], food, packs: named.slice(0, mostNamed) },
        ...{ price: `${one.pack.price?.amount ?? ""} ${one.pack.price?.currency ?? ""}` },
        ratio: Number(ratio.toPrecision(4)),
      });
    }
  }
  return found;
}

function grouped(packs: readonly Pack[]): ReadonlyMap<string, readonly PricedPack[]> {
  const groups = new Map<string, PricedPack[]>();
  for (const pack of packs) {
    if (pack.price === null) continue;
    const unit = standardUnit(pack.content.unit);
    const kind = `${pack.price.currency} ${unit?.dimension ?? pack.content.unit}`;
    const each = Number(pack.price.amount) / (toNumber(pack.content.high) * (unit?.factor ?? 1));
    const group = groups.get(kind);
    if (group === undefined) groups.set(kind, [{ pack, each }]);
    else group.push({ pack, each });
  }
  return groups;
}

/** The median, the lower one of two. */
function usual(packs: readonly PricedPack[]): number {
  const sorted = packs.map(({ each }) => each).toSorted((a, b) => a - b);
  return sorted[Math.ceil(sorted.length / 2) - 1] ?? Number.NaN;
}
