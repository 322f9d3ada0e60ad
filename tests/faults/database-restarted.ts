import { setTimeout as wait } from "node:timers/promises";
import type { Fault } from "./fault.js";
import { startFleet } from "./fleet.js";
import { spread, startLoad } from "./load.js";

/**
 * Restarts the database under load, again and again, by turns as an operator does it and by a crash. Says how long after it answers
 * again the services write again.
 */
export const databaseRestarted: Fault = { name: "database-restarted", tries: 20, fewTries: 2, run };

async function run(tries: number): ReturnType<Fault["run"]> {
  const fleet = await startFleet(2);
  try {
    const load = startLoad({ address: fleet.address, token: fleet.token, writers: 4, readers: 4 });
    await load.untilWritten(20);
    const recovery: number[] = [];
    for (let round = 0; round < tries; round += 1) {
      await fleet.server.halt(round % 2 === 0 ? "fast" : "immediate");
      await wait((round * 137) % 700);
      await fleet.server.resume();
      recovery.push(await load.untilWritten(20));
    }
    const counts = await load.stop();
    const audit = await fleet.look(({ sql }) => load.audit(sql));
    const notReady = await Promise.all(fleet.services.map(({ address }) => fetch(`${address}/readyz`)));
    const ended = fleet.services.filter(({ child }) => child.exitCode !== null).length;
    return {
      ...{ tries, ...audit, ...counts, recoveryMs: spread(recovery), ended },
      notReady: notReady.filter(({ status }) => status !== 200).length,
    };
  } finally {
    await fleet.stop();
  }
}
