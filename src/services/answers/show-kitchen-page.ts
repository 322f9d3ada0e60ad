import type { InSlices } from "../../domain/counted-work.js";
import type { Problem } from "../../domain/problem.js";
import { cookPageInSlices, type KitchenPageInput } from "../../exports/page/cook/cook-page.js";
import { faultPage } from "../../exports/page/fault-page.js";
import type { PageLinks } from "../../exports/page/page-links.js";
import { fridgePage, labelsPage } from "../../exports/page/print-pages.js";
import { languagesOf } from "../../exports/words/languages-of.js";
import { wordsFor } from "../../exports/words/words-for.js";
import { loadPlan } from "../plans/load-plan.js";
import { answerFor } from "./answer-plan.js";
import { inPreferredLanguage, localeFor } from "./preferred-locale.js";
import type { Deps } from "../deps.js";
import { countWritten, runInSlices } from "../time-slices.js";
import type { AskedForm, ShownPage } from "./show-plan-page.js";

/** Pages beside that of a plan, each of one plan for one household: to cook from, for the fridge door, for boxes. */
export type KitchenPage = "cook" | "fridge-door" | "labels";

const pages: Readonly<Record<KitchenPage, (input: KitchenPageInput) => InSlices<string>>> = {
  cook: cookPageInSlices,
  *"fridge-door"(input) {
    yield;
    return fridgePage(input);
  },
  *labels(input) {
    yield;
    return labelsPage(input);
  },
};

/** One of them as a form asks for it; null: there is no plan of that name or number. */
export async function showKitchenPage(
  deps: Deps,
  page: KitchenPage,
  named: { readonly publisher: string; readonly slug: string },
  { form, revision, asked: typed, problems: unread, preferred = null }: AskedForm,
  links: PageLinks,
): Promise<ShownPage | null> {
  const published = await loadPlan(deps, { ...named, revision });
  if (published === null) return null;
  const { locale } = published.bundle.plan;
  const asked = inPreferredLanguage(typed, preferred, locale);
  if (unread.length > 0) return faulty(unread);
  const answer = await answerFor(deps, published, asked);
  if (!answer.ok) return faulty(answer.problems);
  const html = await runInSlices(deps, () => pages[page]({ answer: answer.value, form, links }));
  countWritten(deps, html);
  const { reader, scaled } = answer.value;
  return { faulty: false, html, languages: languagesOf(reader, scaled.bundle) };

  function faulty(problems: readonly Problem[]): ShownPage {
    const words = wordsFor(localeFor(asked, locale));
    return { faulty: true, html: faultPage(words.page.cannotCook, { plan: named, form, problems }, words, links) };
  }
}
