import fc from "fast-check";
import { fromMarkdown } from "mdast-util-from-markdown";
import { expect, it } from "vitest";
import { readWriting } from "../../src/domain/writing/read-writing.js";
import type { WrittenBlock, WrittenInline } from "../../src/domain/writing/writing.js";
import { writtenBlocks } from "../../src/exports/document/written-blocks.js";
import { writtenHtml } from "../../src/exports/document/written-html.js";
import { writtenMarkdown } from "../../src/exports/document/written-markdown.js";
import { writtenText } from "../../src/exports/document/written-text.js";
import { legibleText } from "../../src/exports/words/legible-text.js";
import { hostileText } from "../exports/hostile-text.js";
import { elementsOf } from "../kit/html-page.js";
import { markdownPieces } from "../kit/markdown-pieces.js";

/** Elements and the names of their attributes, and where their links lead. */
const drawn = (html: string) =>
  elementsOf(`<!doctype html><html><body>${html}</body></html>`)
    .filter(({ tagName }) => !["html", "head", "body"].includes(tagName))
    .map(({ tagName, attrs }) => ({
      tagName,
      names: attrs
        .map(({ name }) => name)
        .toSorted()
        .join(" "),
      attrs,
    }));

const anyText = fc.oneof(markdownPieces, hostileText);

it("as HTML a text is its own paragraphs, lists, emphasis and links to the web, whatever is written", () => {
  fc.assert(
    fc.property(anyText, (source) => {
      for (const { tagName, names, attrs } of drawn(writtenHtml(writtenBlocks(source)))) {
        expect(["p", "ul", "ol", "li", "em", "strong", "br", "a"]).toContain(tagName);
        expect(tagName === "a" ? ["href rel"] : tagName === "ol" ? ["", "start"] : [""]).toContain(names);
        const address = attrs.find(({ name }) => name === "href")?.value;
        if (address !== undefined) expect(address).toMatch(/^https?:\/\//i);
      }
    }),
    { numRuns: 1000 },
  );
});

it("as Markdown a text means what was written, to us and to another reader of CommonMark", () => {
  fc.assert(
    fc.property(anyText, (source) => {
      const read = readWriting(legibleText(source));
      fc.pre(read.faults.length === 0);
      const again = writtenMarkdown(read.blocks);
      expect(readWriting(again), again).toEqual({ blocks: read.blocks, faults: [] });
      const types = JSON.stringify(fromMarkdown(again)).match(/"type":"\w+"/g) ?? [];
      for (const type of types)
        expect(["root", "paragraph", "text", "list", "listItem", "emphasis", "strong", "link", "break"]).toContain(
          /:"(\w+)"/.exec(type)?.[1],
        );
    }),
    { numRuns: 1000 },
  );
});

it("as plain text a text says the same words", () => {
  fc.assert(
    fc.property(markdownPieces, (source) => {
      const { blocks, faults } = readWriting(source);
      fc.pre(faults.length === 0);
      const said = writtenText(source);
      for (const word of wordsIn(blocks)) expect(said).toContain(word);
    }),
    { numRuns: 500 },
  );
});

const wordsIn = (blocks: readonly WrittenBlock[]): readonly string[] =>
  blocks.flatMap((block) => (block.kind === "LIST" ? block.items.flatMap(wordsIn) : block.content.flatMap(textsIn)));

const textsIn = (inline: WrittenInline): readonly string[] =>
  inline.kind === "TEXT" ? inline.text.split(/\s+/) : "content" in inline ? inline.content.flatMap(textsIn) : [];
