import { execFile, execFileSync } from "node:child_process";
import { mkdir, mkdtemp, readFile, rm, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { promisify } from "node:util";
import { afterAll, beforeAll, expect, it } from "vitest";
import { exitCodes } from "../../src/app/cli/outcome.js";
import { loadSeeds } from "../../src/services/drafts/load-seeds.js";
import { demo, openTestApp, type TestApp } from "../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../kit/databases.js";

const run = promisify(execFile);
const guide = await readFile("docs/writers.md", "utf8");

/** The blocks of one language that stand below a heading, in order. */
function blocks(heading: string, language: string): readonly string[] {
  const section = guide.split(/^## /m).find((each) => each.startsWith(`${heading}\n`)) ?? "";
  return [...section.matchAll(new RegExp(`^\`\`\`${language}\n([\\s\\S]*?)^\`\`\`$`, "gm"))].map(
    ([, text = ""]) => text,
  );
}

describeOnBothDatabases("the guide for writers", (open) => {
  let app: TestApp;
  let folder: string;
  let environment: Record<string, string>;

  beforeAll(async () => {
    execFileSync(process.execPath, ["scripts/build.mjs"], { stdio: "ignore" });
    app = await openTestApp((await open()).data);
    await loadSeeds(app.deps, demo);
    const address = await app.app.listen({ port: 0, host: "127.0.0.1" });
    const token = await app.tokenFor("third-gate-allotments", ["READ_DRAFTS", "WRITE", "PUBLISH"]);
    folder = await mkdtemp(join(tmpdir(), "prepwright-writer-"));
    const programs = join(folder, "programs");
    await mkdir(programs);
    await symlink(resolve("dist/cli.js"), join(programs, "prepwright"));
    const PATH = `${programs}:${process.env["PATH"] ?? ""}`;
    environment = { PATH, PREPWRIGHT_SERVER: address, PREPWRIGHT_TOKEN: token };
  });
  afterAll(async () => {
    await app.close();
    await rm(folder, { recursive: true });
  });

  it("leads from its file with its two commands to a plan in print, saying what it says", async () => {
    const [file = ""] = blocks("The file", "yaml");
    const cwd = await mkdtemp(join(folder, "empty-"));
    await writeFile(join(cwd, "first-plan.yaml"), file);
    const commands = blocks("Two commands", "sh");
    const answers = blocks("Two commands", "text");
    expect(commands).toHaveLength(2);
    for (const [at, command] of commands.entries()) {
      const { stdout, stderr } = await run("sh", ["-c", command], { cwd, env: environment });
      expect({ stdout, stderr }).toEqual({ stdout: answers[at], stderr: "" });
    }
    const page = await fetch(
      `${environment["PREPWRIGHT_SERVER"]}/p/third-gate-allotments/barley-and-carrots?servings=7`,
    );
    expect([page.status, await page.text()]).toEqual([200, expect.stringContaining("Barley and carrots, three ways")]);
  });

  it("shows the file of examples, and every exit code there is", async () => {
    expect(blocks("The file", "yaml")).toEqual([await readFile("examples/first-plan.yaml", "utf8")]);
    const listed = [...guide.matchAll(/^\| (\d+) +\|/gm)].map(([, code]) => Number(code));
    expect(listed).toEqual(Object.values(exitCodes));
  });
});
