import { z } from "zod";
import { aisles } from "../../domain/model/aisles.js";
import { allergenCodes } from "../../domain/nutrition/allergen-codes.js";
import { listSchema, numberSchema, slugSchema, textSchema } from "../documents/schemas/scalar-schemas.js";
import { dimensionWords } from "../documents/schemas/food-schema.js";
import { wordSchema, yesNoSchema } from "../documents/schemas/word-schema.js";

/** Languages in which every base food has a name. */
const baseLanguages = ["en", "de", "fr", "es", "pl"] as const;

/** What a base food is by nature: it decides what it fits and what is no ingredient of it. */
const kindWords = {
  plant: "plant",
  "gluten-grain": "gluten grain",
  milk: "milk",
  egg: "egg",
  meat: "meat",
  fish: "fish",
  crustacean: "crustacean",
  mollusc: "mollusc",
  honey: "honey",
  made: "made",
} as const;

export type BaseKind = keyof typeof kindWords;

/** Measures a base food may have, which the five languages have words for (domain/quantity/units/unit-names.ts). */
const baseMeasures = [
  ...(["piece", "clove", "head", "bunch", "sprig", "stalk", "stick", "leaf", "handful", "slice", "rasher"] as const),
  ...(["fillet", "wedge", "ear", "knob", "cube", "ball", "sheet", "loaf", "pinch"] as const),
  ...(["tin", "jar", "packet", "bottle", "glass"] as const),
] as const;

const oneOf = (words: readonly string[]) =>
  wordSchema(Object.fromEntries(words.map((word) => [word, word.replaceAll("-", " ")])));

const allergens = listSchema(oneOf(allergenCodes)).default([]);
const fits = z.union([yesNoSchema, z.literal("unknown").transform(() => null)]);
const number = z
  .string()
  .regex(/^\d{1,5}$/, "a number")
  .transform(Number);

const ndbNoSchema = z.string().regex(/^\d{5}$/, "a number of five digits, such as 11124");

/** `5 d`: days of good quality, from memory. */
const daysSchema = z
  .string()
  .regex(/^[1-9]\d{0,2} d$/, "days, such as 5 d")
  .transform((written) => Number(written.replace(" d", "")));

/** `w3`: the third weight of its row in the open table. `20 g`, `200 ml`: from memory. */
const measureSchema = z
  .string()
  .regex(/^(w\d{1,3}|\d+(\.\d+)? (g|ml))$/, "w3, 20 g or 200 ml")
  .transform((written) => {
    const [amount = "", unit = ""] = written.split(" ");
    return unit === "" ? { weight: amount.slice(1) } : { amount: Number(amount), unit: unit === "g" ? "g" : "ml" };
  });

/** What one piece gives of a part: `juice: { gives: w3, of: "09152", after: [zest] }`. */
const partSchema = z.strictObject({
  gives: measureSchema,
  of: ndbNoSchema.optional(),
  after: listSchema(slugSchema).default([]),
  "keeps-as": slugSchema.optional(),
  source: z
    .string()
    .regex(/^.+ \/ .+$/, "a title and a place in it, such as `Handbook / page 3`")
    .transform((written) => {
      const [title = "", ...section] = written.split(" / ");
      return { kind: "PUBLISHED" as const, title, section: section.join(" / ") };
    })
    .optional(),
});

export type BasePart = z.output<typeof partSchema>;

/** One base food, by its slug in seeds/base/*.yaml; seeds/base/README.md explains each key. */
const baseFoodSchema = z.strictObject({
  usda: ndbNoSchema.nullable().default(null),
  names: z.strictObject({
    ...(Object.fromEntries(baseLanguages.map((tag) => [tag, textSchema])) as Record<
      (typeof baseLanguages)[number],
      typeof textSchema
    >),
    "en-US": textSchema.optional(),
  }),
  not: listSchema(textSchema).default([]),
  shares: listSchema(textSchema).default([]),
  aisle: oneOf(aisles),
  shop: wordSchema(dimensionWords),
  loose: yesNoSchema.default(false),
  is: wordSchema<BaseKind>(kindWords),
  diets: z.strictObject({ vegan: fits, vegetarian: fits, "gluten-free": fits }).optional(),
  contains: allergens,
  traces: allergens,
  unsure: allergens,
  stable: yesNoSchema.default(false),
  fsis: listSchema(number).default([]),
  "keeps-as": slugSchema.nullable().default(null),
  keeps: z.partialRecord(z.enum(["room", "fridge", "freezer"]), daysSchema).default({}),
  measures: z.partialRecord(z.enum(baseMeasures), measureSchema).default({}),
  parts: z.record(slugSchema, partSchema).default({}),
  edible: z
    .string()
    .regex(/^\d{1,3} %$/, "a share, such as 85 %")
    .transform((written) => Number(written.replace(" %", "")) / 100)
    .pipe(z.number().positive().max(1))
    .optional(),
  density: numberSchema(0.05, 3).optional(),
  cooked: z.strictObject({ as: slugSchema, gives: numberSchema(0.1, 20), source: slugSchema.optional() }).optional(),
  note: textSchema.optional(),
});

export const baseFoodsSchema = z.record(slugSchema, baseFoodSchema);

export type BaseFoodEntry = z.output<typeof baseFoodSchema>;
