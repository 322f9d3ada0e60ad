import type { Translation } from "../../message.js";
import type { plain as english } from "../en/plain.js";

export const plain: Translation<typeof english> = {
  plain: {
    title: "{plan}, für {count, plural, one {#} other {#}}",
    eat: "Essen",
    day: "Tag {day}",
    buy: "Einkaufen",
    keep: "Aufbewahren",
    mind: "Beachten",
    until: "(bis {when})",
  },
};
