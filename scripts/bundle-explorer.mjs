import { build } from "esbuild";
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { basename, dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { gunzipSync, gzip } from "node:zlib";
import { licenceText, packageFolderOf } from "./release/shipped-packages.mjs";
import { toolFolder } from "./tool-folder.mjs";

const here = dirname(fileURLToPath(import.meta.url));
const root = dirname(here);
const publicPath = "/graphql/explorer";

/** Committed, so that nobody needs the 200 MB it is bundled from; the build copies it into `dist`. */
export const committedExplorer = join(root, "tools/explorer/bundle");

/** Worker scripts of the editor, by the label it asks for them under. */
const workers = {
  editor: "monaco-editor/esm/vs/editor/editor.worker.js",
  json: "monaco-editor/esm/vs/language/json/json.worker.js",
  graphql: "monaco-graphql/esm/graphql.worker.js",
};

/**
 * Bundles the page that browsers get at /graphql into one flat folder: index.html and files named by their content.
 * The page loads nothing from any other place. Files with a hash in their names are kept compressed, as browsers take them.
 *
 * @param {string} folder emptied first
 */
export async function bundleExplorer(folder) {
  await rm(folder, { recursive: true, force: true });
  await mkdir(folder, { recursive: true });
  const tool = toolFolder("explorer");
  const { metafile } = await build({
    absWorkingDir: tool,
    plugins: [packagesOf(tool)],
    entryPoints: {
      page: join(here, "explorer/page.mjs"),
      frame: join(here, "explorer/page.css"),
      ...Object.fromEntries(Object.entries(workers).map(([label, module]) => [`worker-${label}`, module])),
    },
    outdir: folder,
    entryNames: "[name]-[hash]",
    assetNames: "[name]-[hash]",
    bundle: true,
    minify: true,
    format: "iife",
    platform: "browser",
    target: "es2022",
    define: { "process.env.NODE_ENV": '"production"' },
    loader: { ".ttf": "file", ".woff2": "file" },
    publicPath,
    legalComments: "none",
    metafile: true,
    logLevel: "warning",
  });
  const outputs = Object.keys(metafile.outputs).map((path) => basename(path));
  const urlOf = (start, end) => {
    const name = outputs.find((each) => each.startsWith(`${start}-`) && each.endsWith(end));
    if (name === undefined) throw new Error(`the bundle has no ${start}${end}`);
    return `${publicPath}/${name}`;
  };
  const workerUrls = Object.fromEntries(Object.keys(workers).map((label) => [label, urlOf(`worker-${label}`, ".js")]));
  const page = (await readFile(join(here, "explorer/index.html"), "utf8"))
    .replace(
      "{{styles}}",
      ["page", "frame"].map((name) => `<link rel="stylesheet" href="${urlOf(name, ".css")}" />`).join("\n    "),
    )
    .replace("{{workers}}", JSON.stringify(workerUrls).replaceAll('"', "&quot;"))
    .replace("{{scripts}}", `<script src="${urlOf("page", ".js")}"></script>`);
  await writeFile(join(folder, "index.html"), page);
  await Promise.all(outputs.filter((name) => !name.endsWith(".woff2")).map((name) => compress(join(folder, name))));
  await writeNotices(folder, tool, Object.keys(metafile.inputs));
}

/** Packages that our own files name are those of the tool, not those of the same names that the service uses. */
const packagesOf = (tool) => ({
  name: "packages of the tool",
  setup: ({ onResolve, resolve }) =>
    onResolve({ filter: /^[^./]/ }, ({ path, resolveDir, kind }) =>
      resolveDir === join(here, "explorer") ? resolve(path, { resolveDir: tool, kind }) : undefined,
    ),
});

async function compress(file) {
  await writeFile(`${file}.gz`, await promisify(gzip)(await readFile(file), { level: 9 }));
  await rm(file);
}

/** Which packages are part of the page, and, as their licences ask, the licences themselves. */
async function writeNotices(folder, tool, inputs) {
  const { packages: locked } = JSON.parse(await readFile(join(tool, "package-lock.json"), "utf8"));
  const paths = [...new Set(inputs.flatMap((path) => packageFolderOf(path) ?? []))].toSorted();
  const packages = await Promise.all(
    paths.map(async (path) => {
      const { name, version, license } = JSON.parse(await readFile(join(tool, path, "package.json"), "utf8"));
      return { name, version, license: license ?? null, folder: path, integrity: locked[path].integrity };
    }),
  );
  await writeFile(join(folder, "packages.json"), `${JSON.stringify(packages, null, 1)}\n`);
  const notices = await Promise.all(
    packages.map(async ({ name, version, license, folder: path }) => {
      return `${name} ${version} (${license})\n\n${(await licenceText(join(tool, path))) ?? ""}`;
    }),
  );
  await writeFile(join(folder, "licences.txt"), notices.join(`\n${"-".repeat(80)}\n\n`));
}

/** What browsers get, by name: compressed files are unpacked, because another version of Node may pack the same bytes otherwise. */
async function contentsOf(folder) {
  const names = (await readdir(folder)).toSorted();
  const read = async (name) => {
    const bytes = await readFile(join(folder, name));
    return [name, (name.endsWith(".gz") ? gunzipSync(bytes) : bytes).toString("base64")];
  };
  return new Map(await Promise.all(names.map(read)));
}

/** Names of committed files that are not what would be bundled now, or are there in one place only. */
export async function staleExplorerFiles() {
  const fresh = await mkdtemp(join(tmpdir(), "prepwright-explorer-"));
  try {
    await bundleExplorer(fresh);
    const [old, made] = [await contentsOf(committedExplorer), await contentsOf(fresh)];
    return [...new Set([...old.keys(), ...made.keys()])].filter((name) => old.get(name) !== made.get(name));
  } finally {
    await rm(fresh, { recursive: true, force: true });
  }
}

// node scripts/bundle-explorer.mjs writes the committed files; with --check it only compares.
if (process.argv[1] === fileURLToPath(import.meta.url)) {
  if (process.argv.includes("--check")) {
    const stale = await staleExplorerFiles();
    for (const name of stale) console.error(`tools/explorer/bundle/${name} is not what scripts/explorer gives`);
    if (stale.length > 0) console.error("run npm run generate:explorer");
    process.exitCode = stale.length > 0 ? 1 : 0;
  } else {
    await bundleExplorer(committedExplorer);
    console.log(`wrote ${relative(root, committedExplorer)}`);
  }
}
