import fc from "fast-check";
import { fromMarkdown } from "mdast-util-from-markdown";
import { describe, expect, it } from "vitest";
import type { Block, Inline, Lines } from "../../../src/exports/document/document.js";
import { writtenBlocks } from "../../../src/exports/document/written-blocks.js";
import { oneLine } from "../../../src/exports/words/legible-text.js";
import { renderMarkdown } from "../../../src/exports/document/render-markdown.js";
import { hostileText } from "../hostile-text.js";

type Node = ReturnType<typeof fromMarkdown> | ReturnType<typeof fromMarkdown>["children"][number];

/** What a CommonMark parser that we did not write (micromark) makes of a text: kinds and words, nothing else. */
function shapeOf(node: Node): unknown {
  if (node.type === "text") return node.value;
  if (node.type === "break") return "\n";
  if (!("children" in node)) return { [node.type]: "value" in node ? node.value : null };
  const words = joined(node.children.map(shapeOf));
  const name = node.type === "heading" ? `heading${node.depth}` : node.type === "link" ? `link ${node.url}` : node.type;
  return { [name]: words };
}

const shape = (markdown: string): unknown => (shapeOf(fromMarkdown(markdown)) as { root: unknown }).root;

const inline = fc.oneof(
  hostileText.map((text): Inline => ({ kind: "TEXT", text })),
  hostileText.map((text): Inline => ({ kind: "STRONG", text })),
  hostileText.map((text): Inline => ({ kind: "ASIDE", text })),
  hostileText.map((text): Inline => ({ kind: "LINK", text, address: "https://plans.example/a?b=(c)&d=e" })),
);
const lines = fc.array(fc.array(inline, { minLength: 1, maxLength: 3 }), { minLength: 1, maxLength: 3 });

/** Lists first and last, so that those around them might run into them. */
const written = fc.constantFrom(
  "Words.",
  "- a\n- b",
  "1. a\n2. b",
  "- a\n\nwords\n\n- b",
  "- a\n+ b\n- c",
  "words\n\n* a",
);

const block: fc.Arbitrary<Block> = fc.oneof(
  written.map((source): Block => ({ kind: "WRITTEN", blocks: writtenBlocks(source) })),
  fc.record({
    kind: fc.constant("HEADING" as const),
    level: fc.constantFrom(1 as const, 2 as const, 3 as const),
    text: hostileText,
  }),
  fc.record({ kind: fc.constant("PARAGRAPH" as const), lines }),
  fc.record({
    kind: fc.constant("LIST" as const),
    of: fc.constantFrom("ITEMS" as const, "TICKS" as const, "STEPS" as const),
    items: fc.array(lines, { minLength: 1, maxLength: 3 }),
  }),
  fc.record({
    kind: fc.constant("TABLE" as const),
    head: fc.constant(["What", "Where"]),
    rows: fc.array(fc.tuple(lines, lines), { minLength: 1, maxLength: 3 }),
  }),
);

const isEmpty = (text: string): boolean => oneLine(text) === "";

/** Only texts that say something: an empty strong is nothing, and a paragraph of nothing is none. */
const says = (of: Lines): boolean => of.every((line) => line.every(({ text }) => !isEmpty(text)));
const saysSomething = (each: Block): boolean => {
  switch (each.kind) {
    case "WRITTEN":
      return true;
    case "HEADING":
      return !isEmpty(each.text);
    case "PARAGRAPH":
      return says(each.lines);
    case "LIST":
      return each.items.every(says);
    case "TABLE":
      return each.rows.every((row) => row.every(says));
  }
};

const wrap: Record<Inline["kind"], (text: string) => unknown> = {
  TEXT: (text) => text,
  STRONG: (text) => ({ strong: text }),
  ASIDE: (text) => ({ emphasis: text }),
  LINK: (text) => ({ "link https://plans.example/a?b=(c)&d=e": text }),
};

/** Neighbouring words are one run of text, as a parser sees them. */
function joined(parts: readonly unknown[]): unknown {
  const runs: unknown[] = [];
  for (const part of parts) {
    const last = runs.at(-1);
    if (typeof part === "string" && typeof last === "string") runs[runs.length - 1] = last + part;
    else runs.push(part);
  }
  return runs.every((each) => typeof each === "string") ? runs.join("") : runs;
}

const writtenShape = (blocks: Extract<Block, { kind: "WRITTEN" }>["blocks"]): readonly unknown[] =>
  blocks.map((each) =>
    each.kind === "LIST"
      ? { list: each.items.map((item) => ({ listItem: writtenShape(item) })) }
      : { paragraph: each.content.map((run) => (run.kind === "TEXT" ? run.text : "")).join("") },
  );

const lineParts = (line: Lines[number]): readonly unknown[] =>
  line.flatMap((each, at) => [...(at === 0 ? [] : [" "]), wrap[each.kind](oneLine(each.text))]);
const linesParts = (of: Lines): readonly unknown[] =>
  of.flatMap((line, at) => [...(at === 0 ? [] : ["\n"]), ...lineParts(line)]);

function expected(each: Exclude<Block, { kind: "WRITTEN" }>): unknown {
  switch (each.kind) {
    case "HEADING":
      return { [`heading${each.level}`]: oneLine(each.text) };
    case "PARAGRAPH":
      return { paragraph: joined(linesParts(each.lines)) };
    case "LIST":
      return {
        list: each.items.map((item) => ({
          listItem: [{ paragraph: joined([...(each.of === "TICKS" ? ["[ ] "] : []), ...linesParts(item)]) }],
        })),
      };
    case "TABLE":
      return {
        list: each.rows.map(([first = [], second = []]) => {
          const cells = second.flatMap((line, at) => [...(at === 0 ? [] : ["; "]), ...lineParts(line)]);
          const under = { list: [{ listItem: [{ paragraph: joined([`${each.head[1]}: `, ...cells]) }] }] };
          return { listItem: [{ paragraph: joined(linesParts(first)) }, under] };
        }),
      };
  }
}

describe("blocks as CommonMark", () => {
  it("read back as the same blocks, whatever their texts", () => {
    fc.assert(
      fc.property(fc.array(block.filter(saysSomething), { minLength: 1, maxLength: 4 }), (blocks) => {
        expect(shape(renderMarkdown(blocks))).toEqual(
          blocks.flatMap((each) => (each.kind === "WRITTEN" ? writtenShape(each.blocks) : [expected(each)])),
        );
      }),
      { numRuns: 200 },
    );
  });

  it("leave numbers and ordinary punctuation alone", () => {
    const said = '1.25 kg of beets (red), salt & pepper: "half" - or 2/3?';
    expect(renderMarkdown([{ kind: "PARAGRAPH", lines: [[{ kind: "TEXT", text: said }]] }])).toBe(
      said.replace("&", "\\&") + "\n",
    );
  });
});
