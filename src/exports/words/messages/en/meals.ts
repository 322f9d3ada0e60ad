import { message } from "../../message.js";

/** Meals, what is made ahead, and their lines. */
export const meals = {
  meals: "Meals",
  mealOf: message('A meal of the plan "{plan}".', { plan: "Roots and barley" }),
  eatenAt: message("{day}, at {time}", { day: "Sunday, 1 March 2026", time: "18:00" }),
  makeAhead: "Make ahead",
  made: message("{amount} made", { amount: "2.88 kg" }),
  leftOver: message("{amount} left over", { amount: "250 g" }),
  nothingLeftOver: "nothing left over",
  onHand: message("{amount} on hand", { amount: "200 g" }),
  toTaste: "to taste",
  optional: "optional",
  plusMore: "plus more",
  /** What one of so many weighs. */
  each: message("{weight} each", { weight: "6 oz" }),
  inPlaceOf: message("in place of {food}", { food: "butter" }),
  forThe: message("for the {what}", { what: "Boiled barley" }),
  makeAheadKeyword: "make-ahead",
  fromTheWriter: "From the author",
  notes: "Notes",
  tips: "Tips",
  alsoNeeded: message("You also need: {things}.", { things: "a large baking tray; kitchen string" }),
  credits: "Sources and thanks",
  /** Before the name of a book, a page or a person. */
  adaptedFrom: "Adapted from",
  licensed: message("Licence: {licence}.", { licence: "CC BY 4.0" }),
};
