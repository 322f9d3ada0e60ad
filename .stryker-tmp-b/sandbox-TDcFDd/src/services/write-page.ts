/** Pages for people, for the layers that may not see `exports`. */
// @ts-nocheck

export { blankForm, formFields, formQuery, type PlanForm } from "../exports/page/plan-form.js";
export { noticePage } from "../exports/page/notice-page.js";
export { publisherPage } from "../exports/page/publisher-page.js";
export { planPath, publisherPath, type PageLinks } from "../exports/page/page-links.js";
export { startPage } from "../exports/page/start-page.js";
export type { Shelf } from "../exports/page/plan-shelf.js";
