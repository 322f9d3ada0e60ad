import type { Translation } from "../../message.js";
import type { nutrition as english } from "../en/nutrition.js";

export const nutrition: Translation<typeof english> = {
  nutrition: "Información nutricional",
  nutrient: "Nutriente",
  perPersonAll:
    "{meals, plural, one {Por persona} many {Por persona, las # comidas} other {Por persona, las # comidas}}",
  meal: "Una ración de",
  hundredGrams: "100 g",
  figureUnknown: "no se sabe",
  knownFor:
    "Se conoce para el {share} de los alimentos{others, select, none {} other { ({others})}}{missing, select, none {} other {; faltan: {missing}}}.",
  atLeast: "al menos {figure}",
  aboutFigure: "aprox. {figure}",
  lessThan: "menos de {amount}",
  missingEnergy: "No está en las cifras, porque nadie indica su energía: {foods}.",
  plusWhatYouAdd: "Más lo que usted añada: {foods}.",
  shareOf: "{food} ({share})",
  notEaten: "Se tira o se deja, en parte o del todo: {foods}.",
  pouredAway:
    "Se considera que se va con el agua escurrida: {shares}. La sal se va con la parte del agua que se tira; no se tiene en cuenta lo que se evapora.",
  drainedByClass: "Ningún paso dice que se escurra: se deduce de que son legumbres o cereales cocidos.",
  drainedUnweighed: "Contado entero, aunque se tira una parte que nadie puede precisar: {foods}.",
  basis: {
    RAW_FOODS_OVER_COOKED_WEIGHT:
      "Calculado a partir de los valores de los alimentos crudos, sobre el peso del plato terminado y sus raciones.",
    RAW_FOODS_OVER_SERVINGS: "Calculado a partir de los valores de los alimentos crudos, sobre las raciones.",
  },
  roundedBy: {
    US: "Redondeado según 21 CFR 101.9(c).",
    EU: "Redondeado según la guía de la Comisión Europea.",
  },
  unweighed: "No contado, porque no se sabe cuánto pesa: {foods}.",
  nutrients: {
    energyKcal: "Valor energético, kcal",
    proteinG: "Proteínas, g",
    fatG: "Grasas, g",
    saturatedFatG: "Ácidos grasos saturados, g",
    carbohydrateG: "Hidratos de carbono, g",
    sugarsG: "Azúcares, g",
    fibreG: "Fibra alimentaria, g",
    sodiumMg: "Sodio, mg",
    calciumMg: "Calcio, mg",
    ironMg: "Hierro, mg",
    potassiumMg: "Potasio, mg",
    vitaminCMg: "Vitamina C, mg",
    cholesterolMg: "Colesterol, mg",
    waterG: "Agua, g",
  },
  saltG: "Sal, g",
  nutrientNames: {
    energyKcal: "valor energético",
    proteinG: "proteínas",
    fatG: "grasas",
    saturatedFatG: "ácidos grasos saturados",
    carbohydrateG: "hidratos de carbono",
    sugarsG: "azúcares",
    fibreG: "fibra alimentaria",
    sodiumMg: "sodio",
    calciumMg: "calcio",
    ironMg: "hierro",
    potassiumMg: "potasio",
    vitaminCMg: "vitamina C",
    cholesterolMg: "colesterol",
    waterG: "agua",
    salt: "sal",
  },
};
