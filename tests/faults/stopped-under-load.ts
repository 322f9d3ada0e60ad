import { startService, type ServiceProcess } from "../app/processes/service-process.js";
import type { Fault } from "./fault.js";
import { startFleet } from "./fleet.js";
import { startLoad } from "./load.js";
import { startBalancer } from "./balancer.js";

/**
 * Two services behind a balancer that sends each request to the next one which says it is ready. One after the other is stopped by
 * SIGTERM under load and replaced, as a deployment does it. No request may fail.
 */
export const stoppedUnderLoad: Fault = { name: "stopped-under-load", tries: 20, fewTries: 2, run };

async function run(tries: number): ReturnType<Fault["run"]> {
  // The balancer asks every 100 ms; that is ample for it to notice, on a machine that is busy with this very load too.
  const fleet = await startFleet(0, {}, { PREPWRIGHT_DRAIN_SECONDS: "3" });
  const services: ServiceProcess[] = [];
  const balancer = await startBalancer(() => services.map(({ address }) => address));
  try {
    for (let n = 0; n < 2; n += 1) services.push(await startService(fleet.environment));
    await balancer.untilReady(2);
    const load = startLoad({ address: () => balancer.address, token: fleet.token, writers: 4, readers: 8 });
    await load.untilWritten(20);
    const codes: (number | null)[] = [];
    for (let round = 0; round < tries; round += 1) {
      const [old] = services;
      if (old === undefined) throw new Error("no service");
      services.push(await startService(fleet.environment));
      await balancer.untilReady(3);
      codes.push(await old.stop());
      services.shift();
    }
    const counts = await load.stop();
    const audit = await fleet.look(({ sql }) => load.audit(sql));
    const failed = counts.failedReads + counts.failedWrites;
    return { tries, ...audit, ...counts, failed, unclean: codes.filter((code) => code !== 0).length };
  } finally {
    for (const { child } of services) child.kill("SIGKILL");
    await balancer.close();
    await fleet.stop();
  }
}
