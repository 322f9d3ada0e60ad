import type { Translation } from "../../message.js";
import type { printed as english } from "../en/printed.js";

export const printed: Translation<typeof english> = {
  printed: {
    hour: "{count, plural, one {{range} godzina} few {{range} godziny} many {{range} godzin} other {{range} godziny}}",
    day: "{count, plural, one {{range} dzień} few {{range} dni} many {{range} dni} other {{range} dnia}}",
    week: "{count, plural, one {{range} tydzień} few {{range} tygodnie} many {{range} tygodni} other {{range} tygodnia}}",
    month:
      "{count, plural, one {{range} miesiąc} few {{range} miesiące} many {{range} miesięcy} other {{range} miesiąca}}",
    year: "{count, plural, one {{range} rok} few {{range} lata} many {{range} lat} other {{range} roku}}",
  },
};
