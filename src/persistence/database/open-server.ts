import { PrismaPg } from "@prisma/adapter-pg";
import pg from "pg";
import { serverBulk } from "../sql/bulk-sql.js";
import { cancelWithRequest } from "./cancel-statements.js";
import { createData } from "../create-data.js";
import { translateUnavailable } from "./database-unavailable.js";
import { MigrationError } from "../errors.js";
import { followServer } from "./follow-server.js";
import type { PrismaClient } from "../generated/client.js";
import { openClient, transactionTimes } from "./open-client.js";
import { migrate, pendingMigrations } from "./migrate.js";
import { migrationsFolder, readMigrations, type Migration } from "./migrations-folder.js";
import { openReplicas, type Connected, type ReplicaOptions } from "./open-replicas.js";
import type { OpenedDatabase, OpenOptions, PoolFigures } from "./opened-database.js";
import type { PersistenceLog } from "./persistence-log.js";
import type { Sql, SqlAnswer } from "../sql/plain-sql.js";
import { createSemaphore } from "./semaphore.js";

export interface ServerOptions extends OpenOptions {
  /** The most connections kept; 10 unless told. */
  readonly poolSize?: number;
  /**
   * Address of the same database past any pooler; the same address unless told. What needs a session of its own goes there:
   * migrations, the job queue, and listening to changes. All else keeps within transactions, as a pooler in transaction mode wants it.
   */
  readonly directUrl?: string;
  /** Streaming replicas of it, for reads of the public; left out: there are none. */
  readonly replicas?: ReplicaOptions;
  /** Folder of migrations, if not the program's own. */
  readonly migrations?: string;
}

/** The key the ordinary command line of Prisma locks on, so that it and several instances of us take turns. */
const migrationLock = 72_707_369;

/** How long another instance may take to migrate before this one gives up. */
const migrationPatience = "60s";

/** The adapter writes times without a zone and reads them as UTC. The pool waits for this, though its types do not say so. */
const everyConnection = {
  onConnect: async (client: pg.ClientBase): Promise<void> => {
    await client.query("SET TIME ZONE 'UTC'");
  },
};

/** Connections of a process past the pooler: its job queue asks one thing at a time, rarely two. */
const directPoolSize = 2;

/** Connects to a Postgres server and migrates it. Several processes may start at once: one migrates, the others wait. */
export async function openServer(url: string, options: ServerOptions = {}): Promise<OpenedDatabase> {
  const directUrl = options.directUrl ?? url;
  const migrations = await readMigrations(options.migrations ?? migrationsFolder());
  await migrateServer(directUrl, migrations, options.log);
  const primary = connect(url, options);
  const replicas =
    options.replicas === undefined
      ? null
      : openReplicas(primary, options.replicas, (each) => connect(each, options), options.log);
  const direct = directUrl === url ? null : openPool(directUrl, directPoolSize, options.log);
  let closing: Promise<void> | null = null;
  return {
    kind: "server",
    client: primary.client,
    data: primary.data,
    sql: direct === null ? primary.sql : sqlOf(direct),
    replicas,
    pendingMigrations: () => pendingMigrations(primary.sql, migrations),
    follow: followServer({
      url: directUrl,
      query: (text, values) => primary.sql.query(text, values),
      log: options.log,
    }),
    poolFigures: () => primary.poolFigures(),
    close: () => (closing ??= Promise.all([primary.close(), replicas?.close(), direct?.end()]).then(() => undefined)),
  };
}

interface ConnectedServer extends Connected {
  readonly client: PrismaClient;
  poolFigures(): PoolFigures;
}

/** Connections that transactions leave to reads, so that writers who wait for a lock do not keep readers waiting: three of ten. */
const keptForReads = (poolSize: number): number => Math.ceil(poolSize * 0.3);

function connect(url: string, options: ServerOptions): ConnectedServer {
  const { poolSize = 10 } = options;
  const pool = openPool(url, poolSize, options.log);
  cancelWithRequest(pool);
  translateUnavailable(pool);
  const client = openClient(new PrismaPg(pool), options);
  let closing: Promise<void> | null = null;
  const close = () => (closing ??= client.$disconnect().then(() => pool.end()));
  const poolFigures = (): PoolFigures => {
    const { totalCount: total, idleCount: idle, waitingCount: waiting, options: settings } = pool;
    return { total, idle, waiting, most: settings.max };
  };
  const turns = createSemaphore(Math.max(1, poolSize - keptForReads(poolSize)), transactionTimes.maxWait);
  return { client, data: createData(client, serverBulk(pool), close, turns), sql: sqlOf(pool), poolFigures, close };
}

function openPool(url: string, size: number, log: PersistenceLog | undefined): pg.Pool {
  const pool = new pg.Pool({
    connectionString: url,
    max: size,
    application_name: "prepwright",
    connectionTimeoutMillis: 10_000,
    ...everyConnection,
  });
  // One that is lost while it is used is told of by its statement, and would end the process if nobody listened.
  pool.on("connect", (client) => client.on("error", () => undefined));
  // So would an idle one that the server closes; the pool replaces it.
  pool.on("error", (error) => log?.warn({ err: error }, "the database closed an idle connection"));
  return pool;
}

const sqlOf = (pool: pg.Pool): Sql => ({
  query: (text, values) => lastAnswer(pool.query(text, values === undefined ? undefined : [...values])),
});

async function migrateServer(
  url: string,
  migrations: readonly Migration[],
  log: PersistenceLog | undefined,
): Promise<void> {
  // A connection of its own: the lock belongs to the session, which a pooled one would hand on.
  const session = new pg.Client({ connectionString: url, application_name: "prepwright-migrate" });
  await session.connect();
  try {
    await session.query(`SET lock_timeout = '${migrationPatience}'`);
    await session.query("SELECT pg_advisory_lock($1)", [migrationLock]).catch((error: unknown) => {
      const why = `another process has been migrating for ${migrationPatience}`;
      throw new MigrationError(migrations.at(-1)?.name ?? "", why, { cause: error });
    });
    // The wait for other processes is over; a migration may have to wait for readers longer than that.
    await session.query("SET lock_timeout = 0");
    const sql = {
      query: (text: string, values?: readonly unknown[]) =>
        session.query(text, values === undefined ? values : [...values]),
    };
    await migrate(sql, migrations, log);
  } finally {
    await session.end();
  }
}

/** For a text of several statements the driver answers with a list, which its types do not say. */
async function lastAnswer(answer: Promise<pg.QueryResult | pg.QueryResult[]>): Promise<SqlAnswer> {
  const found = await answer;
  return { rows: (Array.isArray(found) ? found.at(-1)?.rows : found.rows) ?? [] };
}
