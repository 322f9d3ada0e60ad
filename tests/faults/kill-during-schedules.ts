import { spawn, type ChildProcess } from "node:child_process";
import pg from "pg";
import { readRulesFolder } from "../../src/app/setup/read-rules-folder.js";
import { openServer } from "../../src/persistence/database/open-server.js";
import type { Deps } from "../../src/services/deps.js";
import { loadShippedRules } from "../../src/services/rules/load-rule-set.js";
import { schedulePublication } from "../../src/services/schedule/schedule-plan.js";
import { diceFrom } from "../kit/arbitrary/dice.js";
import { startPostgres } from "../kit/postgres/start-postgres.js";
import { smallBundle } from "../persistence/small-bundle.js";
import type { Fault } from "./fault.js";

const publisher = "north-field";
const workers = 2;
/** Publications that come due together, before each kill. */
const together = 3;
const log = { info: () => undefined, warn: () => undefined, error: () => undefined };

async function startWorker(url: string): Promise<ChildProcess> {
  const child = spawn(process.execPath, ["--import", "tsx", "tests/faults/schedule-worker.ts", url], {
    stdio: ["ignore", "pipe", "inherit"],
  });
  await new Promise<void>((resolve, reject) => {
    child.stdout.once("data", () => resolve());
    child.once("exit", (code) => reject(new Error(`a worker ended with ${String(code)} before it was ready`)));
  });
  child.removeAllListeners("exit");
  return child;
}

const killed = (child: ChildProcess): Promise<void> =>
  new Promise((resolve) => {
    child.once("exit", () => resolve());
    child.kill("SIGKILL");
  });

const wait = (milliseconds: number): Promise<void> => new Promise((resume) => setTimeout(resume, milliseconds));

/**
 * Kills one of two workers at a random moment around scheduled publications, again and again, on a real Postgres. At the end each plan has been
 * published once: one revision, one change that readers follow, one entry in the audit trail.
 */
export const killDuringSchedules: Fault = {
  name: "kill-during-schedules",
  tries: 100,
  fewTries: 4,
  run: async (tries) => {
    const { roll } = diceFrom(20_261_130);
    const server = await startPostgres();
    try {
      const url = await server.createDatabase("killed");
      const { data, close } = await openServer(url, { poolSize: 3 });
      // What is scheduled in the past is due at once.
      const deps: Deps = { data, clock: () => new Date("2026-01-01T00:00:00Z"), log, knownRules: new Map() };
      await loadShippedRules(deps, await readRulesFolder("seeds/rules"));
      await data.publishers.save({ slug: publisher, name: "North Field" });
      const slugs: string[] = [];
      const schedule = async (): Promise<void> => {
        const slug = `plan-${String(slugs.length)}`;
        const { plan, components, foods } = smallBundle({ publisher, slug });
        if (slugs.length === 0) {
          await data.foods.save(foods);
          for (const component of components) await data.components.saveDraft(publisher, component, null);
        }
        await data.plans.saveDraft(plan, null);
        const made = await schedulePublication(
          deps,
          { actor: { kind: "PROGRAM", name: "fault" }, requestId: null },
          { publisher, slug, expectedVersion: 1, at: "2026-01-02T06:00", zone: "Europe/Berlin" },
        );
        if (!made.ok) throw new Error(`not scheduled: ${JSON.stringify(made.problems)}`);
        slugs.push(slug);
      };
      const running = await Promise.all(Array.from({ length: workers }, () => startWorker(url)));
      for (let kills = 0; kills < tries; kills += 1) {
        for (let at = 0; at < together; at += 1) await schedule();
        await wait(roll(120));
        const at = roll(workers);
        const victim = running[at];
        if (victim === undefined) throw new Error("there is no such worker");
        await killed(victim);
        running[at] = await startWorker(url);
      }
      const client = new pg.Client({ connectionString: url });
      await client.connect();
      const count = async (sql: string): Promise<number> => Number((await client.query(sql)).rows[0]?.["count"]);
      const end = Date.now() + 60_000;
      const left = "SELECT count(*) FROM scheduled_changes WHERE state = 'WAITING'";
      while ((await count(left)) > 0 && Date.now() < end) await wait(100);
      for (const each of running) await killed(each);
      const lost =
        (await count(left)) + (await count("SELECT count(*) FROM scheduled_changes WHERE state = 'KEPT_BACK'"));
      const more = (table: string): string => `SELECT count(*) FROM (${table} GROUP BY 1 HAVING count(*) > 1) more`;
      const doubled =
        (await count(more("SELECT plan_id FROM revisions"))) +
        (await count(more("SELECT revision_id FROM changes"))) +
        (await count(more("SELECT subject FROM audit_entries WHERE action = 'PUBLISH_PLAN'")));
      const published = await count("SELECT count(*) FROM revisions");
      const told = await count("SELECT count(*) FROM changes WHERE kind = 'PLAN_PUBLISHED'");
      const wrong = Number(published !== slugs.length) + Number(told !== slugs.length);
      await client.end();
      await close();
      return { tries, scheduled: slugs.length, published, lost, doubled, wrong };
    } finally {
      await server.stop();
    }
  },
};
