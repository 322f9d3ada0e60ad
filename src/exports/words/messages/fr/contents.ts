import type { Translation } from "../../message.js";
import type { contents as english } from "../en/contents.js";

export const contents: Translation<typeof english> = {
  contents: "Allergènes et régimes",
  allergenLists: "D’après : {lists}. Inconnu ne veut jamais dire « sans » : lisez chaque étiquette.",
  presence: {
    CONTAINS: "Contient",
    MAY_CONTAIN: "Peut contenir",
    UNKNOWN: "Inconnu",
    DOES_NOT_CONTAIN: "Absent d’après les données des aliments",
  },
  labelsToRead: "Lire l’étiquette de",
  labelsToReadOf: "lire l’étiquette de {foods}",
  labelsFor: "{foods} (pour {names})",
  noIngredient: "Ici, n’est pas un ingrédient",
  tracesNotKnown: "les traces ne sont pas connues : lisez les étiquettes",
  glutenFreeOnly:
    "« sans gluten » pour {foods} ne dit rien du blé, du seigle, de l’orge ou de l’avoine en tant que tels",
  alsoContains: "Contient aussi",
  noLists: "Aucune liste d’allergènes n’est connue pour cela.",
  fits: "Convient, d’après les ingrédients",
  breaks: "Ne convient pas",
  dietUnknown: "Inconnu",
};
