import { message } from "../../message.js";

/** The plan as plain text. */
export const plain = {
  plain: {
    title: message("{plan}, for {count, plural, one {#} other {#}}", { plan: "Roots and barley", count: 7 }),
    eat: "Eat",
    day: message("day {day}", { day: 2 }),
    buy: "Buy",
    keep: "Keep",
    mind: "Mind",
    /** In brackets after how long something keeps. */
    until: message("(until {when})", { when: "2026-03-03" }),
  },
};
