import type { Translation } from "../../message.js";
import type { warnings as english } from "../en/warnings.js";

export const warnings: Translation<typeof english> = {
  missing: {
    DENSITY: "das Gewicht eines Milliliters",
    GRAMS_OF_ONE_PIECE: "das Gewicht eines Stücks",
    MILLILITRES_OF_ONE_PIECE: "das Volumen eines Stücks",
    YIELD_OF_ONE_BATCH: "der Ertrag eines Ansatzes",
    OWN_MEASURE: "die Größe eines Stücks",
    UNIT: "die Einheit",
  },
  warning: {
    NOT_COMBINED: "Mengen von „{food}“ stehen in eigenen Zeilen, weil {missing} nicht bekannt ist.",
    PART_NOT_COUNTED:
      "Wie viel von „{food}“ für „{part}“ nötig ist, lässt sich nicht berechnen, weil {missing} nicht bekannt ist. Genug davon kaufen.",
    EDIBLE_PORTION_UNKNOWN:
      "Wie viel von „{food}“{form, select, none {} other { ({form})}} beim Putzen wegfällt, ist nicht bekannt. Die Liste nennt die geputzte Menge; etwas mehr kaufen.",
    PRICE_UNKNOWN: "Für „{food}“ ist kein Preis bekannt, deshalb fehlt es in jeder Summe.",
    PACK_NOT_COMPARABLE:
      "Die Packung „{pack}“ von „{food}“ wurde nicht berücksichtigt, weil {missing} nicht bekannt ist.",
    ON_HAND_NOT_COMPARABLE: "Ihr Vorrat an „{item}“ wurde nicht abgezogen, weil {missing} nicht bekannt ist.",
    ON_HAND_IN_OTHER_FORM:
      "Aus Ihrem Vorrat an „{from}“ ließen sich etwa {gives} „{item}“ machen; für den ganzen Bedarf wären etwa {wouldTake} nötig. Er wurde nicht gezählt; geben Sie es an, wenn er zählen soll.",
    ON_HAND_NOT_NEEDED: "Ihr Vorrat an „{item}“ wird hier nicht gebraucht.",
    ON_HAND_TOO_OLD: "Ihr Vorrat an „{item}“ ist über sein Datum hinaus ({date}), deshalb wurde nichts davon gezählt.",
    ON_HAND_NOT_IN_TIME:
      "Ihr Vorrat an „{item}“ ist über sein Datum hinaus ({date}), wenn {meals} gegessen {count, plural, one {wird} other {werden}}, und wurde dafür nicht gezählt.",
    DIET_NOT_MET:
      "{how, select, unknown {Ob „{item}“ zur Ernährungsweise „{diet}“ passt, ist nicht bekannt. Etikett prüfen.} none {„{item}“ passt nicht zur Ernährungsweise „{diet}“, und es ist kein Ersatz angegeben.} other {„{item}“ passt nicht zur Ernährungsweise „{diet}“, und von den möglichen Ersatzzutaten ({offered}) wurde keine genommen.}}",
    ALLERGEN_NOT_AVOIDED:
      "{how, select, unknown {Ob „{item}“ das enthält, ist nicht bekannt: {allergen}. Etikett prüfen.} may {„{item}“ kann Spuren enthalten: {allergen}.} none {„{item}“ enthält: {allergen}. Es ist kein Ersatz angegeben.} other {„{item}“ enthält: {allergen}. Von den möglichen Ersatzzutaten ({offered}) wurde keine genommen.}}",
    DISLIKE_NOT_AVOIDED: "„{item}“ bleibt in {meals}: Es ist kein Ersatz angegeben, der für Sie passt.",
    DISLIKE_LEFT_OUT:
      "„{item}“ muss in {meals} nicht sein und wurde weggelassen. Die Schritte nennen es vielleicht noch.",
    SWAP_NOT_OFFERED: "Keine Zeile sieht „{to}“ statt „{from}“ vor, deshalb wurde nichts getauscht.",
    SWAP_NOT_CONVERTIBLE:
      "„{to}“ konnte „{from}“ nicht ersetzen, weil {missing} nicht bekannt ist. Die Zeile bleibt, wie sie ist.",
    MADE_IN_TWO_PLANS: "„{component}“ wird in mehr als einem Plan zubereitet ({plans}), jeweils getrennt.",
    LEFT_OVER: "Von „{component}“ bleibt etwas übrig.",
    LEFT_OVER_FOR:
      "Von „{component}“ bleibt etwas übrig: genug für {count, plural, one {eine weitere Portion} other {# weitere Portionen}}.",
    PART_TOO_OLD:
      "„{part}“ von „{food}“ ist nach dem Anschneiden {keeps} haltbar. „{meal}“ an Tag {day} kann es daher nicht von einem Stück nehmen, das an Tag {cutOn} angeschnitten wird. Dafür ein frisches anschneiden; die Liste zählt es mit.",
    BUY_LATER: "„{food}“ ist {keeps} haltbar: den Anteil für {meals} später kaufen, frühestens an Tag {day}.",
    MEAL_BEFORE_SESSION:
      "„{meal}“ wird am Kochtag um {at} gegessen, gekocht wird erst ab {start}. Früher beginnen, später essen oder die Bestandteile am Tag davor zubereiten und auf deren Haltbarkeit achten.",
    KEEPING_UNKNOWN:
      "Für „{item}“ gibt es keine Angabe zur Haltbarkeit. Beachten Sie die örtlichen Empfehlungen zur Lebensmittelsicherheit.",
    KEEPING_CLASS_UNKNOWN:
      "„{item}“ wird als „{keepsAs}“ aufbewahrt; die veröffentlichten Regeln kennen keine solche Lebensmittelklasse. Deshalb gilt die kürzeste Dauer aller Klassen: Beachten Sie diese oder die örtlichen Empfehlungen zur Lebensmittelsicherheit.",
    REGION_NOT_GIVEN: "Es wurde keine Region angegeben, deshalb gilt die strengste Regel: die für {used}.",
  },
  gathered: {
    NOT_COMBINED: "In eigenen Zeilen, weil {missing} nicht bekannt ist: {things}.",
    EDIBLE_PORTION_UNKNOWN:
      "Wie viel beim Putzen wegfällt, ist nicht bekannt: {things}. Die Liste nennt die geputzte Menge; etwas mehr kaufen.",
    PACK_NOT_COMPARABLE: "Nicht berücksichtigte Packungen, weil {missing} nicht bekannt ist: {things}.",
    ON_HAND_NOT_COMPARABLE: "Vorrätig, aber nicht abgezogen, weil {missing} nicht bekannt ist: {things}.",
    ON_HAND_TOO_OLD: "Vorrätig, aber über das Datum hinaus und nicht gezählt: {things}.",
    ON_HAND_NOT_NEEDED: "Vorrätig, aber hier nicht nötig: {things}.",
    DIET_NOT_MET:
      "{how, select, unknown {Ob „{diet}“ zutrifft, ist nicht bekannt: {things}. Etiketten prüfen.} none {Nicht „{diet}“, und kein Ersatz ist angegeben: {things}.} other {Nicht „{diet}“, und keine der möglichen Ersatzzutaten wurde genommen: {things}.}}",
    ALLERGEN_NOT_AVOIDED:
      "{how, select, unknown {Ob das enthalten ist, ist nicht bekannt ({allergen}): {things}. Etiketten prüfen.} may {Kann Spuren enthalten ({allergen}): {things}.} none {Enthält {allergen}, und kein Ersatz ist angegeben: {things}.} other {Enthält {allergen}, und keine der möglichen Ersatzzutaten wurde genommen: {things}.}}",
    SWAP_NOT_OFFERED: "Nicht getauscht, weil keine Zeile es vorsieht: {things}.",
    MADE_IN_TWO_PLANS: "In mehr als einem Plan zubereitet, jeweils getrennt: {things}.",
    LEFT_OVER: "Übrig: {things}.",
    enoughFor: "{component} (genug für {count, plural, one {eine weitere Portion} other {# weitere Portionen}})",
    BUY_LATER: "Später kaufen, frühestens an Tag {day}: {things}.",
    shareToBuy: "{food} für {meals} (haltbar: {keeps})",
    KEEPING_UNKNOWN:
      "Ohne Angabe zur Haltbarkeit: {things}. Beachten Sie die örtlichen Empfehlungen zur Lebensmittelsicherheit.",
  },
};
