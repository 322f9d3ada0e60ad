import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import ts from "typescript";
import { filesBelow, isGenerated } from "./source-files.mjs";

/** What is generated is not ours to mend. */
const sourceFiles = (folder) => filesBelow(folder).filter((file) => !isGenerated(file));

/**
 * Files of a folder that import one another in a ring, imports of types too: who reads one has to know them all.
 *
 * @param {ReadonlyMap<string, readonly string[]>} imports what each file imports
 * @returns {string[][]} each ring once, as the files in the order they import each other
 */
export function importRings(imports) {
  const rings = [];
  const done = new Set();
  const walk = (file, trail) => {
    const at = trail.indexOf(file);
    if (at >= 0) rings.push(trail.slice(at));
    if (at >= 0 || done.has(file)) return;
    for (const next of imports.get(file) ?? []) walk(next, [...trail, file]);
    done.add(file);
  };
  for (const file of imports.keys()) walk(file, []);
  return rings;
}

/** @param {string} folder @returns {Map<string, string[]>} what each of its files imports of the others, dynamic imports left out */
export function importsBelow(folder) {
  const files = new Set(sourceFiles(folder));
  return new Map(
    [...files].map((file) => [
      file,
      ts
        .preProcessFile(readFileSync(file, "utf8"), true, false)
        .importedFiles.map(({ fileName }) => join(dirname(file), fileName.replace(/\.js$/, ".ts")))
        .filter((imported) => files.has(imported)),
    ]),
  );
}
