import { existsSync } from "node:fs";
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { shippedPackages } from "../../scripts/release/shipped-packages.mjs";
import { askAround, everything, run, start } from "./run.js";

/** What `npm pack` makes, installed in an empty folder, as somebody does who has nothing else. */
describe("the package", () => {
  let folder: string;
  let files: readonly string[];
  let tarball: string;

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), "prepwright-package-"));
    const packed = run("npm", ["pack", "--json", "--pack-destination", folder], { cwd: resolve(".") });
    const [made] = JSON.parse(packed.slice(packed.indexOf("["))) as [{ filename: string; files: { path: string }[] }];
    files = made.files.map(({ path }) => path);
    tarball = join(folder, made.filename);
    await writeFile(join(folder, "package.json"), '{ "private": true }');
    run("npm", ["install", "--prefer-offline", "--ignore-scripts", "--no-audit", tarball], { cwd: folder });
  });
  afterAll(() => rm(folder, { recursive: true, force: true }));

  it("holds what runs and what it is described by, and nothing of its making", () => {
    for (const file of [
      "LICENSE",
      "README.md",
      "CHANGELOG.md",
      "schema.graphql",
      "openapi.json",
      "dist/main.js",
      "dist/cli.js",
      "dist/explorer/licences.txt",
    ]) {
      expect(files).toContain(file);
    }
    expect(
      files.filter((file) =>
        /^(src|tests|bench|scripts|seeds|node_modules|data|\.)|\.stamps|\.env|\.test\./.test(file),
      ),
    ).toEqual([]);
  });

  it("brings along the packages that the list for licences and advisories has, and no others", async () => {
    const { packages } = JSON.parse(await readFile(join(folder, "package-lock.json"), "utf8")) as {
      packages: Record<string, { version: string; name?: string }>;
    };
    const installed = Object.entries(packages).flatMap(([path, { version }]) => {
      const name = path.split("node_modules/").at(-1);
      // The lock names a package for every machine there is; what is brought along is what is there.
      return path === "" || name === "prepwright" || !existsSync(join(folder, path)) ? [] : [`${name}@${version}`];
    });
    const listed = (await shippedPackages()).filter(({ how }) => how === "installed").map((each) => each.name);
    const names = new Set(installed.map((each) => each.slice(0, each.lastIndexOf("@"))));
    expect([...names].filter((name) => !listed.includes(name))).toEqual([]);
  });

  it("has a command line that says its version and checks a plan without a service", async () => {
    const { version } = JSON.parse(await readFile("package.json", "utf8")) as { version: string };
    expect(run("npx", ["prepwright", "--version"], { cwd: folder }).trim()).toBe(version);
    const plan = join(folder, "node_modules/prepwright/examples/first-plan.yaml");
    const checked = JSON.parse(run("npx", ["prepwright", "check", "--json", plan], { cwd: folder })) as object;
    expect(checked).toMatchObject({ command: "check", exit: 0, ok: true });
  });

  it("serves the demo with one command, and stops when told", async () => {
    const env = { PORT: "0", DATA_DIR: join(folder, "data"), LOG_LEVEL: "warn" };
    const service = await start(join(folder, "node_modules/.bin/prepwright"), ["serve"], { cwd: folder, env });
    expect(await askAround(service.address)).toEqual(everything);
    expect(await service.stop()).toBe(0);
  });
});
