import pg from "pg";
import { afterAll, afterEach, beforeAll, beforeEach, expect } from "vitest";

/** Tables that answers about plans are read from, held during each test, so that statements of a service wait for them. */
export interface LockedTables {
  /** Gives them free before the test is over. */
  unlock(): Promise<unknown>;
  /** Waits until so many statements of the service wait or run in the server. */
  untilRunning(count: number): Promise<unknown>;
}

/** To be called after the hook that opens the database. @param url of a server's database */
export function lockTables(url: () => string | null): LockedTables {
  let holder: pg.Client;
  /** Within a transaction the server shows its activity as it first was, so who looks is not who locks. */
  let watcher: pg.Client;
  const connect = async (name: string): Promise<pg.Client> => {
    const client = new pg.Client({ connectionString: url() ?? "", application_name: name });
    await client.connect();
    return client;
  };
  beforeAll(async () => {
    [holder, watcher] = await Promise.all([connect("another"), connect("watcher")]);
  });
  afterAll(() => Promise.all([holder.end(), watcher.end()]).then(() => undefined));
  beforeEach(async () => {
    await holder.query("BEGIN");
    await holder.query('LOCK TABLE "revisions", "plans", "publishers" IN ACCESS EXCLUSIVE MODE');
  });
  const unlock = () => holder.query("ROLLBACK");
  afterEach(unlock);
  const running = async (): Promise<number> => {
    const { rows } = await watcher.query<{ count: number }>(
      "SELECT count(*)::int AS count FROM pg_stat_activity WHERE datname = current_database() AND application_name = 'prepwright' AND state <> 'idle'",
    );
    return rows[0]?.count ?? -1;
  };
  return { unlock, untilRunning: (count) => expect.poll(running, { timeout: 5_000 }).toBe(count) };
}
