import { InlineChain, type Delimiter } from "./inline-chain.js";
import { writingLimits, type WritingFault, type WritingFaultKind, type WrittenInline } from "./writing.js";

interface InlinesRead {
  readonly content: readonly WrittenInline[];
  /** Lines from 1. */
  readonly faults: readonly WritingFault[];
}

const marks = /[\\`*_[\]!<&\n]/;
const asciiPunctuation = /[!-/:-@[-`{-~]/;
const whitespace = /[\s\p{Zs}]/u;
const punctuation = /[\p{P}\p{S}]/u;

/** Reads the lines of one paragraph, by the rules of CommonMark 0.31 for inlines. */
export function readInlines(source: string): InlinesRead {
  const chain = new InlineChain();
  const faults: WritingFault[] = [];
  let line = 1;
  let at = 0;
  const fault = (kind: WritingFaultKind, got: string): void => void faults.push({ kind, line, got });

  while (at < source.length) {
    const rest = source.slice(at);
    const next = rest.search(marks);
    if (next !== 0) {
      const plain = next < 0 ? rest : rest.slice(0, next);
      chain.text(plain);
      at += plain.length;
      continue;
    }
    const mark = rest.charAt(0);
    switch (mark) {
      case "\\": {
        const escaped = rest.charAt(1);
        if (escaped === "\n") {
          chain.endLine(true);
          line += 1;
          at += 2 + indentAfter(source, at + 2);
        } else {
          const isEscape = asciiPunctuation.test(escaped);
          chain.text(isEscape ? escaped : "\\");
          at += isEscape ? 2 : 1;
        }
        break;
      }
      case "\n":
        chain.endLine(false);
        line += 1;
        at += 1 + indentAfter(source, at + 1);
        break;
      case "*":
      case "_": {
        const count = /^(?:\*+|_+)/.exec(rest)?.[0].length ?? 1;
        if (count > writingLimits.marks) fault("DEEP_EMPHASIS", rest.slice(0, count));
        chain.delimiter({ mark, count, ...flanks(mark, characterBefore(source, at), characterAt(source, at + count)) });
        at += count;
        break;
      }
      case "[":
        chain.bracket(at);
        at += 1;
        break;
      case "]": {
        at += 1;
        if (!chain.opensLink()) {
          chain.text("]");
          break;
        }
        const found = linkAfter(source, at);
        if (found === null) {
          chain.dropBracket();
          chain.text("]");
          break;
        }
        if (found.hasTitle) fault("LINK_TITLE", source.slice(chain.bracketAt(), found.end));
        else if (!isWebAddress(found.address)) fault("LINK_ADDRESS", found.address);
        chain.link(found.address);
        line += source.slice(at, found.end).split("\n").length - 1;
        at = found.end;
        break;
      }
      default: {
        const kind = markup(rest);
        if (kind !== null) fault(kind, rest.slice(0, 40));
        chain.text(mark);
        at += 1;
      }
    }
  }
  const content = chain.end();
  const unpaired = chain.partlyUsed();
  if (unpaired !== null) fault("UNPAIRED_MARKS", unpaired);
  if (depthOf(content) > writingLimits.emphasis) fault("DEEP_EMPHASIS", source.slice(0, 40));
  return { content, faults };
}

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
function flanks(mark: "*" | "_", before: string, after: string): Pick<Delimiter, "canOpen" | "canClose"> {
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
  const address = source.slice(begin, at).replace(/\\([!-/:-@[-`{-~])/g, "$1");
  const end = pastSpace(source, at);
  if (source.charAt(end) === ")") return { address, hasTitle: false, end: end + 1 };
  return end > at && /["'(]/.test(source.charAt(end)) ? { address, hasTitle: true, end } : null;
}

/** White space with at most one end of a line in it. */
const pastSpace = (source: string, at: number): number =>
  at + (/^ *(?:\n *)?/.exec(source.slice(at, at + 1000))?.[0].length ?? 0);

/** An address that a browser may be sent to: http or https, and no name or password in it that makes it look like another. */
export function isWebAddress(address: string): boolean {
  if (
    address.length > writingLimits.address ||
    !/^https?:\/\/[^\s"<>\\^`{|}]+$/i.test(address) ||
    !URL.canParse(address)
  )
    return false;
  const { username, password } = new URL(address);
  return username === "" && password === "";
}

const depthOf = (content: readonly WrittenInline[]): number =>
  Math.max(0, ...content.map((each) => ("content" in each ? 1 + depthOf(each.content) : 0)));
