import { readEnvironment } from "../setup/environment.js";
import { exitWithFaults } from "../setup/exit-with-faults.js";
import { NoRegisteredDocuments } from "../server/registered-documents.js";
import { FolderNotPrivate } from "../../persistence/errors.js";
import { serve } from "./serve.js";

const environment = readEnvironment();
if (!environment.ok) exitWithFaults(environment.faults);
const { address, firstQuery, startWork } = await serve(environment.value).catch((error: unknown) => {
  if (error instanceof NoRegisteredDocuments || error instanceof FolderNotPrivate) exitWithFaults([error.message]);
  throw error;
});
process.stdout.write(`Prepwright is at ${address}\n${firstQuery}\n`);
await startWork();
