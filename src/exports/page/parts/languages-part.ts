import type { PlanBundle } from "../../../domain/model/plan.js";
import { languagesOfPlan } from "../../../domain/plan/translate/texts-of.js";
import type { Words } from "../../words/words.js";
import { otherLanguage } from "../../words/languages-of.js";
import { wayTo } from "../ask.js";
import { languageIn } from "../country-name.js";
import type { PlanForm } from "../form/plan-form.js";
import { attributes, markup, type Content } from "../markup.js";

interface Asked {
  readonly bundle: PlanBundle;
  /** Of the page that is shown. */
  readonly path: string;
  readonly form: PlanForm;
  readonly words: Words;
}

/** The same page in the other languages that its plan can be read in, each by its own name; nothing where there is none. */
export function languagesPart({ bundle, path, form, words }: Asked): Content {
  const isShown = (tag: string): boolean => tag === bundle.plan.locale && otherLanguage(tag, words) === null;
  const others = languagesOfPlan(bundle).filter((tag) => !isShown(tag));
  // A plan that nobody translated has no page but this one, whatever language its fixed words are in.
  if ((bundle.translations ?? []).length === 0 || others.length === 0) return null;
  const label = attributes({ "aria-label": words.page.otherLanguages });
  return markup`<nav class="tongues"${label}>${others.map((language) =>
    wayTo({ path, form: { ...form, locale: language }, text: languageIn(language, language), language }),
  )}</nav>`;
}
