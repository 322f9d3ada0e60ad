import { execFileSync } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { openEmbedded } from "../../src/persistence/database/open-embedded.js";
import { startService, type ServiceProcess } from "../app/processes/service-process.js";
import { prepareWriting } from "../kit/plan-writer.js";
import type { Fault } from "./fault.js";
import { startLoad } from "./load.js";

/** Room that the database and all that is written before may take. */
const megabytes = 400;

/**
 * Fills up the disk below the embedded database while writers write, makes room again, and does it again after a restart. The disk is
 * one of its own in memory, so it takes root.
 */
export const diskFull: Fault = { name: "disk-full", tries: 3, fewTries: 1, run };

async function run(tries: number): ReturnType<Fault["run"]> {
  execFileSync(process.execPath, ["scripts/build.mjs"], { stdio: "ignore" });
  const folder = await mkdtemp(join(tmpdir(), "prepwright-disk-"));
  execFileSync("mount", ["-t", "tmpfs", "-o", `size=${String(megabytes)}m`, "tmpfs", folder]);
  let service: ServiceProcess | null = null;
  try {
    const DATA_DIR = join(folder, "data");
    const database = await openEmbedded(DATA_DIR);
    const token = await prepareWriting(database);
    await database.close();
    const start = (): Promise<ServiceProcess> => startService({ DATA_DIR, LOG_LEVEL: "fatal", PREPWRIGHT_WORKER: "0" });
    service = await start();
    let address = service.address;
    const load = startLoad({ address: () => address, token, writers: 2, readers: 1 });
    const recovery: number[] = [];
    let refused = 0;
    let restarts = 0;
    for (let round = 0; round < tries; round += 1) {
      await load.untilWritten(6);
      const failures = load.counts().failedWrites;
      const ballast = join(folder, "ballast");
      fill(ballast);
      const patience = Date.now() + 60_000;
      while (load.counts().failedWrites < failures + 5 && Date.now() < patience) {
        await wait(100);
        fill(ballast);
      }
      refused += load.counts().failedWrites - failures;
      await rm(ballast);
      // What could not go on has to be started again, as an operator or a supervisor would.
      await wait(1_000);
      if (service.child.exitCode !== null || service.child.signalCode !== null) {
        restarts += 1;
        service = await start();
        address = service.address;
      }
      recovery.push(await load.untilWritten(2));
    }
    const counts = await load.stop();
    await service.stop();
    const again = await openEmbedded(DATA_DIR);
    const audit = await load.audit(again.sql);
    await again.close();
    return { tries, ...audit, ...counts, refused, restarts, recoveryMs: recovery };
  } finally {
    service?.child.kill("SIGKILL");
    await wait(200);
    execFileSync("umount", [folder]);
    await rm(folder, { recursive: true });
  }
}

/** Takes what room is left. That it ends with "no space left" is the point of it. */
function fill(file: string): void {
  try {
    execFileSync("sh", ["-c", 'cat /dev/zero >> "$0"', file], { stdio: "ignore" });
  } catch (error) {
    if (!(error instanceof Error && "status" in error)) throw error;
  }
}
