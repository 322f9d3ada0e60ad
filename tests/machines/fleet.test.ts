import { randomUUID } from "node:crypto";
import { setTimeout as wait } from "node:timers/promises";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openServer } from "../../src/persistence/database/open-server.js";
import type { OpenedDatabase } from "../../src/persistence/database/opened-database.js";
import { feedSettingsSchema } from "../../src/services/imports/feeds/feed-settings.js";
import { startService, type ServiceProcess } from "../app/processes/service-process.js";
import { startDebianPostgres, type DebianPostgres } from "../kit/postgres/debian-postgres.js";
import { diceFrom } from "../kit/arbitrary/dice.js";
import {
  askGraphql,
  giveToken,
  type NotTaken,
  prepareWriting,
  publisher,
  publishPlan,
  savePlan,
} from "../kit/plan-writer.js";
import { startPooler, type Pooler } from "../kit/postgres/pooler.js";
import { startWorker, type WorkerProcess } from "../kit/worker-process.js";

const maxLagMs = 1_000;
/** Long enough that a feed which is due every minute comes due at least once. */
const runsForMs = 70_000;
const planQuery = `query ($slug: String!) { plan(publisher: "${publisher}", slug: $slug) {
  revision title scaled(servings: 3) { shoppingList { lines { need { text } } } } } }`;

interface ReadPlan {
  readonly plan: {
    readonly revision: number;
    readonly title: string;
    readonly scaled: { readonly shoppingList: { readonly lines: readonly { readonly need: { text: string } }[] } };
  } | null;
}

/** A revision that was acknowledged, and when. */
interface Acknowledged {
  readonly title: string;
  readonly at: number;
}

describe("two services and two workers, on a primary and a replica behind a pooler", () => {
  let server: DebianPostgres;
  let replica: DebianPostgres;
  let pooler: Pooler;
  let database: OpenedDatabase;
  let services: readonly ServiceProcess[];
  let workers: readonly WorkerProcess[];
  let writerToken: string;
  let operatorToken: string;
  const dice = diceFrom(20_261_125);
  const anyAddress = (): string => dice.pick(services).address;

  beforeAll(async () => {
    server = await startDebianPostgres();
    const directUrl = await server.createDatabase("prepwright");
    database = await openServer(directUrl);
    writerToken = await prepareWriting(database);
    operatorToken = await giveToken(database, null, ["IMPORT"]);
    replica = await server.startReplica();
    pooler = await startPooler(server.port, 10);
    const environment = {
      DATABASE_URL: pooler.urlOf("prepwright"),
      DATABASE_DIRECT_URL: directUrl,
      DATABASE_REPLICA_URLS: replica.urlOf("prepwright"),
      DATABASE_REPLICA_LAG: String(maxLagMs),
      PREPWRIGHT_WORKER: "0",
      LOG_LEVEL: "warn",
    };
    services = await Promise.all([startService(environment), startService(environment)]);
    workers = await Promise.all([startWorker(environment), startWorker(environment)]);
  });
  afterAll(async () => {
    for (const each of [...services, ...workers]) each.child.kill("SIGKILL");
    await database.close();
    await pooler.stop();
    await server.stop();
  });

  /** The same key to both instances at once: one of them answers, or both answer the same. */
  async function onBoth<T>(write: (address: string, idempotencyKey: string) => Promise<T>): Promise<T> {
    const idempotencyKey = randomUUID();
    const answers = await Promise.allSettled(services.map(({ address }) => write(address, idempotencyKey)));
    const values = new Set(answers.flatMap((each) => (each.status === "fulfilled" ? [each.value] : [])));
    for (const each of answers) {
      if (each.status === "rejected") {
        expect((each.reason as NotTaken).problems?.map(({ code }) => code)).toEqual(["KEY_IN_USE"]);
      }
    }
    const [value] = values;
    expect(values.size).toBe(1);
    return value as T;
  }

  it("answer a random mix of reads, writes, publishing and imports, and nothing is lost or doubled", async () => {
    const feed = (slug: string, cron: string | null): Promise<string> =>
      database.data.feeds.save({
        ...{ publisher: null, slug, kind: "PRICES", zone: "UTC", enabled: true, cron },
        settings: feedSettingsSchema.parse({
          ...{ source: "A made-up shop", currency: "XTS", locale: "en", limits: { changed: 1, quarantined: 1 } },
        }),
      });
    const shop = await feed("shop", null);
    const market = await feed("market", "* * * * *");
    const list = (async function* () {
      yield Buffer.from("food,pack,content,price\negg,box,10 piece,2.50\n");
    })();
    await database.data.importFiles.put(market, "market.csv", list, new Date());
    const published = new Map<string, Acknowledged[]>();
    const counts = { saved: 0, published: 0, reads: 0, imports: 0 };
    const until = performance.now() + runsForMs;
    const goesOn = (): boolean => performance.now() < until;

    const check = (
      slug: string,
      found: Pick<NonNullable<ReadPlan["plan"]>, "revision" | "title"> | null,
      asked: number,
      slackMs: number,
    ): void => {
      const all = published.get(slug) ?? [];
      const due = all.filter(({ at }) => at <= asked - slackMs).length;
      const revision = found?.revision ?? 0;
      expect(revision).toBeGreaterThanOrEqual(due);
      if (found === null) return;
      // A revision may be read before its writer has the answer that it is there.
      const title = all[revision - 1]?.title ?? `${slug} turn ${String(revision)}`;
      expect(found.title).toBe(title);
    };
    const write = async (slug: string): Promise<void> => {
      const mine: Acknowledged[] = [];
      published.set(slug, mine);
      let expectedVersion: number | null = null;
      while (goesOn()) {
        const title = `${slug} turn ${String(mine.length + 1)}`;
        const draft: { slug: string; title: string; expectedVersion: number | null } = { slug, title, expectedVersion };
        const version: number = dice.chance(0.3)
          ? await onBoth((address, idempotencyKey) => savePlan(address, writerToken, { ...draft, idempotencyKey }))
          : await savePlan(anyAddress(), writerToken, draft);
        expect(version).toBe((expectedVersion ?? 0) + 1);
        expectedVersion = version;
        counts.saved += 1;
        const order = { slug, expectedVersion: version };
        const revision: number = dice.chance(0.3)
          ? await onBoth((address, idempotencyKey) => publishPlan(address, writerToken, { ...order, idempotencyKey }))
          : await publishPlan(anyAddress(), writerToken, order);
        mine.push({ title, at: performance.now() });
        expect(revision).toBe(mine.length);
        counts.published += 1;
        // Its author finds it at once, wherever the next request lands.
        const { plan } = await askGraphql<ReadPlan>(anyAddress(), writerToken, planQuery, { slug });
        check(slug, plan, performance.now(), 0);
        expect(plan?.revision).toBe(revision);
        await wait(dice.roll(150));
      }
    };
    const read = async (): Promise<void> => {
      while (goesOn()) {
        const slug = dice.pick([...published.keys()]);
        const asked = performance.now();
        if (dice.chance(0.5)) {
          const { plan } = await askGraphql<ReadPlan>(anyAddress(), null, planQuery, { slug });
          check(slug, plan, asked, maxLagMs);
          const needs = plan?.scaled.shoppingList.lines.map(({ need }) => need.text).sort();
          if (needs !== undefined) expect(needs).toEqual(["1½ lemons", "450 g"]);
        } else {
          const response = await fetch(`${anyAddress()}/v1/plans/${publisher}/${slug}.json`);
          expect([200, 404]).toContain(response.status);
          const body = (await response.json()) as { revision: number; title: string };
          check(slug, response.status === 200 ? body : null, asked, maxLagMs);
        }
        counts.reads += 1;
        await wait(dice.roll(40));
      }
    };
    const packs = new Set<string>();
    const importLists = async (): Promise<void> => {
      for (let night = 0; goesOn(); night += 1) {
        const rows = Array.from(
          { length: 500 },
          (_, n) => `egg,p${String(night * 100 + n)},6 piece,${String(night)}.50`,
        );
        const response = await fetch(`${anyAddress()}/v1/feeds/shop/files?name=night.csv&force=yes`, {
          method: "POST",
          headers: { authorization: `Bearer ${operatorToken}`, "content-type": "text/csv" },
          body: ["food,pack,content,price", ...rows, ""].join("\n"),
        });
        const run = (await response.json()) as { id: string; state: string };
        // One run of a feed at a time: the one that its hour began may be under way.
        if (response.status === 422) {
          night -= 1;
          await wait(300);
          continue;
        }
        expect([response.status, run]).toMatchObject([
          202,
          { state: expect.stringMatching(/^(QUEUED|RUNNING|DONE)$/) },
        ]);
        for (const row of rows) packs.add(row.split(",")[1] ?? "");
        let state = run.state;
        while (state === "QUEUED" || state === "RUNNING") {
          await wait(200);
          const asked = await fetch(`${anyAddress()}/v1/feeds/shop/runs/${run.id}`, {
            headers: { authorization: `Bearer ${operatorToken}` },
          });
          state = ((await asked.json()) as { state: string }).state;
        }
        expect(state).toBe("DONE");
        counts.imports += 1;
        await wait(3_000);
      }
    };
    const slugs = ["barley", "lentils", "eggs"];
    const work = [...slugs.map(write), read(), read(), read(), importLists()];
    await Promise.all(work);

    // Nothing lost, nothing doubled.
    const rows = async (query: string): Promise<readonly Record<string, unknown>[]> =>
      (await database.sql.query(query)).rows;
    for (const slug of slugs) {
      const found = await rows(`SELECT r.revision, r.title FROM revisions r JOIN plans p ON p.id = r.plan_id
        WHERE p.slug = '${slug}' ORDER BY r.revision`);
      const acknowledged = (published.get(slug) ?? []).map(({ title }, n) => ({ revision: n + 1, title }));
      expect(found).toEqual(acknowledged);
    }
    const entries = await rows("SELECT action, count(*)::int AS n FROM audit_entries GROUP BY action");
    expect(entries).toEqual(
      expect.arrayContaining([
        { action: "PUBLISH_PLAN", n: counts.published },
        { action: "SAVE_DRAFTS", n: counts.saved },
      ]),
    );
    const [{ packs: kept } = { packs: 0 }] = await rows(
      `SELECT count(*)::int AS packs FROM listed_packs WHERE feed_id = '${shop}'`,
    );
    expect(kept).toBe(packs.size);
    const minutes = await rows(`SELECT date_trunc('minute', created_at) AS minute, count(*)::int AS n FROM import_runs
      WHERE feed_id = '${market}' AND asked_by LIKE '%feed schedule%' GROUP BY 1`);
    expect(minutes.length).toBeGreaterThan(0);
    expect(minutes.filter(({ n }) => n !== 1)).toEqual([]);
    expect(counts.reads).toBeGreaterThan(200);
    expect(counts.published).toBeGreaterThan(20);
    expect(counts.imports).toBeGreaterThan(1);
  }, 180_000);

  it("find a new revision in time though the replica stands still, and never the old one again", async () => {
    const slug = "beans";
    const order = { slug, title: "beans 1" };
    const [first, second] = services.map(({ address }) => address);
    if (first === undefined || second === undefined) throw new Error("no service");
    await publishPlan(first, writerToken, {
      slug,
      expectedVersion: await savePlan(first, writerToken, { ...order, expectedVersion: null }),
    });
    const ask = async (): Promise<readonly number[]> => {
      const { plan } = await askGraphql<ReadPlan>(second, null, planQuery, { slug });
      const response = await fetch(`${second}/v1/plans/${publisher}/${slug}.json`);
      return [
        plan?.revision ?? 0,
        response.status === 200 ? ((await response.json()) as { revision: number }).revision : 0,
      ];
    };
    await expect.poll(ask).toEqual([1, 1]);
    for (let revision = 2; revision <= 6; revision += 1) {
      await replica.query("SELECT pg_wal_replay_pause()");
      await publishPlan(first, writerToken, {
        slug,
        expectedVersion: await savePlan(first, writerToken, {
          ...{ slug, title: `beans ${String(revision)}`, expectedVersion: revision - 1 },
        }),
      });
      const since = performance.now();
      const newest = [0, 0];
      while (performance.now() - since < maxLagMs + 500) {
        const asked = performance.now();
        const found = await ask();
        for (const [way, each] of found.entries()) {
          if (asked - since > maxLagMs) expect(each).toBe(revision);
          // Once the new one was seen, the old one was not kept anywhere.
          expect(each).toBeGreaterThanOrEqual(newest[way] ?? 0);
          newest[way] = each;
        }
      }
      await replica.query("SELECT pg_wal_replay_resume()");
      expect(await ask()).toEqual([revision, revision]);
    }
  });

  it("say that they are ready, and stop with 0", async () => {
    for (const { address } of services) expect((await fetch(`${address}/readyz`)).status).toBe(200);
    const codes = await Promise.all([...services, ...workers].map((each) => each.stop()));
    expect(codes).toEqual([0, 0, 0, 0]);
    expect(services.flatMap(({ errors }) => errors.filter((line) => line.includes('"level":50')))).toEqual([]);
    expect(workers.flatMap(({ lines }) => lines.filter((line) => line.includes('"level":50')))).toEqual([]);
  });
});
