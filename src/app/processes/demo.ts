import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { EmbeddedDatabaseBusy } from "../../persistence/errors.js";
import { plainText } from "../../exports/document/plain-text.js";
import { answerPlan } from "../../services/answers/answer-plan.js";
import { problemText } from "../../exports/sentences/problem-text.js";
import { newestPlan } from "../../services/plans/newest-plan.js";
import { measureSystems } from "../../domain/model/amount.js";
import type { Deps } from "../../services/deps.js";
import { readEnvironment, type Environment } from "../setup/environment.js";
import { exitWithFaults } from "../setup/exit-with-faults.js";
import { openDatabase, type OpenDatabase } from "../setup/open-database.js";
import { openLog } from "../setup/open-log.js";

/** The main job as text: one plan computed through the same services that answer the API. */
const { values: asked } = parseArgs({
  options: {
    servings: { type: "string", default: "7" },
    plan: { type: "string" },
    measures: { type: "string" },
    region: { type: "string" },
    currency: { type: "string" },
  },
});
const unknown = ["there is no such plan; name one with --plan PUBLISHER/SLUG"];
const environment = readEnvironment();
if (!environment.ok) exitWithFaults(environment.faults);
const measures = measureSystems.find((system) => system === asked.measures) ?? null;
if (asked.measures !== undefined && measures === null) {
  exitWithFaults([`--measures must be one of ${measureSystems.join(", ")}`]);
}
const spare = await mkdtemp(join(tmpdir(), "prepwright-demo-"));
const database = await openBeside(environment.value);
const answer = await demoText(database.deps).finally(() => database.close());
await rm(spare, { recursive: true, force: true });
if (typeof answer !== "string") exitWithFaults(answer);
process.stdout.write(answer);

/** The embedded database has room for one process: while a service uses it, the demo is computed in a folder of its own. */
async function openBeside(settings: Environment): Promise<OpenDatabase> {
  try {
    return await openDatabase(settings, openLog("warn"));
  } catch (error) {
    if (!(error instanceof EmbeddedDatabaseBusy)) throw error;
    process.stderr.write(`${settings.dataDir} is in use; the demo data is loaded into a folder of its own.\n`);
    return openDatabase({ ...settings, dataDir: spare }, openLog("warn"));
  }
}

/** The text, or what is wrong with what was asked. */
async function demoText(deps: Deps): Promise<string | readonly string[]> {
  const [publisher, slug] = asked.plan?.split("/") ?? [];
  const ref = publisher !== undefined && slug !== undefined ? { publisher, slug } : await newestPlan(deps);
  if (ref === null) return unknown;
  const { region, currency } = asked;
  const answer = await answerPlan(
    deps,
    { publisher: ref.publisher, slug: ref.slug, revision: null },
    { servings: Number(asked.servings), household: { measures, region, currency } },
  );
  if (answer === null) return unknown;
  return answer.ok ? plainText(answer.value) : answer.problems.map(problemText);
}
