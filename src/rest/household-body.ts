import { z } from "zod";
import { named } from "../exports/json/named-schema.js";
import { measureSystems } from "../domain/model/amount.js";

/**
 * What is described holds the bounds of every text and number. What is read leaves them to whoever reads the household, who says in the reader's
 * language what is wrong, and all of it, as over GraphQL.
 */
const householdOf = (isDescribed: boolean) => {
  const text = (max: number, description: string) =>
    (isDescribed ? z.string().min(1).max(max) : z.string()).describe(description);
  const whole = (least: number, most: number, description: string) =>
    (isDescribed ? z.number().int().min(least).max(most) : z.number().int()).describe(description);
  /** A number, or the text of one, so that a third stays a third. */
  const quantity = z
    .union([z.string().min(1).max(40), isDescribed ? z.number().min(0).max(1e9) : z.number()])
    .describe("An amount such as `500`, `0.75` or `1/3`.")
    .transform((written) => (typeof written === "number" ? String(Number(written.toFixed(6))) : written));

  const many = <Item extends z.ZodType>(item: Item, description: string) =>
    z.array(item).max(200).describe(description).optional();

  return z.strictObject({
    measures: z.enum(measureSystems).describe("Measures to show amounts in. Default: those of the plan.").optional(),
    region: text(6, "ISO 3166 code of where the reader shops and eats.").optional(),
    currency: text(3, "ISO 4217 code to pay in.").optional(),
    locale: text(60, "BCP 47 tag of the reader's language.").optional(),
    diets: many(text(200, "Code of a diet."), "Diets to keep to. Repeating one changes nothing."),
    avoidAllergens: many(
      text(200, "Code of an allergen, or its name in any language; a group stands for all its members."),
      "Allergens that nobody at the table eats. Works like a diet: swaps that are known to be without them are taken, and what contains one, may contain traces, or is not known, is a warning.",
    ),
    dislikes: many(
      text(200, "A food: its slug, or its name in any language."),
      "Foods that nobody at the table likes. A swap or a route without them is taken where the writer offers one, optional lines of them are left out; where one stays, a warning names the meals.",
    ),
    eaters: many(
      z.strictObject({
        count: whole(1, 1_000_000, "How many people."),
        portion: quantity,
      }),
      "Who eats, if not everybody eats a whole serving. The counts add up to the servings, or are the servings where none are given.",
    ),
    swaps: many(
      z.strictObject({
        from: text(200, "Slug of the food as written, or `usda 11233`: its number in the open food table."),
        to: text(200, "Slug of the food to take."),
      }),
      "Foods to swap wherever a line offers it.",
    ),
    routes: z
      .strictObject({
        mode: z
          .enum(["AS_WRITTEN", "CHEAPEST", "LEAST_WORK"])
          .describe("For components that are not named.")
          .optional(),
        byName: many(
          z.strictObject({
            component: text(200, "Slug of the component."),
            route: text(200, "Name of one of its routes."),
          }),
          "Choices for single components.",
        ),
      })
      .describe("How to get components that can be made or bought.")
      .optional(),
    onHand: many(
      z.strictObject({
        food: text(
          200,
          "A food: its slug, its name in any language, or its number in the open food table as `usda 11233`. Give this or `component`.",
        ).optional(),
        component: text(200, "Slug of a component. Give this or `food`.").optional(),
        amount: quantity.describe(
          "A number beside `unit`, or without it an amount as people say it, in the language of `locale`: `500g`, `1/2 lb`, `half a bag`, `2 tins`.",
        ),
        unit: text(
          200,
          "Code of a unit, or `own:` and a measure of the food's own. Leave it out where `amount` says it.",
        ).optional(),
        useBy: z.iso.date().describe("Not counted for meals after this day.").optional(),
        asOtherForm: z.boolean().describe("Also take it for a food it can be turned into with more work.").optional(),
      }),
      "What is already in the kitchen. Lines that only differ in the amount are added up.",
    ),
    sessionStart: z
      .strictObject({
        instant: z.iso.datetime({ offset: true }).describe("A point in time.").optional(),
        local: text(60, "What the clock on the kitchen wall says, such as `2026-03-01T10:00`.").optional(),
        zone: text(100, "IANA name of the reader's time zone."),
      })
      .describe("When the prep session begins. Give `instant` or `local`.")
      .optional(),
    kitchen: z
      .strictObject({
        cooks: whole(1, 20, "How many cook together.").optional(),
        appliances: many(
          z.strictObject({
            appliance: text(80, "Code of an appliance that the plan uses, such as `oven-shelf`."),
            count: whole(0, 100, "How many of it there are."),
          }),
          "Appliances of which there are more or fewer than the plan assumes.",
        ),
      })
      .describe("The reader's own kitchen. Default: the one the plan assumes.")
      .optional(),
  });
};

/** A reader's side of a plan in a body: the same as the parameters of an address, in full. */
export const householdBody = named(
  "Household",
  "A reader's side of a plan, sent with the question and never stored. Leave out what does not matter.",
  householdOf(true),
);

export const readHouseholdBody = householdOf(false);
