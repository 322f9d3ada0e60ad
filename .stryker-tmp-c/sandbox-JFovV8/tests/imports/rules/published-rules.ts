// @ts-nocheck
import { readFileSync } from "node:fs";
import type { RuleSet } from "../../../src/domain/plan/rule-set.js";
import { readRules } from "../../../src/imports/rules/read-rules.js";

export const ruleFiles = ["food-safety.yaml", "cautions.yaml", "allergens.yaml", "rule-set.yaml"].map((name) => ({
  name,
  text: readFileSync(new URL(`../../../seeds/rules/${name}`, import.meta.url), "utf8"),
}));

const read = readRules(ruleFiles);
if (read.rules === null) throw new Error(`the published rules are not in order: ${JSON.stringify(read.problems)}`);

/** The rules that come with the program, read as it reads them. */
export const publishedRules: RuleSet = read.rules;
