import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";

/** Maps and sets that live as long as the process and are filled while it runs, and why none of them grows without end. */
const bounded: Readonly<Record<string, string>> = {
  "src/browser/embed.ts this.#got": "what one element of a page has asked for",
  "src/domain/cache-table.ts table": "as many as the program has names for caches",
  "src/domain/nutrition/allergens.ts lastInForce": "weak: one answer for each set of rules",
  "src/domain/nutrition/diets.ts lastBreaks": "weak: one answer for each diet of the rules",
  "src/domain/nutrition/diets.ts codes": "weak: one list for each list of the rules",
  "src/domain/memoize.ts known": "weak: one answer for each thing",
  "src/domain/plan/check/check-bundle.ts checked": "weak: one answer for each plan",
  "src/domain/plan/contents/eaten.ts this.byKey": "lives for one answer",
  "src/domain/plan/compile/line-context.ts known": "weak: one answer for each plan",
  "src/domain/plan/translate/known-numbers.ts this.measured": "lives for one comparison of two texts",
  "src/domain/plan/translate/known-numbers.ts this.unitless": "lives for one comparison of two texts",
  "src/domain/plan/translate/known-numbers.ts this.written": "lives for one comparison of two texts",
  "src/domain/quantity/convert.ts compiled": "weak: one converter for each food",
  "src/domain/shopping/packs-search.ts this.newest": "lives for one search",
  "src/domain/writing/read-writing.ts this.#lists": "weak: one list for each block of a text",
  "src/graphql/limits/introspection-size.ts known": "weak: one answer for each schema",
  "src/graphql/resolvers/make-parents.ts lastParents": "weak: one answer for each food",
  "src/imports/documents/allowed-keys.ts schemas": "as many as there are kinds of documents",
  "src/imports/documents/yaml/locate-problem.ts namesKnown": "weak: one answer for each reading of documents",
  "src/imports/documents/yaml/locate-problem.ts placesKnown": "weak: one answer for each list of a document",
  "src/imports/documents/checks/written-codes.ts fields": "as many as there are kinds of documents",
  "src/imports/documents/yaml/yaml-places.ts this.known": "lives as long as its document",
  "src/imports/documents/yaml/yaml-tokens.ts this.counts": "as many as there are limits",
  "src/persistence/plans/frozen-document.ts sizes": "weak: one size for each plan",
  "src/services/plans/gather-plan.ts known": "weak: one reading of the drafts of each plan",
};

/** The same that a function makes for functions which outlive it. */
const inClosures: Readonly<Record<string, string>> = {
  "src/app/server/request-queue.ts queue": "who would wait too long is turned away",
  "src/app/observe/traces.ts spans": "weak: one span for each request",
  "src/app/setup/open-database.ts knownRules": "sets of rules that the operator loaded",
  "src/app/processes/job-queue.ts running": "statements of jobs under way, each taken out when it ends",
  "src/services/plans/change-signals.ts listeners": "streams, each taken out when it is over",
  "src/services/shared-polls.ts listeners": "streams that look at one thing, each taken out when it is over",
  "src/services/shared-polls.ts polls": "what streams look at, each taken out with its last stream",
  "src/services/plans/change-signals.ts running": "reads under way, each taken out when it ends",
  "src/http/compression.ts known": "weak: the compressed bytes of each answer that is held",
  "src/http/compression.ts waiting": "thirty at most: beyond them, answers are sent as they are",
  "src/domain/cache-table.ts entries": "caches that live, each taken out when it is gone",
  "src/domain/memoize.ts known": "weak: one answer for each thing",
  "src/domain/plan/check/check-bundle.ts foods": "lives while one plan is checked",
  "src/domain/plan/check/check-bundle.ts components": "lives while one plan is checked",
  "src/domain/plan/session/session-input.ts next": "lives for one session",
  "src/domain/prep-session/evening-steps.ts known": "minutes of one session",
  "src/domain/problem.ts problems": "lives for one reading",
  "src/domain/quantity/naming/name-key.ts known": "lives while the names of one list are laid out",
  "src/domain/shopping/merge.ts byDay": "lives for one list",
  "src/domain/shopping/merge.ts groups": "lives for one list",
  "src/domain/storage/cautions.ts known": "weak: one answer for each thing",
  "src/domain/storage/inherited-limits.ts done": "lives for one answer",
  "src/domain/storage/keeping-window.ts dates": "lives for one answer",
  "src/domain/storage/keeping-window.ts meals": "lives for one answer",
  "src/domain/storage/keeping-window.ts ends": "lives for one answer",
  "src/exports/sentences/named-warning.ts known": "lives for one answer, and stops at the things of its plans",
  "src/graphql/limits/document-limits.ts fragments": "lives while one document is checked",
  "src/graphql/limits/introspection-limits.ts asked": "lives while one document is checked",
  "src/graphql/limits/introspection-size.ts ofFields": "lives as long as its document, which is bounded",
  "src/graphql/limits/introspection-size.ts members": "weak: one answer for each element of the schema",
  "src/graphql/loaders.ts frozen": "lives for one request",
  "src/imports/prices/read-price-row.ts contents": "lives for one file, and stops at a number",
  "src/imports/recipes/html-json-ld.ts blocks": "lives for one page, and stops at a number",
  "src/imports/recipes/read-recipe-node.ts faults": "lives for one recipe",
  "src/imports/usda/read-catalogue-weight.ts seen": "lives for one file, of so many rows at most",
  "src/persistence/database/change-signals.ts waiting": "writes that wait to be heard, of so many transactions at most",
  "src/persistence/database/semaphore.ts waiting": "requests that wait, each for its patience at most",
  "src/services/drafts/classify-drafts.ts components": "lives for one file, which is read whole",
  "src/services/drafts/classify-drafts.ts aside": "lives for one file, which is read whole",
  "src/services/drafts/classify-drafts.ts foods": "lives for one file, which is read whole",
  "src/services/drafts/classify-drafts.ts plans": "lives for one file, which is read whole",
  "src/services/drafts/classify-drafts.ts moved": "lives for one file, which is read whole",
  "src/services/drafts/classify-drafts.ts movedFoods": "lives for one file, which is read whole",
  "src/services/foods/load-catalogue-rows.ts refused": "lives for one chunk of rows",
  "src/services/cache/cache.ts computing": "answers being computed, each deleted when it is done",
  "src/services/cache/tracked-deps.ts places": "lives for one answer",
  "src/services/imports/rows/recipe-titles.ts next": "lives for one file of recipes",
  "src/services/imports/rows/recipe-titles.ts taken": "lives for one file of recipes",
  "src/services/time-slices.ts queue": "requests being computed",
};

/** A collection that is made when a module is loaded or an object is made, and filled later. */
interface Lasting {
  readonly place: string;
  readonly kind: string;
}

const sourceFiles = (folder: string): readonly string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return entry.name === "generated" ? [] : sourceFiles(path);
    return path.endsWith(".ts") ? [path] : [];
  });

const collections: ReadonlySet<string> = new Set(["Map", "Set", "WeakMap", "WeakSet"]);

/** Those of one file. What nothing puts anything into is constant after loading. */
function lastingIn(path: string, text: string): readonly Lasting[] {
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const found: Lasting[] = [];
  const isFilled = (name: string): boolean => new RegExp(`(?<![\\w#])${name}(\\))?\\.(set|add)\\(`).test(text);
  const visit = (node: ts.Node): void => {
    if (ts.isNewExpression(node) && collections.has(node.expression.getText())) {
      const owner = ts.findAncestor(node, (each) => ts.isPropertyDeclaration(each) || ts.isFunctionLike(each));
      const variable = ts.findAncestor(node, ts.isVariableDeclaration);
      const kind = node.expression.getText();
      if (owner !== undefined && ts.isPropertyDeclaration(owner))
        found.push({ place: `${path} this.${owner.name.getText()}`, kind });
      else if (owner === undefined && variable !== undefined && isFilled(variable.name.getText()))
        found.push({ place: `${path} ${variable.name.getText()}`, kind });
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

/** What an array or a text does with a function that it is given, and then forgets it. */
const atOnce: ReadonlySet<string> = new Set(
  (
    "map flatMap filter forEach reduce reduceRight some every find findIndex findLast findLastIndex sort toSorted replace replaceAll " +
    "from then catch finally transaction"
  ).split(" "),
);

/** A function inside of a function that is there when the outer one has returned, as far as can be seen from how it is written. */
function outlives(inner: ts.Node, outer: ts.Node, seen: ReadonlySet<ts.Node> = new Set()): boolean {
  if (seen.has(inner)) return false;
  const named = nameOf(inner);
  if (named !== null) {
    let does = false;
    const look = (node: ts.Node): void => {
      if (does) return;
      if (ts.isIdentifier(node) && node.text === named && node.parent !== inner && !isWithin(node, inner)) {
        const called = ts.isCallExpression(node.parent) && node.parent.expression === node;
        const user = ts.findAncestor(node.parent, ts.isFunctionLike);
        if (user !== undefined && user !== outer) does = outlives(user, outer, new Set([...seen, inner]));
        else if (!called && !isDeclared(node)) does = isHandedOut(node, outer);
      }
      ts.forEachChild(node, look);
    };
    look(outer);
    return does;
  }
  return isHandedOut(inner, outer, seen);
}

const isWithin = (node: ts.Node, other: ts.Node): boolean =>
  ts.findAncestor(node, (each) => each === other) !== undefined;
const isDeclared = (node: ts.Identifier): boolean => ts.isVariableDeclaration(node.parent) && node.parent.name === node;

/** The name that a function has inside of another. */
function nameOf(inner: ts.Node): string | null {
  if (ts.isFunctionDeclaration(inner)) return inner.name?.text ?? null;
  const { parent } = inner;
  return ts.isVariableDeclaration(parent) && ts.isIdentifier(parent.name) ? parent.name.text : null;
}

/** Whether a value leaves a function: it is returned, or given to something that may keep it. */
function isHandedOut(value: ts.Node, outer: ts.Node, seen: ReadonlySet<ts.Node> = new Set()): boolean {
  for (let node = value; node.parent !== undefined && node !== outer; node = node.parent) {
    const { parent } = node;
    if (ts.isReturnStatement(parent) || ts.isYieldExpression(parent))
      return ts.findAncestor(parent, ts.isFunctionLike) === outer;
    if (parent === outer) return ts.isArrowFunction(outer) && outer.body === node;
    if (ts.isCallExpression(parent) && parent.expression !== node) {
      const callee = parent.expression;
      return (
        !(ts.isPropertyAccessExpression(callee) && atOnce.has(callee.name.text)) && isHandedOut(parent, outer, seen)
      );
    }
    if (ts.isFunctionLike(parent)) return outlives(parent, outer, new Set([...seen, value]));
    if (ts.isVariableDeclaration(parent))
      return ts.isIdentifier(parent.name) && usedLater(parent, parent.name.text, outer, seen);
  }
  return false;
}

function usedLater(declared: ts.Node, name: string, outer: ts.Node, seen: ReadonlySet<ts.Node>): boolean {
  if (seen.has(declared)) return false;
  const then = new Set([...seen, declared]);
  let does = false;
  const look = (node: ts.Node): void => {
    if (!does && ts.isIdentifier(node) && node.text === name && !isWithin(node, declared)) {
      const user = ts.findAncestor(node.parent, ts.isFunctionLike);
      does = user !== undefined && user !== outer ? outlives(user, outer, then) : isHandedOut(node, outer, then);
    }
    if (!does) ts.forEachChild(node, look);
  };
  look(outer);
  return does;
}

const growing: ReadonlySet<string> = new Set(["set", "add", "push", "unshift"]);

/** Maps, sets and lists that a function makes and that functions fill which outlive it. */
function keptInClosures(path: string, text: string): readonly Lasting[] {
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const found = new Map<string, Lasting>();
  const visit = (node: ts.Node): void => {
    if (ts.isVariableDeclaration(node) && ts.isIdentifier(node.name)) {
      const outer = ts.findAncestor(node, ts.isFunctionLike);
      const kind = collectionOf(node.initializer);
      const name = node.name.text;
      if (outer !== undefined && kind !== null && isFilledLater(name, outer))
        found.set(name, { place: `${path} ${name}`, kind });
    }
    // In what a function gives back: `{ underWay: new Map() }`.
    if (ts.isPropertyAssignment(node) && ts.findAncestor(node, ts.isFunctionLike) !== undefined) {
      const made = node.initializer;
      const isEmpty = ts.isNewExpression(made) && (made.arguments ?? []).length === 0;
      const kind = isEmpty ? collectionOf(made) : null;
      const name = node.name.getText();
      if (kind !== null) found.set(name, { place: `${path} ${name}`, kind });
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return [...found.values()];
}

function collectionOf(made: ts.Expression | undefined): string | null {
  if (made === undefined) return null;
  if (ts.isArrayLiteralExpression(made)) return "Array";
  return ts.isNewExpression(made) && collections.has(made.expression.getText()) ? made.expression.getText() : null;
}

function isFilledLater(name: string, outer: ts.Node): boolean {
  let is = false;
  const look = (node: ts.Node): void => {
    if (
      ts.isCallExpression(node) &&
      ts.isPropertyAccessExpression(node.expression) &&
      growing.has(node.expression.name.text) &&
      node.expression.expression.getText() === name
    ) {
      const user = ts.findAncestor(node, ts.isFunctionLike);
      if (user !== undefined && user !== outer) is ||= outlives(user, outer);
    }
    if (!is) ts.forEachChild(node, look);
  };
  look(outer);
  return is;
}

const lasting = sourceFiles("src").flatMap((path) => lastingIn(path, readFileSync(path, "utf8")));
const closed = sourceFiles("src").flatMap((path) => keptInClosures(path, readFileSync(path, "utf8")));

describe("maps and sets that outlive a request", () => {
  it("are all known to be bounded", () => {
    expect(lasting.map(({ place }) => place).filter((place) => bounded[place] === undefined)).toEqual([]);
  });

  it("are all known to be bounded where a function keeps them for functions that outlive it", () => {
    expect(closed.map(({ place }) => place).filter((place) => inClosures[place] === undefined)).toEqual([]);
    const places = new Set(closed.map(({ place }) => place));
    expect(Object.keys(inClosures).filter((place) => !places.has(place))).toEqual([]);
  });

  it("are weak where their bound is that of the things they belong to", () => {
    const weak = lasting.filter(({ place }) => bounded[place]?.startsWith("weak") === true);
    expect(weak.filter(({ kind }) => !kind.startsWith("Weak"))).toEqual([]);
    expect(weak.length).toBeGreaterThan(5);
  });

  it("are found wherever they are made", () => {
    expect(
      lastingIn("a.ts", "const seen = new Map<string, number>();\nexport const see = () => seen.set('a', 1);"),
    ).toEqual([{ place: "a.ts seen", kind: "Map" }]);
    expect(lastingIn("a.ts", "class A { private readonly seen = new Set<string>(); }")).toHaveLength(1);
    expect(
      lastingIn("a.ts", "const codes = new Set(['a']);\nexport const has = (code: string) => codes.has(code);"),
    ).toEqual([]);
    expect(lastingIn("a.ts", "const f = () => { const seen = new Set(); seen.add(1); };")).toEqual([]);
  });

  it.each([
    "function open() { const seen = new Map(); return (key) => seen.set(key, 1); }",
    "const open = () => { const seen = new Set(); return { see: (key) => { seen.add(key); } }; };",
    "const open = () => { const seen = []; const see = (key) => void seen.push(key); return { see }; };",
    "const open = () => { const seen = []; function see(key) { seen.push(key); } const by = { see }; return by; };",
    "const open = () => { let seen = new Map(); return memoize((key) => { seen.set(key, 1); }); };",
    "const open = () => { const seen = []; const see = (key) => seen.push(key); return (key) => { see(key); }; };",
    "const open = (bus) => { const seen = []; return bus.on('data', (piece) => seen.push(piece)); };",
    "class A { open() { const seen = new Map(); return (key) => seen.set(key, 1); } }",
    "const open = () => ({ seen: new Map() });",
  ])("are found in what a function hands out: %s", (text) => {
    expect(keptInClosures("a.ts", text)).toEqual([expect.objectContaining({ place: "a.ts seen" })]);
  });

  it.each([
    "const f = (list) => { const seen = new Set(); list.forEach((each) => seen.add(each)); return seen; };",
    "const f = (list) => { const seen = new Set(); return list.filter((each) => !seen.has(each) && seen.add(each)); };",
    "const f = (list) => { const found = []; const visit = (each) => { found.push(each); }; list.map(visit); visit(1); return found; };",
    "const f = () => { const known = new Map([['a', 1]]); return (key) => known.get(key); };",
    "function* f(list) { const seen = new Set(); for (const each of list) { seen.add(each); yield each; } }",
  ])("are not taken for such where they end with their function: %s", (text) => {
    expect(keptInClosures("a.ts", text)).toEqual([]);
  });
});
