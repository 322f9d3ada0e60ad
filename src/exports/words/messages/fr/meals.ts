import type { Translation } from "../../message.js";
import type { meals as english } from "../en/meals.js";

export const meals: Translation<typeof english> = {
  meals: "Repas",
  mealOf: "Un repas du plan « {plan} ».",
  eatenAt: "{day}, à {time}",
  makeAhead: "À préparer à l’avance",
  made: "{amount} en tout",
  leftOver: "reste {amount}",
  nothingLeftOver: "aucun reste",
  onHand: "{amount} déjà à la maison",
  toTaste: "selon le goût",
  optional: "facultatif",
  plusMore: "et un peu plus",
  each: "{weight} chacun",
  inPlaceOf: "à la place de {food}",
  forThe: "pour : {what}",
  makeAheadKeyword: "préparation à l’avance",
  fromTheWriter: "Le mot de l’auteur",
  notes: "Remarques",
  tips: "Conseils",
  alsoNeeded: "Il faut aussi : {things}.",
  credits: "Sources et remerciements",
  adaptedFrom: "Adapté de",
  licensed: "Licence : {licence}.",
};
