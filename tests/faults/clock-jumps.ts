import { execFileSync } from "node:child_process";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { feedSettingsSchema } from "../../src/services/imports/feeds/feed-settings.js";
import { newWebhookSecret } from "../../src/services/webhooks/webhook-message.js";
import { startService, type ServiceProcess } from "../app/processes/service-process.js";
import { publisher, publishPlan, savePlan } from "../kit/plan-writer.js";
import type { Fault } from "./fault.js";
import { startFleet } from "./fleet.js";
import { startLoad } from "./load.js";

/** Debian's, which fakes the time of a process and lets a file move it. */
const library = "/usr/lib/x86_64-linux-gnu/faketime/libfaketime.so.1";

/** Seconds by which the clocks of the two services stand off the real one, round after round. */
const offsets: readonly (readonly [number, number])[] = [
  [3_600, 0],
  [0, -3_600],
  [-1_800, 1_800],
  [7_200, 7_200],
  [0, 0],
  [0, 5_400],
];

/** How long each pair of offsets lasts, in milliseconds: longer than a minute, so that what is due each minute is due in each. */
const roundMs = 75_000;

/**
 * Moves the clocks of two services forwards and backwards by hours, under load, against each other and against that of the database.
 * Writes, keys, messages and a feed that is due every minute must go on, each once.
 */
export const clockJumps: Fault = { name: "clock-jumps", tries: offsets.length, fewTries: 1, run };

async function run(tries: number): ReturnType<Fault["run"]> {
  const fleet = await startFleet(0, {}, { PREPWRIGHT_ALLOW_PRIVATE_WEBHOOKS: "1", PREPWRIGHT_WORKER: "1" });
  const folder = await mkdtemp(join(tmpdir(), "prepwright-clocks-"));
  const received = new Map<string, number>();
  const receiver = createServer((request, response) => {
    const id = String(request.headers["webhook-id"]);
    received.set(id, (received.get(id) ?? 0) + 1);
    request.resume();
    response.writeHead(204).end();
  });
  await new Promise<void>((listening) => receiver.listen(0, "127.0.0.1", listening));
  const clocks = ["first", "second"].map((name) => join(folder, name));
  const set = (at: readonly [number, number]): Promise<unknown> =>
    Promise.all(clocks.map((file, n) => writeFile(file, `${(at[n] ?? 0) >= 0 ? "+" : ""}${String(at[n])}s`)));
  const services: ServiceProcess[] = [];
  try {
    execFileSync("test", ["-f", library]);
    await set([0, 0]);
    for (const file of clocks) {
      services.push(
        await startService({
          ...fleet.environment,
          ...{ LD_PRELOAD: library, FAKETIME_TIMESTAMP_FILE: file, FAKETIME_NO_CACHE: "1" },
          // Timers go on as they would.
          FAKETIME_DONT_FAKE_MONOTONIC: "1",
        }),
      );
    }
    return await fleet.look(async ({ data, sql }) => {
      await data.webhooks.create({
        ...{ publisher, kinds: ["PLAN_PUBLISHED"], secret: newWebhookSecret(), createdAt: new Date() },
        url: `http://127.0.0.1:${String((receiver.address() as AddressInfo).port)}/`,
      });
      const feed = await data.feeds.save({
        ...{ publisher: null, slug: "shop", kind: "PRICES", cron: "* * * * *", zone: "UTC", enabled: true },
        settings: feedSettingsSchema.parse({
          ...{ source: "A made-up shop", currency: "XTS", locale: "en", limits: { changed: 1, quarantined: 1 } },
        }),
      });
      const list = (async function* () {
        yield Buffer.from("food,pack,content,price\negg,box,10 piece,2.50\n");
      })();
      await data.importFiles.put(feed, "list.csv", list, new Date());
      let turn = 0;
      const address = (): string => services[(turn += 1) % services.length]?.address ?? "";
      const load = startLoad({ address, token: fleet.token, writers: 3, readers: 3 });
      const runs = async (): Promise<number> =>
        Number((await sql.query("SELECT count(*)::int AS n FROM import_runs")).rows[0]?.["n"]);
      let roundsWithoutRun = 0;
      let keysForgotten = 0;
      const runsOfRounds: number[] = [];
      for (let round = 0; round < tries; round += 1) {
        const before = await runs();
        await load.untilWritten(4);
        // A write whose answer was lost before the jump, and is asked for again after it.
        const kept = { slug: `kept-${round}`, title: `kept-${round} turn 1`, expectedVersion: null };
        const idempotencyKey = `key-${round}`;
        const version = await savePlan(address(), fleet.token, { ...kept, idempotencyKey });
        const order = { slug: kept.slug, expectedVersion: version, idempotencyKey: `${idempotencyKey}-out` };
        await publishPlan(address(), fleet.token, order);
        await set(offsets[round % offsets.length] ?? [0, 0]);
        for (const { address: each } of services) {
          const again = await savePlan(each, fleet.token, { ...kept, idempotencyKey }).catch(() => 0);
          const out = await publishPlan(each, fleet.token, order).catch(() => 0);
          if (again !== version || out !== 1) keysForgotten += 1;
        }
        await wait(roundMs);
        const more = (await runs()) - before;
        runsOfRounds.push(more);
        if (more === 0) roundsWithoutRun += 1;
      }
      const counts = await load.stop();
      await set([0, 0]);
      // By the database's clock, which stands right. A message that came up while a clock was ahead is due by that clock, so one that
      // was not sent before the clock was set back waits as long as it was ahead.
      const dueLater = "state = 'PENDING' AND due_at > now() + interval '2 minutes'";
      const pending = `SELECT count(*)::int AS n FROM webhook_deliveries WHERE state = 'PENDING' AND NOT (${dueLater})`;
      const patience = Date.now() + 120_000;
      const waiting = async (): Promise<number> => Number((await sql.query(pending)).rows[0]?.["n"]);
      while ((await waiting()) > 0 && Date.now() < patience) await wait(250);
      const { rows } = await sql.query(`SELECT id, ${dueLater} AS "dueLater" FROM webhook_deliveries`);
      const unsent = rows.filter(({ id }) => !received.has(String(id)));
      const undelivered = unsent.filter(({ dueLater: isDueLater }) => isDueLater !== true).length;
      const twice = [...received.values()].filter((times) => times > 1).length;
      const audit = await load.audit(sql);
      return {
        ...{ tries, ...counts, ...audit, lost: audit.lost + undelivered + keysForgotten },
        ...{
          undelivered,
          dueLater: unsent.length - undelivered,
          sentTwice: twice,
          keysForgotten,
          roundsWithoutRun,
          runsOfRounds,
        },
        failed: counts.failedReads + counts.failedWrites + roundsWithoutRun,
      };
    });
  } finally {
    for (const { child } of services) child.kill("SIGKILL");
    receiver.closeAllConnections();
    receiver.close();
    await fleet.stop();
    await rm(folder, { recursive: true });
  }
}
