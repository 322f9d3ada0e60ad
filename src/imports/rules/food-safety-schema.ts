import { z } from "zod";
import type { RuleAudience } from "../../domain/model/keeping.js";
import type { HandlingTopic } from "../../domain/storage/rule.js";
import { listSchema, nameSchema, slugSchema, textSchema } from "../documents/schemas/scalar-schemas.js";
import { placeWords, sourceSchema } from "../documents/schemas/shared-schemas.js";
import { wordSchema, yesNoSchema } from "../documents/schemas/word-schema.js";
import { datedFields, ruleHead, smallNumber } from "./rule-texts.js";

const audienceWords = {
  HOUSEHOLD: "household",
  FOOD_SERVICE: "food service",
  ANY: "any",
} satisfies Record<RuleAudience, string>;

const topicWords = {
  ROOM: "room",
  HOLDING: "holding",
  COOLING: "cooling",
  REHEATING: "reheating",
  THAWING: "thawing",
  FREEZING: "freezing",
  DATE_MARKING: "date marking",
  PACKING: "packing",
  SOAKING: "soaking",
  BOILING: "boiling",
  HAZARD: "hazard",
} satisfies Record<HandlingTopic, string>;

const both = {
  ...datedFields,
  id: slugSchema,
  audience: wordSchema(audienceWords),
  condition: textSchema.nullable().default(null),
  temperature: textSchema.nullable().default(null),
};

const keepingSchema = z
  .strictObject({
    ...both,
    "keeps-as": slugSchema,
    place: wordSchema(placeWords),
    days: smallNumber.optional(),
    hours: smallNumber.optional(),
    from: smallNumber.nullable().default(null),
    "first-day": z.union([z.literal("0"), z.literal("1"), z.literal(0), z.literal(1)]).default(0),
    printed: nameSchema,
    purpose: wordSchema({ SAFETY: "safety", QUALITY: "quality" }).default("SAFETY"),
  })
  .refine(({ days, hours }) => (days === undefined) !== (hours === undefined), {
    params: { expected: "days or hours", got: "both or neither" },
  });

const handlingSchema = z
  .strictObject({
    ...both,
    topic: wordSchema(topicWords),
    about: textSchema,
    from: smallNumber.nullable().default(null),
    "at-most": smallNumber.optional(),
    "at-least": smallNumber.optional(),
    unit: wordSchema({ HOUR: "hour", MINUTE: "minute", DAY: "day", INCH: "inch", TIME: "time" }).optional(),
    says: textSchema.nullable().default(null),
  })
  .refine(
    (rule) => {
      const bounds = [rule["at-most"], rule["at-least"]].filter((bound) => bound !== undefined).length;
      return bounds === (rule.unit === undefined ? 0 : 1);
    },
    { params: { expected: "at-most or at-least, with a unit", got: "something else" } },
  );

/** Keeping ceilings and handling rules: seeds/rules/food-safety.yaml. */
export const foodSafetySchema = z.strictObject({
  kind: z.literal("food-safety"),
  ...ruleHead,
  keeping: listSchema(keepingSchema).default([]),
  handling: listSchema(handlingSchema).default([]),
});

const words = listSchema(nameSchema).default([]);

/** Cautions: seeds/rules/cautions.yaml. */
export const cautionsSchema = z.strictObject({
  kind: z.literal("cautions"),
  ...ruleHead,
  cautions: listSchema(
    z.strictObject({
      code: slugSchema,
      text: textSchema,
      rules: listSchema(slugSchema).default([]),
      source: sourceSchema,
      "by-region": listSchema(
        z.strictObject({
          region: datedFields.region,
          text: textSchema,
          rules: listSchema(slugSchema).default([]),
          source: sourceSchema,
        }),
      ).optional(),
      "gives-way-to": listSchema(slugSchema).optional(),
      when: z
        .strictObject({
          always: yesNoSchema.default(false),
          perishable: yesNoSchema.default(false),
          "keeps-as": listSchema(slugSchema).default([]),
          foods: listSchema(slugSchema).default([]),
          "food-words": words,
          "step-words": words,
        })
        .prefault({}),
    }),
  ),
});

export type FoodSafetyDocument = z.output<typeof foodSafetySchema>;
export type CautionsDocument = z.output<typeof cautionsSchema>;
