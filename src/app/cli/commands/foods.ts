import { readEnvironment } from "../../setup/environment.js";
import { withJson, type AddCommand } from "../command.js";
import { countNoun } from "../count-noun.js";
import { exitCodes, usage, type Outcome } from "../outcome.js";
import { readFiles } from "../read-files.js";
import { shownProblem } from "../shown-problem.js";

export const addFoods: AddCommand = (program, run) => {
  const foods = program.command("foods").description("manage foods that all publishers share (operator only)");
  withJson(foods.command("load"))
    .description(
      "load an edition of the base foods into this machine's database, and list the plans it makes less safe",
    )
    .argument("[files...]", "a document `kind: base-foods` and its entries (default: the edition of this program)")
    .action((files: string[], options: { readonly json?: boolean }) => run("foods load", options, () => load(files)));
};

async function load(names: readonly string[]): Promise<Outcome> {
  const environment = readEnvironment();
  if (!environment.ok) throw usage(...environment.faults);
  const files = names.length === 0 ? [] : await readFiles(names);
  const { loadFoods } = await import("../../processes/load-foods.js");
  const { problems, edition, changed, lessSafePlans } = await loadFoods(environment.value, files);
  if (problems.length > 0)
    return {
      exit: exitCodes.problems,
      problems: problems.map(({ problem, file, line, column }) => ({ ...shownProblem(problem), file, line, column })),
      result: null,
    };
  if (changed === null)
    return {
      exit: exitCodes.ok,
      result: { edition, added: [], replaced: [], kept: [], lessSafePlans },
      said: [`The database has the edition ${edition ?? ""} already. Nothing changed.`],
    };
  const { added, replaced, kept } = changed;
  return {
    exit: exitCodes.ok,
    result: { edition, added, replaced, kept, lessSafePlans },
    said: [
      `Edition ${edition ?? ""} of the base foods is loaded: ${countNoun(added.length, "food")} added, ${String(replaced.length)} changed.`,
      ...listed("Yours stay as they are", kept),
      ...listed("Changed", replaced),
      ...listed("Published plans that became less safe", lessSafePlans),
    ],
  };
}

/** Most names that are printed; --json has all. */
const mostNames = 50;

const listed = (what: string, names: readonly string[]): readonly string[] =>
  names.length === 0
    ? []
    : [
        `${what}: ${names.slice(0, mostNames).join(", ")}${names.length > mostNames ? ` and ${String(names.length - mostNames)} more` : ""}.`,
      ];
