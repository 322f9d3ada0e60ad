import { execFileSync } from "node:child_process";
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { toolFolder } from "./tool-folder.mjs";

/**
 * Writes the types of the client package, clients/typescript/src/generated/rest.ts, which is committed, from openapi.json. With --check
 * nothing is written, and the exit code is 1 where the committed file is another.
 */

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const output = "clients/typescript/src/generated/rest.ts";

async function typesOfRest() {
  const tool = toolFolder("openapi");
  const folder = await mkdtemp(join(tmpdir(), "prepwright-types-"));
  try {
    const file = join(folder, "rest.ts");
    // Not --immutable: openapi-fetch 0.17 takes a readonly list for an object.
    // In the tool's folder: in the project's it would read the linter's settings, which are for another version.
    execFileSync(
      join(tool, "node_modules/.bin/openapi-typescript"),
      [join(root, "openapi.json"), "--output", file, "--alphabetize"],
      { cwd: tool, stdio: ["ignore", "ignore", "inherit"] },
    );
    return await readFile(file, "utf8");
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

const types = await typesOfRest();
if (!process.argv.includes("--check")) await writeFile(join(root, output), types);
else if ((await readFile(join(root, output), "utf8")) !== types) {
  console.error(`${output} is not what openapi.json gives: npm run generate:clients`);
  process.exitCode = 1;
}
