import { Fraction } from "fraction.js";
import { z } from "zod";
import { regionCode, regionInstead } from "../../../domain/model/region-codes.js";
import { foodSlug } from "../../../domain/model/open-table-slug.js";
import type { RationalText } from "../../../domain/model/amount.js";
import { codeFields } from "./code-schema.js";

/** Most entries of any one list, and letters of any one text. */
export const documentLimits = { entries: 300, words: 200, text: 4000 } as const;

/** Lower-case words joined by hyphens; the name things are known by. */
export const slugSchema = z
  .string()
  .max(80)
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, "lower-case letters and digits, words joined by hyphens")
  .meta({ description: "lower-case letters and digits, words joined by hyphens" });

/** Longest name of a food. */
const longestFoodName = 120;

const foodReferenceWords = {
  description: "slug or name of a food, or usda and its number in the open food table, such as usda 11233",
};

/** A food as a line names it: its slug, any of its names, or its number in the open food table, `usda 11233`. */
export const foodReferenceSchema = z
  .string()
  .trim()
  .min(1)
  .max(longestFoodName)
  .transform(foodSlug)
  .meta(foodReferenceWords);

/** A map by the foods that its keys name. */
export const byFoodSchema = <Value extends z.ZodType>(value: Value) =>
  z
    .record(z.string().min(1).max(longestFoodName).meta(foodReferenceWords), value)
    .superRefine((map, context) => {
      const seen = new Map<string, string>();
      for (const written of Object.keys(map)) {
        const food = foodSlug(written.trim());
        const before = seen.get(food);
        seen.set(food, written);
        if (before === undefined) continue;
        const params = { expected: `each food once; it is also named by "${before}"`, got: written };
        context.addIssue({ code: "custom", path: [written], params });
      }
    })
    .transform((map) => Object.fromEntries(Object.entries(map).map(([food, each]) => [foodSlug(food.trim()), each])));

/** A name of a step, a line or a route, inside its own document. */
export const nameSchema = z.string().min(1).max(documentLimits.words);
export const textSchema = z.string().min(1).max(documentLimits.text);

/** `$schema`: for the writer's editor. Nothing is fetched from it. */
export const schemaAddress = textSchema
  .meta({ description: "where an editor finds the schema of this document; a relative path will do" })
  .optional();

/** An amount as the writer writes it: `1 1/2 cups`, `2-3 cloves`. JSON may give a bare number. */
export const amountSchema = z.union([z.string().min(1).max(documentLimits.words), z.number().transform(String)]);

/** A finite decimal number with a point; text, since the reader of YAML leaves numbers alone. */
const decimal = z.union([
  z.number(),
  z
    .string()
    .regex(/^-?\d+(\.\d+)?(e[+-]?\d+)?$/i, "a number, with a point before its decimals")
    .transform(Number),
]);

export const numberSchema = (min: number, max: number) => decimal.pipe(z.number().min(min).max(max));
export const wholeNumberSchema = (min: number, max: number) => decimal.pipe(z.number().int().min(min).max(max));

export const listSchema = <T extends z.ZodType>(item: T) => z.array(item).max(documentLimits.entries);

/** BCP 47, the plain part of it: language, script, region. */
export const localeSchema = z
  .string()
  .regex(/^[a-z]{2,3}(-[A-Z][a-z]{3})?(-([A-Z]{2}|\d{3}))?$/, "a language tag such as en, en-GB or de")
  .meta({ description: "a language tag such as en, en-GB or de" })
  .register(codeFields, { list: "language" });

/** An assigned or user-assigned ISO 3166-1 code, or a part of such a country: `GB`, `US-WA`. */
export const regionSchema = z
  .string()
  .max(documentLimits.words)
  .meta({ description: "an ISO 3166 code, such as GB or US-WA", pattern: "^[A-Za-z]{2}(-[A-Za-z0-9]{1,3})?$" })
  .transform((written, context): string => {
    const code = regionCode(written);
    if (code !== null) return code;
    context.issues.push({ code: "custom", input: written, params: { expected: regionInstead(written), got: written } });
    return z.NEVER;
  });

const percent = /^(\d{1,3}(?:\.\d{1,4})?)\s*%$/;

/** A share of a whole: `40 %` is `"2/5"`. From 0 % to 100 %. */
export const percentSchema = z
  .string()
  .meta({ description: "a share from 0 % to 100 %, such as 40 %" })
  .transform((written, context): RationalText => {
    const share = percent.exec(written.trim())?.[1];
    if (share !== undefined && Number(share) <= 100) return new Fraction(share).div(100).toFraction();
    context.issues.push({
      code: "custom",
      input: written,
      params: { expected: "a share from 0 % to 100 %, such as 40 %", got: written },
    });
    return z.NEVER;
  });

/** An hour of the day on a clock of 24 hours: `7:30` is `07:30`. */
export const hourSchema = z
  .string()
  .regex(/^([01]?\d|2[0-3]):[0-5]\d$/, "an hour from 00:00 to 23:59, such as 12:30")
  .meta({ description: "an hour from 00:00 to 23:59, such as 12:30" })
  .transform((written) => written.padStart(5, "0"));

/** Three letters of ISO 4217, such as `EUR`. */
export const currencySchema = z
  .string()
  .regex(/^[A-Z]{3}$/, "an ISO 4217 code, such as EUR")
  .meta({ description: "an ISO 4217 code, such as EUR" })
  .register(codeFields, { list: "currency" });

const hours =
  /^(?:(\d+(?:\.\d+)?)\s*(?:h|hr|hrs|hour|hours))?\s*(?:(\d+(?:\.\d+)?)\s*(?:m|min|mins|minute|minutes))?\s*(?:(\d+(?:\.\d+)?)\s*(?:s|sec|secs|second|seconds))?$/;

/** Minutes: a bare number, or `45 min`, `12 h`, `1 h 30 min`, `15 s`. At most ten days. */
export const minutesSchema = z
  .union([z.number(), z.string()])
  .meta({ description: "minutes, or text such as 1 h 30 min" })
  .transform((written, context): number => {
    if (typeof written === "number") return written;
    if (/^\d+(\.\d+)?$/.test(written.trim())) return Number(written);
    const parts = hours.exec(written.trim().toLowerCase());
    if (parts !== null && written.trim() !== "")
      return Number(parts[1] ?? 0) * 60 + Number(parts[2] ?? 0) + Number(parts[3] ?? 0) / 60;
    const params = { expected: "minutes, or text such as 1 h 30 min", got: written };
    context.issues.push({ code: "custom", input: written, params });
    return z.NEVER;
  })
  .pipe(z.number().min(0).max(14_400));

const degrees = /^(-?\d+(?:\.\d+)?)\s*(?:°\s*|deg(?:rees?)?\s+)?([cf])$/i;

/** Degrees Celsius: a bare number, or `200 C`, `400 °F`. Fahrenheit is turned into Celsius to a hundredth. */
export const celsiusSchema = z
  .union([z.number(), z.string()])
  .meta({ description: "degrees Celsius from -30 to 400, or text such as 200 C or 400 F" })
  .transform((written, context): number => {
    if (typeof written === "number") return written;
    if (/^-?\d+(\.\d+)?$/.test(written.trim())) return Number(written);
    const [, value, scale] = degrees.exec(written.trim()) ?? [];
    if (value !== undefined)
      return scale?.toLowerCase() === "c" ? Number(value) : Math.round(((Number(value) - 32) * 500) / 9) / 100;
    const params = { expected: "degrees Celsius, or text such as 200 C or 400 F", got: written };
    context.issues.push({ code: "custom", input: written, params });
    return z.NEVER;
  })
  .pipe(z.number().min(-30).max(400));

const dayRange = /^(\d+(?:\.\d+)?)(?:\s*(?:-|–|to)\s*(\d+(?:\.\d+)?))?\s*(?:d|days?)?$/i;

/** Days: a number, or `4 days`. Of a range such as `3-5` the shorter counts. */
export const daysSchema = z
  .union([z.number(), z.string()])
  .meta({ description: "days, or text such as 4 days; of a range such as 3-5 the shorter counts" })
  .transform((written, context): number => {
    if (typeof written === "number") return written;
    const [, from, to = from] = dayRange.exec(written.trim()) ?? [];
    if (from !== undefined && Number(to) >= Number(from)) return Number(from);
    const params = { expected: "days, or a range such as 3-5 with the shorter first", got: written };
    context.issues.push({ code: "custom", input: written, params });
    return z.NEVER;
  })
  .pipe(z.number().min(0).max(3650));
