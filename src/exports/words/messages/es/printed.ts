import type { Translation } from "../../message.js";
import type { printed as english } from "../en/printed.js";

export const printed: Translation<typeof english> = {
  printed: {
    hour: "{count, plural, one {{range} hora} many {{range} horas} other {{range} horas}}",
    day: "{count, plural, one {{range} día} many {{range} días} other {{range} días}}",
    week: "{count, plural, one {{range} semana} many {{range} semanas} other {{range} semanas}}",
    month: "{count, plural, one {{range} mes} many {{range} meses} other {{range} meses}}",
    year: "{count, plural, one {{range} año} many {{range} años} other {{range} años}}",
  },
};
