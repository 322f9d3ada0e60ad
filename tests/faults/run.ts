import { spawn } from "node:child_process";
import { once } from "node:events";
import { parseArgs } from "node:util";
import { clockJumps } from "./clock-jumps.js";
import { connectionsCut } from "./connections-cut.js";
import { connectionsExhausted } from "./connections-exhausted.js";
import { databaseRestarted } from "./database-restarted.js";
import { diskFull } from "./disk-full.js";
import type { Fault } from "./fault.js";
import { killDuringImports } from "./kill-during-imports.js";
import { killDuringSchedules } from "./kill-during-schedules.js";
import { killDuringWrites } from "./kill-during-writes.js";
import { locksHeld } from "./locks-held.js";
import { restoreBackup } from "./restore-backup.js";
import { shedding } from "./shedding.js";
import { stoppedUnderLoad } from "./stopped-under-load.js";
import { workerLost } from "./worker-lost.js";

/**
 * npm run faults -- NAME [--tries N] [--untimed]
 * npm run faults -- --few
 *
 * Runs one fault script, or all of them with few tries each. The last line of a script is JSON: what was tried, and what was lost.
 * Exits with 1 if anything was, or if anything was wrong, or took too long unless it is `--untimed`, as it is among the few: a gate
 * runs on machines that have other things to do.
 */
const faults: readonly Fault[] = [
  clockJumps,
  connectionsCut,
  connectionsExhausted,
  databaseRestarted,
  diskFull,
  killDuringImports,
  killDuringSchedules,
  killDuringWrites,
  locksHeld,
  restoreBackup,
  shedding,
  stoppedUnderLoad,
  workerLost,
];

/** These measure no time, and mostly wait, so the others run beside them. */
const waiting: readonly Fault[] = [clockJumps, workerLost, killDuringImports, killDuringSchedules];

/** What none of may be. */
const bad = ["lost", "doubled", "wrong", "failed", "ended", "notReady", "unclean"] as const;

/** The same, where the machine has nothing else to do. */
const badAlone = ["tooSlow", "tooLittle"] as const;

/** Each in a process of its own, so that none disturbs what another measures. Names of those that found something. */
async function runAll(chosen: readonly Fault[]): Promise<readonly string[]> {
  const failed: string[] = [];
  for (const { name, fewTries } of chosen) {
    const args = ["--import", "tsx", "tests/faults/run.ts", name, "--tries", String(fewTries), "--untimed"];
    const [code] = (await once(spawn(process.execPath, args, { stdio: "inherit" }), "exit")) as [number | null];
    if (code !== 0) failed.push(name);
  }
  return failed;
}

const { positionals, values } = parseArgs({
  allowPositionals: true,
  options: {
    tries: { type: "string" },
    few: { type: "boolean", default: false },
    untimed: { type: "boolean", default: false },
  },
});
if (values.few) {
  const others = faults.filter((each) => !waiting.includes(each));
  const failed = (await Promise.all([runAll(waiting), runAll(others)])).flat();
  if (failed.length > 0) console.error(`not as it should be: ${failed.join(", ")}`);
  process.exit(failed.length > 0 ? 1 : 0);
}
const fault = faults.find(({ name }) => name === positionals[0]);
const tries = Number(values.tries ?? fault?.tries);
if (fault === undefined || !Number.isInteger(tries) || tries < 1) {
  console.error(
    `usage: npm run faults -- NAME [--tries N], or --few\nnames: ${faults.map(({ name }) => name).join(", ")}`,
  );
  process.exit(2);
}
const found = await fault.run(tries);
console.log(JSON.stringify({ name: fault.name, ...found }));
const looked = values.untimed ? bad : [...bad, ...badAlone];
process.exit(looked.some((each) => Number(found[each] ?? 0) > 0) ? 1 : 0);
