import { InlineChain, type Delimiter } from "./inline-chain.js";
import { isWebAddress } from "./web-address.js";
import { writingLimits, type WritingFault, type WritingFaultKind, type WrittenInline } from "./writing.js";

interface InlinesRead {
  readonly content: readonly WrittenInline[];
  /** Lines from 1. */
  readonly faults: readonly WritingFault[];
}

const marks = /[\\`*_[\]!<&\n]/;
const asciiPunctuation = /[!-/:-@[-`{-~]/;
const escape = /\\([!-/:-@[-`{-~])/g;
const whitespace = /[\s\p{Zs}]/u;
const punctuation = /[\p{P}\p{S}]/u;

/** The lines of one paragraph, from their beginning to their end. */
class InlineReader {
  readonly #chain = new InlineChain();
  readonly #faults: WritingFault[] = [];
  readonly #source: string;
  #at = 0;
  #line = 1;

  constructor(source: string) {
    this.#source = source;
  }

  read(): InlinesRead {
    while (this.#at < this.#source.length) this.#next(this.#source.slice(this.#at));
    const content = this.#chain.end();
    const unpaired = this.#chain.partlyUsed();
    if (unpaired !== null) this.#fault("UNPAIRED_MARKS", unpaired);
    if (depthOf(content) > writingLimits.emphasis) this.#fault("DEEP_EMPHASIS", this.#source.slice(0, 40));
    return { content, faults: this.#faults };
  }

  #next(rest: string): void {
    const mark = rest.charAt(0);
    if (mark === "\\") this.#escape(rest.charAt(1));
    else if (mark === "\n") this.#endLine(1, false);
    else if (mark === "*" || mark === "_") this.#run(mark, /^(?:\*+|_+)/.exec(rest)?.[0].length ?? 1);
    else if (mark === "[") {
      this.#chain.bracket(this.#at);
      this.#at += 1;
    } else if (mark === "]") this.#endBracket();
    else {
      const kind = markup(rest);
      if (kind !== null) this.#fault(kind, rest.slice(0, 40));
      // At least this one: a mark that is none stands for itself.
      const next = rest.slice(1).search(marks);
      this.#text(next < 0 ? rest : rest.slice(0, next + 1));
    }
  }

  #text(text: string): void {
    this.#chain.text(text);
    this.#at += text.length;
  }

  #fault(kind: WritingFaultKind, got: string): void {
    this.#faults.push({ kind, line: this.#line, got });
  }

  #escape(escaped: string): void {
    if (escaped === "\n") this.#endLine(2, true);
    else if (asciiPunctuation.test(escaped)) {
      this.#chain.text(escaped);
      this.#at += 2;
    } else this.#text("\\");
  }

  /** @param length of what ends it, without the spaces that the next line begins with */
  #endLine(length: number, isForced: boolean): void {
    this.#chain.endLine(isForced);
    this.#line += 1;
    this.#at += length;
    this.#at += indentAfter(this.#source, this.#at);
  }

  #run(mark: "*" | "_", count: number): void {
    const [from, to] = [this.#at, this.#at + count];
    if (count > writingLimits.marks) this.#fault("DEEP_EMPHASIS", mark.repeat(count));
    const flanks = flanksOf(mark, characterBefore(this.#source, from), characterAt(this.#source, to));
    this.#chain.delimiter({ mark, count, ...flanks });
    this.#at = to;
  }

  #endBracket(): void {
    const link = this.#chain.opensLink() ? linkAfter(this.#source, this.#at + 1) : null;
    if (link === null) {
      this.#chain.dropBracket();
      this.#text("]");
      return;
    }
    if (link.hasTitle) this.#fault("LINK_TITLE", this.#source.slice(this.#chain.bracketAt(), link.end));
    else if (!isWebAddress(link.address)) this.#fault("LINK_ADDRESS", link.address);
    this.#chain.link(link.address);
    this.#line += this.#source.slice(this.#at, link.end).split("\n").length - 1;
    this.#at = link.end;
  }
}

/** Reads the lines of one paragraph, by the rules of CommonMark 0.31 for inlines. */
export const readInlines = (source: string): InlinesRead => new InlineReader(source).read();

/** What `!`, a backquote, `<` or `&` begins; null: it is only that character. */
function markup(rest: string): WritingFaultKind | null {
  if (rest.startsWith("`")) return "CODE";
  if (rest.startsWith("![")) return "IMAGE";
  if (/^<[a-z/!?]/i.test(rest)) return "HTML";
  return /^&(?:#\d{1,7}|#x[\da-f]{1,6}|[a-z][a-z\d]{0,40});/i.test(rest) ? "ENTITY" : null;
}

const indentAfter = (source: string, at: number): number => /^ */.exec(source.slice(at, at + 1000))?.[0].length ?? 0;

const characterAt = (source: string, at: number): string => {
  const code = source.codePointAt(at);
  return code === undefined ? " " : String.fromCodePoint(code);
};

const characterBefore = (source: string, at: number): string =>
  at === 0 ? " " : (/[^]$/u.exec(source.slice(Math.max(0, at - 2), at))?.[0] ?? " ");

/** Whether a run of marks may begin emphasis, and whether it may end some (6.2). */
function flanksOf(mark: "*" | "_", before: string, after: string): Pick<Delimiter, "canOpen" | "canClose"> {
  const [spaceBefore, spaceAfter] = [whitespace.test(before), whitespace.test(after)];
  const [signBefore, signAfter] = [punctuation.test(before), punctuation.test(after)];
  const left = !spaceAfter && (!signAfter || spaceBefore || signBefore);
  const right = !spaceBefore && (!signBefore || spaceAfter || signAfter);
  return mark === "*"
    ? { canOpen: left, canClose: right }
    : { canOpen: left && (!right || signBefore), canClose: right && (!left || signAfter) };
}

interface LinkFound {
  readonly address: string;
  readonly hasTitle: boolean;
  /** Where it ends. */
  readonly end: number;
}

/** The most parentheses in one another in an address. */
const mostParentheses = 32;

/** `(address)` behind the words of a link (6.3); null: it is none. */
function linkAfter(source: string, from: number): LinkFound | null {
  if (source.charAt(from) !== "(") return null;
  let at = pastSpace(source, from + 1);
  const begin = at;
  let depth = 0;
  for (; at < source.length; at += 1) {
    const each = source.charAt(at);
    if (each === "\\" && asciiPunctuation.test(source.charAt(at + 1))) at += 1;
    else if (each === "(") {
      depth += 1;
      if (depth > mostParentheses) return null;
    } else if (each === ")") {
      if (depth === 0) break;
      depth -= 1;
    } else if (/[\u0000-\u0020\u007f]/.test(each)) break;
  }
  if (depth > 0) return null;
  const address = source.slice(begin, at).replace(escape, "$1");
  const end = pastSpace(source, at);
  if (source.charAt(end) === ")") return { address, hasTitle: false, end: end + 1 };
  return end > at && /["'(]/.test(source.charAt(end)) ? { address, hasTitle: true, end } : null;
}

/** White space with at most one end of a line in it. */
const pastSpace = (source: string, at: number): number =>
  at + (/^ *(?:\n *)?/.exec(source.slice(at, at + 1000))?.[0].length ?? 0);

const depthOf = (content: readonly WrittenInline[]): number =>
  Math.max(0, ...content.map((each) => ("content" in each ? 1 + depthOf(each.content) : 0)));
