import { madeProblems, mostProblems } from "../../domain/first-problems.js";
import type { Path, Problem } from "../../domain/problem.js";
import { runToEnd, unlimitedWork, type InSlices, type Work } from "../../domain/counted-work.js";
import { allowedKeys } from "./allowed-keys.js";
import { documentKinds, documentSchemas } from "./document-kinds.js";
import type { AnyDocument, DocumentKind } from "./document-kinds.js";
import { nearestWords } from "../../domain/quantity/naming/nearest-words.js";
import { problemMakers, shown } from "./schemas/shape-problems.js";
import { readYamlInSlices } from "./yaml/yaml-text.js";
import { writtenCodes, type WrittenCode } from "./checks/written-codes.js";
import type { Place, YamlDocument } from "./yaml/yaml-text.js";

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
  /** As it was written, with its remarks. */
  readonly text: string;
  readonly place: YamlDocument["place"];
  /** Where a path through the document stood before its text lines were settled; left out: where it stands. */
  readonly writtenAt?: (path: Path) => Path;
  /** The codes in it as they were written; `checkCodes` holds them against their lists. */
  readonly codes: readonly WrittenCode[];
}

export interface DocumentsRead {
  readonly documents: readonly ReadDocument[];
  /** Kind and slug of those whose shape is wrong, as far as they say; what names them is not at fault for that. */
  readonly faulty: readonly (Pick<ReadDocument, "file" | "place" | "codes"> & {
    readonly kind: DocumentKind;
    readonly slug: string;
  })[];
  readonly problems: readonly DocumentProblem[];
  /** Documents found, good and bad. */
  readonly count: number;
}

/**
 * Reads foods, components and plans from a YAML or JSON text (several documents are parted by `---`).
 * `fileName` only names the place of problems. Next: `resolveDocuments`.
 *
 * @param mostListed how many problems are listed; where there are more, the last says how many
 */
export const readDocuments = (text: string, fileName: string, mostListed = mostProblems): DocumentsRead =>
  runToEnd(readDocumentsInSlices(text, fileName, mostListed, unlimitedWork));

/** The same turn by turn. */
export function* readDocumentsInSlices(
  text: string,
  fileName: string,
  mostListed: number,
  work: Work,
): InSlices<DocumentsRead> {
  const yaml = yield* readYamlInSlices(text, work);
  const read: ShapeChecked[] = [];
  for (const document of yaml.documents) {
    yield;
    read.push(yield* checkShape(document, fileName));
  }
  const broken = yaml.problems.map((found) => (): DocumentProblem => ({
    ...found,
    file: fileName,
    path: found.problem.path,
  }));
  return {
    documents: read.flatMap(({ documents }) => documents),
    faulty: read.flatMap(({ faulty }) => faulty),
    problems: listed([...broken, ...read.flatMap(({ problems }) => problems)], fileName, mostListed),
    count: yaml.count,
  };
}

/** The same for a value that was parsed already (a GraphQL input); it has no lines, so every place is 1:1. */
export function readDocumentValue(value: unknown, fileName: string): DocumentsRead {
  const text = JSON.stringify(value);
  const { problems, ...read } = runToEnd(checkShape({ value, text, place: () => ({ line: 1, column: 1 }) }, fileName));
  return { ...read, problems: listed(problems, fileName), count: 1 };
}

type ProblemMaker = () => DocumentProblem;

const listed = (makers: readonly ProblemMaker[], file: string, most = mostProblems): readonly DocumentProblem[] =>
  madeProblems(makers, (problem) => ({ file, line: 1, column: 1, path: [], problem }), most);

type ShapeChecked = Pick<DocumentsRead, "documents" | "faulty"> & { readonly problems: readonly ProblemMaker[] };

function* checkShape({ value, text, place }: YamlDocument, file: string): InSlices<ShapeChecked> {
  const at = (problem: Problem, look: "VALUE" | "KEY"): DocumentProblem => ({
    file,
    ...place(problem.path, look),
    path: problem.path,
    problem,
  });
  const kind = kindOf(value);
  if (typeof kind !== "string") return { documents: [], faulty: [], problems: [() => at(kind, "VALUE")] };
  const checked = documentSchemas[kind].safeParse(value);
  yield;
  const codes = writtenCodes(kind, value);
  if (checked.success)
    return { documents: [{ file, document: checked.data, text, place, codes }], faulty: [], problems: [] };
  const makers = checked.error.issues.flatMap((issue) =>
    problemMakers(issue, value, (path) => allowedKeys(kind, path)),
  );
  const slug = slugOf(value);
  return {
    documents: [],
    faulty: slug === null ? [] : [{ kind, slug, file, place, codes }],
    problems: makers.map((make) => () => {
      const { problem, at: look } = make();
      return at(problem, look);
    }),
  };
}

const slugOf = (value: unknown): string | null =>
  typeof value === "object" && value !== null && "slug" in value && typeof value.slug === "string" ? value.slug : null;

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
