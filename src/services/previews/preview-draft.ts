import { titlesOfPlan } from "../../domain/plan/translate/in-language.js";
import { randomUUID } from "node:crypto";
import type { PlanBundle } from "../../domain/model/plan.js";
import { documentOf } from "../../persistence/plans/frozen-document.js";
import { canonicalJson, checksumOf } from "../../persistence/sql/canonical-json.js";
import type { Deps, OwnedSlug, PublishedRevision, RevisionSummary } from "../deps.js";
import { checkGathered, type DraftCheck } from "../drafts/check/check-draft.js";
import { gatherPlan } from "../plans/gather-plan.js";
import { frozenFrom } from "../plans/publish-plan.js";
import { rulesToday } from "../rules/find-rules.js";

/** A draft as it would be published at this moment, and what publishing it would meet. */
export interface DraftPreview extends DraftCheck {
  /** null: it cannot be computed, because of the problems. */
  readonly published: PublishedRevision | null;
}

/** null: there is no such draft. The newest version is looked at. */
export async function previewDraft(deps: Deps, name: OwnedSlug): Promise<DraftPreview | null> {
  const gathered = await gatherPlan(deps.data, name);
  if (gathered === null) return null;
  const check = await checkGathered(deps, gathered, null);
  if (check.problems.length > 0) return { ...check, published: null };
  const frozen = await frozenFrom(deps, gathered.bundle);
  if (!frozen.ok) return { ...check, problems: frozen.problems, published: null };
  const document = documentOf(frozen.value);
  // Through the text that would be stored, so that nothing is there which readers would not get.
  const bundle = JSON.parse(canonicalJson(document)) as PlanBundle;
  return { ...check, published: { ...(await revisionOf(deps, name, bundle)), bundle } };
}

/** The revision that publishing would answer with: the newest where that says the same, else the next. */
async function revisionOf(deps: Deps, { publisher, slug }: OwnedSlug, bundle: PlanBundle): Promise<RevisionSummary> {
  const { data, clock } = deps;
  const checksum = checksumOf(bundle);
  const [inForce] = await data.revisions.summaries([{ publisher, slug, revision: null }]);
  if (inForce?.checksum === checksum) return { ...inForce, id: randomUUID() };
  const { items } = await data.revisions.ofPlan(
    { publisher, slug },
    { first: 1, after: null, last: null, before: null },
  );
  const { title, serves, locale } = bundle.plan;
  return {
    id: randomUUID(),
    ...{ publisher, slug, title, serves, locale, checksum },
    revision: (items[0]?.item.revision ?? 0) + 1,
    publishedAt: clock(),
    withdrawnAt: null,
    withdrawnBecause: null,
    changeNote: null,
    ruleSet: (await rulesToday(deps)).id,
    translatedInto: [...titlesOfPlan(bundle).keys()],
  };
}
