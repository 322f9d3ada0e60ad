import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { cp, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { toolFolder } from "./tool-folder.mjs";

/**
 * Writes the database client, src/persistence/generated, which is committed, from prisma/schema.prisma, if the schema or the version
 * of the generator is not the one it was written from. With --check it is written to another folder, and the exit code is 1 where
 * the committed one differs by a byte.
 */

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const output = join(root, "src/persistence/generated");
const schemaFile = join(root, "prisma/schema.prisma");
const stampName = ".hash";

/** What the client is made of. The lock is not: its other packages change more often than what is generated. */
async function inputHash() {
  return createHash("sha256")
    .update(await readFile(schemaFile))
    .update(await readFile(join(root, "tools/prisma/package.json")))
    .digest("hex");
}

function generate(schema) {
  execFileSync(
    join(toolFolder("prisma"), "node_modules/.bin/prisma"),
    ["generate", `--schema=${schema}`, "--no-hints"],
    {
      cwd: root,
      env: {
        ...process.env,
        // No network: this keeps the generator from fetching an engine that only its migration commands use.
        PRISMA_SCHEMA_ENGINE_BINARY: process.execPath,
        PRISMA_HIDE_UPDATE_MESSAGE: "1",
        CHECKPOINT_DISABLE: "1",
      },
      stdio: ["ignore", "ignore", "inherit"],
    },
  );
}

/** The generator's own words against checking: the linter passes this folder over by its settings, and types are checked. */
const silencing = /^(?:\/\* eslint-disable \*\/|\/\/ biome-ignore-all .*|\/\/ @ts-nocheck ?)\n/gm;

/** Lets the compiler check what was generated. */
async function unsilence(folder) {
  for (const [path, text] of await textsOf(folder)) {
    const checked = text.replace(silencing, "");
    if (checked !== text) await writeFile(join(folder, path), checked);
  }
}

async function textsOf(folder) {
  const files = (await readdir(folder, { recursive: true, withFileTypes: true })).filter((each) => each.isFile());
  const paths = files.map((each) => relative(folder, join(each.parentPath, each.name))).toSorted();
  return new Map(await Promise.all(paths.map(async (path) => [path, await readFile(join(folder, path), "utf8")])));
}

/** Paths of files that are in one folder only, or not the same in both. */
async function differences(one, other) {
  const [ones, others] = [await textsOf(one), await textsOf(other)];
  return [...new Set([...ones.keys(), ...others.keys()])].filter((path) => ones.get(path) !== others.get(path));
}

async function check(hash) {
  // The schema says where the client goes, and the client repeats the schema: the same folders, elsewhere.
  const elsewhere = await mkdtemp(join(tmpdir(), "prepwright-client-"));
  try {
    await mkdir(join(elsewhere, "prisma"));
    await cp(schemaFile, join(elsewhere, "prisma/schema.prisma"));
    generate(join(elsewhere, "prisma/schema.prisma"));
    const written = join(elsewhere, relative(root, output));
    await unsilence(written);
    await writeFile(join(written, stampName), hash);
    return await differences(output, written);
  } finally {
    await rm(elsewhere, { recursive: true, force: true });
  }
}

const hash = await inputHash();
if (process.argv.includes("--check")) {
  const different = await check(hash);
  for (const path of different) console.error(`src/persistence/generated/${path} is not what the schema gives`);
  if (different.length > 0) console.error("run npm run generate");
  process.exitCode = different.length > 0 ? 1 : 0;
} else if ((await readFile(join(output, stampName), "utf8").catch(() => null)) !== hash) {
  await rm(output, { recursive: true, force: true });
  generate(schemaFile);
  await unsilence(output);
  await writeFile(join(output, stampName), hash);
}
