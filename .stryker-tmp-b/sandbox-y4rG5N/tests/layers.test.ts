// @ts-nocheck
import { readdirSync, readFileSync, statSync } from "node:fs";
import path from "node:path";
import { ESLint } from "eslint";
import ts from "typescript";
import { describe, expect, it } from "vitest";
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

/** Depth-first walk that remembers its path; run-time imports only, since types vanish. */
function importCycle(imports: readonly Import[]): string[] | null {
  const next = new Map<string, string[]>();
  for (const { from, to, typesOnly } of imports) if (!typesOnly) next.set(from, [...(next.get(from) ?? []), to]);
  const done = new Set<string>();
  const walk = (file: string, trail: readonly string[]): string[] | null => {
    const at = trail.indexOf(file);
    if (at >= 0) return [...trail.slice(at), file];
    if (done.has(file)) return null;
    for (const to of next.get(file) ?? []) {
      const cycle = walk(to, [...trail, file]);
      if (cycle !== null) return cycle;
    }
    done.add(file);
    return null;
  };
  for (const file of next.keys()) {
    const cycle = walk(file, []);
    if (cycle !== null) return cycle;
  }
  return null;
}

describe("the layers", () => {
  it("are kept by every import in src", () => {
    expect(all.length).toBeGreaterThan(50);
    expect(breaches(all)).toEqual([]);
  });

  it("hold no cycle of imports", () => {
    expect(importCycle(all)).toBeNull();
  });

  it("would be seen to break by this test", () => {
    const breach = 'import { openServer } from "../../persistence/open-server.js";';
    expect(breaches(importsOf(path.join(src, "domain/plan/breach.ts"), breach))).toHaveLength(1);
    const upwards = 'import { scalePlan } from "../plan/scale-plan.js";';
    expect(breaches(importsOf(path.join(src, "domain/quantity/breach.ts"), upwards))).toHaveLength(1);
    expect(
      importCycle([
        { from: "a.ts", to: "b.ts", typesOnly: false },
        { from: "b.ts", to: "a.ts", typesOnly: false },
      ]),
    ).toEqual(["a.ts", "b.ts", "a.ts"]);
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
  });
});
