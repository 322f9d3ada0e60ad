import type { Translation } from "../../message.js";
import type { contents as english } from "../en/contents.js";

export const contents: Translation<typeof english> = {
  contents: "Alérgenos y dietas",
  allergenLists: "Según: {lists}. Desconocido nunca significa «sin»: lea todas las etiquetas.",
  presence: {
    CONTAINS: "Contiene",
    MAY_CONTAIN: "Puede contener",
    UNKNOWN: "No se sabe",
    DOES_NOT_CONTAIN: "No contiene, según los datos de los alimentos",
  },
  labelsToRead: "Lea la etiqueta de",
  labelsToReadOf: "lea la etiqueta de {foods}",
  labelsFor: "{foods} (por {names})",
  noIngredient: "Aquí no es un ingrediente",
  tracesNotKnown: "no se sabe si hay trazas: lea las etiquetas",
  glutenFreeOnly: "«sin gluten» en {foods} no dice nada del trigo, el centeno, la cebada o la avena como tales",
  alsoContains: "Contiene además",
  noLists: "No se conoce ninguna lista de alérgenos para esto.",
  fits: "Apto, según los ingredientes",
  breaks: "No apto",
  dietUnknown: "No se sabe",
};
