import { message } from "../../message.js";

/** How long things keep, and on whose word. */
export const keeping = {
  keeping: "How it keeps",
  where: "Where",
  keeps: "Keeps",
  whoSays: "Who says so",
  until: message("until {when}", { when: "Tuesday, 3 March 2026" }),
  places: {
    FRIDGE: "in the fridge",
    FREEZER: "in the freezer",
    ROOM: "at room temperature",
  },
  forQuality: "for quality only",
  limitedBy: message("because of the {part}", { part: "boiled eggs" }),
  writerSays: message("The writer says {length}", { length: "4 days" }),
  /** `region` empty: nobody's in particular. */
  ruleSays: message("A published rule{region, select, none {} other { ({region})}} says {length}", {
    length: "2 days",
    region: "GB",
  }),
  /** The same of a figure for one food, which is no rule. */
  figureSays: message("A published figure ({region}) says {length}", {
    length: "10 days",
    region: "US",
  }),
  byAnalogy: "a rule for a wider kind of food, by analogy",
  decides: "this one stands",
  /** Of a range that its source prints, the upper and the lower end. */
  plannedOf: message("{planned} (its source says up to {upTo})", { planned: "3 days", upTo: "4 days" }),
  lastDay: message("Last day: {thing}", { thing: "Boiled barley" }),
  keepsUntilNow: message("Keeps until now: {thing}", { thing: "Boiled barley" }),
};
