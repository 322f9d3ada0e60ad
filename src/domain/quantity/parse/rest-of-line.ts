import type { Measured } from "../../model/amount.js";
import { bracketAmount, measuredOf, type Bracket } from "./whole-measure.js";
import { foodWords, onlyDescribes } from "./food-words.js";
import type { LineContext } from "./line-context.js";
import type { LineModifier } from "./parsed-line.js";
import { readMeasure } from "./read-measure.js";
import { standardUnit } from "../unit.js";
import { trimEndOf, trimStartOf } from "./trim-marks.js";
import { sizeWords } from "./words/form-words.js";
import { anyPhrase, asNeeded, linePhrases, plusMore } from "./words/line-phrases.js";

/** All that stands beside the measure. */
export interface RestOfLine {
  readonly food: string;
  readonly whole: string | null;
  readonly form: string | null;
  readonly preparation: string | null;
  readonly notes: readonly string[];
  readonly modifiers: readonly LineModifier[];
  readonly asNeeded: boolean;
  readonly brackets: readonly Bracket[];
  readonly additions: readonly Measured[];
}

interface Cut {
  readonly text: string;
  readonly modifiers: readonly LineModifier[];
  readonly notes: readonly string[];
  readonly asNeeded: boolean;
}

const EDGE_MARKS = " \u00a0,;:–—-";

const tidy = (text: string): string => {
  const inner = trimEndOf(trimStartOf(text, EDGE_MARKS), EDGE_MARKS);
  return inner.includes(",") ? inner.replace(/ ?,[ ,]*/g, ", ") : inner;
};

/** Takes the phrases that say how binding the amount is. */
const cutPhrases = (text: string): Cut => {
  if (!anyPhrase.test(text)) return { text, modifiers: [], notes: [], asNeeded: false };
  const modifiers: LineModifier[] = [];
  const notes: string[] = [];
  let left = text;
  const more = plusMore.exec(left);
  if (more !== null) {
    modifiers.push("PLUS_MORE");
    notes.push(tidy(more[0]));
    left = left.replace(plusMore, " ");
  }
  for (const [modifier, pattern] of linePhrases) {
    const found = pattern.exec(left);
    if (found === null) continue;
    modifiers.push(modifier);
    if (modifier === "FOR_SERVING") notes.push(tidy(found[0]));
    left = left.replace(pattern, ", ");
  }
  const needed = asNeeded.test(left);
  return { text: needed ? left.replace(asNeeded, ", ") : left, modifiers, notes, asNeeded: needed };
};

interface Unbracketed {
  readonly text: string;
  readonly brackets: readonly Bracket[];
  readonly notes: readonly string[];
}

const onlySizes = (text: string): boolean =>
  text.split(/\s/).every((word) => word === "" || sizeWords.has(word.toLowerCase().replace(/\.$/, "")));

/** Brackets hold another amount or a remark. */
const takeBrackets = (text: string, context: LineContext): Unbracketed => {
  if (!text.includes("(")) return { text, brackets: [], notes: [] };
  const brackets: Bracket[] = [];
  const notes: string[] = [];
  const left = text.replace(/\s*\(([^()]*)\)/g, (_, content: string, at: number) => {
    const found = bracketAmount(content, context);
    if (found !== null) brackets.push(onlySizes(text.slice(0, at)) ? { ...found, beforeFood: true } : found);
    else if (tidy(content) !== "") notes.push(tidy(content));
    return "";
  });
  return { text: left, brackets, notes };
};

const ADDED = /\s(?:plus|\+)\s+(?=[\d½⅓⅔¼¾⅛])/i;

interface Added {
  readonly text: string;
  readonly additions: readonly Measured[];
}

/** "1 cup flour plus 2 tbsp": an addition behind the food. */
const takeAddition = (text: string, context: LineContext): Added => {
  const found = ADDED.exec(text);
  if (found === null) return { text, additions: [] };
  const measure = readMeasure(text, found.index + found[0].length, context);
  if (measure?.kind !== "MEASURE" || measure.unit === null) return { text, additions: [] };
  return {
    text: text.slice(0, found.index) + text.slice(measure.end),
    additions: [measuredOf(measure, measure.unit)],
  };
};

const SIZED =
  /\s(?:de|à|a|je|zu|of|von|po)\s+(?=(?:(?:about|approx\.?|ca\.?|circa|etwa|je|environ|unos|unas|około|ok\.)\s*)?\d[^,;()]*$)/i;

/** What a measure says of the words behind it: sold in a container, or a bare count of them. */
type Measuring = "PACKED" | "COUNTED" | "MEASURED";

interface Sized {
  readonly text: string;
  readonly size: readonly Bracket[];
}

/** "2 Dosen Kichererbsen à 400 g", "4 Kartoffeln à 170 g": the size of a pack, or the weight of one, behind the food. */
const takeSize = (text: string, measuring: Measuring, context: LineContext): Sized => {
  const [first = "", ...rest] = measuring === "MEASURED" ? [] : text.split(/(?=,)/);
  const found = SIZED.exec(first);
  const size = found === null ? null : bracketAmount(first.slice(found.index + found[0].length), context);
  if (found === null || size === null) return { text, size: [] };
  if (measuring === "COUNTED" && !isWeight(size)) return { text, size: [] };
  const each = measuring === "COUNTED" ? { ...size, each: true } : size;
  return { text: first.slice(0, found.index) + rest.join(""), size: [each] };
};

const isWeight = ({ measured }: Bracket): boolean => standardUnit(measured.unit)?.dimension === "MASS";

/** Segments up to the one that names the food, and those behind it. */
const splitSegments = (text: string): readonly [food: string, behind: readonly string[]] => {
  const segments = text.split(/\s*[,;]\s*|\s+[-–—]\s+/u).filter((segment) => segment !== "");
  let first = 0;
  while (first < segments.length - 1 && onlyDescribes(segments[first] ?? "")) first += 1;
  return [segments.slice(0, first + 1).join(", "), segments.slice(first + 1)];
};

/** Food, form, preparation and remarks of the words around a measure. */
export const restOfLine = (text: string, measuring: Measuring, context: LineContext): RestOfLine => {
  const packed = measuring === "PACKED";
  const cut = cutPhrases(text);
  const open = takeBrackets(cut.text, context);
  const sized = takeSize(open.text, measuring, context);
  const added = takeAddition(sized.text, context);
  const [segment, after] = splitSegments(tidy(added.text));
  const amounts = after.flatMap((each) => bracketAmount(each, context) ?? []);
  const behind = amounts.length === 0 ? after : after.filter((each) => bracketAmount(each, context) === null);
  const sizes = behind.filter((each) => sizeWords.has(each.toLowerCase()));
  const done = sizes.length === 0 ? behind : behind.filter((each) => !sizes.includes(each));
  const words = foodWords(segment.replace(/\s+/g, " "), packed);
  return {
    food: trimEndOf(words.food, ".:"),
    whole: words.whole === null ? null : trimEndOf(words.whole, ".:"),
    form: words.form,
    preparation: done.length === 0 ? null : done.join(", "),
    notes: [...words.notes, ...sizes, ...open.notes, ...cut.notes],
    modifiers: cut.modifiers,
    asNeeded: cut.asNeeded,
    brackets: [...open.brackets, ...sized.size, ...amounts],
    additions: added.additions,
  };
};
