import { setTimeout as wait } from "node:timers/promises";
import pg from "pg";
import type { Fault } from "./fault.js";
import { startFleet } from "./fleet.js";
import { spread, startLoad } from "./load.js";

/** Strangers take every connection the server has left, after those of the services were cut. */
export const connectionsExhausted: Fault = { name: "connections-exhausted", tries: 5, fewTries: 1, run };

async function run(tries: number): ReturnType<Fault["run"]> {
  // Ten for each service, three that are kept for a superuser, and a few for strangers.
  const fleet = await startFleet(2, { max_connections: "30" });
  try {
    const load = startLoad({ address: fleet.address, token: fleet.token, writers: 4, readers: 4 });
    await load.untilWritten(20);
    const recovery: number[] = [];
    for (let round = 0; round < tries; round += 1) {
      const strangers: pg.Client[] = [];
      const cut = async (): Promise<void> => {
        await strangers[0]?.query(
          "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE application_name LIKE 'prepwright%'",
        );
      };
      for (let n = 0; n < 60; n += 1) {
        const client = new pg.Client({ connectionString: fleet.server.url, application_name: "stranger" });
        client.on("error", () => undefined);
        const taken = await client.connect().then(
          () => true,
          () => false,
        );
        if (taken) strangers.push(client);
        if (n % 10 === 5) await cut();
      }
      await wait(1_000);
      await Promise.all(strangers.map((client) => client.end()));
      recovery.push(await load.untilWritten(20));
    }
    const counts = await load.stop();
    const audit = await fleet.look(({ sql }) => load.audit(sql));
    const ended = fleet.services.filter(({ child }) => child.exitCode !== null).length;
    return { tries, ...audit, ...counts, recoveryMs: spread(recovery), ended };
  } finally {
    await fleet.stop();
  }
}
