import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import type { RuleSet } from "../../domain/plan/compile/rule-set.js";
import { readRules } from "../../imports/rules/read-rules.js";
import { problemText } from "../../exports/sentences/problem-text.js";

/** The published rules that come with the program. Files that do not pass the checks are a fault of the program. */
export async function readRulesFolder(folder: string): Promise<RuleSet> {
  const names = (await readdir(folder)).filter((name) => name.endsWith(".yaml")).sort();
  const files = await Promise.all(
    names.map(async (name) => ({ name, text: await readFile(join(folder, name), "utf8") })),
  );
  const { rules, problems } = readRules(files);
  if (rules !== null) return rules;
  const [first] = problems;
  const where = first === undefined ? folder : `${first.file}:${first.line}: ${problemText(first.problem)}`;
  throw new Error(`the published rules are invalid: ${where}`);
}
