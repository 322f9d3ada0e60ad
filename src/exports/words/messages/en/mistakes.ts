import { message } from "../../message.js";

/** What is wrong with what a reader typed, and what to do. */
export const mistakes = {
  mistake: {
    BAD_AMOUNT: message('"{written}" cannot be read as an amount. Write a number and a unit, such as 500 g.', {
      written: "half a lot",
    }),
    UNKNOWN_UNIT: message('There is no unit "{unit}".{nearest, select, none {} other { Near it: {nearest}.}}', {
      unit: "kgs",
      nearest: "kg",
    }),
    AMBIGUOUS_UNIT: message('"{unit}" has more than one size here. Write one of: {candidates}.', {
      unit: "cup",
      candidates: "us-cup, metric-cup",
    }),
    UNKNOWN_FOOD: message(
      'There is no food "{food}" here.{nearest, select, none { Check how it is spelt.} other { Did you mean {nearest}?}}',
      { food: "carot", nearest: "carrot" },
    ),
    AMBIGUOUS_FOOD: message('"{food}" may be more than one food here. Write one of: {candidates}.', {
      food: "chickpeas",
      candidates: "dried chickpeas, tinned chickpeas",
    }),
    UNKNOWN_CODE: message('"{written}" is not known here.{nearest, select, none {} other { Did you mean {nearest}?}}', {
      written: "vegn",
      nearest: "vegan",
    }),
    UNKNOWN_COMPONENT: message('This plan makes no "{component}".', { component: "dal" }),
    UNKNOWN_ROUTE: message(
      'There is no other way "{route}" for it.{known, select, none {} other { There is: {known}.}}',
      { route: "tinned", known: "dried" },
    ),
    OUT_OF_RANGE: message("{value} is out of range. Give a number from {min} to {max}.", {
      value: "0",
      min: "1",
      max: "1000000",
    }),
    SERVINGS_OUT_OF_RANGE: message("{value} servings cannot be computed. Ask for a whole number from {min} to {max}.", {
      value: "0",
      min: "1",
      max: "1000000",
    }),
    NOT_READ: message('"{value}" cannot be read here.', { value: "noon" }),
    TOO_LARGE: message("{size} are too many. The limit is {limit}.", { size: "2000", limit: "100" }),
    DUPLICATE: message('"{value}" is listed twice here. Keep one.', { value: "carrot" }),
    NOT_CONVERTIBLE: message('The amount of "{item}" cannot be converted: {missing} is not known. Write it in {to}.', {
      item: "parsley",
      missing: "the weight of one piece",
      to: "g",
    }),
    MORE_PROBLEMS: message(
      "{count, plural, one {# more problem is not listed.} other {# more problems are not listed.}}",
      { count: 3 },
    ),
  },
};
