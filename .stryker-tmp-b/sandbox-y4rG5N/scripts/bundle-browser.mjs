// @ts-nocheck
import { build } from "esbuild";
import { mkdir, rm } from "node:fs/promises";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";

const root = dirname(dirname(fileURLToPath(import.meta.url)));

/**
 * Bundles what pages load into one flat folder, named by content.
 *
 * @param {string} folder emptied first
 */
export async function bundleBrowser(folder) {
  await rm(folder, { recursive: true, force: true });
  await mkdir(folder, { recursive: true });
  await build({
    absWorkingDir: root,
    entryPoints: { page: "src/browser/page.css" },
    outdir: folder,
    entryNames: "[name]-[hash]",
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
