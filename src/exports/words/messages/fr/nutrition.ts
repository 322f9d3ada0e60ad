import type { Translation } from "../../message.js";
import type { nutrition as english } from "../en/nutrition.js";

export const nutrition: Translation<typeof english> = {
  nutrition: "Valeurs nutritionnelles",
  nutrient: "Nutriment",
  perPersonAll:
    "{meals, plural, one {Par personne} many {Par personne, les # repas} other {Par personne, les # repas}}",
  meal: "Une portion de",
  hundredGrams: "100 g",
  figureUnknown: "inconnu",
  knownFor:
    "Connu pour {share} des aliments{others, select, none {} other { ({others})}}{missing, select, none {} other { ; il manque : {missing}}}.",
  atLeast: "au moins {figure}",
  aboutFigure: "environ {figure}",
  lessThan: "moins de {amount}",
  missingEnergy: "Absent des valeurs, faute d’indication de l’énergie : {foods}.",
  plusWhatYouAdd: "Plus ce que vous ajoutez : {foods}.",
  shareOf: "{food} ({share})",
  notEaten: "Jeté ou laissé, en partie ou en totalité : {foods}.",
  pouredAway:
    "Compté comme parti avec l’eau égouttée : {shares}. Le sel part avec la part d’eau jetée ; l’évaporation n’est pas prise en compte.",
  drainedByClass:
    "Aucune étape ne parle d’égoutter : on l’a déduit du fait qu’il s’agit de légumes secs ou de céréales cuits à l’eau.",
  drainedUnweighed: "Compté en entier bien qu’une part inconnue soit jetée avec l’eau : {foods}.",
  basis: {
    RAW_FOODS_OVER_COOKED_WEIGHT:
      "Calculé à partir des valeurs des aliments crus, rapportées au poids du plat fini et à ses portions.",
    RAW_FOODS_OVER_SERVINGS: "Calculé à partir des valeurs des aliments crus, rapportées aux portions.",
  },
  roundedBy: {
    US: "Arrondi selon 21 CFR 101.9(c).",
    EU: "Arrondi selon les orientations de la Commission européenne.",
  },
  unweighed: "Non compté, faute d’en connaître le poids : {foods}.",
  nutrients: {
    energyKcal: "Énergie, kcal",
    proteinG: "Protéines, g",
    fatG: "Matières grasses, g",
    saturatedFatG: "Acides gras saturés, g",
    carbohydrateG: "Glucides, g",
    sugarsG: "Sucres, g",
    fibreG: "Fibres alimentaires, g",
    sodiumMg: "Sodium, mg",
    calciumMg: "Calcium, mg",
    ironMg: "Fer, mg",
    potassiumMg: "Potassium, mg",
    vitaminCMg: "Vitamine C, mg",
    cholesterolMg: "Cholestérol, mg",
    waterG: "Eau, g",
  },
  saltG: "Sel, g",
  nutrientNames: {
    energyKcal: "énergie",
    proteinG: "protéines",
    fatG: "matières grasses",
    saturatedFatG: "acides gras saturés",
    carbohydrateG: "glucides",
    sugarsG: "sucres",
    fibreG: "fibres alimentaires",
    sodiumMg: "sodium",
    calciumMg: "calcium",
    ironMg: "fer",
    potassiumMg: "potassium",
    vitaminCMg: "vitamine C",
    cholesterolMg: "cholestérol",
    waterG: "eau",
    salt: "sel",
  },
};
