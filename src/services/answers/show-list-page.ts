import type { Problem } from "../../domain/problem.js";
import { listPage, type ListedPlan } from "../../exports/page/list-page.js";
import { noticePage } from "../../exports/page/notice-page.js";
import { listPath, planPath, type PageLinks } from "../../exports/page/page-links.js";
import { formQuery } from "../../exports/page/form/plan-form.js";
import { readerProblemText } from "../../exports/sentences/reader-problem-text.js";
import { wordsFor } from "../../exports/words/words-for.js";
import { answerLists } from "./answer-lists.js";
import type { Deps } from "../deps.js";
import { findPlans } from "../plans/find-plans.js";
import { findPublishers } from "../access/find-publishers.js";
import type { AskedForm, ShownPage } from "./show-plan-page.js";
import { inPreferredLanguage } from "./preferred-locale.js";

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
  own: { readonly publisher: string; readonly slug: string },
  { form, revision, asked: typed, problems: unread, preferred = null }: AskedForm,
  others: readonly OtherPlan[],
  links: PageLinks,
): Promise<ShownPage | null> {
  const wanted = [
    { publisher: own.publisher, slug: own.slug, revision, servings: typed.servings },
    ...others.map((each) => ({ ...each, revision: null })),
  ];
  const summaries = await findPlans(deps, wanted);
  const portions = wanted.flatMap((each, at) => {
    const summary = summaries[at];
    return summary ? [{ ...each, servings: each.servings ?? summary.serves }] : [];
  });
  if (portions.length < wanted.length) return null;
  const asked = inPreferredLanguage(typed, preferred, summaries[0]?.locale ?? "en");
  const answer = unread.length === 0 ? await answerLists(deps, portions, asked.household) : null;
  if (answer === null || !answer.ok) return faulty(answer === null ? unread : answer.problems);
  const publishers = await findPublishers(
    deps,
    answer.value.plans.map(({ bundle }) => bundle.plan.publisher),
  );
  const [first, ...rest] = answer.value.plans.map(({ bundle, servings }, at): ListedPlan => {
    const { publisher, slug } = bundle.plan;
    const asOthers = { ...form, revision: "", servings: String(servings) };
    const query = formQuery(at === 0 ? form : asOthers);
    return {
      bundle,
      publisher: publishers[at] ?? { slug: publisher, name: publisher },
      servings,
      address: planPath({ publisher, slug }, links) + query,
    };
  });
  if (first === undefined) throw new Error("a list has no plan");
  const { list, reader } = answer.value;
  return { faulty: false, html: listPage({ plans: [first, ...rest], list, reader, links, address: address() }) };

  function address(): string {
    const query = formQuery(form);
    const more = others.map((each) => `plan=${encodeURIComponent(otherPlanText(each))}`).join("&");
    return listPath(own, links) + query + (more === "" ? "" : `${query === "" ? "?" : "&"}${more}`);
  }

  function faulty(problems: readonly Problem[]): ShownPage {
    const texts = problems.map((problem) => readerProblemText(problem, wordsFor(asked.household.locale ?? "en")));
    const back = {
      path: planPath(own, links) + formQuery(form),
      text: "Put it right in the form; nothing you typed is lost",
    };
    return { faulty: true, html: noticePage("This list could not be made", texts.join(" "), links, back) };
  }
}
