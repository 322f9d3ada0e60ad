// @ts-nocheck
import type { PackOption } from "../../../src/domain/shopping/packs.js";

/** A cover judged the slow way: every count of every pack up to the one that covers alone. Whole contents and prices only. */
export interface BruteCover {
  readonly price: number;
  readonly content: number;
  readonly packs: number;
}

const isBetter = (a: BruteCover, b: BruteCover): boolean =>
  a.price !== b.price ? a.price < b.price : a.content !== b.content ? a.content < b.content : a.packs < b.packs;

export function bruteForceCover(need: number, options: readonly PackOption[]): BruteCover {
  let best: BruteCover = { price: Infinity, content: Infinity, packs: Infinity };
  const visit = (at: number, cover: BruteCover): void => {
    if (cover.content >= need) {
      if (isBetter(cover, best)) best = cover;
      return;
    }
    const option = options[at];
    if (option === undefined) return;
    visit(at + 1, cover);
    visit(at, {
      price: cover.price + (option.price ?? 0),
      content: cover.content + option.content,
      packs: cover.packs + 1,
    });
  };
  visit(0, { price: 0, content: 0, packs: 0 });
  return best;
}
