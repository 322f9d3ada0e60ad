import pg from "pg";
import { expect } from "vitest";

/** Tables that answers about plans are read from, held so that statements of a service wait for them. */
export interface LockedTables {
  lock(): Promise<unknown>;
  unlock(): Promise<unknown>;
  /** Waits until so many statements of the service wait or run in the server. */
  untilRunning(count: number): Promise<unknown>;
  close(): Promise<unknown>;
}

/** @param url of the database; null: there is none of a server's */
export async function openLockedTables(url: string | null): Promise<LockedTables> {
  const connect = async (name: string): Promise<pg.Client> => {
    const client = new pg.Client({ connectionString: url ?? "", application_name: name });
    await client.connect();
    return client;
  };
  // Within a transaction the server shows its activity as it first was, so who looks is not who locks.
  const [holder, watcher] = await Promise.all([connect("another"), connect("watcher")]);
  const running = async (): Promise<number> => {
    const { rows } = await watcher.query<{ count: number }>(
      "SELECT count(*)::int AS count FROM pg_stat_activity WHERE datname = current_database() AND application_name = 'prepwright' AND state <> 'idle'",
    );
    return rows[0]?.count ?? -1;
  };
  return {
    lock: async () => {
      await holder.query("BEGIN");
      await holder.query('LOCK TABLE "revisions", "plans", "publishers" IN ACCESS EXCLUSIVE MODE');
    },
    unlock: () => holder.query("ROLLBACK"),
    untilRunning: (count) => expect.poll(running, { timeout: 5_000 }).toBe(count),
    close: () => Promise.all([holder.end(), watcher.end()]),
  };
}
