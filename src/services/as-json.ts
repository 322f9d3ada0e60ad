/** Answers as JSON with their shapes, for the layers that may not see `exports`. */
export { componentJson, componentSchema } from "../exports/json/component.js";
export { foodJson, foodSchema } from "../exports/json/food.js";
export { revisionJson, revisionSchema } from "../exports/json/frozen-plan.js";
export { thingsOf } from "../exports/json/named-thing.js";
export { describedPublisherSchema, planJson, planSchema, publisherSchema } from "../exports/json/plan.js";
export {
  pageSchema,
  planSummaryJson,
  planSummarySchema,
  servingsTableJson,
  servingsTableSchema,
} from "../exports/json/plan-parts.js";
export { sessionAnswerJson, sessionAnswerSchema } from "../exports/json/session-answer.js";
export { listAnswerJson, listAnswerSchema } from "../exports/json/shopping-list.js";
export { storageJson, storageSchema } from "../exports/json/storage.js";
export { vocabularySchema } from "../exports/json/vocabulary.js";
export { changePageSchema } from "../exports/json/change.js";
export {
  importReportJson,
  importReportSchema,
  importRunJson,
  importRunSchema,
  morningReportJson,
  morningReportSchema,
} from "../exports/json/import-run.js";
