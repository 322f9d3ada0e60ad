import { tableText } from "./table-text.js";

/** The most of a file that is looked at for its header, in characters. */
const longestHead = 64_000;

/** The lines of a table up to and with its header, as they stand: what a row of it needs to be read by itself. */
export async function tableHead(
  chunks: AsyncIterable<Uint8Array>,
): Promise<{ readonly text: string; readonly lines: number }> {
  let head = "";
  for await (const text of tableText(chunks)) {
    head += text;
    if (head.length >= longestHead) break;
  }
  const newline = head.includes("\n") || !head.includes("\r") ? "\n" : "\r";
  const lines = head.split(newline);
  const count = /^"?sep=."?\r?$/i.test(lines[0]?.replace(/^\ufeff/, "") ?? "") ? 2 : 1;
  return {
    text: lines
      .slice(0, count)
      .map((line) => `${line}${newline}`)
      .join(""),
    lines: count,
  };
}
