import { z } from "zod";
import { nameSchema, slugSchema } from "../documents/schemas/scalar-schemas.js";

/** What the rules of the other documents are as a whole: seeds/rules/rule-set.yaml. */
export const ruleSetSchema = z.strictObject({
  kind: z.literal("rule-set"),
  code: slugSchema,
  title: nameSchema,
  "in-force-from": z.iso.date(),
});

export type RuleSetDocument = z.output<typeof ruleSetSchema>;
