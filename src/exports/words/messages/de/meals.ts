import type { Translation } from "../../message.js";
import type { meals as english } from "../en/meals.js";

export const meals: Translation<typeof english> = {
  meals: "Mahlzeiten",
  mealOf: "Eine Mahlzeit aus dem Plan „{plan}“.",
  eatenAt: "{day}, um {time}",
  makeAhead: "Vorkochen",
  made: "ergibt {amount}",
  leftOver: "{amount} übrig",
  nothingLeftOver: "nichts übrig",
  onHand: "{amount} vorrätig",
  toTaste: "nach Geschmack",
  optional: "nach Belieben",
  plusMore: "und etwas mehr",
  each: "je {weight}",
  inPlaceOf: "statt {food}",
  forThe: "für: {what}",
  makeAheadKeyword: "Vorkochen",
  fromTheWriter: "Von der Autorin oder dem Autor",
  notes: "Anmerkungen",
  tips: "Tipps",
  alsoNeeded: "Außerdem nötig: {things}.",
  credits: "Quellen und Dank",
  adaptedFrom: "Bearbeitet nach",
  licensed: "Lizenz: {licence}.",
};
