import type { Problem } from "../../domain/problem.js";
import type { LineReasonCode } from "../../domain/quantity/parse.js";

type OpenPoint = Extract<Problem, { readonly code: "RECIPE_OPEN" }>;

const reasonWords: Readonly<Record<LineReasonCode, string>> = {
  TOO_LONG: "it is too long for an ingredient",
  EMPTY: "it is empty",
  BAD_NUMBER: "its number cannot be read",
  AMBIGUOUS_NUMBER: "its number can mean two things",
  NEGATIVE_NUMBER: "its number is negative",
  AMBIGUOUS_UNIT: "its unit has more than one size",
  HEADING: "it looks like a heading",
  NO_FOOD: "it names no food",
  NO_AMOUNT: "it has no amount; write one, or the rule to taste",
  SEVERAL_FOODS: "it names more than one food; write a line for each",
  SEVERAL_PARTS: "it names more than one part; write a line for each",
  OUNCE_OF_LIQUID: "its ounces may be of weight or of volume",
  COUNT_ASSUMED: "its number may count pieces, or not",
  ADDITION_NOT_SUMMED: "its amounts cannot be added up",
  ALTERNATES_DISAGREE: "its two amounts do not agree",
  MARK_OF_OTHER_LOCALE: "its decimal mark is that of another language",
  SIZE_BY_LENGTH: "it gives a size by length",
  NUMBER_LEFT_OVER: "a number in it was not understood",
  SIZE_OR_GRAMS: "it means large ones, or grams",
  NOT_SOLD_SO: "no food of that name is known to be sold in that, or in that size; name the one that is meant",
  AMOUNTS_CONTRADICT: "its two amounts differ by more than twice; keep the right one",
  UNIT_NOT_OF_FOOD: "the size of one of these is unknown for this food; write a weight or a volume",
  DRY_OR_DRAINED: "it names a dry food and is drained; name the boiled or tinned one, or leave the draining out",
  DRY_OR_COOKED: "it may be weighed before or after boiling; name the dry or the boiled food",
  READY_OR_NOT: "it may be weighed before or after trimming; say which",
  IMPLAUSIBLE_AMOUNT: "its amount is implausible; check the number and the unit",
  NOTHING: "its amount is zero",
};

/** What is open about a line that was written as text, and what to write. */
export function openLineText({ written, reasons, named, amounts }: Extract<Problem, { code: "LINE_OPEN" }>): string {
  const said = [
    ...reasons.map(reasonText),
    ...(named === null ? [] : [namedText(named)]),
    ...(amounts.length === 0 ? [] : [`its amount may be any of these: ${amounts.join(", ")}`]),
  ];
  return `The line "${written}" is not clear: ${said.join("; ")}.`;
}

const namedText = (named: readonly string[]): string =>
  named.length > 0
    ? `it may mean any of these: ${named.join(", ")}`
    : "no known food or component has this name; use another name, or write a document for it";

/** One open point of a recipe in plain words: what is open, and what to write. */
export function openPointText(point: OpenPoint): string {
  switch (point.open) {
    case "LINE":
      return `The line "${point.written ?? ""}": ${[...point.reasons.map(reasonText), ...foodText(point.foods)].join("; ")}.`;
    case "SERVINGS":
      return point.written === null
        ? "How many it serves: the page does not say. Write serves."
        : `How many it serves: the page says "${point.written}". Write serves.`;
    case "TIME":
      return "How long the work takes: the page does not say. Write a time for every step.";
    case "STEPS":
      return "What is done: the page has no steps. Write them.";
  }
}

// What is not a code of ours is words already.
const reasonText = ({ code, about }: OpenPoint["reasons"][number]): string => {
  const words = isReason(code) ? reasonWords[code] : code;
  return about === "" ? words : `${words} (${about})`;
};

const isReason = (code: string): code is LineReasonCode => Object.hasOwn(reasonWords, code);

function foodText(foods: OpenPoint["foods"]): readonly string[] {
  if (foods === null) return [];
  if (foods.length > 0) return [`it may be any of these foods: ${foods.join(", ")}`];
  return ["no known food has this name; use another name, or describe the food"];
}
