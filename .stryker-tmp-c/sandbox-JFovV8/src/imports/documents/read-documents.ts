// @ts-nocheck
import type { Path, Problem } from "../../domain/problem.js";
import { allowedKeys } from "./allowed-keys.js";
import { documentKinds, documentSchemas } from "./document-kinds.js";
import type { AnyDocument, DocumentKind } from "./document-kinds.js";
import { nearestWords } from "./nearest-words.js";
import { shapeProblems, shown } from "./shape-problems.js";
import { readYaml } from "./yaml-text.js";
import type { Place, YamlDocument } from "./yaml-text.js";

/** A problem and the place to mend it. `path` leads through the document as written. */
export interface DocumentProblem extends Place {
  readonly file: string;
  readonly path: Path;
  readonly problem: Problem;
}

/** A document of the right shape; amounts and sources are still as written. */
export interface ReadDocument {
  readonly file: string;
  readonly document: AnyDocument;
  readonly place: YamlDocument["place"];
}

export interface DocumentsRead {
  readonly documents: readonly ReadDocument[];
  readonly problems: readonly DocumentProblem[];
  /** Documents found, good and bad. */
  readonly count: number;
}

/**
 * Reads foods, components and plans from a YAML or JSON text (several documents are parted by `---`).
 * `fileName` only names the place of problems. Next: `resolveDocuments`.
 */
export function readDocuments(text: string, fileName: string): DocumentsRead {
  const yaml = readYaml(text);
  const read = yaml.documents.map((document) => checkShape(document, fileName));
  const broken = yaml.problems.map((found): DocumentProblem => ({
    ...found,
    file: fileName,
    path: found.problem.path,
  }));
  return {
    documents: read.flatMap(({ documents }) => documents),
    problems: [...broken, ...read.flatMap(({ problems }) => problems)],
    count: yaml.count,
  };
}

/** The same for a value that was parsed already (a GraphQL input); it has no lines, so every place is 1:1. */
export const readDocumentValue = (value: unknown, fileName: string): DocumentsRead => ({
  ...checkShape({ value, place: () => ({ line: 1, column: 1 }) }, fileName),
  count: 1,
});

function checkShape({ value, place }: YamlDocument, file: string): Omit<DocumentsRead, "count"> {
  const at = (problem: Problem, look: "VALUE" | "KEY"): DocumentProblem => ({
    file,
    ...place(problem.path, look),
    path: problem.path,
    problem,
  });
  const kind = kindOf(value);
  if (typeof kind !== "string") return { documents: [], problems: [at(kind, "VALUE")] };
  const checked = documentSchemas[kind].safeParse(value);
  if (checked.success) return { documents: [{ file, document: checked.data, place }], problems: [] };
  const problems = checked.error.issues.flatMap((issue) =>
    shapeProblems(issue, value, (path) => allowedKeys(kind, path)),
  );
  return { documents: [], problems: problems.map((found) => at(found.problem, found.at)) };
}

function kindOf(value: unknown): DocumentKind | Problem {
  const known = documentKinds.join(" | ");
  if (typeof value !== "object" || value === null || Array.isArray(value))
    return { code: "BAD_SHAPE", path: [], expected: `a map with kind: ${known}`, got: shown(value) };
  const written: unknown = "kind" in value ? value.kind : undefined;
  const kind = documentKinds.find((each) => each === written);
  if (kind !== undefined) return kind;
  const nearest = typeof written === "string" ? nearestWords(written, documentKinds) : [];
  const expected = nearest.length > 0 ? nearest.join(" | ") : known;
  return { code: "BAD_SHAPE", path: ["kind"], expected, got: shown(written) };
}
