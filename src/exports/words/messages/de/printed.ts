import type { Translation } from "../../message.js";
import type { printed as english } from "../en/printed.js";

export const printed: Translation<typeof english> = {
  printed: {
    hour: "{count, plural, one {{range} Stunde} other {{range} Stunden}}",
    day: "{count, plural, one {{range} Tag} other {{range} Tage}}",
    week: "{count, plural, one {{range} Woche} other {{range} Wochen}}",
    month: "{count, plural, one {{range} Monat} other {{range} Monate}}",
    year: "{count, plural, one {{range} Jahr} other {{range} Jahre}}",
  },
};
