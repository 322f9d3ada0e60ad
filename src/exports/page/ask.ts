import { attributes, markup, type Content } from "./markup.js";
import { formFields, formQuery, type PlanForm } from "./form/plan-form.js";

const nothingPrivate = { diets: [], avoidAllergens: [], dislikes: [] } as const;

/** What somebody does not eat tells of health, so it is sent in the body of a request and stands in no address. */
export const isPrivate = (form: Pick<PlanForm, keyof typeof nothingPrivate>): boolean =>
  (Object.keys(nothingPrivate) as (keyof typeof nothingPrivate)[]).some((field) => form[field].length > 0);

/** What was asked, without what is private: what may stand in an address. */
export const sharedForm = (form: PlanForm): PlanForm => ({ ...form, ...nothingPrivate });

export const sharedQuery = (form: PlanForm): string => formQuery(sharedForm(form));

/** What was asked, as fields that nobody sees. */
export const hiddenFields = (form: PlanForm, without: readonly (keyof PlanForm)[] = []): Content =>
  (Object.keys(formFields) as (keyof PlanForm)[])
    .filter((field) => !without.includes(field))
    .flatMap((field) => [form[field]].flat().map((value) => [formFields[field], value] as const))
    .filter(([, value]) => value !== "")
    .map(([name, value]) => markup`<input type="hidden"${attributes({ name, value })}>`);

interface Way {
  readonly path: string;
  readonly form: PlanForm;
  readonly text: Content;
  /** Of the link or the button. */
  readonly kind?: string;
  /** BCP 47 tag of the language of its words and of where it leads; left out: that of the page. */
  readonly language?: string;
}

/** Leads to another page with the same question: a link, or where that would put diets into an address, a button. */
export function wayTo({ path, form, text, kind = "", language }: Way): Content {
  const look = attributes({ class: kind === "" ? null : kind, lang: language ?? null });
  if (!isPrivate(form))
    return markup`<a${look}${attributes({ hreflang: language ?? null })} href="${path}${formQuery(form)}">${text}</a>`;
  return markup`<form class="way" method="post" action="${path}">${hiddenFields(form)}<button type="submit"${look}>${text}</button></form>`;
}
