import type { TemperatureUnit } from "../domain/quantity/temperature.js";
import type { Component, Route, Step } from "../domain/model/component.js";
import type { Food, FoodPart, Pack } from "../domain/model/food.js";
import type { Line, Swap } from "../domain/model/line.js";
import type { Credit } from "../domain/model/writers-words.js";
import type { Meal } from "../domain/model/plan.js";
import type { PackCount } from "../domain/shopping/cost.js";
import type { Image, StoredImage } from "../domain/model/image.js";
import type { KeepingRule } from "../domain/model/keeping.js";
import type {
  ScaledComponent,
  ScaledLine,
  ScaledMeal,
  ScaledPlan,
  ShoppingLine,
  ShoppingList,
  Use,
} from "../domain/plan/scaled.js";
import type { Household } from "../domain/model/household.js";
import type { NutrientCode } from "../domain/model/food.js";
import type { DishAsIngredient, FoodAsIngredient } from "../domain/nutrition/allergen-finding.js";
import type { AllergenFinding, AllergenStatement, LabelToRead } from "../domain/nutrition/allergens.js";
import type { DietStatement } from "../domain/nutrition/diets.js";
import type { LabelScheme } from "../domain/nutrition/label-rounding.js";
import type { NotEaten, NutrientAmount } from "../domain/nutrition/nutrients.js";
import type { NutritionOfMeals } from "../domain/plan/contents/contents.js";
import type { FoodsToday } from "../domain/plan/review/foods-today.js";
import type { LateMeal } from "../domain/plan/session/late-meals.js";
import type { SessionComponent } from "../domain/plan/session/split-session.js";
import type { CriticalTask, PrepSession, SessionTask } from "../domain/prep-session/session.js";
import type { Caution } from "../domain/storage/cautions.js";
import type { Basis, StorageAnswer, StorageGuidance, Subject } from "../domain/storage/guidance.js";
import type { HitFacts } from "../services/plans/listing/hit-facts.js";
import type { FoundPlans, PlanHit } from "../services/plans/listing/search-plans.js";
import type { Publisher, RevisionSummary } from "../services/deps.js";
import type { ShownTitle } from "../services/plans/titles-in-language.js";
import type { SavedDraft } from "../services/drafts/save-documents.js";
import type { KnownRules } from "../services/rules/find-rules.js";
import type { stateNutrition } from "../services/answers/state-contents.js";
import type { WarningNames } from "../exports/sentences/named-warning.js";
import type { Show, ShownAmount, ShownUnit } from "../exports/words/shown-amount.js";
import type { FrozenPlan } from "./frozen-plan.js";
import type { Problem, Warning } from "../domain/problem.js";

/** What a resolver of each type is handed: a domain value, and what it needs to find its neighbours. */
export type PublisherParent = Publisher;
export type PlanParent = RevisionSummary;
/** `language`: that of the reader which it was translated into; null: none. */
export type PlanTextsParent = ShownTitle & { readonly plan: PlanParent; readonly into: string | null };
/** A picture that was handed in, of a publisher by its slug. */
export type ImageParent = Image & { readonly stored: StoredImage; readonly publisher: string };
export type AmountParent = ShownAmount;
export type UnitParent = ShownUnit;

interface InPlan {
  readonly frozen: FrozenPlan;
}

interface Shown extends InPlan {
  readonly show: Show;
}

/** A text of the writer's, as written. */
export type WrittenTextParent = string;
export type CreditParent = Credit;
export type MealParent = Meal & InPlan;
export type ComponentParent = Component & InPlan;
export type RouteParent = Route & InPlan;
export type LineParent = Line & InPlan;
export type SwapParent = Swap & InPlan;
export type StepParent = Step;
export type KeepingRuleParent = KeepingRule;

export type { CatalogueFood as CatalogueFoodParent } from "../services/foods/find-catalogue-foods.js";

/** A page of plans; `found` left out: of revisions, of which nothing else is known. */
export interface PlanConnectionParent {
  readonly edges: readonly PlanEdgeParent[];
  readonly pageInfo: FoodConnectionParent["pageInfo"];
  readonly found?: FoundPlans;
}
export interface PlanEdgeParent {
  readonly cursor: string;
  readonly node: PlanParent;
  readonly hit?: PlanHit;
}
export type PlanFactsParent = HitFacts;

/** A page of foods, and what was searched for; null: nothing. */
export interface FoodConnectionParent {
  readonly edges: readonly { readonly cursor: string; readonly node: FoodParent }[];
  readonly pageInfo: {
    readonly hasNextPage: boolean;
    readonly hasPreviousPage: boolean;
    readonly startCursor: string | null;
    readonly endCursor: string | null;
  };
  readonly search: string | null;
}

/** `frozenIn` null: the food as known today; `locale`: BCP 47 tag of whoever reads it, null: as it was written. */
export type FoodParent = Food & { readonly frozenIn: RevisionSummary | null; readonly locale: string | null };
export type FoodPartParent = FoodPart & { readonly food: FoodParent };
/** `show` null: as it was written. */
export type PackParent = Pack & { readonly food: Food; readonly show: Show | null };

export interface ScaledPlanParent extends Shown {
  readonly scaled: ScaledPlan;
  readonly household: Household;
  /** Computed when first asked for, and once. */
  readonly keeping: () => Promise<StorageAnswer>;
  readonly today: FoodsToday;
  /** In force today. */
  readonly rules: KnownRules;
  readonly nutrition: () => Promise<PlanNutrition>;
}
type PlanNutrition = ReturnType<typeof stateNutrition>;
export interface StorageGuidanceParent {
  readonly guidance: StorageGuidance;
  /** The subject or a part of it, as a parent of its own type. */
  readonly find: (subject: Subject) => KeepableParent;
  /** Said when it is asked for. */
  readonly advice: () => readonly string[];
  /** null: asked for without a plan. */
  readonly plan: ScaledPlanParent | null;
}
export interface BasisParent {
  readonly basis: Basis;
  readonly find: StorageGuidanceParent["find"];
}
export interface ScaledMealParent extends Shown {
  readonly scaled: ScaledMeal;
  readonly plan: ScaledPlanParent;
}
export interface ScaledComponentParent extends Shown {
  readonly scaled: ScaledComponent;
}
export interface ScaledLineParent extends Shown {
  readonly scaled: ScaledLine;
}

export interface ShoppingListParent {
  readonly list: ShoppingList;
  readonly show: Show;
  /** Every plan the list was made for. */
  readonly plans: readonly FrozenPlan[];
}
export interface ShoppingLineParent {
  readonly line: ShoppingLine;
  readonly show: Show;
  readonly plans: readonly FrozenPlan[];
}
export interface UseParent extends Shown {
  readonly use: Use;
  readonly food: Food;
}
export type PackCountParent = PackCount & { readonly food: Food; readonly show: Show };

export type AllergenStatementParent = AllergenStatement & InPlan;
export type AllergenFindingParent = AllergenFinding & InPlan;
export type AsIngredientParent = DishAsIngredient & InPlan;
export type FoodAsIngredientParent = FoodAsIngredient & InPlan;
export type LabelToReadParent = LabelToRead & InPlan;
export type DietParent = DietStatement & InPlan;
/** `labelScheme`: of the region of the answer; null: none is known. */
export type NutritionParent = NutritionOfMeals & InPlan & { readonly labelScheme: LabelScheme | null };
export type NotEatenParent = NotEaten & InPlan;
export interface NutrientFigureParent extends InPlan {
  readonly nutrient: NutrientCode;
  readonly figure: NutrientAmount;
  readonly labelScheme: LabelScheme | null;
}
export type CautionParent = Caution & InPlan;
export interface PrepSessionParent extends InPlan {
  readonly session: PrepSession;
  /** Days after the first session. */
  readonly day: number;
  readonly components: readonly SessionComponent[];
  readonly late: readonly LateMeal[];
  /** Who share the work. */
  readonly cooks: number;
  /** Those of the reader's region. */
  readonly degrees: TemperatureUnit | undefined;
  /** In whose language sentences are. */
  readonly locale: string;
}
export type LateMealParent = LateMeal & InPlan;
export type SessionComponentParent = SessionComponent & InPlan;
export interface SessionTaskParent extends InPlan {
  readonly degrees: TemperatureUnit | undefined;
  readonly task: SessionTask;
}
export interface CriticalTaskParent {
  readonly critical: CriticalTask;
  readonly parent: PrepSessionParent;
}
export type { PlacedFinding as FindingParent } from "../domain/plan/check/finding.js";
export type { ServingsRow as ServingsRowParent } from "../domain/plan/servings-table.js";

/** A warning, in whose language it is said, and what the reader calls the things in it. */
export type WarningParent = Warning & { readonly locale: string; readonly names: WarningNames };
export interface ScalingPayloadParent {
  readonly scaled: ScaledPlanParent | null;
  readonly problems: readonly ProblemParent[];
}
export interface ShoppingPayloadParent {
  readonly list: ShoppingListParent | null;
  readonly problems: readonly ProblemParent[];
}
export type { Webhook as WebhookParent, WebhookDelivery as WebhookDeliveryParent } from "../services/deps.js";
export type { Change as ChangeParent } from "../services/deps.js";
/** A problem, and in whose language it is said; left out or null: in English. */
export type ProblemParent = Problem & { readonly locale?: string | null };
export type { DraftSummary as DraftParent } from "../services/deps.js";
export type { DraftPreview as DraftPreviewParent } from "../services/previews/preview-draft.js";
export type { ScheduledChange as ScheduledChangeParent } from "../services/deps.js";
export type { PreviewLink as PreviewLinkParent } from "../services/deps.js";
export type SavedDraftParent = SavedDraft & { readonly publisher: string };
export type { AccessToken as AccessTokenParent } from "../services/deps.js";
export type { AuditEntry as AuditEntryParent } from "../services/access/admin-lists.js";

type Tagged<T, Name extends string> = T & { readonly __typename: Name };
export type NodeParent =
  | Tagged<PublisherParent, "Publisher">
  | Tagged<PlanParent, "Plan">
  | Tagged<MealParent, "Meal">
  | Tagged<ComponentParent, "Component">
  | Tagged<FoodParent, "Food">;
export type KeepableParent =
  Tagged<MealParent, "Meal"> | Tagged<ComponentParent, "Component"> | Tagged<FoodParent, "Food">;
export type { Feed as FeedParent } from "../services/deps.js";
export type { FoundImport as ImportRunParent } from "../services/imports/find-imports.js";
export type { LineExplained as TextLineParent } from "../services/drafts/read-text-lines.js";
