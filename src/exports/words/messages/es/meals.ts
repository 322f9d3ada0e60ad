import type { Translation } from "../../message.js";
import type { meals as english } from "../en/meals.js";

export const meals: Translation<typeof english> = {
  meals: "Comidas",
  mealOf: "Una comida del plan «{plan}».",
  eatenAt: "{day}, a las {time}",
  makeAhead: "Preparar con antelación",
  made: "se preparan {amount}",
  leftOver: "sobran {amount}",
  nothingLeftOver: "no sobra nada",
  onHand: "{amount} ya en casa",
  toTaste: "al gusto",
  optional: "opcional",
  plusMore: "y un poco más",
  each: "{weight} cada uno",
  inPlaceOf: "en lugar de {food}",
  forThe: "para: {what}",
  makeAheadKeyword: "cocina por adelantado",
  fromTheWriter: "De quien lo escribe",
  notes: "Notas",
  tips: "Consejos",
  alsoNeeded: "También hace falta: {things}.",
  credits: "Fuentes y agradecimientos",
  adaptedFrom: "Adaptado de",
  licensed: "Licencia: {licence}.",
};
