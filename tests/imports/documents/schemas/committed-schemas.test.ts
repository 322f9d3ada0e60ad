import { readdir, readFile } from "node:fs/promises";
import path from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import ajvFormats from "ajv-formats";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parse, parseAllDocuments } from "yaml";
import { documentKinds, jsonSchemas, type DocumentKind } from "../../../../src/imports/documents/document-kinds.js";
import { readDocuments } from "../../../../src/imports/documents/read-documents.js";

// Judged by a validator of the published standard (JSON Schema 2020-12) that is not ours.
const ajv = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true });
ajvFormats.default(ajv);
const validators = Object.fromEntries(documentKinds.map((kind) => [kind, ajv.compile(jsonSchemas()[kind])]));
const passes = (kind: DocumentKind, value: unknown): boolean => validators[kind]?.(value) === true;

const folders = { food: "foods", component: "components", plan: "plans" } as const;
const demo = await Promise.all(
  (["food", "component", "plan"] as const).map(async (kind) => {
    const folder = path.join("seeds", folders[kind]);
    const names = (await readdir(folder)).filter((name) => name.endsWith(".yaml"));
    const texts = await Promise.all(names.map((name) => readFile(path.join(folder, name), "utf8")));
    return {
      kind,
      documents: texts.map((text, at) => ({ name: names[at] ?? "", text, value: parse(text) as object })),
    };
  }),
);

describe("the schemas for editors", () => {
  it.each(documentKinds)("are committed as docs/schemas (this test with -u writes them): %s", async (kind) => {
    const text = `${JSON.stringify(jsonSchemas()[kind], null, 2)}\n`;
    await expect(text).toMatchFileSnapshot(`../../../../docs/schemas/${kind}.json`);
  });

  it.each(demo)("let every document of the demo pass, as an editor reads it: $kind", ({ kind, documents }) => {
    expect(documents.length).toBeGreaterThan(3);
    for (const { name, value } of documents) {
      expect([name, passes(kind, value) ? [] : validators[kind]?.errors]).toEqual([name, []]);
      expect(passes(kind, { $schema: `../schemas/${kind}.json`, ...value }), name).toBe(true);
    }
  });

  it("let the examples of the guide pass", async () => {
    const guide = await readFile("docs/documents.md", "utf8");
    const blocks = [...guide.matchAll(/```yaml\n(.*?)```/gs)].map(([, text]) => text ?? "");
    const values = blocks.flatMap((text) =>
      parseAllDocuments(text).map((each) => each.toJS() as { kind: DocumentKind }),
    );
    expect(values.length).toBeGreaterThan(5);
    for (const value of values) expect(passes(value.kind, value) || validators[value.kind]?.errors).toBe(true);
  });

  it.each(demo)(
    "refuse a document that lacks a key, has one too many, or another kind of value: $kind",
    ({ kind, documents }) => {
      const [first] = documents;
      if (first === undefined) throw new Error("the demo is empty");
      // A food that builds on another says less.
      const { required: always = [], anyOf = [] } = jsonSchemas()[kind];
      const required = [
        ...always,
        ...((anyOf[0] as { readonly required?: readonly string[] } | undefined)?.required ?? []),
      ];
      expect(required.length).toBeGreaterThan(3);
      for (const key of required) {
        expect(
          passes(kind, Object.fromEntries(Object.entries(first.value).filter(([name]) => name !== key))),
          key,
        ).toBe(false);
      }
      for (const change of [{ tittle: "x" }, { slug: "Not A Slug" }, { slug: 7 }, { kind: "meal" }]) {
        expect(passes(kind, { ...first.value, ...change }), JSON.stringify(change)).toBe(false);
      }
    },
  );

  it("refuse nothing that the service takes: what they refuse in a changed document, it refuses too", () => {
    const all = demo.flatMap(({ kind, documents }) => documents.map(({ value }) => ({ kind, value })));
    // No bare numbers: our reader takes every scalar as text, so `aisle: 3` is a word to it and a number to an editor.
    const change = fc.constantFrom<unknown>(null, "", "x", "3", "-1", [], {}, "yes", ["a"]);
    fc.assert(
      fc.property(fc.constantFrom(...all), fc.nat(), change, ({ kind, value }, at, to) => {
        const keys = Object.keys(value);
        const key = keys[at % keys.length] ?? "slug";
        const changed = { ...value, [key]: to };
        const { problems } = readDocuments(JSON.stringify(changed), "changed.json");
        if (problems.length === 0) expect([key, to, passes(kind, changed)]).toEqual([key, to, true]);
      }),
      { numRuns: 500 },
    );
  });
});
