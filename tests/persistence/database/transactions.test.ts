import { beforeAll, expect, it } from "vitest";
import { describeOnBothDatabases, describeOnServer, type TestDatabase } from "../../kit/databases.js";
import { smallBundle, smallFood } from "../small-bundle.js";

const publisher = "north-field";

describeOnBothDatabases("transactions", (open) => {
  let database: TestDatabase;
  beforeAll(async () => {
    database = await open();
    await database.data.publishers.save({ slug: publisher, name: "North Field" });
  });

  it("keep everything that was saved in them, and give back what the work returned", async () => {
    const { data } = database;
    const id = await data.transaction(async (inside) => {
      await inside.foods.save([smallFood("kept")]);
      const { summary } = await inside.revisions.publish(smallBundle({ publisher, slug: "kept" }), new Date(0));
      expect(await inside.foods.bySlugs(["kept"])).toEqual([smallFood("kept")]);
      return summary.id;
    });
    expect(await data.revisions.summariesByIds([id])).toMatchObject([{ slug: "kept", publishedAt: new Date(0) }]);
  });

  it("keep nothing if the work throws, also of transactions inside", async () => {
    const { data } = database;
    const work = data.transaction(async (inside) => {
      await inside.transaction(async (deeper) => {
        await deeper.foods.save([smallFood("lost")]);
        await deeper.plans.saveDraft(smallBundle({ publisher, slug: "lost" }).plan, null);
      });
      throw new Error("changed my mind");
    });
    await expect(work).rejects.toThrow("changed my mind");
    expect(await data.foods.bySlugs(["lost"])).toEqual([null]);
    expect(await data.plans.drafts([{ publisher, slug: "lost" }])).toEqual([null]);
  });

  it("run beside each other without losing a write", async () => {
    const { data } = database;
    const slugs = Array.from({ length: 12 }, (_, index) => `beside-${index}`);
    await Promise.all(
      slugs.map((slug) =>
        data.transaction((inside) => inside.foods.save([smallFood(slug), smallFood("shared", slug)])),
      ),
    );
    expect((await data.foods.bySlugs(slugs)).map((food) => food?.slug)).toEqual(slugs);
  });

  it("leave the database answering", async () => {
    await database.data.ping();
  });
});

describeOnServer("a connection", (open) => {
  it("reads and writes times as they are, whatever zone the server keeps", async () => {
    const { url, sql } = await open();
    await sql.query(`ALTER DATABASE "${new URL(String(url)).pathname.slice(1)}" SET timezone TO 'Asia/Kathmandu'`);
    const { openServer } = await import("../../../src/persistence/database/open-server.js");
    const { data, sql: later, close } = await openServer(String(url));
    try {
      await data.publishers.save({ slug: publisher, name: "North Field" });
      const at = new Date("2026-03-29T01:30:00.789Z");
      const { summary } = await data.revisions.publish(smallBundle({ publisher, slug: "times" }), at);
      expect(await data.revisions.summariesByIds([summary.id])).toMatchObject([{ publishedAt: at }]);
      await data.revisions.withdraw({ publisher, slug: "times", revision: 1 }, at);
      expect(await data.revisions.summariesByIds([summary.id])).toMatchObject([{ withdrawnAt: at }]);
      const { rows } = await later.query(
        "SELECT extract(epoch FROM published_at)::float8 * 1000 AS ms FROM revisions",
        [],
      );
      expect(rows).toEqual([{ ms: at.getTime() }]);
    } finally {
      await close();
    }
  });

  it("that was cut is replaced, and a server that is gone is a rejected ping", async () => {
    const { url, data, sql } = await open();
    await sql.query(`SELECT pg_terminate_backend(pid) FROM pg_stat_activity
      WHERE application_name = 'prepwright' AND datname = current_database() AND pid <> pg_backend_pid()`);
    await expect
      .poll(
        () =>
          data.ping().then(
            () => "answers",
            () => "silent",
          ),
        { timeout: 10_000 },
      )
      .toBe("answers");
    const { dropTestDatabase, createTestDatabase } = await import("../../kit/databases.js");
    const { openServer } = await import("../../../src/persistence/database/open-server.js");
    expect(url).not.toBeNull();
    const doomed = await createTestDatabase();
    const opened = await openServer(doomed);
    await dropTestDatabase(doomed);
    await expect(opened.data.ping()).rejects.toThrow();
    await opened.close();
    await opened.close();
  });
});

describeOnServer("writers who wait for a lock", (open) => {
  it("leave connections to readers, however many they are, and all come to their turn", async () => {
    const { data, client } = await open();
    await data.publishers.save({ slug: publisher, name: "North Field" });
    const slugs = Array.from({ length: 30 }, (_, index) => `plan-${index}`);
    let begun = 0;
    let release = (): void => undefined;
    const released = new Promise<void>((resolve) => (release = resolve));
    const stranger = data.transaction(async (inside) => {
      await inside.publishers.lock(publisher);
      await released;
    });
    const writers = slugs.map((slug) =>
      data.transaction(async (inside) => {
        begun += 1;
        await inside.publishers.lock(publisher);
        await inside.plans.saveDraft(smallBundle({ publisher, slug }).plan, null);
      }),
    );
    await expect.poll(() => begun).toBeGreaterThan(0);
    // More reads at once than there are connections.
    const found = await Promise.all(slugs.map(() => data.publishers.bySlugs([publisher])));
    expect(found.map(([each]) => each?.name)).toEqual(slugs.map(() => "North Field"));
    expect(begun).toBeLessThan(5);
    release();
    await Promise.all([stranger, ...writers]);
    expect(begun).toBe(slugs.length);
    expect(await client.planDraft.count()).toBe(slugs.length);
  });
});
