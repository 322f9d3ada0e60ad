import { execFile } from "node:child_process";
import type { AddressInfo } from "node:net";
import { afterAll, beforeAll, expect, it } from "vitest";
import { openTestApp, type TestApp } from "../../graphql/open-test-app.js";
import { describeOnEmbedded } from "../../kit/databases.js";
import { prepareWriting, publisher, publishPlan, savePlan } from "../../kit/plan-writer.js";
import { runCliJson } from "./run-cli.js";

/** Runs a program on a pseudo-terminal, as Python's standard library makes one, and types a line once it is asked. */
const onTerminal = `import os, pty, sys
pid, fd = pty.fork()
if pid == 0:
    os.execvp(sys.argv[2], sys.argv[2:])
shown, typed = b"", False
while True:
    try:
        piece = os.read(fd, 4096)
    except OSError:
        break
    if not piece:
        break
    shown += piece
    if not typed and b"previous or nothing: " in shown:
        os.write(fd, sys.argv[1].encode() + b"\\n")
        typed = True
_, status = os.waitpid(pid, 0)
sys.stdout.buffer.write(shown)
sys.exit(os.WEXITSTATUS(status))`;

describeOnEmbedded("withdrawing from a terminal", (open) => {
  let app: TestApp;
  let environment: Record<string, string>;

  beforeAll(async () => {
    const database = await open();
    const token = await prepareWriting(database);
    app = await openTestApp(database.data);
    await app.app.listen({ port: 0, host: "127.0.0.1" });
    const { port } = app.app.server.address() as AddressInfo;
    environment = { PREPWRIGHT_SERVER: `http://127.0.0.1:${port}`, PREPWRIGHT_TOKEN: token };
  });
  afterAll(() => app.close());

  /** Two revisions of a plan. */
  async function publishTwice(slug: string): Promise<void> {
    const { PREPWRIGHT_SERVER: address = "", PREPWRIGHT_TOKEN: token = "" } = environment;
    let version: number | null = null;
    for (const title of ["Carrots", "Carrots again"]) {
      version = await savePlan(address, token, { slug, title, expectedVersion: version });
      await publishPlan(address, token, { slug, expectedVersion: version });
    }
  }
  const words = (slug: string) => ["withdraw", `${publisher}/${slug}`, "--revision", "2", "--reason", "Too salt."];
  const typing = (answer: string, slug: string) =>
    new Promise<string>((done, fail) => {
      const command = [process.execPath, "dist/cli.js", ...words(slug)];
      const options = { env: { PATH: process.env["PATH"], ...environment }, encoding: "utf8" } as const;
      execFile("python3", ["-c", onTerminal, answer, ...command], options, (error, shown) =>
        error === null ? done(shown) : fail(new Error(shown, { cause: error })),
      );
    });
  const inForce = async (slug: string) =>
    ((await app.ask(`{ plan(publisher: "${publisher}", slug: "${slug}") { revision } }`)).data?.["plan"] ??
      null) as unknown;

  it("asks what readers are to find, and says which revision that would be", async () => {
    for (const [answer, slug, left] of [
      ["previous", "first", { revision: 1 }],
      ["nothing", "second", null],
    ] as const) {
      await publishTwice(slug);
      const shown = await typing(answer, slug);
      expect(shown).toContain('Revision 2 of "Carrots again"');
      expect(shown).toMatch(/previous +Revision 1 is shown again/);
      expect(shown).toMatch(/nothing +The plan is withdrawn as a whole/);
      expect(await inForce(slug)).toEqual(left);
    }
  });

  it("does not ask scripts, which get the previous revision as they always did", async () => {
    await publishTwice("third");
    const { exit, answer, err } = await runCliJson(words("third"), environment);
    expect([exit, answer.result, err]).toMatchObject([0, { revision: 2, inForce: 1 }, ""]);
  });
});
