import { z } from "zod";
import { listSchema, slugSchema, textSchema } from "../documents/schemas/scalar-schemas.js";
import { yesNoSchema } from "../documents/schemas/word-schema.js";
import { ruleHead } from "./rule-texts.js";

/** Kinds of food that the rules speak about: seeds/rules/keeping-classes.yaml. */
export const keepingClassesSchema = z.strictObject({
  kind: z.literal("keeping-classes"),
  ...ruleHead,
  classes: listSchema(
    z.strictObject({
      code: slugSchema,
      what: textSchema,
      within: slugSchema.nullable().default(null),
      "by-analogy": yesNoSchema.default(false),
      perishable: yesNoSchema.default(true),
    }),
  ).min(1),
});

export type KeepingClassesDocument = z.output<typeof keepingClassesSchema>;
