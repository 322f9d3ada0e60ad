import fc from "fast-check";
import { fromMarkdown } from "mdast-util-from-markdown";
import { expect, it } from "vitest";
import { readWriting } from "../../src/domain/writing/read-writing.js";
import type { WrittenBlock, WrittenInline } from "../../src/domain/writing/writing.js";
import { markdownPieces } from "../kit/markdown-pieces.js";

/** The tree of mdast-util-from-markdown, a reader of CommonMark from outside the project, in the shape of ours. */
type Tree = { readonly type: string; readonly [key: string]: unknown };
const childrenOf = (node: Tree): readonly Tree[] => (node["children"] ?? []) as readonly Tree[];

function outside(node: Tree): unknown {
  const children = merged(childrenOf(node).map(outside));
  switch (node.type) {
    case "paragraph":
      return { kind: "PARAGRAPH", content: children };
    case "list":
      return {
        kind: "LIST",
        start: node["ordered"] === true ? node["start"] : null,
        items: childrenOf(node).map((item) => childrenOf(item).map(outside)),
      };
    case "text":
      return { kind: "TEXT", text: node["value"] };
    case "break":
      return { kind: "BREAK" };
    case "emphasis":
      return { kind: "EMPHASIS", content: children };
    case "strong":
      return { kind: "STRONG", content: children };
    case "link":
      return { kind: "LINK", address: node["url"], content: children };
    default:
      return { kind: node.type };
  }
}

/** Text that touches is one. */
function merged(nodes: readonly unknown[]): readonly unknown[] {
  const found: { kind?: string; text?: string }[] = [];
  for (const node of nodes as { kind?: string; text?: string }[]) {
    const last = found.at(-1);
    if (last?.kind === "TEXT" && node.kind === "TEXT") last.text = `${last.text ?? ""}${node.text ?? ""}`;
    else found.push({ ...node });
  }
  return found;
}

/** Which mark was written does not matter to the other reader. */
const bare = (blocks: readonly WrittenBlock[]): unknown =>
  JSON.parse(JSON.stringify(blocks, (key, value: unknown) => (key === "mark" ? undefined : value)));

it("a text without faults means to us what it means to another reader of CommonMark", () => {
  fc.assert(
    fc.property(markdownPieces, (source) => {
      const { blocks, faults } = readWriting(source);
      fc.pre(faults.length === 0);
      const tree = fromMarkdown(source) as unknown as Tree;
      expect(bare(blocks), source).toEqual(childrenOf(tree).map(outside));
    }),
    { numRuns: 2000 },
  );
});

const kindsIn = (inlines: readonly WrittenInline[]): readonly string[] =>
  inlines.flatMap((each) => [each.kind, ...("content" in each ? kindsIn(each.content) : [])]);

it.each([
  ["*a* **b** [c](https://plans.example/d)", ["EMPHASIS", "TEXT", "TEXT", "STRONG", "TEXT", "TEXT", "LINK", "TEXT"]],
  ["snake_case_name and 2 * 3 * 4", ["TEXT"]],
  ["***both***", ["EMPHASIS", "STRONG", "TEXT"]],
])("%s", (source, kinds) => {
  const [block] = readWriting(source).blocks;
  expect(block?.kind === "PARAGRAPH" && kindsIn(block.content)).toEqual(kinds);
});
