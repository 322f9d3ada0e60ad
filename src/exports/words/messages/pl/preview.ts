import type { Translation } from "../../message.js";
import type { preview as english } from "../en/preview.js";

export const preview: Translation<typeof english> = {
  label: "Podgląd",
  shown: "Podgląd szkicu, wersja {version}, dla tych, którzy mają ten adres. Nikt inny nie widzi go przed publikacją.",
  works: "Adres działa do {until} i zawsze pokazuje najnowszą wersję.",
  missing: "Nie można go jeszcze opublikować:",
  notReady: "Tego jeszcze nie można pokazać",
  notReadyWhy:
    "Szkicu nie można obliczyć, dopóki to, co wymieniono powyżej, nie zostanie poprawione. Czytelnicy nic z niego nie widzą.",
  ended: "Ten podgląd wygasł",
  endedWhy: "Można go było oglądać do {when}. Poproś autora o nowy adres.",
  takenBack: "Ten podgląd został wycofany",
  takenBackWhy: "Autor wycofał go, data: {when}. Poproś o nowy adres.",
  gone: "Tego szkicu już nie ma",
  goneWhy: "Autor go usunął. Zapytaj, czy jest inny.",
  unknown: "Żaden podgląd nie ma tego adresu",
  unknownWhy:
    "Może jest błędnie zapisany albo ucięty: skopiuj go w całości, do ostatniego znaku, albo poproś autora o nowy.",
};
