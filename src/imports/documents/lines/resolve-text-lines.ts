import type { Path } from "../../../domain/problem.js";
import { compileFoodNames, type FoodNames } from "../../../domain/quantity/food-name.js";
import { languageOf } from "../../../domain/quantity/reader-locale.js";
import { runToEnd, unlimitedWork, type InSlices, type Work } from "../../../domain/counted-work.js";
import type { AnyDocument } from "../document-kinds.js";
import { foodCalled, lineNames, type NamedComponent } from "./line-names.js";
import type { ReadDocument } from "../read-documents.js";
import { readTextLine, type TextLineReader } from "./read-text-line.js";
import type { LineDocument } from "../schemas/line-schema.js";

/** What text lines may name. */
export interface LineThings {
  readonly foods: FoodNames;
  readonly components: readonly NamedComponent[];
}

/** Lists of lines of a document, each with the way to it. */
export function lineLists(
  document: AnyDocument,
): readonly { readonly path: Path; readonly lines: readonly LineDocument[] }[] {
  switch (document.kind) {
    case "food":
    case "packs":
    case "publisher":
    case "translation":
      return [];
    case "component":
      return [
        { path: ["lines"], lines: document.lines },
        ...document.routes.map(({ lines }, at) => ({ path: ["routes", at, "lines"], lines })),
      ];
    case "plan":
      return document.meals.map(({ lines }, at) => ({ path: ["meals", at, "lines"], lines }));
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

/** Whether some line is text, or names a food by something else than its slug. */
const isOpen = (document: AnyDocument, { foods }: FoodNames): boolean =>
  lineLists(document).some(({ lines }) =>
    lines.some((line) => isText(line) || foodsIn(line).some((food) => !foods.has(food))),
  );

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
  const linesNow = (lines: readonly LineDocument[]): LineDocument[] => [...(changed.get(lines) ?? lines)];
  return {
    ...read,
    document:
      document.kind === "plan"
        ? { ...document, meals: document.meals.map((meal) => ({ ...meal, lines: linesNow(meal.lines) })) }
        : {
            ...document,
            lines: linesNow(document.lines),
            routes: document.routes.map((route) => ({ ...route, lines: linesNow(route.lines) })),
          },
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
