import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, beforeEach, expect, it } from "vitest";
import { fetchFile } from "../../../src/app/outgoing/fetch-file.js";
import { fileInFolder } from "../../../src/app/outgoing/import-folder.js";
import { problemText } from "../../../src/exports/sentences/problem-text.js";
import type { ImportRun } from "../../../src/persistence/imports/import-data.js";
import { fetchWaits } from "../../../src/services/imports/files/collect-file.js";
import type { FileSources } from "../../../src/services/imports/files/file-sources.js";
import type { Deps } from "../../../src/services/deps.js";
import { feedSettingsSchema } from "../../../src/services/imports/feeds/feed-settings.js";
import { runImports } from "../../../src/services/imports/run-imports.js";
import { demo } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { silentLog } from "./open-feed.js";

interface Reply {
  readonly status: number | "BREAKS_OFF";
  readonly retryAfter?: string;
}

const list = "food,pack,content,price\negg,again,6 piece,1\n";

describeOnBothDatabases("a file that cannot be had", (open) => {
  let deps: Deps;
  let now = new Date("2026-03-01T02:30:00Z");
  let folder: string;
  let reply: Reply;
  let asked = 0;
  let feeds = 0;
  const server: Server = createServer((_request, response) => {
    asked += 1;
    const { status, retryAfter } = reply;
    if (status === "BREAKS_OFF")
      return void response.writeHead(200, { "content-length": "1000" }).write("food", () => response.destroy());
    response.writeHead(status, retryAfter === undefined ? {} : { "retry-after": retryAfter }).end(list);
  });

  beforeAll(async () => {
    const { data } = await open();
    await data.foods.save(demo.foods);
    folder = await mkdtemp(join(tmpdir(), "prepwright-"));
    await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
    const root = `http://127.0.0.1:${String((server.address() as AddressInfo).port)}`;
    // The feed's address is a public one; the connection goes to this machine, as it may in a closed network.
    const sources: FileSources = {
      fromFolder: (publisher, path) => fileInFolder(folder, publisher, path),
      fromAddress: (url, hosts, known) => fetchFile(root + new URL(url).pathname, hosts, known, { allowPrivate: true }),
    };
    deps = { data, clock: () => now, log: silentLog, knownRules: new Map(), sources };
  });
  afterAll(async () => {
    server.closeAllConnections();
    await new Promise((closed) => server.close(closed));
    await rm(folder, { recursive: true });
  });
  beforeEach(() => {
    asked = 0;
  });

  async function start(place: object = { kind: "ADDRESS", url: "https://shop.example/list.csv" }): Promise<string> {
    feeds += 1;
    const limits = { changed: 1, quarantined: 1 };
    const settings = feedSettingsSchema.parse({ source: "Shop", currency: "XTS", locale: "en", limits, place });
    const feed = await deps.data.feeds.save({
      ...{ publisher: null, slug: `shop-${feeds}`, kind: "PRICES", settings, cron: null, zone: "UTC", enabled: true },
    });
    const order = { feed, file: null, kind: "LOAD", askedBy: "test", force: false, undoes: null } as const;
    const run = await deps.data.importRuns.queue(order, now);
    if (run === null) throw new Error("another run is going on");
    return run;
  }
  async function work(run: string): Promise<ImportRun> {
    await runImports(deps, "worker-1");
    const found = await deps.data.importRuns.byId(run);
    if (found === null) throw new Error("the run is gone");
    return found;
  }
  const tick = (seconds: number): void => void (now = new Date(now.getTime() + seconds * 1000));
  const minutesTo = ({ dueAt }: ImportRun): number => ((dueAt?.getTime() ?? Number.NaN) - now.getTime()) / 60_000;

  it("is tried again after growing waits, and then given up with how often it was tried", async () => {
    reply = { status: 503 };
    const run = await start();
    for (const [failed, minutes] of fetchWaits.entries()) {
      const waiting = await work(run);
      expect(waiting).toMatchObject({ state: "QUEUED", fetchesFailed: failed + 1, endedAt: null });
      expect(waiting.problems).toMatchObject([{ code: "FILE_NOT_HAD", tries: failed + 1 }]);
      expect(minutesTo(waiting)).toBe(minutes);
      tick(minutes * 60 - 1);
      expect(await work(run)).toEqual(waiting);
      tick(1);
    }
    const failed = await work(run);
    expect(asked).toBe(5);
    expect(failed).toMatchObject({ state: "FAILED", dueAt: null, endedAt: now });
    expect(failed.problems.map(problemText)).toEqual([
      "settings > place: The file could not be fetched: the address answered 503. It was tried 5 times.",
    ]);
    tick(86_400);
    expect(await work(run)).toEqual(failed);
  });

  it.each<[string, Reply]>([
    ["429", { status: 429 }],
    ["408", { status: 408 }],
    ["an answer that breaks off", { status: "BREAKS_OFF" }],
  ])("is had when it is there again after %s, and nothing is left of the failure", async (_what, first) => {
    reply = first;
    const run = await start();
    expect(await work(run)).toMatchObject({ state: "QUEUED" });
    reply = { status: 200 };
    tick(60);
    expect(await work(run)).toMatchObject({ state: "DONE", read: 1, fetchesFailed: 1, dueAt: null, problems: [] });
  });

  it.each([400, 401, 403, 404, 410, 302])("is given up at once after %d", async (status) => {
    reply = { status };
    const run = await start();
    expect(await work(run)).toMatchObject({ state: "FAILED", fetchesFailed: 0, problems: [{ tries: 1 }] });
    expect(asked).toBe(1);
  });

  // RFC 9110, 10.2.3: seconds or a date.
  it.each<[string | (() => string), number]>([
    ["600", 10],
    ["1", 1],
    [() => new Date(now.getTime() + 20 * 60_000).toUTCString(), 20],
    ["soon", 1],
    ["999999", 6 * 60],
  ])("waits as long as Retry-After %s says, if that is longer", async (given, minutes) => {
    reply = { status: 503, retryAfter: typeof given === "string" ? given : given() };
    const run = await start();
    expect(minutesTo(await work(run))).toBe(minutes);
    expect(await deps.data.importRuns.cancel(run, now)).toBe(true);
    tick(86_400);
    expect(await work(run)).toMatchObject({ state: "CANCELLED", dueAt: null });
    expect(asked).toBe(1);
  });

  it("is waited for in the folder until it is there, by whichever worker is there then", async () => {
    const run = await start({ kind: "FOLDER", path: "late.csv" });
    expect(await work(run)).toMatchObject({ state: "QUEUED", problems: [{ why: expect.stringContaining("ENOENT") }] });
    await writeFile(join(folder, "late.csv"), list);
    tick(60);
    expect(await runImports(deps, "worker-2")).toBe(1);
    expect(await work(run)).toMatchObject({ state: "DONE", read: 1 });
  });

  it("is not waited for where the way to it is wrong", async () => {
    const run = await start({ kind: "FOLDER", path: "late.csv/x" });
    expect(await work(run)).toMatchObject({ state: "FAILED", fetchesFailed: 0 });
  });
});
