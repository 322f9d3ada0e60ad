import { build } from "esbuild";
import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync } from "node:fs";
import { chmod, cp, mkdir, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const dist = join(root, "dist");

/** Every file below a folder, or the file itself, sorted, so that a hash over them is stable. */
async function filesOf(path) {
  const full = join(root, path);
  if (!existsSync(full)) return [];
  const entries = await readdir(full, { recursive: true, withFileTypes: true }).catch(() => null);
  if (entries === null) return [full];
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
}

async function hashOf(paths) {
  const hash = createHash("sha256");
  for (const path of paths) {
    for (const file of await filesOf(path)) hash.update(file.slice(root.length)).update(await readFile(file));
  }
  return hash.digest("hex");
}

/** Runs `make` unless the inputs are what they were when it last ran and its output is still there. */
async function whenChanged(name, inputs, output, make) {
  const stamp = join(dist, ".stamps", name);
  const hash = await hashOf(inputs);
  const last = await readFile(stamp, "utf8").catch(() => null);
  if (last === hash && existsSync(output)) return false;
  await make();
  await mkdir(dirname(stamp), { recursive: true });
  await writeFile(stamp, hash);
  return true;
}

async function generateClient() {
  execFileSync(process.execPath, [join(root, "scripts/generate-client.mjs")], { cwd: root, stdio: ["ignore", 2, 2] });
}

async function bundleService() {
  for (const name of await readdir(dist).catch(() => [])) {
    if (!["explorer", "browser", ".stamps"].includes(name)) await rm(join(dist, name), { recursive: true });
  }
  await build({
    absWorkingDir: root,
    entryPoints: {
      main: "src/app/processes/main.ts",
      worker: "src/app/processes/worker.ts",
      demo: "src/app/processes/demo.ts",
      cli: "src/app/cli/cli.ts",
      "compile-data": "src/app/setup/compile-data.ts",
    },
    outdir: dist,
    bundle: true,
    splitting: true,
    format: "esm",
    platform: "node",
    target: "node20",
    packages: "external",
    sourcemap: true,
    sourcesContent: false,
    chunkNames: "[name]-[hash]",
    logLevel: "warning",
  });
  await chmod(join(dist, "cli.js"), 0o755);
  // type-defs.ts reads the schema from the folder beside the file it was bundled into.
  await cp(join(root, "src/graphql/schema"), join(dist, "schema"), { recursive: true });
  execFileSync(process.execPath, [join(dist, "compile-data.js")], { cwd: root, stdio: ["ignore", 2, 2] });
}

/** The page is committed as it is served; `npm run generate:explorer` bundles it anew. */
async function copyExplorer() {
  await rm(join(dist, "explorer"), { recursive: true, force: true });
  await cp(join(root, explorerBundle), join(dist, "explorer"), { recursive: true });
}

async function bundleForPages() {
  const { bundleBrowser } = await import("./bundle-browser.mjs");
  await bundleBrowser(join(dist, "browser"));
}

const lock = "package-lock.json";
const explorerBundle = "tools/explorer/bundle";
const started = performance.now();
const client = await whenChanged(
  "client",
  ["prisma/schema.prisma", "scripts/generate-client.mjs", "tools/prisma/package.json"],
  join(root, "src/persistence/generated"),
  generateClient,
);
const [service, explorer, browser] = await Promise.all([
  whenChanged("service", ["src", "seeds", "scripts/build.mjs", lock], join(dist, "main.js"), bundleService),
  whenChanged("explorer", [explorerBundle], join(dist, "explorer/index.html"), copyExplorer),
  whenChanged("browser", ["src/browser", "scripts/bundle-browser.mjs", lock], join(dist, "browser"), bundleForPages),
]);
const made = Object.entries({ client, service, explorer, browser }).flatMap(([name, done]) => (done ? [name] : []));
if (made.length > 0) {
  console.error(`built ${made.join(", ")} in ${((performance.now() - started) / 1000).toFixed(1)} s`);
}
