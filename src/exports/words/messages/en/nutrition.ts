import { message } from "../../message.js";

/** Nutrition and what its figures rest on. */
export const nutrition = {
  nutrition: "Nutrition",
  nutrient: "Nutrient",
  /** One person's share of so many meals. */
  perPersonAll: message("{meals, plural, one {Per person} other {Per person, all # meals}}", { meals: 4 }),
  meal: "One serving of",
  hundredGrams: "100 g",
  /** Of a figure nothing of which is known. */
  figureUnknown: "not known",
  /** `others` "none": all figures rest on the same share; `missing` "none": nothing is. */
  knownFor: message(
    "Known for {share} of the food{others, select, none {} other { ({others})}}{missing, select, none {} other {: {missing} missing}}.",
    { share: "97 %", others: "fibre 80 %", missing: "cider vinegar" },
  ),
  atLeast: message("at least {figure}", { figure: "3.4" }),
  aboutFigure: message("about {figure}", { figure: "3.4" }),
  /** On a label, of an amount that is hardly any. */
  lessThan: message("less than {amount}", { amount: "5 mg" }),
  missingEnergy: message("Missing from the figures, because nobody gives its energy: {foods}.", {
    foods: "cider vinegar",
  }),
  plusWhatYouAdd: message("Plus what you add: {foods}.", { foods: "salt" }),
  shareOf: message("{share} of the {food}", { share: "30 %", food: "salt" }),
  notEaten: message("Thrown away or left, in part or whole: {foods}.", { foods: "orange" }),
  pouredAway: message(
    "Taken to leave with drained water: {shares}. Salt goes in the share of the water that is poured away; what boils off is not allowed for.",
    { shares: "70 % of the salt" },
  ),
  drainedByClass: "No step says that it drains: that is taken from its being a boiled pulse or grain.",
  drainedUnweighed: message("Counted whole although some is poured away, nobody can say how much: {foods}.", {
    foods: "stock cube",
  }),
  basis: {
    RAW_FOODS_OVER_COOKED_WEIGHT:
      "Computed from figures of the raw foods, over the weight of the finished dish and its servings.",
    RAW_FOODS_OVER_SERVINGS: "Computed from figures of the raw foods, over the servings.",
  },
  roundedBy: {
    US: "Rounded as 21 CFR 101.9(c) does.",
    EU: "Rounded as the European Commission's guidance does.",
  },
  unweighed: message("Not counted, because nobody knows what they weigh: {foods}.", { foods: "bay leaf" }),
  nutrients: {
    energyKcal: "Energy, kcal",
    proteinG: "Protein, g",
    fatG: "Fat, g",
    saturatedFatG: "Saturated fat, g",
    carbohydrateG: "Carbohydrate, g",
    sugarsG: "Sugars, g",
    fibreG: "Fibre, g",
    sodiumMg: "Sodium, mg",
    calciumMg: "Calcium, mg",
    ironMg: "Iron, mg",
    potassiumMg: "Potassium, mg",
    vitaminCMg: "Vitamin C, mg",
    cholesterolMg: "Cholesterol, mg",
    waterG: "Water, g",
  },
  saltG: "Salt, g",
  nutrientNames: {
    /** Inside a sentence. */
    energyKcal: "energy",
    proteinG: "protein",
    fatG: "fat",
    saturatedFatG: "saturated fat",
    carbohydrateG: "carbohydrate",
    sugarsG: "sugars",
    fibreG: "fibre",
    sodiumMg: "sodium",
    calciumMg: "calcium",
    ironMg: "iron",
    potassiumMg: "potassium",
    vitaminCMg: "vitamin C",
    cholesterolMg: "cholesterol",
    waterG: "water",
    salt: "salt",
  },
};
