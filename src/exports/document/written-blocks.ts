import { readWriting } from "../../domain/writing/read-writing.js";
import { legibleText } from "../words/legible-text.js";
import type { WrittenBlock } from "../../domain/writing/writing.js";

/** A text of the writer's as blocks. One that is not all CommonMark for writers is shown as it is written. */
export function writtenBlocks(source: string): readonly WrittenBlock[] {
  const legible = legibleText(source);
  const { blocks, faults } = readWriting(legible);
  return faults.length === 0 ? blocks : [{ kind: "PARAGRAPH", content: [{ kind: "TEXT", text: legible }] }];
}
