import type { Translation } from "../../message.js";
import type { general as english } from "../en/general.js";

export const general: Translation<typeof english> = {
  forServings: "Na {count, plural, one {# porcję} few {# porcje} many {# porcji} other {# porcji}}",
  servings: "{count, plural, one {# porcja} few {# porcje} many {# porcji} other {# porcji}}",
  days: "{count, plural, one {# dzień} few {# dni} many {# dni} other {# dnia}}",
  hours: "{count, plural, one {# godzina} few {# godziny} many {# godzin} other {# godziny}}",
  foods: "{count, plural, one {# produkt} few {# produkty} many {# produktów} other {# produktu}}",
  roughly: "ok. {amount}",
  dayOfPlan:
    "{day, plural, =0 {Dzień gotowania} one {# dzień po dniu gotowania} few {# dni po dniu gotowania} many {# dni po dniu gotowania} other {# dnia po dniu gotowania}}",
  by: "Autor:",
  revision: "Wersja {number}, opublikowano: {date}",
  withdrawn: "Ta wersja została wycofana przez wydawcę.",
  changed: "Co się zmieniło",
  thisRevision: "Ta wersja",
  newestRevision: "Najnowsza wersja",
  calendar: "Jako kalendarz",
  listAddress: "Sama lista zakupów",
  warnings: "Warto wiedzieć",
  source: "Źródło: {titles}",
  restsOn: "Na podstawie: {titles}",
  about: "Dotyczy: {things}.",
  cautions: "Na co uważać w kuchni",
  regionUnknown:
    "Dla tego planu nie podano kraju, dlatego obowiązują najsurowsze zasady ze wszystkich regionów i uwzględniono wszystkie listy alergenów. Podaj swój kraj, aby stosować jego zasady.",
  regionNamed:
    "Obowiązują zasady i lista alergenów dla regionu {region}, {by, select, PLAN {podanego w planie} other {podanego przez wydawcę}}. Podaj swój kraj, aby stosować jego zasady.",
  regionStandsIn:
    "Dla części z tego nie znamy zasad regionu {region}; zastępują je zasady regionu {others}. Zapytaj lokalny urząd.",
};
