import { chmod, cp, mkdir, mkdtemp, readFile, readdir, rm } from "node:fs/promises";
import { dirname, join, resolve } from "node:path";
import { userInfo } from "node:os";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { carryOut, type Image } from "./carry-out.js";
import { createTestDatabase, dropTestDatabase } from "../kit/databases.js";
import { run, start } from "./run.js";

/** Files that git knows and that .dockerignore lets in, which is a list of what is let in. */
async function fillContext(folder: string): Promise<void> {
  const lines = (await readFile(".dockerignore", "utf8")).split("\n").filter((line) => line !== "");
  expect(lines[0]).toBe("*");
  const allowed = lines.slice(1).map((line) => line.replace(/^!/, ""));
  const known = run("git", ["ls-files", "--cached", "--others", "--exclude-standard"], { cwd: resolve(".") }).split(
    "\n",
  );
  for (const file of known.filter((each) => allowed.some((name) => each === name || each.startsWith(`${name}/`)))) {
    await mkdir(dirname(join(folder, file)), { recursive: true });
    await cp(file, join(folder, file));
  }
}

/** There is no engine here, so the lines of the Dockerfile are carried out one by one: see carry-out.ts. */
describe("the image", () => {
  let folder: string;
  let image: Image;
  let database: string | undefined;

  beforeAll(async () => {
    // Not below /tmp: the image has a /tmp of its own.
    folder = await mkdtemp("/var/tmp/prepwright-image-");
    await chmod(folder, 0o755);
    const context = join(folder, "context");
    await mkdir(context);
    await fillContext(context);
    image = carryOut("Dockerfile", context, folder);
  });
  afterAll(async () => {
    if (database !== undefined) await dropTestDatabase(database);
    await rm(folder, { recursive: true, force: true });
  });

  it("is based on one supported line of Node, with no moving tag", () => {
    expect(new Set(image.bases).size).toBe(1);
    expect(image.bases[0]).toMatch(/^node:\d+-[a-z]+-slim$/);
  });

  it("holds what runs, and nothing of its making", async () => {
    const app = join(image.root, image.folder);
    expect((await readdir(app)).toSorted()).toEqual(
      ["LICENSE", "dist", "node_modules", "openapi.json", "package.json", "prisma", "schema.graphql"].toSorted(),
    );
    for (const name of ["typescript", "vitest", "esbuild", "prisma", "monaco-editor"]) {
      expect(await readdir(join(app, "node_modules"))).not.toContain(name);
    }
  });

  it("starts as a user who owns nothing, where nothing but /tmp can be written, and stops when told", async () => {
    expect(image.user).toBe("node");
    expect(userInfo().uid, "the test makes a file system read-only, which only root may").toBe(0);
    const app = join(image.root, image.folder);
    const words = image.command.map((word) => (word === "node" ? process.execPath : word));
    // The mounts are of a namespace of their own, and gone with it. 65534 is nobody.
    const script = [
      "mount --make-rprivate /",
      "mount -t tmpfs tmpfs /tmp",
      `mount --bind '${app}' '${app}'`,
      `mount -o remount,bind,ro '${app}'`,
      "mount -o remount,bind,ro /",
      `cd '${app}'`,
      `exec setpriv --reuid=65534 --regid=65534 --clear-groups --no-new-privs ${words.join(" ")}`,
    ].join(" && ");
    database = await createTestDatabase("empty");
    const env = { ...image.env, PORT: "0", HOST: "127.0.0.1", DATABASE_URL: database, PREPWRIGHT_DRAIN_SECONDS: "0" };
    const service = await start("unshare", ["--mount", "sh", "-c", script], { cwd: app, env });
    // Nothing of the demo: a server is filled by those who run it.
    const plans = await fetch(`${service.address}/v1/plans`);
    expect([plans.status, ((await plans.json()) as { items: unknown[] }).items]).toEqual([200, []]);
    const [program = "", ...rest] = image.healthCheck;
    expect(program).toBe("node");
    run(process.execPath, rest, { cwd: app, env: { PORT: new URL(service.address).port } });
    expect(await service.stop()).toBe(0);
    expect(() => run(process.execPath, rest, { cwd: app, env: { PORT: new URL(service.address).port } })).toThrow();
  });
});
