/** A pan by its inside, in any unit of length: round by its diameter, else by two sides. */
// @ts-nocheck

export type Pan =
  | { readonly kind: "ROUND"; readonly diameter: number }
  | { readonly kind: "RECTANGULAR"; readonly length: number; readonly width: number };

/** Below this share of difference nobody sees a change of pan. Common practice, no source. */
export const panTolerance = 0.05;

export const panArea = (pan: Pan): number =>
  pan.kind === "ROUND" ? Math.PI * (pan.diameter / 2) ** 2 : pan.length * pan.width;

/**
 * What a recipe is multiplied by when it moves to another pan and is to stand as deep as before: the ratio of the areas,
 * never of the sides. Oven times are not multiplied.
 */
export const panFactor = (from: Pan, to: Pan): number => panArea(to) / panArea(from);
