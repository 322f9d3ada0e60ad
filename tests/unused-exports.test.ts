import { readFileSync } from "node:fs";
import path from "node:path";
import { ESLint, Linter } from "eslint";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { exportedForTests } from "../scripts/lint/exported-for-tests.mjs";
import { unusedExports } from "../scripts/lint/unused-exports.mjs";
import { ruleOfUnused, unusedInSrc } from "../scripts/lint/unused-exports-rule.mjs";

const root = path.resolve(import.meta.dirname, "..");

const unusedIn = (files: Readonly<Record<string, string>>): readonly string[] =>
  unusedExports(new Map(Object.entries(files))).map(({ file, name }) => `${file}#${name}`);

describe("exports that no other file uses", () => {
  it.each([
    ["a constant", "export const a = 1;"],
    ["one of several constants", "export const b = 1,\n  a = 2;"],
    ["a constant taken apart", "export const { x: a, ...b } = { x: 1 };"],
    ["a function", "export async function* a() {}"],
    ["a class", "export abstract class a {}"],
    ["a type", "export type a = string;"],
    ["an interface", "export interface a {}"],
    ["an enumeration", "export enum a { one }"],
    ["a name exported later", "const a = 1;\nexport { a };"],
    ["a name exported by another name", "const x = 1;\nexport { x as a };"],
    ["a name passed on", 'export { a } from "./far.js";'],
    ["a whole file passed on by a name", 'export * as a from "./far.js";'],
  ])("are found: %s", (_, text) => {
    const user = 'import { b } from "./near.js";\nexport const z = b;\n';
    expect(unusedIn({ "/src/near.ts": text, "/src/user.ts": user })).toContain("/src/near.ts#a");
  });

  it.each([
    ["an import", 'import { a } from "./near.js";'],
    ["an import by another name", 'import { b as c, a as d } from "./near.js";'],
    ["an import of a type", 'import { type a } from "./near.js";'],
    ["an import of types", 'import type { a } from "./near.js";'],
    ["an import as a whole", 'import * as near from "./near.js";'],
    ["an import when it is needed", 'const load = async () => (await import("./near.js")).a;'],
    ["a type of a file", 'type Near = import("./near.js").a;'],
    ["passing it on", 'export { a as b } from "./near.js";'],
    ["passing all on", 'export * from "./near.js";'],
  ])("are not those used by %s", (_, user) => {
    const found = unusedIn({ "/src/near.ts": "export const a = 1;\n", "/src/user.ts": user });
    expect(found).not.toContain("/src/near.ts#a");
  });

  it("stay unused where a file of that name in another folder is imported, or a text names them", () => {
    const user = '// import { a } from "./near.js"\nimport { a } from "./deep/near.js";\nconst text = "a";\n';
    const files = {
      "/src/near.ts": "export const a = 1;",
      "/src/deep/near.ts": "export const a = 1;",
      "/src/user.ts": user,
    };
    expect(unusedIn(files)).toEqual(["/src/near.ts#a"]);
  });

  it("are none in src", () => {
    expect(unusedInSrc().map(({ file, name }) => `${path.relative(root, file)}#${name}`)).toEqual([]);
  });

  it("are reported by the lint rule at their place in their own file, and looked for once a run", () => {
    let looked = 0;
    const rule = ruleOfUnused(() => {
      looked += 1;
      return unusedExports(new Map([["/src/near.js", "const a = 1;\nexport { a };\n"]]));
    });
    const linter = new Linter({ cwd: "/" });
    const config = { plugins: { own: { rules: { unused: rule } } }, rules: { "own/unused": "error" as const } };
    const reported = (filename: string) =>
      linter
        .verify("// no text is looked at here\n//\n", config, { filename })
        .map(({ line, column }) => [line, column]);
    expect(reported("/src/near.js")).toEqual([[2, 10]]);
    expect(reported("/src/user.js")).toEqual([]);
    expect(looked).toBe(1);
  });

  it("are asked for by the lint of this project", async () => {
    const config: unknown = await new ESLint({ cwd: root }).calculateConfigForFile("src/domain/problem.ts");
    expect(config).toMatchObject({ rules: { "prepwright/unused-exports": [2] } });
  });
});

describe("the list of names exported for tests", () => {
  it.each([...exportedForTests])("%s is still exported", (each) => {
    const [file = "", name = ""] = each.split("#");
    const source = ts.createSourceFile(
      file,
      readFileSync(path.join(root, "src", file), "utf8"),
      ts.ScriptTarget.ES2022,
    );
    const declared = source.statements.flatMap((statement) => {
      if (!ts.canHaveModifiers(statement)) return [];
      if (!ts.getModifiers(statement)?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword)) return [];
      if (ts.isVariableStatement(statement))
        return statement.declarationList.declarations.map((each) => each.name.getText(source));
      return "name" in statement ? [(statement.name as ts.Identifier).text] : [];
    });
    expect(declared).toContain(name);
  });
});
