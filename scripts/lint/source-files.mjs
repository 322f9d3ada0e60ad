import { readdirSync } from "node:fs";
import { dirname, join } from "node:path";

/** @param {string} folder @returns {string[]} its TypeScript files */
export const filesBelow = (folder) =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(".ts"))
    .map((entry) => join(entry.parentPath, entry.name));

/** @param {string} file */
export const isGenerated = (file) => dirname(file).includes("generated");
