import type { Problem } from "../../domain/problem.js";
import type { Deps, RevisionRef } from "../deps.js";
import { readStorable } from "../storable-text.js";
import { utcDay } from "../../domain/utc-day.js";

/** Why each of several plans was not found, in the order asked for: it was withdrawn as a whole, or there is none, or no such revision of it. */
export async function missingPlans(
  deps: Deps,
  wanted: readonly { readonly ref: RevisionRef; readonly path: Problem["path"] }[],
): Promise<readonly Problem[]> {
  // A revision that is named is found even when it is withdrawn.
  const names = wanted.map(({ ref: { publisher, slug, revision } }) =>
    revision === null ? { publisher, slug } : nobody,
  );
  const withdrawn = await readStorable(
    names,
    ({ publisher, slug }) => [publisher, slug],
    deps.data.revisions.withdrawn,
  );
  return wanted.map(({ ref: { publisher, slug, revision }, path }, index): Problem => {
    const last = withdrawn[index] ?? null;
    if (last === null || last.withdrawnAt === null)
      return { code: "UNKNOWN_PLAN", path, publisher, plan: slug, revision };
    const { title, locale, withdrawnAt, withdrawnBecause } = last;
    const at = utcDay(withdrawnAt);
    return { code: "WITHDRAWN", path, publisher, plan: slug, title, locale, at, because: withdrawnBecause };
  });
}

/** No slug is empty. */
const nobody = { publisher: "", slug: "" };

/** The same of one plan. */
export async function missingPlan(deps: Deps, ref: RevisionRef, path: Problem["path"] = []): Promise<Problem> {
  const [problem] = await missingPlans(deps, [{ ref, path }]);
  if (problem === undefined) throw new Error("a plan that is asked for has no answer");
  return problem;
}
