// @ts-nocheck
import type { Publication } from "../../domain/plan/plan-answer.js";
import type { Plan } from "../../domain/model/plan.js";
import { longDate } from "./dates.js";
import { markup, type Content } from "./markup.js";
import { revisionPath, type PageLinks } from "./page-links.js";
import { blankForm, type PlanForm } from "./plan-form.js";
import { part } from "./plan-view.js";

/** Which revision this is, how to come back to it, and how to name it. */
export function editionPart(publication: Publication, plan: Plan, form: PlanForm, links: PageLinks): Content {
  const { publisher, revision, publishedAt, checksum } = publication;
  const named = { publisher: publisher.slug, slug: publication.slug };
  const address = links.origin + revisionPath(named, revision, blankForm);
  return part("edition", "This edition", [
    markup`<dl class="tally"><div><dt>Revision</dt><dd>${revision}</dd></div><div><dt>Published</dt><dd><time datetime="${publishedAt.toISOString()}">${longDate(publishedAt)}</time></dd></div></dl>`,
    markup`<p>A revision never changes. <a href="${revisionPath(named, revision, form)}">This one, as worked out here</a>, can always be found again at its own address.</p>`,
    markup`<p>To cite it: <cite>${publisher.name}, “${plan.title}”, revision ${revision}, ${longDate(publishedAt)}</cite>, <span class="address">${address}</span></p>`,
    markup`<p class="quiet address">SHA-256 of the frozen document: ${checksum}</p>`,
  ]);
}
