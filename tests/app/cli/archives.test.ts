import { execFileSync } from "node:child_process";
import { mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { TestApp } from "../../graphql/open-test-app.js";
import { describeOnEmbedded } from "../../kit/databases.js";
import { openEmpty, openFull, publisher } from "../../services/archive/archive-of-a-publisher.js";
import { runCliJson } from "./run-cli.js";

describeOnEmbedded("archives on the command line", (open) => {
  let apps: readonly TestApp[];
  let folder: string;
  let here: Record<string, string>;
  let there: Record<string, string>;

  beforeAll(async () => {
    execFileSync(process.execPath, ["scripts/build.mjs"], { stdio: "ignore" });
    folder = await mkdtemp(join(tmpdir(), "prepwright-archive-"));
    apps = [await openFull(open), await openEmpty(open)];
    const [first, second] = await Promise.all(
      apps.map(async ({ app, tokenFor }) => ({
        PREPWRIGHT_SERVER: await app.listen({ port: 0, host: "127.0.0.1" }),
        PREPWRIGHT_TOKEN: await tokenFor(null, ["ADMIN", "READ_DRAFTS"]),
      })),
    );
    if (first === undefined || second === undefined) throw new Error("two services are needed");
    [here, there] = [first, second];
  });
  afterAll(async () => {
    await Promise.all(apps.map((each) => each.close()));
    await rm(folder, { recursive: true });
  });

  it("take everything of a publisher to another service, byte for byte, and never write over a file", async () => {
    const file = join(folder, "all.zip");
    const exported = await runCliJson(["export", publisher, "--to", file], here);
    expect([exported.exit, exported.answer.ok, exported.answer.result]).toMatchObject([0, true, { path: file }]);
    const again = await runCliJson(["export", publisher, "--to", file], here);
    expect([again.exit !== 0, again.answer.problems.map(({ code }) => code)]).toEqual([true, ["FILE_EXISTS"]]);

    const words = ["import", file];
    const tried = await runCliJson([...words, "--dry-run"], there);
    const taken = await runCliJson(words, there);
    expect([tried.exit, taken.exit, taken.answer.problems]).toEqual([0, 0, []]);
    expect((await runCliJson(words, there)).answer.problems.map(({ code }) => code)).toEqual(["PUBLISHER_NOT_EMPTY"]);

    const back = join(folder, "back.zip");
    await runCliJson(["export", publisher, "--to", back], there);
    expect((await readFile(back)).equals(await readFile(file))).toBe(true);
  });

  it("leave nothing behind where there is no such publisher, and refuse a file that is none", async () => {
    const missing = await runCliJson(["export", "nobody-here", "--to", join(folder, "none.zip")], here);
    expect(missing.exit).not.toBe(0);
    await writeFile(join(folder, "text.zip"), "no zip at all");
    const refused = await runCliJson(["import", join(folder, "text.zip")], there);
    expect([refused.exit !== 0, refused.answer.ok]).toEqual([true, false]);
    expect((await readdir(folder)).filter((name) => name.includes("none"))).toEqual([]);
  });
});
