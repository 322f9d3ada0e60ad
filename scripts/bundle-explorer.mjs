import { build } from "esbuild";
import { mkdir, readFile, rm, writeFile } from "node:fs/promises";
import { basename, dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { gzip } from "node:zlib";
import { licenceText, packageFolderOf } from "./release/shipped-packages.mjs";

const here = dirname(fileURLToPath(import.meta.url));
const root = dirname(here);
const publicPath = "/graphql/explorer";

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
  const { metafile } = await build({
    absWorkingDir: root,
    entryPoints: {
      page: "scripts/explorer/page.mjs",
      frame: "scripts/explorer/page.css",
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
  await writeNotices(folder, Object.keys(metafile.inputs));
}

async function compress(file) {
  await writeFile(`${file}.gz`, await promisify(gzip)(await readFile(file), { level: 9 }));
  await rm(file);
}

/** Which packages are part of the page, and, as their licences ask, the licences themselves. */
async function writeNotices(folder, inputs) {
  const packages = [...new Set(inputs.flatMap((path) => packageFolderOf(path) ?? []))].toSorted();
  await writeFile(join(folder, "packages.json"), JSON.stringify(packages));
  const notices = await Promise.all(
    packages.map(async (path) => {
      const { name, version, license } = JSON.parse(await readFile(join(root, path, "package.json"), "utf8"));
      return `${name} ${version} (${license})\n\n${(await licenceText(path)) ?? ""}`;
    }),
  );
  await writeFile(join(folder, "licences.txt"), notices.join(`\n${"-".repeat(80)}\n\n`));
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const folder = join(root, "dist/explorer");
  await bundleExplorer(folder);
  console.log(`wrote ${relative(root, folder)}`);
}
