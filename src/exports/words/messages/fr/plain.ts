import type { Translation } from "../../message.js";
import type { plain as english } from "../en/plain.js";

export const plain: Translation<typeof english> = {
  plain: {
    title: "{plan}, pour {count, plural, one {#} many {#} other {#}}",
    eat: "Manger",
    day: "jour {day}",
    buy: "Acheter",
    keep: "Conserver",
    mind: "Attention",
    until: "(jusqu’au {when})",
  },
};
