import type { WrittenInline } from "./writing.js";
import { withoutSpacesAtEnd } from "./without-spaces.js";

/** A run of `*` or `_` that may begin or end emphasis. */
export interface Delimiter {
  readonly mark: "*" | "_";
  readonly count: number;
  readonly canOpen: boolean;
  readonly canClose: boolean;
}

/** Pieces in their order, as a chain: what lies between two of them is taken out at once. */
interface Piece {
  /** null: a run of marks, or a bracket, that may yet become markup. */
  inline: WrittenInline | null;
  /** What it says if it does not. */
  text: string;
  before: Piece | null;
  after: Piece | null;
}

interface OpenRun extends Omit<Delimiter, "count"> {
  readonly piece: Piece;
  /** As many as were written. */
  readonly written: number;
  left: number;
  before: OpenRun | null;
  after: OpenRun | null;
}

interface OpenBracket {
  readonly piece: Piece;
  readonly at: number;
  /** The last run before it. */
  readonly runBefore: OpenRun | null;
  /** A link holds no link. */
  active: boolean;
}

/** Inlines as they are read, and the algorithm of CommonMark 0.31 that pairs runs of `*` and `_`. */
export class InlineChain {
  readonly #head: Piece = { inline: null, text: "", before: null, after: null };
  #last: Piece = this.#head;
  #lastRun: OpenRun | null = null;
  readonly #runs: OpenRun[] = [];
  readonly #brackets: OpenBracket[] = [];

  text(text: string): void {
    this.#add({ kind: "TEXT", text }, text);
  }

  /** Spaces before the end of a line are dropped; two or more of them end it for good. */
  endLine(isForced: boolean): void {
    const { inline } = this.#last;
    const text = inline?.kind === "TEXT" ? inline.text : "";
    const kept = isForced ? text : withoutSpacesAtEnd(text);
    if (inline?.kind === "TEXT") this.#last.inline = { kind: "TEXT", text: kept };
    if (isForced || text.length - kept.length > 1) this.#add({ kind: "BREAK" }, "");
    else this.text("\n");
  }

  delimiter({ mark, count, canOpen, canClose }: Delimiter): void {
    const piece = this.#add(null, mark.repeat(count));
    if (!canOpen && !canClose) return;
    const run = { piece, mark, written: count, left: count, canOpen, canClose, before: this.#lastRun, after: null };
    this.#runs.push(run);
    if (this.#lastRun !== null) this.#lastRun.after = run;
    this.#lastRun = run;
  }

  bracket(at: number): void {
    this.#brackets.push({ piece: this.#add(null, "["), at, runBefore: this.#lastRun, active: true });
  }

  /** Whether the last open bracket may become a link. */
  opensLink(): boolean {
    return this.#brackets.at(-1)?.active === true;
  }

  bracketAt(): number {
    return this.#brackets.at(-1)?.at ?? 0;
  }

  /** The last open bracket, if there is one, is only a bracket from here on. */
  dropBracket(): void {
    this.#brackets.pop();
  }

  /** What follows the last open bracket becomes a link. */
  link(address: string): void {
    const bracket = this.#brackets.pop();
    if (bracket === undefined) throw new Error("a link without its bracket");
    this.#pair(bracket.runBefore);
    const content = inlinesAfter(bracket.piece);
    bracket.piece.inline = { kind: "LINK", address, content };
    bracket.piece.after = null;
    this.#last = bracket.piece;
    for (const each of this.#brackets) each.active = false;
  }

  end(): readonly WrittenInline[] {
    this.#pair(null);
    return inlinesAfter(this.#head);
  }

  /** A run of which some marks mean something and others stand for themselves: programs do not agree on what is meant. */
  partlyUsed(): string | null {
    const found = this.#runs.find(({ left, written }) => left > 0 && left < written);
    return found === undefined ? null : found.mark.repeat(found.written);
  }

  #add(inline: WrittenInline | null, text: string): Piece {
    const piece: Piece = { inline, text, before: this.#last, after: null };
    this.#last.after = piece;
    this.#last = piece;
    return piece;
  }

  /** Pairs all runs behind one, or all (CommonMark 0.31, "process emphasis"). */
  #pair(bottom: OpenRun | null): void {
    const bottoms = new Map<string, OpenRun | null>();
    let closer = this.#lastRun;
    while (closer !== null && closer.before !== bottom) closer = closer.before;
    if (this.#lastRun === bottom) closer = null;
    while (closer !== null) {
      if (!closer.canClose) {
        closer = closer.after;
        continue;
      }
      const key = `${closer.mark} ${closer.canOpen} ${closer.written % 3}`;
      const lowest = bottoms.has(key) ? bottoms.get(key) : bottom;
      let opener = closer.before;
      while (opener !== null && opener !== bottom && opener !== lowest && !isPair(opener, closer))
        opener = opener.before;
      if (opener === null || opener === bottom || opener === lowest) {
        bottoms.set(key, closer.before);
        const next: OpenRun | null = closer.after;
        if (!closer.canOpen) this.#remove(closer);
        closer = next;
        continue;
      }
      this.#emphasize(opener, closer);
      if (opener.left === 0) this.#remove(opener);
      if (closer.left === 0) {
        const next: OpenRun | null = closer.after;
        this.#remove(closer);
        closer = next;
      }
    }
    if (bottom !== null) bottom.after = null;
    this.#lastRun = bottom;
  }

  #emphasize(opener: OpenRun, closer: OpenRun): void {
    const used = opener.left >= 2 && closer.left >= 2 ? 2 : 1;
    opener.left -= used;
    closer.left -= used;
    const { mark } = opener;
    opener.piece.text = mark.repeat(opener.left);
    const content = inlinesBetween(opener.piece, closer.piece);
    closer.piece.text = mark.repeat(closer.left);
    const inline: WrittenInline = { kind: used === 2 ? "STRONG" : "EMPHASIS", mark, content };
    const piece: Piece = { inline, text: "", before: opener.piece, after: closer.piece };
    opener.piece.after = piece;
    closer.piece.before = piece;
    opener.after = closer;
    closer.before = opener;
  }

  #remove(run: OpenRun): void {
    if (run.before !== null) run.before.after = run.after;
    if (run.after !== null) run.after.before = run.before;
    else this.#lastRun = run.before;
  }
}

/** The rule of three (6.2, rules 9 and 10). */
const isPair = (opener: OpenRun, closer: OpenRun): boolean =>
  opener.mark === closer.mark &&
  opener.canOpen &&
  !((closer.canOpen || opener.canClose) && closer.written % 3 !== 0 && (opener.written + closer.written) % 3 === 0);

const inlinesAfter = (piece: Piece): readonly WrittenInline[] => inlinesBetween(piece, null);

/** What lies between two pieces; text that touches is one. */
function inlinesBetween(from: Piece, to: Piece | null): readonly WrittenInline[] {
  const found: WrittenInline[] = [];
  let words: string[] = [];
  const endText = (): void => {
    if (words.length > 0) found.push({ kind: "TEXT", text: words.join("") });
    words = [];
  };
  for (let each = from.after; each !== null && each !== to; each = each.after) {
    const { inline } = each;
    if (inline === null || inline.kind === "TEXT") {
      const text = inline === null ? each.text : inline.text;
      if (text !== "") words.push(text);
    } else {
      endText();
      found.push(inline);
    }
  }
  endText();
  return found;
}
