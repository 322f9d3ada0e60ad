import { z } from "zod";
import type { Dimension } from "../../../domain/model/amount.js";
import type { AllergenPresence, NutrientCode, TracesPresence } from "../../../domain/model/food.js";
import { currencyCodes } from "../../../domain/model/currency-codes.js";
import { nearestCodes } from "../../../domain/quantity/naming/nearest-words.js";
import { codeFields, codeSchema } from "./code-schema.js";
import {
  amountSchema,
  listSchema,
  localeSchema,
  nameSchema,
  schemaAddress,
  numberSchema,
  regionSchema,
  slugSchema,
  textSchema,
} from "./scalar-schemas.js";
import {
  densitiesSchema,
  keepingListSchema,
  measuredInSchema,
  ownMeasuresSchema,
  sourceSchema,
  sourcesSchema,
} from "./shared-schemas.js";
import { wordSchema, yesNoSchema } from "./word-schema.js";

export const dimensionWords = { MASS: "mass", VOLUME: "volume", COUNT: "count" } satisfies Record<Dimension, string>;

export const presenceWords = {
  CONTAINS: "contains",
  MAY_CONTAIN: "may contain",
  DOES_NOT_CONTAIN: "does not contain",
  UNKNOWN: "unknown",
} satisfies Record<AllergenPresence, string>;

const tracesWords = {
  MAY_CONTAIN: presenceWords.MAY_CONTAIN,
  DOES_NOT_CONTAIN: presenceWords.DOES_NOT_CONTAIN,
  UNKNOWN: presenceWords.UNKNOWN,
} satisfies Record<TracesPresence, string>;

/** The key of each nutrient in a document: its name and its unit. */
export const nutrientKeys = {
  energyKcal: "energy-kcal",
  proteinG: "protein-g",
  fatG: "fat-g",
  saturatedFatG: "saturated-fat-g",
  carbohydrateG: "carbohydrate-g",
  sugarsG: "sugars-g",
  fibreG: "fibre-g",
  sodiumMg: "sodium-mg",
  calciumMg: "calcium-mg",
  ironMg: "iron-mg",
  potassiumMg: "potassium-mg",
  vitaminCMg: "vitamin-c-mg",
  cholesterolMg: "cholesterol-mg",
  waterG: "water-g",
} as const satisfies Record<NutrientCode, string>;

type NutrientKey = (typeof nutrientKeys)[NutrientCode];

const nutrient = numberSchema(0, 100_000).optional();
const nutrientShape = Object.fromEntries(Object.values(nutrientKeys).map((key) => [key, nutrient])) as Record<
  NutrientKey,
  typeof nutrient
>;

/** `carrot`, or its singular and plural and other words for exactly the same food. */
const foodNameSchema = z.union([
  nameSchema,
  z.strictObject({
    one: nameSchema,
    many: nameSchema.optional(),
    counted: nameSchema
      .meta({ description: "what five and more take, where that is another form than many: Polish 5 jabłek" })
      .optional(),
    also: listSchema(nameSchema).default([]),
  }),
]);

const share = z.union([
  numberSchema(0.001, 1),
  z
    .string()
    .regex(/^\d+(\.\d+)?\s*%$/, "a share, such as 85 %")
    .transform((written) => Number(written.replace(/\s*%$/, "")) / 100)
    .pipe(z.number().min(0.001).max(1)),
]);

const fits = z.union([
  yesNoSchema,
  z
    .literal("unknown")
    .transform(() => null)
    .or(z.null()),
]);

/** `yes`, or who says so: `{ source: common practice }`. */
const singleIngredientSchema = z
  .union([yesNoSchema, z.strictObject({ source: sourceSchema })])
  .nullable()
  .default(null)
  .transform((written) => (written === true ? { source: "writer" } : written || null));

/** `yes`, or the smallest amount that is weighed out: `{ step: 25 g }`. */
const looseSchema = z
  .union([yesNoSchema, z.strictObject({ step: amountSchema })])
  .default(false)
  .transform((written) => (written === true ? { step: null } : written || null))
  .meta({ description: "sold as much as one asks for; content is then what the price is for, such as 1 kg" });

export const packSchema = z.strictObject({
  id: slugSchema,
  name: nameSchema,
  content: amountSchema,
  price: z
    .string()
    .regex(/^\d{1,9}(\.\d{1,4})? [A-Z]{3}$/, "an amount and a currency code, such as 1.25 XTS")
    .superRefine((price, context) => {
      const currency = price.split(" ")[1];
      // What is no price at all is said already.
      if (currency === undefined || !/^[A-Z]{3}$/.test(currency) || currencyCodes.includes(currency)) return;
      const nearest = nearestCodes(currency, currencyCodes);
      const offered = nearest.length === 0 ? "such as 1.25 XTS" : `the nearest is ${nearest.join(" or ")}`;
      const expected = `an amount and a currency code of ISO 4217; ${offered}`;
      context.addIssue({ code: "custom", params: { expected }, input: price });
    })
    .meta({ description: "an amount and a currency code, such as 1.25 XTS" })
    .nullable()
    .default(null),
  region: regionSchema.nullable().default(null),
  seen: z.iso.date(),
  source: sourceSchema,
  loose: looseSchema,
});

const nutrientsSchema = z
  .strictObject({ "per-100g": z.strictObject(nutrientShape), source: sourceSchema })
  .nullable()
  .default(null);

const foodFields = z.strictObject({
  $schema: schemaAddress,
  kind: z.literal("food"),
  slug: slugSchema,
  extends: slugSchema.nullable().default(null).meta({
    description: "slug of a food that all publishers share: what this document does not say is taken from there",
  }),
  "same-ingredients": yesNoSchema.default(false).meta({
    description: "yes: made of the same as the food it extends, so what is not in that is not in this one either",
  }),
  names: z.record(localeSchema, foodNameSchema).default({}),
  aisle: codeSchema("aisle").optional(),
  "shopped-by": wordSchema(dimensionWords).optional(),
  usda: z
    .string()
    .regex(/^\d{5}$/, "a number of five digits, such as 11124")
    .register(codeFields, { list: "usda-number" })
    .nullable()
    .default(null),
  locale: localeSchema.default("en"),
  "measured-in": measuredInSchema.default("METRIC"),
  sources: sourcesSchema,
  densities: densitiesSchema,
  measures: ownMeasuresSchema,
  parts: listSchema(
    z.strictObject({
      name: slugSchema,
      "per-piece": amountSchema,
      after: listSchema(slugSchema).default([]),
      "keeps-as": codeSchema("keeping-class").nullable().default(null),
      keeping: keepingListSchema,
      nutrients: nutrientsSchema,
      source: sourceSchema,
    }),
  ).default([]),
  edible: listSchema(
    z.strictObject({ form: textSchema.nullable().default(null), share, source: sourceSchema }),
  ).default([]),
  yields: listSchema(
    z.strictObject({ food: slugSchema, "grams-per-gram": numberSchema(0.001, 1000), source: sourceSchema }),
  ).default([]),
  allergens: listSchema(
    z.strictObject({
      code: codeSchema("allergen"),
      presence: wordSchema(presenceWords),
      traces: wordSchema(tracesWords).optional(),
      source: sourceSchema,
    }),
  ).default([]),
  "single-ingredient": singleIngredientSchema,
  diets: listSchema(z.strictObject({ diet: codeSchema("diet"), fits, source: sourceSchema })).default([]),
  nutrients: nutrientsSchema,
  "keeps-as": codeSchema("keeping-class").nullable().default(null),
  keeping: keepingListSchema,
  "shelf-stable": yesNoSchema.default(false),
  packs: listSchema(packSchema).default([]),
  "always-there": yesNoSchema.optional(),
});

type Written = Partial<z.output<typeof foodFields>>;

/** What a food that builds on no other has to say itself. */
const wholeSchema = z.check<z.output<typeof foodFields>>((context) => {
  // It may be anything at all, since it is looked at whatever else is wrong.
  const food = context.value as Written | null;
  if (typeof food !== "object" || food === null || (food.extends ?? null) !== null) return;
  const refuse = (key: keyof Written, expected: string): void =>
    void context.issues.push({
      code: "custom",
      path: [key],
      params: { expected, got: "nothing" },
      input: food,
      continue: true,
    });
  if (Object.keys(food.names ?? { missing: "" }).length === 0) refuse("names", "a name in at least one language");
  if (food.aisle === undefined) refuse("aisle", "the section of the shop");
  if (food["shopped-by"] === undefined) refuse("shopped-by", Object.values(dimensionWords).join(" | "));
  if (food["same-ingredients"] === true) refuse("extends", "the food with the same ingredients");
});
// Beside every other fault, not after it is mended.
wholeSchema._zod.def.when = () => true;

/** A food: something bought. */
export const foodSchema = foodFields.check(wholeSchema);

export type FoodDocument = z.output<typeof foodSchema>;
