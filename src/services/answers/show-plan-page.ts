import type { Problem } from "../../domain/problem.js";
import type { PageLinks } from "../../exports/page/page-links.js";
import type { PlanForm } from "../../exports/page/form/plan-form.js";
import { languagesOf } from "../../exports/words/languages-of.js";
import { planPageInSlices } from "../../exports/page/plan-page.js";
import { inLanguage } from "../../domain/plan/translate/in-language.js";
import { answerFor, type Asked } from "./answer-plan.js";
import type { Deps } from "../deps.js";
import { rulesToday } from "../rules/find-rules.js";
import { countWritten, runInSlices } from "../time-slices.js";
import { loadPlan } from "../plans/load-plan.js";
import { weighRoutes } from "./weigh-routes.js";
import { householdProblems, publicationOf } from "./scale-for-reader.js";
import { inPreferredLanguage, localeFor } from "./preferred-locale.js";

/** A form as it was typed, and what it asks. */
export interface AskedForm {
  readonly form: PlanForm;
  readonly revision: number | null;
  readonly asked: Asked;
  /** What could not be read. */
  readonly problems: readonly Problem[];
  /** Language that the browser asks for, of those there are words in; null or left out: none of them. */
  readonly preferred?: string | null;
}

export interface ShownPage {
  readonly html: string;
  /** The form could not be worked out; the page says why. */
  readonly faulty: boolean;
  /** BCP 47 tags of the languages that it is in; left out: nobody computed it. */
  readonly languages?: readonly string[];
}

/** The page of a published plan as a form asks for it; null: there is none of that name or number. */
export async function showPlanPage(
  deps: Deps,
  { publisher, slug }: { readonly publisher: string; readonly slug: string },
  { form, revision, asked: typed, problems: unread, preferred = null }: AskedForm,
  links: PageLinks,
): Promise<ShownPage | null> {
  const ref = { publisher, slug, revision };
  const published = await loadPlan(deps, ref);
  if (published === null) return null;
  const asked = inPreferredLanguage(typed, preferred, published.bundle.plan.locale);
  const computed =
    unread.length === 0
      ? await answerFor(deps, published, asked)
      : { ok: false as const, problems: [...unread, ...(await householdProblems(deps, ref, asked))] };
  const publication = await publicationOf(deps, published);
  const { diets } = (await rulesToday(deps)).allergens;
  const differences = computed.ok ? await weighRoutes(deps, published, asked, computed.value) : new Map();
  const html = await runInSlices(deps, () =>
    planPageInSlices({
      publication,
      bundle: inLanguage(published.bundle, asked.household.locale ?? null),
      form,
      diets,
      answer: computed.ok ? computed.value : null,
      problems: computed.ok ? [] : computed.problems,
      links,
      differences,
      locale: localeFor(asked, published.bundle.plan.locale),
    }),
  );
  countWritten(deps, html);
  if (!computed.ok) return { faulty: true, html };
  const { reader, scaled } = computed.value;
  return { faulty: false, html, languages: languagesOf(reader, scaled.bundle) };
}
