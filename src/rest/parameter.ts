import { z } from "zod";
import type { Problem } from "../domain/problem.js";

/** Something a caller may say in an address or a header, for reading it and for describing it. */
export interface Parameter {
  readonly name: string;
  readonly in: "path" | "query" | "header";
  readonly description: string;
  /** Of one value. */
  readonly schema: z.ZodType;
  readonly required: boolean;
  /** May be given several times. */
  readonly repeats: boolean;
  readonly example?: string;
}

export const inPath = (
  name: string,
  description: string,
  schema: z.ZodType = z.string().min(1).max(200),
): Parameter => ({
  name,
  in: "path",
  description,
  schema,
  required: true,
  repeats: false,
});

export const inQuery = (
  name: string,
  description: string,
  schema: z.ZodType = z.string().max(200),
  more: Partial<Pick<Parameter, "repeats" | "required" | "example">> = {},
): Parameter => ({ name, in: "query", description, schema, required: false, repeats: false, ...more });

export const inHeader = (name: string, description: string, schema: z.ZodType): Parameter => ({
  ...{ name, in: "header", description, schema },
  ...{ required: false, repeats: false },
});

/** Of lists of plans. */
export const titleLocale = inQuery(
  "locale",
  "BCP 47 tag of the language that plans are to be titled in, where they are translated into it. Default: as each was written.",
  z.string().max(60),
  { example: "de-AT" },
);

/** What was asked in an address: values by name. What is left blank, as forms leave it, is not asked. */
export type Query = ReadonlyMap<string, readonly string[]>;

/** From names and values as they were sent. */
export function queryOf(sent: Iterable<readonly [string, string]>): Query {
  const query = new Map<string, string[]>();
  for (const [name, value] of sent) {
    if (value.trim() === "") continue;
    query.set(name, [...(query.get(name) ?? []), value.trim()]);
  }
  return query;
}

export function readQuery(url: string): Query {
  const at = url.indexOf("?");
  return queryOf(new URLSearchParams(at < 0 ? "" : url.slice(at)));
}

export const one = (query: Query, name: string): string | null => query.get(name)?.[0] ?? null;

const shortened = (value: string): string => (value.length > 60 ? `${value.slice(0, 59)}…` : value);

/** A parameter that cannot be read: what should stand there, and what does. */
export const badParameter = (name: string, expected: string, got: string): Problem => ({
  code: "BAD_SHAPE",
  path: [name],
  expected,
  got: shortened(got),
});

/** A whole number, or the problem that it is none. */
export function wholeNumber(query: Query, name: string, problems: Problem[]): number | null {
  const value = one(query, name);
  if (value === null) return null;
  if (/^\d{1,9}$/.test(value) && Number(value) > 0) return Number(value);
  problems.push(badParameter(name, "a whole number from 1", value));
  return null;
}

/** Schema of a parameter that `isYes` reads. */
export const yesOrNo = z.enum(["yes", "no"]);

/** Whether it says yes; left out, it says no. */
export function isYes(query: Query, name: string, problems: Problem[]): boolean {
  const value = one(query, name);
  if (value !== null && !yesOrNo.safeParse(value).success) problems.push(badParameter(name, "yes or no", value));
  return value === "yes";
}

/** Names nobody knows, and single values given twice. */
export function queryProblems(query: Query, parameters: readonly Parameter[]): readonly Problem[] {
  const known = parameters.filter((parameter) => parameter.in === "query");
  return [...query].flatMap(([name, values]): readonly Problem[] => {
    const parameter = known.find((each) => each.name === name);
    if (parameter === undefined) {
      const names = known.map((each) => each.name).join(", ");
      return [
        badParameter(shortened(name), names === "" ? "no parameters here" : `one of the parameters ${names}`, name),
      ];
    }
    return values.length > 1 && !parameter.repeats ? [badParameter(name, "one value", `${values.length} values`)] : [];
  });
}

/** Names of a parameter that may be repeated, or hold several with commas between them. @param most one more is read, so that it shows */
export const listed = (query: Query, name: string, most: number): readonly string[] =>
  (query.get(name) ?? [])
    .flatMap((value) => value.split(",", most + 1))
    .map((each) => each.trim())
    .filter((each) => each !== "");
