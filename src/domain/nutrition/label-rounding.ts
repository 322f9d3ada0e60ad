/** One band of a rounding table: from `from`, to the nearest `to`. `to` 0 prints 0; `below` prints "less than" it instead. */
interface Band {
  /** The band starts here; `above` leaves the very number to the band before. */
  readonly from: number;
  readonly above?: boolean;
  readonly to: number;
  readonly below?: number;
}

/**
 * 21 CFR 101.9(c), as tabled in the Guide to Nutrition Labeling and Education Act Requirements (US FDA), Attachment 7;
 * 101.9(c)(8)(iii) for percentages of vitamins and minerals; serving sizes from Attachment 6.
 */
const kilocalories: readonly Band[] = [
  { from: 0, to: 0 },
  { from: 5, to: 5 },
  { from: 50, above: true, to: 10 },
];
const fats: readonly Band[] = [
  { from: 0, to: 0 },
  { from: 0.5, to: 0.5 },
  { from: 5, to: 1 },
];
const cholesterol: readonly Band[] = [
  { from: 0, to: 0 },
  { from: 2, to: 0, below: 5 },
  { from: 5, above: true, to: 5 },
];
const salts: readonly Band[] = [
  { from: 0, to: 0 },
  { from: 5, to: 5 },
  { from: 140, above: true, to: 10 },
];
const grams: readonly Band[] = [
  { from: 0, to: 0 },
  { from: 0.5, to: 0, below: 1 },
  { from: 1, to: 1 },
];
/** "0, or 2 if actual is 1 % or more" below 2: the lower figure is the one that promises nothing. */
const percents: readonly Band[] = [
  { from: 0, to: 0 },
  { from: 2, to: 2 },
  { from: 10, above: true, to: 5 },
  { from: 50, above: true, to: 10 },
];
const us = {
  calories: kilocalories,
  "total fat": fats,
  "saturated fat": fats,
  "trans fat": fats,
  "polyunsaturated fat": fats,
  "monounsaturated fat": fats,
  cholesterol,
  sodium: salts,
  "total carbohydrate": grams,
  "dietary fibre": grams,
  "total sugars": grams,
  "added sugars": grams,
  "sugar alcohol": grams,
  protein: grams,
  "vitamins and minerals, % DV": percents,
  "other nutrients, % DV": [{ from: 0, to: 1 }],
  "potassium (old list)": salts,
  "vitamin or mineral with RDI below 25": [{ from: 0, to: 0.1 }],
  "vitamin or mineral with RDI 25 to under 250": [{ from: 0, to: 1 }],
  "vitamin or mineral with RDI 250 or more": [{ from: 0, to: 10 }],
  "serving size, metric (g or mL)": [
    { from: 0, to: 0.1 },
    { from: 2, to: 0.5 },
    { from: 5, above: true, to: 1 },
  ],
  "servings per container": [
    { from: 2, to: 0.5 },
    { from: 5, above: true, to: 1 },
  ],
} as const satisfies Record<string, readonly Band[]>;

/** Guidance on tolerances for nutrient values on a label, European Commission, December 2012, rounding table; from memory. An amount "<0.5 g" may be printed as 0, too. */
const euGrams: readonly Band[] = [
  { from: 0, to: 0, below: 0.5 },
  { from: 0.5, above: true, to: 0.1 },
  { from: 10, to: 1 },
];
const euSaturates: readonly Band[] = [
  { from: 0, to: 0, below: 0.1 },
  { from: 0.1, above: true, to: 0.1 },
  { from: 10, to: 1 },
];
const eu = {
  energy: [{ from: 0, to: 1 }],
  fat: euGrams,
  carbohydrate: euGrams,
  sugars: euGrams,
  fibre: euGrams,
  protein: euGrams,
  saturates: euSaturates,
  salt: [
    { from: 0, to: 0, below: 0.01 },
    { from: 0.0125, above: true, to: 0.01 },
    { from: 1, to: 0.1 },
  ],
} as const satisfies Record<string, readonly Band[]>;

export type LabelScheme = "US" | "EU";
export type UsLabelNutrient = keyof typeof us;
export type EuLabelNutrient = keyof typeof eu;

/** A figure as a label may print it. */
export interface RoundedFigure {
  /** The rounded number; where `below` is set, the number that stands for "less than": 0. */
  readonly value: number;
  /** Printed as less than this. */
  readonly below: number | null;
}

export const usLabelNutrients = Object.keys(us) as readonly UsLabelNutrient[];
export const euLabelNutrients = Object.keys(eu) as readonly EuLabelNutrient[];

/** Rounded after 21 CFR 101.9(c). null where the table has no band (fewer than two servings). @throws RangeError if negative */
export const roundForUsLabel = (nutrient: UsLabelNutrient, value: number): RoundedFigure | null =>
  rounded(us[nutrient], value);

/** Rounded after the EU guidance. @throws RangeError if negative or not finite */
export const roundForEuLabel = (nutrient: EuLabelNutrient, value: number): RoundedFigure | null =>
  rounded(eu[nutrient], value);

/** Grams of salt for milligrams of sodium: Regulation (EU) No 1169/2011, Annex I, salt = sodium × 2.5. */
export const saltOfSodium = (sodiumMg: number): number => (sodiumMg * 2.5) / 1000;

/** Differences below this share of a number come from binary fractions, not from the food. */
const SAME = 1e-9;

function rounded(bands: readonly Band[], value: number): RoundedFigure | null {
  if (!(value >= 0 && Number.isFinite(value))) throw new RangeError(`a label figure cannot be ${value}`);
  const slack = Math.max(1, value) * SAME;
  const band = bands.findLast(({ from, above = false }) => (above ? value > from + slack : value >= from - slack));
  if (band === undefined) return null;
  if (band.below !== undefined) return { value: 0, below: value === 0 ? null : band.below };
  return { value: band.to === 0 ? 0 : nearest(value, band.to), below: null };
}

/** Half-way goes up: the tables leave it open for nutrients, and for serving sizes print "round up". */
function nearest(value: number, step: number): number {
  const steps = Math.floor(value / step + 0.5 + SAME);
  const perOne = Math.round(1 / step);
  return step < 1 ? steps / perOne : steps * step;
}
