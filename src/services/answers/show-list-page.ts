import type { Problem } from "../../domain/problem.js";
import { listPageInSlices, type ListedPlan } from "../../exports/page/list-page.js";
import { faultPage } from "../../exports/page/fault-page.js";
import type { PageLinks } from "../../exports/page/page-links.js";
import { wordsFor } from "../../exports/words/words-for.js";
import { languagesOf } from "../../exports/words/languages-of.js";
import { answerLists, type ComputedLists } from "./answer-lists.js";
import { stateAllergens } from "./state-contents.js";
import { runInSlices } from "../time-slices.js";
import type { Deps } from "../deps.js";
import { findPlans } from "../plans/find-plans.js";
import { findPublishers } from "../access/find-publishers.js";
import type { AskedForm, ShownPage } from "./show-plan-page.js";
import { inPreferredLanguage, localeFor } from "./preferred-locale.js";

/** Another plan on the same list; `servings` null: as many as it is written for. */
export interface OtherPlan {
  readonly publisher: string;
  readonly slug: string;
  readonly servings: number | null;
}

/** How another plan stands in an address: `publisher/slug`, and `:8` for eight. */
const otherPlanText = ({ publisher, slug, servings }: OtherPlan): string =>
  `${publisher}/${slug}${servings === null ? "" : `:${servings}`}`;

/** The list of one plan, or of it and others, as a page to tick and print; null: one of them is not in print. */
export async function showListPage(
  deps: Deps,
  named: { readonly publisher: string; readonly slug: string },
  { form, revision, asked: typed, problems: unread, preferred = null }: AskedForm,
  others: readonly OtherPlan[],
  links: PageLinks,
): Promise<ShownPage | null> {
  const wanted = [
    { publisher: named.publisher, slug: named.slug, revision, servings: typed.servings },
    ...others.map((each) => ({ ...each, revision: null })),
  ];
  const summaries = await findPlans(deps, wanted);
  const portions = wanted.flatMap((each, at) => {
    const summary = summaries[at];
    return summary ? [{ ...each, servings: each.servings ?? summary.serves }] : [];
  });
  if (portions.length < wanted.length) return null;
  const own = summaries[0]?.locale ?? "en";
  const asked = inPreferredLanguage(typed, preferred, own);
  const answer = unread.length === 0 ? await answerLists(deps, portions, asked.household) : null;
  if (answer === null || !answer.ok) return faulty(answer === null ? unread : answer.problems);
  const publishers = await findPublishers(
    deps,
    answer.value.plans.map(({ bundle }) => bundle.plan.publisher),
  );
  const [first, ...rest] = answer.value.plans.map(({ bundle, servings }, at): ListedPlan => {
    const { publisher } = bundle.plan;
    return {
      bundle,
      publisher: publishers[at] ?? { slug: publisher, name: publisher },
      servings,
      form: at === 0 ? form : { ...form, revision: "", servings: String(servings) },
    };
  });
  if (first === undefined) throw new Error("a list has no plan");
  const { list, reader, household } = answer.value;
  const labels = await labelsToRead(deps, answer.value);
  const more = others.map((each) => `plan=${encodeURIComponent(otherPlanText(each))}`).join("&");
  const plans = [first, ...rest] as const;
  const html = await runInSlices(deps, () =>
    listPageInSlices({ plans, list, reader, household, labels, links, others: more }),
  );
  const languages = [...new Set(plans.flatMap(({ bundle }) => languagesOf(reader, bundle)))];
  return { faulty: false, html, languages };

  function faulty(problems: readonly Problem[]): ShownPage {
    const words = wordsFor(localeFor(asked, own));
    return { faulty: true, html: faultPage(words.page.listFaulty, { plan: named, form, problems }, words, links) };
  }
}

/** Foods of which nobody says whether some allergen is in them. */
async function labelsToRead(
  deps: Deps,
  { scaled, household, rules }: Pick<ComputedLists, "scaled" | "household" | "rules">,
): Promise<ReadonlySet<string>> {
  const labels = new Set<string>();
  for (const plan of scaled) {
    const { labelsToRead: found } = await runInSlices(deps, (work) =>
      stateAllergens(plan, null, household, rules, deps.clock, work),
    );
    for (const { food } of found) labels.add(food);
  }
  return labels;
}
