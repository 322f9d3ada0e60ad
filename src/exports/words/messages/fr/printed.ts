import type { Translation } from "../../message.js";
import type { printed as english } from "../en/printed.js";

export const printed: Translation<typeof english> = {
  printed: {
    hour: "{count, plural, one {{range} heure} many {{range} heures} other {{range} heures}}",
    day: "{count, plural, one {{range} jour} many {{range} jours} other {{range} jours}}",
    week: "{count, plural, one {{range} semaine} many {{range} semaines} other {{range} semaines}}",
    month: "{count, plural, one {{range} mois} many {{range} mois} other {{range} mois}}",
    year: "{count, plural, one {{range} an} many {{range} ans} other {{range} ans}}",
  },
};
