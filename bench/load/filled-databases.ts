import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { PlanBundle } from "../../src/domain/model/plan.js";
import { openEmbedded } from "../../src/persistence/database/open-embedded.js";
import { openServer } from "../../src/persistence/database/open-server.js";
import { fillDatabase } from "../../tests/fuzz/fuzzed-service.js";
import { startPostgres } from "../../tests/kit/postgres/start-postgres.js";

/** A database with the demo in it. */
export interface FilledDatabase {
  readonly kind: "on a Postgres server" | "on the embedded database";
  /** What a service that uses it is started with. */
  readonly environment: Readonly<Record<string, string>>;
  /** It may do everything. */
  readonly token: string;
}

/** Builds the service, and measures it on a Postgres server and on the embedded database in turn. @param more what is published beside the demo */
export async function onBothDatabases<T>(
  measure: (database: FilledDatabase) => Promise<readonly T[]>,
  more: readonly PlanBundle[] = [],
): Promise<readonly T[]> {
  execFileSync(process.execPath, ["scripts/build.mjs"], { stdio: "ignore" });
  const log = { info: () => undefined, warn: console.error, error: console.error };
  const server = await startPostgres();
  const folder = mkdtempSync(join(tmpdir(), "prepwright-turns-"));
  try {
    const url = await server.createDatabase("turns");
    const results: T[] = [];
    for (const [kind, environment, opened] of [
      ["on a Postgres server", { DATABASE_URL: url }, () => openServer(url, { log })],
      ["on the embedded database", { DATA_DIR: folder }, () => openEmbedded(folder, { log })],
    ] as const) {
      const { data, close } = await opened();
      const { token } = await fillDatabase({ data, clock: () => new Date(), log, knownRules: new Map() }, more);
      await close();
      results.push(...(await measure({ kind, environment, token })));
    }
    return results;
  } finally {
    await server.stop();
    rmSync(folder, { recursive: true });
  }
}
