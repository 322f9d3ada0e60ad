import type { Translation } from "../../message.js";
import type { nutrition as english } from "../en/nutrition.js";

export const nutrition: Translation<typeof english> = {
  nutrition: "Nährwerte",
  nutrient: "Nährstoff",
  perPersonAll: "{meals, plural, one {Pro Person} other {Pro Person, alle # Mahlzeiten}}",
  meal: "Eine Portion",
  hundredGrams: "100 g",
  figureUnknown: "nicht bekannt",
  knownFor:
    "Bekannt für {share} der Lebensmittel{others, select, none {} other { ({others})}}{missing, select, none {} other {; es fehlen: {missing}}}.",
  atLeast: "mindestens {figure}",
  aboutFigure: "etwa {figure}",
  lessThan: "weniger als {amount}",
  missingEnergy: "Fehlt in den Werten, weil keine Angabe zum Brennwert vorliegt: {foods}.",
  plusWhatYouAdd: "Dazu kommt, was Sie zugeben: {foods}.",
  shareOf: "{food} ({share})",
  notEaten: "Ganz oder teilweise weggeworfen oder übrig gelassen: {foods}.",
  pouredAway:
    "Geht rechnerisch mit dem abgegossenen Wasser verloren: {shares}. Salz geht mit dem Anteil des Wassers verloren, der abgegossen wird; was verdampft, ist nicht berücksichtigt.",
  drainedByClass:
    "In keinem Schritt steht, dass abgegossen wird; das ist daraus geschlossen, dass es gekochte Hülsenfrüchte oder Getreide sind.",
  drainedUnweighed: "Ganz gezählt, obwohl ein unbekannter Teil abgegossen wird: {foods}.",
  basis: {
    RAW_FOODS_OVER_COOKED_WEIGHT:
      "Berechnet aus den Werten der rohen Lebensmittel, bezogen auf das Gewicht des fertigen Gerichts und seine Portionen.",
    RAW_FOODS_OVER_SERVINGS: "Berechnet aus den Werten der rohen Lebensmittel, bezogen auf die Portionen.",
  },
  roundedBy: {
    US: "Gerundet nach 21 CFR 101.9(c).",
    EU: "Gerundet nach dem Leitfaden der Europäischen Kommission.",
  },
  unweighed: "Nicht gezählt, weil das Gewicht nicht bekannt ist: {foods}.",
  nutrients: {
    energyKcal: "Brennwert, kcal",
    proteinG: "Eiweiß, g",
    fatG: "Fett, g",
    saturatedFatG: "Gesättigte Fettsäuren, g",
    carbohydrateG: "Kohlenhydrate, g",
    sugarsG: "Zucker, g",
    fibreG: "Ballaststoffe, g",
    sodiumMg: "Natrium, mg",
    calciumMg: "Calcium, mg",
    ironMg: "Eisen, mg",
    potassiumMg: "Kalium, mg",
    vitaminCMg: "Vitamin C, mg",
    cholesterolMg: "Cholesterin, mg",
    waterG: "Wasser, g",
  },
  saltG: "Salz, g",
  nutrientNames: {
    energyKcal: "Brennwert",
    proteinG: "Eiweiß",
    fatG: "Fett",
    saturatedFatG: "gesättigte Fettsäuren",
    carbohydrateG: "Kohlenhydrate",
    sugarsG: "Zucker",
    fibreG: "Ballaststoffe",
    sodiumMg: "Natrium",
    calciumMg: "Calcium",
    ironMg: "Eisen",
    potassiumMg: "Kalium",
    vitaminCMg: "Vitamin C",
    cholesterolMg: "Cholesterin",
    waterG: "Wasser",
    salt: "Salz",
  },
};
