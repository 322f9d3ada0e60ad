import { z } from "zod";
import { named, text } from "./named-schema.js";

const dimensionSchema = z.enum(["MASS", "VOLUME", "COUNT"]);

const unitSchema = named(
  "Unit",
  "What an amount is counted in.",
  z.object({
    code: text("Stable code: `g`, `us-cup`, `piece`, or a measure of the food's own such as `own:clove`."),
    name: text("Its name in the reader's language, in the form that goes with the amount."),
    dimension: dimensionSchema.nullable().describe("What it measures. Null for a measure of a food's own."),
  }),
);

/** What `showAmount` and its like give is exactly this. */
export const amountSchema = named(
  "Amount",
  "How much of something.",
  z.object({
    value: z.number().describe("The number, in `unit`, unrounded. For a range, its lower end."),
    upTo: z.number().nullable().describe("The upper end of a range. Null if it is not a range."),
    exact: text("`value` as an exact fraction, such as `1/3`, where it is one.").nullable(),
    unit: unitSchema,
    text: text("Ready to show: rounded for a kitchen, in the reader's measures and language."),
    grams: z.number().nullable().describe("`value` in grams, where it is a mass or the food's facts tell."),
    millilitres: z
      .number()
      .nullable()
      .describe("`value` in millilitres, where it is a volume or the food's facts tell."),
  }),
);

export const moneySchema = named(
  "Money",
  "A sum of money. Never a float.",
  z.object({ amount: text("Decimal text, such as `12.40`.", 60), currency: text("ISO 4217 code.", 3) }),
);

export const sourceSchema = named(
  "Source",
  "The source of the figure or statement.",
  z.object({
    kind: z
      .enum(["PUBLISHED", "WRITER", "COMMON_PRACTICE", "INVENTED"])
      .describe(
        "Whether anybody can look it up, its writer says so, the trade does it so, or it is made up for a demonstration.",
      ),
    title: text("Title of the table, rule or person."),
    section: text("The section of it, if it has sections.").nullable(),
  }),
);
