import { z } from "zod";
import { list, named, text, texts, type Json } from "./named-schema.js";

const item = named(
  "TextLineItem",
  "What a line takes, in the words of a document's keys.",
  z.object({
    food: text("Slug of the food. Null if it takes a component.", 200).nullable(),
    component: text("Slug of the component. Null if it takes a food.", 200).nullable(),
    part: text("Part of the food, such as `juice`.", 200).nullable(),
    amount: text(
      "The amount as a document writes it, exactly: `2 us-cup`. Null if it is added to taste.",
      400,
    ).nullable(),
    each: text("What one of the pieces weighs that the amount counts: `170 g`.", 400).nullable(),
    isReady: z.boolean().describe("Weighed or measured after trimming, not as bought."),
    form: text("The form that it is measured in: `chopped`.").nullable(),
    preparation: text("What is done to it, as written.").nullable(),
    size: text("What one is like, as written: `large`.").nullable(),
    plusMore: z.boolean().describe("More of it is taken as needed, beside the amount."),
    optional: z.boolean().describe("It may be left out."),
  }),
);

const line = named(
  "TextLine",
  "A line as one writes it, and what it means.",
  z.object({
    written: text("The line as it was written, unchanged."),
    takes: list(item, "The lines with keys that it stands for. Empty where it is not clear."),
    problem: text("Why it is not clear, and what it may mean. Null where it is.").nullable(),
    mayName: texts("Slugs of foods that it may name, where that is not clear."),
    mayTake: texts("Amounts that it may mean, where that is not clear."),
  }),
);

export const textLinesSchema = named(
  "TextLines",
  "How lines were read.",
  z.object({ lines: list(line, "One for each text, in their order.") }),
);

type TextLines = Json<typeof textLinesSchema>;

export const textLinesJson = (lines: TextLines["lines"]): TextLines => ({
  lines: lines.map(({ takes, ...each }) => ({
    ...each,
    takes: takes.map(
      ({ food, component, part, amount, each, isReady, form, preparation, size, plusMore, optional }) => ({
        ...{ food, component, part, amount, each, isReady, form, preparation, size, plusMore, optional },
      }),
    ),
  })),
});
