import pg from "pg";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { jobs } from "../../src/jobs/jobs.js";
import { startJobQueue } from "../../src/app/processes/job-queue.js";
import { openServer } from "../../src/persistence/database/open-server.js";
import type { OpenedDatabase } from "../../src/persistence/database/opened-database.js";
import type { Deps } from "../../src/services/deps.js";
import { write, type WriteOrder } from "../../src/services/write.js";
import { ok } from "../../src/domain/problem.js";
import { smallBundle } from "../persistence/small-bundle.js";
import { startDebianPostgres, type DebianPostgres } from "../kit/postgres/debian-postgres.js";
import { startPooler, type Pooler } from "../kit/postgres/pooler.js";

/** So few that every statement meets connections that others used a moment ago. */
const connections = 3;
const quiet = { info: () => undefined, warn: () => undefined, error: () => undefined };

describe("behind a pooler in transaction mode", () => {
  let server: DebianPostgres;
  let pooler: Pooler;
  let both: readonly OpenedDatabase[];

  beforeAll(async () => {
    // A zone that nobody asked for: what goes wrong with times shows.
    server = await startDebianPostgres({ timezone: "Pacific/Auckland" });
    const directUrl = await server.createDatabase("pooled");
    pooler = await startPooler(server.port, connections);
    both = await Promise.all([1, 2].map(() => openServer(pooler.urlOf("pooled"), { directUrl, poolSize: 10 })));
  });
  afterAll(async () => {
    await Promise.all(both.map((each) => each.close()));
    await pooler.stop();
    await server.stop();
  });

  it("two instances do 300 mixed things at once, and times stay right among clients of other zones", async () => {
    const [one] = both;
    if (one === undefined) throw new Error("no instance");
    await one.data.publishers.save({ slug: "third-gate", name: "Third Gate" });
    const stranger = new pg.Client({ connectionString: pooler.urlOf("pooled") });
    await stranger.connect();
    await stranger.query("SET TIME ZONE 'America/Lima'");
    const at = (n: number): Date => new Date(Date.UTC(2026, 2, 29, 0, n, 7, 123));
    const things = Array.from({ length: 300 }, (_, n) => async (): Promise<void> => {
      const { data } = both[n % 2] ?? one;
      const slug = `plan-${String(n)}`;
      if (n % 5 === 4) {
        await stranger.query("SELECT now(), $1::int", [n]);
        return;
      }
      const { summary } = await data.revisions.publish(
        smallBundle({ publisher: "third-gate", slug, foods: ["carrot"] }),
        at(n),
      );
      const [found] = await data.revisions.summaries([{ publisher: "third-gate", slug, revision: null }]);
      expect([summary.publishedAt, found?.publishedAt]).toEqual([at(n), at(n)]);
      const [bundle] = await data.revisions.bundles([summary.id]);
      expect(bundle).toEqual(smallBundle({ publisher: "third-gate", slug, foods: ["carrot"] }));
    });
    await Promise.all(things.map((thing) => thing()));
    await stranger.end();
    const changes = await one.data.changes.page(null, { first: 400, after: null, last: null, before: null });
    expect(new Set(changes.items.map(({ item }) => item.revisionId)).size).toBe(240);
  });

  it("a key used by both instances at once stands for one write", async () => {
    const [one] = both;
    if (one === undefined) throw new Error("no instance");
    let done = 0;
    const order: Omit<WriteOrder, "idempotencyKey"> = {
      caller: { actor: { kind: "PROGRAM", name: "test" }, requestId: null },
      scope: "WRITE",
      publisher: "third-gate",
      action: "UPDATE_PUBLISHER",
      input: { a: 1 },
    };
    for (let round = 0; round < 20; round += 1) {
      const answers = await Promise.all(
        Array.from({ length: 10 }, (_, n) => {
          const deps: Deps = {
            data: (both[n % 2] ?? one).data,
            clock: () => new Date(),
            log: quiet,
            knownRules: new Map(),
          };
          return write<number>(deps, { ...order, idempotencyKey: `round-${String(round)}` }, async () => {
            done += 1;
            return ok({ value: done, subject: { kind: "PUBLISHER", name: "third-gate", before: null, after: null } });
          });
        }),
      );
      const values = answers.flatMap((each) => (each.ok ? [each.value] : []));
      expect(new Set(values).size).toBe(1);
    }
    expect(done).toBe(20);
  });

  it("jobs are queued and done past the pooler, and nothing is left in the sessions that are shared", async () => {
    const [one] = both;
    if (one === undefined) throw new Error("no instance");
    let ran = 0;
    const job = { name: "count", cron: "0 0 1 1 *", run: async () => ({ ran: (ran += 1) }) };
    const deps: Deps = { data: one.data, clock: () => new Date(), log: quiet, knownRules: new Map() };
    const queues = await Promise.all(
      both.map(({ sql }) => startJobQueue({ sql, zone: "UTC", jobs: [...jobs, job], deps, log: quiet })),
    );
    await queues[0]?.enqueue("count");
    await expect.poll(() => ran, { timeout: 15_000 }).toBe(1);
    await Promise.all(queues.map((queue) => queue.close()));
    expect(ran).toBe(1);

    const locks = await server.query("SELECT * FROM pg_locks WHERE locktype = 'advisory'");
    expect(locks).toEqual([]);
    const clients = await Promise.all(
      Array.from({ length: connections }, async () => {
        const client = new pg.Client({ connectionString: pooler.urlOf("pooled") });
        await client.connect();
        await client.query("BEGIN");
        return client;
      }),
    );
    for (const client of clients) {
      const { rows } = await client.query<{ pid: number; names: string[]; channels: string[]; timeout: string }>(
        `SELECT pg_backend_pid() AS pid, current_setting('statement_timeout') AS timeout,
           ARRAY(SELECT name FROM pg_prepared_statements WHERE name <> '') AS names,
           ARRAY(SELECT pg_listening_channels()) AS channels`,
      );
      expect(rows[0]).toMatchObject({ names: [], channels: [], timeout: "0" });
    }
    await Promise.all(clients.map((client) => client.end()));
  });
});
