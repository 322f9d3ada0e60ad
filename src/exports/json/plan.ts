import { z } from "zod";
import type { PlanAnswer } from "../../domain/plan/plan-answer.js";
import { runToEnd, type InSlices } from "../../domain/counted-work.js";
import type { ScaledComponent, ScaledMeal } from "../../domain/plan/scaled.js";
import type { Image } from "../../domain/model/image.js";
import { usualMealTime } from "../../domain/model/plan.js";
import { labelSchemeOf } from "../../domain/nutrition/label-figure.js";
import { showAmount } from "../words/shown-amount.js";
import { amountSchema } from "./amount.js";
import { allergenStatementSchema, cautionSchema, cautionsJson, contentsJson, dietSchema } from "./contents.js";
import { imageJson, imageSchema } from "./image.js";
import { planWordsJson, planWordsShape, textsJson, textsShape, wordsJson, wordsShape } from "./words.js";
import { instant, list, named, slug, text, texts, type Json } from "./named-schema.js";
import { thingsOf, type ThingsOfPlan } from "./named-thing.js";
import { nutritionJson, nutritionSchema } from "./nutrition.js";
import { regionsJson, regionsSchema } from "./owned-region.js";
import { scaledLineJson, scaledLineSchema, stepJson, stepSchema } from "./scaled-line.js";
import { daySessionJson, daySessionSchema, sessionJson, sessionSchema } from "./session.js";
import { shoppingListJsonInSlices, shoppingListSchema } from "./shopping-list.js";
import { storageJsonInSlices, storageSchema } from "./storage.js";
import { entryId } from "../feeds/feed.js";
import { warningNames } from "../sentences/named-warning.js";
import { sessionProblemJson, warningsJsonInSlices, warningSchema } from "./warning.js";
import { wordsFor } from "../words/words-for.js";
import { languagesOf } from "../words/languages-of.js";

const publisherSchema = named(
  "Publisher",
  "A writer or a publication that publishes plans.",
  z.object({ slug: slug("Short name used in addresses; never changes."), name: text("Name shown to readers.") }),
);

/** A publisher, and what its own document says. */
export const describedPublisherSchema = named(
  "DescribedPublisher",
  "A publisher, and what it says of itself.",
  publisherSchema.extend({
    region: text("ISO 3166 code of where it publishes. Null if it does not say.", 10).nullable(),
    currency: text("ISO 4217 code of its prices. Null if it does not say.", 3).nullable(),
    languages: texts("BCP 47 tags of the languages it publishes in."),
    description: text("A few sentences about it. Null if there is none.").nullable(),
    image: imageSchema.nullable().describe("A picture of it. Null if there is none."),
    website: text("Its own place on the web. Null if there is none.", 2000).nullable(),
  }),
);

const contents = {
  allergens: allergenStatementSchema,
  diets: list(dietSchema, "Held against every diet there is a rule for."),
  nutrition: nutritionSchema,
};

const scaledMealSchema = named(
  "ScaledMeal",
  "A meal computed.",
  z.object({
    slug: slug("Short name, unique inside the plan."),
    title: text("Title."),
    day: z.number().int().min(0).describe("Days after the prep session; 0 is the day of the session."),
    at: text("The hour at which it is eaten, `HH:MM`. `18:00` where its writer gives none.", 5),
    serves: z.number().describe("How many people it is written for."),
    factor: z.number().describe("Servings asked for, divided by `serves`."),
    lines: list(scaledLineSchema, "What goes into it."),
    steps: list(stepSchema, "How it is finished on the day."),
    image: imageSchema.nullable().describe("A picture of it. Null if there is none."),
    ...textsShape,
    ...contents,
  }),
);

const scaledComponentSchema = named(
  "ScaledComponent",
  "A component computed. `used` + `leftOver` = `made`, what was on hand not counted in `made`.",
  z.object({
    slug: slug("Short name, unique for its publisher."),
    title: text("Title."),
    route: text("Name of the route taken. Null if it is made as written.").nullable(),
    batches: z.number().describe("How many batches are made."),
    loads: z.number().int().min(0).describe("Pots or trays it is made in."),
    made: amountSchema.describe("How much is made."),
    used: amountSchema.describe("How much of it goes into meals and other components."),
    leftOver: amountSchema.describe("How much of it is left."),
    onHand: amountSchema.describe("How much was there already."),
    lines: list(scaledLineSchema, "What goes into it, for all its batches."),
    steps: list(stepSchema, "How one batch is made, by the route taken."),
    image: imageSchema.nullable().describe("A picture of it. Null if there is none."),
    ...wordsShape,
  }),
);

export const planSchema = named(
  "Plan",
  "A published plan, computed for a number of servings and one household.",
  z.object({
    publisher: publisherSchema,
    slug: slug("Short name used in addresses; the same for all its revisions."),
    title: text("Title."),
    summary: text("A sentence or two about it.").nullable(),
    locale: text("BCP 47 tag of the language it is written in."),
    revision: z.number().int().min(1).describe("Counts from 1 for each plan."),
    planId: text("The same for all revisions of the plan, and what feeds call it: `urn:uuid:…`.", 60),
    publishedAt: instant("When this revision was published."),
    firstPublishedAt: instant("When the first revision of the plan was published."),
    updatedAt: instant(
      "When the newest revision in force was published. Of a plan that was withdrawn as a whole, when this revision was withdrawn.",
    ),
    withdrawnAt: instant("When this revision was withdrawn. Null if it is in force.").nullable(),
    withdrawnBecause: text("Why, in its publisher's words.").nullable(),
    changeNote: text("What this revision changed, in its publisher's words.").nullable(),
    checksum: text("SHA-256 of the frozen document, hex.", 64),
    serves: z.number().describe("How many people it is written for."),
    promisedMinutes: z.number().nullable().describe("The session length its writer promises."),
    claims: texts("What its writer claims of it, such as a diet."),
    region: text("ISO 3166 code of where it is written for. Null for that of its publisher.", 10).nullable(),
    image: imageSchema.nullable().describe("A picture of it. Null if there is none, or if it was removed."),
    licence: text("On what terms others may use its texts. Null if it does not say.").nullable(),
    currency: text(
      "ISO 4217 code of the currency its writer reckons in. Null for that of its publisher.",
      3,
    ).nullable(),
    ...planWordsShape,
    servings: z.number().int().min(1).describe("How many it was computed for."),
    languages: texts(
      "BCP 47 tags of the languages this answer is in: that of sentences, cautions and names of lists, then that of the writer's texts where it is another one.",
    ),
    regions: regionsSchema,
    meals: list(scaledMealSchema, "In the order of their days."),
    components: list(scaledComponentSchema, "In an order in which they can be made."),
    shoppingList: shoppingListSchema,
    session: sessionSchema
      .nullable()
      .describe(
        "All of it in one session. Null where that fits no order; `sessionProblems` then says why, and `sessions` holds what serves instead.",
      ),
    sessionProblems: list(warningSchema, "Why there is no session for all of it."),
    sessions: list(
      daySessionSchema,
      "The sessions to do it in, by day: `session` where it serves; several where it is none or more than a day's work for its cooks. What is eaten later is then made later, up to the day on which it is eaten, so that nothing keeps longer than `storage` reckons with. Empty where no division keeps the limits of the steps either.",
    ),
    storage: storageSchema,
    ...contents,
    cautions: list(cautionSchema, "What to mind in the kitchen."),
    warnings: list(warningSchema, "What the reader should know beside the answer."),
  }),
);
type PlanJson = Json<typeof planSchema>;

/** Everything about one plan for one household. */
export const planJson = (answer: PlanAnswer): PlanJson => runToEnd(planJsonInSlices(answer));

/** The same, a turn for each meal and component. `origin`: where its pictures are, without a slash at the end. */
export function* planJsonInSlices(
  answer: PlanAnswer,
  { origin }: { readonly origin: string } = { origin: "" },
): InSlices<PlanJson> {
  const { publication, scaled, reader } = answer;
  const { plan } = scaled.bundle;
  const things = thingsOf(scaled.bundle, reader);
  const words = wordsFor(answer.reader.locale);
  const names = warningNames([answer.scaled.bundle], answer.reader);
  const pictureOf = (image: Image | undefined) => imageJson(origin, publication.publisher.slug, image);
  const meals: PlanJson["meals"][number][] = [];
  for (const meal of scaled.meals.toSorted((a, b) => a.meal.day - b.meal.day)) {
    yield;
    meals.push({ ...mealJson(meal, answer, things), image: pictureOf(meal.meal.image) });
  }
  const components: PlanJson["components"][number][] = [];
  for (const made of scaled.components) {
    yield;
    components.push({ ...componentJson(made, things), image: pictureOf(made.component.image) });
  }
  const storage = yield* storageJsonInSlices(answer.storage, things);
  const shoppingList = yield* shoppingListJsonInSlices(answer.list, reader, [scaled.bundle]);
  return {
    publisher: publication.publisher,
    slug: publication.slug,
    title: plan.title,
    summary: plan.summary,
    locale: plan.locale,
    revision: publication.revision,
    planId: entryId(publication),
    publishedAt: publication.publishedAt.toISOString(),
    firstPublishedAt: publication.firstPublishedAt.toISOString(),
    updatedAt: publication.updatedAt.toISOString(),
    withdrawnAt: publication.withdrawnAt?.toISOString() ?? null,
    withdrawnBecause: publication.withdrawnBecause,
    changeNote: publication.changeNote,
    checksum: publication.checksum,
    serves: plan.serves,
    promisedMinutes: plan.promisedMinutes,
    claims: plan.claims,
    region: plan.region ?? null,
    image: pictureOf(plan.image),
    licence: plan.licence ?? null,
    currency: plan.currency ?? null,
    ...planWordsJson(plan),
    servings: scaled.servings,
    languages: languagesOf(reader, scaled.bundle),
    regions: regionsJson(answer.household.regions),
    meals,
    components,
    shoppingList,
    session: answer.session && sessionJson(answer.session, answer),
    sessionProblems: answer.sessionProblems.map((problem) => sessionProblemJson(problem, scaled, words)),
    sessions: answer.sessions.map((each) => daySessionJson(each, answer)),
    storage,
    ...contentsJson(answer.contents.plan, things),
    nutrition: nutritionJson(answer.nutrition.plan, things, labelSchemeOf(answer.household.region)),
    cautions: cautionsJson(answer.cautions, things),
    warnings: yield* warningsJsonInSlices(scaled.warnings, words, names),
  };
}

function mealJson({ meal, factor, lines }: ScaledMeal, answer: PlanAnswer, things: ThingsOfPlan) {
  const contained = answer.contents.meals.get(meal.slug);
  const eaten = answer.nutrition.meals.find((each) => each.meal === meal.slug);
  if (contained === undefined || eaten === undefined) throw new Error(`nothing is stated about the meal ${meal.slug}`);
  return {
    slug: meal.slug,
    title: meal.title,
    day: meal.day,
    at: meal.at ?? usualMealTime,
    serves: meal.serves,
    factor,
    lines: lines.map((line) => scaledLineJson(line, things)),
    steps: meal.steps.map(stepJson),
    ...textsJson(meal),
    ...contentsJson(contained, things),
    nutrition: nutritionJson(eaten.nutrition, things, labelSchemeOf(answer.household.region)),
  } satisfies Omit<Json<typeof scaledMealSchema>, "image">;
}

const componentJson = (made: ScaledComponent, { reader, ...things }: ThingsOfPlan) => {
  const { component, route, lines } = made;
  return {
    slug: component.slug,
    title: component.title,
    route: route?.name ?? null,
    batches: made.batches,
    loads: made.loads,
    made: showAmount(made.made, component, reader),
    used: showAmount(made.used, component, reader),
    leftOver: showAmount(made.leftOver, component, reader),
    onHand: showAmount(made.onHand, component, reader),
    lines: lines.map((line) => scaledLineJson(line, { ...things, reader })),
    steps: (route ?? component).steps.map(stepJson),
    ...wordsJson(component),
  } satisfies Omit<Json<typeof scaledComponentSchema>, "image">;
};
