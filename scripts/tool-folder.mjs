import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = dirname(dirname(fileURLToPath(import.meta.url)));

/**
 * Folder of a tool that only the gate needs (`tools/NAME`, with packages and a lock of its own), installed if it is not, or if
 * its lock changed since it was. What a tool prints of that goes to standard error.
 *
 * @param {string} name
 * @returns {string} absolute path
 */
export function toolFolder(name) {
  const folder = join(root, "tools", name);
  if (!existsSync(join(folder, "package.json"))) throw new Error(`there is no tools/${name}`);
  const stamp = join(folder, "node_modules/.installed-lock");
  const wanted = createHash("sha256")
    .update(readFileSync(join(folder, "package-lock.json")))
    .digest("hex");
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === wanted) return folder;
  console.error(`installing tools/${name}, which only this command needs (npm ci)`);
  try {
    execFileSync("npm", ["ci", "--ignore-scripts", "--no-audit", "--no-fund", "--loglevel=error"], {
      cwd: folder,
      stdio: ["ignore", 2, 2],
    });
  } catch {
    // npm has said why on standard error.
    throw new Error(`tools/${name} could not be installed: run "npm ci" in it where the package registry answers`);
  }
  writeFileSync(stamp, wanted);
  return folder;
}

/**
 * Loads a package as files in the tool's folder would.
 *
 * @param {string} name of the tool
 * @returns {NodeJS.Require}
 */
export const requireFrom = (name) => createRequire(join(toolFolder(name), "package.json"));

// node scripts/tool-folder.mjs NAME PROGRAM WORDS...: runs a program of the tool in the folder of the project.
if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const [name, program, ...words] = process.argv.slice(2);
  if (name === undefined || program === undefined) {
    console.error("usage: node scripts/tool-folder.mjs NAME PROGRAM [WORDS...], NAME being a folder below tools/");
    process.exit(2);
  }
  try {
    execFileSync(join(toolFolder(name), "node_modules/.bin", program), words, { stdio: "inherit" });
  } catch (error) {
    if (typeof error.status !== "number") throw error;
    process.exitCode = error.status;
  }
}
