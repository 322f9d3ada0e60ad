import { checksumOf } from "../../../persistence/sql/canonical-json.js";
import type { Deps, FactSourceNow } from "../../deps.js";
import { rulesToday } from "../../rules/find-rules.js";
import { yieldToOthers } from "../../time-slices.js";
import { foodsWithSynonyms } from "./foods-with-synonyms.js";
import { rulesInForce } from "./known-by.js";
import { saveFacts } from "./save-facts.js";

/** Plans, or foods, that are read at a time. */
const pageSize = 20;
const foodsAtOnce = 100;
/** Plans of one run, some minutes of work; the next run goes on. */
const plansOfRun = 2_000;

interface WorkedOut {
  readonly workedOut: number;
  readonly failed: number;
}

/** Works out the facts that are due: of plans that came into force by another way than publishing, and of those that something changed for. */
export async function workOutDueFacts(deps: Deps): Promise<WorkedOut> {
  const { data, log } = deps;
  let [workedOut, failed] = [0, 0];
  const tried = new Set<string>();
  while (workedOut + failed < plansOfRun) {
    const due = (await data.planFacts.due(pageSize + tried.size)).filter(({ revisionId }) => !tried.has(revisionId));
    const some = due.slice(0, pageSize);
    if (some.length === 0) break;
    const bundles = await data.revisions.bundles(some.map(({ revisionId }) => revisionId));
    for (const [at, plan] of some.entries()) {
      const bundle = bundles[at];
      try {
        if (bundle) await saveFacts(deps, plan, bundle);
        workedOut += 1;
      } catch (error) {
        // One that fails is tried again in the next run, and keeps no other from being worked out.
        tried.add(plan.revisionId);
        failed += 1;
        log.error({ err: error, revision: plan.revisionId }, "the facts of a plan could not be worked out");
      }
    }
  }
  return { workedOut, failed };
}

/** Looks whether rules, foods with their prices, or publishers are others than when facts were worked out, and works out those that are due then. */
export async function noteFactSources(deps: Deps): Promise<WorkedOut & { readonly changed: number }> {
  const { data } = deps;
  const rules = await rulesToday(deps);
  const checksum = checksumOf(rulesInForce(deps, rules));
  let changed = await data.planFacts.noteSources([{ kind: "RULES", name: "", checksum }]);
  changed += await data.planFacts.notePublishers();
  const named = (await data.foods.names()).map(({ slug }) => slug);
  const slugs = [...new Set([...named, ...(await data.planFacts.notedFoods())])].toSorted();
  for (let at = 0; at < slugs.length; at += foodsAtOnce)
    changed += await noteFoods(deps, slugs.slice(at, at + foodsAtOnce));
  return { changed, ...(await workOutDueFacts(deps)) };
}

/** All that is known of some foods today, and of those that they are shopped as. */
async function noteFoods(deps: Deps, slugs: readonly string[]): Promise<number> {
  const sources: FactSourceNow[] = [];
  for (const { slug, food, other, otherFood } of await foodsWithSynonyms(deps, slugs)) {
    await yieldToOthers(deps);
    sources.push({ kind: "FOOD", name: slug, checksum: checksumOf([food, other, otherFood]) });
  }
  return deps.data.planFacts.noteSources(sources);
}
