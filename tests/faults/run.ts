import { parseArgs } from "node:util";
import { clockJumps } from "./clock-jumps.js";
import { connectionsCut } from "./connections-cut.js";
import { connectionsExhausted } from "./connections-exhausted.js";
import { databaseRestarted } from "./database-restarted.js";
import { diskFull } from "./disk-full.js";
import type { Fault } from "./fault.js";
import { killDuringImports } from "./kill-during-imports.js";
import { killDuringWrites } from "./kill-during-writes.js";
import { locksHeld } from "./locks-held.js";
import { restoreBackup } from "./restore-backup.js";
import { shedding } from "./shedding.js";
import { stoppedUnderLoad } from "./stopped-under-load.js";
import { workerLost } from "./worker-lost.js";

/**
 * npm run faults -- NAME [--tries N]
 *
 * Runs one fault script. The last line is JSON: what was tried, and what was lost. Exits with 1 if
 * anything was, or if anything was wrong.
 */
const faults: readonly Fault[] = [
  clockJumps,
  connectionsCut,
  connectionsExhausted,
  databaseRestarted,
  diskFull,
  killDuringImports,
  killDuringWrites,
  locksHeld,
  restoreBackup,
  shedding,
  stoppedUnderLoad,
  workerLost,
];

const { positionals, values } = parseArgs({ allowPositionals: true, options: { tries: { type: "string" } } });
const fault = faults.find(({ name }) => name === positionals[0]);
const tries = Number(values.tries ?? fault?.tries);
if (fault === undefined || !Number.isInteger(tries) || tries < 1) {
  console.error(`usage: npm run faults -- NAME [--tries N]\nnames: ${faults.map(({ name }) => name).join(", ")}`);
  process.exit(2);
}
const found = await fault.run(tries);
console.log(JSON.stringify({ name: fault.name, ...found }));
const bad = ["lost", "doubled", "wrong", "failed", "ended", "notReady", "tooSlow", "tooLittle", "unclean"] as const;
process.exit(bad.some((each) => Number(found[each] ?? 0) > 0) ? 1 : 0);
