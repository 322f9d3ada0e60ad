import { execFileSync } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir, userInfo } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import pg from "pg";
import { postgresPrograms, runDebianProgram, startDebianProgram, type RunningProgram } from "./debian-program.js";
import { freePort } from "./free-port.js";

export interface DebianPostgres {
  /** Address of its maintenance database. */
  readonly url: string;
  readonly port: number;
  /** Address of one of its databases. */
  urlOf(database: string): string;
  query(text: string, database?: string): Promise<readonly Record<string, unknown>[]>;
  createDatabase(name: string): Promise<string>;
  /** Ends it: `fast` cuts what runs, `immediate` is a crash. */
  halt(mode: "fast" | "immediate"): Promise<void>;
  /** Starts it again on the same port and data. */
  resume(): Promise<void>;
  /** A streaming replica of it, caught up. */
  startReplica(): Promise<DebianPostgres>;
  /** Stops it and removes its data. */
  stop(): Promise<void>;
}

const user = "postgres";

/** Debian's PostgreSQL 15 on a free port of this machine, in a folder of its own. It ends with this process. */
export async function startDebianPostgres(settings: Readonly<Record<string, string>> = {}): Promise<DebianPostgres> {
  const folder = await makeFolder();
  const data = join(folder, "data");
  await runDebianProgram(join(postgresPrograms, "initdb"), [
    ...["-D", data, "-U", user, "--auth=trust", "--encoding=UTF8", "--locale=C.UTF-8", "--no-sync"],
  ]);
  return start(folder, { fsync: "off", max_connections: "200", ...settings });
}

async function start(folder: string, settings: Readonly<Record<string, string>>): Promise<DebianPostgres> {
  const port = await freePort();
  const data = join(folder, "data");
  const urlOf = (database: string): string => `postgresql://${user}@127.0.0.1:${String(port)}/${database}`;
  let running: RunningProgram | null = null;
  const resume = async (): Promise<void> => {
    const given = Object.entries(settings).flatMap(([name, value]) => ["-c", `${name}=${value}`]);
    const program = startDebianProgram(join(postgresPrograms, "postgres"), [
      ...["-D", data, "-p", String(port), "-h", "127.0.0.1", "-k", folder, ...given],
    ]);
    running = program;
    await untilItAnswers(urlOf("postgres"), program);
  };
  const halt = async (mode: "fast" | "immediate"): Promise<void> => {
    running?.child.kill(mode === "fast" ? "SIGINT" : "SIGQUIT");
    await running?.exit;
    running = null;
  };
  await resume();
  const query = async (text: string, database = "postgres") => {
    const client = new pg.Client({ connectionString: urlOf(database) });
    await client.connect();
    try {
      const { rows } = await client.query<Record<string, unknown>>(text);
      return rows;
    } finally {
      await client.end();
    }
  };
  const replicas: DebianPostgres[] = [];
  return {
    url: urlOf("postgres"),
    ...{ port, urlOf, query, halt, resume },
    createDatabase: async (name) => {
      await query(`CREATE DATABASE ${pg.escapeIdentifier(name)}`);
      return urlOf(name);
    },
    startReplica: async () => {
      const other = await makeFolder();
      await runDebianProgram(join(postgresPrograms, "pg_basebackup"), [
        ...["-D", join(other, "data"), "-h", "127.0.0.1", "-p", String(port), "-U", user],
        ...["-R", "-X", "stream", "--checkpoint=fast", "--no-sync"],
      ]);
      const replica = await start(other, settings);
      replicas.push(replica);
      return replica;
    },
    stop: async () => {
      await Promise.all(replicas.map((replica) => replica.stop()));
      await halt("immediate");
      await rm(folder, { recursive: true, force: true });
    },
  };
}

/** A folder that the user the server runs as may write to. */
async function makeFolder(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), "prepwright-debian-"));
  if (userInfo().uid === 0) execFileSync("chown", [user, folder]);
  return folder;
}

async function untilItAnswers(url: string, program: RunningProgram): Promise<void> {
  let ended: string | null = null;
  void program.exit.then(({ output }) => (ended = output));
  for (let tries = 0; ; tries += 1) {
    if (ended !== null) throw new Error(`the Postgres server ended:\n${ended}`);
    const client = new pg.Client({ connectionString: url });
    try {
      await client.connect();
      await client.end();
      return;
    } catch (error) {
      if (tries === 600) throw error;
      await wait(50);
    }
  }
}
