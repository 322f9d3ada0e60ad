import type { Image } from "../../domain/model/image.js";
import type { PlanBundle } from "../../domain/model/plan.js";
import { ok, type Result } from "../../domain/problem.js";
import type { Deps, Page, RevisionSummary } from "../deps.js";
import { inLanguage } from "../../domain/plan/translate/in-language.js";
import { readLocale } from "../answers/read-household.js";
import { findPlans } from "./find-plans.js";
import { listPlans } from "./list-plans.js";
import { loadDocuments } from "../drafts/load-documents.js";
import type { WantedPage } from "../answers/page-request.js";

/** A plan as followers of a feed get it. */
export interface FollowedPlan {
  /** Its first revision, withdrawn or not: its id stays the same whatever is published later. */
  readonly first: RevisionSummary;
  /** Its newest revision in force. */
  readonly newest: RevisionSummary;
  /** In the language of the reader, as far as its texts were translated. */
  readonly shown: ShownWords;
  readonly image: Image | null;
}

/** What an entry says. */
interface ShownWords {
  /** BCP 47 tag of the language that the plan is shown in. */
  readonly language: string;
  readonly title: string;
  readonly summary: string | null;
  /** In CommonMark. */
  readonly introduction: string | null;
  readonly tags: readonly string[];
  /** BCP 47 tag of the language of a text that was not translated; null: it is in that of the entry. */
  readonly otherLanguage: (text: string) => string | null;
}

/** A plan that was withdrawn as a whole. */
export interface WithdrawnPlan {
  /** As of `FollowedPlan`. */
  readonly first: RevisionSummary;
  /** The revision that was withdrawn last. */
  readonly last: RevisionSummary;
}

/** Withdrawn plans that a feed names: nobody who follows it reads more of them at once. */
const mostWithdrawn = 100;

/** Plans that a publisher took back as a whole, the last first. */
export async function listWithdrawn(deps: Deps, publisher: string): Promise<readonly WithdrawnPlan[]> {
  const last = await deps.data.revisions.withdrawnOf(publisher, mostWithdrawn);
  const firsts = await findPlans(
    deps,
    last.map(({ slug }) => ({ publisher, slug, revision: 1 })),
  );
  return last.flatMap((each, at) => {
    const first = firsts[at];
    return first ? [{ first, last: each }] : [];
  });
}

function wordsIn(bundle: PlanBundle, locale: string | null): ShownWords {
  const { plan, untranslated } = inLanguage(bundle, locale);
  const { title, summary, introduction = null, tags = [] } = plan;
  return {
    language: plan.locale,
    ...{ title, summary, introduction, tags },
    otherLanguage: (text) => (untranslated?.texts.has(text) ? untranslated.language : null),
  };
}

/**
 * A page of what a publisher has published, newest first. Problems: those of `listPlans`, and of a bad locale.
 *
 * @param asked BCP 47 tag of the language of its readers, as they wrote it; null: each plan is shown as it was written
 */
export async function listFeed(
  deps: Deps,
  publisher: string,
  page: WantedPage,
  asked: string | null,
): Promise<Result<Page<FollowedPlan>>> {
  const locale = readLocale(asked, ["locale"]);
  if (!locale.ok) return locale;
  const filter = { publisher, search: null, usesFood: null, usesComponent: null };
  const listed = await listPlans(deps, { filter, page });
  if (!listed.ok) return listed;
  const newest = listed.value.items.map(({ item }) => item);
  const [firsts, documents] = await Promise.all([
    findPlans(
      deps,
      newest.map(({ slug }) => ({ publisher, slug, revision: 1 })),
    ),
    loadDocuments(
      deps,
      newest.map(({ id }) => id),
    ),
  ]);
  const items = listed.value.items.map(({ cursor, item }, at) => {
    const [first, document] = [firsts[at], documents[at]];
    if (!first || !document) throw new Error(`revision ${item.id} has no first revision or no document`);
    const shown = wordsIn(document, locale.value);
    return { cursor, item: { first, newest: item, image: document.plan.image ?? null, shown } };
  });
  return ok({ ...listed.value, items });
}
