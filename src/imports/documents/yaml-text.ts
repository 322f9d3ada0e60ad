import { Composer, isAlias, isMap, isScalar, isSeq, LineCounter, Parser } from "yaml";
import type { CST, Document, Node } from "yaml";
import type { Path, Problem } from "../../domain/problem.js";
import { documentParts } from "./document-parts.js";

/** A place in a text, both counted from 1. */
export interface Place {
  readonly line: number;
  readonly column: number;
}

/** One YAML or JSON document: its plain value, and where each part of it stands. */
export interface YamlDocument {
  readonly value: unknown;
  /** As it was written, with its remarks. */
  readonly text: string;
  /** Of the value at `path`, or of its key; the nearest part above it when that is missing. */
  readonly place: (path: Path, at: "VALUE" | "KEY") => Place;
}

export interface YamlProblem extends Place {
  readonly problem: Problem;
}

export interface YamlText {
  readonly documents: readonly YamlDocument[];
  readonly problems: readonly YamlProblem[];
  /** Documents found, good and bad; empty ones are none. */
  readonly count: number;
}

/** Far above what a writer needs, far below what hurts: a text outside is refused unread. */
export const yamlLimits = { characters: 2_000_000, nesting: 24, aliases: 100 } as const;

const start: Place = { line: 1, column: 1 };

/**
 * Reads YAML 1.2 (so also JSON). Only `null`, `true` and `false` get a type: every other scalar stays the
 * writer's own text, because `1.000` is a thousand in some languages and YAML would make it 1.
 */
export function readYaml(text: string): YamlText {
  if (text.length > yamlLimits.characters) return refused("characters", text.length, yamlLimits.characters, start);
  const lines = new LineCounter();
  const tokens = tokensOf(text, lines);
  if (tokens === null) return refused("nesting", yamlLimits.nesting + 1, yamlLimits.nesting, start);
  const placeAt = (offset: number): Place => {
    const { line, col } = lines.linePos(offset);
    return { line: Math.max(line, 1), column: Math.max(col, 1) };
  };
  // The composer calls itself for each level, so depth is measured on the parser's tokens first.
  const tooDeep = tokens.map(firstBelow).find((offset) => offset !== null);
  if (tooDeep !== undefined && tooDeep !== null)
    return refused("nesting", yamlLimits.nesting + 1, yamlLimits.nesting, placeAt(tooDeep));
  const composer = new Composer({ schema: "failsafe", customTags: ["null", "bool"] });
  const composed = [...composer.compose(tokens, true, text.length)];
  const isKept = (document: Document.Parsed): boolean => !isBlank(document) || document.errors.length > 0;
  const parts = documentParts(text, tokens, composed.map(isKept));
  const read = composed.filter(isKept).map((document, index) => readOne(document, parts[index] ?? text, placeAt));
  return {
    documents: read.flatMap(({ document }) => (document === null ? [] : [document])),
    problems: read.flatMap(({ problems }) => problems),
    count: read.length,
  };
}

/** null: lists in lists in lists on one line, so deep that the parser, which calls itself only there, ran out of stack. */
function tokensOf(text: string, lines: LineCounter): readonly CST.Token[] | null {
  try {
    return [...new Parser(lines.addNewLine).parse(text)];
  } catch (fault) {
    if (fault instanceof RangeError) return null;
    throw fault;
  }
}

/** Nothing between two `---`, or remarks alone. */
const isBlank = ({ contents }: Document.Parsed): boolean =>
  contents === null || (isScalar(contents) && contents.value === null);

const refused = (what: string, size: number, limit: number, place: Place): YamlText => ({
  documents: [],
  problems: [{ ...place, problem: { code: "TOO_LARGE", path: [], what, size, limit } }],
  count: 1,
});

function readOne(document: Document.Parsed, text: string, placeAt: (offset: number) => Place) {
  const faults = [...document.errors, ...document.warnings];
  if (faults.length > 0) {
    const problems = faults.map((fault): YamlProblem => {
      const place = placeAt(fault.pos[0]);
      const got = fault.code === "DUPLICATE_KEY" ? "the same key twice" : fault.message;
      return { ...place, problem: { code: "BAD_SHAPE", path: [], expected: "YAML or JSON", got } };
    });
    return { document: null, problems };
  }
  const place = (path: Path, at: "VALUE" | "KEY"): Place => placeAt(offsetOf(document, path, at));
  try {
    const value: unknown = document.toJS({ maxAliasCount: yamlLimits.aliases });
    return { document: { value, text, place }, problems: [] };
  } catch (fault) {
    // The one thing the library throws here: aliases that unfold into more than `maxAliasCount` nodes.
    if (!(fault instanceof ReferenceError)) throw fault;
    const limit = yamlLimits.aliases;
    const problem: Problem = { code: "TOO_LARGE", path: [], what: "aliases", size: limit + 1, limit };
    return { document: null, problems: [{ ...place([], "VALUE"), problem }] };
  }
}

/** Offset of the first token nested deeper than the limit, or null. */
function firstBelow(root: CST.Token): number | null {
  const open: { readonly token: CST.Token; readonly depth: number }[] = [{ token: root, depth: 0 }];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const { token, depth } = next;
    if (depth > yamlLimits.nesting) return "offset" in token ? token.offset : 0;
    const below = "items" in token ? token.items.flatMap(({ key, value }) => [key, value]) : [];
    const content = token.type === "document" ? [token.value] : [];
    const grows = "items" in token ? depth + 1 : depth;
    for (const each of [...below, ...content])
      if (each !== null && each !== undefined) open.push({ token: each, depth: grows });
  }
  return null;
}

function offsetOf(document: Document.Parsed, path: Path, at: "VALUE" | "KEY"): number {
  let node: Node | null = document.contents;
  let offset = node?.range?.[0] ?? 0;
  for (const [index, segment] of path.entries()) {
    const inside: Node | null | undefined = isAlias(node) ? node.resolve(document) : node;
    const last = index === path.length - 1;
    if (isMap<Node, Node | null>(inside)) {
      const pair = inside.items.find(({ key }) => isScalar(key) && key.value === segment);
      if (pair === undefined) return offset;
      node = pair.value;
      offset = (last && at === "KEY" ? pair.key.range?.[0] : node?.range?.[0]) ?? pair.key.range?.[0] ?? offset;
    } else if (isSeq<Node>(inside) && typeof segment === "number") {
      const item = inside.items[segment];
      if (item === undefined) return offset;
      node = item;
      offset = node.range?.[0] ?? offset;
    } else return offset;
  }
  return offset;
}
