import type { Translation } from "../../message.js";
import type { keeping as english } from "../en/keeping.js";

export const keeping: Translation<typeof english> = {
  keeping: "Conservation",
  where: "Où",
  keeps: "Se conserve",
  whoSays: "Source",
  until: "jusqu’au {when}",
  places: {
    FRIDGE: "au réfrigérateur",
    FREEZER: "au congélateur",
    ROOM: "à température ambiante",
  },
  forQuality: "pour la qualité uniquement",
  limitedBy: "à cause de : {part}",
  writerSays: "D’après le plan : {length}",
  ruleSays: "Règle publiée{region, select, none {} other { ({region})}} : {length}",
  figureSays: "Chiffre publié ({region}) : {length}",
  byAnalogy: "règle d’une catégorie d’aliments plus large, par analogie",
  decides: "c’est elle qui s’applique",
  plannedOf: "{planned} (jusqu’à {upTo} d’après la source)",
  lastDay: "Dernier jour : {thing}",
  keepsUntilNow: "Se conserve jusqu’à maintenant : {thing}",
};
