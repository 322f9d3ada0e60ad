import type { Translation } from "../../message.js";
import type { contents as english } from "../en/contents.js";

export const contents: Translation<typeof english> = {
  contents: "Alergeny i diety",
  allergenLists: "Według: {lists}. „Nie wiadomo” nigdy nie znaczy „nie zawiera”: czytaj każdą etykietę.",
  presence: {
    CONTAINS: "Zawiera",
    MAY_CONTAIN: "Może zawierać",
    UNKNOWN: "Nie wiadomo",
    DOES_NOT_CONTAIN: "Nie zawiera według danych o produktach",
  },
  labelsToRead: "Sprawdź etykietę",
  labelsToReadOf: "sprawdź etykietę: {foods}",
  labelsFor: "{foods} (ze względu na: {names})",
  noIngredient: "Tu nie jest składnikiem",
  tracesNotKnown: "o śladowych ilościach nic nie wiadomo, dlatego czytaj etykiety",
  glutenFreeOnly: "„bezglutenowe” przy: {foods} nie mówi nic o samej pszenicy, życie, jęczmieniu ani owsie",
  alsoContains: "Zawiera też",
  noLists: "Nie ma do tego znanej listy alergenów.",
  fits: "Pasuje według składników",
  breaks: "Nie pasuje",
  dietUnknown: "Nie wiadomo",
};
