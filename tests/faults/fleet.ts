import { execFileSync } from "node:child_process";
import { openServer } from "../../src/persistence/database/open-server.js";
import type { OpenedDatabase } from "../../src/persistence/database/opened-database.js";
import { startService, type ServiceProcess } from "../app/processes/service-process.js";
import { startDebianPostgres, type DebianPostgres } from "../kit/postgres/debian-postgres.js";
import { prepareWriting } from "../kit/plan-writer.js";

export interface Fleet {
  readonly server: DebianPostgres;
  readonly url: string;
  readonly token: string;
  readonly services: readonly ServiceProcess[];
  /** Of each process of the service. */
  readonly environment: Readonly<Record<string, string>>;
  /** One of the services, by turns. */
  address(): string;
  /** Looks into the database once all is over. */
  look<T>(use: (database: OpenedDatabase) => Promise<T>): Promise<T>;
  stop(): Promise<void>;
}

/** A database of Debian's PostgreSQL that a writer may write to, and so many services on it. */
export async function startFleet(
  count: number,
  settings: Readonly<Record<string, string>> = {},
  environment: Readonly<Record<string, string>> = {},
): Promise<Fleet> {
  execFileSync(process.execPath, ["scripts/build.mjs"], { stdio: "ignore" });
  const server = await startDebianPostgres(settings);
  const url = await server.createDatabase("faults");
  const look: Fleet["look"] = async (use) => {
    const database = await openServer(url, { poolSize: 3 });
    return use(database).finally(() => database.close());
  };
  const token = await look(prepareWriting);
  const given = { DATABASE_URL: url, PREPWRIGHT_WORKER: "0", LOG_LEVEL: "fatal", ...environment };
  const services = await Promise.all(Array.from({ length: count }, () => startService(given)));
  let turn = 0;
  return {
    ...{ server, url, token, services, environment: given, look },
    address: () => {
      turn += 1;
      const service = services[turn % services.length];
      if (service === undefined) throw new Error("no service");
      return service.address;
    },
    stop: async () => {
      for (const { child } of services) child.kill("SIGKILL");
      await server.stop();
    },
  };
}
