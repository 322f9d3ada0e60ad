import type { Translation } from "../../message.js";
import type { keeping as english } from "../en/keeping.js";

export const keeping: Translation<typeof english> = {
  keeping: "Conservación",
  where: "Dónde",
  keeps: "Se conserva",
  whoSays: "Fuente",
  until: "hasta el {when}",
  places: {
    FRIDGE: "en el frigorífico",
    FREEZER: "en el congelador",
    ROOM: "a temperatura ambiente",
  },
  forQuality: "solo por calidad",
  limitedBy: "por: {part}",
  writerSays: "Según el plan: {length}",
  ruleSays: "Norma publicada{region, select, none {} other { ({region})}}: {length}",
  figureSays: "Dato publicado ({region}): {length}",
  byAnalogy: "norma de un grupo de alimentos más amplio, por analogía",
  decides: "es la que vale",
  plannedOf: "{planned} (hasta {upTo} según la fuente)",
  lastDay: "Último día: {thing}",
  keepsUntilNow: "Se conserva hasta ahora: {thing}",
};
