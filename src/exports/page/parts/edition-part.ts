import type { Plan } from "../../../domain/model/plan.js";
import type { Publication } from "../../../domain/plan/plan-answer.js";
import { capital } from "../../words/capital.js";
import type { NameBook } from "../../words/name-book.js";
import { inLanguage, writersLanguage } from "../writers-language.js";
import { sharedForm } from "../ask.js";
import { dateLocale, longDate } from "../dates.js";
import { blankForm, type PlanForm } from "../form/plan-form.js";
import { markup, type Content } from "../markup.js";
import { otherFormPath, revisionPath, type PageLinks } from "../page-links.js";
import { foldedPart } from "../plan-view.js";
import { saidWith } from "../said-with.js";

/** Which version this is, how to come back to it, how to name it, and the same answer as files. */
export function editionPart(
  publication: Publication,
  plan: Plan,
  form: PlanForm,
  links: PageLinks,
  book: NameBook,
): Content {
  const { publisher, revision, publishedAt, checksum, changeNote } = publication;
  const words = book.words.page;
  const named = { publisher: publisher.slug, slug: publication.slug };
  if (links.preview !== undefined)
    return foldedPart("edition", words.version, markup`<p>${words.oncePublished({ number: revision })}</p>`);
  const shared = sharedForm(form);
  const date = longDate(publishedAt, dateLocale(book));
  const version = capital(words.citedVersion({ number: revision }));
  return foldedPart(
    "edition",
    words.version,
    [
      markup`<p>${version}, <time datetime="${publishedAt.toISOString()}">${words.published({ date })}</time>. <a href="${revisionPath(named, revision, shared)}">${words.sameForEver}</a>.</p>`,
      changeNote !== null &&
        markup`<p>${saidWith((note) => words.whatChanged({ note }), inLanguage(changeNote, book.originalLanguage))}</p>`,
      markup`<p>${words.saveOrSend}: ${otherForms(named, shared, book)}</p>`,
      markup`<p>${words.cite}: <cite><bdi>${publisher.name}</bdi>, “<bdi${writersLanguage(plan.title, book)}>${plan.title}</bdi>”, ${words.citedVersion({ number: revision })}, ${date}</cite>, <a class="address" href="${links.origin}${revisionPath(named, revision, blankForm)}">${links.origin.replace(/^https?:\/\//, "")}</a></p>`,
      markup`<p class="quiet address">${words.fingerprint({ hash: checksum })}</p>`,
    ],
    version,
  );
}

/** Links to the same answer in the other forms. A calendar needs to know when the work begins. */
function otherForms(
  named: { readonly publisher: string; readonly slug: string },
  form: PlanForm,
  { words }: NameBook,
): readonly Content[] {
  const { files } = words.page;
  const forms = [
    [files.md, otherFormPath(named, "md", null, form)],
    [files.txt, otherFormPath(named, "txt", null, form)],
    [files.json, otherFormPath(named, "json", null, form)],
    [files.csv, otherFormPath(named, "csv", "list", form)],
    ...(form.start === "" ? [] : [[files.ics, otherFormPath(named, "ics", null, form)] as const]),
  ] as const;
  return forms.map(([name, address], at) => markup`${at === 0 ? "" : ", "}<a href="${address}">${name}</a>`);
}
