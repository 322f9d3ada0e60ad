import { readWriting } from "../../writing/read-writing.js";
import type { WrittenBlock, WrittenInline } from "../../writing/writing.js";
import { numbersInText, type NumbersOfText, type TextNumber } from "./text-numbers.js";
import type { TextKind } from "./map-texts.js";

/** A text, and the language it is in (BCP 47). */
interface InLanguage {
  readonly text: string;
  readonly language: string;
}

/** Numbers of each side that the other does not have, as they are written there. */
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

/** Numbers of one side that the other has neither as a number nor as a word, each once. */
const missingIn = ({ numbers, words }: NumbersOfText, all: NumbersOfText): readonly string[] => [
  ...new Set(
    all.numbers
      .filter((each) => !numbers.some((other) => isSame(each, other)) && !each.values.some((value) => words.has(value)))
      .map(({ written }) => written),
  ),
];

function isSame(a: TextNumber, b: TextNumber): boolean {
  if (a.unit === null || b.unit === null) return anyOf(a, b, isEqual);
  if (a.unit.of !== b.unit.of) return false;
  if (a.unit.of === "TEMPERATURE" && b.unit.of === "TEMPERATURE") {
    if (a.unit.scale === b.unit.scale) return anyOf(a, b, isEqual);
    const [inC, inF] = a.unit.scale === "C" ? [a, b] : [b, a];
    return anyOf(inC, inF, isSameHeat);
  }
  const [timesA, timesB] = ["times" in a.unit ? a.unit.times : 1, "times" in b.unit ? b.unit.times : 1];
  return anyOf(a, b, (x, y) => isEqual(x * timesA, y * timesB));
}

const anyOf = (a: TextNumber, b: TextNumber, fits: (x: number, y: number) => boolean): boolean =>
  a.values.some((x) => b.values.some((y) => fits(x, y)));

const isEqual = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a), Math.abs(b));

/** Common practice, no source: dials of ovens go in steps of 5 °C or 10 °F; what food must reach inside is exact. */
const ovenFrom = 120;
const isSameHeat = (celsius: number, fahrenheit: number): boolean =>
  Math.abs(((fahrenheit - 32) * 5) / 9 - celsius) <= (celsius >= ovenFrom ? 5 : 1);

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
