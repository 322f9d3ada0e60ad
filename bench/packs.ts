import highsLoader from "highs";
import { choosePacks, type PackOption } from "../src/domain/shopping/packs.js";
import { compared, result, type Benchmark, type BenchmarkResult } from "./benchmark.js";

interface Instance {
  readonly need: number;
  readonly packs: readonly PackOption[];
}

/** Numbers that look drawn by lot and are the same in every run. */
function draws(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** Shelves of 2 to 8 packs; larger packs are cheaper by weight, not always. Prices in parts of a currency unit. */
function instances(count: number): readonly Instance[] {
  const draw = draws(20_26);
  return Array.from({ length: count }, () => ({
    need: Math.round(100 + draw() * 6000),
    packs: Array.from({ length: 2 + Math.floor(draw() * 7) }, (_, index) => {
      const content = 50 + Math.round(draw() * 40) * 25;
      return { index, content, price: Math.round(content ** 0.9 * (0.8 + 0.4 * draw())) * 100 };
    }),
  }));
}

const model = ({ need, packs }: Instance): string =>
  [
    "Minimize",
    ` cost: ${packs.map(({ price, index }) => `${price} x${index}`).join(" + ")}`,
    "Subject To",
    ` cover: ${packs.map(({ content, index }) => `${content} x${index}`).join(" + ")} >= ${need}`,
    "General",
    ` ${packs.map(({ index }) => `x${index}`).join(" ")}`,
    "End",
  ].join("\n");

/** Least-cost packs, against a general integer programming solver on the same shelves. The costs must be the same. */
async function packsAgainstSolver(): Promise<readonly BenchmarkResult[]> {
  const highs = await (highsLoader as unknown as typeof highsLoader.default)();
  const shelves = instances(40);
  const models = shelves.map(model);
  const solve = (text: string): number => highs.solve(text, { output_flag: false }).ObjectiveValue;
  shelves.forEach(({ need, packs }, at) => {
    const ours = choosePacks(need, packs)?.price;
    const theirs = Math.round(solve(models[at] ?? ""));
    if (ours !== theirs) throw new Error(`shelf ${at}: ${ours} against ${theirs}`);
  });
  const [ours = 1, theirs = 0] = compared(
    [() => shelves.map(({ need, packs }) => choosePacks(need, packs)), () => models.map(solve)],
    5,
  );
  const detail = `${shelves.length} shelves: ${(ours * 1000).toFixed(0)} us and ${theirs.toFixed(1)} ms, every cost the same`;
  return [result("packs: solver's time / ours", theirs / ours, { atLeast: 50 }, detail)];
}

export const packBenchmarks: readonly Benchmark[] = [{ name: "packs", run: packsAgainstSolver }];
