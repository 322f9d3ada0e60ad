import { execFileSync } from "node:child_process";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { progressOn } from "../../../src/app/cli/progress.js";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { runImports } from "../../../src/services/imports/run-imports.js";
import { saveFeed } from "../../../src/services/imports/feeds/save-feed.js";
import { demo, openTestApp, type TestApp } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { runCli, runCliJson } from "./run-cli.js";

describeOnBothDatabases("importing from the command line", (open) => {
  let app: TestApp;
  let folder: string;
  let operator: Record<string, string>;
  let writer: Record<string, string>;
  let working = true;
  let worker: Promise<void>;

  beforeAll(async () => {
    execFileSync(process.execPath, ["scripts/build.mjs"], { stdio: "ignore" });
    folder = await mkdtemp(join(tmpdir(), "prepwright-import-"));
    app = await openTestApp((await open()).data);
    await loadSeeds(app.deps, demo);
    const PREPWRIGHT_SERVER = await app.app.listen({ port: 0, host: "127.0.0.1" });
    operator = { PREPWRIGHT_SERVER, PREPWRIGHT_TOKEN: await app.tokenFor(null, ["IMPORT"]) };
    writer = { PREPWRIGHT_SERVER, PREPWRIGHT_TOKEN: await app.tokenFor("third-gate-allotments", ["IMPORT"]) };
    const caller = { actor: { kind: "PROGRAM", name: "test" }, requestId: null } as const;
    const settings = {
      source: "Corner shop",
      currency: "XTS",
      locale: "en",
      limits: { changed: 0.3, quarantined: 0.5 },
    };
    const feed = { publisher: null, slug: "corner-shop", kind: "PRICES", settings } as const;
    expect(await saveFeed(app.deps, caller, feed)).toMatchObject({ ok: true });
    worker = (async () => {
      while (working) {
        await runImports(app.deps, "worker");
        await new Promise((resolve) => setTimeout(resolve, 100));
      }
    })();
  });
  afterAll(async () => {
    working = false;
    await worker;
    await app.close();
    await rm(folder, { recursive: true });
  });

  const prices = async (name: string, ...rows: readonly string[]): Promise<string> => {
    const path = join(folder, name);
    await writeFile(path, ["food,pack,content,price", ...rows, ""].join("\n"));
    return path;
  };
  const list = (price: string) => [`egg,rest-box,6 piece,${price}`, `pearl-barley,bag,500 g,${price}`];

  it("tries a file first, then loads it, says what was put aside, and counts every row", async () => {
    const file = await prices("monday.csv", ...list("1.50"), "moon,x,1 kg,2");
    const counts = { read: 3, created: 2, changed: 0, unchanged: 0, quarantined: 1, repeated: 0 };
    const tried = await runCliJson(["import", "corner-shop", file, "--dry-run"], operator);
    expect([tried.exit, tried.answer.result]).toMatchObject([0, { kind: "DRY_RUN", state: "DONE", counts }]);
    const loaded = await runCliJson(["import", "corner-shop", file], operator);
    expect([loaded.exit, loaded.answer.result]).toMatchObject([0, { kind: "LOAD", state: "DONE", counts }]);
    expect(loaded.answer).toMatchObject({ command: "import", ok: true, exit: 0, problems: [] });
    const again = await runCli(["import", "corner-shop", file], operator);
    expect(again.out).toMatch(/is done: 3 rows read, 0 new, 0 changed, 2 as before, 0 repeated, 1 put aside\.\n$/);
    expect(again.err).toMatch(/^Sending monday\.csv, bytes: 0 of \d+$/m);
    expect(again.err).toMatch(/^put aside, line 4: .*"moon"/m);
    expect(again.err).not.toContain("\u001b");
  });

  it("ends with 1 where a limit of the feed stops it, and loads it by force", async () => {
    const file = await prices("tuesday.csv", ...list("4.50"));
    const stopped = await runCliJson(["import", "corner-shop", file], operator);
    expect([stopped.exit, stopped.answer.problems.map(({ code }) => code)]).toEqual([1, ["LIMIT_PASSED"]]);
    expect(stopped.answer.result).toMatchObject({ state: "STOPPED" });
    const forced = await runCliJson(["import", "corner-shop", file, "--force"], operator);
    expect([forced.exit, forced.answer.result]).toMatchObject([0, { state: "DONE", counts: { changed: 2 } }]);
  });

  it("refuses whom it does not let in, a feed and a file that are not there", async () => {
    const file = await prices("wednesday.csv", ...list("2"));
    expect((await runCli(["import", "corner-shop", file], writer)).exit).toBe(4);
    const none = await runCliJson(["import", "third-gate-allotments/nothing", file], writer);
    expect([none.exit, none.answer.problems[0]?.code]).toEqual([1, "UNKNOWN_FEED"]);
    expect((await runCli(["import", "corner-shop", join(folder, "none.csv")], operator)).exit).toBe(2);
    expect((await runCli(["import", "corner/../shop", file], operator)).exit).toBe(2);
  });
});

describe("progress", () => {
  const recorded = (isTerminal: boolean, asJson = false) => {
    const written: string[] = [];
    let now = 0;
    const output = { out: () => undefined, err: (text: string) => void written.push(text), isTerminal };
    const progress = progressOn(output, asJson, () => now);
    return { written, progress, pass: (ms: number) => (now += ms) };
  };

  it("is a bar that is drawn anew on a terminal, and leaves nothing there", () => {
    const { written, progress } = recorded(true);
    progress.at("Reading, rows", 0, 3000);
    progress.at("Reading, rows", 1500, 3000);
    progress.at("Reading, rows", 1500, 3000);
    progress.at("Reading, rows", 4000, 3000);
    progress.end();
    expect(written).toEqual([
      `\r\u001b[K${"-".repeat(30)} 0 % Reading, rows: 0 of 3,000`,
      `\r\u001b[K${"#".repeat(15)}${"-".repeat(15)} 50 % Reading, rows: 1,500 of 3,000`,
      `\r\u001b[K${"#".repeat(30)} 100 % Reading, rows: 4,000 of 3,000`,
      "\r\u001b[K",
    ]);
  });

  it.each([
    [false, false],
    [true, true],
  ])("is a line in five seconds in a log (terminal: %s, JSON: %s), and one at once for anything new", (...kind) => {
    const { written, progress, pass } = recorded(...kind);
    progress.at("Reading, rows", 0, null);
    pass(4_999);
    progress.at("Reading, rows", 10, null);
    pass(1);
    progress.at("Reading, rows", 20, 1000);
    progress.at("Merging", 1, null);
    progress.end();
    expect(written).toEqual(["Reading, rows: 0\n", "Reading, rows: 20 of 1,000\n", "Merging: 1\n"]);
  });
});
