import { message } from "../../message.js";

/** Why there is no session, and why one takes as long as it does. */
export const work = {
  noSession: {
    STEPS_IN_A_CIRCLE: message("These steps wait for each other in a circle: {steps}.", {
      steps: "Boiled barley (“Drain it.”)",
    }),
    WAITS_CANNOT_BE_KEPT: message(
      "No order keeps all the waits and times of these steps: {steps}. Make fewer servings at a time, take one of the things on another day, or cook with another shelf, ring or pair of hands; a writer may allow a longer wait.",
      { steps: "Boiled barley (“Drain it.”)" },
    ),
    KITCHEN_WITHOUT: message(
      "There is no {appliance} in this kitchen, and these steps need one: {steps}. Have what they make on hand, take another route where one is offered, or name at least 1.",
      { appliance: "oven", steps: "Roast roots (“Roast.”)" },
    ),
    TOO_LARGE: message(
      "{size} {what} are too many to put into one order. Make fewer servings at a time, or take one of the things on another day.",
      { size: "1200", what: "steps" },
    ),
  },
  critical: {
    something: "something",
    washing: message("washing the {machine}", { machine: "blender" }),
    BEGINNING: message("The work begins with {task}.", { task: "“Rinse the barley.”" }),
    PRECEDENCE: message("{task} follows {others}.", { task: "“Drain it.”", others: "“Boil it.”" }),
    HANDS: message("{task} waits until the hands are free of {others}.", { task: "“Drain it.”", others: "“Chop.”" }),
    APPLIANCE: message("{task} waits until the {appliance} is free of {others}.", {
      task: "“Roast.”",
      others: "“Bake.”",
      appliance: "oven",
    }),
    TEMPERATURE: message("{task} waits until the oven may leave the temperature of {others}.", {
      task: "“Roast.”",
      others: "“Bake.”",
    }),
    GREATEST_WAIT: message("{task} is kept back, so that {others} can follow in time.", {
      task: "“Roast.”",
      others: "“Cool.”",
    }),
    CHOICE: message("{task} could begin earlier; nothing would be gained.", { task: "“Roast.”" }),
  },
};
