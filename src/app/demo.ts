import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { EmbeddedDatabaseBusy } from "../persistence/errors.js";
import { plainText } from "../exports/plain-text.js";
import { problemText } from "../services/explain.js";
import { buildShoppingList } from "../services/build-shopping-list.js";
import { findSynonyms, foodsToday } from "../services/foods-today.js";
import { findFoods } from "../services/find-foods.js";
import { findKeepingRules, guideStorage } from "../services/guide-storage.js";
import { loadPlan } from "../services/load-plan.js";
import { newestPlan } from "../services/newest-plan.js";
import { readHousehold } from "../services/read-household.js";
import { scalePublishedPlan } from "../services/scale-published-plan.js";
import { measureSystems, showFor } from "../services/show-amount.js";
import type { Deps } from "../services/deps.js";
import { readEnvironment, type Environment } from "./environment.js";
import { exitWithFaults } from "./exit-with-faults.js";
import { openDatabase, type OpenDatabase } from "./open-database.js";
import { openLog } from "./open-log.js";

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
  const plan = ref && (await loadPlan(deps, { publisher: ref.publisher, slug: ref.slug, revision: null }));
  if (!plan) return ["there is no such plan; name one with --plan PUBLISHER/SLUG"];
  const { region, currency } = asked;
  const household = readHousehold({ measures, region, currency }, [plan.bundle], deps.rules.allergens.diets);
  if (!household.ok) return household.problems.map(problemText);
  const today = await foodsToday([plan.bundle], household.value, deps.rules.allergens.diets, {
    readFoods: (slugs) => findFoods(deps, slugs),
    readSynonyms: (slugs) => findSynonyms(deps, slugs),
  });
  const computed = scalePublishedPlan(plan.bundle, Number(asked.servings), household.value, today);
  if (!computed.ok) return computed.problems.map(problemText);
  const scaled = computed.value;
  const list = buildShoppingList([scaled], household.value, today);
  const keeping = await guideStorage(scaled, household.value, deps.clock, (date) => findKeepingRules(deps, date));
  return plainText({ scaled, list, keeping, reader: showFor(household.value, plan.bundle.plan) });
}
