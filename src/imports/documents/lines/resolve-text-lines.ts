import type { Path } from "../../../domain/problem.js";
import { compileFoodNames, type FoodNames } from "../../../domain/quantity/food-name.js";
import { languageOf } from "../../../domain/quantity/reader-locale.js";
import { runToEnd, unlimitedWork, type InSlices, type Work } from "../../../domain/counted-work.js";
import type { AnyDocument } from "../document-kinds.js";
import { foodCalled, lineNames, type NamedComponent } from "./line-names.js";
import type { ReadDocument } from "../read-documents.js";
import { readTextLine, type TextLineReader } from "./read-text-line.js";
import { lineIds, stepLineIds } from "./read-lines.js";
import type { LineDocument, StepDocument } from "../schemas/line-schema.js";

/** What text lines may name. */
export interface LineThings {
  readonly foods: FoodNames;
  readonly components: readonly NamedComponent[];
}

/** Lines, and the steps that use them by the names of the lines. */
interface LinesAndSteps {
  readonly lines: LineDocument[];
  readonly steps: StepDocument[];
}

/** Lists of lines of a document, each with the way to it and the steps beside it. */
export function lineLists(document: AnyDocument): readonly (LinesAndSteps & { readonly path: Path })[] {
  switch (document.kind) {
    case "food":
    case "packs":
    case "publisher":
    case "translation":
      return [];
    case "component":
      return [
        { path: ["lines"], lines: document.lines, steps: document.steps },
        ...document.routes.map(({ lines, steps }, at) => ({ path: ["routes", at, "lines"], lines, steps })),
      ];
    case "plan":
      return document.meals.map(({ lines, steps }, at) => ({ path: ["meals", at, "lines"], lines, steps }));
  }
}

/** A line that was written as text and is not settled yet. */
const isText = ({ text, food, component, open }: LineDocument): boolean =>
  text !== undefined && food === undefined && component === undefined && open === undefined;

/** The lines of some documents that are written as text. */
export const textLinesOf = (documents: readonly AnyDocument[]): readonly string[] =>
  documents.flatMap((document) =>
    lineLists(document).flatMap(({ lines }) => lines.flatMap((line) => (isText(line) ? [line.text ?? ""] : []))),
  );

/** How many lines of one call get the nearest names: each look goes through all names there are. */
export const mostLooks = 20;

/** Characters of a text line that are read in one step. */
export const charactersInStep = 10;

/** The documents with those text lines settled that name one of these components; lines that name foods stay open. */
export const resolveComponentLines = (
  documents: readonly ReadDocument[],
  components: readonly Pick<NamedComponent, "slug" | "title">[],
): readonly ReadDocument[] => {
  const named = components.map(({ slug, title }) => ({ slug, title, measures: [], densities: [] }));
  return runToEnd(resolveTextLines(documents, { foods: compileFoodNames([]), components: named }, unlimitedWork));
};

/** The documents with every text line as the line it stands for, or open. Documents without any stay as they are. */
export function* resolveTextLines(
  documents: readonly ReadDocument[],
  { foods, components }: LineThings,
  work: Work,
): InSlices<readonly ReadDocument[]> {
  const languages = [
    ...new Set(documents.flatMap(({ document }) => ("locale" in document ? [languageOf(document.locale)] : []))),
  ];
  const names = yield* lineNames(foods, components, languages, work);
  if (!documents.some(({ document }) => isOpen(document, names))) return documents;
  const looks = { left: mostLooks };
  const settled: ReadDocument[] = [];
  for (const read of documents) {
    yield;
    settled.push(yield* settleDocument(read, { names, looks }, work));
  }
  return settled;
}

/** Whether some line is text, or it or a step names a food by something else than its slug. */
const isOpen = (document: AnyDocument, { foods }: FoodNames): boolean =>
  lineLists(document).some(
    ({ lines, steps }) =>
      lines.some((line) => isText(line) || foodsIn(line).some((food) => !foods.has(food))) || useOthers(steps, lines),
  );

function useOthers(steps: readonly StepDocument[], lines: readonly LineDocument[]): boolean {
  const ids = new Set(lineIds(lines));
  return steps.some(({ uses }) => uses.some((name) => !ids.has(name)));
}

const foodsIn = ({ food, swaps }: LineDocument): readonly string[] => [
  ...(food === undefined ? [] : [food]),
  ...swaps.map((swap) => swap.food),
];

/** The line with slugs in place of names; what is nobody's name stays, and is a problem of its own. */
function withSlugs(line: LineDocument, reader: TextLineReader): LineDocument {
  if (foodsIn(line).every((food) => reader.names.foods.has(food))) return line;
  const slugOf = (food: string): string => foodCalled(reader.names, food, reader) ?? food;
  const swaps = line.swaps.map((swap) => ({ ...swap, food: slugOf(swap.food) }));
  return { ...line, ...(line.food === undefined ? {} : { food: slugOf(line.food) }), swaps };
}

/**
 * Steps call a food as its line does: the one named "salt" is used as `salt`, whatever its slug. Answers the lines that they mean, by what
 * they say; no more names than there are lines, since each is looked for among all foods.
 */
function linesMeant(
  { steps, lines }: LinesAndSteps,
  ids: readonly string[],
  reader: TextLineReader,
): ReadonlyMap<string, string> {
  const known = new Set(ids);
  const others = new Set(steps.flatMap(({ uses }) => uses.filter((name) => !known.has(name))));
  const meant = new Map<string, string>();
  for (const name of [...others].slice(0, lines.length)) {
    const slug = foodCalled(reader.names, name, reader);
    if (slug !== null && known.has(slug)) meant.set(name, slug);
  }
  return meant;
}

function* settleDocument(
  read: ReadDocument,
  { names, looks }: { readonly names: TextLineReader["names"]; readonly looks: { left: number } },
  work: Work,
): InSlices<ReadDocument> {
  const { document } = read;
  if ((document.kind !== "component" && document.kind !== "plan") || !isOpen(document, names)) return read;
  const region = /-([A-Z]{2})$/.exec(document.locale)?.[1] ?? (document.kind === "plan" ? document.region : null);
  const reader = { locale: document.locale, measures: document["measured-in"], region, names, looks: looks.left };
  /** For each list that has grown, the place that each of its lines is written at. */
  const grown = new Map<string, readonly number[]>();
  const changed = new Map<readonly LineDocument[], readonly LineDocument[]>();
  for (const { path, lines } of lineLists(document)) {
    const places: number[] = [];
    const now: LineDocument[] = [];
    for (const [at, line] of lines.entries()) {
      const text = line.text ?? "";
      const made = isText(line) ? readTextLine(text, reader) : { lines: [withSlugs(line, reader)] };
      if (isText(line)) {
        work.step(1 + text.length / charactersInStep);
        yield;
      }
      for (const each of made.lines ?? [{ ...line, open: made.open }]) {
        now.push(each);
        places.push(at);
      }
    }
    if (now.length !== lines.length) grown.set(path.join("/"), places);
    changed.set(lines, now);
  }
  looks.left = reader.looks;
  const settled = <Part extends LinesAndSteps>(part: Part): Part => {
    const lines = [...(changed.get(part.lines) ?? part.lines)];
    const ids = stepLineIds(lines);
    if (ids === null) return { ...part, lines };
    const meant = linesMeant({ ...part, lines }, ids, reader);
    const steps = part.steps.map((step) => ({ ...step, uses: step.uses.map((name) => meant.get(name) ?? name) }));
    return { ...part, lines, steps };
  };
  return {
    ...read,
    document:
      document.kind === "plan"
        ? { ...document, meals: document.meals.map(settled) }
        : { ...settled(document), routes: document.routes.map(settled) },
    ...(grown.size === 0 ? {} : { writtenAt: (path: Path) => writtenPath(path, grown) }),
  };
}

/** A path into the lines as they were written. */
function writtenPath(path: Path, grown: ReadonlyMap<string, readonly number[]>): Path {
  const list = path.indexOf("lines");
  const at = path[list + 1];
  const places = list < 0 ? undefined : grown.get(path.slice(0, list + 1).join("/"));
  if (places === undefined || typeof at !== "number") return path;
  return [...path.slice(0, list + 1), places[at] ?? at, ...path.slice(list + 2)];
}
