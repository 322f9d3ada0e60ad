import { spawn, execFileSync } from "node:child_process";
import { once } from "node:events";
import { mkdtemp, readdir, readFile, rm, stat, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { root, shippedPackages } from "./shipped-packages.mjs";

/**
 * Measures what a release costs those who take it, and prints the row for the table in docs/release.md. Start-up is from the command to
 * the line with the address, the median of five: on a new embedded database, which gets its tables and the demo, and on one that is there.
 */
const { version } = JSON.parse(await readFile(join(root, "package.json"), "utf8"));
const folder = await mkdtemp(join(tmpdir(), "prepwright-figures-"));

async function startUp(dataDir) {
  const begin = performance.now();
  const child = spawn(process.execPath, [join(root, "dist/main.js")], {
    env: { PATH: process.env.PATH, PORT: "0", DATA_DIR: dataDir, LOG_LEVEL: "error" },
    stdio: ["ignore", "pipe", "inherit"],
  });
  const exit = once(child, "exit");
  await Promise.race([
    once(createInterface({ input: child.stdout }), "line"),
    exit.then(([code]) => Promise.reject(new Error(`the service ended with ${code}`))),
  ]);
  const took = performance.now() - begin;
  child.kill("SIGTERM");
  await exit;
  return took;
}

const median = (values) => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
const seconds = (milliseconds) => `${(milliseconds / 1000).toFixed(2)} s`;
const megabytes = (bytes) => `${(bytes / 1e6).toFixed(1)} MB`;

async function sizeOf(path) {
  const files = await readdir(path, { recursive: true, withFileTypes: true });
  const sizes = files.filter((each) => each.isFile()).map((each) => stat(join(each.parentPath, each.name)));
  return (await Promise.all(sizes)).reduce((sum, { size }) => sum + size, 0);
}

try {
  const fresh = [];
  const again = [];
  for (let n = 0; n < 5; n += 1) fresh.push(await startUp(join(folder, `fresh-${n}`)));
  for (let n = 0; n < 5; n += 1) again.push(await startUp(join(folder, "fresh-0")));

  const packed = execFileSync("npm", ["pack", "--json", "--ignore-scripts", "--pack-destination", folder], {
    cwd: root,
    encoding: "utf8",
    stdio: ["ignore", "pipe", "ignore"],
  });
  const [{ filename, size, unpackedSize }] = JSON.parse(packed);
  const installed = join(folder, "installed");
  await rm(installed, { recursive: true, force: true });
  execFileSync("mkdir", ["-p", installed]);
  await writeFile(join(installed, "package.json"), '{ "private": true }');
  execFileSync("npm", ["install", "--prefer-offline", "--ignore-scripts", "--no-audit", join(folder, filename)], {
    cwd: installed,
    stdio: "ignore",
  });
  const shipped = await shippedPackages();
  const { dependencies } = JSON.parse(await readFile(join(root, "package.json"), "utf8"));
  const row = [
    version,
    seconds(median(fresh)),
    seconds(median(again)),
    megabytes(size),
    megabytes(unpackedSize),
    megabytes(await sizeOf(installed)),
    String(Object.keys(dependencies).length),
    String(shipped.filter(({ how }) => how === "installed").length),
    String(shipped.filter(({ how }) => how === "bundled").length),
  ];
  console.log(`| ${row.join(" | ")} |`);
} finally {
  await rm(folder, { recursive: true, force: true });
}
