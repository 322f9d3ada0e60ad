import type { Translation } from "../../message.js";
import type { mistakes as english } from "../en/mistakes.js";

export const mistakes: Translation<typeof english> = {
  mistake: {
    BAD_AMOUNT: "« {written} » ne se lit pas comme une quantité. Écrivez un nombre et une unité, par exemple 500 g.",
    UNKNOWN_UNIT: "L’unité « {unit} » n’existe pas.{nearest, select, none {} other { Proche : {nearest}.}}",
    AMBIGUOUS_UNIT: "« {unit} » a ici plusieurs tailles. Écrivez l’une d’elles : {candidates}.",
    UNKNOWN_FOOD:
      "L’aliment « {food} » n’existe pas ici.{nearest, select, none { Vérifiez l’orthographe.} other { Vouliez-vous dire {nearest} ?}}",
    AMBIGUOUS_FOOD: "« {food} » peut être ici plusieurs aliments. Écrivez l’un d’eux : {candidates}.",
    UNKNOWN_CODE: "« {written} » n’est pas connu ici.{nearest, select, none {} other { Vouliez-vous dire {nearest} ?}}",
    UNKNOWN_COMPONENT: "Ce plan ne prépare pas de « {component} ».",
    UNKNOWN_ROUTE:
      "Il n’y a pas d’autre voie « {route} » pour cela.{known, select, none {} other { Il y a : {known}.}}",
    OUT_OF_RANGE: "{value} est hors limites. Donnez un nombre de {min} à {max}.",
    SERVINGS_OUT_OF_RANGE: "Impossible de calculer pour {value} portions. Demandez un nombre entier de {min} à {max}.",
    NOT_READ: "« {value} » ne peut pas être lu ici.",
    TOO_LARGE: "{size}, c’est trop. La limite est de {limit}.",
    DUPLICATE: "« {value} » figure deux fois ici. N’en gardez qu’un.",
    NOT_CONVERTIBLE:
      "La quantité de « {item} » ne peut pas être convertie : on ne connaît pas {missing}. Écrivez-la en {to}.",
    MORE_PROBLEMS:
      "{count, plural, one {# autre erreur n’est pas affichée.} many {# autres erreurs ne sont pas affichées.} other {# autres erreurs ne sont pas affichées.}}",
  },
};
