import { openServer } from "../../src/persistence/database/open-server.js";
import { runScheduled } from "../../src/services/schedule/run-scheduled.js";

/** A worker for what is scheduled that is only there to be killed: `schedule-worker.ts DATABASE_URL`. Says when it is ready. */
const [url = ""] = process.argv.slice(2);
const log = { info: () => undefined, warn: () => undefined, error: () => undefined };
const { data } = await openServer(url, { poolSize: 3 });
process.stdout.write("ready\n");
for (;;) {
  await runScheduled({ data, clock: () => new Date(), log, knownRules: new Map() });
  await new Promise((resume) => setTimeout(resume, 5));
}
