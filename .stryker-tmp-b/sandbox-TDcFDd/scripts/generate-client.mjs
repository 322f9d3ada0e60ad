// @ts-nocheck
import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync } from "node:fs";
import { readFile, rm, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/**
 * Generates the database client from prisma/schema.prisma into src/persistence/generated, if the schema or the version of
 * the generator changed since it last did. Needs no network: the variable below keeps the generator from fetching an engine
 * that only its migration commands use.
 */

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const output = join(root, "src/persistence/generated");
const stamp = join(output, ".hash");
const schema = join(root, "prisma/schema.prisma");
const prismaPackage = createRequire(import.meta.url).resolve("prisma/package.json");

const hash = createHash("sha256")
  .update(await readFile(schema))
  .update(await readFile(prismaPackage))
  .digest("hex");
const last = existsSync(stamp) ? await readFile(stamp, "utf8") : null;

if (last !== hash) {
  await rm(output, { recursive: true, force: true });
  const { bin } = JSON.parse(await readFile(prismaPackage, "utf8"));
  execFileSync(
    process.execPath,
    [join(dirname(prismaPackage), bin.prisma), "generate", `--schema=${schema}`, "--no-hints"],
    {
      cwd: root,
      env: {
        ...process.env,
        PRISMA_SCHEMA_ENGINE_BINARY: process.execPath,
        PRISMA_HIDE_UPDATE_MESSAGE: "1",
        CHECKPOINT_DISABLE: "1",
      },
      stdio: ["ignore", "ignore", "inherit"],
    },
  );
  await writeFile(stamp, hash);
}
