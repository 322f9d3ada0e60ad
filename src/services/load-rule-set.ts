import type { RuleSet } from "../domain/plan/rule-set.js";
import type { Deps, RuleSetSummary } from "./deps.js";

export interface RuleSetLoaded {
  readonly summary: RuleSetSummary;
  /** false: it was loaded before, with the same content. */
  readonly added: boolean;
}

/** At the start of a process: the set that comes with the program, unless the database has one of its code. */
export async function loadShippedRules({ data, clock, log }: Deps, set: RuleSet): Promise<void> {
  const { summary, added, same } = await data.ruleSets.add(set, clock());
  const { code } = summary;
  if (added) log.info({ code, inForceFrom: summary.inForceFrom }, "published rules loaded");
  else if (!same)
    log.warn(
      { code },
      "the rules that come with the program differ from the set of that code; the set stays as it was loaded",
    );
}
