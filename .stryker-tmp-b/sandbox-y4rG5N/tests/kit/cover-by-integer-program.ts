// @ts-nocheck
import { createRequire } from "node:module";
import type { Highs } from "highs";

/** Its types call it CommonJS and its ES module is not, so it is required. */
const loadHighs = createRequire(import.meta.url)("highs") as () => Promise<Highs>;

/** A pack as an integer program sees it. */
export interface CoverPack {
  readonly content: number;
  readonly price: number;
}

export interface CoverValue {
  readonly price: number;
  readonly content: number;
  readonly packs: number;
}

export interface IntegerProgram {
  /** Least price of a cover. One solve. */
  leastPrice(need: number, packs: readonly CoverPack[]): number;
  /** Least price, then least content at that price, then fewest packs. Three solves; prices and contents must be whole. */
  best(need: number, packs: readonly CoverPack[]): CoverValue;
}

/** A general integer-programming solver (HiGHS, MIT, as WebAssembly), started once; an independent judge of covers. */
export async function openIntegerProgram(): Promise<IntegerProgram> {
  const highs = await loadHighs();
  const leastPrice = (need: number, packs: readonly CoverPack[]): number =>
    minimum(
      highs,
      packs.map(({ price }) => price),
      [atLeast(contentsOf(packs), need)],
    );
  return {
    leastPrice,
    best: (need, packs) => {
      const price = leastPrice(need, packs);
      const covered = [atLeast(contentsOf(packs), need), exactly(pricesOf(packs), price)];
      const content = minimum(highs, contentsOf(packs), covered);
      const ones = packs.map(() => 1);
      return { price, content, packs: minimum(highs, ones, [...covered, exactly(contentsOf(packs), content)]) };
    },
  };
}

const pricesOf = (packs: readonly CoverPack[]): readonly number[] => packs.map(({ price }) => price);
const contentsOf = (packs: readonly CoverPack[]): readonly number[] => packs.map(({ content }) => content);
const sum = (factors: readonly number[]): string => factors.map((factor, at) => `${factor} x${at}`).join(" + ");
const atLeast = (factors: readonly number[], bound: number): string => `${sum(factors)} >= ${bound}`;
const exactly = (factors: readonly number[], bound: number): string => `${sum(factors)} = ${bound}`;

function minimum(highs: Highs, factors: readonly number[], conditions: readonly string[]): number {
  const variables = factors.map((_, at) => `x${at}`).join(" ");
  const model = `Minimize\n obj: ${sum(factors)}\nSubject To\n${conditions
    .map((condition, at) => ` c${at}: ${condition}`)
    .join("\n")}\nGeneral\n ${variables}\nEnd\n`;
  const solution = highs.solve(model, { mip_rel_gap: 0, mip_abs_gap: 0 });
  if (solution.Status !== "Optimal") throw new Error(`no optimum (${solution.Status}) of\n${model}`);
  return Math.round(solution.ObjectiveValue);
}
