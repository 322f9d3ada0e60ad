import { greatestCommonDivisor } from "../quantity/rational.js";

/** Sums of two must stay exact whole numbers. */
const most = 2 ** 50;

/**
 * Contents as whole multiples of one unit, the largest there is among decimal places: 425.24 and 453.59237 g are 42524000 and
 * 45359237. Contents of no common decimal place (thirds of a pound) are rounded to the finest one that whole numbers hold.
 */
export function contentGrid(contents: readonly number[]): readonly number[] {
  const largest = Math.max(...contents);
  let scale = 1;
  while (largest * scale * 10 <= most) scale *= 10;
  const whole = contents.map((content) => Math.max(1, Math.round(content * scale)));
  const divisor = whole.reduce(greatestCommonDivisor);
  return whole.map((content) => content / divisor);
}
