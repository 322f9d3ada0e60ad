import type { Money } from "../model/amount.js";

/** Money is added up in whole ten-thousandths of its currency unit, so that no sum drifts. */
export const partsPerUnit = 10_000;

const SHAPE = /^(\d{1,10})(?:\.(\d{1,4}))?$/;

/** `"3.2"` to 32000 parts; null for anything but a plain non-negative decimal of at most four places. */
export function moneyParts(amount: string): number | null {
  const match = SHAPE.exec(amount);
  if (match === null) return null;
  const [, units = "0", decimals = ""] = match;
  return Number(units) * partsPerUnit + Number(decimals.padEnd(4, "0"));
}

/** 32000 parts to `"3.20"`: two places, more only where the parts need them. */
export function moneyOf(parts: number, currency: string): Money {
  const whole = Math.floor(parts / partsPerUnit);
  const decimals = String(parts - whole * partsPerUnit).padStart(4, "0");
  return { amount: `${whole}.${decimals.slice(0, 2)}${decimals.slice(2).replace(/0+$/, "")}`, currency };
}

/** The nearest hundredth, half upwards, in parts: money that was divided is rounded once, here. */
export const roundedToHundredths = (parts: number): number => Math.floor(parts / 100 + 0.5) * 100;

/**
 * Rounds many amounts to hundredths so that they still add up to their rounded sum: every amount is rounded down, and the
 * hundredths left go to the largest remainders (first come first where equal).
 */
export function roundedTogether(parts: readonly number[]): readonly number[] {
  const total = roundedToHundredths(parts.reduce((sum, each) => sum + each, 0));
  const floors = parts.map((each) => Math.floor(each / 100 + 1e-9) * 100);
  const short = Math.round((total - floors.reduce((sum, each) => sum + each, 0)) / 100);
  const byRemainder = parts
    .map((each, index) => ({ index, remainder: each - floors[index]! }))
    .toSorted((a, b) => b.remainder - a.remainder || a.index - b.index);
  const raised = new Set(byRemainder.slice(0, Math.max(0, short)).map(({ index }) => index));
  return floors.map((each, index) => (raised.has(index) ? each + 100 : each));
}
