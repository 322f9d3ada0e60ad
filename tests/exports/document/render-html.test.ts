import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  heading,
  link,
  paragraph,
  strong,
  tableOf,
  listOf,
  text,
  type Block,
} from "../../../src/exports/document/document.js";
import { legibleText } from "../../../src/exports/words/legible-text.js";
import { renderHtml, type HtmlSkin } from "../../../src/exports/document/render-html.js";
import { hostileText } from "../hostile-text.js";
import { htmlTree } from "../html-tree.js";

const skin: HtmlSkin = {
  attributes: (element) => ` class="${element}"`,
  tick: (label) => `<label><input type="checkbox"> ${label}</label>`,
  headingsBelow: 0,
};

const blocksOf = (words: string): readonly Block[] => [
  heading(1, words),
  paragraph([text(words), link(words, `https://plans.example/?q=${words}`)], [strong(words)]),
  ...listOf("TICKS", [[[text(words)]]]),
  ...tableOf([words, "Where"], [[[[strong(words)]], [[text(words)]]]]),
];

/** The elements drawn for harmless words; no text may add, take away or reorder one. */
const names = (words: string): readonly string[] =>
  htmlTree(renderHtml(blocksOf(words), skin)).elements.map(({ name }) => name);

describe("blocks as HTML", () => {
  it("hold the texts and nothing that a text brought along", () => {
    const harmless = names("beets");
    fc.assert(
      fc.property(hostileText, (words) => {
        fc.pre(legibleText(words) !== "");
        const { errors, elements, comments } = htmlTree(renderHtml(blocksOf(words), skin));
        expect(errors).toEqual([]);
        expect(comments).toBe(0);
        expect(elements.map(({ name }) => name)).toEqual(harmless);
        // Line ends are normalised by every HTML parser (WHATWG HTML, preprocessing the input stream).
        const said = legibleText(words).replace(/\r\n?/g, "\n");
        expect(elements.find(({ name }) => name === "h1")?.text).toBe(said);
        expect(elements.find(({ name }) => name === "a")?.attributes["href"]).toBe(`https://plans.example/?q=${said}`);
        for (const { attributes } of elements) expect(Object.keys(attributes).join()).not.toMatch(/\bon/);
      }),
      { numRuns: 300 },
    );
  });
});
