import { execFileSync } from "node:child_process";
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { runCli, runCliJson } from "./run-cli.js";

let folder: string;
beforeAll(async () => {
  execFileSync(process.execPath, ["scripts/build.mjs"], { stdio: "ignore" });
  folder = await mkdtemp(join(tmpdir(), "prepwright-init-"));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

describe("a first plan", () => {
  it.each([
    ["en", "locale: en\nmeasured-in: metric"],
    ["en-US", "locale: en-US\nregion: US\nmeasured-in: us customary"],
    ["en-AU", "locale: en-AU\nregion: AU\nmeasured-in: australian"],
    ["de", "locale: de\nmeasured-in: metric"],
    ["fr", "locale: fr\nmeasured-in: metric"],
    ["es", "locale: es\nmeasured-in: metric"],
    ["pl", "locale: pl\nmeasured-in: metric"],
  ])("is written in %s and passes the check, every line of it read", async (locale, head) => {
    const into = join(folder, locale);
    expect(await runCli(["init", into, "--locale", locale])).toMatchObject({ exit: 0, err: "" });
    const path = join(into, "plan.yaml");
    expect(await readFile(path, "utf8")).toContain(head);
    const { exit, answer } = await runCliJson(["check", "--offline", "--explain", path]);
    expect([exit, answer.problems]).toEqual([0, []]);
    const lines = answer.result?.["lines"] as readonly { open: boolean; takes: readonly { food: string | null }[] }[];
    expect(lines.map(({ open }) => open)).toEqual(lines.map(() => false));
    expect(lines.map(({ takes }) => takes[0]?.food ?? "component")).toEqual([
      ...["pearl-barley", "component", "carrot", "olive-oil", "component", "carrot", "table-salt"],
    ]);

    // The translation in its last lines needs nothing but the # off them.
    const text = await readFile(path, "utf8");
    const [, commented = ""] = text.split("\n# ---\n");
    await writeFile(path, text.replace(`# ---\n${commented}`, `---\n${commented.replaceAll(/^# /gm, "")}`));
    const second = await runCliJson(["check", "--offline", path]);
    expect([second.exit, second.answer.problems, second.answer.result?.["documents"]]).toEqual([0, [], 3]);
  });

  it("takes measures, a region and a publisher", async () => {
    const into = join(folder, "chosen");
    const options = ["--locale", "es", "--measures", "US_CUSTOMARY", "--region", "us-wa", "--publisher", "north-field"];
    expect((await runCli(["init", into, ...options])).exit).toBe(0);
    const text = await readFile(join(into, "plan.yaml"), "utf8");
    for (const part of ["10 oz de cebada perlada", "region: US-WA", "publisher: north-field "])
      expect(text).toContain(part);
    expect((await runCli(["check", "--offline", join(into, "plan.yaml")])).exit).toBe(0);
  });

  it("is never written over a file that is there", async () => {
    const into = join(folder, "kept");
    expect((await runCli(["init", into])).exit).toBe(0);
    const again = await runCli(["init", into, "--locale", "de"]);
    expect(again).toMatchObject({ exit: 5, err: expect.stringContaining("already exists") });
    expect(await readFile(join(into, "plan.yaml"), "utf8")).toContain("Sunday barley");
  });

  it.each([
    [["--locale", "it"], "--locale"],
    [["--measures", "ells"], "--measures"],
    [["--region", "UK"], "--region"],
    [["--publisher", "My Kitchen"], "short name"],
  ])("says what to write instead: %j", async (options, said) => {
    const { exit, err } = await runCli(["init", join(folder, "none"), ...options]);
    expect(exit).toBe(2);
    expect(err).toContain(said);
  });
});
