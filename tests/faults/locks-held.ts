import { setTimeout as wait } from "node:timers/promises";
import pg from "pg";
import type { Fault } from "./fault.js";
import { startFleet } from "./fleet.js";
import { startLoad } from "./load.js";

/** How long a stranger holds what writers need, in milliseconds. */
const heldMs = 5_000;

/** Readers have to be answered within this although every writer waits, in milliseconds. */
const patienceOfReaders = 2_500;

/**
 * A stranger locks the plans for seconds, as a migration or a report would; more writers come than there are connections.
 * Readers must go on meanwhile, and writers afterwards.
 */
export const locksHeld: Fault = { name: "locks-held", tries: 5, fewTries: 1, run };

async function run(tries: number): ReturnType<Fault["run"]> {
  const fleet = await startFleet(1);
  const stranger = new pg.Client({ connectionString: fleet.url });
  await stranger.connect();
  try {
    const load = startLoad({ address: fleet.address, token: fleet.token, writers: 24, readers: 4 });
    await load.untilWritten(60);
    let readsMeanwhile = 0;
    for (let round = 0; round < tries; round += 1) {
      const before = load.counts().reads;
      await stranger.query("BEGIN");
      await stranger.query("LOCK TABLE plans IN SHARE ROW EXCLUSIVE MODE");
      await wait(heldMs);
      await stranger.query("COMMIT");
      readsMeanwhile += load.counts().reads - before;
      await load.untilWritten(60);
    }
    const counts = await load.stop();
    const audit = await fleet.look(({ sql }) => load.audit(sql));
    const tooSlow = counts.slowestReadMs > patienceOfReaders ? 1 : 0;
    return { tries, ...audit, ...counts, readsMeanwhile, tooSlow };
  } finally {
    await stranger.end();
    await fleet.stop();
  }
}
