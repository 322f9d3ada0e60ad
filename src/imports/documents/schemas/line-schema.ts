import { z } from "zod";
import type { Step } from "../../../domain/model/component.js";
import type { Line, ScalingRule } from "../../../domain/model/line.js";
import { codeSchema } from "./code-schema.js";
import {
  amountSchema,
  celsiusSchema,
  foodReferenceSchema,
  listSchema,
  minutesSchema,
  nameSchema,
  percentSchema,
  slugSchema,
  textSchema,
} from "./scalar-schemas.js";
import { wordSchema, yesNoSchema } from "./word-schema.js";

/** `power` is written with its exponent: `power 0.8`. */
export const ruleWords = {
  PROPORTIONAL: "in proportion",
  PER_BATCH: "per batch",
  TO_TASTE: "to taste",
} satisfies Record<Exclude<ScalingRule, "POWER">, string>;

export const measuredWords = { AS_BOUGHT: "as bought", READY: "ready" } satisfies Record<Line["measured"], string>;
export const handsWords = { HANDS_ON: "on", UNATTENDED: "off" } satisfies Record<Step["attention"], string>;
export const growsWords = { FIXED: "fixed", PER_BATCH: "per batch", PER_LOAD: "per load" } satisfies Record<
  Step["grows"],
  string
>;

interface RuleWritten {
  readonly rule: ScalingRule;
  readonly exponent: number | null;
}

const powerSchema = z
  .string()
  .regex(/^power (0\.\d{1,6}|1(\.0+)?)$/i, "power and an exponent above 0 and at most 1, such as power 0.8")
  .transform((written): RuleWritten => ({ rule: "POWER", exponent: Number(written.slice(6)) }))
  .refine(({ exponent }) => exponent !== null && exponent > 0, {
    params: { expected: "power with an exponent above 0 and at most 1", got: "power 0" },
  });

const plainRuleSchema = wordSchema(ruleWords).transform((rule): RuleWritten => ({ rule, exponent: null }));

/** How a line grows: `in proportion`, `per batch`, `power 0.8` or `to taste`. */
const ruleSchema = z
  .string()
  .meta({ examples: [...Object.values(ruleWords), "power 0.8"] })
  .transform((written, context): RuleWritten => {
    const read = (written.toLowerCase().startsWith("power") ? powerSchema : plainRuleSchema).safeParse(written);
    if (read.success) return read.data;
    const expected = [...Object.values(ruleWords), "power 0.8"].join(" | ");
    context.issues.push({ code: "custom", input: written, params: { expected, got: written } });
    return z.NEVER;
  });

const swapSchema = z.strictObject({
  food: foodReferenceSchema,
  ratio: amountSchema.default("1"),
  diets: listSchema(codeSchema("diet")).default([]),
  note: textSchema.nullable().default(null),
  preparation: textSchema.optional(),
  form: textSchema.optional(),
  yield: amountSchema.optional(),
  "keeps-as": codeSchema("keeping-class").optional(),
  steps: listSchema(
    z.strictObject({ id: nameSchema, do: textSchema.optional(), time: minutesSchema.optional() }),
  ).default([]),
});

/** An amount of a food, a part of a food, or a component. */
export const lineSchema = z
  .strictObject({
    id: nameSchema.optional(),
    food: foodReferenceSchema.optional(),
    part: slugSchema.nullable().default(null),
    component: slugSchema.optional(),
    amount: amountSchema.nullable().default(null),
    each: amountSchema.nullable().default(null),
    written: textSchema.optional(),
    "plus-more": yesNoSchema.default(false),
    measured: wordSchema(measuredWords).default("AS_BOUGHT"),
    form: textSchema.nullable().default(null),
    preparation: textSchema.nullable().default(null),
    rule: ruleSchema.default({ rule: "PROPORTIONAL", exponent: null }),
    optional: yesNoSchema.default(false),
    eaten: percentSchema.nullable().default(null),
    "thrown-away": yesNoSchema.default(false),
    mark: textSchema.nullable().default(null),
    swaps: listSchema(swapSchema).default([]),
  })
  .refine((line) => (line.food === undefined) !== (line.component === undefined), {
    params: { expected: "food or component, one of the two", got: "both or neither" },
  })
  .refine((line) => line.component === undefined || line.part === null, {
    params: { expected: "a part of a food", got: "a part of a component" },
  })
  .refine((line) => (line.rule.rule === "TO_TASTE") === (line.amount === null), {
    params: { expected: "an amount, or the rule to taste", got: "both or neither" },
  })
  .refine((line) => line.eaten === null || !line["thrown-away"], {
    params: { expected: "eaten or thrown-away, one of the two", got: "both" },
  });

/** What is left out of a line. */
const { food: _none, ...emptyLine } = lineSchema.parse({ food: "none", rule: ruleWords.TO_TASTE });

/** A piece of work. Steps follow one another unless `after` says otherwise. */
export const stepSchema = z.strictObject({
  id: nameSchema.optional(),
  do: textSchema,
  time: minutesSchema,
  hands: wordSchema(handsWords).default("HANDS_ON"),
  appliance: codeSchema("appliance").nullable().default(null),
  celsius: celsiusSchema.nullable().default(null),
  after: listSchema(nameSchema).optional(),
  grows: wordSchema(growsWords).nullable().default(null),
  "load-batches": amountSchema.nullable().default(null),
  "wait-at-least": minutesSchema.default(0),
  "wait-at-most": minutesSchema.nullable().default(null),
  "evening-before": yesNoSchema.default(false),
  uses: listSchema(nameSchema).default([]),
  leaves: nameSchema.nullable().default(null),
  "wash-time": minutesSchema.nullable().default(null),
  drains: yesNoSchema.nullable().default(null),
  "heat-up": minutesSchema.nullable().default(null),
  chills: yesNoSchema.nullable().default(null),
});

/** Most characters of a line that is written as text. */
export const longestTextLine = 500;

/**
 * A line as one writes it: `2 cups pearl barley, rinsed`. What it says is found out beside the foods and components that are known
 * (resolve-text-lines.ts); until then it names nothing.
 */
const textLineSchema = z
  .string()
  .min(1)
  .max(longestTextLine)
  .meta({ description: "a line as one writes it, such as 2 cups pearl barley, rinsed" })
  .transform((text): LineDocument => ({ ...emptyLine, text }));

export const linesSchema = listSchema(z.union([textLineSchema, lineSchema]));
export const stepsSchema = listSchema(stepSchema).default([]);

/** Why nobody can say for certain what a line of text means, and what it may mean. */
export interface OpenLine {
  readonly reasons: readonly { readonly code: string; readonly about: string }[];
  /** Slugs of foods and components that it may name; null: what it names is certain. */
  readonly named: readonly string[] | null;
  /** Amounts that it may mean, as a document writes them. */
  readonly amounts: readonly string[];
}

export type LineDocument = z.output<typeof lineSchema> & {
  /** The line was written as text, and this is it. */
  readonly text?: string;
  /** What one is like, as its text says: "large", "6 oz". Also part of the preparation where the amount does not carry it. */
  readonly size?: string;
  /** The text could not be settled. */
  readonly open?: OpenLine;
};
export type StepDocument = z.output<typeof stepSchema>;
