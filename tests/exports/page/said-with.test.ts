import fc from "fast-check";
import { expect, it } from "vitest";
import { markup, plainText } from "../../../src/exports/page/markup.js";
import { andListMarkup } from "../../../src/exports/page/said-with.js";
import { andList } from "../../../src/exports/words/and-list.js";

const marked = (text: string) => markup`<i title="a > b">${text}</i>`;

it("joins names in markup by the words that the sound of the next one asks for", () => {
  const list = (...names: string[]) => markup`${andListMarkup(names.map(marked), { language: "es" })}`.text;
  const higo = marked("higo").text;
  expect(list("pera", "higo")).toBe(`${marked("pera").text} e ${higo}`);
  expect(list("higo", "pera")).toBe(`${higo} y ${marked("pera").text}`);
});

it("joins them as it joins plain names, in every language", () => {
  const names = fc.array(fc.constantFrom("pera", "higo", "Ibérico", "hielo", "oca", "sól & <pieprz>"), {
    maxLength: 5,
  });
  fc.assert(
    fc.property(names, fc.constantFrom("en", "de", "fr", "es", "pl"), (texts, language) => {
      const words = { language } as const;
      expect(plainText(andListMarkup(texts.map(marked), words))).toBe(plainText(andList(texts, words)));
    }),
  );
});
