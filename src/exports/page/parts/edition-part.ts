import type { Publication } from "../../../domain/plan/plan-answer.js";
import type { Plan } from "../../../domain/model/plan.js";
import { longDate } from "../dates.js";
import { markup, type Content } from "../markup.js";
import { otherFormPath, revisionPath, type PageLinks } from "../page-links.js";
import { blankForm, type PlanForm } from "../form/plan-form.js";
import { part } from "../plan-view.js";

/** Which revision this is, how to come back to it, and how to name it. */
export function editionPart(publication: Publication, plan: Plan, form: PlanForm, links: PageLinks): Content {
  const { publisher, revision, publishedAt, checksum, changeNote } = publication;
  const named = { publisher: publisher.slug, slug: publication.slug };
  if (links.preview !== undefined) {
    return part("edition", "This edition", [
      markup`<p>As revision ${revision}, once it is published. Its addresses, its other forms and how to cite it stand here then.</p>`,
    ]);
  }
  const address = links.origin + revisionPath(named, revision, blankForm);
  return part("edition", "This edition", [
    markup`<dl class="tally"><div><dt>Revision</dt><dd>${revision}</dd></div><div><dt>Published</dt><dd><time datetime="${publishedAt.toISOString()}">${longDate(publishedAt)}</time></dd></div></dl>`,
    ...(changeNote === null ? [] : [markup`<p>What this revision changed: ${changeNote}</p>`]),
    markup`<p>A revision never changes. <a href="${revisionPath(named, revision, form)}">This one, as worked out here</a>, can always be found again at its own address.</p>`,
    markup`<p>To take along: ${otherForms(named, form)}</p>`,
    markup`<p>To cite it: <cite><bdi>${publisher.name}</bdi>, “<bdi>${plan.title}</bdi>”, revision ${revision}, ${longDate(publishedAt)}</cite>, <span class="address">${address}</span></p>`,
    markup`<p class="quiet address">SHA-256 of the frozen document: ${checksum}</p>`,
  ]);
}

/** Links to the same answer in the other forms. A calendar needs to know when the session begins. */
function otherForms(named: { readonly publisher: string; readonly slug: string }, form: PlanForm): readonly Content[] {
  const forms = [
    ["Markdown", otherFormPath(named, "md", null, form)],
    ["plain text", otherFormPath(named, "txt", null, form)],
    ["JSON", otherFormPath(named, "json", null, form)],
    ["the list as a table (CSV)", otherFormPath(named, "csv", "list", form)],
    ...(form.start === "" ? [] : [["calendar", otherFormPath(named, "ics", null, form)] as const]),
  ] as const;
  return forms.map(([name, address], at) => markup`${at === 0 ? "" : ", "}<a href="${address}">${name}</a>`);
}
