import type { Deps, RuleSetSummary } from "../deps.js";

/** Rule sets by id, in the order asked for; null where there is none. */
export const findRuleSets = (deps: Deps, ids: readonly string[]): Promise<readonly (RuleSetSummary | null)[]> =>
  deps.data.ruleSets.byIds(ids);

/** Every rule set that was ever loaded, the one that begins last first. */
export const listRuleSets = (deps: Deps): Promise<readonly RuleSetSummary[]> => deps.data.ruleSets.all();
