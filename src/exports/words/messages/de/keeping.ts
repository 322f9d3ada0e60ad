import type { Translation } from "../../message.js";
import type { keeping as english } from "../en/keeping.js";

export const keeping: Translation<typeof english> = {
  keeping: "Haltbarkeit",
  where: "Wo",
  keeps: "Haltbar",
  whoSays: "Quelle",
  until: "bis {when}",
  places: {
    FRIDGE: "im Kühlschrank",
    FREEZER: "im Gefrierschrank",
    ROOM: "bei Raumtemperatur",
  },
  forQuality: "nur wegen der Qualität",
  limitedBy: "wegen: {part}",
  writerSays: "Angabe im Plan: {length}",
  ruleSays: "Veröffentlichte Regel{region, select, none {} other { ({region})}}: {length}",
  figureSays: "Veröffentlichte Angabe ({region}): {length}",
  byAnalogy: "Regel für eine weiter gefasste Art von Lebensmitteln, sinngemäß angewandt",
  decides: "diese gilt",
  plannedOf: "{planned} (in der Quelle: bis zu {upTo})",
  lastDay: "Letzter Tag: {thing}",
  keepsUntilNow: "Haltbar bis jetzt: {thing}",
};
