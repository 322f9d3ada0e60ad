import { readRulesFolder } from "../../src/app/setup/read-rules-folder.js";
import { readSeeds } from "../../src/app/setup/read-seeds.js";
import type { PlanBundle } from "../../src/domain/model/plan.js";
import { openServer } from "../../src/persistence/database/open-server.js";
import { scopes } from "../../src/services/access/actor.js";
import { createToken } from "../../src/services/access/create-token.js";
import type { Deps } from "../../src/services/deps.js";
import { loadSeeds } from "../../src/services/drafts/load-seeds.js";
import { loadShippedRules } from "../../src/services/rules/load-rule-set.js";
import type { Known } from "./graphql-requests.js";

/** Fills a database with the demo, and makes a token that may do everything. */
export async function prepareFuzzedService(url: string): Promise<{ readonly known: Known; readonly token: string }> {
  const log = { info: () => undefined, warn: console.error, error: console.error };
  const { data, close } = await openServer(url, { log });
  try {
    return await fillDatabase({ data, clock: () => new Date(), log, knownRules: new Map() });
  } finally {
    await close();
  }
}

/** @param more what is published beside the demo */
export async function fillDatabase(
  deps: Deps,
  more: readonly PlanBundle[] = [],
): Promise<{ readonly known: Known; readonly token: string }> {
  await loadShippedRules(deps, await readRulesFolder("seeds/rules"));
  const demo = await readSeeds("seeds");
  const seeds = [
    demo,
    ...more.map((bundle) => ({
      ...{ ...demo, plans: [bundle.plan], components: bundle.components, bundles: [bundle] },
    })),
  ];
  for (const each of seeds) if (!(await loadSeeds(deps, each)).ok) throw new Error("the demo was refused");
  const caller = { actor: { kind: "PROGRAM", name: "fuzz" }, requestId: null } as const;
  const made = await createToken(deps, caller, { publisher: null, name: "everything", scopes, expiresAt: null });
  if (!made.ok || made.value.text === null) throw new Error("no token");
  const known = {
    publishers: ["third-gate-allotments", "nobody-here"],
    plans: [...demo.bundles.map(({ plan }) => plan.slug), "nothing-here"],
    foods: [...demo.foods.map(({ slug }) => slug), "nothing-here"],
  };
  return { known, token: made.value.text };
}
