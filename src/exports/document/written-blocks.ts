import { readWriting } from "../../domain/writing/read-writing.js";
import { legibleText } from "../words/legible-text.js";
import type { WrittenBlock } from "../../domain/writing/writing.js";

/** A text of the writer's as blocks. One that is not all CommonMark for writers is shown as it is written. */
export function writtenBlocks(source: string): readonly WrittenBlock[] {
  const legible = legibleText(source);
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
