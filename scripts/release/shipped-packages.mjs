import { existsSync } from "node:fs";
import { readdir, readFile } from "node:fs/promises";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";

export const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));

/**
 * @typedef {object} ShippedPackage
 * @property {string} name
 * @property {string} version
 * @property {string | null} license SPDX expression; null: it names none
 * @property {string} folder in which its packages lie: below the project's, or, for a bundled one, below tools/explorer
 * @property {string} [integrity] what the lock of tools/explorer says of a bundled one
 * @property {"installed" | "bundled"} how installed beside the program, or part of a file below `dist`
 */

/** Folder of a package's files, for a path into it; null: the path leads to no package. */
export const packageFolderOf = (path) => /^(.*node_modules\/(?:@[^/]+\/)?[^/]+)(?:\/|$)/.exec(path)?.[1] ?? null;

/** @returns {Promise<ShippedPackage>} */
async function readPackage(folder, how) {
  const { name, version, license } = JSON.parse(await readFile(join(root, folder, "package.json"), "utf8"));
  return { name, version, license: typeof license === "string" ? license : null, folder, how };
}

/**
 * Every package of others that users get: those that are installed with the program, and those that are part of the explorer
 * page. Needs `npm ci` and a build.
 *
 * @returns {Promise<readonly ShippedPackage[]>}
 */
export async function shippedPackages() {
  const { packages } = JSON.parse(await readFile(join(root, "package-lock.json"), "utf8"));
  const installed = Object.entries(packages)
    .filter(([folder, { dev, devOptional, optional }]) => {
      if (folder === "" || dev || devOptional) return false;
      // Optional ones are for other machines where they are not here.
      return !(optional && !existsSync(join(root, folder)));
    })
    .map(([folder]) => readPackage(folder, "installed"));
  const bundled = JSON.parse(await readFile(join(root, "dist/explorer/packages.json"), "utf8"));
  return [...(await Promise.all(installed)), ...bundled.map((each) => ({ ...each, how: "bundled" }))];
}

/** The text of a package's licence; null: it comes without one. */
export async function licenceText(folder) {
  const from = resolve(root, folder);
  const names = await readdir(from);
  const name = names.find((each) => /^(licen[cs]e|copying)(\.|-|$)/i.test(each));
  return name === undefined ? null : readFile(join(from, name), "utf8");
}
