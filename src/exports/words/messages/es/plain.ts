import type { Translation } from "../../message.js";
import type { plain as english } from "../en/plain.js";

export const plain: Translation<typeof english> = {
  plain: {
    title: "{plan}, para {count, plural, one {#} many {#} other {#}}",
    eat: "Comer",
    day: "día {day}",
    buy: "Comprar",
    keep: "Conservar",
    mind: "Tenga en cuenta",
    until: "(hasta el {when})",
  },
};
