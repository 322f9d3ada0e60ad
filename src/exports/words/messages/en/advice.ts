import { message } from "../../message.js";

/** What to do where something is planned for too late a day. `way`: the first way out, or another one. */
export const advice = {
  quoted: message('"{name}"', { name: "Barley soup" }),
  advice: {
    share: message('{amount} for "{meal}" (day {day})', { amount: "500 g", meal: "Barley soup", day: 3 }),
    shareUnknown: message('the share for "{meal}" (day {day})', { meal: "Barley soup", day: 3 }),
    FREEZE: message(
      "{way, select, first {Freeze} other {Or freeze}} {portions} on the day it is made; move it to the fridge {before} before. Once thawed it keeps {after}.",
      {
        portions: "500 g for “Barley soup” (day 3)",
        before: "1 day",
        after: "1 day",
        way: "first" as "first" | "other",
      },
    ),
    laterMeal: message('"{meal}" (day {day}) not before day {notBefore}', {
      meal: "Barley soup",
      day: 4,
      notBefore: 2,
    }),
    MAKE_LATER: message("{way, select, first {Make} other {Or make}} the share of {component} for {meals}.", {
      component: "Boiled barley",
      meals: "“Barley soup” (day 4) not before day 2",
      way: "first" as "first" | "other",
    }),
    SWAP_DAYS: message('{way, select, first {Eat} other {Or eat}} "{meal}" and "{with}" on each other\'\'s days.', {
      meal: "Barley soup",
      with: "Roots and beans",
      way: "first" as "first" | "other",
    }),
    EAT_EARLIER: message('{way, select, first {Eat} other {Or eat}} "{meal}" by day {day}.', {
      meal: "Barley soup",
      day: 2,
      way: "first" as "first" | "other",
    }),
    /** Only one meal comes too late, and it stands beside this. */
    EAT_IT_EARLIER: message("{way, select, first {Eat} other {Or eat}} it by day {day}.", {
      day: 2,
      way: "first" as "first" | "other",
    }),
    SHOP_TWICE: message(
      "{way, select, first {Buy} other {Or buy}} the {food} for {meals} later, not before day {day}.",
      { food: "spinach", meals: "“Barley soup”", day: 2, way: "first" as "first" | "other" },
    ),
    /** `until` "none": no clock is known. */
    EAT_BEFORE: message(
      "Hours count here: it keeps {hours, plural, one {# hour} other {# hours}} after it is made, which end on day {day}{until, select, none {} other {, at {until}}}.",
      { hours: 48, day: 2, until: "14:00" },
    ),
    NO_PUBLISHED_RULE:
      "No published rule covers this; the length is the writer's own word. Follow local food-safety advice.",
    WRITER_EXCEEDS_RULE: message("The writer gives it {writer}, a published rule {rule}; the shorter one stands.", {
      writer: "4 days",
      rule: "2 days",
    }),
    REGION_WITHOUT_RULE: message(
      "No rule for {asked} is known here; those of {used} were used. Ask your local authority.",
      { asked: "NO", used: "EU" },
    ),
    tooLate: message("Too late for {meals}: {thing} keeps {keeps}. {advice}", {
      meals: "“Barley soup”",
      thing: "Boiled barley",
      keeps: "2 days",
      advice: "Eat it by day 2.",
    }),
  },
};
