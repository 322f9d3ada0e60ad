import type { ReportedDifference } from "../../../domain/model/import-report.js";
import { bundleOf } from "../../../domain/plan/compile/plan-bundle.js";
import { comparePlans, type PlanDifference } from "../../../domain/plan/review/compare-plans.js";
import { checkBundle } from "../../../domain/plan/check/check-bundle.js";
import type { PlanBundle } from "../../../domain/model/plan.js";
import { readDocuments } from "../../../imports/documents/read-documents.js";
import { resolveDocuments } from "../../../imports/documents/resolve-documents.js";
import { compareRevisions, computePlan } from "../../plans/compare-revisions.js";
import type { Deps, ImportChange } from "../../deps.js";
import { loadReferences } from "../../drafts/load-references.js";
import { importCaller, type RevisionThen } from "../../drafts/store-draft.js";

/** What readers of a plan find otherwise because of an import. Of a component alone nothing is said: its plans say it. */
export async function changeDifferences(
  deps: Deps,
  publisher: string,
  change: ImportChange,
  all: readonly ImportChange[],
): Promise<readonly ReportedDifference[]> {
  const [kind, slug = ""] = change.key.split(" ");
  if (change.before === null || change.after === null || (kind !== "PLAN" && kind !== "REVISION")) return [];
  if (kind === "REVISION") {
    const from = (change.before as RevisionThen).revision;
    const to = (change.after as RevisionThen).revision;
    const compared = await compareRevisions(deps, importCaller("report").actor, { publisher, slug, from, to });
    return compared.ok ? compared.value.map(reported) : [];
  }
  // What was published says it better.
  if (all.some(({ key }) => key === `REVISION ${slug}`)) return [];
  const components = all.filter(({ key }) => key.startsWith("COMPONENT "));
  const before = await planOf(
    deps,
    publisher,
    textOf(change.before),
    components.map(({ before: was }) => textOf(was)),
  );
  const after = await planOf(
    deps,
    publisher,
    textOf(change.after),
    components.map(({ after: is }) => textOf(is)),
  );
  if (before === null || after === null) return [];
  const [was, is] = [await computePlan(deps, before), await computePlan(deps, after)];
  return was.ok && is.ok ? comparePlans(was.value, is.value).map(reported) : [];
}

const reported = ({ kind, path, before, after }: PlanDifference): ReportedDifference => ({
  what: [kind.toLowerCase().replaceAll("_", " "), ...path].join(" "),
  before,
  after,
});

/** A change notes the text alone, or the draft's document with it. */
function textOf(state: unknown): string {
  const { text, document } = (state ?? {}) as {
    readonly text?: string;
    readonly document?: { readonly text: string } | null;
  };
  return text ?? document?.text ?? "";
}

/** null: its text is not kept, or does not fit together any more. */
async function planOf(
  deps: Deps,
  publisher: string,
  text: string,
  components: readonly string[],
): Promise<PlanBundle | null> {
  const documents = [...components, text].flatMap((each) => readDocuments(each, "document").documents);
  const known = await loadReferences(deps, publisher, importCaller("report").actor, { documents, faulty: [] });
  const resolved = resolveDocuments(documents, known);
  const plan = resolved.plans.at(-1)?.value;
  if (plan === undefined || resolved.problems.length > 0) return null;
  const written = resolved.components.map(({ value }) => value);
  const names = new Set(written.map(({ slug }) => slug));
  const bundle = bundleOf(plan, [...written, ...known.components.filter(({ slug }) => !names.has(slug))], known.foods);
  return checkBundle(bundle).length > 0 ? null : bundle;
}
