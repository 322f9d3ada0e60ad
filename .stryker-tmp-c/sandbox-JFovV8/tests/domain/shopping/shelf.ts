// @ts-nocheck
import type { PackOption } from "../../../src/domain/shopping/packs.js";

/** `shelf([400, 80], [2400, null])`: contents and prices in the order given. */
export const shelf = (...packs: readonly (readonly [content: number, price: number | null])[]): readonly PackOption[] =>
  packs.map(([content, price], index) => ({ index, content, price }));
