import { build } from "esbuild";
import { readdir, readFile } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { Script } from "node:vm";

/** A module knows where it stands; inside a bundle it must be told. */
const placed = (path, text) =>
  text
    .replaceAll("import.meta.url", JSON.stringify(pathToFileURL(path).href))
    .replaceAll("import.meta.dirname", JSON.stringify(dirname(path)));

async function suitePaths(folders, leftOut) {
  const lists = await Promise.all(
    folders.map(async (folder) => (await readdir(folder, { recursive: true })).map((name) => join(folder, name))),
  );
  return lists.flat().filter((path) => path.endsWith(".test.ts") && !leftOut.includes(basename(path)));
}

/** Packages are loaded once and shared by all evaluations. `replaced` stand in for packages of their names. */
function sharedPackages(replaced) {
  const packages = new Map(Object.entries(replaced));
  const plugin = {
    name: "shared-packages",
    setup({ onLoad, onResolve }) {
      onResolve({ filter: /^[^./]/ }, ({ path }) => ({ path, namespace: "package" }));
      onLoad({ filter: /.*/, namespace: "package" }, async ({ path }) => {
        if (!packages.has(path)) packages.set(path, await import(path));
        const names = Object.keys(packages.get(path)).filter((name) => name !== "default" && /^[\w$]+$/.test(name));
        const exported = names.map((name) => `const _${name} = shared.${name};\nexport { _${name} as ${name} };\n`);
        return {
          contents: `const shared = packages.get(${JSON.stringify(path)});\nexport default shared.default;\n${exported.join("")}`,
        };
      });
    },
  };
  return { packages, plugin };
}

/**
 * Compiles suites and what they test once, to be evaluated afresh for every mutant.
 *
 * @param {readonly string[]} folders of suites, absolute
 * @param {readonly string[]} leftOut names of suites that are not wanted
 * @param {Record<string, object>} replaced packages to give the suites in place of those installed
 * @returns {Promise<{ suites: { path: string, text: string }[], evaluate: () => Promise<Map<string, () => Promise<unknown>>> }>}
 *   `evaluate` makes everything of the project anew and answers how to load each suite, by its path; what is not asked for is
 *   not loaded
 */
export async function bundleSuites(folders, leftOut, replaced) {
  const paths = await suitePaths(folders, leftOut);
  const { packages, plugin } = sharedPackages(replaced);
  const places = {
    name: "places",
    setup: ({ onLoad }) =>
      onLoad({ filter: /\.ts$/ }, async ({ path }) => ({
        contents: placed(path, await readFile(path, "utf8")),
        loader: "ts",
      })),
  };
  const entry = paths.map((path) => JSON.stringify(path)).map((path) => `loads.set(${path}, () => import(${path}));\n`);
  const { outputFiles } = await build({
    stdin: { contents: entry.join(""), resolveDir: "/" },
    bundle: true,
    write: false,
    format: "esm",
    platform: "node",
    target: "node20",
    logLevel: "silent",
    plugins: [plugin, places],
  });
  const script = new Script(`(async (loads, packages) => {${outputFiles[0].text}\n})`, { filename: "suites.mjs" });
  return {
    suites: await Promise.all(paths.map(async (path) => ({ path, text: await readFile(path, "utf8") }))),
    async evaluate() {
      const loads = new Map();
      await script.runInThisContext()(loads, packages);
      return loads;
    },
  };
}
