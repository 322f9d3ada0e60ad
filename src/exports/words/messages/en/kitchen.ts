import { message } from "../../message.js";

/** The kitchen view, and what is printed for fridge door and boxes. */
export const kitchen = {
  /** The kitchen view, and what is printed. */
  cookTitle: message("Cooking: {plan}", { plan: "Roots and barley" }),
  backToPlan: "Back to the plan",
  beforeYouStart: "Before you start",
  readyLines: "Have everything from the shopping list in reach, and clean boxes with lids for what you put away.",
  youNeed: message("You need: {appliances}.", { appliances: "hob ring, oven shelf" }),
  wholeTime: message("It takes {time}; you are busy for {busy}.", { time: "1 h 47 min", busy: "1 h 20 min" }),
  stepOf: message("Step {step} of {all}", { step: 3, all: 22 }),
  timeLeft: message("{time} left", { time: "1 h 12 min" }),
  forAllParts: "amounts for all parts together",
  shareOfRecipe: message("today {times} of {all} × the recipe", { times: "1", all: "2½" }),
  meanwhile: message("Meanwhile: {things}.", { things: "Boiled barley until 14:29" }),
  runsUntil: message("{what} until {when}", { what: "Boiled barley", when: "14:29" }),
  done: "Done",
  back: "Back",
  start: "Start",
  startTimer: message("Start timer: {time}", { time: "35 min" }),
  timerDone: "Time is up",
  stopTimer: "Stop timer",
  putAway: "Put away",
  putAwayLine:
    "Box what is left for later days, write on each box what it is and until when it keeps, and put it away now.",
  allSteps: "All steps",
  oneStep: "One step at a time",
  cannotCook: "This could not be computed",
  fridgeTitle: message("Storage times: {plan}", { plan: "Roots and barley" }),
  labelsTitle: message("Box labels: {plan}", { plan: "Roots and barley" }),
  printHint: "Print this page with your browser.",
  forMeal: message("for {meal}", { meal: "Barley soup" }),
  freezeOnCookingDay: "freeze on cooking day",
  spareBox: "spare",
  madeOn: message("made {day}", { day: "Sun, 1 Mar" }),
  howLong: "Until when",
};
