import { execFileSync } from "node:child_process";
import { cp, mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openServer } from "../../src/persistence/database/open-server.js";
import { startService } from "../app/processes/service-process.js";
import { startDebianPostgres, type DebianPostgres } from "../kit/postgres/debian-postgres.js";
import { postgresPrograms, runDebianProgram } from "../kit/postgres/debian-program.js";
import { prepareWriting, publisher, publishPlan, savePlan } from "../kit/plan-writer.js";
import type { Fault } from "./fault.js";

/**
 * Backs a database up with pg_dump while writers publish, restores it, and looks whether everything is there that was acknowledged
 * before; then once at rest, where every row of every table must come back the same. The embedded database by a copy of its folder.
 */
export const restoreBackup: Fault = { name: "restore-backup", tries: 5, fewTries: 1, run };

const writers = 3;

async function run(tries: number): ReturnType<Fault["run"]> {
  execFileSync(process.execPath, ["scripts/build.mjs"], { stdio: "ignore" });
  const server = await startDebianPostgres();
  const folder = await mkdtemp(join(tmpdir(), "prepwright-backup-"));
  execFileSync("chmod", ["777", folder]);
  try {
    const url = await server.createDatabase("live");
    const live = await openServer(url);
    const token = await prepareWriting(live);
    await live.close();
    const service = await startService({ DATABASE_URL: url, LOG_LEVEL: "error" });
    const published: string[] = [];
    const seconds: number[] = [];
    let missing = 0;
    let halves = 0;
    let stopped = false;
    const write = async (writer: number): Promise<void> => {
      for (let round = 0; !stopped; round += 1) {
        const slug = `plan-${String(writer)}-${String(round)}`;
        const expectedVersion = await savePlan(service.address, token, { slug, title: slug, expectedVersion: null });
        await publishPlan(service.address, token, { slug, expectedVersion });
        published.push(slug);
      }
    };
    const writing = Promise.all(Array.from({ length: writers }, (_, writer) => write(writer)));
    for (let round = 0; round < tries; round += 1) {
      const wanted = published.length + 10;
      while (published.length < wanted) await new Promise((later) => setTimeout(later, 20));
      const before = [...published];
      const begun = performance.now();
      const restored = await backUpAndRestore(
        server,
        join(folder, `busy-${String(round)}`),
        `restored_${String(round)}`,
      );
      seconds.push((performance.now() - begun) / 1000);
      const found = new Set(
        (await server.query(`SELECT slug FROM plans WHERE last_revision > 0`, restored)).map(({ slug }) => slug),
      );
      missing += before.filter((slug) => !found.has(slug)).length;
      const [half] = await server.query(
        `SELECT count(*)::int AS n FROM revisions r WHERE (SELECT count(*) FROM changes c WHERE c.revision_id = r.id) <> 1
           OR NOT EXISTS (SELECT FROM revision_words w WHERE w.revision_id = r.id)`,
        restored,
      );
      halves += Number(half?.["n"]) + (await brokenRevisions(server.urlOf(restored)));
    }
    stopped = true;
    await writing;
    const text = await planText(service.address, published[0] ?? "");
    await service.stop();

    const restored = await backUpAndRestore(server, join(folder, "still"), "restored_still");
    const [before, after] = [await rowHashes(server, "live"), await rowHashes(server, restored)];
    const otherTables = [...new Set([...before.keys(), ...after.keys()])].filter(
      (table) => before.get(table) !== after.get(table),
    );
    const again = await startService({
      DATABASE_URL: server.urlOf(restored),
      NODE_ENV: "production",
      LOG_LEVEL: "error",
    });
    const ready = (await fetch(`${again.address}/readyz`)).status;
    const otherAnswers = (await planText(again.address, published[0] ?? "")) === text && ready === 200 ? 0 : 1;
    await again.stop("SIGINT");
    const otherEmbedded = await copyEmbedded(folder);
    return {
      tries,
      lost: missing + halves + otherTables.length + otherAnswers + otherEmbedded,
      ...{ missing, halves, otherTables, otherAnswers, otherEmbedded },
      ...{ published: published.length, tables: before.size, slowestSeconds: Number(Math.max(...seconds).toFixed(1)) },
    };
  } finally {
    await server.stop();
    await rm(folder, { recursive: true, force: true });
  }
}

/** The commands of docs/operations.md. Answers the name of the new database. */
async function backUpAndRestore(server: DebianPostgres, file: string, name: string): Promise<string> {
  await runDebianProgram(join(postgresPrograms, "pg_dump"), [
    "--format=custom",
    `--file=${file}`,
    server.urlOf("live"),
  ]);
  await server.createDatabase(name);
  await runDebianProgram(join(postgresPrograms, "pg_restore"), [
    ...["--exit-on-error", "--no-owner", `--dbname=${server.urlOf(name)}`, file],
  ]);
  return name;
}

/** Table -> a hash over all its rows. */
async function rowHashes(server: DebianPostgres, database: string): Promise<ReadonlyMap<string, string>> {
  const tables = await server.query(
    `SELECT format('%I.%I', schemaname, tablename) AS name FROM pg_tables WHERE schemaname IN ('public', 'pgboss') ORDER BY 1`,
    database,
  );
  const hashes = new Map<string, string>();
  for (const { name } of tables) {
    const [row] = await server.query(
      `SELECT count(*) || ':' || coalesce(md5(string_agg(md5(t::text), '' ORDER BY md5(t::text))), '') AS hash FROM ${String(name)} t`,
      database,
    );
    hashes.set(String(name), String(row?.["hash"]));
  }
  return hashes;
}

async function brokenRevisions(url: string): Promise<number> {
  const { data, close } = await openServer(url);
  const checked = await data.revisions.checksums(null, 1_000_000);
  await close();
  return checked.filter(({ stored, computed }) => stored !== computed).length;
}

const planText = async (address: string, slug: string): Promise<string> =>
  (await fetch(`${address}/v1/plans/${publisher}/${slug}.txt?servings=7`)).text();

/** 0: a service on a copy of the folder answers as the one that was stopped. */
async function copyEmbedded(folder: string): Promise<number> {
  const [from, to] = [join(folder, "embedded"), join(folder, "copy")];
  const first = await startService({ DATA_DIR: from, LOG_LEVEL: "error" });
  const text = await planText(first.address, "bean-night");
  await first.stop();
  await cp(from, to, { recursive: true });
  const second = await startService({ DATA_DIR: to, LOG_LEVEL: "error" });
  const same = (await planText(second.address, "bean-night")) === text && text.length > 500;
  await second.stop();
  return same ? 0 : 1;
}
