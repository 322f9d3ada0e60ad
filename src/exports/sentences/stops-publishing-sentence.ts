import type { FormProblem, KeepingProblem } from "../../domain/problem.js";
import { wordsFor } from "../words/words-for.js";

const { days, hours, places } = wordsFor("en");

const tenths = (value: number): number => Number(value.toFixed(1));

const length = (count: number): string =>
  count < 1 ? hours({ count: tenths(count * 24) }) : days({ count: tenths(count) });

/** What stops publishing beside a claim, and what would mend it: the same beside a draft and when publishing is refused. */
export function stopsPublishingSentence(
  problem: FormProblem | KeepingProblem,
  name: (kind: "components" | "foods", slug: string) => string = (_, slug) => slug,
): string {
  switch (problem.code) {
    case "KEPT_BEYOND_RULES":
      return (
        `"${name("components", problem.subject)}" is said to keep ${length(problem.days)} ${places[problem.at]}. No published rule for the class` +
        ` "${problem.keepsAs}" allows more than ${length(problem.most)} (${problem.rule}). Give fewer days, or another class if it is none of that.`
      );
    case "NEEDS_THE_COLD":
      return (
        `"${name("components", problem.subject)}" is said to keep ${length(problem.days)} at room temperature, and food of the class "${problem.keepsAs}"` +
        ` needs the cold. Keep it in the fridge, or name another class if it is none of that.`
      );
    case "FORM_UNKNOWN": {
      const known = problem.known.map((form) => `"${form}"`).join(", ");
      return (
        `Nothing is known of "${name("foods", problem.food)}" in the form "${problem.form}".` +
        (known === "" ? " It has facts of no form at all." : ` It has facts of: ${known}.`) +
        " Take one of them, leave the form out, or write it as the preparation."
      );
    }
  }
}
