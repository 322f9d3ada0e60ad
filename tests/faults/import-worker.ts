import { openServer } from "../../src/persistence/database/open-server.js";
import { runImports } from "../../src/services/imports/run-imports.js";

/** A worker for imports that is only there to be killed: `import-worker.ts DATABASE_URL NAME`. Says when it is ready. */
const [url = "", name = "worker"] = process.argv.slice(2);
const log = { info: () => undefined, warn: () => undefined, error: () => undefined };
const { data } = await openServer(url, { poolSize: 3 });
process.stdout.write("ready\n");
for (;;) {
  await runImports({ data, clock: () => new Date(), log, knownRules: new Map() }, name, {
    everyMs: 100,
    deadAfterMs: 1_000,
  });
  await new Promise((resume) => setTimeout(resume, 50));
}
