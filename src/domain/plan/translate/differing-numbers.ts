import { readWriting } from "../../writing/read-writing.js";
import type { WrittenBlock, WrittenInline } from "../../writing/writing.js";
import { KnownNumbers } from "./known-numbers.js";
import type { TextKind } from "./map-texts.js";
import { numbersInText, type NumbersOfText } from "./text-numbers.js";

/** A text, and the language it is in (BCP 47). */
interface InLanguage {
  readonly text: string;
  readonly language: string;
}

/** Numbers of each side that the other does not have, as they are written there: the first of them. */
interface DifferingNumbers {
  readonly original: readonly string[];
  readonly translated: readonly string[];
}

/**
 * The numbers in digits that a text and its translation do not share; null: they share all. `1,5` is `1.5` and `½` is `1/2`; 90 minutes are
 * 1 h 30 min; a number may be a word on the other side. A temperature is the same in the same degrees, or within one degree Celsius of it in
 * the others; within five from 120 °C on, where dials of ovens have steps.
 */
export function differingNumbers(
  original: InLanguage,
  translated: InLanguage,
  kind: TextKind,
): DifferingNumbers | null {
  const before = numbersInText(plainText(original.text, kind), original.language);
  const after = numbersInText(plainText(translated.text, kind), translated.language);
  const found = { original: missingIn(after, before), translated: missingIn(before, after) };
  return found.original.length + found.translated.length === 0 ? null : found;
}

/** Addresses of the links of a text that its translation does not have, and the other way round. */
export function differingLinks(original: string, translated: string): readonly string[] {
  const [before, after] = [new Set(linksOf(original)), new Set(linksOf(translated))];
  return [...[...before].filter((each) => !after.has(each)), ...[...after].filter((each) => !before.has(each))];
}

/** The most numbers of a side that are told. */
const mostTold = 10;

/** Numbers of one side that the other has neither as a number nor as a word, each once, the first of them. */
function missingIn({ numbers, words }: NumbersOfText, all: NumbersOfText): readonly string[] {
  const known = new KnownNumbers(numbers);
  const missing = new Set<string>();
  for (const each of all.numbers) {
    if (known.has(each) || each.values.some((value) => words.has(value))) continue;
    missing.add(each.written);
    if (missing.size === mostTold) break;
  }
  return [...missing];
}

/** Without marks of lists and addresses of links, whose numbers nobody reads. */
function plainText(text: string, kind: TextKind): string {
  if (kind !== "WRITING") return text;
  const { blocks, faults } = readWriting(text);
  return faults.length > 0 ? text : blocks.map(textOfBlock).join("\n");
}

const textOfBlock = (block: WrittenBlock): string =>
  block.kind === "PARAGRAPH"
    ? block.content.map(textOfInline).join("")
    : block.items.map((item) => item.map(textOfBlock).join("\n")).join("\n");

const textOfInline = (inline: WrittenInline): string =>
  inline.kind === "TEXT" ? inline.text : inline.kind === "BREAK" ? "\n" : inline.content.map(textOfInline).join("");

const linksOf = (text: string): readonly string[] => readWriting(text).blocks.flatMap(linksOfBlock);

const linksOfBlock = (block: WrittenBlock): readonly string[] =>
  block.kind === "PARAGRAPH" ? block.content.flatMap(linksOfInline) : block.items.flat().flatMap(linksOfBlock);

const linksOfInline = (inline: WrittenInline): readonly string[] =>
  inline.kind === "TEXT" || inline.kind === "BREAK"
    ? []
    : [...(inline.kind === "LINK" ? [inline.address] : []), ...inline.content.flatMap(linksOfInline)];
