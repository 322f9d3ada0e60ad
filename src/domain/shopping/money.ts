import type { Money } from "../model/amount.js";
import { memoizeLatest } from "../memoize.js";

/** Money is added up in whole ten-thousandths of its currency unit, so that no sum drifts. */
export const partsPerUnit = 10_000;

const places = 4;
const SHAPE = /^(\d{1,10})(?:\.(\d{1,4}))?$/;

/** `"3.2"` to 32000 parts; null for anything but a plain non-negative decimal of at most four places. */
export function moneyParts(amount: string): number | null {
  const match = SHAPE.exec(amount);
  if (match === null) return null;
  const [, units = "0", decimals = ""] = match;
  return Number(units) * partsPerUnit + Number(decimals.padEnd(places, "0"));
}

/** Decimal places of a currency's smallest coin (ISO 4217 as the runtime carries it): yen 0, euro 2, dinar 3. */
const minorPlaces = memoizeLatest("currencies", 200, String, (currency: string): number => {
  const found = /^[A-Z]{3}$/.test(currency)
    ? (new Intl.NumberFormat("en", { style: "currency", currency }).resolvedOptions().maximumFractionDigits ?? 2)
    : 2;
  return Math.min(places, found);
});

/** Parts of a currency's smallest coin: 100 for a cent. */
export const minorParts = (currency: string): number => 10 ** (places - minorPlaces(currency));

/** 32000 parts to `"3.20"`: the places of the currency, more only where the parts need them. Whole parts, >= 0. */
export function moneyOf(parts: number, currency: string): Money {
  const whole = Math.floor(parts / partsPerUnit);
  const decimals = String(parts - whole * partsPerUnit).padStart(places, "0");
  const kept = minorPlaces(currency);
  const shown = decimals.slice(0, kept) + decimals.slice(kept).replace(/0+$/, "");
  return { amount: shown === "" ? String(whole) : `${whole}.${shown}`, currency };
}

/** Room for the last digits of a share, so that an exact half is one. */
const halfSlack = 1e-9;

/** The nearest whole number of coins, half upwards, in parts: money that was divided is rounded once, here. */
export const roundedTo = (coin: number, parts: number): number => Math.floor(parts / coin + 0.5 + halfSlack) * coin;

/** A share of what was paid, in parts that need not be whole. */
interface PaidShare {
  readonly paid: number;
  readonly share: number;
}

/**
 * Rounds shares of what was paid to whole coins so that they still add up to their rounded sum: each is rounded down, and the
 * coins left go to the largest remainders (first come first where equal). No share is rounded to more than was paid, which
 * matters only where a price has fractions of a coin.
 */
export function roundedTogether(coin: number, amounts: readonly PaidShare[]): readonly number[] {
  const exact = amounts.map(({ paid, share }) => paid * share);
  const floors = exact.map((each) => Math.floor(each / coin + halfSlack) * coin);
  const short = roundedTo(coin, sum(exact)) - sum(floors);
  const byRemainder = amounts
    .map(({ paid }, index) => ({ index, room: paid - floors[index]!, remainder: exact[index]! - floors[index]! }))
    .filter(({ room }) => room >= coin)
    .toSorted((a, b) => b.remainder - a.remainder || a.index - b.index);
  const raised = new Set(byRemainder.slice(0, Math.max(0, Math.round(short / coin))).map(({ index }) => index));
  return floors.map((each, index) => (raised.has(index) ? each + coin : each));
}

const sum = (parts: readonly number[]): number => parts.reduce((total, each) => total + each, 0);
