import { z } from "zod";
import type { RuleSet } from "../../domain/plan/compile/rule-set.js";
import type { Problem } from "../../domain/problem.js";
import { firstKeepingClasses } from "../../domain/storage/first-keeping-classes.js";
import { allergensSchema, type AllergensDocument } from "./allergens-schema.js";
import {
  cautionsSchema,
  foodSafetySchema,
  type CautionsDocument,
  type FoodSafetyDocument,
} from "./food-safety-schema.js";
import { keepingClassesSchema, type KeepingClassesDocument } from "./keeping-classes-schema.js";
import { readAllergens } from "./read-allergens.js";
import { readCautions, readFoodSafety } from "./read-food-safety.js";
import { readKeepingClasses } from "./read-keeping-classes.js";
import { ruleSetSchema, type RuleSetDocument } from "./rule-set-schema.js";
import { readRuleDocuments, type RuleDocument, type RuleProblem } from "./rule-texts.js";

interface RulesRead {
  /** null while there are problems: rules on which people lean are used whole or not at all. */
  readonly rules: RuleSet | null;
  readonly problems: readonly RuleProblem[];
  /** Documents found, good and bad. */
  readonly count: number;
}

const schema = z.discriminatedUnion("kind", [
  ruleSetSchema,
  keepingClassesSchema,
  foodSafetySchema,
  cautionsSchema,
  allergensSchema,
]);
type AnyRules = RuleSetDocument | KeepingClassesDocument | FoodSafetyDocument | CautionsDocument | AllergensDocument;

/**
 * Reads the published rules (`rule-set`, `food-safety`, `cautions` and `allergens`, one document of each, in any files).
 * `keeping-classes` may be left out, since the sets of release 0.1.0 had none. `name` only names the place of problems.
 */
export function readRules(files: readonly { readonly name: string; readonly text: string }[]): RulesRead {
  const read = files.map(({ name, text }) => readRuleDocuments(text, name, schema));
  const documents: readonly RuleDocument<AnyRules>[] = read.flatMap((file) => file.documents);
  const shape = read.flatMap(({ problems }) => problems);
  const count = read.reduce((sum, file) => sum + file.count, 0);
  const stop = (problems: readonly RuleProblem[]): RulesRead => ({ rules: null, problems, count });

  const head = only(documents, "rule-set");
  const safety = only(documents, "food-safety");
  const cautions = only(documents, "cautions");
  const allergens = only(documents, "allergens");
  const classed = only(documents, "keeping-classes");
  const missing = [
    ...missingOf(head, "rule-set"),
    ...(classed === undefined ? missingOf(classed, "keeping-classes") : []),
    ...missingOf(safety, "food-safety"),
    ...missingOf(cautions, "cautions"),
    ...missingOf(allergens, "allergens"),
  ];
  const name = files[0]?.name ?? "";
  const nowhere = missing.map((problem): RuleProblem => ({ file: name, line: 1, column: 1, path: [], problem }));
  if (missing.length > 0 || shape.length > 0 || !head || !safety || !cautions || !allergens)
    return stop([...shape, ...nowhere]);

  const { classes, problems: classFaults } = classed
    ? readKeepingClasses(classed.value)
    : { classes: firstKeepingClasses, problems: [] };
  const { keeping, handling, problems } = readFoodSafety(safety.value, classes);
  const told = readCautions(cautions.value, { rules: [...keeping, ...handling].map(({ id }) => id), classes });
  const lists = readAllergens(allergens.value);
  const faults = [
    ...classFaults.flatMap((problem) => classed?.at(problem) ?? []),
    ...problems.map((problem) => safety.at(problem)),
    ...told.problems.map((problem) => cautions.at(problem)),
    ...lists.problems.map((problem) => allergens.at(problem)),
  ];
  if (faults.length > 0) return stop(faults);
  const { id, version, date } = safety.value;
  const { code, title } = head.value;
  const rules: RuleSet = {
    code,
    title,
    inForceFrom: head.value["in-force-from"],
    safety: { id, version, date, classes, keeping, handling, cautions: told.cautions },
    allergens: lists.rules,
  };
  return { rules, problems: [], count };
}

/** The one document of a kind; null for none, undefined for several. */
function only<K extends AnyRules["kind"]>(documents: readonly RuleDocument<AnyRules>[], kind: K) {
  const found = documents.filter(
    (each): each is RuleDocument<Extract<AnyRules, { kind: K }>> => each.value.kind === kind,
  );
  const [first = null] = found;
  return found.length > 1 ? undefined : first;
}

const missingOf = (found: object | null | undefined, kind: string): readonly Problem[] =>
  found
    ? []
    : [
        {
          code: "BAD_SHAPE",
          path: [],
          expected: `one document with kind: ${kind}`,
          got: found === null ? "none" : "several",
        },
      ];
