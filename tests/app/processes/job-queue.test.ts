import { setTimeout as wait } from "node:timers/promises";
import { afterAll, beforeAll, expect, it } from "vitest";
import { startJobQueue, type JobQueue } from "../../../src/app/processes/job-queue.js";
import { jobs, type Job } from "../../../src/jobs/jobs.js";
import type { Sql, SqlAnswer } from "../../../src/persistence/sql/plain-sql.js";
import type { Deps, Log } from "../../../src/services/deps.js";
import { loadShippedRules } from "../../../src/services/rules/load-rule-set.js";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { verifyRevisions } from "../../../src/services/plans/verify-revisions.js";
import { noteFactSources } from "../../../src/services/plans/listing/work-out-due-facts.js";
import { openTimeSlicer } from "../../../src/services/time-slices.js";
import { demo, rules } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases, describeOnServer, type TestDatabase } from "../../kit/databases.js";

interface Logged {
  readonly facts: Readonly<Record<string, unknown>>;
  readonly message: string;
}

describeOnBothDatabases("nightly jobs", (open) => {
  let database: TestDatabase;
  let deps: Deps;
  let queue: JobQueue;
  const logged: Logged[] = [];
  const note = (facts: object, message: string): void => void logged.push({ facts: { ...facts }, message });
  const log: Log = { info: note, warn: note, error: note };

  beforeAll(async () => {
    database = await open();
    deps = { data: database.data, clock: () => new Date("2026-03-01T09:00:00Z"), log, knownRules: new Map() };
    await loadShippedRules(deps, rules);
    await loadSeeds(deps, demo);
    queue = await startJobQueue({ sql: database.sql, zone: "Europe/Lisbon", jobs, deps, log });
  });
  afterAll(() => queue.close());

  const outcome = async (): Promise<unknown> => {
    for (let tries = 0; tries < 300; tries += 1) {
      const done = logged.find(({ message }) => message === "job done");
      if (done !== undefined) return done.facts["outcome"];
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
    throw new Error(`the job did not run: ${JSON.stringify(logged)}`);
  };

  it("are scheduled at their hour in the zone of the worker", async () => {
    const { rows } = await database.sql.query("SELECT name, cron, timezone FROM pgboss.schedule ORDER BY name");
    expect(rows).toEqual([
      { name: "forget-deliveries", cron: "47 3 * * *", timezone: "Europe/Lisbon" },
      { name: "forget-keys", cron: "41 * * * *", timezone: "Europe/Lisbon" },
      { name: "forget-usage", cron: "53 3 * * *", timezone: "Europe/Lisbon" },
      { name: "note-fact-sources", cron: "20 4 * * *", timezone: "Europe/Lisbon" },
      { name: "report-imports", cron: "0 6 * * *", timezone: "Europe/Lisbon" },
      { name: "review-revisions", cron: "30 4 * * *", timezone: "Europe/Lisbon" },
      { name: "run-scheduled", cron: "* * * * *", timezone: "Europe/Lisbon" },
      { name: "start-due-imports", cron: "* * * * *", timezone: "Europe/Lisbon" },
      { name: "verify-revisions", cron: "17 3 * * *", timezone: "Europe/Lisbon" },
      { name: "work-out-facts", cron: "* * * * *", timezone: "Europe/Lisbon" },
    ]);
  });

  it("are run by a worker, and find every frozen document as it was published", async () => {
    await queue.enqueue("verify-revisions");
    expect(await outcome()).toEqual({ checked: demo.bundles.length, mismatched: [] });
  });

  it("name the one document that somebody changed behind the service's back", async () => {
    const [summary] = await database.data.revisions.summaries([
      { publisher: demo.publisher.slug, slug: "bean-night", revision: null },
    ]);
    const id = summary?.id ?? "";
    await database.sql.query("ALTER TABLE revisions DISABLE TRIGGER USER");
    await database.sql.query(
      "UPDATE revisions SET document = jsonb_set(document, '{plan,title}', '\"x\"') WHERE id = $1::uuid",
      [id],
    );
    expect(await verifyRevisions(deps)).toEqual({ checked: demo.bundles.length, mismatched: [id] });
    expect(logged).toContainEqual(
      expect.objectContaining({
        message: "a frozen document does not match its checksum",
        facts: expect.objectContaining({ revision: id }),
      }),
    );
  });

  it("yield to requests while they compute", async () => {
    let pauses = 0;
    const watched: Deps = {
      ...deps,
      work: { ...openTimeSlicer(() => 0).beginJob(), pause: () => ((pauses += 1), null) },
    };
    await noteFactSources(watched);
    // A pause at least for each food.
    expect(pauses).toBeGreaterThan(demo.foods.length);
  });

  it("take no job whose kind they do not know", async () => {
    await expect(queue.enqueue("nothing")).rejects.toThrow("there is no job nothing");
  });
});

describeOnServer("the job queues of several instances", (open) => {
  it("start at the same time on a new database, again and again, without one that fails", async () => {
    const log: Log = { info: () => undefined, warn: () => undefined, error: () => undefined };
    for (let turn = 0; turn < 6; turn += 1) {
      const { data, sql } = await open();
      const deps: Deps = { data, clock: () => new Date("2026-03-01T09:00:00Z"), log, knownRules: new Map() };
      const queues = await Promise.all([1, 2, 3].map(() => startJobQueue({ sql, zone: "UTC", jobs, deps, log })));
      await Promise.all(queues.map((queue) => queue.close()));
    }
  });

  const silent: Log = { info: () => undefined, warn: () => undefined, error: () => undefined };
  const quick = (run: () => void): Job => ({
    name: "quick",
    cron: "0 0 1 1 *",
    run: () => {
      run();
      return Promise.resolve({});
    },
  });
  const isEnd = (text: string): boolean => text.includes("completed_on = now()") || text.includes("retried_jobs");
  const until = async (reached: () => boolean): Promise<void> => {
    while (!reached()) await wait(20);
  };

  it("give each job tools that yield to requests", async () => {
    const { data, sql } = await open();
    const slicer = openTimeSlicer(() => 0);
    const clock = (): Date => new Date("2026-03-01T09:00:00Z");
    const deps: Deps = { data, clock, log: silent, knownRules: new Map(), slicer };
    const given: Deps[] = [];
    const job: Job = { ...quick(() => undefined), run: (tools) => Promise.resolve({ told: given.push(tools) }) };
    const queue = await startJobQueue({ sql, zone: "UTC", jobs: [job], deps, log: silent });
    await queue.enqueue(job.name);
    await until(() => given.length > 0);
    await queue.close();
    expect(given[0]?.work).toBeDefined();
  });

  it.each([
    ["was done", (): void => undefined, "completed"],
    [
      "failed",
      (): void => {
        throw new Error("of this test");
      },
      "retry",
    ],
  ] as const)("close after it is written down that a job %s", async (_, run, state) => {
    const { data, sql } = await open();
    const deps: Deps = { data, clock: () => new Date("2026-03-01T09:00:00Z"), log: silent, knownRules: new Map() };
    let ran = false;
    const job = quick(() => {
      ran = true;
      run();
    });
    let ended = false;
    const slow: Sql = {
      query: async (text: string, values?: readonly unknown[]): Promise<SqlAnswer> => {
        if (isEnd(text)) await wait(1_500);
        if (ended) throw new Error("Cannot use a pool after calling end on the pool");
        return sql.query(text, values);
      },
    };
    const queue = await startJobQueue({ sql: slow, zone: "UTC", jobs: [job], deps, log: silent });
    await queue.enqueue("quick");
    await until(() => ran);
    await queue.close();
    ended = true;
    const { rows } = await sql.query("SELECT state::text FROM pgboss.job WHERE name = 'quick'");
    expect(rows).toEqual([{ state }]);
  });

  it("go on where it cannot be written down how a job ended, say so, and run it again", async () => {
    const { data, sql } = await open();
    const said: string[] = [];
    const log: Log = { ...silent, error: (_, message) => said.push(message) };
    const deps: Deps = { data, clock: () => new Date("2026-03-01T09:00:00Z"), log, knownRules: new Map() };
    let runs = 0;
    let fails = 0;
    const failing: Sql = {
      query: (text, values) => {
        if (!isEnd(text) || fails > 0) return sql.query(text, values);
        fails += 1;
        return Promise.reject(new Error("terminating connection due to administrator command"));
      },
    };
    const job = quick(() => {
      runs += 1;
    });
    const queue = await startJobQueue({ sql: failing, zone: "UTC", jobs: [job], deps, log });
    await queue.enqueue("quick");
    await until(() => said.length > 0);
    expect(said).toEqual(["the result of a job could not be stored; the job runs again later"]);
    // Its time is over.
    await sql.query("UPDATE pgboss.job SET started_on = now() - interval '1 day' WHERE name = 'quick'");
    const { default: PgBoss } = await import("pg-boss");
    const other = new PgBoss({
      schedule: false,
      db: {
        executeSql: async (text: string, values: unknown[]) => ({ rows: [...(await sql.query(text, values)).rows] }),
      },
    });
    await other.start();
    await other.maintain();
    await until(() => runs === 2);
    await other.stop({ graceful: false });
    await queue.close();
    const { rows } = await sql.query("SELECT state::text FROM pgboss.job WHERE name = 'quick'");
    expect(rows).toEqual([{ state: "completed" }]);
  });
});
