import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { openServer } from "../../src/persistence/database/open-server.js";
import type { OpenedDatabase } from "../../src/persistence/database/opened-database.js";
import type { Replicas } from "../../src/persistence/database/open-replicas.js";
import { startDebianPostgres, type DebianPostgres } from "../kit/postgres/debian-postgres.js";
import { smallBundle } from "../persistence/small-bundle.js";

const maxLagMs = 1_500;
const slug = "barley-week";
const ref = { publisher: "third-gate", slug, revision: null };
const quiet = { info: () => undefined, warn: () => undefined };

describe("reads of the public, on a streaming replica", () => {
  let server: DebianPostgres;
  let replica: DebianPostgres;
  let stranger: DebianPostgres;
  let writer: OpenedDatabase;
  let reader: OpenedDatabase;
  let turn = 0;

  beforeAll(async () => {
    [server, stranger] = await Promise.all([startDebianPostgres(), startDebianPostgres()]);
    const url = await server.createDatabase("prepwright");
    await stranger.createDatabase("prepwright");
    replica = await server.startReplica();
    writer = await openServer(url);
    reader = await openServer(url, {
      log: quiet,
      replicas: { urls: [replica.urlOf("prepwright")], maxLagMs, now: () => performance.now() },
    });
    await writer.data.publishers.save({ slug: "third-gate", name: "Third Gate" });
    await publish();
  });
  afterEach(async () => {
    await replica.query("SELECT pg_wal_replay_resume() WHERE pg_is_wal_replay_paused()");
  });
  afterAll(async () => {
    await Promise.all([writer.close(), reader.close()]);
    await Promise.all([server.stop(), stranger.stop()]);
  });

  const replicas = (): Replicas => {
    if (reader.replicas === null) throw new Error("opened without replicas");
    return reader.replicas;
  };
  const isRead = (): boolean =>
    replicas()
      .states()
      .every(({ usable }) => usable);
  const publish = async (): Promise<number> => {
    turn += 1;
    const title = `Barley week ${String(turn)}`;
    const { summary } = await writer.data.revisions.publish(
      smallBundle({ publisher: "third-gate", slug, title }),
      new Date(),
    );
    return summary.revision;
  };
  const read = async (): Promise<number | null> => {
    const data = replicas().reads();
    const [summary] = await data.revisions.summaries([ref]);
    const [bundle] = await data.revisions.bundles(summary ? [summary.id] : []);
    expect(bundle?.plan.title).toBe(summary?.title);
    return summary?.revision ?? null;
  };

  it("go to the replica, and are never older than the bound", async () => {
    await expect.poll(isRead).toBe(true);
    const old = await read();
    await replica.query("SELECT pg_wal_replay_pause()");
    const written = await publish();
    const since = performance.now();
    let oldAnswers = 0;
    for (;;) {
      const asked = performance.now();
      const found = await read();
      if (found === written) break;
      // What it still answered was the revision before, and asked for within the bound.
      expect(found).toBe(old);
      expect(asked - since).toBeLessThanOrEqual(maxLagMs);
      oldAnswers += 1;
    }
    expect(oldAnswers).toBeGreaterThan(0);
    expect(isRead()).toBe(false);
  });

  it("find what this process heard of at once, though the replica does not have it", async () => {
    await expect.poll(isRead).toBe(true);
    await replica.query("SELECT pg_wal_replay_pause()");
    const written = await publish();
    replicas().heardOfWrite();
    for (let n = 0; n < 50; n += 1) expect(await read()).toBe(written);
    await replica.query("SELECT pg_wal_replay_resume()");
    await expect.poll(isRead).toBe(true);
    expect(await read()).toBe(written);
  });

  it("are answered by the primary while the replica is down, without one that fails", async () => {
    await expect.poll(isRead).toBe(true);
    let failures = 0;
    let asked = 0;
    let stop = false;
    const load = Array.from({ length: 4 }, async () => {
      while (!stop) {
        asked += 1;
        if ((await read().catch(() => null)) === null) failures += 1;
      }
    });
    await replica.halt("immediate");
    await expect.poll(isRead).toBe(false);
    const written = await publish();
    const since = performance.now();
    expect(await read()).toBe(written);
    await replica.resume();
    await expect.poll(isRead, { timeout: 20_000 }).toBe(true);
    stop = true;
    await Promise.all(load);
    expect(failures).toBe(0);
    expect(asked).toBeGreaterThan(20);
    // Started again within the bound, it may still answer what stood before.
    let found = await read();
    while (found !== written && performance.now() - since <= maxLagMs) found = await read();
    expect(found).toBe(written);
  });

  it("hold writes and transactions to the primary", async () => {
    await expect.poll(isRead).toBe(true);
    const data = replicas().reads();
    await data.transaction(async (inside) => {
      await inside.publishers.lock("third-gate");
      await inside.publishers.rename("third-gate", "The Third Gate");
    });
    const [found] = await writer.data.publishers.bySlugs(["third-gate"]);
    expect(found?.name).toBe("The Third Gate");
  });

  it("tell a caller's own fault as the primary does, and the replica stays in use", async () => {
    await expect.poll(isRead).toBe(true);
    const page = { first: 2, after: "nonsense", last: null, before: null };
    const filter = { publisher: null, search: null, usesFood: null, usesComponent: null };
    await expect(replicas().reads().revisions.page(filter, page)).rejects.toMatchObject({ name: "BadCursor" });
    expect(isRead()).toBe(true);
  });

  it("are never answered by a server that follows another primary, or none", async () => {
    for (const url of [stranger.urlOf("prepwright"), server.urlOf("prepwright")]) {
      const warned: object[] = [];
      const wrong = await openServer(server.urlOf("prepwright"), {
        log: { ...quiet, warn: (facts) => void warned.push(facts) },
        replicas: { urls: [url], maxLagMs, now: () => performance.now() },
      });
      const written = await publish();
      for (let n = 0; n < 10; n += 1) {
        const [found] = (await wrong.replicas?.reads().revisions.summaries([ref])) ?? [];
        expect(found?.revision).toBe(written);
        await new Promise((later) => setTimeout(later, 50));
      }
      expect(wrong.replicas?.states()).toMatchObject([{ usable: false }]);
      expect(warned).not.toEqual([]);
      await wrong.close();
    }
  });
});
