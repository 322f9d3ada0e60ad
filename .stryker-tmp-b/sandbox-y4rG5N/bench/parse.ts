// @ts-nocheck
import { numericQuantity } from "numeric-quantity";
import { parseLine } from "../src/domain/quantity/parse.js";
import { toNumber } from "../src/domain/quantity/rational.js";
import { compared, result, type Benchmark, type BenchmarkResult } from "./benchmark.js";
import { lineCases, type LineCase } from "./line-cases.js";

/** A general reader of numerals knows no units, packs or foods: of a line it gets the number it starts with, at best. */
const leadingNumber = (line: string): number => numericQuantity(line, { allowTrailingInvalid: true });

const read = (line: string) => parseLine(line, { locale: "en-US", measures: "US_CUSTOMARY" }).amount;

const understood = ({ line, amount }: LineCase): boolean => {
  const found = read(line);
  if (amount === null || found === null) return amount === found;
  return found.low === amount[0] && found.high === amount[1] && found.unit === amount[2];
};

/** The baseline is not asked for units or for the upper end of a range. */
const numberFound = ({ line, amount }: LineCase): boolean => {
  const found = leadingNumber(line);
  return amount === null ? Number.isNaN(found) : Math.abs(found - toNumber(amount[0])) < 1e-6;
};

/** Lines read a second, against a general library that reads only the numeral a line begins with. */
function linesPerSecond(): Promise<readonly BenchmarkResult[]> {
  const [ours = 1, theirs = 1] = compared([
    () => lineCases.map(({ line }) => read(line)),
    () => lineCases.map(({ line }) => leadingNumber(line)),
  ]);
  const perSecond = (took: number): number => Math.round((lineCases.length / took) * 1000);
  const all = lineCases.length;
  const detail =
    `${perSecond(ours)} lines/s with ${lineCases.filter(understood).length} of ${all} amounts and units right, ` +
    `${perSecond(theirs)} lines/s with ${lineCases.filter(numberFound).length} of ${all} numbers right`;
  return Promise.resolve([result("lines read: ours / numerals only", theirs / ours, { atLeast: 0.05 }, detail)]);
}

export const parseBenchmarks: readonly Benchmark[] = [{ name: "parse", run: linesPerSecond }];
