import { planFilterCost } from "../../services/plans/listing/plan-filter-cost.js";

type Arguments = Readonly<Record<string, unknown>>;

/** How many entries a list is counted as. Pages are counted as the number asked for. */
export const listSizes: Readonly<Record<string, number>> = {
  "AccessToken.usage": 31,
  "AllergenFinding.contains": 4,
  "AllergenFinding.mayContain": 4,
  "AllergenFinding.unknown": 40,
  "AllergenStatement.findings": 30,
  "AllergenStatement.labelsToRead": 40,
  "AllergenStatement.lists": 6,
  "AsIngredient.foods": 40,
  "AsIngredient.glutenFreeOnly": 4,
  "AsIngredient.unknown": 40,
  "CatalogueFood.densities": 6,
  "CatalogueFood.edible": 4,
  "CatalogueFood.measures": 12,
  "CatalogueFood.nutrients": 16,
  "Caution.about": 12,
  "Caution.restsOn": 6,
  "ChangedPlan.differences": 20,
  "Component.credits": 4,
  "Component.keeping": 6,
  "Component.lines": 12,
  "Component.meals": 6,
  "Component.routes": 2,
  "Component.steps": 12,
  "Component.storage": 6,
  "CriticalTask.waitsFor": 4,
  "Diet.breaks": 6,
  "Diet.claims": 3,
  "Diet.unknown": 40,
  "DiscardedDraft.namedBy": 100,
  "DocumentsCheck.findings": 40,
  "DocumentsCheck.lines": 40,
  "DraftCheck.findings": 40,
  "DraftPreview.findings": 40,
  "FeedSettings.articles": 100,
  "FeedSettings.columns": 20,
  "Food.allergens": 15,
  "Food.densities": 4,
  "Food.diets": 10,
  "Food.edible": 4,
  "Food.keeping": 8,
  "Food.measures": 8,
  "Food.names": 8,
  "Food.nutrients": 16,
  "Food.packs": 6,
  "Food.parts": 4,
  "Food.storage": 8,
  "FoodConnection.openTable": 5,
  "FoodPart.keeping": 4,
  "FoodPart.nutrients": 16,
  "ImportChange.differences": 20,
  "ImportReport.changes": 100,
  "ImportReport.warnings": 100,
  "Line.swaps": 4,
  "LinesRead.lines": 1,
  "Meal.components": 6,
  "Meal.lines": 12,
  "Meal.steps": 12,
  "MorningReport.imports": 20,
  "MorningReport.plans": 20,
  "MorningReport.importOnlyTokens": 20,
  "MorningReport.keptBack": 20,
  "NutrientFigure.unknown": 12,
  "NutritionPerServing.added": 8,
  "NutritionPerServing.missing": 8,
  "NutritionPerServing.notEaten": 8,
  "NutritionPerServing.nutrients": 16,
  "NutritionPerServing.unweighed": 8,
  "Plan.check": 40,
  "Plan.components": 12,
  "Plan.credits": 4,
  "Plan.foods": 40,
  "Plan.languages": 4,
  "PlanConnection.facets": 5,
  "PlanFacet.values": 50,
  "PlanFacts.allergens": 36,
  "PlanFacts.costs": 4,
  "PlanFacts.nutrients": 14,
  "Plan.meals": 8,
  "PrepSession.components": 6,
  "PrepSession.criticalPath": 30,
  "PrepSession.eveningBefore": 4,
  "PrepSession.lateMeals": 1,
  "PrepSession.order": 60,
  "PrepSession.tasks": 60,
  "Query.compare": 100,
  "Query.feeds": 20,
  "Query.uploadedImages": 1,
  "Query.ruleSets": 10,
  "Problem.parameters": 4,
  "Route.lines": 4,
  "Route.steps": 6,
  "SaveDocumentsPayload.drafts": 20,
  "SaveDocumentsPayload.foods": 20,
  "SaveFoodsPayload.foods": 20,
  "Swap.steps": 2,
  "ScaledComponent.lines": 12,
  "ScaledMeal.diets": 20,
  "ScaledMeal.lines": 12,
  "ScaledPlan.cautions": 12,
  "ScaledPlan.components": 12,
  "ScaledPlan.diets": 20,
  "ScaledPlan.meals": 8,
  "ScaledPlan.sessions": 2,
  "ScaledPlan.regions": 3,
  "ScaledPlan.storage": 40,
  "ScaledPlan.warnings": 30,
  "ShoppingAisle.lines": 12,
  "ShoppingLine.buy": 3,
  "ShoppingLine.partsOver": 2,
  "ShoppingLine.uses": 6,
  "ShoppingList.aisles": 12,
  "ShoppingList.lines": 40,
  "ShoppingList.warnings": 30,
  "StorageGuidance.basis": 8,
  "StorageGuidance.tooLateFor": 4,
  "TextLine.takes": 2,
  "Vocabulary.allergens": 40,
  "Vocabulary.currenciesWithPrices": 4,
  "Vocabulary.languagesOfWords": 5,
  "Vocabulary.lists": 12,
  "Vocabulary.problemKinds": 80,
  "Vocabulary.regionsWithRules": 10,
  "Vocabulary.warningKinds": 21,
  "VocabularyAllergen.namedBy": 8,
  "VocabularyCode.spellings": 3,
  "VocabularyList.codes": 80,
  "Warning.parameters": 4,
};

/** Lists of `problems` are short: what is wrong with one input. */
export const problemsSize = 10;

/** Points beside those of the objects, for what is computed or read. */
export const fieldWork: Readonly<Record<string, number>> = {
  "FoodConnection.openTable": 2,
  "Component.storage": 5,
  "Draft.preview": 60,
  "DraftPreview.scaled": 10,
  "DraftPreview.scaling": 10,
  "Food.storage": 5,
  "Plan.check": 50,
  "PlanConnection.facets": 300,
  "PlanConnection.totalCount": 50,
  "PlanConnection.totalCountIsExact": 50,
  "Plan.revisions": 5,
  "Publisher.plans": 5,
  "Plan.scaled": 10,
  "Plan.scaling": 10,
  "Plan.servingsTable": 20,
  "Query.checkDocuments": 50,
  "Query.checkDraft": 50,
  "Query.compare": 50,
  "Query.importReport": 50,
  "Query.morningReport": 50,
  "Query.preview": 60,
  "Query.readLines": 50,
  "ScaledPlan.allergens": 5,
  "ScaledPlan.diets": 20,
  "ScaledPlan.nutrition": 5,
  "ScaledPlan.session": 300,
  "ScaledPlan.sessions": 600,
  "ScaledPlan.shoppingList": 20,
  "ScaledPlan.storage": 10,
};

/** Points of every mutation: a transaction with its entry in the audit trail. */
export const mutationWork = 50;

/** Points of every field of Query, and of each result of one of Subscription: a look into the database. */
export const queryWork = 5;

const lengthOf = (value: unknown): number => (Array.isArray(value) ? value.length : 1);

/** Characters of a line that count as one line. */
const charactersOfLine = 100;

/** How many usual lines some texts are as long as. */
const textLinePoints = (texts: unknown): number =>
  Array.isArray(texts)
    ? texts.reduce<number>((sum, text) => sum + Math.max(1, Math.ceil(String(text).length / charactersOfLine)), 0)
    : 1;

/** Fields whose arguments say how often all that is below them is done. */
export const fieldTimes: Readonly<Record<string, (args: Arguments) => number>> = {
  "Plan.servingsTable": ({ from, to }) =>
    typeof from === "number" && typeof to === "number" ? Math.min(Math.max(to - from + 1, 1), 200) : 1,
  "Query.checkDocuments": ({ texts }) => lengthOf(texts),
  "Query.readLines": ({ texts }) => textLinePoints(texts),
  "Query.uploadedImages": ({ files }) => lengthOf(files),
  "Query.nodes": ({ ids }) => lengthOf(ids),
  "Query.plansBySlug": ({ plans }) => lengthOf(plans),
  "Query.shopping": ({ plans }) => lengthOf(plans),
  "Query.shoppingList": ({ plans }) => lengthOf(plans),
};

/** Points that depend on what the arguments of a field ask for. */
export const argumentWork: Readonly<Record<string, (args: Arguments) => number>> = {
  "Query.plans": ({ filter }) => planFilterCost(filter),
  // A look into the database for each token of a page, and a row for each day.
  "AccessToken.usage": ({ days }) => 5 + (typeof days === "number" ? Math.min(Math.max(days, 0), 366) / 10 : 37),
};

/** A page is at most so long; a longer one is refused when it is read. */
const longestPage = 100;
const usualPage = 20;

/** Entries of a page by its arguments. */
export function pageSize({ first, last }: Arguments): number {
  const asked = first ?? last ?? usualPage;
  return typeof asked === "number" ? Math.min(Math.max(asked, 0), longestPage) : longestPage;
}
