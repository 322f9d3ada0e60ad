import { z } from "zod";
import type { Basis, StorageAnswer, StorageGuidance } from "../../domain/storage/guidance.js";
import type { InSlices } from "../../domain/counted-work.js";
import { adviceTexts, type AdviceWords } from "../sentences/advice-text.js";
import { showAmount } from "../words/shown-amount.js";
import { sourceSchema } from "./amount.js";
import { day, instant, list, named, text, texts, type Json } from "./named-schema.js";
import { regionOwnerSchema } from "./owned-region.js";
import { namedThingSchema, type ThingsOfPlan } from "./named-thing.js";
import { warningNames } from "../sentences/named-warning.js";
import { warningsJsonInSlices, warningSchema } from "./warning.js";
import { wordsFor } from "../words/words-for.js";

const purpose = z.enum(["SAFETY", "QUALITY"]).describe("What the end protects: the eater, or taste and texture only.");

const basisSchema = named(
  "Basis",
  "One statement about how long something keeps.",
  z.object({
    of: namedThingSchema.describe("What it is about: the subject, or the part it inherits from."),
    source: sourceSchema,
    sourced: z
      .boolean()
      .describe("Anybody can look it up. False for practice, the writer's own experience, and invented figures."),
    days: z.number().describe("How many days it gives after the day of making. Of a printed range the upper end."),
    daysFrom: z
      .number()
      .nullable()
      .describe("The lower end of a printed range, by which plans go. Null if it prints no range."),
    printed: text("The length as its source prints it.").nullable(),
    purpose,
    region: text("Region of the authority.").nullable(),
    temperature: text("The storage temperature it assumes, in its own words.").nullable(),
    condition: text("It holds only then.").nullable(),
    byAnalogy: z.boolean().describe("No figure is published for this kind of food; that of a wider kind stands in."),
    note: text("What else should be known about it.").nullable(),
    decides: z.boolean().describe("This one decides."),
  }),
);

const guidanceSchema = named(
  "StorageGuidance",
  "How long something keeps in one place, and on whose authority. Local food-safety codes and the practice of licensed kitchens come first; nothing here promises that food is safe.",
  z.object({
    subject: namedThingSchema.describe("What keeps."),
    place: z.enum(["FRIDGE", "FREEZER", "ROOM"]).describe("The place."),
    days: z
      .number()
      .describe(
        "After the day it is made, a meal after the day of the session. Fractions where hours count. Of a printed range the lower end, by which plans go.",
      ),
    upToDays: z
      .number()
      .nullable()
      .describe(
        "The upper end where what decides is printed as a range: 4 of `3 to 4 days`. Null if it is not a range.",
      ),
    counts: z
      .enum(["DAYS", "HOURS"])
      .describe("Whether the end is that of a calendar day, or so many hours after making."),
    purpose,
    lastDay: day("The last day, if the session's start was given.").nullable(),
    keepUntil: instant("The last moment, if the session's start was given.").nullable(),
    container: text("The container.").nullable(),
    condition: text("It holds only then.").nullable(),
    basis: list(basisSchema, "All that was weighed, first what holds in the reader's region; the strictest decides."),
    limitedBy: namedThingSchema.nullable().describe("The part that decides, if it is not the subject itself."),
    scope: z
      .object({
        asked: text("The region that the reader asked for. Null if the reader named none.").nullable(),
        used: text("The region whose rules were used."),
        reach: z
          .enum(["REGION", "REGION_NOT_GIVEN", "REGION_WITHOUT_RULE", "OTHER_AUDIENCE"])
          .describe("How the two belong together."),
        whose: regionOwnerSchema
          .nullable()
          .describe(
            "Who named the region whose rules were used. Null if nobody did; the strictest rules of all regions were used then.",
          ),
      })
      .nullable()
      .describe("Whose published rules or figures were used. Null if only the writer's own figure was used."),
    tooLateFor: list(namedThingSchema, "Meals planned for later than it keeps, by the hour at which they are eaten."),
    advice: texts("What to do, in sentences."),
  }),
);

export const storageSchema = named(
  "Storage",
  "How long every component, meal and food of a plan keeps.",
  z.object({
    guidance: list(guidanceSchema, "Where it is best kept first."),
    unknown: list(
      z.object({ subject: namedThingSchema, part: namedThingSchema.describe("The part that is not known.") }),
      "How long these keep is not known.",
    ),
    warnings: list(warningSchema, "What the reader should know beside it."),
  }),
);
type StorageJson = Json<typeof storageSchema>;

const basisJson = (basis: Basis, things: ThingsOfPlan): Json<typeof basisSchema> => ({
  of: things.named(basis.of),
  source: basis.source,
  sourced: basis.sourced,
  days: basis.days,
  daysFrom: basis.daysFrom,
  printed: basis.printed,
  purpose: basis.purpose,
  region: basis.region,
  temperature: basis.temperature,
  condition: basis.condition,
  byAnalogy: basis.byAnalogy,
  note: basis.note,
  decides: basis.decides,
});

const guidanceJson = (
  guidance: StorageGuidance,
  things: ThingsOfPlan,
  words: AdviceWords,
): Json<typeof guidanceSchema> => ({
  subject: things.named(guidance.subject),
  place: guidance.place,
  days: guidance.days,
  upToDays: guidance.upToDays,
  counts: guidance.counts,
  purpose: guidance.purpose,
  lastDay: guidance.lastDay,
  // With milliseconds, as every instant here.
  keepUntil: guidance.keepUntil && new Date(guidance.keepUntil).toISOString(),
  container: guidance.container,
  condition: guidance.condition,
  basis: guidance.basis.map((basis) => basisJson(basis, things)),
  limitedBy: guidance.limitedBy && things.named(guidance.limitedBy),
  scope: guidance.scope,
  tooLateFor: guidance.tooLateFor.map((meal) => things.named({ kind: "MEAL", slug: meal })),
  advice: adviceTexts(guidance.advice, words, guidance.tooLateFor),
});

export function* storageJsonInSlices(
  { guidance, unknown, warnings }: StorageAnswer,
  things: ThingsOfPlan,
): InSlices<StorageJson> {
  const words: AdviceWords = {
    words: wordsFor(things.reader.locale),
    meal: (slug) => things.meal(slug).title,
    component: (slug) => things.component(slug).title,
    food: (slug) => things.named({ kind: "FOOD", slug }).name,
    amount: (amount, slug) => showAmount(amount, things.component(slug), things.reader).text,
  };
  const names = warningNames([things.bundle], things.reader);
  const guided: StorageJson["guidance"][number][] = [];
  for (const each of guidance) {
    yield;
    guided.push(guidanceJson(each, things, words));
  }
  return {
    guidance: guided,
    unknown: unknown.map(({ subject, part }) => ({ subject: things.named(subject), part: things.named(part) })),
    warnings: yield* warningsJsonInSlices(warnings, words.words, names),
  };
}
