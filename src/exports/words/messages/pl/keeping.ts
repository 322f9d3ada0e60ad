import type { Translation } from "../../message.js";
import type { keeping as english } from "../en/keeping.js";

export const keeping: Translation<typeof english> = {
  keeping: "Przechowywanie",
  where: "Gdzie",
  keeps: "Trwałość",
  whoSays: "Źródło",
  until: "do: {when}",
  places: {
    FRIDGE: "w lodówce",
    FREEZER: "w zamrażarce",
    ROOM: "w temperaturze pokojowej",
  },
  forQuality: "tylko ze względu na jakość",
  limitedBy: "ze względu na: {part}",
  writerSays: "Według planu: {length}",
  ruleSays: "Opublikowana zasada{region, select, none {} other { ({region})}}: {length}",
  figureSays: "Opublikowana wartość ({region}): {length}",
  byAnalogy: "zasada dla szerszej grupy produktów, przez analogię",
  decides: "ta obowiązuje",
  plannedOf: "{planned} (według źródła najwyżej {upTo})",
  lastDay: "Ostatni dzień: {thing}",
  keepsUntilNow: "Koniec trwałości: {thing}",
};
