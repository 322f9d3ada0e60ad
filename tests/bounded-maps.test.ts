import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";

/** Maps and sets that live as long as the process and are filled while it runs, and why none of them grows without end. */
const bounded: Readonly<Record<string, string>> = {
  "src/browser/embed.ts this.#got": "what one element of a page has asked for",
  "src/domain/nutrition/allergens.ts lastInForce": "weak: one answer for each set of rules",
  "src/domain/nutrition/diets.ts lastBreaks": "weak: one answer for each diet of the rules",
  "src/domain/nutrition/diets.ts codes": "weak: one list for each list of the rules",
  "src/domain/once-for.ts known": "weak: one answer for each thing",
  "src/domain/plan/check-bundle.ts checked": "weak: one answer for each plan",
  "src/domain/plan/eaten.ts this.byKey": "lives for one answer",
  "src/domain/plan/line-context.ts known": "weak: one answer for each plan",
  "src/domain/quantity/convert.ts compiled": "weak: one converter for each food",
  "src/domain/second-chance.ts this.entries": "bounded by number and weight: the one way of bounding",
  "src/domain/shopping/packs-search.ts this.newest": "lives for one search",
  "src/graphql/introspection-size.ts known": "weak: one answer for each schema",
  "src/graphql/resolvers/parents-of.ts lastParents": "weak: one answer for each food",
  "src/imports/documents/allowed-keys.ts schemas": "as many as there are kinds of documents",
  "src/imports/documents/locate-problem.ts namesKnown": "weak: one answer for each reading of documents",
  "src/imports/documents/locate-problem.ts placesKnown": "weak: one answer for each list of a document",
  "src/imports/documents/written-codes.ts fields": "as many as there are kinds of documents",
  "src/imports/documents/yaml-places.ts this.known": "lives as long as its document",
  "src/imports/documents/yaml-tokens.ts this.counts": "as many as there are limits",
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

const lasting = sourceFiles("src").flatMap((path) => lastingIn(path, readFileSync(path, "utf8")));

describe("maps and sets that outlive a request", () => {
  it("are all known to be bounded", () => {
    expect(lasting.map(({ place }) => place).filter((place) => bounded[place] === undefined)).toEqual([]);
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
});
