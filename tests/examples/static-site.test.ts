import { execFile } from "node:child_process";
import { mkdtemp, readdir, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { afterAll, beforeAll, expect, it } from "vitest";
import { loadSeeds } from "../../src/services/drafts/load-seeds.js";
import { demo, openTestApp, type TestApp } from "../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../kit/databases.js";
import { markupFaults, parseErrors } from "../kit/html-page.js";

const run = promisify(execFile);

describeOnBothDatabases("the example of a static site", (open) => {
  let app: TestApp;
  let address = "";
  let folder = "";
  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    await loadSeeds(app.deps, demo);
    address = await app.app.listen({ port: 0, host: "127.0.0.1" });
    folder = await mkdtemp(join(tmpdir(), "static-site-"));
  });
  afterAll(async () => {
    await rm(folder, { recursive: true });
    await app.close();
  });

  const build = async (...words: readonly string[]): Promise<string> => {
    const program = ["--import", "tsx", "examples/static-site/build.ts"];
    return (await run(process.execPath, [...program, address, "third-gate-allotments", folder, ...words])).stdout;
  };
  const pages = async (): Promise<readonly string[]> =>
    (await readdir(folder)).filter((name) => name.endsWith(".html")).toSorted();

  it("writes a page for each plan, then only what changed, and takes away what was withdrawn", async () => {
    const count = demo.plans.length;
    expect(await build("--servings", "6")).toBe(`${count} written, 0 removed, ${count} in the list\n`);
    expect(await pages()).toEqual(["index.html", ...demo.plans.map(({ slug }) => `${slug}.html`)].toSorted());
    for (const page of await pages()) {
      const text = await readFile(join(folder, page), "utf8");
      expect([...parseErrors(text), ...(await markupFaults(text))], page).toEqual([]);
      expect(text, page).not.toMatch(/undefined|NaN|\[object/);
    }
    expect(await build()).toBe(`0 written, 0 removed, ${count} in the list\n`);
    const { slug } = demo.plans[0]!;
    const input = { publisher: "third-gate-allotments", slug, revision: 1, reason: "Too salty." };
    const token = await app.tokenFor("third-gate-allotments", ["PUBLISH"]);
    const withdrawn = await app.ask(
      "mutation ($input: WithdrawPlanInput!) { withdrawPlan(input: $input) { problems { message } } }",
      { input },
      token,
    );
    expect(withdrawn.data).toEqual({ withdrawPlan: { problems: [] } });
    expect(await build()).toBe(`0 written, 1 removed, ${count - 1} in the list\n`);
    expect(await pages()).not.toContain(`${slug}.html`);
  });

  it("says what is wrong in the service's own words", async () => {
    await rm(join(folder, ".place"));
    await expect(build("--servings", "0")).rejects.toMatchObject({
      code: 1,
      stderr: expect.stringContaining("servings"),
    });
  });
});
