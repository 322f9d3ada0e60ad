import { limits } from "../../domain/engine-limits.js";
import type { TranslatedThing } from "../../domain/model/translation.js";
import type { Problem } from "../../domain/problem.js";
import { draftKinds } from "./save-documents.js";
import { referencedSlugs } from "../../imports/documents/referenced-slugs.js";
import { placedProblem } from "../../imports/documents/yaml/placed-problem.js";
import {
  readDocumentsInSlices,
  type DocumentsRead,
  type ReadDocument,
} from "../../imports/documents/read-documents.js";
import { splitDocuments, type DocumentPiece } from "../../imports/documents/yaml/split-documents.js";
import { mostProblems } from "../../domain/first-problems.js";
import { FileBeyondLimits } from "../../imports/tables/read-table.js";
import { tableText, unreadable } from "../../imports/tables/table-text.js";
import { placedInFile, type DraftRow, type DraftRows } from "./draft-row.js";
import { ownershipProblems } from "./document-ownership.js";
import { runInSlices, type Sliced } from "../time-slices.js";
import type { RunningImport } from "../imports/running-import.js";

/** The most documents of one file, and levels of components that build on one another: the file is gone through once for each. */
const mostDocuments = 50_000;
const mostLevels = limits.components;

/** What is remembered of a document between two passes over its file. */
interface Entry {
  readonly line: number;
  /** "component boiled-barley"; null: it is no document that could be saved. */
  readonly name: string | null;
  readonly components: readonly string[];
  /** What it is a translation of. */
  readonly translates?: TranslatedThing["kind"];
  level: number;
}

/**
 * The documents of a file, components before what builds on them, translations behind what they translate. The file is gone through once for each level of components
 * that build on one another, so memory holds no more than its names. @throws FileBeyondLimits
 */
export async function documentRows(deps: Sliced, job: RunningImport, publisher: string): Promise<DraftRows> {
  const entries: Entry[] = [];
  for await (const piece of piecesOf(job)) {
    if (entries.length >= mostDocuments) {
      const size = { what: "documents", size: entries.length + 1, limit: mostDocuments };
      throw new FileBeyondLimits({ code: "TOO_LARGE", path: ["file"], ...size });
    }
    entries.push(entryOf(await readPiece(deps, piece, job.fileName, publisher), piece.line));
  }
  const levels = arrange(entries);
  const taken = new Set(entries.map(({ level }) => level));
  const last = new Map(entries.flatMap(({ name, line }) => (name === null ? [] : [[name, line] as const])));
  return async function* rows() {
    for (let level = 0; level < levels; level += 1) {
      if (!taken.has(level)) continue;
      let at = 0;
      for await (const piece of piecesOf(job)) {
        const entry = entries[at];
        at += 1;
        if (entry?.level !== level) continue;
        const isLast = entry.name === null || last.get(entry.name) === entry.line;
        yield rowOf(await readPiece(deps, piece, job.fileName, publisher), piece, isLast);
      }
    }
  };
}

const piecesOf = ({ bytes }: RunningImport): AsyncGenerator<DocumentPiece> => splitDocuments(tableText(bytes()));

interface PieceRead {
  readonly read: DocumentsRead;
  readonly problems: readonly Problem[];
}

async function readPiece(
  deps: Sliced,
  { text, line }: DocumentPiece,
  fileName: string,
  publisher: string,
): Promise<PieceRead> {
  if (text.includes(unreadable)) return refused([{ code: "NOT_TEXT", path: [], encoding: "UTF-8" }]);
  const read = await runInSlices(deps, (work) => readDocumentsInSlices(text, fileName, mostProblems, work));
  const problems = [...read.problems.map(placedProblem), ...ownershipProblems(read.documents, publisher, new Set())];
  for (const { document, place } of read.documents) {
    // What readers see of a publisher is said by a person, not by a feed.
    if (document.kind === "publisher")
      problems.push({
        code: "BAD_SHAPE",
        path: ["kind"],
        expected: "component | food | packs | plan | translation",
        got: "publisher",
        place: { file: fileName, ...place(["kind"], "VALUE") },
      });
  }
  // A mark that only this reader knows would make two of what the file says is one.
  if (problems.length === 0 && read.documents.length !== 1) {
    problems.push({ code: "BAD_SHAPE", path: [], expected: "one document", got: `${read.documents.length} documents` });
  }
  return { read, problems: problems.map((problem) => placedInFile(problem, line)) };
}

const refused = (problems: readonly Problem[]): PieceRead => ({
  read: { documents: [], faulty: [], problems: [], count: 1 },
  problems,
});

const nameOf = ({ document }: ReadDocument): string => `${document.kind} ${document.slug}`;

function entryOf({ read, problems }: PieceRead, line: number): Entry {
  const [only] = read.documents;
  if (only === undefined || problems.length > 0) return { line, name: null, components: [], level: 0 };
  const { document } = only;
  return {
    ...{ line, name: nameOf(only), components: referencedSlugs([document]).components, level: 0 },
    ...(document.kind === "translation" && { translates: document.of.kind }),
  };
}

/** Gives every document its level, and answers how many there are. Components in a circle, or built on more than may be, come last; the check refuses them. */
function arrange(entries: readonly Entry[]): number {
  const components = entries.filter(({ name }) => name?.startsWith("component ") === true);
  for (const entry of entries) if (entry.name?.startsWith("packs ") === true) entry.level = 1;
  let waiting = components;
  let level = 1;
  for (; waiting.length > 0; level += 1) {
    const names = new Set(waiting.map(({ name }) => name));
    const ready = waiting.filter((each) => !each.components.some((slug) => names.has(`component ${slug}`)));
    const goesOn = ready.length > 0 && level < mostLevels;
    for (const entry of goesOn ? ready : waiting) entry.level = level;
    waiting = goesOn ? waiting.filter(({ level: given }) => given === 0) : [];
  }
  // A plan is published with the translations of its components, and its own are checked against it.
  for (const entry of entries) {
    if (entry.translates === "COMPONENT") entry.level = level;
    if (entry.name?.startsWith("plan ") === true) entry.level = level + 1;
    if (entry.translates === "PLAN") entry.level = level + 2;
  }
  return level + 3;
}

function rowOf({ read, problems }: PieceRead, { line, text }: DocumentPiece, isLast: boolean): DraftRow {
  const row = { line, part: 0, raw: text };
  const [only] = read.documents;
  if (problems.length > 0 || only === undefined) {
    const named = [...read.faulty, ...read.documents.map(({ document }) => document)];
    const component = named.find(({ kind }) => kind === "component")?.slug ?? null;
    return { ...row, state: { kind: "BAD", problems, offer: null, component } };
  }
  if (!isLast) return { ...row, state: { kind: "REPEATED" } };
  const { document } = only;
  const draft = document.kind === "publisher" ? "COMPONENT" : draftKinds[document.kind];
  return {
    ...row,
    state: { kind: "TEXT", draft, slug: document.slug, text: only.text, firstLine: line, offer: null, read: only },
  };
}
