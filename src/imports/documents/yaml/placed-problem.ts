import type { Problem } from "../../../domain/problem.js";
import type { DocumentProblem } from "../read-documents.js";

/** A problem that carries its own place: its path leads through the document there. */
export const placedProblem = ({ file, line, column, path, problem }: DocumentProblem): Problem => ({
  ...problem,
  path,
  place: { file, line, column },
});
