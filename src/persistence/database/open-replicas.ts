import type { Data } from "../data.js";
import type { PersistenceLog } from "./persistence-log.js";
import type { Sql } from "../sql/plain-sql.js";
import { publicReads } from "./public-reads.js";
import { watchReplicas, type ReplicaState } from "./watch-replicas.js";

/** Streaming replicas that answer reads of the public. */
export interface Replicas {
  /** `Data` for one request of the public: its reads are answered by a replica, or by the primary where none is well. */
  reads(): Data;
  /**
   * To be called when this process hears that something was written: from now on its reads find it, in the primary until a
   * replica has it. Whoever drops what it kept because of a write calls this first, or it would read the old again.
   */
  heardOfWrite(): void;
  states(): readonly ReplicaState[];
}

export interface ReplicaOptions {
  readonly urls: readonly string[];
  /** The most milliseconds an answer of a replica may be older than the primary's. */
  readonly maxLagMs: number;
  /** Milliseconds of a clock that only goes forward. */
  readonly now: () => number;
}

/** A server that is connected to, as far as replicas go. */
export interface Connected {
  readonly data: Data;
  readonly sql: Sql;
  close(): Promise<void>;
}

interface OpenedReplicas extends Replicas {
  close(): Promise<void>;
}

export function openReplicas(
  primary: Connected,
  { urls, maxLagMs, now }: ReplicaOptions,
  connect: (url: string) => Connected,
  log: PersistenceLog | undefined,
): OpenedReplicas {
  const opened = urls.map((url) => ({ name: new URL(url).host, ...connect(url) }));
  const cluster = once(() => clusterOf(primary.sql));
  const watch = watchReplicas(
    () => written(primary.sql),
    opened.map(({ name, sql, data }) => {
      const same = once(async () => (await clusterOf(sql)) === (await cluster()));
      return { name, value: data, position: async () => replayed(sql, name, await same()) };
    }),
    { maxLagMs, now, log },
  );
  return {
    reads: () => publicReads(primary.data, watch),
    heardOfWrite: watch.heardOfWrite,
    states: watch.states,
    close: async () => {
      watch.close();
      await Promise.all(opened.map((each) => each.close()));
    },
  };
}

async function written(sql: Sql): Promise<number> {
  const { rows } = await sql.query("SELECT pg_current_wal_lsn() - '0/0'::pg_lsn AS position");
  return Number(rows[0]?.["position"]);
}

async function replayed(sql: Sql, name: string, isOfPrimary: boolean): Promise<number> {
  if (!isOfPrimary) throw new Error(`${name} is no replica of this primary`);
  const { rows } = await sql.query(
    "SELECT pg_is_in_recovery() AS follows, pg_last_wal_replay_lsn() - '0/0'::pg_lsn AS position",
  );
  if (rows[0]?.["follows"] !== true) throw new Error(`${name} follows no primary`);
  return Number(rows[0]["position"]);
}

/** Which family of servers this one belongs to: a primary and its replicas share it. */
async function clusterOf(sql: Sql): Promise<string> {
  const { rows } = await sql.query("SELECT system_identifier::text AS id FROM pg_control_system()");
  return String(rows[0]?.["id"]);
}

/** What was found once is kept; a failure is not. */
function once<T>(find: () => Promise<T>): () => Promise<T> {
  let found: Promise<T> | null = null;
  return () =>
    (found ??= find().catch((error: unknown) => {
      found = null;
      throw error;
    }));
}
