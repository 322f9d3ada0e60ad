import type { RuleSet } from "../../domain/plan/compile/rule-set.js";
import { failed, ok, type Problem } from "../../domain/problem.js";
import { readRules } from "../../imports/rules/read-rules.js";
import type { RuleProblem } from "../../imports/rules/rule-texts.js";
import { requireScope, type Caller } from "../access/actor.js";
import type { Deps, RuleSetSummary } from "../deps.js";
import { write } from "../write.js";

export type { RuleProblem } from "../../imports/rules/rule-texts.js";

interface RuleSetInput {
  /** One document each of the kinds rule-set, keeping-classes, food-safety, cautions and allergens, in any files. */
  readonly files: readonly { readonly name: string; readonly text: string }[];
  readonly idempotencyKey?: string | null | undefined;
}

type RuleSetLoaded =
  | {
      readonly ok: true;
      readonly summary: RuleSetSummary;
      /** false: it was loaded before, and says the same. */
      readonly added: boolean;
    }
  | { readonly ok: false; readonly problems: readonly RuleProblem[] };

/**
 * Loads published rules as a set of their own, whole or not at all; only the operator may. From its first day on every
 * process answers by it, without a restart. The sets before it stay.
 * @throws NotAllowed
 */
export async function loadRuleSet(deps: Deps, caller: Caller, input: RuleSetInput): Promise<RuleSetLoaded> {
  requireScope(caller.actor, "ADMIN", null);
  const { files, idempotencyKey } = input;
  const { rules, problems } = readRules(files);
  if (rules === null) return { ok: false, problems };
  const { code } = rules;
  const order = { caller, scope: "ADMIN", publisher: null, action: "LOAD_RULE_SET", idempotencyKey } as const;
  const written = await write(deps, { ...order, input: { files: input.files } }, async ({ data, clock }) => {
    const { summary, added, same } = await data.ruleSets.add(rules, clock());
    if (!same) return failed([{ code: "RULE_SET_EXISTS", path: ["code"], set: code }]);
    const subject = { kind: "RULE_SET", name: code, before: null, after: null } as const;
    return ok({ value: { id: summary.id, added }, subject });
  });
  if (!written.ok) return { ok: false, problems: written.problems.map((problem) => inFile(problem, files)) };
  const [summary] = await deps.data.ruleSets.byIds([written.value.id]);
  if (!summary) throw new Error(`rule set ${code} is gone`);
  return { ok: true, summary, added: written.value.added };
}

/** What is wrong with the set as a whole has no line of its own. */
const inFile = (problem: Problem, files: RuleSetInput["files"]): RuleProblem => ({
  file: files[0]?.name ?? "",
  line: 1,
  column: 1,
  path: problem.path,
  problem,
});

/** At the start of a process: the set that comes with the program, unless the database has one of its code. */
export async function loadShippedRules({ data, clock, log }: Deps, set: RuleSet): Promise<void> {
  const { summary, added, same } = await data.ruleSets.add(set, clock());
  const { code, inForceFrom } = summary;
  if (added) log.info({ code, inForceFrom }, "published rules loaded");
  else if (!same) log.warn({ code }, "the rules of this program differ from the loaded set of their code, which stays");
}
