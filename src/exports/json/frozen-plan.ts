import { z } from "zod";
import type { PlanBundle } from "../../domain/model/plan.js";
import { sourceSchema } from "./amount.js";
import { frozenFoodSchema } from "./frozen-food.js";
import {
  densitySchema,
  frozenLineSchema,
  frozenStepSchema,
  keepingRuleSchema,
  measuredSchema,
  ownMeasureSchema,
} from "./frozen-line.js";
import { frozenImageSchema } from "./image.js";
import { frozenPlanWordsShape, frozenTextsShape, frozenWordsShape } from "./words.js";
import { instant, list, named, slug, text, texts, type Json } from "./named-schema.js";

const rational = (description: string) => text(description, 80);

export const frozenComponentSchema = named(
  "FrozenComponent",
  "Something made ahead, as its writer wrote it.",
  z.object({
    slug: slug("Short name, unique for its publisher."),
    title: text("Title."),
    lines: list(frozenLineSchema, "What goes into one batch."),
    steps: list(frozenStepSchema, "How one batch is made."),
    yield: z.object({ amount: measuredSchema, source: sourceSchema }).describe("What one batch gives."),
    batch: z
      .object({
        min: rational("The least."),
        max: rational("The most one load takes. Null if there is no limit.").nullable(),
        increment: rational("Sizes go up in this step. Null if any size can be made.").nullable(),
      })
      .describe("The sizes it can be made in, counted in batches."),
    densities: list(densitySchema, "How heavy a millilitre of it is."),
    measures: list(ownMeasureSchema, "Measures that only this component has."),
    keepsAs: text("Class of published keeping rules.").nullable(),
    keeping: list(keepingRuleSchema, "How long it keeps, as its writer states it."),
    routes: list(
      z.object({
        name: text("Name, unique inside the component."),
        kind: z.enum(["MAKE", "BUY"]),
        lines: list(frozenLineSchema, "What goes into it instead."),
        steps: list(frozenStepSchema, "How it is made instead."),
        keepsAs: text("Class of published keeping rules.").nullable(),
        keeping: list(keepingRuleSchema, "How long it keeps."),
      }),
      "Other ways to get it.",
    ),
    cautions: texts("Codes of cautions its writer named."),
    image: frozenImageSchema.optional().describe("Absent if there is none."),
    ...frozenWordsShape,
  }),
);

export const frozenPlanSchema = named(
  "FrozenPlan",
  "A plan as its writer wrote it.",
  z.object({
    publisher: slug("Slug of its publisher."),
    slug: slug("Short name used in addresses."),
    title: text("Title."),
    summary: text("A sentence or two about it.").nullable(),
    locale: text("BCP 47 tag of the language it is written in.", 60),
    measures: z.enum(["US_CUSTOMARY", "METRIC_CUP", "AUSTRALIAN", "UK_IMPERIAL", "METRIC"]),
    serves: z.number(),
    meals: list(
      z.object({
        slug: slug("Short name, unique inside the plan."),
        title: text("Title."),
        day: z.number().int().describe("Days after the prep session."),
        at: text("The hour at which it is eaten, `HH:MM`. If absent: 18:00.", 5).optional(),
        serves: z.number(),
        lines: list(frozenLineSchema, "What goes into it."),
        steps: list(frozenStepSchema, "How it is finished on the day."),
        image: frozenImageSchema.optional().describe("Absent if there is none."),
        ...frozenTextsShape,
      }),
      "Its meals.",
    ),
    kitchen: z
      .object({ cooks: z.number(), appliances: z.record(z.string().max(200), z.number()) })
      .describe("What the session assumes."),
    region: text("ISO 3166 code of where it is written for. Absent if it is not stated.", 10).optional(),
    currency: text(
      "ISO 4217 code of the currency its writer reckons in. Absent for that of its publisher.",
      3,
    ).optional(),
    promisedMinutes: z.number().nullable().describe("The session length its writer promises."),
    claims: texts("What its writer claims of it."),
    image: frozenImageSchema.optional().describe("Absent if there is none."),
    licence: text("On what terms others may use its texts. Absent if it does not say.").optional(),
    ...frozenPlanWordsShape,
  }),
);

/** A translation as it is stored. */
export const savedTranslationSchema = named(
  "FrozenTranslation",
  "Texts of the plan or of one of its components in another language.",
  z.object({
    of: z
      .object({ kind: z.enum(["PLAN", "COMPONENT"]).describe("What it is."), slug: slug("Its slug.") })
      .describe("What is translated."),
    language: text("BCP 47 tag.", 20),
    texts: z
      .array(
        z.object({
          path: z
            .array(text("A key, a slug, an id or the original words.", 4_000))
            .max(10)
            .describe("Where the original stands."),
          text: text("The translation.", 8_000),
          of: text("The original that it was made from. Absent in what is frozen.", 8_000).optional(),
          numbersDiffer: z.literal(true).optional().describe("Its numbers are meant to be others."),
        }),
      )
      .max(10_000)
      .describe("One entry for each text."),
    checked: text("When its writer last checked all of it. Absent in what is frozen.", 200).optional(),
  }),
);

export const frozenBundleSchema = z.object({
  plan: frozenPlanSchema,
  components: list(frozenComponentSchema, "Every component a meal draws on, by slug."),
  foods: list(frozenFoodSchema, "Every food a line, a swap or a route refers to, by slug."),
  translations: z
    .array(savedTranslationSchema)
    .max(10_000)
    .optional()
    .describe("Texts of the plan and its components in more languages. Absent if there are none."),
});

export const revisionSchema = named(
  "Revision",
  "One revision of a plan, frozen with everything it refers to. This answer never changes.",
  z.object({
    publisher: slug("Slug of its publisher."),
    slug: slug("Slug of the plan."),
    revision: z.number().int().min(1).describe("Counts from 1 for each plan."),
    publishedAt: instant("When it was published."),
    checksum: text("SHA-256, hex, of `document` with its keys in order and without spaces.", 64),
    document: frozenBundleSchema.describe("The plan and all it refers to, as they were."),
  }),
);

interface Frozen {
  readonly publisher: string;
  readonly slug: string;
  readonly revision: number;
  readonly publishedAt: Date;
  readonly checksum: string;
  readonly bundle: PlanBundle;
}

/** Nothing in it can change later: no name of the publisher, no withdrawal, no word that is made today. */
export const revisionJson = ({
  publisher,
  slug: of,
  revision,
  publishedAt,
  checksum,
  bundle,
}: Frozen): Json<typeof revisionSchema> => ({
  publisher,
  slug: of,
  revision,
  publishedAt: publishedAt.toISOString(),
  checksum,
  document: bundle,
});
