import { mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { hostname, tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { openEmbedded } from "../../../src/persistence/database/open-embedded.js";
import { lockFolder } from "../../../src/persistence/database/folder-lock.js";
import { runProcess } from "./run-process.js";
import { smallBundle } from "../small-bundle.js";

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "prepwright-embedded-"));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

describe("the embedded database", () => {
  it("finds its data when its folder is opened again", async () => {
    const dataDir = join(folder, "made", "if-missing");
    const first = await openEmbedded(dataDir);
    await first.data.publishers.save({ slug: "north-field", name: "North Field" });
    const bundle = smallBundle({ publisher: "north-field", slug: "kept", foods: ["kale"] });
    const { summary } = await first.data.revisions.publish(bundle, new Date("2026-03-01T10:00:00.5Z"));
    await Promise.all([first.close(), first.close()]);
    const second = await openEmbedded(dataDir);
    expect(await second.data.revisions.summaries([{ ...summary, revision: null }])).toEqual([summary]);
    expect(await second.data.revisions.bundles([summary.id])).toEqual([bundle]);
    await second.close();
    expect((await readdir(dataDir)).toSorted()).toEqual(["database"]);
  });

  it("is refused to a second process, and to the same one twice, until the first one ends", async () => {
    const holder = runProcess("hold-embedded.ts", [folder, "held"]);
    await holder.wrote("open");
    await expect(openEmbedded(folder)).rejects.toMatchObject({
      name: "EmbeddedDatabaseBusy",
      message: expect.stringContaining(`in use by process ${holder.process.pid} on ${hostname()}`),
    });
    // Killed, it leaves its lock behind; the row it was told is safe is there.
    holder.process.kill("SIGKILL");
    await holder.ended;
    expect(await readdir(folder)).toContain("database.lock");
    const opened = await openEmbedded(folder);
    expect(await opened.data.publishers.bySlugs(["held"])).toMatchObject([{ slug: "held" }]);
    await expect(openEmbedded(folder)).rejects.toMatchObject({ name: "EmbeddedDatabaseBusy" });
    await opened.close();
  });
});

describe("the lock of a folder", () => {
  const path = () => join(folder, "database.lock");

  it("is given to exactly one of many who ask at once", async () => {
    const asked = await Promise.allSettled(Array.from({ length: 20 }, () => lockFolder(folder)));
    const won = asked.flatMap((each) => (each.status === "fulfilled" ? [each.value] : []));
    expect(won).toHaveLength(1);
    for (const each of asked) {
      if (each.status === "rejected") expect(each.reason).toMatchObject({ name: "EmbeddedDatabaseBusy" });
    }
    await won[0]?.release();
    expect(await readdir(folder)).toEqual([]);
    await (await lockFolder(folder)).release();
  });

  it("is taken over, by one of many, from a process that is gone", async () => {
    const gone = runProcess("end-at-once.ts", []);
    await gone.ended;
    const stale = { pid: gone.process.pid, host: hostname(), born: null, token: "stale" };
    for (let round = 0; round < 20; round += 1) {
      await writeFile(path(), JSON.stringify(stale));
      const asked = await Promise.allSettled(Array.from({ length: 8 }, () => lockFolder(folder)));
      const won = asked.flatMap((each) => (each.status === "fulfilled" ? [each.value] : []));
      expect(won).toHaveLength(1);
      await won[0]?.release();
      expect(await readdir(folder)).toEqual([]);
    }
    // Also from one that went while it was taking over.
    await writeFile(path(), JSON.stringify(stale));
    await writeFile(`${path()}.takeover`, JSON.stringify(stale));
    await (await lockFolder(folder)).release();
    expect(await readdir(folder)).toEqual([]);
  });

  it("is taken over from an earlier process that had the same number", async () => {
    const lock = await lockFolder(folder);
    const mine: unknown = JSON.parse(await readFile(path(), "utf8"));
    await lock.release();
    // Every container starts with process 1: what tells two of them apart is when they began.
    await writeFile(path(), JSON.stringify({ ...(mine as object), born: "another-boot 1", token: "other" }));
    await (await lockFolder(folder)).release();
  });

  it("is left alone where nobody can tell whether its process lives", async () => {
    const elsewhere = { pid: 1, host: "another-machine", born: null, token: "far" };
    for (const text of [JSON.stringify(elsewhere), "", "half a li", '{"pid":"1"}']) {
      await writeFile(path(), text);
      await expect(lockFolder(folder), text).rejects.toMatchObject({ name: "EmbeddedDatabaseBusy", lockFile: path() });
      expect(await readFile(path(), "utf8")).toBe(text);
    }
    expect(await readdir(folder)).toEqual(["database.lock"]);
  });

  it("that somebody else took meanwhile is not removed", async () => {
    const lock = await lockFolder(folder);
    const theirs = JSON.stringify({ pid: 1, host: "another-machine", born: null, token: "theirs" });
    await writeFile(path(), theirs);
    await lock.release();
    expect(await readFile(path(), "utf8")).toBe(theirs);
  });
});
