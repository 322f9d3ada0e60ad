import { readFile } from "node:fs/promises";
import { describe, expect, it } from "vitest";
import { parseAllDocuments, stringify } from "yaml";
import { readShipped } from "../../../src/app/setup/shipped-data.js";
import type { CodeListName } from "../../../src/domain/code-list-name.js";
import type { Path, Problem } from "../../../src/domain/problem.js";
import { codeListsOf, numbersThatAre } from "../../../src/domain/plan/check/code-lists-of.js";
import { problemText } from "../../../src/exports/sentences/problem-text.js";
import { checkDocuments } from "../../../src/imports/documents/checks/check-documents.js";
import { documentKinds, jsonSchemas, type DocumentKind } from "../../../src/imports/documents/document-kinds.js";
import { readDocuments } from "../../../src/imports/documents/read-documents.js";
import { codeFieldsOf, writtenCodes } from "../../../src/imports/documents/checks/written-codes.js";
import { examples } from "../../kit/example-documents.js";

const shown = await examples();
const rules = await readShipped("rules", process.cwd());
const numbers = new Set((await readShipped("catalogue", process.cwd())).map(({ ndbNo }) => ndbNo));
const codes = { ...codeListsOf(rules), "usda-number": numbersThatAre((each) => numbers.has(each)) };

const problemsOf = (text: string) => {
  const read = readDocuments(text, "whole.yaml");
  return checkDocuments(read, { foods: [], components: [], codes }).problems;
};

/** One document of each kind that has every key there is, so that every field is tried. */
const whole = parseAllDocuments(await readFile("tests/fixtures/documents/every-key.yaml", "utf8")).map(
  (document) => document.toJS() as { readonly kind: DocumentKind },
);
const ofKind = (kind: DocumentKind) => whole.find((document) => document.kind === kind) as object;

interface Shape {
  readonly type?: string;
  readonly enum?: readonly string[];
  readonly const?: unknown;
  readonly properties?: Readonly<Record<string, Shape>>;
  readonly additionalProperties?: Shape | boolean;
  readonly propertyNames?: Shape;
  readonly items?: Shape;
  readonly anyOf?: readonly Shape[];
  readonly allOf?: readonly Shape[];
}

/** Every place of a kind of document that takes a text, as `routes.*.keeping.*.place`; of maps the keys too. */
function textFields(
  shape: Shape,
  way: readonly string[] = [],
): readonly { readonly way: string; readonly words: readonly string[] }[] {
  const { type, properties = {}, additionalProperties, propertyNames, items, anyOf = [], allOf = [] } = shape;
  return [
    ...(type === "string" && shape.const === undefined ? [{ way: way.join("."), words: shape.enum ?? [] }] : []),
    ...Object.entries(properties).flatMap(([key, inner]) => textFields(inner, [...way, key])),
    ...(typeof additionalProperties === "object" ? textFields(additionalProperties, [...way, "*"]) : []),
    ...(propertyNames === undefined ? [] : textFields(propertyNames, [...way, "(key)"])),
    ...(items === undefined ? [] : textFields(items, [...way, "*"])),
    ...[...anyOf, ...allOf].flatMap((inner) => textFields(inner, way)),
  ];
}

const wayOf = (way: ReturnType<typeof codeFieldsOf>[number]["way"]): string =>
  way
    .map((segment) => (typeof segment === "string" ? segment : segment.description === "every key" ? "(key)" : "*"))
    .join(".");

/** Last keys of the fields that hold a name, a reference, an amount or a text in somebody's own words, and no code. */
const ownWords = new Set([
  "lines.*",
  ...["$schema", "slug", "id", "name", "title", "summary", "names.*", "one", "many", "counted", "also.*", "publisher"],
  ...[
    "source",
    "sources.*",
    "sources.(key)",
    "section",
    "container",
    "condition",
    "loose.step",
    "each",
    "form",
    "preparation",
    "written",
    "mark",
    "note",
  ],
  ...["introduction", "notes", "tips", "equipment.*", "tags.*", "licence", "url", "website"],
  ...["image.file", "image.alt", "image.credit"],
  // Of a translation: names of what is translated, and what stands there instead.
  ...["plan", "checked", "alt", "steps.*", "steps.(key)", "swaps.(key)", "*.(key)", "meals.(key)", "routes.(key)"],
  ...["words.*", "words.(key)", "numbers-differ.*"],
  // A zone is looked up in the time-zone database, which is open (tests/services/schedule).
  ...["publish-at.zone", "withdraw-at.zone", "withdraw-at.reason"],
  ...[
    "amount",
    "at",
    "description",
    "eaten",
    "content",
    "price",
    "per-piece",
    "per",
    "ratio",
    "at-least",
    "at-most",
    "in-steps-of",
    "load-batches",
    "share",
  ],
  ...[
    "food",
    "extends",
    "component",
    "part",
    "do",
    "after.*",
    "uses.*",
    "leaves",
    "rule",
    "seen",
    "region",
    "locale",
    "fits",
  ],
  ...[
    "yield",
    "time",
    "wait-at-least",
    "wait-at-most",
    "wash-time",
    "promised-time",
    "celsius",
    "days",
    "grams",
    "pieces",
  ],
  ...["millilitres", "grams-per-ml", "grams-per-gram", "day", "serves", "cooks", "appliances.*"],
]);
const isOwnWords = (way: string): boolean => {
  const keys = way.split(".");
  return ownWords.has(keys.at(-1) ?? "") || ownWords.has(keys.slice(-2).join(".")) || /nutrients\.per-100g/.test(way);
};

describe("a field of a document that takes a text", () => {
  it.each(documentKinds)("is a word of a closed list, or is known to be somebody's own words: %s", (kind) => {
    const coded = new Set(codeFieldsOf(kind).map(({ way }) => wayOf(way)));
    const others = textFields(jsonSchemas()[kind] as Shape).filter(
      ({ way, words }) => words.length === 0 && !coded.has(way) && !isOwnWords(way),
    );
    expect(others.map(({ way }) => way)).toEqual([]);
  });
});

/** The value, with another text at a path; `key`: the key itself is another. */
function changed(value: unknown, path: Path, to: string, key: boolean): unknown {
  const [next, ...rest] = path;
  if (next === undefined) return to;
  if (Array.isArray(value))
    return value.map((each: unknown, at) => (at === next ? changed(each, rest, to, key) : each));
  return Object.fromEntries(
    Object.entries(value as Record<string, unknown>).map(([name, inner]) =>
      name !== next ? [name, inner] : key && rest.length === 0 ? [to, inner] : [name, changed(inner, rest, to, key)],
    ),
  );
}

/** A slip of the finger: a letter left out, and where that is a word too, doubled. */
const slips = (word: string): readonly string[] => [
  word.slice(0, -2) + word.slice(-1),
  word.slice(0, 1) + word.slice(0, 1) + word.slice(1),
  `${word}q`,
];

describe("a misspelt code in a document", () => {
  it("is not in the documents that have every key, which have no fault", () => {
    expect(
      problemsOf(whole.map((document) => stringify(document)).join("---\n")).map(({ problem }) => problemText(problem)),
    ).toEqual([]);
  });

  const written = documentKinds.flatMap((kind) =>
    writtenCodes(kind, ofKind(kind)).map((code) => ({ kind, ...code, where: `${kind}: ${code.path.join(".")}` })),
  );

  it.each(documentKinds)("can stand in every field that takes a code, and each is tried: %s", (kind) => {
    const tried = new Set(
      written.filter((each) => each.kind === kind).map(({ path, at }) => general(path, at === "KEY")),
    );
    const fields = codeFieldsOf(kind).map(({ way }) => wayOf(way));
    expect(fields.length).toBeGreaterThan(0);
    // Refused there whatever it says, since nothing is kept of a meal.
    const nowhere = ["meals.*.lines.*.swaps.*.keeps-as"];
    expect(fields.filter((way) => !nowhere.includes(way) && !tried.has(way))).toEqual([]);
  });

  it.each(written)(
    "is refused with its place and the nearest that is known: $where",
    ({ kind, list, written: word, path, at }) => {
      // Two letters have many neighbours, and no number is near another.
      const to =
        list === "language"
          ? "xq"
          : list === "usda-number"
            ? "99999"
            : list === "currency"
              ? `${word.slice(0, 2)}Q`
              : (slips(word).find((slip) => isNew(list, slip)) ?? "");
      const text = stringify(changed(ofKind(kind), path, to, at === "KEY"));
      const others = whole.filter((document) => document.kind !== kind).map((document) => stringify(document));
      const found = problemsOf([text, ...others].join("---\n")).filter(
        ({ problem }) => problem.code === "UNKNOWN_CODE",
      );
      expect(found.map(({ problem }) => problem)).toContainEqual(
        expect.objectContaining({ list, written: to, path: at === "KEY" ? [...path.slice(0, -1), to] : path }),
      );
      const [first] = found;
      const { line, column } = first ?? { line: 0, column: 0 };
      expect(text.split("\n")[line - 1]?.slice(column - 1)).toContain(to);
      if (list === "language" || list === "usda-number") return;
      expect((first?.problem as Extract<Problem, { code: "UNKNOWN_CODE" }>).nearest).toContain(word);
      expect(problemText(first?.problem as Problem)).toContain(`Did you mean`);
    },
  );

  const words = documentKinds.flatMap((kind) =>
    textFields(jsonSchemas()[kind] as Shape)
      .filter(({ words: known }) => known.length > 0)
      .flatMap(({ way }) =>
        pathsTo(ofKind(kind), way.split(".")).map((path) => ({ kind, path, where: `${kind}: ${path.join(".")}` })),
      ),
  );

  it.each(words)("or word of a choice is refused in the same way: $where", ({ kind, path }) => {
    const text = stringify(changed(ofKind(kind), path, "qqqqq", false));
    expect(problemsOf(text)).toContainEqual(
      expect.objectContaining({ path, problem: expect.objectContaining({ code: "BAD_SHAPE", got: "qqqqq" }) }),
    );
  });
});

const isNew = (list: CodeListName, word: string): boolean => {
  const { codes: known = [] } = codes[list] ?? {};
  return !known.includes(word);
};

const general = (path: Path, key: boolean): string =>
  path
    .map((segment, at) => {
      if (typeof segment === "number") return "*";
      if (key && at === path.length - 1) return "(key)";
      return segment;
    })
    .join(".");

function pathsTo(value: unknown, way: readonly string[], path: Path = []): readonly Path[] {
  const [next, ...rest] = way;
  if (next === undefined) return typeof value === "string" ? [path] : [];
  if (typeof value !== "object" || value === null || next === "(key)") return [];
  const entries: readonly (readonly [string | number, unknown])[] = Array.isArray(value)
    ? value.map((each: unknown, at) => [at, each] as const)
    : Object.entries(value);
  return entries
    .filter(([key]) => next === "*" || key === next)
    .flatMap(([key, inner]) => pathsTo(inner, rest, [...path, key]));
}

describe("a usual other spelling of a code", () => {
  const food = (allergen: string) => `kind: food
slug: relish
names: { en: relish }
aisle: jars
shopped-by: mass
allergens: [{ code: ${allergen}, presence: contains, source: writer }]
`;

  it.each([
    ...[
      ["soya", "soy"],
      ["peanuts", "peanut"],
      ["sulfites", "sulphites"],
      ["fishes", "fish"],
      ["mollusks", "mollusc"],
    ],
    ...[
      ["tree-nuts", "tree-nut"],
      ["eggs", "egg"],
      ["groundnuts", "peanut"],
      ["oat", "oats"],
    ],
  ])("is taken for the code itself: %s", (written, code) => {
    const { resolved, problems } = checkDocuments(readDocuments(food(written ?? ""), "x.yaml"), {
      foods: [],
      components: [],
      codes,
    });
    expect(problems).toEqual([]);
    expect(resolved.foods[0]?.value.allergens[0]?.code).toBe(code);
  });

  // The issue's own list of what was taken without a word, and near misses of allergens: nearness is no proof.
  it.each(["penut", "peanutt", "mlik", "nuts", "shellfish", "Soy", "soj"])(
    "is in a table; what is only near is refused: %s",
    (written) => {
      expect(problemsOf(food(written)).map(({ problem }) => problem.code)).toEqual(["UNKNOWN_CODE"]);
    },
  );
});

describe("the currency of a pack's price", () => {
  const food = (price: string) => `kind: food
slug: relish
names: { en: relish }
aisle: jars
shopped-by: mass
packs: [{ id: jar, name: jar, content: 300 g, price: ${price}, seen: 2026-03-02, source: invented }]
`;

  it("is one that there is; else the nearest is named", () => {
    expect(problemsOf(food("1.25 EUR"))).toEqual([]);
    const [found, ...more] = problemsOf(food("1.25 EUE"));
    expect(more).toEqual([]);
    expect(found?.problem).toMatchObject({ code: "BAD_SHAPE", path: ["packs", 0, "price"], got: "1.25 EUE" });
    expect(problemText(found?.problem as Problem)).toContain("EUR");
    // Said once, and of the whole: what is no price at all.
    expect(problemsOf(food("cheap"))).toHaveLength(1);
  });
});

describe("every document that stands in the project's own files", () => {
  it.each(shown)("takes its codes from the closed lists: $name", ({ text, name }) => {
    const read = readDocuments(text, name);
    const found = checkDocuments(read, { foods: [], components: [], codes }).problems;
    expect(read.documents.length).toBeGreaterThan(0);
    expect(
      found.filter(({ problem }) => problem.code === "UNKNOWN_CODE").map(({ problem }) => problemText(problem)),
    ).toEqual([]);
  });
});
