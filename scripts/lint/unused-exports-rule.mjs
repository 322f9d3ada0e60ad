import { readFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { exportedForTests } from "./exported-for-tests.mjs";
import { filesBelow, isGenerated } from "./source-files.mjs";
import { unusedExports } from "./unused-exports.mjs";

const root = join(import.meta.dirname, "../..");
const src = join(root, "src");

/** `scripts` is built on src too. The database client, generated and as long as all the rest, uses nothing of ours. */
const readers = () =>
  [...filesBelow(src), ...filesBelow(join(root, "scripts"))].filter(
    (file) => !file.startsWith(join(src, "persistence", "generated")),
  );

/**
 * Exports of src that no other file uses and that are not in the list for tests, as the files stand on disk.
 *
 * @returns {{ file: string, name: string, line: number, column: number }[]}
 */
export function unusedInSrc() {
  const texts = new Map(readers().map((file) => [file, readFileSync(file, "utf8")]));
  const ours = unusedExports(texts).filter(({ file }) => file.startsWith(src + sep) && !isGenerated(file));
  return ours.filter(({ file, name }) => !exportedForTests.has(`${relative(src, file).split(sep).join("/")}#${name}`));
}

/**
 * @param {() => readonly { file: string, name: string, line: number, column: number }[]} find asked once for all files of a run
 * @returns {import("eslint").Rule.RuleModule}
 */
export function ruleOfUnused(find) {
  let known = null;
  return {
    meta: {
      type: "problem",
      schema: [],
      messages: {
        unused:
          "No other file of src uses `{{name}}`: do not export it. Where tests have no other way in, give the reason in scripts/lint/exported-for-tests.mjs",
      },
    },
    create: (context) => ({
      Program() {
        known ??= find();
        for (const { name, line, column } of known.filter(({ file }) => file === context.filename))
          context.report({ loc: { line, column }, messageId: "unused", data: { name } });
      },
    }),
  };
}

export const unusedExportsRule = ruleOfUnused(unusedInSrc);
