import type { InSlices } from "../../domain/counted-work.js";

/** Far above what a file of recipes holds, far below what building it would hurt. */
export const jsonLimits = {
  /** Values, those inside of others too. */
  values: 1_000_000,
  /** Lists and maps inside of one another. */
  levels: 500,
} as const;

interface JsonExcess {
  readonly what: keyof typeof jsonLimits;
  /** Lines before the place at which it is one too many. */
  readonly lines: number;
}

const quote = 34;
const escape = 92;
const lineEnd = 10;
const comma = 44;
const opens = new Set([91, 123]);
const closes = new Set([93, 125]);

/** Characters that are counted in one turn. */
const charactersInTurn = 1_000_000;

/** Counts a text that is to be parsed as JSON, by its marks, before anything of it is built; null: it is no larger than it may be. */
export function* jsonExcess(text: string): InSlices<JsonExcess | null> {
  let values = 1;
  let level = 0;
  let lines = 0;
  let isInString = false;
  let turn = charactersInTurn;
  for (let at = 0; at < text.length; at++) {
    if (at >= turn) {
      turn += charactersInTurn;
      yield;
    }
    const mark = text.charCodeAt(at);
    if (isInString) {
      if (mark === escape) at += 1;
      else if (mark === quote) isInString = false;
    } else if (mark === quote) isInString = true;
    else if (mark === lineEnd) lines += 1;
    else if (mark === comma) values += 1;
    else if (opens.has(mark)) {
      values += 1;
      level += 1;
      if (level > jsonLimits.levels) return { what: "levels", lines };
    } else if (closes.has(mark)) level -= 1;
    if (values > jsonLimits.values) return { what: "values", lines };
  }
  return null;
}
