/**
 * Names of src that only tests and benchmarks import, `FILE#NAME` by the reason why they have no other way in. Tests should
 * come in by what the program itself uses, so that a name that is no longer needed shows.
 */
const byReason = {
  "Runs in one go what requests run in time slices: the plain form that a case is written in.": [
    "domain/nutrition/allergens.ts#allergenStatement",
    "domain/nutrition/diets.ts#dietStatements",
    "domain/nutrition/nutrients.ts#nutritionOf",
    "domain/plan/scale-plan.ts#scalePlans",
    "domain/plan/servings-table.ts#servingsTable",
    "domain/plan/session/scaled-session.ts#scaledSession",
    "domain/plan/session/split-session.ts#splitSession",
    "domain/prep-session/schedule.ts#planSession",
    "domain/prep-session/solver/solve-rcpsp.ts#solveRcpsp",
    "domain/prep-session/task-network.ts#taskNetwork",
    "domain/storage/cautions.ts#cautionsFor",
    "exports/page/plan-page.ts#planPage",
    "services/answers/plan-prep-session.ts#planPrepSession",
    "services/answers/plan-prep-session.ts#planPrepSessions",
    "services/answers/state-contents.ts#findCautions",
  ],
  "A bound or a pause: a test goes up to it and one beyond, and must not state it a second time.": [
    "domain/component/cycles.ts#mostCycles",
    "domain/plan/check/check-lines.ts#leastMeasured",
    "domain/plan/check/check-plan.ts#leftOverLimit",
    "domain/shopping/cached-pack-options.ts#cachedPerFood",
    "domain/shopping/money.ts#partsPerUnit",
    "graphql/limits/introspection-size.ts#narrowIntrospectionPoints",
    "graphql/limits/nesting.ts#deepestNesting",
    "imports/recipes/iso-duration.ts#longestDuration",
    "imports/tables/csv-scanner.ts#longestRecord",
    "services/access/token-text.ts#tokenPattern",
    "services/answers/plan-prep-session.ts#mostSessionSteps",
    "services/answers/read-household.ts#longestHouseholdList",
    "services/imports/files/collect-file.ts#fetchWaits",
    "services/webhooks/deliver-webhooks.ts#waits",
  ],
  "A table whose every row a test asks about, so that none is forgotten.": [
    "domain/nutrition/label-rounding.ts#euLabelNutrients",
    "domain/nutrition/label-rounding.ts#usLabelNutrients",
    "imports/documents/schemas/line-schema.ts#lineSchema",
    "imports/documents/schemas/line-schema.ts#stepSchema",
    "imports/documents/checks/written-codes.ts#codeFieldsOf",
    "persistence/database/grant-runtime.ts#tablesWrittenOnce",
  ],
  "The type of what an exported function takes or gives, which a test writes out or narrows.": [
    "domain/component/component-graph.ts#ComponentGraph",
    "domain/component/purchase-need.ts#PurchaseNeed",
    "domain/model/food.ts#FoodDiet",
    "domain/nutrition/diets.ts#DietFood",
    "domain/prep-session/solver/rcpsp-problem.ts#TaskWait",
    "domain/shopping/packs.ts#PackChoice",
    "graphql/server/document-store.ts#RequestedDocument",
    "imports/prices/read-price-row.ts#PriceOptions",
    "services/imports/reports/report-imports.ts#MorningNotTold",
    "services/imports/feeds/save-feed.ts#FeedInput",
    "services/answer-stage.ts#Stage",
    "services/webhooks/deliver-webhooks.ts#Outside",
    "services/write.ts#WriteOrder",
  ],
  "A single rule with figures published for it, which an answer only shows together with others.": [
    "domain/nutrition/diets.ts#dietStatement",
    "domain/quantity/convert.ts#inUnit",
    "domain/quantity/pan.ts#panArea",
    "domain/quantity/parse/parse-lines.ts#parseLines",
    "domain/storage/freezing.ts#remainingAfterFreezing",
    "exports/sentences/advice-text.ts#adviceText",
    "services/foods/foods-today.ts#judgeFor",
  ],
  "Its other half is used: documents are read back from it, tables are fed in pieces to it, routes are asked by it.": [
    "imports/documents/plain-document.ts#foodDocumentOf",
    "imports/tables/read-table.ts#tableReader",
    "rest/register-rest.ts#routeOf",
  ],
};

/** @type {ReadonlySet<string>} */
export const exportedForTests = new Set(Object.values(byReason).flat());
