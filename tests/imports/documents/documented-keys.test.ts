import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { documentKinds, jsonSchemas } from "../../../src/imports/documents/document-kinds.js";

const guide = readFileSync("docs/documents.md", "utf8");

/** The tables of keys, by the kind of document they are of. */
const tables = new Map(
  [...guide.matchAll(/^### Keys of a (\w+)\n([\s\S]*?)(?=^##)/gm)].map(([, kind = "", text = ""]) => [kind, text]),
);

interface Shape {
  readonly properties?: Readonly<Record<string, Shape>>;
  readonly additionalProperties?: Shape | boolean;
  readonly items?: Shape;
  readonly anyOf?: readonly Shape[];
  readonly allOf?: readonly Shape[];
}

function keysOf({ properties = {}, additionalProperties, items, anyOf = [], allOf = [] }: Shape): readonly string[] {
  const inner = [
    ...Object.values(properties),
    ...(typeof additionalProperties === "object" ? [additionalProperties] : []),
    ...(items === undefined ? [] : [items]),
    ...anyOf,
    ...allOf,
  ];
  return [...new Set([...Object.keys(properties), ...inner.flatMap(keysOf)])];
}

describe("the writers' guide", () => {
  it.each(documentKinds)("lists every key of a %s, and none that there is not", (kind) => {
    const table = tables.get(kind) ?? "";
    const keys = keysOf(jsonSchemas()[kind] as Shape);
    const listed = [...table.matchAll(/^\| ((?:`[^`]+`(?:, )?)+)/gm)].flatMap(([, cell = ""]) =>
      [...cell.matchAll(/`([^`]+)`/g)].map(([, key = ""]) => key),
    );
    expect(keys.filter((key) => !listed.includes(key))).toEqual([]);
    expect(listed.filter((key) => !keys.includes(key))).toEqual([]);
  });
});
