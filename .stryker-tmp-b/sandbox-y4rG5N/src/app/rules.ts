// @ts-nocheck
import { readFile } from "node:fs/promises";
import { basename } from "node:path";
import { loadRuleSet } from "../services/load-rule-set.js";
import { problemText } from "../services/explain.js";
import { readEnvironment } from "./environment.js";
import { exitWithFaults } from "./exit-with-faults.js";
import { openDatabase } from "./open-database.js";
import { openLog } from "./open-log.js";

/**
 * `load FILE...` loads published rules straight on the database, as a set that is used from the day it names. Running
 * services need no restart. Nothing is loaded while a file has a fault.
 */
const [verb, ...paths] = process.argv.slice(2);
const environment = readEnvironment();
const faults = [
  ...(environment.ok ? [] : environment.faults),
  ...(verb === "load" && paths.length > 0 ? [] : ["say what to do: load FILE..."]),
];
if (!environment.ok || faults.length > 0) exitWithFaults(faults);
const files = await Promise.all(
  paths.map(async (path) => ({ name: basename(path), text: await readFile(path, "utf8") })),
).catch((error: unknown) => exitWithFaults([error instanceof Error ? error.message : String(error)]));

const database = await openDatabase(environment.value, openLog("warn"));
const caller = { actor: { kind: "PROGRAM", name: "command line" }, requestId: null } as const;
const loaded = await loadRuleSet(database.deps, caller, { files }).finally(() => database.close());
if (!loaded.ok) {
  exitWithFaults(loaded.problems.map(({ file, line, problem }) => `${file}:${line}: ${problemText(problem)}`));
}
const { code, inForceFrom } = loaded.summary;
process.stdout.write(`${loaded.added ? "Loaded" : "Loaded before"}: rule set ${code}, used from ${inForceFrom}.\n`);
