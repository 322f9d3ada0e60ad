import { readdir, readFile } from "node:fs/promises";
import { describe, expect, it } from "vitest";
import { fuzzTargets } from "../fuzz/targets.js";

const folder = "tests/fixtures/imports/found";
const files = await readdir(folder);
const targets = await fuzzTargets();

/** Files that once broke a reader, found by `npm run fuzz`. The name begins with the reader's. */
describe("files that fuzzing found", () => {
  it("are kept", () => {
    expect(files.length).toBeGreaterThan(0);
  });

  it.each(files)("%s is read, or refused with reasons", async (name) => {
    const target = targets.find((each) => name.startsWith(`${each.name}-`));
    await expect(target?.read(await readFile(`${folder}/${name}`))).resolves.toBeUndefined();
  });
});
