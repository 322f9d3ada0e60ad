import { readdirSync, readFileSync, statSync } from "node:fs";
import path from "node:path";
import { ESLint } from "eslint";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { importRings, importsBelow } from "../scripts/lint/import-rings.mjs";
import { breach } from "../scripts/lint/layers.mjs";

const root = path.resolve(import.meta.dirname, "..");
const src = path.join(root, "src");

interface Import {
  readonly from: string;
  readonly to: string;
  readonly typesOnly: boolean;
}

const below = (file: string): string => path.relative(src, file).split(path.sep).join("/");

function sourceFiles(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const file = path.join(folder, name);
    if (statSync(file).isDirectory()) return name === "generated" ? [] : sourceFiles(file);
    return name.endsWith(".ts") ? [file] : [];
  });
}

/** Imports of one text by the compiler's own parser, so that the test does not lean on the lint rule. */
function importsOf(file: string, text: string): Import[] {
  const found: Import[] = [];
  const add = (specifier: string, typesOnly: boolean): void => {
    if (!specifier.startsWith(".")) return;
    const to = path.resolve(path.dirname(file), specifier).replace(/\.js$/, ".ts");
    found.push({ from: below(file), to: below(to), typesOnly });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) && ts.isStringLiteral(node.moduleSpecifier)) {
      const clause = node.importClause;
      const named = clause?.namedBindings;
      const everyNamedIsType =
        clause?.name === undefined &&
        named !== undefined &&
        ts.isNamedImports(named) &&
        named.elements.length > 0 &&
        named.elements.every((each) => each.isTypeOnly);
      add(node.moduleSpecifier.text, clause?.isTypeOnly === true || everyNamedIsType);
    }
    if (
      ts.isExportDeclaration(node) &&
      node.moduleSpecifier !== undefined &&
      ts.isStringLiteral(node.moduleSpecifier)
    ) {
      add(node.moduleSpecifier.text, node.isTypeOnly);
    }
    if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      const argument = node.arguments[0];
      if (argument !== undefined && ts.isStringLiteral(argument)) add(argument.text, false);
    }
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true));
  return found;
}

const breaches = (imports: readonly Import[]): string[] =>
  imports.flatMap(({ from, to, typesOnly }) => {
    const why = to.startsWith("..") ? `src may not import ${to}` : breach(from, to, typesOnly);
    return why === null ? [] : [`${from} -> ${to}: ${why}`];
  });

const all = sourceFiles(src).flatMap((file) => importsOf(file, readFileSync(file, "utf8")));

/** Files that import one another, types too: whoever reads one has to know them all. Found by what reaches itself, not by a walk. */
function filesInRings(imports: readonly Import[]): string[] {
  const next = new Map<string, Set<string>>();
  for (const { from, to } of imports) next.set(from, (next.get(from) ?? new Set()).add(to));
  const reaches = (from: string): ReadonlySet<string> => {
    const reached = new Set(next.get(from));
    for (const file of reached) for (const to of next.get(file) ?? []) reached.add(to);
    return reached;
  };
  return [...next.keys()].filter((file) => reaches(file).has(file));
}

describe("the layers", () => {
  it("are kept by every import in src", () => {
    expect(all.length).toBeGreaterThan(50);
    expect(breaches(all)).toEqual([]);
  });

  it("hold no cycle of imports", () => {
    expect(filesInRings(all)).toEqual([]);
  });

  it("would be seen to break by this test", () => {
    const breach = 'import { openServer } from "../../persistence/open-server.js";';
    expect(breaches(importsOf(path.join(src, "domain/plan/breach.ts"), breach))).toHaveLength(1);
    const upwards = 'import { scalePlan } from "../plan/scale-plan.js";';
    expect(breaches(importsOf(path.join(src, "domain/quantity/breach.ts"), upwards))).toHaveLength(1);
    const ring = [
      { from: "a.ts", to: "b.ts", typesOnly: true },
      { from: "b.ts", to: "a.ts", typesOnly: false },
      { from: "c.ts", to: "a.ts", typesOnly: false },
    ];
    expect(filesInRings(ring)).toEqual(["a.ts", "b.ts"]);
  });

  it("would be seen to break by the lint rule", async () => {
    const eslint = new ESLint({ cwd: root });
    const rulesHit = async (file: string, text: string): Promise<(string | null)[]> => {
      const [result] = await eslint.lintText(text, { filePath: path.join(src, file) });
      return (result?.messages ?? []).map((message) => message.ruleId);
    };
    // An existing path, because the typed rules need a file that the project knows.
    expect(
      await rulesHit("domain/problem.ts", 'import { x } from "../persistence/data.js";\nexport const y = x;\n'),
    ).toContain("prepwright/layers");
    expect(await rulesHit("domain/problem.ts", "export const now = Date.now();\n")).toContain("no-restricted-syntax");
    expect(
      importRings(
        new Map([
          ["a", ["b"]],
          ["b", ["c", "a"]],
          ["c", []],
        ]),
      ),
    ).toEqual([["a", "b"]]);
    expect(importRings(importsBelow(src))).toEqual([]);
  });
});
