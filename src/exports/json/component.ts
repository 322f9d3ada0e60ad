import { z } from "zod";
import type { Component, Route } from "../../domain/model/component.js";
import type { Line } from "../../domain/model/line.js";
import { toNumber } from "../../domain/quantity/rational.js";
import { showWritten } from "../words/shown-amount.js";
import { amountSchema, sourceSchema } from "./amount.js";
import { keepingRuleSchema } from "./frozen-line.js";
import { wordsJson, wordsShape } from "./words.js";
import { list, named, slug, slugs, text, type Json } from "./named-schema.js";
import { namedThingSchema, type ThingsOfPlan } from "./named-thing.js";
import { stepJson, stepSchema } from "./scaled-line.js";

const writtenLineSchema = named(
  "WrittenLine",
  "A line as its writer wrote it.",
  z.object({
    code: text("Unique inside its meal or component, and stable."),
    item: namedThingSchema,
    part: text("The part of the food, if it is only a part.").nullable(),
    written: text("The writer's own words."),
    amount: amountSchema.nullable().describe("How much. Null if it is added to taste."),
    extra: z.boolean().describe("There is more beside it, not measured."),
    measured: z.enum(["AS_BOUGHT", "READY"]).describe("Weighed before or after trimming."),
    form: text("The form it was measured in, such as `chopped`.").nullable(),
    preparation: text("How it is prepared.").nullable(),
    rule: z.enum(["PROPORTIONAL", "PER_BATCH", "POWER", "TO_TASTE"]).describe("How it grows."),
    exponent: z.number().nullable().describe("Only with `POWER`."),
    optional: z.boolean().describe("May be left out."),
    mark: text("A short mark shown beside the line.").nullable(),
    swaps: list(
      z.object({
        food: namedThingSchema,
        ratio: text("How much of it for one of the line's, as an exact fraction.", 80),
        diets: slugs("Codes of the diets it serves."),
        note: text("A short note on it.").nullable(),
      }),
      "Foods that may take its place.",
    ),
  }),
);

const making = {
  lines: list(writtenLineSchema, "What goes into one batch."),
  steps: list(stepSchema, "How one batch is made."),
};

export const componentSchema = named(
  "Component",
  "Something made ahead, as the newest revision that holds it froze it.",
  z.object({
    publisher: slug("Slug of its publisher."),
    slug: slug("Short name, unique for its publisher."),
    title: text("Title."),
    plan: z
      .object({ slug: slug("Slug of the plan."), title: text("Its title."), revision: z.number().int().min(1) })
      .describe("The revision it was read from."),
    ...making,
    yield: amountSchema.describe("What one batch gives."),
    yieldSource: sourceSchema,
    batch: z
      .object({
        min: z.number().describe("The least."),
        max: z.number().nullable().describe("The most one load holds. Null if there is no limit."),
        increment: z.number().nullable().describe("Sizes go up in this step. Null if any size can be made."),
      })
      .describe("The sizes it can be made in, counted in batches."),
    keeping: list(keepingRuleSchema, "How long it keeps, as its writer states it."),
    routes: list(
      z.object({ name: text("Name, unique inside the component."), kind: z.enum(["MAKE", "BUY"]), ...making }),
      "Other ways to get it: a tin, a jar, a quicker method.",
    ),
    ...wordsShape,
    meals: list(namedThingSchema, "The meals of the plan whose lines name it."),
  }),
);
type ComponentJson = Json<typeof componentSchema>;

const lineJson = (line: Line, things: ThingsOfPlan): Json<typeof writtenLineSchema> => {
  const { id, item, amount, swaps } = line;
  return {
    code: id,
    item: things.item(item),
    part: item.kind === "FOOD" ? item.part : null,
    written: line.written,
    amount: amount && showWritten(amount, things.factsOf(item), things.reader),
    extra: line.extra,
    measured: line.measured,
    form: line.form,
    preparation: line.preparation,
    rule: line.rule,
    exponent: line.exponent,
    optional: line.optional,
    mark: line.mark,
    swaps: swaps.map(({ food, ratio, diets, note }) => ({
      food: things.named({ kind: "FOOD", slug: food }),
      ratio,
      diets,
      note,
    })),
  };
};

const makingJson = ({ lines, steps }: Component | Route, things: ThingsOfPlan) => ({
  lines: lines.map((line) => lineJson(line, things)),
  steps: steps.map(stepJson),
});

/** A component of a frozen plan, as written. */
export function componentJson(of: string, revision: number, things: ThingsOfPlan): ComponentJson {
  const component = things.component(of);
  const { plan } = things.bundle;
  const { batch, keeping, routes } = component;
  return {
    publisher: plan.publisher,
    slug: component.slug,
    title: component.title,
    plan: { slug: plan.slug, title: plan.title, revision },
    ...makingJson(component, things),
    yield: showWritten(component.yield.amount, component, things.reader),
    yieldSource: component.yield.source,
    batch: {
      min: toNumber(batch.min),
      max: batch.max === null ? null : toNumber(batch.max),
      increment: batch.increment === null ? null : toNumber(batch.increment),
    },
    keeping,
    routes: routes.map((route) => ({ name: route.name, kind: route.kind, ...makingJson(route, things) })),
    ...wordsJson(component),
    meals: plan.meals
      .filter(({ lines }) => lines.some(({ item }) => item.kind === "COMPONENT" && item.component === of))
      .map((meal) => things.named({ kind: "MEAL", slug: meal.slug })),
  };
}
