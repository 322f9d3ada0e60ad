import { setTimeout as wait } from "node:timers/promises";
import { diceFrom } from "../kit/arbitrary/dice.js";
import type { Fault } from "./fault.js";
import { startFleet } from "./fleet.js";
import { startLoad } from "./load.js";

/** Ends connections of the services at random moments, in the midst of transactions too. */
export const connectionsCut: Fault = { name: "connections-cut", tries: 300, fewTries: 40, run };

async function run(tries: number): ReturnType<Fault["run"]> {
  const fleet = await startFleet(2);
  const dice = diceFrom(tries);
  try {
    const load = startLoad({ address: fleet.address, token: fleet.token, writers: 4, readers: 4 });
    await load.untilWritten(20);
    let cut = 0;
    for (let round = 0; round < tries; round += 1) {
      const rows = await fleet.server.query(
        `SELECT pg_terminate_backend(pid) FROM (SELECT pid FROM pg_stat_activity WHERE datname = 'faults'
           AND (state = 'active' OR state = 'idle in transaction' OR ${dice.chance(0.2)})
           ORDER BY random() LIMIT 1) AS one`,
      );
      cut += rows.length;
      await wait(dice.roll(60));
    }
    const recoveryMs = await load.untilWritten(20);
    const counts = await load.stop();
    const audit = await fleet.look(({ sql }) => load.audit(sql));
    const ended = fleet.services.filter(({ child }) => child.exitCode !== null).length;
    return { tries, ...audit, ...counts, cut, recoveryMs, ended };
  } finally {
    await fleet.stop();
  }
}
