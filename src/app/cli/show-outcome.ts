import type { AskPerson } from "./ask-person.js";
import type { Outcome, ShownProblem } from "./outcome.js";
import { groupCautions } from "./group-cautions.js";
import { terminalLine } from "./terminal-line.js";

/** Where the texts of a command go. */
export interface Output {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** Whether standard error is a terminal, where a line can be drawn anew. */
  readonly isTerminal: boolean;
  /** Left out: nobody is there to be asked. */
  readonly ask?: AskPerson | null;
}

/** Shows an outcome: as one JSON object on standard output, or as lines. */
export function showOutcome(command: string, outcome: Outcome, asJson: boolean, { out, err }: Output): void {
  const { exit, problems = [], findings = [], result, said = [], notes = [] } = outcome;
  if (asJson) {
    out(`${JSON.stringify({ command, ok: exit === 0, exit, problems, findings, result })}\n`);
    return;
  }
  for (const problem of problems) err(`${line(problem, "")}\n`);
  for (const finding of groupCautions(findings))
    err(`${line(finding, finding.severity === "STOPS" ? "stops publishing: " : "look: ")}\n`);
  for (const note of notes) err(`${terminalLine(note)}\n`);
  for (const each of said) out(`${terminalLine(each)}\n`);
}

/** `file:line:column: what is wrong`, as editors and build servers know to follow. */
function line({ file, line: row, column, message }: ShownProblem, prefix: string): string {
  const where = file === null ? "" : `${[file, row, column].filter((part) => part !== null).join(":")}: `;
  return terminalLine(`${where}${prefix}${message}`);
}
