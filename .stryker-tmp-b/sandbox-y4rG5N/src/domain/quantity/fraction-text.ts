// @ts-nocheck
import { nearestFraction } from "./rational.js";

const glyphs: Readonly<Record<string, string>> = {
  "1/2": "½",
  "1/3": "⅓",
  "2/3": "⅔",
  "1/4": "¼",
  "3/4": "¾",
  "1/8": "⅛",
  "3/8": "⅜",
  "5/8": "⅝",
  "7/8": "⅞",
};

/** `1.5` as `1½`, `1.0625` as `1 1/16`. `value` lies on a kitchen grid; `whole` writes its integers. */
export const fractionText = (value: number, whole: (integer: number) => string): string => {
  const integer = Math.floor(value + 1e-9);
  const share = nearestFraction(Math.max(0, value - integer), 16, 1e-6);
  if (share === null || share.n === 0) return whole(integer);
  const written = `${share.n}/${share.d}`;
  const glyph = glyphs[written];
  if (integer === 0) return glyph ?? written;
  return glyph === undefined ? `${whole(integer)} ${written}` : `${whole(integer)}${glyph}`;
};
