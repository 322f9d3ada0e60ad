import type { Words } from "./words.js";

const why: Readonly<Record<string, string>> = {
  EMPTY: "it is empty",
  NO_NUMBER: "it does not begin with a number",
  EXPONENT_NOTATION: "write the number out, without an exponent",
  AMBIGUOUS_SEPARATOR: "its mark may divide thousands or decimals; leave it out, or name the language",
  NO_UNIT: "say of what: 500 g, 2 tins, 3 pieces",
  NOT_SOLD_SO: "it is not known how much of this food is in one that is sold so; write grams or millilitres",
  BAD_GROUPING: "its digits are not grouped in threes",
  TOO_MANY_DECIMALS: "it has more than six decimals",
  TOO_LARGE: "it is too large",
  DIVISION_BY_ZERO: "it divides by zero",
  DENOMINATOR_TOO_LARGE: "its fraction is too fine",
  BATCH_OF_A_FOOD: "only a component has batches",
  RANGE_REVERSED: "its range runs from high to low",
  RANGE_UPSIDE_DOWN: "its range runs from high to low",
  NOT_A_NUMBER: "it is not a whole number or a fraction of whole numbers",
  NOT_OF_ONE:
    "each is what one weighs, in a unit of mass, of a whole food that the amount counts: 4 pieces, each 170 g",
  NOT_WEIGHABLE:
    "what is loose is weighed or poured: one amount of a unit of mass or volume, and a step of the same kind from 0.1 g or ml up to what the price is for",
  NOT_A_PRICE: "a price is a plain decimal number with at most four places",
  RATIO_TOO_FINE: "its ratio is too fine to be kept exactly",
};

const what: Readonly<Record<string, string>> = {
  EATERS_ARE_NOT_THE_SERVINGS: "the number of servings asked for; the counts of the eaters must add up to it",
  NOT_WHOLE_PEOPLE: "a whole number of people",
  NOT_WHOLE: "a whole number",
  NOT_AN_INSTANT: "an instant with its offset, such as 2026-03-01T09:00:00Z",
  NOT_A_TIME_ZONE: "the name of a time zone, such as Europe/Lisbon",
  NOT_A_DATE: "a date, such as 2026-03-01",
};

/** Words for what a part of a household should have been. What is not a code of ours is words already. */
export const whatWords = (code: string): string => what[code] ?? code;

/** Words for why an amount could not be read. What is not a code of ours is words already. */
export const whyWords = (code: string): string => why[code] ?? code;

/** `"DENSITY:chopped"` to "the weight of a millilitre (chopped)". What is not a code of ours is words already. */
export function missingWords(code: string, { missing }: Pick<Words, "missing">): string {
  const colon = code.indexOf(":");
  const [head, detail] = colon < 0 ? [code, null] : [code.slice(0, colon), code.slice(colon + 1)];
  const words = Object.hasOwn(missing, head) ? missing[head as keyof typeof missing] : undefined;
  if (words === undefined) return code;
  return detail === null ? words : `${words} (${detail})`;
}
