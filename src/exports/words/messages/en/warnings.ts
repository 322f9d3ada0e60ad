import { message } from "../../message.js";

/** What a reader should know beside an answer that stands: a sentence each, and one for several of a kind. */
export const warnings = {
  missing: {
    DENSITY: "the weight of a millilitre",
    GRAMS_OF_ONE_PIECE: "the weight of one piece",
    MILLILITRES_OF_ONE_PIECE: "the volume of one piece",
    YIELD_OF_ONE_BATCH: "the yield of one batch",
    OWN_MEASURE: "the size of one",
    UNIT: "the unit",
  },
  warning: {
    NOT_COMBINED: message('Amounts of "{food}" stay on lines of their own, because {missing} is not known.', {
      food: "parsley",
      missing: "the weight of one piece",
    }),
    PART_NOT_COUNTED: message(
      'How many "{food}" give the "{part}" cannot be computed, because {missing} is not known. Buy enough for it.',
      { food: "lemon", part: "juice", missing: "the weight of one piece" },
    ),
    /** `form` "none": the whole food. */
    EDIBLE_PORTION_UNKNOWN: message(
      'How much of "{food}"{form, select, none {} other {, {form},}} is lost in trimming is not known. The amount on the list is the trimmed one; buy a little more.',
      { food: "celeriac", form: "peeled" },
    ),
    PRICE_UNKNOWN: message('No price is known for "{food}", so it is in no sum.', { food: "salt" }),
    PACK_NOT_COMPARABLE: message('The pack "{pack}" of "{food}" was not considered, because {missing} is not known.', {
      pack: "bunch",
      food: "parsley",
      missing: "the weight of one piece",
    }),
    ON_HAND_NOT_COMPARABLE: message('What you have of "{item}" was not taken off, because {missing} is not known.', {
      item: "parsley",
      missing: "the weight of one piece",
    }),
    ON_HAND_IN_OTHER_FORM: message(
      'What you have of "{from}" could be turned into about {gives} of "{item}"; the whole need would take about {wouldTake}. It was not counted; say so if it should be.',
      { from: "dried chickpeas", gives: "240 g", item: "boiled chickpeas", wouldTake: "400 g" },
    ),
    ON_HAND_NOT_NEEDED: message('What you have of "{item}" is not needed here.', { item: "sugar" }),
    ON_HAND_TOO_OLD: message('What you have of "{item}" is past its date, {date}, so none of it was counted.', {
      item: "yoghurt",
      date: "2026-03-01",
    }),
    ON_HAND_NOT_IN_TIME: message(
      'What you have of "{item}" is past its date, {date}, when {meals} {count, plural, one {is} other {are}} eaten, so it was not counted there.',
      { item: "yoghurt", date: "2026-03-03", meals: "Barley soup", count: 1 },
    ),
    /** `how`: nobody knows, no swap is offered, none that is offered was taken. */
    DIET_NOT_MET: message(
      '{how, select, unknown {Whether "{item}" fits the diet "{diet}" is not known. Check the label.} none {"{item}" does not fit the diet "{diet}", and no swap for it is offered.} other {"{item}" does not fit the diet "{diet}", and of the swaps that are offered ({offered}) none was taken.}}',
      { item: "butter", diet: "vegan", offered: "olive oil", how: "some" as "unknown" | "none" | "some" },
    ),
    /** `how`: nobody knows, there may be traces, no swap is offered, none that is offered was taken. */
    ALLERGEN_NOT_AVOIDED: message(
      '{how, select, unknown {Whether "{item}" contains this is not known: {allergen}. Check the label.} may {"{item}" may contain traces: {allergen}.} none {"{item}" contains {allergen}, and no swap for it is offered.} other {"{item}" contains {allergen}, and of the swaps that are offered ({offered}) none was taken.}}',
      {
        item: "butter",
        allergen: "milk",
        offered: "olive oil",
        how: "some" as "unknown" | "may" | "none" | "some",
      },
    ),
    DISLIKE_NOT_AVOIDED: message('"{item}" stays in {meals}: no swap that suits you is offered.', {
      item: "coriander",
      meals: '"Barley soup"',
    }),
    DISLIKE_LEFT_OUT: message('"{item}" is optional in {meals} and was left out. The steps may still mention it.', {
      item: "coriander",
      meals: '"Barley soup"',
    }),
    SWAP_NOT_OFFERED: message('No line offers "{to}" in place of "{from}", so nothing was swapped.', {
      to: "tahini",
      from: "butter",
    }),
    SWAP_NOT_CONVERTIBLE: message(
      '"{to}" could not take the place of "{from}", because {missing} is not known. The line stays as written.',
      { to: "tahini", from: "butter", missing: "the weight of a millilitre" },
    ),
    MADE_IN_TWO_PLANS: message('"{component}" is made in more than one plan ({plans}), each in batches of its own.', {
      component: "Boiled barley",
      plans: "Roots and barley, Bean night",
    }),
    LEFT_OVER: message('Some "{component}" is left over.', { component: "Boiled barley" }),
    LEFT_OVER_FOR: message(
      'Some "{component}" is left over: enough for {count, plural, one {# serving} other {# servings}} more.',
      { component: "Boiled barley", count: 2 },
    ),
    PART_TOO_OLD: message(
      'The "{part}" of "{food}" keeps {keeps} once the piece is cut, so "{meal}" on day {day} cannot take it from one that is cut on day {cutOn}. Cut a fresh one for it; the list counts it.',
      { part: "zest", food: "lemon", keeps: "1 day", meal: "Barley soup", day: 3, cutOn: 0 },
    ),
    BUY_LATER: message('"{food}" keeps {keeps}: buy the share for {meals} later, not before day {day}.', {
      food: "spinach",
      keeps: "2 days",
      meals: "“Barley soup”",
      day: 2,
    }),
    MEAL_BEFORE_SESSION: message(
      '"{meal}" is eaten at {at} on the day of the session, which begins at {start}. Begin earlier, eat it later, or make what goes into it the day before and mind how long that keeps.',
      { meal: "Barley soup", at: "12:00", start: "14:00" },
    ),
    KEEPING_UNKNOWN: message('There is no keeping time for "{item}". Follow local food-safety advice.', {
      item: "Oat crisps",
    }),
    KEEPING_CLASS_UNKNOWN: message(
      '"{item}" is kept as "{keepsAs}", which is no class of food that the published rules know. So the shortest time of any class is given: follow it, or local food-safety advice.',
      { item: "Oat crisps", keepsAs: "crisps" },
    ),
    REGION_NOT_GIVEN: message("No region was given, so the strictest rule was taken: that of {used}.", { used: "GB" }),
  },
  gathered: {
    NOT_COMBINED: message("On lines of their own, because {missing} is not known: {things}.", {
      missing: "the weight of one piece",
      things: "parsley, dill",
    }),
    EDIBLE_PORTION_UNKNOWN: message(
      "What is lost in trimming is not known: {things}. The list has the trimmed amount; buy a little more.",
      { things: "celeriac (peeled), chard" },
    ),
    PACK_NOT_COMPARABLE: message("Packs left out, because {missing} is not known: {things}.", {
      missing: "the weight of one piece",
      things: "parsley (bunch)",
    }),
    ON_HAND_NOT_COMPARABLE: message("On hand and not taken off, because {missing} is not known: {things}.", {
      missing: "the weight of one piece",
      things: "parsley",
    }),
    ON_HAND_TOO_OLD: message("On hand, past its date and not counted: {things}.", { things: "yoghurt (2026-03-01)" }),
    ON_HAND_NOT_NEEDED: message("On hand and not needed here: {things}.", { things: "sugar" }),
    DIET_NOT_MET: message(
      "{how, select, unknown {Not known to be {diet}: {things}. Check the labels.} none {Not {diet}, and no swap is offered: {things}.} other {Not {diet}, and no swap that is offered was taken: {things}.}}",
      { diet: "vegan", things: "butter, egg", how: "some" as "unknown" | "none" | "some" },
    ),
    ALLERGEN_NOT_AVOIDED: message(
      "{how, select, unknown {Not known whether it contains this ({allergen}): {things}. Check the labels.} may {May contain traces ({allergen}): {things}.} none {Contains {allergen}, and no swap is offered: {things}.} other {Contains {allergen}, and no swap that is offered was taken: {things}.}}",
      { allergen: "milk", things: "butter, cheese", how: "some" as "unknown" | "may" | "none" | "some" },
    ),
    SWAP_NOT_OFFERED: message("Not swapped, because no line offers it: {things}.", {
      things: "tahini in place of butter",
    }),
    MADE_IN_TWO_PLANS: message("Made in more than one plan, each in batches of its own: {things}.", {
      things: "Boiled barley",
    }),
    LEFT_OVER: message("Left over: {things}.", { things: "Boiled barley (enough for 2 servings more)" }),
    enoughFor: message("{component} (enough for {count, plural, one {# serving} other {# servings}} more)", {
      component: "Boiled barley",
      count: 2,
    }),
    BUY_LATER: message("Buy later, not before day {day}: {things}.", {
      day: 2,
      things: "spinach for “Barley soup” (it keeps 2 days)",
    }),
    shareToBuy: message("{food} for {meals} (it keeps {keeps})", {
      food: "spinach",
      meals: "“Barley soup”",
      keeps: "2 days",
    }),
    KEEPING_UNKNOWN: message("Nobody says how long this keeps: {things}. Follow local food-safety advice.", {
      things: "Oat crisps",
    }),
  },
};
