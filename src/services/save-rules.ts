import type { PublishedKeepingRule } from "../domain/model/keeping.js";
import type { Deps } from "./deps.js";

/** Puts the published rules in that come with this version; superseded ones stay. Counts what really changed. */
export async function saveRules(deps: Deps, rules: readonly PublishedKeepingRule[]): Promise<number> {
  const { changed } = await deps.data.keepingRules.save(rules);
  return changed;
}
