import { message } from "../../message.js";

/** Allergens and diets. */
export const contents = {
  contents: "Allergens and diets",
  allergenLists: message('After: {lists}. Unknown is never "free from": read every label.', {
    lists: "Food Information Regulations 2014 (GB)",
  }),
  presence: {
    CONTAINS: "Contains",
    MAY_CONTAIN: "May contain",
    UNKNOWN: "Not known",
    DOES_NOT_CONTAIN: "Not contained, by the foods' own data",
  },
  /** Before foods whose data leave an allergen open. */
  labelsToRead: "Look at the label of",
  labelsToReadOf: message("look at the label of {foods}", { foods: "butter, yoghurt" }),
  labelsFor: message("{foods} (for {names})", { foods: "butter", names: "celery, mustard" }),
  /** Before allergens that no food is made with. */
  noIngredient: "Not an ingredient of anything here",
  tracesNotKnown: "traces are not known, so read the labels",
  glutenFreeOnly: message("gluten-free, as {foods} is called, says nothing of wheat, rye, barley or oats as such", {
    foods: "rolled oats, gluten-free",
  }),
  alsoContains: "Also contains",
  noLists: "No list of allergens is known for this.",
  fits: "Fits, by its ingredients",
  breaks: "Does not fit",
  dietUnknown: "Not known",
};
