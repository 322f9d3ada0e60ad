import { build } from "esbuild";
import { mkdir, rm } from "node:fs/promises";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";

const root = dirname(dirname(fileURLToPath(import.meta.url)));

/**
 * Bundles what pages load into one flat folder, named by content, and the element that other people's pages load.
 *
 * @param {string} folder emptied first
 */
export async function bundleBrowser(folder) {
  await rm(folder, { recursive: true, force: true });
  await mkdir(folder, { recursive: true });
  // The element keeps its address, because other people's pages name it; so does the worker, whose place says what it may answer for.
  await Promise.all([
    bundle(
      folder,
      { page: "src/browser/pages.css", ticks: "src/browser/ticks.ts", cook: "src/browser/cook.ts" },
      "[name]-[hash]",
    ),
    bundle(folder, { embed: "src/browser/embed.ts", offline: "src/browser/offline.ts" }, "[name]"),
  ]);
}

async function bundle(folder, entryPoints, entryNames) {
  await build({
    absWorkingDir: root,
    entryPoints,
    outdir: folder,
    entryNames,
    bundle: true,
    minify: true,
    format: "iife",
    platform: "browser",
    target: "es2022",
    legalComments: "none",
    logLevel: "warning",
  });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const folder = join(root, "dist/browser");
  await bundleBrowser(folder);
  console.log(`wrote ${relative(root, folder)}`);
}
