import { Composer, isScalar, LineCounter } from "yaml";
import type { CST, Document } from "yaml";
import type { Path, Problem } from "../../../domain/problem.js";
import { runToEnd, unlimitedWork, type InSlices, type Work } from "../../../domain/counted-work.js";
import { documentParts } from "../document-parts.js";
import { wrongKeys } from "./wrong-keys.js";
import { yamlLimits, type YamlLimit } from "./yaml-limits.js";
import { YamlPlaces } from "./yaml-places.js";
import { readTokens } from "./yaml-tokens.js";

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

interface YamlProblem extends Place {
  readonly problem: Problem;
}

interface YamlText {
  readonly documents: readonly YamlDocument[];
  readonly problems: readonly YamlProblem[];
  /** Documents found, good and bad; empty ones are none. */
  readonly count: number;
}

const start: Place = { line: 1, column: 1 };

/**
 * Reads YAML 1.2 (so also JSON). Only `null`, `true` and `false` get a type: every other scalar stays the
 * writer's own text, because `1.000` is a thousand in some languages and YAML would make it 1.
 */
export const readYaml = (text: string): YamlText => runToEnd(readYamlInSlices(text, unlimitedWork));

/** The same turn by turn. What the library does of one document in one piece is a turn: building its nodes, and its value. */
export function* readYamlInSlices(text: string, work: Work): InSlices<YamlText> {
  if (text.length > yamlLimits.characters) return refused("characters", start, text.length);
  const lines = new LineCounter();
  const counted = yield* readTokens(text, lines, work);
  const placeAt = (offset: number): Place => {
    const { line, col } = lines.linePos(offset);
    return { line: Math.max(line, 1), column: Math.max(col, 1) };
  };
  if (!counted.ok) return refused(counted.excess.what, placeAt(counted.excess.offset));
  const { tokens } = counted;
  // The composer calls itself for each level, so depth is measured on the parser's tokens first.
  const tooDeep = yield* firstBelow(tokens);
  if (tooDeep !== null) return refused("nesting", placeAt(tooDeep));
  work.step(text.length / charactersInStep);
  yield;
  const composing = yield* compose(tokens, text.length);
  if (!composing.ok) return tooFaulty(composing.faults, placeAt);
  const composed = composing.documents;
  const isKept = (document: Document.Parsed): boolean => !isBlank(document) || document.errors.length > 0;
  const parts = documentParts(text, tokens, composed.map(isKept));
  const read: ReadOne[] = [];
  for (const document of composed.filter(isKept)) {
    read.push(yield* readOne(document, parts[read.length] ?? text, placeAt));
    yield;
  }
  return {
    documents: read.flatMap(({ document }) => (document === null ? [] : [document])),
    problems: read.flatMap(({ problems }) => problems),
    count: read.length,
  };
}

/** Characters of a text that are built into nodes and values in one step. */
const charactersInStep = 10;

interface Fault {
  readonly offset: number;
  readonly message: string;
}

class TooManyFaults extends Error {}

type Composed =
  | { readonly ok: true; readonly documents: readonly Document.Parsed[] }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** How the library is told of a fault: an offset, a range, or the token that is one. */
type TellFault = (
  source: number | readonly number[] | { readonly offset: number },
  code: string,
  message: string,
  warning?: boolean,
) => void;

/**
 * The library makes an `Error` of every fault and goes on to the end, which takes megabytes of memory for a text that is none but
 * faults. So its own list is left to it for the first of them, and one more ends the reading. The method is private in its types.
 */
function* compose(tokens: readonly CST.Token[], end: number): InSlices<Composed> {
  const composer = new Composer({ schema: "failsafe", customTags: ["null", "bool"], uniqueKeys: false });
  const faults: Fault[] = [];
  const inner = composer as unknown as { onError: TellFault };
  const tell = inner.onError;
  inner.onError = (source, code, message, warning) => {
    if (faults.length >= yamlLimits.faults) throw new TooManyFaults();
    const offset = typeof source === "number" ? source : "offset" in source ? source.offset : (source[0] ?? 0);
    faults.push({ offset, message });
    tell(source, code, message, warning);
  };
  try {
    const documents: Document.Parsed[] = [];
    for (const document of composer.compose(tokens, true, end)) {
      documents.push(document);
      yield;
    }
    return { ok: true, documents };
  } catch (fault) {
    if (!(fault instanceof TooManyFaults)) throw fault;
    return { ok: false, faults };
  }
}

/** The last fault that was looked at, as one too many, and what the first ones are. */
function tooFaulty(faults: readonly Fault[], placeAt: (offset: number) => Place): YamlText {
  const { problems } = refused("faults", placeAt(faults.at(-1)?.offset ?? 0));
  return {
    documents: [],
    problems: [...problems, ...faults.map(({ offset, message }) => bad(placeAt(offset), message))],
    count: 1,
  };
}

const bad = (place: Place, got: string): YamlProblem => ({
  ...place,
  problem: { code: "BAD_SHAPE", path: [], expected: "YAML or JSON", got },
});

/** Nothing between two `---`, or remarks alone. */
const isBlank = ({ contents }: Document.Parsed): boolean =>
  contents === null || (isScalar(contents) && contents.value === null);

const refused = (what: YamlLimit, place: Place, size: number = yamlLimits[what] + 1): YamlText => ({
  documents: [],
  problems: [{ ...place, problem: { code: "TOO_LARGE", path: [], what, size, limit: yamlLimits[what] } }],
  count: 1,
});

interface ReadOne {
  /** null: it has problems. */
  readonly document: YamlDocument | null;
  readonly problems: readonly YamlProblem[];
}

function* readOne(document: Document.Parsed, text: string, placeAt: (offset: number) => Place): InSlices<ReadOne> {
  const faults = [...document.errors, ...document.warnings].map(({ pos, message }) => bad(placeAt(pos[0]), message));
  const twice = wrongKeys(document).map(({ offset, fault }) => bad(placeAt(offset), fault));
  if (faults.length + twice.length > 0) return { document: null, problems: [...faults, ...twice] };
  yield;
  const places = new YamlPlaces(document);
  const place = (path: Path, at: "VALUE" | "KEY"): Place => placeAt(places.offsetOf(path, at));
  const tooLarge = (what: YamlLimit) => ({ document: null, problems: refused(what, place([], "VALUE")).problems });
  try {
    const value: unknown = document.toJS({ maxAliasCount: yamlLimits.aliases });
    yield;
    return (yield* holdsMore(value, yamlLimits["entries of one document"]))
      ? tooLarge("entries of one document")
      : { document: { value, text, place }, problems: [] };
  } catch (fault) {
    // The one thing the library throws here: aliases that unfold into more than `maxAliasCount` nodes.
    if (!(fault instanceof ReferenceError)) throw fault;
    return tooLarge("aliases");
  }
}

/** Whether a value has more entries than that, each alias unfolded. */
function* holdsMore(root: unknown, most: number): InSlices<boolean> {
  const open: unknown[] = [root];
  let count = 0;
  let looked = 0;
  for (let value = open.pop(); value !== undefined; value = open.pop()) {
    looked += 1;
    if (looked % looksInTurn === 0) yield;
    if (typeof value !== "object" || value === null) continue;
    const entries: readonly unknown[] = Object.values(value);
    count += entries.length;
    if (count > most) return true;
    for (const entry of entries) open.push(entry);
  }
  return false;
}

/** Tokens or values that are looked at in one turn. */
const looksInTurn = 5_000;

/** Offset of a token nested deeper than the limit, of the first document that has one; null: there is none. */
function* firstBelow(tokens: readonly CST.Token[]): InSlices<number | null> {
  const open = tokens.map((token) => ({ token, depth: 0 })).toReversed();
  let looked = 0;
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    looked += 1;
    if (looked % looksInTurn === 0) yield;
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
