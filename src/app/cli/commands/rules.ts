import { asking, withLocal, type AddCommand, type ServiceOptions } from "../command.js";
import { LoadRuleSetDocument } from "../generated/operations.js";
import { exitCodes, type Outcome, type ShownProblem } from "../outcome.js";
import { readFiles, type TextFile } from "../read-files.js";

export const addRules: AddCommand = (program, run) => {
  const rules = program.command("rules").description("manage published rules (operator only)");
  withLocal(rules.command("load"))
    .description("load published rules as a new set, all or nothing; services need no restart")
    .argument(
      "<files...>",
      "one document each of the kinds rule-set, keeping-classes, food-safety, cautions and allergens, in any files",
    )
    .action((files: string[], options: ServiceOptions) => run("rules load", options, () => load(files, options)));
};

async function load(names: readonly string[], options: ServiceOptions): Promise<Outcome> {
  const files = await readFiles(names);
  const { loadRuleSet } = await asking(options, (service) => service.ask(LoadRuleSetDocument, { input: { files } }));
  const { ruleSet, problems } = loadRuleSet;
  if (ruleSet === null)
    return { exit: exitCodes.problems, problems: problems.map((each) => inFile(each, files)), result: null };
  return {
    exit: exitCodes.ok,
    result: { ruleSet: { ...ruleSet } },
    said: [`Rule set ${ruleSet.code} is loaded, used from ${ruleSet.inForceFrom}.`],
  };
}

/** The path begins with the place of the file among the input. */
function inFile(problem: ShownProblem, files: readonly TextFile[]): ShownProblem {
  const [, list, index] = problem.path;
  return problem.file === null && list === "files" ? { ...problem, file: files[Number(index)]?.name ?? null } : problem;
}
