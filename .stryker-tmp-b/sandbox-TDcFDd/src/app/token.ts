// @ts-nocheck
import { parseArgs } from "node:util";
import { isScope, scopes } from "../services/actor.js";
import { createToken } from "../services/create-token.js";
import { problemText } from "../services/explain.js";
import { readEnvironment } from "./environment.js";
import { exitWithFaults } from "./exit-with-faults.js";
import { openDatabase } from "./open-database.js";
import { openLog } from "./open-log.js";

/**
 * `create --name NAME --scopes ADMIN,WRITE [--publisher SLUG] [--expires 2027-01-01]` makes a token straight on the database, and
 * prints it. It needs no token, so it is how the first one is made. Without a publisher it is one of the operator.
 */
const { values: asked, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    publisher: { type: "string" },
    name: { type: "string" },
    scopes: { type: "string" },
    expires: { type: "string" },
  },
});
const environment = readEnvironment();
const wanted = (asked.scopes ?? "").split(",").map((scope) => scope.trim().toUpperCase());
const expiresAt = asked.expires === undefined ? null : new Date(asked.expires);
const { name } = asked;
const faults = [
  ...(environment.ok ? [] : environment.faults),
  ...(positionals.join(" ") === "create" ? [] : ["say what to do: create"]),
  ...(name === undefined ? ["--name must say what the token is for"] : []),
  ...(wanted.every(isScope) ? [] : [`--scopes must be some of ${scopes.join(",")}`]),
  ...(expiresAt !== null && Number.isNaN(expiresAt.getTime()) ? ["--expires must be a time, such as 2027-01-01"] : []),
];
if (!environment.ok || name === undefined || faults.length > 0) exitWithFaults(faults);

const database = await openDatabase(environment.value, openLog("warn"));
const made = await createToken(
  database.deps,
  { actor: { kind: "PROGRAM", name: "command line" }, requestId: null },
  { publisher: asked.publisher ?? null, name, scopes: wanted.filter(isScope), expiresAt },
).finally(() => database.close());
if (!made.ok) exitWithFaults(made.problems.map(problemText));
process.stdout.write(`${made.value.text ?? ""}\n`);
process.stderr.write(`Keep it: it is not shown again. Its id is ${made.value.id}.\n`);
