import type { Translation } from "../../message.js";
import type { meals as english } from "../en/meals.js";

export const meals: Translation<typeof english> = {
  meals: "Posiłki",
  mealOf: "Posiłek z planu „{plan}”.",
  eatenAt: "{day}, o {time}",
  makeAhead: "Przygotuj wcześniej",
  made: "wychodzi {amount}",
  leftOver: "zostaje {amount}",
  nothingLeftOver: "nic nie zostaje",
  onHand: "{amount} już w domu",
  toTaste: "do smaku",
  optional: "opcjonalnie",
  plusMore: "i jeszcze trochę",
  each: "po {weight}",
  inPlaceOf: "zamiast: {food}",
  forThe: "na: {what}",
  makeAheadKeyword: "gotowanie na zapas",
  fromTheWriter: "Od autora",
  notes: "Uwagi",
  tips: "Wskazówki",
  alsoNeeded: "Potrzebne też: {things}.",
  credits: "Źródła i podziękowania",
  adaptedFrom: "Na podstawie",
  licensed: "Licencja: {licence}.",
};
