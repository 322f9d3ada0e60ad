import { z } from "zod";
import { isRegionCode } from "../../domain/model/region-codes.js";
import type { Problem, Path } from "../../domain/problem.js";
import { nearestWords } from "../../domain/quantity/naming/nearest-words.js";
import { sourceSchema } from "../documents/schemas/shared-schemas.js";
import { nameSchema, numberSchema, slugSchema, textSchema } from "../documents/schemas/scalar-schemas.js";
import { shapeProblems } from "../documents/schemas/shape-problems.js";
import { wordSchema } from "../documents/schemas/word-schema.js";
import { sourceKindWords } from "../documents/schemas/shared-schemas.js";
import { readYaml, type Place, type YamlDocument } from "../documents/yaml/yaml-text.js";

/** A problem in a rule file, and the place to mend it. */
export interface RuleProblem extends Place {
  readonly file: string;
  readonly path: Path;
  readonly problem: Problem;
}

/** A document of rules: its value, and how to name a place in it. */
export interface RuleDocument<T> {
  readonly value: T;
  readonly at: (problem: Problem) => RuleProblem;
}

/** A published source and who issued it. */
const sourceHead = z.union([
  textSchema,
  z.strictObject({
    kind: wordSchema(sourceKindWords).default("PUBLISHED"),
    title: textSchema,
    section: textSchema.nullable().default(null),
    publisher: textSchema.optional(),
  }),
]);

/** What every rule file begins with. */
export const ruleHead = {
  id: slugSchema,
  version: nameSchema,
  date: z.iso.date(),
  sources: z.record(nameSchema, sourceHead).default({}),
};

/** Those whose rules hold in several countries. */
const unions: ReadonlySet<string> = new Set(["EU", "ANZ", "INT"]);
const issuer = "a country, a part of one (US-WA), EU, ANZ or INT";

/** Fields that dated rules of every kind share. */
export const datedFields = {
  region: z
    .string()
    .max(20)
    .refine((written) => unions.has(written) || isRegionCode(written), { params: { expected: issuer } })
    .meta({ description: issuer }),
  "from-date": z.iso.date().nullable().default(null),
  "to-date": z.iso.date().nullable().default(null),
  note: textSchema.nullable().default(null),
  source: sourceSchema,
};

export const smallNumber = numberSchema(0, 100_000);

/**
 * The documents of a text that are of the right shape, and what is wrong with the others: file, line and column.
 */
export function readRuleDocuments<S extends z.ZodType>(
  text: string,
  file: string,
  schema: S,
): {
  readonly documents: readonly RuleDocument<z.output<S>>[];
  readonly problems: readonly RuleProblem[];
  readonly count: number;
} {
  const yaml = readYaml(text);
  const broken = yaml.problems.map((found): RuleProblem => ({ ...found, file, path: found.problem.path }));
  const read = yaml.documents.map((document) => checkShape(document, file, schema));
  return {
    documents: read.flatMap(({ documents }) => documents),
    problems: [...broken, ...read.flatMap(({ problems }) => problems)],
    count: yaml.count,
  };
}

function checkShape<S extends z.ZodType>({ value, place }: YamlDocument, file: string, schema: S) {
  const at = (problem: Problem, look: "VALUE" | "KEY" = "VALUE"): RuleProblem => ({
    file,
    ...place(problem.path, look),
    path: problem.path,
    problem,
  });
  const checked = schema.safeParse(value);
  if (checked.success) return { documents: [{ value: checked.data, at }], problems: [] };
  const problems = shapeProblems(checked.error.issues, value, () => ["a key of this kind of rules"]);
  return { documents: [], problems: problems.map((found) => at(found.problem, found.at)) };
}

/** Problems for words that must be one of a closed list. */
export const unknownWord = (path: Path, got: string, known: readonly string[]): Problem => {
  const nearest = nearestWords(got, known);
  return { code: "BAD_SHAPE", path, expected: (nearest.length > 0 ? nearest : known).join(" | "), got };
};

/** Problems for ids that stand twice; the path leads to the second. */
export const duplicateIds = (list: string, ids: readonly string[], key = "id"): readonly Problem[] =>
  ids.flatMap((id, index) =>
    ids.indexOf(id) < index ? [{ code: "DUPLICATE" as const, path: [list, index, key], value: id }] : [],
  );
