import fc from "fast-check";
import { readdir, readFile } from "node:fs/promises";
import { describe, expect, it } from "vitest";
import { readDocuments } from "../../../../src/imports/documents/read-documents.js";
import { splitDocuments, type DocumentPiece } from "../../../../src/imports/documents/yaml/split-documents.js";
import { yamlLimits } from "../../../../src/imports/documents/yaml/yaml-limits.js";
import { tableText } from "../../../../src/imports/tables/table-text.js";

async function* pieces(text: string, size: number): AsyncGenerator<string> {
  for (let at = 0; at < text.length; at += size) yield text.slice(at, at + size);
  await Promise.resolve();
}

async function split(text: string, size = text.length + 1): Promise<readonly DocumentPiece[]> {
  const found: DocumentPiece[] = [];
  for await (const piece of splitDocuments(pieces(text, size))) found.push(piece);
  return found;
}

async function* bytes(content: Uint8Array): AsyncGenerator<Uint8Array> {
  yield content;
  await Promise.resolve();
}

const folder = "tests/fixtures/imports/documents";

describe("a file of many documents", () => {
  it.each([
    // Documents in it, and how many of them read to the end.
    ["good.yaml", 2, 2],
    ["good.json", 1, 1],
    ["not-closed.yaml", 2, 1],
    ["unknown-unit.yaml", 2, 2],
    ["wrong-kind.yaml", 2, 0],
    ["twice.yaml", 2, 2],
    ["end-marks.yaml", 2, 2],
    ["windows-ends.yaml", 2, 2],
    ["latin-1.yaml", 2, 2],
    ["too-deep.yaml", 2, 1],
    ["alias-bomb.yaml", 2, 1],
    ["truncated.yaml", 2, 1],
    ["empty.yaml", 0, 0],
  ])("is taken apart so that a fault costs only its own document: %s", async (name, count, good) => {
    const content = await readFile(`${folder}/${name}`);
    const found: DocumentPiece[] = [];
    for await (const piece of splitDocuments(tableText(bytes(content)))) found.push(piece);
    expect(found).toHaveLength(count);
    const read = found.map(({ text }) => readDocuments(text, name));
    expect(read.filter(({ documents, problems }) => documents.length === 1 && problems.length === 0)).toHaveLength(
      good,
    );
    // Lines are counted from the beginning of the file.
    const lines = content.toString("latin1").split("\n");
    for (const { line, text } of found) expect(lines[line - 1]?.trim()).toBe(text.split("\n")[0]?.trim());
  });

  it("has a fixture for each row above, and none beside", async () => {
    expect(await readdir(folder)).toHaveLength(13);
  });

  it("comes to the same documents in whatever pieces it arrives", async () => {
    const line = fc.constantFrom(
      "---\n",
      "...\n",
      "a: 1\n",
      "# remark\n",
      "\n",
      "%YAML 1.2\n",
      "--- b\n",
      "---x\n",
      "  --- \n",
    );
    await fc.assert(
      fc.asyncProperty(fc.array(line, { maxLength: 20 }), fc.integer({ min: 1, max: 7 }), async (lines, size) => {
        const text = lines.join("");
        expect(await split(text, size)).toEqual(await split(text));
      }),
    );
  });

  it("loses no line of a document", async () => {
    const document = fc.array(fc.constantFrom("a: 1\n", "b: 2 # x\n", "\n", "  c\n"), { minLength: 1, maxLength: 6 });
    await fc.assert(
      fc.asyncProperty(fc.array(document, { minLength: 1, maxLength: 6 }), async (documents) => {
        const texts = documents.map((lines) => `k: 0\n${lines.join("")}`);
        const found = await split(texts.join("---\n"));
        expect(found.map(({ text }) => text.replace(/^---\n/, ""))).toEqual(texts);
      }),
    );
  });

  it("keeps of a document without end no more than tells that it is too large", async () => {
    const [piece] = await split(`k: ${"x".repeat(3 * yamlLimits.characters)}`, 100_000);
    expect(piece?.text.length).toBeLessThan(yamlLimits.characters + 200_000);
    expect(readDocuments(piece?.text ?? "", "x").problems[0]?.problem.code).toBe("TOO_LARGE");
  });
});
