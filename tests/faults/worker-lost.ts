import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { setTimeout as wait } from "node:timers/promises";
import { feedSettingsSchema } from "../../src/services/imports/feeds/feed-settings.js";
import { newWebhookSecret } from "../../src/services/webhooks/webhook-message.js";
import { publisher } from "../kit/plan-writer.js";
import { startWorker, type WorkerProcess } from "../kit/worker-process.js";
import { smallBundle } from "../persistence/small-bundle.js";
import type { Fault } from "./fault.js";
import { startFleet } from "./fleet.js";
import { spread } from "./load.js";

const rowsOfAList = 40_000;

/**
 * Ends one of two workers by SIGKILL in the midst of an import and of sending webhooks. The other one must end the import, with every
 * row once, and send every message at least once.
 */
export const workerLost: Fault = { name: "worker-lost", tries: 5, fewTries: 1, run };

async function run(tries: number): ReturnType<Fault["run"]> {
  const fleet = await startFleet(0, {}, { PREPWRIGHT_ALLOW_PRIVATE_WEBHOOKS: "1" });
  const received = new Set<string>();
  const receiver = createServer((request, response) => {
    received.add(String(request.headers["webhook-id"]));
    request.resume();
    setTimeout(() => response.writeHead(204).end(), 20);
  });
  await new Promise<void>((listening) => receiver.listen(0, "127.0.0.1", listening));
  const workers: WorkerProcess[] = [];
  try {
    return await fleet.look(async ({ data, sql }) => {
      await data.webhooks.create({
        ...{ publisher, kinds: ["PLAN_PUBLISHED"], secret: newWebhookSecret(), createdAt: new Date() },
        url: `http://127.0.0.1:${String((receiver.address() as AddressInfo).port)}/`,
      });
      const feed = await data.feeds.save({
        ...{ publisher: null, slug: "shop", kind: "PRICES", cron: null, zone: "UTC", enabled: true },
        settings: feedSettingsSchema.parse({
          ...{ source: "A made-up shop", currency: "XTS", locale: "en", limits: { changed: 1, quarantined: 1 } },
        }),
      });
      const takenOver: number[] = [];
      let unfinished = 0;
      let wrongRows = 0;
      for (let n = 0; n < 2; n += 1) workers.push(await startWorker(fleet.environment));
      for (let round = 0; round < tries; round += 1) {
        const list = (async function* () {
          yield Buffer.from("food,pack,content,price\n");
          for (let n = 0; n < rowsOfAList; n += 1) yield Buffer.from(`egg,p${n},6 piece,${round + 1}.50\n`);
        })();
        const file = (await data.importFiles.put(feed, "list.csv", list, new Date())).id;
        const order = { feed, file, kind: "LOAD", askedBy: "faults", force: true, undoes: null } as const;
        const run = await data.importRuns.queue(order, new Date());
        for (let n = 0; n < 20; n += 1) {
          const slug = `plan-${n}`;
          await data.revisions.publish(smallBundle({ publisher, slug, title: `Round ${round}` }), new Date());
        }
        const state = async () =>
          (
            await sql.query(
              "SELECT state::text, worker, rows_read AS read, created + changed AS loaded FROM import_runs WHERE id = $1::uuid",
              [run],
            )
          ).rows[0] ?? {};
        const busy = Date.now() + 30_000;
        while (Number((await state())["read"]) === 0 && Date.now() < busy) await wait(10);
        // Names of workers hold the number of their process.
        const holder = String((await state())["worker"]);
        const victim = workers.find(({ child }) => holder.includes(`-${String(child.pid)}-`));
        if (victim === undefined) throw new Error(`no worker has the import, but ${holder}`);
        victim.child.kill("SIGKILL");
        workers.splice(workers.indexOf(victim), 1);
        const begin = performance.now();
        const patience = Date.now() + 180_000;
        const others = async (): Promise<boolean> => {
          const now = await state();
          return now["state"] === "DONE" || (now["state"] === "RUNNING" && String(now["worker"]) !== holder);
        };
        while (!(await others()) && Date.now() < patience) await wait(50);
        takenOver.push(Math.round(performance.now() - begin));
        while (String((await state())["state"]) === "RUNNING" && Date.now() < patience) await wait(50);
        const end = await state();
        if (end["state"] !== "DONE") unfinished += 1;
        if (Number(end["loaded"]) !== rowsOfAList) wrongRows += 1;
        workers.push(await startWorker(fleet.environment));
      }
      const count = async (query: string): Promise<number> => Number((await sql.query(query)).rows[0]?.["n"]);
      const patience = Date.now() + 180_000;
      const pending = "SELECT count(*)::int AS n FROM webhook_deliveries WHERE state = 'PENDING'";
      while ((await count(pending)) > 0 && Date.now() < patience) await wait(250);
      const { rows } = await sql.query("SELECT id FROM webhook_deliveries");
      const undelivered = rows.filter(({ id }) => !received.has(String(id))).length;
      const packs = await count("SELECT count(*)::int AS n FROM listed_packs");
      return {
        ...{ tries, lost: unfinished + undelivered, wrong: wrongRows + Math.abs(packs - rowsOfAList) },
        ...{ unfinished, undelivered, messages: rows.length, takenOverMs: spread(takenOver) },
      };
    });
  } finally {
    for (const { child } of workers) child.kill("SIGKILL");
    receiver.closeAllConnections();
    receiver.close();
    await fleet.stop();
  }
}
