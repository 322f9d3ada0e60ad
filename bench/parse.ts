import { numericQuantity } from "numeric-quantity";
import { parseLine } from "../src/domain/quantity/parse.js";
import { compared, result, type Benchmark, type BenchmarkResult } from "./benchmark.js";

const lines = [
  "½ cup barley",
  "1 ½ cups barley, rinsed",
  "350g/12oz leeks, finely sliced",
  "2 (15-oz) cans chickpeas, drained",
  "½–1 tsp smoked paprika, or to taste",
  "2 tbsp plus 1/4 cup oil",
  "a pinch of salt",
  "juice of 2 lemons",
  "3 x 400g tins butter beans, drained, liquid kept",
  "1 heaping tablespoon of flaxseed",
  "2 tablespoons olive oil, plus more for serving",
  "1 cup almonds, chopped",
] as const;

/** A general reader of numerals knows no units, packs or foods: of a line it gets the number it starts with, at best. */
const leadingNumber = (line: string): number => numericQuantity(line, { allowTrailingInvalid: true });

/** Lines read a second, against a general library that reads only the numeral a line begins with. */
function linesPerSecond(): Promise<readonly BenchmarkResult[]> {
  const [ours = 1, theirs = 1] = compared([
    () => lines.map((line) => parseLine(line, { locale: "en", measures: "US_CUSTOMARY" })),
    () => lines.map(leadingNumber),
  ]);
  const perSecond = (took: number): number => Math.round((lines.length / took) * 1000);
  const read = lines.filter((line) => !Number.isNaN(leadingNumber(line))).length;
  const detail = `${perSecond(ours)} lines/s and ${perSecond(theirs)} lines/s; the baseline finds a number in ${read} of ${lines.length} lines`;
  return Promise.resolve([result("lines read: ours / numerals only", theirs / ours, { atLeast: 0.05 }, detail)]);
}

export const parseBenchmarks: readonly Benchmark[] = [{ name: "parse", run: linesPerSecond }];
