import { execFileSync, spawn } from "node:child_process";
import { link, mkdir, mkdtemp, rm, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { fileInFolder } from "../../../src/app/outgoing/import-folder.js";

describe("a file from the folder for imports", () => {
  let folder: string;
  let root: string;
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), "prepwright-"));
    root = join(folder, "imports");
    await mkdir(join(root, "society", "plans"), { recursive: true });
    await writeFile(join(folder, "secret"), "secret");
    await writeFile(join(root, "prices.csv"), "food,pack\n");
    await writeFile(join(root, "society", "plans", "week.yaml"), "kind: plan\n");
    await symlink(join(folder, "secret"), join(root, "link"));
    await symlink(folder, join(root, "society", "up"));
    await writeFile(join(folder, "other-name"), "secret");
    await link(join(folder, "other-name"), join(root, "hard"));
    execFileSync("mkfifo", [join(root, "pipe")]);
    await symlink(root, join(folder, "linked-root"));
  });
  afterAll(() => rm(folder, { recursive: true }));

  const textOf = async (publisher: string | null, path: string): Promise<string> => {
    let text = "";
    for await (const piece of (await fileInFolder(root, publisher, path)).bytes) text += Buffer.from(piece).toString();
    return text;
  };

  it("is read below it, of a publisher below the folder of its slug", async () => {
    expect(await textOf(null, "prices.csv")).toBe("food,pack\n");
    expect(await textOf("society", "plans/week.yaml")).toBe("kind: plan\n");
    await expect(textOf("society", "prices.csv")).rejects.toThrow("cannot be read (ENOENT)");
  });

  it.each([
    [null, "../secret", "leads out"],
    ["society", "../prices.csv", "leads out"],
    [null, "link", "symbolic link"],
    ["society", "up/secret", "symbolic link"],
    [null, "society", "there is no file"],
    [null, "prices.csv/x", "there is no file"],
    [null, ".", "leads out"],
    [null, "hard", "hard links"],
    [null, "pipe", "there is no file"],
  ])("is never outside of it, over a link or a folder: %s %s", async (publisher, path, words) => {
    await expect(textOf(publisher, path)).rejects.toThrow(words);
  });

  it("is read where the folder for imports itself is a link", async () => {
    let text = "";
    const { bytes } = await fileInFolder(join(folder, "linked-root"), null, "prices.csv");
    for await (const piece of bytes) text += Buffer.from(piece).toString();
    expect(text).toBe("food,pack\n");
  });

  it("is never one outside of it, however often somebody puts a link in its place while it is opened", async () => {
    const week = join(root, "race");
    await mkdir(join(folder, "outside"), { recursive: true });
    await writeFile(join(folder, "outside", "file"), "secret");
    await mkdir(week);
    await writeFile(join(week, "file"), "ours");
    // Another process, so that it comes between any two steps: swaps the folder and a link to the one outside as fast as it can.
    const swapper = spawn(process.execPath, [
      "-e",
      `const { renameSync, symlinkSync } = require("node:fs");
       symlinkSync(process.argv[2], process.argv[1] + ".link");
       for (;;) {
         renameSync(process.argv[1], process.argv[1] + ".dir"); renameSync(process.argv[1] + ".link", process.argv[1]);
         renameSync(process.argv[1], process.argv[1] + ".link"); renameSync(process.argv[1] + ".dir", process.argv[1]);
       }`,
      week,
      join(folder, "outside"),
    ]);
    try {
      const got = new Map<string, number>();
      const note = (what: string) => got.set(what, (got.get(what) ?? 0) + 1);
      for (let n = 0; n < 2000; n += 1) {
        await textOf(null, "race/file").then(note, () => note("refused"));
      }
      expect(got.has("secret")).toBe(false);
      expect((got.get("ours") ?? 0) + (got.get("refused") ?? 0)).toBe(2000);
    } finally {
      swapper.kill("SIGKILL");
    }
  });

  it("is not there where no folder is set", async () => {
    await expect(fileInFolder(null, null, "prices.csv")).rejects.toThrow("PREPWRIGHT_IMPORT_DIR");
  });
});
