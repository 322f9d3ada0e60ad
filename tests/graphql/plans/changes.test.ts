import { setTimeout as wait } from "node:timers/promises";
import { afterAll, beforeAll, expect, it } from "vitest";
import { openServer } from "../../../src/persistence/database/open-server.js";
import { describeOnBothDatabases, describeOnServer } from "../../kit/databases.js";
import { smallBundle } from "../../persistence/small-bundle.js";
import { openTestApp, type TestApp } from "../open-test-app.js";

const query = `query ($publisher: String, $first: Int, $after: String, $last: Int) {
  changes(publisher: $publisher, first: $first, after: $after, last: $last) {
    edges { cursor node { id kind at plan { slug revision withdrawnAt publisher { slug } } } } pageInfo { hasNextPage endCursor } } }`;

interface Change {
  readonly id: string;
  readonly kind: string;
  readonly at: string;
  readonly plan: { readonly slug: string; readonly revision: number };
}

interface Changes {
  readonly edges: readonly { readonly cursor: string; readonly node: Change }[];
}

async function read(app: TestApp, variables: Record<string, unknown>): Promise<Changes["edges"]> {
  const { data, errors } = await app.ask(query, variables);
  expect(errors).toEqual([]);
  return (data?.["changes"] as Changes).edges;
}

/** Everything after a cursor, page by page, as a reader does who comes back. */
async function follow(app: TestApp, seen: { cursor: string; node: Change }[]): Promise<void> {
  for (;;) {
    const page = await read(app, { first: 3, after: seen.at(-1)?.cursor ?? null });
    seen.push(...page);
    if (page.length === 0) return;
  }
}

describeOnBothDatabases("changes", (open) => {
  let app: TestApp;
  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    const { data } = app.deps;
    await data.publishers.save({ slug: "north-field", name: "North Field" });
    await data.publishers.save({ slug: "south-field", name: "South Field" });
  });
  afterAll(() => app.close());

  it("tell what was published, corrected and withdrawn, in order, and nothing of what was not done", async () => {
    const { revisions, transaction } = app.deps.data;
    const week = smallBundle({ publisher: "north-field", slug: "week" });
    const later = (hour: number): Date => new Date(Date.UTC(2026, 2, 1, hour));
    await revisions.publish(week, later(9));
    await revisions.publish(week, later(10));
    await revisions.publish({ ...week, plan: { ...week.plan, title: "Mended" } }, later(11), "the title was wrong");
    await revisions.publish(smallBundle({ publisher: "south-field", slug: "other" }), later(12));
    await revisions.withdraw({ publisher: "north-field", slug: "week", revision: 1 }, later(13), "mouldy");
    await revisions.withdraw({ publisher: "north-field", slug: "week", revision: 1 }, later(14), "again");
    const undone = transaction(async (inside) => {
      await inside.revisions.publish(smallBundle({ publisher: "north-field", slug: "undone" }), later(15));
      throw new Error("changed my mind");
    });
    await expect(undone).rejects.toThrow("changed my mind");

    const seen: { cursor: string; node: Change }[] = [];
    await follow(app, seen);
    expect(seen.map(({ node: { kind, at, plan } }) => [kind, at.slice(11, 13), plan.slug, plan.revision])).toEqual([
      ["PLAN_PUBLISHED", "09", "week", 1],
      ["PLAN_CORRECTED", "11", "week", 2],
      ["PLAN_PUBLISHED", "12", "other", 1],
      ["PLAN_WITHDRAWN", "13", "week", 1],
    ]);
    expect(await read(app, { publisher: "south-field" })).toEqual([seen[2]]);
    expect(await read(app, { publisher: "nobody" })).toEqual([]);
    expect(await read(app, { publisher: "\0" })).toEqual([]);
    expect(await read(app, { last: 1 })).toEqual([seen[3]]);
  });

  it("refuse a cursor that is not theirs", async () => {
    for (const after of [
      "x",
      Buffer.from('["01"]').toString("base64url"),
      Buffer.from('["-1"]').toString("base64url"),
    ]) {
      const { errors } = await app.ask(query, { after });
      expect(errors[0]?.extensions).toMatchObject({ code: "BAD_SHAPE", at: ["after"] });
    }
  });
});

describeOnServer("changes by many at once", (open) => {
  it("are seen also when an earlier write commits later", async () => {
    const { data } = await open();
    const app = await openTestApp(data);
    for (const slug of ["slow", "quick"]) await data.publishers.save({ slug, name: slug });
    let commit = (): void => undefined;
    const mayCommit = new Promise<void>((resolve) => (commit = resolve));
    let written = (): void => undefined;
    const isWritten = new Promise<void>((resolve) => (written = resolve));
    const slow = data.transaction(async (inside) => {
      await inside.revisions.publish(smallBundle({ publisher: "slow", slug: "first-written" }), new Date(0));
      written();
      await mayCommit;
    });
    await isWritten;
    await data.revisions.publish(smallBundle({ publisher: "quick", slug: "first-committed" }), new Date(0));
    const seen: { cursor: string; node: Change }[] = [];
    await follow(app, seen);
    expect(seen.map(({ node }) => node.plan.slug)).toEqual(["first-committed"]);
    commit();
    await slow;
    await follow(app, seen);
    expect(seen.map(({ node }) => node.plan.slug)).toEqual(["first-committed", "first-written"]);
    await app.close();
  });

  it("are each seen once, in the order they stay in, by a reader who follows", async () => {
    const { data, url } = await open();
    const app = await openTestApp(data);
    const other = await openServer(String(url), { poolSize: 5 });
    const writers = Array.from({ length: 8 }, (_, index) => `writer-${index}`);
    for (const slug of writers) await data.publishers.save({ slug, name: slug });
    let writing = true;
    const work = Promise.all(
      writers.map(async (publisher, index) => {
        const { transaction } = index % 2 === 0 ? data : other.data;
        for (let plan = 0; plan < 12; plan += 1) {
          await transaction(async (inside) => {
            for (const part of ["a", "b"].slice(0, 1 + (plan % 2))) {
              await inside.revisions.publish(smallBundle({ publisher, slug: `plan-${plan}-${part}` }), new Date(plan));
            }
            // The longer a transaction is open after its write, the more others commit before it.
            await wait((index * 7 + plan * 5) % 23);
          });
        }
      }),
    ).finally(() => (writing = false));
    const seen: { cursor: string; node: Change }[] = [];
    let pages = 0;
    while (writing) {
      seen.push(...(await read(app, { first: 3, after: seen.at(-1)?.cursor ?? null })));
      pages += 1;
    }
    await work;
    await follow(app, seen);
    expect(pages).toBeGreaterThan(3);
    expect(new Set(seen.map(({ node }) => node.id)).size).toBe(seen.length);
    expect(seen.length).toBe(writers.length * 18);
    const again: { cursor: string; node: Change }[] = [];
    await follow(app, again);
    expect(again).toEqual(seen);
    await other.close();
    await app.close();
  }, 60_000);

  it("keep their places when they are restored from a dump of rows", async () => {
    const { data, sql } = await open();
    await data.publishers.save({ slug: "north-field", name: "North Field" });
    for (const slug of ["one", "two"]) {
      await data.revisions.publish(smallBundle({ publisher: "north-field", slug }), new Date(0));
    }
    const rows = "SELECT id, position FROM changes ORDER BY position";
    const { rows: before } = await sql.query(rows);
    await sql.query(`CREATE TABLE dumped AS SELECT * FROM changes ORDER BY id; DELETE FROM changes;
      INSERT INTO changes SELECT * FROM dumped; DROP TABLE dumped`);
    expect((await sql.query(rows)).rows).toEqual(before);
    await data.revisions.publish(smallBundle({ publisher: "north-field", slug: "three" }), new Date(0));
    expect((await sql.query("SELECT max(position) AS newest FROM changes")).rows).toEqual([{ newest: "3" }]);
  });
});
