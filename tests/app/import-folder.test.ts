import { mkdir, mkdtemp, rm, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { fileInFolder } from "../../src/app/import-folder.js";

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
    [null, "link", "over a link"],
    ["society", "up/secret", "over a link"],
    [null, "society", "there is no file"],
    [null, "prices.csv/x", "there is no file"],
    [null, ".", "leads out"],
  ])("is never outside of it, over a link or a folder: %s %s", async (publisher, path, words) => {
    await expect(textOf(publisher, path)).rejects.toThrow(words);
  });

  it("is not there where no folder is set", async () => {
    await expect(fileInFolder(null, null, "prices.csv")).rejects.toThrow("PREPWRIGHT_IMPORT_DIR");
  });
});
