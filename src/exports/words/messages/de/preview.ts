import type { Translation } from "../../message.js";
import type { preview as english } from "../en/preview.js";

export const preview: Translation<typeof english> = {
  label: "Vorschau",
  shown:
    "Eine Vorschau des Entwurfs, Fassung {version}, für alle, die diese Adresse haben. Sonst sieht ihn vor der Veröffentlichung niemand.",
  works: "Die Adresse gilt bis {until} und zeigt immer die neueste Fassung.",
  missing: "Veröffentlicht werden kann er noch nicht:",
  notReady: "Das lässt sich noch nicht zeigen",
  notReadyWhy: "Der Entwurf lässt sich erst berechnen, wenn das oben Genannte behoben ist. Leser sehen nichts davon.",
  ended: "Diese Vorschau ist abgelaufen",
  endedWhy: "Sie war bis {when} zu sehen. Bitten Sie um eine neue Adresse, wo Sie diese bekommen haben.",
  takenBack: "Diese Vorschau wurde zurückgezogen",
  takenBackWhy: "Sie wurde zurückgezogen, am {when}. Bitten Sie um eine neue Adresse, wo Sie diese bekommen haben.",
  gone: "Diesen Entwurf gibt es nicht mehr",
  goneWhy: "Er wurde verworfen. Fragen Sie nach einem anderen, wo Sie die Adresse bekommen haben.",
  unknown: "Unter dieser Adresse gibt es keine Vorschau",
  unknownWhy:
    "Vielleicht ist sie falsch geschrieben oder abgeschnitten: Kopieren Sie die ganze Adresse bis zum letzten Zeichen, oder bitten Sie um eine neue.",
};
