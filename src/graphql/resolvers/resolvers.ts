import type { Resolvers } from "../generated/resolver-types.js";
import { changeResolvers } from "./plans/change.js";
import { catalogueFoodResolvers } from "./foods/catalogue-food.js";
import { componentResolvers, routeResolvers } from "./plans/component.js";
import { scheduledChangeResolvers } from "./drafts/schedule.js";
import { draftPreviewResolvers, previewLinkResolvers } from "./drafts/preview.js";
import { draftResolvers, savedDraftResolvers, textLineResolvers } from "./drafts/draft.js";
import {
  foodConnectionResolvers,
  foodPartResolvers,
  foodResolvers,
  keepingRuleResolvers,
  packResolvers,
} from "./foods/food.js";
import { feedResolvers, importRunResolvers } from "./import.js";
import { imageResolvers } from "./image.js";
import { lineResolvers, stepResolvers, swapResolvers } from "./plans/line.js";
import { mealResolvers } from "./plans/meal.js";
import { findingResolvers, planResolvers, planTextsResolvers } from "./plans/plan.js";
import { mutationResolvers } from "./mutation.js";
import { problemResolvers } from "./problem.js";
import { publisherResolvers } from "./publisher.js";
import { planConnectionResolvers, planEdgeResolvers, planFactsResolvers } from "./plans/found-plans.js";
import { queryResolvers } from "./query.js";
import { subscriptionResolvers } from "./subscription.js";
import { dateScalar, dateTimeScalar, quantityScalar } from "./scalars.js";
import {
  scaledComponentResolvers,
  scaledLineResolvers,
  scaledMealResolvers,
  scaledPlanResolvers,
} from "./plans/scaled-plan.js";
import { warningResolvers } from "./plans/warning.js";
import {
  packCountResolvers,
  shoppingLineResolvers,
  shoppingListResolvers,
  useResolvers,
} from "./plans/shopping-list.js";
import {
  allergenFindingResolvers,
  allergenStatementResolvers,
  asIngredientResolvers,
  cautionResolvers,
  dietResolvers,
  foodAsIngredientResolvers,
  labelToReadResolvers,
  nutrientFigureResolvers,
  notEatenResolvers,
  nutritionResolvers,
} from "./plans/contents.js";
import {
  criticalTaskResolvers,
  lateMealResolvers,
  prepSessionResolvers,
  sessionComponentResolvers,
  sessionTaskResolvers,
} from "./plans/session.js";
import { basisResolvers, storageGuidanceResolvers } from "./plans/storage-guidance.js";
import { accessTokenResolvers, auditEntryResolvers } from "./token.js";
import { creditResolvers, writtenTextResolvers } from "./plans/words.js";
import { webhookDeliveryResolvers, webhookResolvers } from "./webhook.js";

/** Types that are not named here are read property by property; their parents already have that shape. */
export const resolvers: { readonly [Type in keyof Resolvers]?: Partial<Resolvers[Type]> } = {
  AccessToken: accessTokenResolvers,
  AllergenFinding: allergenFindingResolvers,
  AllergenStatement: allergenStatementResolvers,
  AsIngredient: asIngredientResolvers,
  AuditEntry: auditEntryResolvers,
  Basis: basisResolvers,
  CatalogueFood: catalogueFoodResolvers,
  Caution: cautionResolvers,
  Change: changeResolvers,
  Component: componentResolvers,
  Credit: creditResolvers,
  CriticalTask: criticalTaskResolvers,
  Date: dateScalar,
  DateTime: dateTimeScalar,
  Diet: dietResolvers,
  Draft: draftResolvers,
  DraftPreview: draftPreviewResolvers,
  Feed: feedResolvers,
  Finding: findingResolvers,
  Food: foodResolvers,
  FoodConnection: foodConnectionResolvers,
  FoodAsIngredient: foodAsIngredientResolvers,
  FoodPart: foodPartResolvers,
  KeepingRule: keepingRuleResolvers,
  Image: imageResolvers,
  ImportRun: importRunResolvers,
  Keepable: { __resolveType: (subject) => subject.__typename },
  LabelToRead: labelToReadResolvers,
  Line: lineResolvers,
  Meal: mealResolvers,
  Mutation: mutationResolvers,
  Node: { __resolveType: (node) => node.__typename },
  NotEaten: notEatenResolvers,
  NutrientFigure: nutrientFigureResolvers,
  NutritionPerServing: nutritionResolvers,
  Pack: packResolvers,
  PackCount: packCountResolvers,
  Plan: planResolvers,
  PlanConnection: planConnectionResolvers,
  PlanEdge: planEdgeResolvers,
  PlanFacts: planFactsResolvers,
  PlanTexts: planTextsResolvers,
  LateMeal: lateMealResolvers,
  PreviewLink: previewLinkResolvers,
  ScheduledChange: scheduledChangeResolvers,
  PrepSession: prepSessionResolvers,
  SessionComponent: sessionComponentResolvers,
  Problem: problemResolvers,
  Publisher: publisherResolvers,
  Quantity: quantityScalar,
  Query: queryResolvers,
  Route: routeResolvers,
  Subscription: subscriptionResolvers,
  SavedDraft: savedDraftResolvers,
  TextLine: textLineResolvers,
  ScaledComponent: scaledComponentResolvers,
  ScaledLine: scaledLineResolvers,
  ScaledMeal: scaledMealResolvers,
  ScaledPlan: scaledPlanResolvers,
  SessionTask: sessionTaskResolvers,
  ShoppingLine: shoppingLineResolvers,
  ShoppingList: shoppingListResolvers,
  Step: stepResolvers,
  StorageGuidance: storageGuidanceResolvers,
  Swap: swapResolvers,
  Use: useResolvers,
  Warning: warningResolvers,
  Webhook: webhookResolvers,
  WebhookDelivery: webhookDeliveryResolvers,
  WrittenText: writtenTextResolvers,
};
