import type { Translation } from "../../message.js";
import type { mistakes as english } from "../en/mistakes.js";

export const mistakes: Translation<typeof english> = {
  mistake: {
    BAD_AMOUNT:
      "„{written}“ ist nicht als Menge zu lesen. Schreiben Sie eine Zahl und eine Einheit, zum Beispiel 500 g.",
    UNKNOWN_UNIT: "Die Einheit „{unit}“ gibt es nicht.{nearest, select, none {} other { Ähnlich: {nearest}.}}",
    AMBIGUOUS_UNIT: "„{unit}“ hat hier mehr als eine Größe. Schreiben Sie eine davon: {candidates}.",
    UNKNOWN_FOOD:
      "Ein Lebensmittel „{food}“ gibt es hier nicht.{nearest, select, none { Prüfen Sie die Schreibweise.} other { Meinten Sie {nearest}?}}",
    AMBIGUOUS_FOOD: "„{food}“ kann hier mehr als ein Lebensmittel sein. Schreiben Sie eines davon: {candidates}.",
    UNKNOWN_CODE: "„{written}“ ist hier nicht bekannt.{nearest, select, none {} other { Meinten Sie {nearest}?}}",
    UNKNOWN_COMPONENT: "In diesem Plan wird „{component}“ nicht zubereitet.",
    UNKNOWN_ROUTE:
      "Einen anderen Weg „{route}“ gibt es dafür nicht.{known, select, none {} other { Es gibt: {known}.}}",
    OUT_OF_RANGE: "{value} ist außerhalb des Bereichs. Geben Sie eine Zahl von {min} bis {max} an.",
    SERVINGS_OUT_OF_RANGE:
      "Für {value} Portionen lässt sich nichts berechnen. Geben Sie eine ganze Zahl von {min} bis {max} an.",
    NOT_READ: "„{value}“ ist hier nicht zu lesen.",
    TOO_LARGE: "{size} sind zu viele. Die Grenze ist {limit}.",
    DUPLICATE: "„{value}“ steht hier zweimal. Lassen Sie eines stehen.",
    NOT_CONVERTIBLE:
      "Die Menge von „{item}“ lässt sich nicht umrechnen: {missing} ist nicht bekannt. Schreiben Sie sie in {to}.",
    MORE_PROBLEMS:
      "{count, plural, one {# weiterer Fehler ist nicht aufgeführt.} other {# weitere Fehler sind nicht aufgeführt.}}",
  },
};
