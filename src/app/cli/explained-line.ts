import type { LineTaken } from "../../imports/documents/lines/explain-lines.js";
import type { JsonValue } from "./outcome.js";

/** How a line that is written as text was read, as a service says it. */
export type ExplainedLine = {
  readonly written: string;
  readonly file: string | null;
  readonly line: number | null;
  readonly column: number | null;
  readonly takes: readonly LineTaken[];
  readonly mayName: readonly string[];
  readonly mayTake: readonly string[];
  readonly problem: { readonly message: string } | null;
};

/** For people: the line as written, and below it what it takes, in the words of a document's keys. */
export const explainedText = (lines: readonly ExplainedLine[]): readonly string[] =>
  lines.flatMap(({ written, file, line, takes, problem }) => [
    `${file ?? ""}:${String(line ?? "")}: ${written}`,
    ...(problem === null ? takes.map((item) => `    ${itemText(item)}`) : ["    not clear"]),
  ]);

/** For programs. */
export const explainedJson = (lines: readonly ExplainedLine[]): readonly JsonValue[] =>
  lines.map(({ problem, takes, ...line }) => ({
    ...line,
    takes: takes.map((item) => ({ ...item })),
    open: problem !== null,
  }));

function itemText(item: LineTaken): string {
  const { food, component, part, amount, each, isReady, form, preparation, size, plusMore, optional } = item;
  const said: readonly (readonly [string, string | null])[] = [
    ["food", food],
    ["component", component],
    ["part", part],
    ["amount", amount ?? "to taste"],
    ["each", each],
    ["measured", isReady ? "ready" : null],
    ["form", form],
    ["size", size],
    ["preparation", preparation],
    ["plus-more", plusMore ? "yes" : null],
    ["optional", optional ? "yes" : null],
  ];
  return said.flatMap(([key, value]) => (value === null ? [] : [`${key}: ${value}`])).join("; ");
}
