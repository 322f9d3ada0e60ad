import type { Translation } from "../../message.js";
import type { session as english } from "../en/session.js";

export const session: Translation<typeof english> = {
  session: "Plan gotowania",
  sessionOf: "Gotowanie: {title}",
  eveningBefore: "poprzedniego wieczoru",
  eveningTaskOf: "Poprzedniego wieczoru: {title}",
  sessionTakes: "To zajmie {all}, z czego {hands} to aktywna praca.",
  longerThanPromised: "To dłużej niż {promised} zapowiedziane dla planu w podstawowej wersji.",
  moreThanADay:
    "To więcej pracy, niż tak niewiele osób zdoła wykonać w jeden dzień. Gotuj wspólnie z innymi (przy liczbie osób {cooks} każda ma najwyżej sześć godzin), przygotuj mniej porcji naraz albo zrób innego dnia to, co będzie jedzone później.",
  overDays:
    "Po rozłożeniu pracy na kilka dni (liczba dni: {sessions}) to, co będzie jedzone później, powstaje później. Trwałość nadal liczy się od pierwszego dnia.",
  sessionOfDay:
    "{day, plural, =0 {Pierwszy dzień} one {Dzień później} few {# dni później} many {# dni później} other {# dnia później}}",
  madeThen: "Przygotowywane wtedy: {things}.",
  buyRawThen: "To, co potrzebne na ten dzień, trzymaj w lodówce, nigdy dłużej niż do terminu podanego na opakowaniu.",
  stillMoreThanADay:
    "To nadal więcej pracy, niż tak niewiele osób zdoła wykonać w jeden dzień: jest jedzone tego dnia albo nie mieści się w żadnym późniejszym. Gotuj wspólnie z innymi (przy liczbie osób {cooks} każda ma najwyżej sześć godzin), przygotuj mniej porcji albo miej coś z tego już gotowe.",
  lateMeal:
    "„{meal}” ma być na {at}, a będzie gotowe {ready, select, none {dopiero po północy} other {najwcześniej o {ready}}}. Zacznij gotować wcześniej albo zjedz później.",
  clearingUp: "Potem sprzątanie: około {minutes}.",
  noOrder: "Kroków tego planu nie da się ułożyć w żadnej kolejności, dlatego nie ma harmonogramu.",
  noOneSession: "Tego wszystkiego nie da się zrobić podczas jednego gotowania.",
  time: "Czas",
  what: "Co",
  work: {
    HANDS_ON: "aktywna praca",
    UNATTENDED: "samo się robi",
  },
  how: "Jak",
  cook: "osoba {numbers}",
  load: "{several, select, no {partia {first} z {of}} other {partie od {first} do {last} z {of}}}",
  wash: "Umyj: {machine}",
  machine: "urządzenie",
};
