import { choosePacks, type PackOption } from "../src/domain/shopping/packs.js";
import { openIntegerProgram, type CoverPack } from "../tests/kit/cover-by-integer-program.js";
import { diceFrom } from "../tests/kit/arbitrary/dice.js";
import { compared, result, type Benchmark, type BenchmarkResult } from "./benchmark.js";

interface Shelf {
  readonly need: number;
  readonly packs: readonly CoverPack[];
  readonly options: readonly PackOption[];
}

/** Shelves of 2 to 8 packs; larger packs are cheaper by weight, not always. Prices in whole cents. */
function shelves(count: number): readonly Shelf[] {
  const dice = diceFrom(2026);
  return Array.from({ length: count }, () => {
    const packs = Array.from({ length: 2 + dice.roll(7) }, () => {
      const content = 50 + 25 * dice.roll(40);
      return { content, price: Math.round((content ** 0.9 * (80 + dice.roll(41))) / 100) };
    });
    return {
      need: 100 + dice.roll(6000),
      packs,
      options: packs.map(({ content, price }, index) => ({ index, content, price })),
    };
  });
}

/** Least-cost packs, against a general integer-programming solver on the same shelves. The costs must be the same. */
async function packsAgainstSolver(): Promise<readonly BenchmarkResult[]> {
  const program = await openIntegerProgram();
  const all = shelves(40);
  for (const { need, packs, options } of all) {
    const [ours, theirs] = [choosePacks(need, options)?.price, program.leastPrice(need, packs)];
    if (ours !== theirs) throw new Error(`${need} of ${JSON.stringify(packs)}: ours costs ${ours}, theirs ${theirs}`);
  }
  const [ours = 1, theirs = 0] = compared(
    [
      () => all.map(({ need, options }) => choosePacks(need, options)),
      () => all.map(({ need, packs }) => program.leastPrice(need, packs)),
    ],
    5,
  );
  const detail =
    `${all.length} shelves: ${(ours * 1000).toFixed(0)} us and ${theirs.toFixed(1)} ms, every cost the same; ` +
    `ours also settles waste and number of packs`;
  return [result("packs: solver's time / ours", theirs / ours, { atLeast: 50 }, detail)];
}

export const packBenchmarks: readonly Benchmark[] = [{ name: "packs", run: packsAgainstSolver }];
