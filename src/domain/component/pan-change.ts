/** The inside of a pan or tray; any unit of length, the same for both pans. */
export type Pan =
  | { readonly shape: "ROUND"; readonly diameter: number }
  | { readonly shape: "RECTANGLE"; readonly length: number; readonly width: number };

export interface PanChange {
  /** What every amount is multiplied by to stand as high in the other pan: the ratio of the areas. */
  readonly factor: number;
  /** The pans are near enough alike that nobody would notice: leave the amounts as they are. */
  readonly leaveAsIs: boolean;
}

/** Areas that differ by less than this share hold the same recipe. Common practice, no source. */
export const sameArea = 0.05;

const areaOf = (pan: Pan): number =>
  pan.shape === "ROUND" ? (Math.PI * pan.diameter ** 2) / 4 : pan.length * pan.width;

/**
 * From one pan to another at the same depth. Times are not multiplied: at the same depth they hardly change, and for another
 * depth nobody publishes a rule.
 *
 * @returns null where an area is not a positive finite number
 */
export function panChange(from: Pan, to: Pan): PanChange | null {
  const factor = areaOf(to) / areaOf(from);
  if (!(factor > 0) || !Number.isFinite(factor)) return null;
  return { factor, leaveAsIs: Math.abs(factor - 1) < sameArea };
}
