import { z } from "zod";
import type { Step } from "../../domain/model/component.js";
import { writtenMinutes } from "../../domain/prep-session/solver/step-growth.js";
import type { ScaledLine } from "../../domain/plan/scaled.js";
import { partIn } from "../words/part-words.js";
import { showScaledLine } from "../words/shown-amount.js";
import { amountSchema } from "./amount.js";
import { named, text, texts, type Json } from "./named-schema.js";
import { namedThingSchema, type ThingsOfPlan } from "./named-thing.js";

export const scaledLineSchema = named(
  "ScaledLine",
  "A line after scaling and swapping.",
  z.object({
    code: text("Unique inside its meal or component, and stable."),
    item: namedThingSchema.describe("What is used, after any swap."),
    part: text("The part of the food, if it is only a part: `zest`.").nullable(),
    partName: text("The same for people, in the reader's language.").nullable(),
    swapped: z.boolean().describe("The food is not the one written: a swap was taken."),
    written: text("The line in the writer's own words."),
    amount: amountSchema.nullable().describe("How much. Null if it is added to taste."),
    preparation: text("How it is prepared.").nullable(),
    mark: text("A short mark shown beside the line.").nullable(),
    optional: z.boolean().describe("May be left out."),
    extra: z.boolean().describe("There is more beside it, not measured."),
  }),
);
type ScaledLineJson = Json<typeof scaledLineSchema>;

export const scaledLineJson = (scaled: ScaledLine, things: ThingsOfPlan): ScaledLineJson => {
  const { line, item } = scaled;
  return {
    code: line.id,
    item: things.item(item),
    part: item.kind === "FOOD" ? item.part : null,
    partName: item.kind === "FOOD" && item.part !== null ? partIn(things.reader.locale, item.part) : null,
    swapped: item.kind === "FOOD" && line.item.kind === "FOOD" && item.food !== line.item.food,
    written: line.written,
    amount: showScaledLine(scaled, things.factsOf(item), things.reader),
    preparation: line.preparation,
    mark: line.mark,
    optional: line.optional,
    extra: line.extra,
  };
};

export const stepSchema = named(
  "Step",
  "One thing to do, as written for one batch or for the people a meal serves.",
  z.object({
    code: text("Unique inside its meal or component, and stable."),
    text: text("What to do."),
    minutes: z.number().describe("How long."),
    attention: z.enum(["HANDS_ON", "UNATTENDED"]).describe("Whether it needs the cook."),
    appliance: text("Code of the appliance it occupies, such as `oven-shelf`.").nullable(),
    temperatureC: z.number().nullable().describe("Oven or liquid temperature, in degrees Celsius."),
    after: texts("Codes of the steps that come first."),
    eveningBefore: z.boolean().describe("May be done the evening before."),
  }),
);
type StepJson = Json<typeof stepSchema>;

export const stepJson = (step: Step): StepJson => ({
  code: step.id,
  text: step.text,
  minutes: writtenMinutes(step),
  attention: step.attention,
  appliance: step.appliance,
  temperatureC: step.temperatureC,
  after: step.after,
  eveningBefore: step.eveningBefore,
});
