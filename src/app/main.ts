import { readEnvironment } from "./environment.js";
import { exitWithFaults } from "./exit-with-faults.js";
import { serve } from "./serve.js";

const environment = readEnvironment();
if (!environment.ok) exitWithFaults(environment.faults);
const { address, firstQuery, startWork } = await serve(environment.value);
process.stdout.write(`Prepwright is at ${address}\n${firstQuery}\n`);
await startWork();
