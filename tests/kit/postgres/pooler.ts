import { execFileSync } from "node:child_process";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir, userInfo } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import pg from "pg";
import { startDebianProgram } from "./debian-program.js";
import { freePort } from "./free-port.js";

export interface Pooler {
  /** Address of a database of the server through the pooler. */
  urlOf(database: string): string;
  stop(): Promise<void>;
}

/** Debian's PgBouncer in transaction mode before a server of this machine. Any statement may meet any of its few connections. */
export async function startPooler(serverPort: number, connections: number): Promise<Pooler> {
  const folder = await mkdtemp(join(tmpdir(), "prepwright-pooler-"));
  const port = await freePort();
  const file = join(folder, "pgbouncer.ini");
  await writeFile(
    file,
    `[databases]
* = host=127.0.0.1 port=${String(serverPort)} user=postgres
[pgbouncer]
listen_addr = 127.0.0.1
listen_port = ${String(port)}
unix_socket_dir =
auth_type = any
pool_mode = transaction
default_pool_size = ${String(connections)}
max_client_conn = 500
`,
  );
  if (userInfo().uid === 0) execFileSync("chown", ["-R", "postgres", folder]);
  const { child, exit } = startDebianProgram("/usr/sbin/pgbouncer", [file]);
  const urlOf = (database: string): string => `postgresql://postgres@127.0.0.1:${String(port)}/${database}`;
  let ended: string | null = null;
  void exit.then(({ output }) => (ended = output));
  for (let tries = 0; ; tries += 1) {
    if (ended !== null) throw new Error(`the pooler ended:\n${ended}`);
    const client = new pg.Client({ connectionString: urlOf("postgres") });
    try {
      await client.connect();
      await client.end();
      break;
    } catch (error) {
      if (tries === 200) throw error;
      await wait(50);
    }
  }
  return {
    urlOf,
    stop: async () => {
      child.kill("SIGINT");
      await exit;
      await rm(folder, { recursive: true, force: true });
    },
  };
}
