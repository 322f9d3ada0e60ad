import type { Translation } from "../../message.js";
import type { plain as english } from "../en/plain.js";

export const plain: Translation<typeof english> = {
  plain: {
    title: "{plan}, na {count, plural, one {# osobę} few {# osoby} many {# osób} other {# osoby}}",
    eat: "Jedz",
    day: "dzień {day}",
    buy: "Kup",
    keep: "Przechowuj",
    mind: "Uwaga",
    until: "(do {when})",
  },
};
