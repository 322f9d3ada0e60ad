import { execFileSync } from "node:child_process";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { setTimeout as wait } from "node:timers/promises";
import { openServer } from "../../src/persistence/database/open-server.js";
import { newWebhookSecret } from "../../src/services/webhooks/webhook-message.js";
import { startService, type ServiceProcess } from "../app/processes/service-process.js";
import { draftVersion, prepareWriting, publisher, publishPlan, savePlan } from "../kit/plan-writer.js";
import { startPostgres } from "../kit/postgres/start-postgres.js";
import type { Fault } from "./fault.js";

interface Acknowledged {
  readonly saved: { readonly slug: string; readonly version: number; readonly title: string }[];
  readonly published: { readonly slug: string; readonly revision: number; readonly title: string }[];
}

/** Writers at a time, each with a plan of its own. */
const writers = 4;

/** Services that start while another works, because most of the time of a try is the start. */
const ahead = 2;

/**
 * Ends the service by SIGKILL while writers save and publish through it, again and again, and then looks whether anything is
 * missing that it had acknowledged, whether any revision is half there, and whether every webhook came at least once.
 */
export const killDuringWrites: Fault = { name: "kill-during-writes", tries: 500, fewTries: 12, run };

async function run(tries: number): ReturnType<Fault["run"]> {
  execFileSync(process.execPath, ["scripts/build.mjs"], { stdio: "ignore" });
  const server = await startPostgres();
  const url = await server.createDatabase("faults");
  const { data, sql, close } = await openServer(url);
  const received = new Set<string>();
  const receiver = createServer((request, response) => {
    received.add(String(request.headers["webhook-id"]));
    request.resume();
    response.writeHead(204).end();
  });
  await new Promise<void>((listening) => receiver.listen(0, "127.0.0.1", listening));
  const environment = { DATABASE_URL: url, PREPWRIGHT_ALLOW_PRIVATE_WEBHOOKS: "1", LOG_LEVEL: "error" };
  const starting: Promise<ServiceProcess>[] = [];
  const next = (): Promise<ServiceProcess> => {
    while (starting.length <= ahead) starting.push(startService(environment));
    return starting.shift() ?? startService(environment);
  };
  try {
    const token = await prepareWriting({ data });
    await data.webhooks.create({
      ...{ publisher, kinds: [], secret: newWebhookSecret(), createdAt: new Date() },
      url: `http://127.0.0.1:${(receiver.address() as AddressInfo).port}/`,
    });
    const acknowledged: Acknowledged = { saved: [], published: [] };
    let unanswered = 0;
    for (let round = 0; round < tries; round += 1) {
      const service = await next();
      const work = Array.from({ length: writers }, (_, writer) =>
        writeUntilKilled(service.address, token, `plan-${writer}`, round, acknowledged),
      );
      // Well into the writing, and never twice at the same moment of it.
      const before = acknowledged.saved.length + acknowledged.published.length;
      const answers = () => acknowledged.saved.length + acknowledged.published.length - before;
      const patience = Date.now() + 15_000;
      while (answers() < round % 13 && Date.now() < patience) await wait(2);
      await wait((round * 37) % 90);
      service.child.kill("SIGKILL");
      unanswered += (await Promise.all(work)).reduce((sum, each) => sum + each, 0);
      if ((round + 1) % 25 === 0) process.stderr.write(`${round + 1} of ${tries}\n`);
    }
    if (acknowledged.published.length < tries / 4) throw new Error("too little was written to tell anything");
    const last = await next();
    const count = async (query: string): Promise<number> => Number((await sql.query(query)).rows[0]?.["n"]);
    const until = Date.now() + 180_000;
    const waiting = `SELECT count(*)::int AS n FROM webhook_deliveries WHERE state = 'PENDING'`;
    // A try that was under way when the service was killed is another's after a minute.
    while ((await count(waiting)) > 0 && Date.now() < until) await wait(500);
    await last.stop();

    const missingDrafts = await missing(acknowledged.saved, async ({ slug, version, title }) => {
      const [draft] = await data.plans.drafts([{ publisher, slug }]);
      return (
        draft !== null &&
        draft !== undefined &&
        (draft.version > version || (draft.version === version && draft.value.title === title))
      );
    });
    const missingRevisions = await missing(acknowledged.published, async ({ slug, revision, title }) => {
      const [found] = await data.revisions.summaries([{ publisher, slug, revision }]);
      return found?.title === title;
    });
    const broken = (await data.revisions.checksums(null, 1_000_000)).filter((each) => each.stored !== each.computed);
    const halfPublished =
      broken.length +
      (await count(`SELECT count(*)::int AS n FROM revisions r WHERE
        (SELECT count(*) FROM changes c WHERE c.revision_id = r.id AND c.position IS NOT NULL) <> 1
        OR (SELECT count(*) FROM revision_foods f WHERE f.revision_id = r.id) <> 2
        OR NOT EXISTS (SELECT FROM revision_words w WHERE w.revision_id = r.id)
        OR NOT EXISTS (SELECT FROM audit_entries a WHERE a.action = 'PUBLISH_PLAN' AND a.after = r.revision)`)) +
      (await count(`SELECT count(*)::int AS n FROM plans p WHERE p.last_revision <>
        (SELECT count(*) FROM revisions r WHERE r.plan_id = p.id) OR (p.last_revision > 0 AND p.newest_revision_id <>
        (SELECT id FROM revisions r WHERE r.plan_id = p.id ORDER BY revision DESC LIMIT 1))`));
    const revisions = await count("SELECT count(*)::int AS n FROM revisions");
    const { rows: deliveries } = await sql.query("SELECT id FROM webhook_deliveries");
    const undelivered =
      deliveries.filter(({ id }) => !received.has(String(id))).length + (revisions - deliveries.length);
    return {
      tries,
      lost: missingDrafts + missingRevisions + halfPublished + undelivered,
      ...{ missingDrafts, missingRevisions, halfPublished, undelivered, unanswered },
      ...{ saved: acknowledged.saved.length, published: acknowledged.published.length, revisions },
    };
  } finally {
    for (const service of await Promise.allSettled(starting)) {
      if (service.status === "fulfilled") service.value.child.kill("SIGKILL");
    }
    receiver.closeAllConnections();
    receiver.close();
    await close();
    await server.stop();
  }
}

/** Saves and publishes one plan by turns until there is no answer; counts the writes that were not answered. */
async function writeUntilKilled(
  address: string,
  token: string,
  slug: string,
  round: number,
  acknowledged: Acknowledged,
): Promise<number> {
  try {
    let version = await draftVersion(address, token, slug);
    for (let turn = 0; ; turn += 1) {
      const title = `Week ${round} turn ${turn}`;
      version = await savePlan(address, token, { slug, title, expectedVersion: version });
      acknowledged.saved.push({ slug, version, title });
      const revision = await publishPlan(address, token, { slug, expectedVersion: version });
      acknowledged.published.push({ slug, revision, title });
    }
  } catch (error) {
    // What fetch throws when the service is gone, and what it throws when half an answer came.
    if (error instanceof TypeError || error instanceof SyntaxError) return 1;
    throw error;
  }
}

async function missing<T>(all: readonly T[], isThere: (each: T) => Promise<boolean>): Promise<number> {
  let count = 0;
  for (const each of all) if (!(await isThere(each))) count += 1;
  return count;
}
