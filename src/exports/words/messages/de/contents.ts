import type { Translation } from "../../message.js";
import type { contents as english } from "../en/contents.js";

export const contents: Translation<typeof english> = {
  contents: "Allergene und Ernährungsweisen",
  allergenLists: "Nach: {lists}. Unbekannt heißt nie „frei von“: Lesen Sie jedes Etikett.",
  presence: {
    CONTAINS: "Enthält",
    MAY_CONTAIN: "Kann enthalten",
    UNKNOWN: "Nicht bekannt",
    DOES_NOT_CONTAIN: "Nicht enthalten nach den Angaben zu den Lebensmitteln",
  },
  labelsToRead: "Etikett prüfen bei",
  labelsToReadOf: "Etikett prüfen bei {foods}",
  labelsFor: "{foods} (wegen {names})",
  noIngredient: "Hier keine Zutat",
  tracesNotKnown: "über Spuren ist nichts bekannt, lesen Sie deshalb die Etiketten",
  glutenFreeOnly: "„glutenfrei“ bei {foods} sagt nichts über Weizen, Roggen, Gerste oder Hafer als solche",
  alsoContains: "Enthält außerdem",
  noLists: "Dafür ist keine Allergenliste bekannt.",
  fits: "Passt nach den Zutaten",
  breaks: "Passt nicht",
  dietUnknown: "Nicht bekannt",
};
