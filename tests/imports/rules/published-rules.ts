import { readFileSync } from "node:fs";
import type { RuleSet } from "../../../src/domain/plan/compile/rule-set.js";
import { readRules } from "../../../src/imports/rules/read-rules.js";

const names = ["food-safety.yaml", "cautions.yaml", "allergens.yaml", "rule-set.yaml"];

const filesIn = (folder: string, among: readonly string[]) =>
  among.map((name) => ({ name, text: readFileSync(new URL(`${folder}/${name}`, import.meta.url), "utf8") }));

export const ruleFiles = filesIn("../../../seeds/rules", [...names, "keeping-classes.yaml"]);

/** As they came with release 0.1.0, when the classes of food stood in the program. */
export const firstRuleFiles = filesIn("../../fixtures/rules-of-0.1.0", names);

const read = readRules(ruleFiles);
if (read.rules === null) throw new Error(`the published rules are not in order: ${JSON.stringify(read.problems)}`);

/** The rules that come with the program, read as it reads them. */
export const publishedRules: RuleSet = read.rules;
