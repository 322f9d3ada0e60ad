import { CST, Lexer, Parser, type LineCounter } from "yaml";
import type { InSlices, Work } from "../../../domain/counted-work.js";
import { yamlLimits, type YamlLimit } from "./yaml-limits.js";

/** What a text has too much of, and where it was one too many. */
interface Excess {
  readonly what: YamlLimit;
  readonly offset: number;
}

type TokensRead =
  { readonly ok: true; readonly tokens: readonly CST.Token[] } | { readonly ok: false; readonly excess: Excess };

const entry: readonly YamlLimit[] = ["entries", "entries of one document"];
/** Of each kind of word or mark, what it is one more of. */
const counted: Partial<Record<CST.TokenType, readonly YamlLimit[]>> = {
  "map-value-ind": ["tokens", "keys", ...entry],
  "explicit-key-ind": ["tokens", "keys", ...entry],
  "seq-item-ind": ["tokens", ...entry],
  comma: ["tokens", ...entry],
  alias: ["tokens", "references"],
  anchor: ["tokens", "references"],
  // None means anything here, and each is told of.
  tag: ["tokens", "references"],
  "directive-line": ["tokens", "references"],
  ...{ "doc-mode": [], space: [], newline: [], comment: [], "flow-error-end": [], "byte-order-mark": [] },
};
const oneToken: readonly YamlLimit[] = ["tokens"];

const opens: ReadonlySet<string> = new Set(["{", "["]);
const closes: ReadonlySet<string> = new Set(["}", "]"]);

/** Counts words and marks as a text is cut up. */
class TokenCounter {
  /** Characters behind. */
  offset = 0;
  private readonly counts = new Map<YamlLimit, number>();
  private isScalar = false;
  private open = 0;
  /** A document has begun, with nothing in it yet: a `---` is then its own. */
  private isBlank = false;

  /** Of what that is one too many; null: of nothing. */
  beyondWith(lexeme: string): YamlLimit | null {
    const wasMark = this.isScalar;
    this.isScalar = !wasMark && lexeme === CST.SCALAR;
    // What stands for the scalar that comes next, which is counted then.
    if (this.isScalar) return null;
    const type = wasMark ? "scalar" : CST.tokenType(lexeme);
    if (type !== "doc-mode" && type !== "flow-error-end") this.offset += lexeme.length;
    if (!wasMark) this.open = Math.max(0, this.open + (opens.has(lexeme) ? 1 : closes.has(lexeme) ? -1 : 0));
    if (this.open > yamlLimits.nesting) return "nesting";
    if (hasMoreLines(lexeme, yamlLimits["lines of one value"])) return "lines of one value";
    for (const what of [...this.begun(type), ...((type === null ? undefined : counted[type]) ?? oneToken)]) {
      const count = (this.counts.get(what) ?? 0) + 1;
      if (count > yamlLimits[what]) return what;
      this.counts.set(what, count);
    }
    return null;
  }

  private begun(type: CST.TokenType | null): readonly YamlLimit[] {
    const begins = type === "doc-mode" || (type === "doc-start" && !this.isBlank);
    if (type === "doc-mode") this.isBlank = true;
    else if (type === null || counted[type]?.length !== 0) this.isBlank = false;
    if (!begins) return [];
    this.counts.delete("entries of one document");
    return ["documents"];
  }
}

function hasMoreLines(text: string, most: number): boolean {
  let at = text.indexOf("\n");
  for (let lines = 1; at !== -1; lines += 1) {
    if (lines >= most) return at < text.length - 1;
    at = text.indexOf("\n", at + 1);
  }
  return false;
}

/** Words and marks, spaces and line ends too, that are read in one turn: about a millisecond. */
const lexemesInTurn = 500;
/** Characters that take as long as one more of them. */
const charactersOfLexeme = 100;

/** The tokens of a text, made only as far as it stays within its limits: each is counted before anything is made of it. */
export function* readTokens(text: string, lines: LineCounter, work: Work): InSlices<TokensRead> {
  const counter = new TokenCounter();
  const parser = new Parser(lines.addNewLine);
  const tokens: CST.Token[] = [];
  let left = lexemesInTurn;
  lines.addNewLine(0);
  try {
    for (const lexeme of new Lexer().lex(text)) {
      const { offset } = counter;
      const what = counter.beyondWith(lexeme);
      if (what !== null) return { ok: false, excess: { what, offset } };
      for (const token of parser.next(lexeme)) tokens.push(token);
      left -= 1 + lexeme.length / charactersOfLexeme;
      if (left > 0) continue;
      left = lexemesInTurn;
      work.step(lexemesInTurn);
      yield;
    }
    for (const token of parser.end()) tokens.push(token);
  } catch (fault) {
    // Lists in lists on one line, so deep that the parser, which calls itself only there, ran out of stack.
    if (fault instanceof RangeError) return { ok: false, excess: { what: "nesting", offset: counter.offset } };
    throw fault;
  }
  return { ok: true, tokens };
}
