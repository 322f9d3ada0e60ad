import { join } from "node:path";
import { readSeeds } from "./read-seeds.js";
import type { Deps } from "../services/deps.js";
import { problemText } from "../services/explain.js";
import { loadSeeds, type SeedsLoaded } from "../services/load-seeds.js";

/** Loads the demo that comes with the program. Files that do not pass the checks are a fault of the program. */
export async function seedDatabase(deps: Deps, root: string): Promise<SeedsLoaded> {
  const { publisher, foods, bundles, problems } = await readSeeds(join(root, "seeds"));
  const [first] = problems;
  if (first !== undefined) throw new Error(`${first.file}:${first.line}: ${problemText(first.problem)}`);
  const loaded = await loadSeeds(deps, { publisher, foods, bundles });
  if (!loaded.ok) throw new Error(`the demo data is refused: ${loaded.problems.map(problemText).join(" ")}`);
  return loaded.value;
}
