import type { RuleSet } from "../../domain/plan/compile/rule-set.js";
import type { Deps } from "../deps.js";
import { utcDay } from "../../domain/utc-day.js";

/** A rule set, and its id in the database. */
export type KnownRules = RuleSet & { readonly id: string };

/** What finding the rules of a day takes. */
export type RuleDeps = Pick<Deps, "data" | "clock" | "knownRules">;

/**
 * The published rules of an ISO date. Which set that is the database is asked every time, so that a set loaded by any
 * process is used by all at once; what the set says is read once.
 */
export async function findRules({ data, knownRules }: Omit<RuleDeps, "clock">, date: string): Promise<KnownRules> {
  const id = await data.ruleSets.inForce(date);
  if (id === null) throw new Error("no set of published rules was ever loaded");
  const known = knownRules.get(id) ?? (await data.ruleSets.contents([id]))[0] ?? null;
  if (known === null) throw new Error(`rule set ${id} has no content`);
  knownRules.set(id, known);
  return { ...known, id };
}

/** The published rules of today, in UTC. */
export const rulesToday = (deps: RuleDeps): Promise<KnownRules> => findRules(deps, utcDay(deps.clock()));
