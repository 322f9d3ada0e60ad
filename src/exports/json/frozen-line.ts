import { z } from "zod";
import { sourceSchema } from "./amount.js";
import { list, named, slug, slugs, text, texts } from "./named-schema.js";

/** Put before it is used below. */
/** The document of a revision holds the engine's own values, as they were frozen. */
export const measuredSchema = named(
  "FrozenAmount",
  "A number somebody wrote down, kept exactly: fractions in lowest terms. `low` equals `high` unless it is a range.",
  z.object({
    low: text("Such as `1/3`.", 80),
    high: text("Such as `1/2`.", 80),
    unit: text("Code of a unit, or `own:` and a measure of the food's own.", 200),
  }),
);

const itemSchema = z
  .discriminatedUnion("kind", [
    z.object({
      kind: z.literal("FOOD"),
      food: slug("Slug of the food."),
      part: text("Only this part of it.").nullable(),
    }),
    z.object({ kind: z.literal("COMPONENT"), component: slug("Slug of the component.") }),
  ])
  .describe("What the line takes.");

const swapOwnSchema = z
  .object({
    preparation: text("How this food is prepared.").exactOptional(),
    form: text("The form it is measured in.").exactOptional(),
    yield: measuredSchema.describe("What one batch of the component then gives.").exactOptional(),
    keepsAs: text("Class of published keeping rules of what is then made.").exactOptional(),
    steps: list(
      z.object({
        id: text("Of the step."),
        text: text("What is done.").exactOptional(),
        minutes: z.number().describe("How long.").exactOptional(),
      }),
      "Steps that are then done otherwise.",
    ).exactOptional(),
  })
  .describe("What is otherwise with it. The preparation of the other food never goes along.");

export const frozenLineSchema = named(
  "FrozenLine",
  "An amount of a food, a part of one, or a component, as its writer wrote it.",
  z.object({
    id: text("Unique inside its meal or component, and stable."),
    item: itemSchema,
    written: text("The writer's own words."),
    amount: measuredSchema.nullable().describe("Null if it is added to taste."),
    each: measuredSchema.describe("What one of the pieces weighs that `amount` counts.").exactOptional(),
    extra: z.boolean().describe("There is more beside it, not measured."),
    measured: z.enum(["AS_BOUGHT", "READY"]).describe("Weighed before or after trimming."),
    form: text("The form it was measured in.").nullable(),
    preparation: text("How it is prepared.").nullable(),
    rule: z.enum(["PROPORTIONAL", "PER_BATCH", "POWER", "TO_TASTE"]).describe("How it grows."),
    exponent: z.number().nullable().describe("Only with `POWER`."),
    optional: z.boolean().describe("May be left out."),
    eaten: text(
      "Share of it that is eaten, such as `2/5`; `0`: thrown away. Absent if all of it is eaten that is not poured away.",
      80,
    ).exactOptional(),
    mark: text("A short mark shown beside the line.").nullable(),
    swaps: list(
      z.object({
        food: slug("Slug of the food that may take the place."),
        ratio: text("How much of it for one of the line's.", 80),
        diets: slugs("Codes of the diets it serves."),
        note: text("A short note on it.").nullable(),
        own: swapOwnSchema.exactOptional(),
      }),
      "Foods that may take its place.",
    ),
  }),
);

export const frozenStepSchema = named(
  "FrozenStep",
  "One thing to do, as its writer wrote it.",
  z.object({
    id: text("Unique inside its meal or component, and stable."),
    text: text("What to do."),
    minutes: z.number(),
    attention: z.enum(["HANDS_ON", "UNATTENDED"]),
    appliance: text("Code of an appliance.").nullable(),
    temperatureC: z.number().nullable(),
    after: texts("Steps that come first."),
    grows: z.enum(["FIXED", "PER_BATCH", "PER_LOAD"]),
    loadBatches: text("Batches in one load.", 80).nullable(),
    minWait: z.number(),
    maxWait: z.number().nullable(),
    eveningBefore: z.boolean(),
    lines: texts("Lines it uses."),
    leaves: text("What it leaves in its appliance.").exactOptional(),
    washMinutes: z.number().exactOptional(),
    drains: z
      .boolean()
      .describe("Pours off the water of the steps before it. Absent if it is not stated.")
      .exactOptional(),
    growthStated: z
      .literal(true)
      .describe("`FIXED` is the writer's own word. Absent if nobody stated how it grows.")
      .exactOptional(),
    heatUpMinutes: z.number().describe("Minutes until one batch boils, before `minutes`.").exactOptional(),
    chills: z.boolean().describe("Whether it puts what is made into the cold.").exactOptional(),
  }),
);

export const keepingRuleSchema = named(
  "KeepingRule",
  "How long something keeps, as somebody states it.",
  z.object({
    place: z.enum(["FRIDGE", "FREEZER", "ROOM"]),
    days: z.number(),
    container: text("The container.").nullable(),
    condition: text("The rule holds only then.").nullable(),
    purpose: z
      .enum(["SAFETY", "QUALITY"])
      .describe("What the end protects. If absent: quality in the freezer, otherwise safety.")
      .exactOptional(),
    region: text("Where the figure was published for.", 10).exactOptional(),
    source: sourceSchema,
  }),
);

export const densitySchema = z.object({
  form: text("The form it holds for. Null for the food as bought.").nullable(),
  gramsPerMl: z.number(),
  source: sourceSchema,
});

export const ownMeasureSchema = z.object({
  name: text("Lines name it `own:` and this."),
  one: text("The singular."),
  many: text("The plural."),
  grams: z.number().nullable(),
  millilitres: z.number().nullable(),
  pieces: z.number().nullable(),
  source: sourceSchema,
});
