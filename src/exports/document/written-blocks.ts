import { BoundedCache } from "../../domain/bounded-cache.js";
import { readWriting } from "../../domain/writing/read-writing.js";
import type { WrittenBlock } from "../../domain/writing/writing.js";
import { legibleText } from "../words/legible-text.js";

/** One answer draws a text in several forms. Bounded by characters of the texts; the blocks of one take 2 to 120 bytes a character. */
const known = new BoundedCache<readonly WrittenBlock[]>("written-texts", { maxSize: 100_000 });

/** A text of the writer's as blocks. One that is not all CommonMark for writers is shown as it is written. */
export function writtenBlocks(source: string): readonly WrittenBlock[] {
  const before = known.get(source);
  if (before !== undefined) return before;
  const blocks = readBlocks(legibleText(source));
  known.set(source, blocks, { size: source.length + 1 });
  return blocks;
}

function readBlocks(legible: string): readonly WrittenBlock[] {
  const { blocks, faults } = readWriting(legible);
  return faults.length === 0 ? blocks : linesAsWritten(legible);
}

/** Every sign as it stands; blank lines part paragraphs, and no line is indented, since that is markup to who reads it next. */
function linesAsWritten(text: string): readonly WrittenBlock[] {
  const paragraphs: string[][] = [[]];
  for (const line of text.split(/\r\n|\n|\r/).map((each) => each.trim()))
    if (line === "") paragraphs.push([]);
    else paragraphs.at(-1)?.push(line);
  return paragraphs
    .filter((lines) => lines.length > 0)
    .map((lines) => ({ kind: "PARAGRAPH", content: [{ kind: "TEXT", text: lines.join("\n") }] }));
}
