import type { Translation } from "../../message.js";
import type { nutrition as english } from "../en/nutrition.js";

export const nutrition: Translation<typeof english> = {
  nutrition: "Wartość odżywcza",
  nutrient: "Składnik",
  perPersonAll:
    "{meals, plural, one {Na osobę} few {Na osobę, wszystkie # posiłki} many {Na osobę, wszystkie # posiłków} other {Na osobę, wszystkie # posiłku}}",
  meal: "Jedna porcja",
  hundredGrams: "100 g",
  figureUnknown: "nieznane",
  knownFor:
    "Znane dla {share} produktów{others, select, none {} other { ({others})}}{missing, select, none {} other {; brakuje: {missing}}}.",
  atLeast: "co najmniej {figure}",
  aboutFigure: "ok. {figure}",
  lessThan: "mniej niż {amount}",
  missingEnergy: "Brak w danych, bo nikt nie podaje wartości energetycznej: {foods}.",
  plusWhatYouAdd: "Do tego to, co dodasz: {foods}.",
  shareOf: "{food} ({share})",
  notEaten: "Wyrzucane lub zostawiane, w części albo w całości: {foods}.",
  pouredAway:
    "Przyjęto, że odchodzi z odlaną wodą: {shares}. Sól ubywa z tą częścią wody, która jest odlewana; odparowania nie uwzględniono.",
  drainedByClass: "Żaden krok nie mówi o odcedzaniu: przyjęto tak, bo to gotowane strączki lub kasza.",
  drainedUnweighed: "Liczone w całości, choć nieznana część jest odlewana: {foods}.",
  basis: {
    RAW_FOODS_OVER_COOKED_WEIGHT:
      "Obliczono z wartości surowych produktów w stosunku do masy gotowej potrawy i jej porcji.",
    RAW_FOODS_OVER_SERVINGS: "Obliczono z wartości surowych produktów w przeliczeniu na porcje.",
  },
  roundedBy: {
    US: "Zaokrąglono według 21 CFR 101.9(c).",
    EU: "Zaokrąglono według wytycznych Komisji Europejskiej.",
  },
  unweighed: "Nie wliczono, bo nie wiadomo, ile waży: {foods}.",
  nutrients: {
    energyKcal: "Wartość energetyczna, kcal",
    proteinG: "Białko, g",
    fatG: "Tłuszcz, g",
    saturatedFatG: "Kwasy tłuszczowe nasycone, g",
    carbohydrateG: "Węglowodany, g",
    sugarsG: "Cukry, g",
    fibreG: "Błonnik, g",
    sodiumMg: "Sód, mg",
    calciumMg: "Wapń, mg",
    ironMg: "Żelazo, mg",
    potassiumMg: "Potas, mg",
    vitaminCMg: "Witamina C, mg",
    cholesterolMg: "Cholesterol, mg",
    waterG: "Woda, g",
  },
  saltG: "Sól, g",
  nutrientNames: {
    energyKcal: "wartość energetyczna",
    proteinG: "białko",
    fatG: "tłuszcz",
    saturatedFatG: "kwasy tłuszczowe nasycone",
    carbohydrateG: "węglowodany",
    sugarsG: "cukry",
    fibreG: "błonnik",
    sodiumMg: "sód",
    calciumMg: "wapń",
    ironMg: "żelazo",
    potassiumMg: "potas",
    vitaminCMg: "witamina C",
    cholesterolMg: "cholesterol",
    waterG: "woda",
    salt: "sól",
  },
};
