import { message } from "../../message.js";

/** Counts, days, and whose plan it is. */
export const general = {
  forServings: message("For {count, plural, one {# serving} other {# servings}}", { count: 4 }),
  servings: message("{count, plural, one {# serving} other {# servings}}", { count: 4 }),
  days: message("{count, plural, one {# day} other {# days}}", { count: 3 }),
  hours: message("{count, plural, one {# hour} other {# hours}}", { count: 48 }),
  foods: message("{count, plural, one {# food} other {# foods}}", { count: 7 }),
  roughly: message("about {amount}", { amount: "2½ batches" }),
  /** Day 0 is that of the session. */
  dayOfPlan: message(
    "{day, plural, =0 {Day of the session} one {Day # after the session} other {Day # after the session}}",
    { day: 2 },
  ),
  by: "By",
  revision: message("Revision {number}, published {date}", { number: 3, date: "Sunday, 1 March 2026" }),
  withdrawn: "This revision was withdrawn by its publisher.",
  changed: "What changed",
  thisRevision: "This revision",
  newestRevision: "The newest revision",
  calendar: "As a calendar",
  listAddress: "The shopping list by itself",
  warnings: "Good to know",
  source: message("Source: {titles}", { titles: "Cooking your food" }),
  restsOn: message("Rests on: {titles}", { titles: "Cooking your food" }),
  about: message("About: {things}.", { things: "Boiled barley, kale" }),
  cautions: "Mind in the kitchen",
  regionUnknown:
    "No country is named for this plan, so the strictest rules of all regions hold and every list of allergens is answered. Name yours to have its own.",
  regionNamed: message(
    "The rules and the list of allergens are those of {region}, which {by, select, PLAN {the plan} other {the publisher}} names. Name your own country to have its own.",
    { region: "GB", by: "PLAN" as "PLAN" | "PUBLISHER" },
  ),
  regionStandsIn: message(
    "For some of this no rule of {region} is known here; there those of {others} stand in. Ask your local authority.",
    { region: "NO", others: "EU" },
  ),
};
