import { beforeAll, expect, it } from "vitest";
import { FileNotHad } from "../../../src/services/imports/files/collect-file.js";
import type { FileSources } from "../../../src/services/imports/files/file-sources.js";
import { lastTick } from "../../../src/services/imports/feeds/crontab.js";
import type { Deps } from "../../../src/services/deps.js";
import { feedSettingsSchema } from "../../../src/services/imports/feeds/feed-settings.js";
import { reportImports } from "../../../src/services/imports/reports/report-imports.js";
import { runImports } from "../../../src/services/imports/run-imports.js";
import { startDueImports } from "../../../src/services/imports/feeds/start-due-imports.js";
import { demo } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { bytesOf, silentLog } from "./open-feed.js";

const header = "food,pack,content,price\n";

it("the last time of a crontab is in its own zone, also where the clocks change", () => {
  // Lisbon is at UTC+1 from 2026-03-29 01:00 UTC on: European Union directive 2000/84/EC.
  const tick = (now: string) => lastTick("30 2 * * *", "Europe/Lisbon", new Date(now)).toISOString();
  expect(tick("2026-03-28T02:30:00Z")).toBe("2026-03-28T02:30:00.000Z");
  expect(tick("2026-03-28T02:29:59Z")).toBe("2026-03-27T02:30:00.000Z");
  expect(tick("2026-03-30T12:00:00Z")).toBe("2026-03-30T01:30:00.000Z");
});

describeOnBothDatabases("imports at their time", (open) => {
  let deps: Deps;
  let now = new Date("2026-03-01T02:29:00Z");
  let text: string | null = `${header}egg,due,6 piece,1\n`;
  const asked: unknown[] = [];
  const sources: FileSources = {
    fromFolder: () => Promise.reject(new FileNotHad("the file is not there")),
    fromAddress: (url, hosts, known) => {
      asked.push([url, hosts, known?.etag ?? null]);
      const name = "list.csv";
      return Promise.resolve(
        text === null ? null : { name, bytes: bytesOf(text), tags: { etag: '"1"', lastModified: null } },
      );
    },
  };

  async function saveFeed(slug: string, place: object): Promise<string> {
    const limits = { changed: 1, quarantined: 1 };
    const settings = feedSettingsSchema.parse({ source: "Shop", currency: "XTS", locale: "en", limits, place });
    return deps.data.feeds.save({
      ...{ publisher: null, slug, kind: "PRICES", settings, cron: "30 2 * * *", zone: "UTC", enabled: true },
    });
  }
  const lastRun = async (feed: string) =>
    (await deps.data.importRuns.page(feed, { first: 1, after: null, last: null, before: null })).items[0]?.item;

  beforeAll(async () => {
    const { data } = await open();
    await data.foods.save(demo.foods);
    deps = { data, clock: () => now, log: silentLog, knownRules: new Map(), sources };
  });

  it("take the file that was handed in last, and never a row of it that was mended", async () => {
    now = new Date("2026-02-20T02:30:00Z");
    const feed = await saveFeed("handed-in", { kind: "UPLOAD" });
    const { importFiles } = deps.data;
    const whole = await importFiles.put(feed, "list.csv", bytesOf(`${header}egg,due,6 piece,1\n`), now);
    const later = new Date("2026-02-20T09:00:00Z");
    const row = `${header}egg,odd,12 piece,2\n\n`;
    const mended = await importFiles.putMended(feed, "line 3, mended", bytesOf(row), later);
    now = new Date("2026-02-21T02:30:00Z");
    await startDueImports(deps);
    expect((await lastRun(feed))?.file).toBe(whole.id);
    await runImports(deps, "worker-1");
    // The same bytes, handed in: a file like any other, which nobody has answered for.
    const same = await importFiles.put(feed, "line 3, mended", bytesOf(row), now);
    expect([mended.mended, same.mended, same.id === mended.id]).toEqual([true, false, false]);
    expect((await importFiles.newest(feed))?.id).toBe(same.id);
    now = new Date("2026-03-01T02:29:00Z");
    await deps.data.feeds.remove(feed);
  });

  it("take a file that was handed in again behind another, by whoever brings it back", async () => {
    const feed = await saveFeed("again", { kind: "UPLOAD" });
    const { importFiles } = deps.data;
    const hand = (price: number, day: string, by: string, countsMore: boolean) =>
      importFiles.put(
        feed,
        "list.csv",
        bytesOf(`${header}egg,again,6 piece,${String(price)}\n`),
        new Date(`2026-02-${day}T09:00:00Z`),
        { by, countsMore },
      );
    const first = await hand(1, "10", "publisher", true);
    const second = await hand(2, "11", "publisher", true);
    expect((await importFiles.newest(feed))?.id).toBe(second.id);
    // Whoever may publish less brings an older list back: it is the newest, and the one who answered for it then does no more.
    const back = await hand(1, "12", "helper", false);
    expect([back.id, back.handedInBy]).toEqual([first.id, "helper"]);
    expect((await importFiles.newest(feed))?.id).toBe(first.id);
    // The newest handed in once more stays with whoever counts more.
    expect((await hand(1, "13", "publisher", true)).handedInBy).toBe("publisher");
    expect((await hand(1, "14", "helper", false)).handedInBy).toBe("publisher");
    await deps.data.feeds.remove(feed);
  });

  it("start once when it has come, fetch their file, and fetch only what has changed", async () => {
    const feed = await saveFeed("shop", {
      kind: "ADDRESS",
      url: "https://shop.example/list.csv",
      hosts: ["cdn.example"],
    });
    expect(await startDueImports(deps)).toEqual({ started: 0 });
    now = new Date("2026-03-01T02:31:00Z");
    expect(await startDueImports(deps)).toEqual({ started: 1 });
    expect(await startDueImports(deps)).toEqual({ started: 0 });
    await runImports(deps, "worker-1");
    expect(await lastRun(feed)).toMatchObject({ state: "DONE", created: 1 });
    expect(await startDueImports(deps)).toEqual({ started: 0 });
    // The service was down at the time of the next day, and is back within the hour.
    now = new Date("2026-03-02T03:10:00Z");
    text = null;
    expect(await startDueImports(deps)).toEqual({ started: 1 });
    await runImports(deps, "worker-1");
    expect(await lastRun(feed)).toMatchObject({ state: "DONE", unchanged: 1 });
    expect(asked).toEqual([
      ["https://shop.example/list.csv", ["cdn.example"], null],
      ["https://shop.example/list.csv", ["cdn.example"], '"1"'],
    ]);
    now = new Date("2026-03-03T05:00:00Z");
    expect(await startDueImports(deps)).toEqual({ started: 0 });
  });

  it("say why a file could not be had, and are in the report of the morning", async () => {
    const feed = await saveFeed("folder", { kind: "FOLDER", path: "prices.csv" });
    now = new Date("2026-03-04T02:30:00Z");
    text = `${header}egg,due,6 piece,1\nmoon,x,1 kg,1\n`;
    expect(await startDueImports(deps)).toEqual({ started: 2 });
    await runImports(deps, "worker-1");
    expect(await lastRun(feed)).toMatchObject({
      state: "FAILED",
      problems: [{ code: "FILE_NOT_HAD", why: "the file is not there" }],
    });
    const logged: object[] = [];
    const note = (facts: object): void => void logged.push(facts);
    const log = { info: note, warn: note, error: note };
    expect(await reportImports({ ...deps, log })).toEqual({ imports: 2, toMend: 1, told: false });
    expect(logged).toEqual(
      expect.arrayContaining([
        expect.objectContaining({ feed: "folder", state: "FAILED", problems: ["FILE_NOT_HAD"] }),
        expect.objectContaining({ feed: "shop", state: "DONE", read: 2, unchanged: 1, quarantined: 1 }),
      ]),
    );
  });

  it("start at their time although a clock that was wrong has started them in the time to come", async () => {
    for (const { id } of await deps.data.feeds.all()) await deps.data.feeds.remove(id);
    const feed = await saveFeed("wrong-clock", { kind: "ADDRESS", url: "https://shop.example/list.csv", hosts: [] });
    now = new Date("2026-06-01T02:30:30Z");
    expect(await startDueImports(deps)).toMatchObject({ started: 1 });
    await runImports(deps, "worker-1");
    now = new Date("2026-05-03T02:30:30Z");
    expect(await startDueImports(deps)).toMatchObject({ started: 1 });
    await runImports(deps, "worker-1");
    // The clocks of two workers differ by seconds: still one run.
    now = new Date("2026-05-03T02:30:10Z");
    expect(await startDueImports(deps)).toEqual({ started: 0 });
    expect(
      (await deps.data.importRuns.page(feed, { first: 9, after: null, last: null, before: null })).items,
    ).toHaveLength(2);
    await deps.data.feeds.remove(feed);
  });
});
