import { message } from "../../message.js";

/** The prep session. */
export const session = {
  session: "Prep session",
  sessionOf: message("Prep session: {title}", { title: "Roots and barley" }),
  eveningBefore: "the evening before",
  eveningTaskOf: message("The evening before: {title}", { title: "Boiled barley" }),
  sessionTakes: message("It takes {all}, {hands} of it with the hands.", { all: "2 h 5 min", hands: "1 h 10 min" }),
  longerThanPromised: message("That is longer than the {promised} its writer promises for the plan as written.", {
    promised: "1 h 30 min",
  }),
  /** Cooks of whom none has more than a day's work. */
  moreThanADay: message(
    "That is more work than one day holds for so few hands. Cook with others ({cooks} cooks have six hours each at most), make fewer servings at a time, or make on another day what is eaten later.",
    { cooks: 2 },
  ),
  overDays: message(
    "Divided over {sessions} days, what is eaten later is made later. What keeps how long is still reckoned from the first day.",
    { sessions: 2 },
  ),
  sessionOfDay: message("{day, plural, =0 {The first day} one {One day later} other {# days later}}", { day: 2 }),
  madeThen: message("Made then: {things}.", { things: "Boiled barley, washed kale" }),
  buyRawThen: "Keep in the cold what this day needs, and nothing past the date on its pack.",
  /** Of one of several days, where dividing the work was not enough. */
  stillMoreThanADay: message(
    "That is still more work than one day holds for so few hands: it is eaten then, or fits no later day. Cook with others ({cooks} cooks have six hours each at most), make fewer servings, or have one of the things on hand.",
    { cooks: 2 },
  ),
  /** A meal whose hour comes before it is ready; `ready` "none": not on that day. */
  lateMeal: message(
    "“{meal}” is to be eaten at {at}, and is ready {ready, select, none {only after midnight} other {at {ready} at the earliest}}. Begin the session earlier, or eat later.",
    { meal: "Barley soup", at: "12:00", ready: "13:10" },
  ),
  clearingUp: message("Clearing up comes after it: some {minutes}.", { minutes: "15 min" }),
  noOrder: "The steps of this plan fit no order, so there is no timetable.",
  noOneSession: "All of it cannot be done in one session.",
  time: "Time",
  what: "What",
  work: {
    HANDS_ON: "hands",
    UNATTENDED: "by itself",
  },
  how: "How",
  cook: message("cook {numbers}", { numbers: "1 + 2" }),
  load: message("{several, select, no {load {first} of {of}} other {loads {first} to {last} of {of}}}", {
    first: 1,
    last: 2,
    of: 3,
    several: "yes" as "yes" | "no",
  }),
  wash: message("Wash the {machine}", { machine: "blender" }),
  machine: "machine",
};
