import type { Translation } from "../../message.js";
import type { mistakes as english } from "../en/mistakes.js";

export const mistakes: Translation<typeof english> = {
  mistake: {
    BAD_AMOUNT: "Nie da się odczytać „{written}” jako ilości. Wpisz liczbę i jednostkę, na przykład 500 g.",
    UNKNOWN_UNIT: "Nie ma jednostki „{unit}”.{nearest, select, none {} other { Podobne: {nearest}.}}",
    AMBIGUOUS_UNIT: "„{unit}” ma tu więcej niż jedną wielkość. Wpisz jedną z nich: {candidates}.",
    UNKNOWN_FOOD:
      "Nie ma tu produktu „{food}”.{nearest, select, none { Sprawdź pisownię.} other { Czy chodziło o: {nearest}?}}",
    AMBIGUOUS_FOOD: "„{food}” może tu oznaczać więcej niż jeden produkt. Wpisz jeden z nich: {candidates}.",
    UNKNOWN_CODE: "„{written}” nie jest tu znane.{nearest, select, none {} other { Czy chodziło o: {nearest}?}}",
    UNKNOWN_COMPONENT: "Ten plan nie przygotowuje „{component}”.",
    UNKNOWN_ROUTE: "Nie ma na to innego sposobu „{route}”.{known, select, none {} other { Jest: {known}.}}",
    OUT_OF_RANGE: "{value} jest poza zakresem. Podaj liczbę od {min} do {max}.",
    SERVINGS_OUT_OF_RANGE: "Nie da się obliczyć dla liczby porcji {value}. Podaj liczbę całkowitą od {min} do {max}.",
    NOT_READ: "Nie da się tu odczytać „{value}”.",
    TOO_LARGE: "{size} to za dużo. Granica wynosi {limit}.",
    DUPLICATE: "„{value}” jest tu dwa razy. Zostaw jedno.",
    NOT_CONVERTIBLE: "Ilości „{item}” nie da się przeliczyć: brakuje danych ({missing}). Podaj ją w {to}.",
    MORE_PROBLEMS:
      "{count, plural, one {# kolejny błąd nie jest wymieniony.} few {# kolejne błędy nie są wymienione.} many {# kolejnych błędów nie jest wymienionych.} other {# kolejnego błędu nie wymieniono.}}",
  },
};
