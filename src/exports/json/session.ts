import { z } from "zod";
import type { Household } from "../../domain/model/household.js";
import type { ScaledPlan } from "../../domain/plan/scaled.js";
import { kitchenOf } from "../../domain/plan/session/session-input.js";
import { clearingUpMinutes, cooksForADay, sessionLength } from "../../domain/plan/session/session-length.js";
import { lateMeals } from "../../domain/plan/session/late-meals.js";
import { wholeDay, type DaySession } from "../../domain/plan/session/split-session.js";
import type { PrepSession } from "../../domain/prep-session/session.js";
import { criticalText } from "../sentences/session-text.js";
import { list, named, slug, text, texts, type Json } from "./named-schema.js";
import { namedThingSchema } from "./named-thing.js";
import { temperatureIn } from "../words/degree-text.js";
import { wordsFor } from "../words/words-for.js";
import type { Reader } from "../../domain/plan/plan-answer.js";

const wholeNumbers = (description: string) => z.array(z.number().int()).max(1_000).describe(description);

const temperatureSchema = named(
  "Temperature",
  "What an oven or a liquid is brought to.",
  z.object({
    value: z.number().describe("In degrees of `unit`."),
    unit: z.enum(["CELSIUS", "FAHRENHEIT"]).describe("The degrees."),
    text: text("Value and unit, such as `425 °F`.", 60),
  }),
);

export const sessionSchema = named(
  "PrepSession",
  "The work of a session, ordered to be done soonest, and the hands free as early as that allows. Minutes count from its start; those of the evening before are negative.",
  z.object({
    totalMinutes: z.number().describe("From the start to the last finish."),
    handsOnMinutes: z.number().describe("Work with the hands, on the day and the evening before."),
    handsFreeMinute: z.number().describe("When the last work with the hands ends."),
    longerThanPromised: z
      .number()
      .nullable()
      .describe(
        "The length its writer promises, in minutes, if the session takes longer. Null if it does not, or if nothing is promised.",
      ),
    moreThanADay: z
      .boolean()
      .describe("Whether the hands have more to do than a day holds: over six hours for each cook."),
    cooksForADay: z.number().int().min(1).describe("How many cooks would have six hours of work each at most."),
    lateMeals: list(
      z.object({
        meal: slug("Short name of the meal."),
        at: text("The hour its writer gives, `HH:MM`.", 5),
        readyAt: text(
          "When it is ready at the earliest, `HH:MM` on the clock of the session's place, reckoned from 09:00 without a start. Null if it is not ready before midnight.",
          5,
        ).nullable(),
      }),
      "Meals of its day whose writer gives an hour at which they cannot be ready.",
    ),
    clearingUpMinutes: z
      .number()
      .describe(
        "Minutes to wash up and wipe down at the end, not part of `totalMinutes`. A rule of thumb: 10, and 5 more for each hour of work with the hands, up to 45.",
      ),
    optimal: z.boolean().describe("No session is shorter."),
    lowerBoundMinutes: z.number().describe("No session can be shorter than this."),
    gap: z.number().describe("How far the session may be from the shortest: (total - bound) / bound."),
    assumedAppliances: texts("Appliances that steps use and the kitchen does not list: one of each was assumed."),
    eveningBefore: texts("Codes of the tasks of the evening before."),
    tasks: list(
      z.object({
        code: text("Code inside this session."),
        kind: z.enum(["STEP", "WASH"]).describe("A step of the plan, or washing a machine between two of them."),
        of: namedThingSchema.describe("What it belongs to."),
        step: slug("Code of the step."),
        text: text("What to do, in the writer's words."),
        attention: z.enum(["HANDS_ON", "UNATTENDED"]).describe("Whether it takes hands."),
        startMinute: z.number(),
        endMinute: z.number(),
        startsAt: text("Clock time with its offset, if the session's start was given.", 60).nullable(),
        endsAt: text("Clock time with its offset, if the session's start was given.", 60).nullable(),
        cooks: wholeNumbers("Numbers of the cooks, from 1."),
        appliance: text("The appliance.").nullable(),
        lanes: wholeNumbers("Which of that appliance, from 1: shelves, rings."),
        temperatureC: z.number().nullable().describe("Temperature in degrees Celsius."),
        temperature: temperatureSchema
          .nullable()
          .describe(
            "The same in the degrees of the reader's region; an oven's in Fahrenheit are the nearest mark on its dial.",
          ),
        load: z
          .object({ first: z.number().int(), last: z.number().int(), of: z.number().int() })
          .nullable()
          .describe("Which loads of how many. Null if it is done once."),
        eveningBefore: z.boolean().describe("Done the evening before."),
      }),
      "By start.",
    ),
    criticalPath: list(
      z.object({
        task: text("Code of the task."),
        because: z
          .enum(["BEGINNING", "PRECEDENCE", "HANDS", "APPLIANCE", "TEMPERATURE", "GREATEST_WAIT", "CHOICE"])
          .describe("What it waits for."),
        waitsFor: texts("Codes of the tasks it waits for."),
        text: text("The same as a sentence."),
      }),
      "From the start to the end: each task, and why it could not begin earlier.",
    ),
    order: list(
      z.object({
        before: text("Code of the earlier task."),
        after: text("Code of the later task."),
        minWait: z.number().describe("Minutes that must pass between them."),
        maxWait: z.number().nullable().describe("Minutes that may pass at most. Null if there is no limit."),
      }),
      "What must come before what.",
    ),
  }),
);

/** One of the sessions that a plan is made in. */
export const daySessionSchema = named(
  "DaySession",
  "One of the sessions that a plan is made in.",
  sessionSchema.extend({
    day: z.number().int().min(0).describe("Days after the first session, whose day is 0."),
    components: list(
      z.object({
        component: slug("Short name of the component."),
        batches: z.number().describe("Batches made in this session."),
        loads: z.number().int().min(0).describe("Pots or trays they are made in."),
      }),
      "What is made in it.",
    ),
  }),
);

/** For whom a session is. */
export interface SessionFor {
  readonly scaled: ScaledPlan;
  readonly household: Household;
  /** In whose language sentences are. */
  readonly reader: Pick<Reader, "degrees" | "locale">;
}

export const daySessionJson = (each: DaySession, asked: SessionFor): Json<typeof daySessionSchema> => ({
  ...timetableJson(each, asked),
  day: each.day,
  components: each.components.map(({ slug: component, batches, loads }) => ({ component, batches, loads })),
});

type SessionJson = Json<typeof sessionSchema>;

/** All of it in one session. */
export const sessionJson = (session: PrepSession, asked: SessionFor): SessionJson =>
  timetableJson(wholeDay(asked.scaled, session), asked);

export function timetableJson(each: DaySession, { scaled, household, reader }: SessionFor): SessionJson {
  const { session } = each;
  const words = wordsFor(reader.locale);
  const { promised, overDay } = sessionLength(session, scaled, kitchenOf(scaled.bundle.plan.kitchen, household).cooks);
  return {
    totalMinutes: session.totalMinutes,
    handsOnMinutes: session.handsOnMinutes,
    handsFreeMinute: session.handsFreeMinute,
    longerThanPromised: promised,
    moreThanADay: overDay,
    cooksForADay: cooksForADay(session),
    lateMeals: lateMeals(each, scaled, household),
    clearingUpMinutes: clearingUpMinutes(session),
    optimal: session.optimal,
    lowerBoundMinutes: session.lowerBoundMinutes,
    gap: session.gap,
    assumedAppliances: session.assumedAppliances,
    eveningBefore: session.eveningBefore,
    tasks: session.tasks.map((task) => ({
      code: task.id,
      kind: task.kind,
      of: { kind: task.of.kind, slug: task.of.slug, name: task.of.title },
      step: task.step,
      text: task.text,
      attention: task.attention,
      startMinute: task.startMinute,
      endMinute: task.endMinute,
      startsAt: task.startsAt,
      endsAt: task.endsAt,
      cooks: task.cooks,
      appliance: task.appliance,
      lanes: task.lanes,
      temperatureC: task.temperatureC,
      temperature: temperatureIn(task, reader.degrees),
      load: task.load,
      eveningBefore: task.eveningBefore,
    })),
    criticalPath: session.criticalPath.map((critical) => ({
      task: critical.task,
      because: critical.because.kind,
      waitsFor: critical.because.tasks,
      text: criticalText(critical, session, words),
    })),
    order: session.order.map(({ before, after, minWait, maxWait }) => ({ before, after, minWait, maxWait })),
  };
}
