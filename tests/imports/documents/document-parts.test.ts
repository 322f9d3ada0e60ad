import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseAllDocuments } from "yaml";
import { readYaml } from "../../../src/imports/documents/yaml/yaml-text.js";

const partsOf = (text: string): readonly string[] => readYaml(text).documents.map((document) => document.text);

describe("the text of each document", () => {
  it("is the whole text where there is one, to the last byte", () => {
    for (const text of [
      "# head\n\nkind: food   # why\r\n\r\n",
      "---\nkind: food\n",
      "# only\n---\n# remarks\nkind: food\n...\n# after\n",
      '\ufeff{"kind": "food"}',
      "---\n# nothing\n---\nkind: food\n---\n",
    ]) {
      expect(partsOf(text)).toEqual([text]);
    }
  });

  it("goes up to where the next one begins, remarks and all", () => {
    expect(partsOf("# head\na: 1\n# of a\n---\n# of b\nb: 2\n\n--- # mark\nc: 3")).toEqual([
      "# head\na: 1\n# of a\n",
      "# of b\nb: 2\n\n",
      "--- # mark\nc: 3",
    ]);
    expect(partsOf("a: 1\r\n---\r\nb: 2\r\n")).toEqual(["a: 1\r\n", "b: 2\r\n"]);
    expect(partsOf("a: 1\n---\n# blank\n---\nb: 2\n---\n")).toEqual(["a: 1\n", "# blank\n---\nb: 2\n---\n"]);
    expect(partsOf("a: |\n  --- no mark\n  text\n---\nb: 2\n")).toEqual(["a: |\n  --- no mark\n  text\n", "b: 2\n"]);
  });

  it("reads by itself as it read among the others, by our reader and by the library's own", () => {
    const scalar = fc.constantFrom("1", "x y", "'# no remark'", '"---"', "|\n  --- \n  # text\n", "[1, {b: 2}]");
    const remark = fc.constantFrom("", "# remark\n", "\n\n", "  # far\n");
    const document = fc.tuple(remark, scalar, remark).map(([before, value, after]) => `${before}a: ${value}\n${after}`);
    const mark = fc.constantFrom(
      "---\n",
      "---  \n",
      "--- # mark\n",
      "...\n---\n",
      "...\n",
      "...\n# between\n---\n",
      "---\n# blank\n---\n",
    );
    const text = fc
      .tuple(
        fc.constantFrom("", "---\n", "# head\n---\n"),
        fc.array(fc.tuple(document, mark), { minLength: 1, maxLength: 5 }),
      )
      .map(
        ([head, parts]) =>
          head + parts.map(([each, after], index) => (index < parts.length - 1 ? each + after : each)).join(""),
      );
    fc.assert(
      fc.property(text, (whole) => {
        const read = readYaml(whole);
        const theirs = parseAllDocuments(whole, { schema: "failsafe" }) as { toJS(): unknown }[];
        const values = theirs.map((each) => each.toJS()).filter((value) => typeof value === "object" && value !== null);
        expect(read.documents.map(({ value }) => value)).toEqual(values);
        for (const { text: part, value } of read.documents) {
          const again = readYaml(part);
          expect(again.problems).toEqual([]);
          expect(again.documents.map((each) => each.value)).toEqual([value]);
        }
        const lost = (from: string): string => from.replace(/^(---[ \t]*|\s*)$/gm, "").replace(/\n/g, "");
        expect(lost(read.documents.map((each) => each.text).join("\n"))).toBe(lost(whole));
      }),
    );
  });
});
