import { bundleOf } from "../../domain/plan/compile/plan-bundle.js";
import type { Deps } from "../../services/deps.js";
import { problemText } from "../../exports/sentences/problem-text.js";
import { loadSeeds, type SeedsLoaded } from "../../services/drafts/load-seeds.js";
import { readShipped } from "./shipped-data.js";

/** Loads the demo that comes with the program, through the checks that every plan goes through. */
export async function seedDatabase(deps: Deps, root: string): Promise<SeedsLoaded> {
  const { publisher, foods, components, plans } = await readShipped("demo", root);
  const bundles = plans.map((plan) => bundleOf(plan, components, foods));
  const loaded = await loadSeeds(deps, { publisher, foods, bundles });
  if (!loaded.ok) throw new Error(`the demo data is invalid: ${loaded.problems.map(problemText).join(" ")}`);
  return loaded.value;
}
