import { failed, ok, type Path, type Problem, type Result } from "../../domain/problem.js";
import { mostProblems } from "../../domain/first-problems.js";
import { runToEnd, unlimitedWork, type InSlices, type Work } from "../../domain/counted-work.js";
import { readDocumentsInSlices, type DocumentsRead } from "../../imports/documents/read-documents.js";
import { yamlLimits } from "../../imports/documents/yaml/yaml-limits.js";

/** A text with one document or several. */
export interface GivenText {
  /** What problems call it, such as the name of a file. */
  readonly name: string;
  readonly text: string;
}

/** The most documents that are taken at once. */
const mostDocuments = yamlLimits.documents;

/** Reads all the texts. Problems of their documents are still inside; a result fails where there is nothing to read, or too much. */
export const readTexts = (texts: readonly GivenText[], path: Path): Result<DocumentsRead> =>
  runToEnd(readTextsInSlices(texts, path, unlimitedWork));

/** The same turn by turn. */
export function* readTextsInSlices(
  texts: readonly GivenText[],
  path: Path,
  work: Work,
): InSlices<Result<DocumentsRead>> {
  const tooMany = (size: number): Result<never> =>
    failed([{ code: "TOO_LARGE", path: [...path, "texts"], what: "documents", size, limit: mostDocuments }]);
  // Before any is read: a text may be a handful of bytes.
  if (texts.length > mostDocuments) return tooMany(texts.length);
  const read: DocumentsRead[] = [];
  let room = mostProblems;
  for (const { name, text } of texts) {
    const one = yield* readDocumentsInSlices(text, name, room, work);
    room = Math.max(0, room - one.problems.length);
    read.push(one);
    yield;
  }
  const blank = read.flatMap(({ count }, index): readonly Problem[] =>
    count > 0
      ? []
      : [{ code: "BAD_SHAPE", path: [...path, "texts", index, "text"], expected: "a document", got: "nothing" }],
  );
  if (texts.length === 0) {
    return failed([{ code: "BAD_SHAPE", path: [...path, "texts"], expected: "at least one text", got: "none" }]);
  }
  if (blank.length > 0) return failed(blank);
  const count = read.reduce((sum, each) => sum + each.count, 0);
  if (count > mostDocuments) return tooMany(count);
  return ok({
    documents: read.flatMap(({ documents }) => documents),
    faulty: read.flatMap(({ faulty }) => faulty),
    problems: read.flatMap(({ problems }) => problems),
    count,
  });
}
