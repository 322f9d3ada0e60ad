import type { GraphQLResolveInfo, GraphQLScalarType, GraphQLScalarTypeConfig } from 'graphql';
import type { AccessTokenParent, AllergenFindingParent, AllergenStatementParent, AmountParent, AsIngredientParent, ImageParent, FoodAsIngredientParent, LabelToReadParent, AuditEntryParent, BasisParent, CatalogueFoodParent, FoodConnectionParent, PlanConnectionParent, PlanEdgeParent, PlanFactsParent, CautionParent, ChangeParent, ComponentParent, CreditParent, CriticalTaskParent, DietParent, DraftParent, DraftPreviewParent, FeedParent, FindingParent, FoodParent, FoodPartParent, ImportRunParent, KeepableParent, KeepingRuleParent, LineParent, MealParent, NodeParent, NotEatenParent, NutrientFigureParent, NutritionParent, PackParent, PackCountParent, PlanParent, PrepSessionParent, ProblemParent, PublisherParent, RouteParent, PreviewLinkParent, ScheduledChangeParent, SavedDraftParent, TextLineParent, ScaledComponentParent, ScaledLineParent, ScaledMealParent, ScaledPlanParent, ScalingPayloadParent, ShoppingPayloadParent, ServingsRowParent, LateMealParent, SessionComponentParent, SessionTaskParent, ShoppingLineParent, ShoppingListParent, StepParent, StorageGuidanceParent, SwapParent, UnitParent, UseParent, WebhookParent, WebhookDeliveryParent, PlanTextsParent, WrittenTextParent, WarningParent } from '../parent-types.js';
import type { RuleSetSummary } from '../../services/deps.js';
import type { Context } from '../context.js';
export type Maybe<T> = T | null;
export type InputMaybe<T> = T | null | undefined;
export type Omit<T, K extends keyof T> = Pick<T, Exclude<keyof T, K>>;
export type RequireFields<T, K extends keyof T> = Omit<T, K> & { [P in K]-?: NonNullable<T[P]> };
/** All built-in and custom scalars, mapped to their actual values */
export type Scalars = {
  ID: { input: string; output: string; }
  String: { input: string; output: string; }
  Boolean: { input: boolean; output: boolean; }
  Int: { input: number; output: number; }
  Float: { input: number; output: number; }
  Date: { input: string; output: string; }
  DateTime: { input: string; output: Date | string; }
  Quantity: { input: string; output: string; }
};

/** An access token, without its secret. */
export type AccessToken = {
  readonly __typename?: 'AccessToken';
  /** When it was made. */
  readonly createdAt: Scalars['DateTime']['output'];
  /** When it expires. Null if it does not expire. */
  readonly expiresAt: Maybe<Scalars['DateTime']['output']>;
  /** The part of the token that is no secret: the eight characters after `prepwright_`. */
  readonly id: Scalars['ID']['output'];
  /** When it was last used, to the minute. Null if it has not been used. */
  readonly lastUsedAt: Maybe<Scalars['DateTime']['output']>;
  /** What it is for. */
  readonly name: Scalars['String']['output'];
  /** The points that it may use in a minute, if that is fewer than the service gives every token. Null if it has no limit of its own. */
  readonly pointsPerMinute: Maybe<Scalars['Int']['output']>;
  /** Its publisher. Null if it is the operator's. */
  readonly publisher: Maybe<Publisher>;
  /** When it was revoked. Null if it is not revoked. */
  readonly revokedAt: Maybe<Scalars['DateTime']['output']>;
  /** What it may do. */
  readonly scopes: ReadonlyArray<Scope>;
  /** What its requests came to: a row for each day (UTC) with requests, newest first. Some seconds late. Days are kept for 400 days. */
  readonly usage: ReadonlyArray<TokenUsage>;
};


/** An access token, without its secret. */
export type AccessTokenUsageArgs = {
  days?: Scalars['Int']['input'];
};

/** A page of access tokens. */
export type AccessTokenConnection = {
  readonly __typename?: 'AccessTokenConnection';
  /** The entries of this page. */
  readonly edges: ReadonlyArray<AccessTokenEdge>;
  /** The place of this page in the list. */
  readonly pageInfo: PageInfo;
};

/** One access token in a list. */
export type AccessTokenEdge = {
  readonly __typename?: 'AccessTokenEdge';
  /** An opaque cursor for this place in the list. */
  readonly cursor: Scalars['String']['output'];
  /** The token. */
  readonly node: AccessToken;
};

/** A food of the open food table to take over. */
export type AdoptFoodInput = {
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
  /** Its English name. Default: as the table describes it. */
  readonly name?: InputMaybe<Scalars['String']['input']>;
  /** Its number in the table, five digits; `catalogueFoods(search:)` finds it. */
  readonly ndbNo: Scalars['String']['input'];
  /** Slug of the publisher. */
  readonly publisher: Scalars['String']['input'];
  /** Slug of the new food. Default: made from its name. */
  readonly slug?: InputMaybe<Scalars['String']['input']>;
};

/** One allergen of the lists. */
export type AllergenFinding = {
  readonly __typename?: 'AllergenFinding';
  /** Whether any of the foods is made with it. Says nothing of traces. */
  readonly asIngredient: AsIngredient;
  /** Code of the allergen. */
  readonly code: Scalars['String']['output'];
  /** Foods that contain it. */
  readonly contains: ReadonlyArray<Food>;
  /** Foods whose own data say they may contain it. */
  readonly mayContain: ReadonlyArray<Food>;
  /** The name that it must be declared by. */
  readonly name: Scalars['String']['output'];
  /** What is known, over all foods: the least safe of `asIngredient` and `traces`. Unknown spreads. */
  readonly presence: AllergenPresence;
  /** The amount from which it must be declared. Null if any amount must be. */
  readonly threshold: Maybe<Scalars['String']['output']>;
  /** Whether traces are possible: UNKNOWN until it is stated of every food, never CONTAINS. */
  readonly traces: AllergenPresence;
  /** Foods of which it is not known. */
  readonly unknown: ReadonlyArray<Food>;
};

/** What a law says must be declared. */
export type AllergenList = {
  readonly __typename?: 'AllergenList';
  /** Code of the list. */
  readonly code: Scalars['String']['output'];
  /** The law. */
  readonly law: Scalars['String']['output'];
  /** Its region. */
  readonly region: Scalars['String']['output'];
};

/** A law's list that names an allergen. */
export type AllergenNaming = {
  readonly __typename?: 'AllergenNaming';
  /** The law. */
  readonly law: Scalars['String']['output'];
  /** Code of the list. */
  readonly list: Scalars['String']['output'];
  /** The name that it must be declared by, in the locale. */
  readonly name: Scalars['String']['output'];
  /** Its region: see `regionsWithRules`. */
  readonly region: Scalars['String']['output'];
};

/** What is known about an allergen in a food or a meal. */
export type AllergenPresence =
  /** It is contained. */
  | 'CONTAINS'
  /** A source states that it is not in there. */
  | 'DOES_NOT_CONTAIN'
  /** Traces are possible. */
  | 'MAY_CONTAIN'
  /** Nothing is stated. Never treat it as absent. */
  | 'UNKNOWN';

/** How the region asked for and the allergen lists used belong together. */
export type AllergenReach =
  /** The list is that of the region. */
  | 'REGION'
  /** No region was given: everything on any list. */
  | 'REGION_NOT_GIVEN'
  /** The region has no list here: everything on any list. */
  | 'REGION_WITHOUT_LIST';

/**
 * Allergens, as far as the foods' own data say. Unknown is never "free from": read the labels of what you buy, and follow
 * your local rules for declaring allergens.
 */
export type AllergenStatement = {
  readonly __typename?: 'AllergenStatement';
  /** Contained, but on none of the lists. */
  readonly alsoContains: ReadonlyArray<Scalars['String']['output']>;
  /** The region that the reader asked for. Null if the reader named none. */
  readonly asked: Maybe<Scalars['String']['output']>;
  /** One entry for every allergen on the lists. */
  readonly findings: ReadonlyArray<AllergenFinding>;
  /** Foods whose labels are to be read, and for which allergens: what is not known as an ingredient, by food. */
  readonly labelsToRead: ReadonlyArray<LabelToRead>;
  /** The lists that are answered to. */
  readonly lists: ReadonlyArray<AllergenList>;
  /** Whose list was used. */
  readonly reach: AllergenReach;
  /** Who named the region whose list was used. Null if nobody did; every allergen of any list is then answered. */
  readonly whose: Maybe<RegionOwner>;
};

/** How much of something. */
export type Amount = {
  readonly __typename?: 'Amount';
  /** `value` as an exact fraction, such as `1/3`, where it is one. */
  readonly exact: Maybe<Scalars['String']['output']>;
  /** `value` in grams, where it is a mass or the food's facts tell. */
  readonly grams: Maybe<Scalars['Float']['output']>;
  /** `value` in millilitres, where it is a volume or the food's facts tell. */
  readonly millilitres: Maybe<Scalars['Float']['output']>;
  /** Ready to show to a reader: rounded for a kitchen, in the reader's measures and language. */
  readonly text: Scalars['String']['output'];
  /** What `value` counts. */
  readonly unit: Unit;
  /** The upper end of a range. Null if it is not a range. */
  readonly upTo: Maybe<Scalars['Float']['output']>;
  /** The number, in `unit`. For a range, its lower end. */
  readonly value: Scalars['Float']['output'];
};

/** How many of an appliance there are. */
export type ApplianceInput = {
  /** Code of an appliance that the plan uses, such as `oven-shelf`. */
  readonly appliance: Scalars['String']['input'];
  /** How many, from 0 to 100: shelves, rings, blenders. */
  readonly count: Scalars['Int']['input'];
};

/** Whether a dish or a food is made with an allergen, what that rests on, and who says so. */
export type AsIngredient = {
  readonly __typename?: 'AsIngredient';
  /** What the answer rests on; of a dish without it, the foundation that is least directly said. Null where it is not known. */
  readonly basis: Maybe<IngredientBasis>;
  /** The answer for each food, in the order of the dish. */
  readonly foods: ReadonlyArray<FoodAsIngredient>;
  /** Those of `unknown` that are called gluten-free, which says nothing of wheat, rye, barley or oats as such. Elsewhere empty. */
  readonly glutenFreeOnly: ReadonlyArray<Food>;
  /** CONTAINS, DOES_NOT_CONTAIN or UNKNOWN. Never MAY_CONTAIN, which is about traces. */
  readonly presence: AllergenPresence;
  /** Who says so. Null where it is not known. */
  readonly source: Maybe<Source>;
  /** Foods that say nothing of it: look at their labels. */
  readonly unknown: ReadonlyArray<Food>;
};

/** Whether a step needs the cook. */
export type Attention =
  /** The cook is busy with it. */
  | 'HANDS_ON'
  /** It runs alone. */
  | 'UNATTENDED';

/** Kinds of write. */
export type AuditAction =
  /** An import was cancelled. */
  | 'CANCEL_IMPORT'
  /** What was scheduled was cancelled. */
  | 'CANCEL_SCHEDULED'
  /** What was scheduled was moved to another time. */
  | 'CHANGE_SCHEDULED'
  /** A plan was published anew, with a note for its readers. */
  | 'CORRECT_PLAN'
  /** A link was made that shows a draft. */
  | 'CREATE_PREVIEW_LINK'
  /** A publisher was made. */
  | 'CREATE_PUBLISHER'
  /** An access token was made. */
  | 'CREATE_TOKEN'
  /** A webhook was made. */
  | 'CREATE_WEBHOOK'
  /** A webhook was removed. */
  | 'DELETE_WEBHOOK'
  /** A draft was thrown away. */
  | 'DISCARD_DRAFT'
  /** Everything of a publisher was exported. */
  | 'EXPORT_PUBLISHER'
  /** An import saved a draft, and published it where its feed says so. */
  | 'IMPORT_DRAFT'
  /** An archive was imported into a publisher. */
  | 'IMPORT_PUBLISHER'
  /** What was scheduled could not be carried out. */
  | 'KEEP_BACK_PLAN'
  /** A set of published rules was loaded. */
  | 'LOAD_RULE_SET'
  /** A plan was published. */
  | 'PUBLISH_PLAN'
  /** A file was handed in for a feed. */
  | 'RECEIVE_FILE'
  /** A feed was removed. */
  | 'REMOVE_FEED'
  /** A picture was removed. */
  | 'REMOVE_IMAGE'
  /** Something was sent again to a webhook. */
  | 'REPLAY_DELIVERY'
  /** A link that shows a draft was taken back. */
  | 'REVOKE_PREVIEW_LINK'
  /** An access token was revoked. */
  | 'REVOKE_TOKEN'
  /** A webhook was given a new secret. */
  | 'ROTATE_WEBHOOK_SECRET'
  /** Documents were saved as drafts. */
  | 'SAVE_DRAFTS'
  /** A feed was saved. */
  | 'SAVE_FEED'
  /** Foods were saved. */
  | 'SAVE_FOODS'
  /** A publication or a withdrawal was scheduled. */
  | 'SCHEDULE_PLAN'
  /** A row that an import had quarantined was resolved. */
  | 'SETTLE_ROW'
  /** An import was asked for. */
  | 'START_IMPORT'
  /** What an import did to a draft was taken back. */
  | 'UNDO_IMPORT'
  /** A publisher was given another name. */
  | 'UPDATE_PUBLISHER'
  /** A webhook was stopped or let go on. */
  | 'UPDATE_WEBHOOK'
  /** A picture was handed in, or given another name. */
  | 'UPLOAD_IMAGE'
  /** A revision of a plan was withdrawn. */
  | 'WITHDRAW_PLAN';

/** Who did something. */
export type AuditAuthor = {
  readonly __typename?: 'AuditAuthor';
  /** What kind of author. */
  readonly kind: AuditAuthorKind;
  /** Name of the token or the program. Null if it was a token that is none of yours. */
  readonly name: Maybe<Scalars['String']['output']>;
  /** Id of the token. Null if it was none of yours. */
  readonly token: Maybe<Scalars['ID']['output']>;
};

/** Kinds of author. */
export type AuditAuthorKind =
  /** A token of the operator. */
  | 'OPERATOR'
  /** The service itself: its jobs, its demo, its command line. */
  | 'PROGRAM'
  /** A token of the publisher. */
  | 'TOKEN';

/** One write: who, what, when. */
export type AuditEntry = {
  readonly __typename?: 'AuditEntry';
  /** What was done. */
  readonly action: AuditAction;
  /** Version of the draft or number of the revision after. Null where there is none. */
  readonly after: Maybe<Scalars['Int']['output']>;
  /** When it was done. */
  readonly at: Scalars['DateTime']['output'];
  /** Version of the draft or number of the revision before. Null where there was none. */
  readonly before: Maybe<Scalars['Int']['output']>;
  /** The author of the write. */
  readonly by: AuditAuthor;
  /** Number of the entry. */
  readonly id: Scalars['ID']['output'];
  /** Its publisher. Null for what all publishers share. */
  readonly publisher: Maybe<Publisher>;
  /** The request it was done in, as its header `x-request-id` said. Null outside of requests. */
  readonly requestId: Maybe<Scalars['String']['output']>;
  /** Slug of that, or its id if it has no slug. */
  readonly subject: Scalars['String']['output'];
  /** What it was done to. */
  readonly subjectKind: AuditSubjectKind;
};

/** A page of the audit trail. */
export type AuditEntryConnection = {
  readonly __typename?: 'AuditEntryConnection';
  /** The entries of this page. */
  readonly edges: ReadonlyArray<AuditEntryEdge>;
  /** The place of this page in the list. */
  readonly pageInfo: PageInfo;
};

/** One entry in the list. */
export type AuditEntryEdge = {
  readonly __typename?: 'AuditEntryEdge';
  /** An opaque cursor for this place in the list. */
  readonly cursor: Scalars['String']['output'];
  /** The entry. */
  readonly node: AuditEntry;
};

/** What a write is about. */
export type AuditSubjectKind =
  /** The draft of a component, by its slug. */
  | 'COMPONENT_DRAFT'
  /** A delivery to a webhook, by its id. */
  | 'DELIVERY'
  /** A feed, by its slug. */
  | 'FEED'
  /** A food, by its slug. */
  | 'FOOD'
  /** The draft of a food of the publisher's own, by its slug. */
  | 'FOOD_DRAFT'
  /** A picture, by the name of its file or its hash. */
  | 'IMAGE'
  /** An import, by its id. */
  | 'IMPORT'
  /** Packs of a publisher's own. */
  | 'PACKS_DRAFT'
  /** A published plan, by its slug. */
  | 'PLAN'
  /** The draft of a plan, by its slug. */
  | 'PLAN_DRAFT'
  /** A link that shows a draft, by its id. */
  | 'PREVIEW_LINK'
  /** A publisher, by its slug. */
  | 'PUBLISHER'
  /** A set of published rules, by its code. */
  | 'RULE_SET'
  /** A scheduled publication or withdrawal, by its id. */
  | 'SCHEDULED'
  /** An access token, by its id. */
  | 'TOKEN'
  /** The draft of a translation, by its slug. */
  | 'TRANSLATION_DRAFT'
  /** A webhook, by its id. */
  | 'WEBHOOK';

/** One statement about how long something keeps. */
export type Basis = {
  readonly __typename?: 'Basis';
  /** No figure is published for this kind of food; that of a wider kind stands in. */
  readonly byAnalogy: Scalars['Boolean']['output'];
  /** It holds only then. */
  readonly condition: Maybe<Scalars['String']['output']>;
  /** How many days it gives after the day of making. Of a printed range the upper end. */
  readonly days: Scalars['Float']['output'];
  /** The lower end of a printed range, by which plans go: 3 of `3 to 4 days`. Null if it prints no range. */
  readonly daysFrom: Maybe<Scalars['Float']['output']>;
  /** This one decides. */
  readonly decides: Scalars['Boolean']['output'];
  /** What else should be known about it. */
  readonly note: Maybe<Scalars['String']['output']>;
  /** What it is about: the subject, or the part it inherits from. */
  readonly of: Keepable;
  /** The length as its source prints it. */
  readonly printed: Maybe<Scalars['String']['output']>;
  /** What it protects. */
  readonly purpose: KeepingPurpose;
  /** Region of the authority. */
  readonly region: Maybe<Scalars['String']['output']>;
  /** The source of the figure or statement. */
  readonly source: Source;
  /** Anybody can look it up. False for practice, the writer's own experience, and invented figures. */
  readonly sourced: Scalars['Boolean']['output'];
  /** The storage temperature it assumes, in its own words. */
  readonly temperature: Maybe<Scalars['String']['output']>;
};

/** The sizes a component can be made in, counted in batches. */
export type BatchRule = {
  readonly __typename?: 'BatchRule';
  /** Sizes go up in this step. Null if any size can be made. */
  readonly increment: Maybe<Scalars['Float']['output']>;
  /** The most one load holds; more is made in several loads. Null if there is no limit. */
  readonly max: Maybe<Scalars['Float']['output']>;
  /** The least. */
  readonly min: Scalars['Float']['output'];
};

/** Which one to cancel. */
export type CancelScheduledInput = {
  /** Its id. */
  readonly id: Scalars['ID']['input'];
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
};

/** Why something scheduled was cancelled. */
export type CancelledBecause =
  /** Somebody asked for that. */
  | 'ASKED'
  /** Another was scheduled for the same plan. */
  | 'REPLACED'
  /** The access token that asked for it was revoked. */
  | 'TOKEN_REVOKED';

/** A food of the open food table, as it is printed there. A food that names its number inherits what it does not say itself. */
export type CatalogueFood = {
  readonly __typename?: 'CatalogueFood';
  /** The aisle of the shop. */
  readonly aisle: Scalars['String']['output'];
  /** How heavy a millilitre of it is, by form, from its cups and spoons. */
  readonly densities: ReadonlyArray<FoodDensity>;
  /** What the table calls it. */
  readonly description: Scalars['String']['output'];
  /** What is left of it as purchased once its refuse is thrown away. Empty if the table does not say. */
  readonly edible: ReadonlyArray<EdiblePortion>;
  /** Title of the edition its row stands in; a weight from another one says so itself. */
  readonly edition: Scalars['String']['output'];
  /** Its other household measures, of edible material without refuse. */
  readonly measures: ReadonlyArray<FoodMeasure>;
  /** Its number in the table, five digits. */
  readonly ndbNo: Scalars['String']['output'];
  /** In 100 g of edible portion. One that is not listed was not measured; it is never zero. */
  readonly nutrients: ReadonlyArray<FoodNutrient>;
  /** Other names the table gives. */
  readonly otherNames: ReadonlyArray<Scalars['String']['output']>;
};

/** A page of the open food table. */
export type CatalogueFoodConnection = {
  readonly __typename?: 'CatalogueFoodConnection';
  /** The foods, each with its cursor. */
  readonly edges: ReadonlyArray<CatalogueFoodEdge>;
  /** The place of the page in the list. */
  readonly pageInfo: PageInfo;
};

/** A food of the open table in a page. */
export type CatalogueFoodEdge = {
  readonly __typename?: 'CatalogueFoodEdge';
  /** An opaque cursor for this place in the list. */
  readonly cursor: Scalars['String']['output'];
  /** The food. */
  readonly node: CatalogueFood;
};

/** A caution, with where it comes from. It does not replace local food-safety codes or licensed practice. */
export type Caution = {
  readonly __typename?: 'Caution';
  /** What it is about. Empty if it is about everything. */
  readonly about: ReadonlyArray<Keepable>;
  /** What it is. */
  readonly code: Scalars['String']['output'];
  /** The published rules it rests on. */
  readonly restsOn: ReadonlyArray<Source>;
  /** The source of the figure or statement. */
  readonly source: Source;
  /** The words, the same in every output. */
  readonly text: Scalars['String']['output'];
};

/** Something that happened to a plan. */
export type Change = {
  readonly __typename?: 'Change';
  /** When, by the clock of the service. The order of the list is that of commits, which may differ by moments. */
  readonly at: Scalars['DateTime']['output'];
  /** Unique; the same in a webhook that tells of it. */
  readonly id: Scalars['ID']['output'];
  /** What happened. */
  readonly kind: ChangeKind;
  /** The plan, in the revision it is about. */
  readonly plan: Plan;
};

/** A page of changes. */
export type ChangeConnection = {
  readonly __typename?: 'ChangeConnection';
  /** The entries of this page. */
  readonly edges: ReadonlyArray<ChangeEdge>;
  /** The place of this page in the list. */
  readonly pageInfo: PageInfo;
};

/** One change in a list. */
export type ChangeEdge = {
  readonly __typename?: 'ChangeEdge';
  /** An opaque cursor for this place in the list. It never expires. */
  readonly cursor: Scalars['String']['output'];
  /** The change. */
  readonly node: Change;
};

/** What happened to a plan; for webhooks, also to an import. */
export type ChangeKind =
  /** An import of a feed of the publisher ended, however it did. Only webhooks tell of it: `changes` lists plans alone. */
  | 'IMPORT_ENDED'
  /** A review found that rules or facts of today tell readers of a published revision something else than before. */
  | 'PLAN_ANSWER_CHANGED'
  /** A revision was published that says what it changes. */
  | 'PLAN_CORRECTED'
  /** A publication or withdrawal that was scheduled could not be carried out. Only webhooks tell of it: `changes` lists plans alone. */
  | 'PLAN_KEPT_BACK'
  /** As above, and what readers were told before is less safe: an allergen, a diet, a shorter keeping time, more sodium. */
  | 'PLAN_LESS_SAFE'
  /** A revision was published. */
  | 'PLAN_PUBLISHED'
  /** A revision was withdrawn. */
  | 'PLAN_WITHDRAWN';

/** Another time for what waits. */
export type ChangeScheduledInput = {
  /** When, on the clock of `zone`: `2026-12-24T06:00`. An hour that the clocks repeat needs its offset: `2026-10-25T02:30+01:00`. */
  readonly at: Scalars['String']['input'];
  /** Its id. */
  readonly id: Scalars['ID']['input'];
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
  /** IANA name of the time zone, such as `Europe/Berlin`. */
  readonly zone: Scalars['String']['input'];
};

/** A published plan of which readers are told something else than it was frozen, since rules or facts changed. */
export type ChangedPlan = {
  readonly __typename?: 'ChangedPlan';
  /** When that was first found. */
  readonly changedAt: Scalars['DateTime']['output'];
  /** What changed for readers, the less safe first; the first 200. */
  readonly differences: ReadonlyArray<PlanDifference>;
  /** What was said before is less careful than what is said now. */
  readonly lessSafe: Scalars['Boolean']['output'];
  /** The plan, in that revision. */
  readonly plan: Plan;
};

/** Something made ahead, as one plan revision froze it. */
export type Component = Node & {
  readonly __typename?: 'Component';
  /** The sizes it can be made in. */
  readonly batch: BatchRule;
  /** The same in all revisions of the plan that have a component of that slug, and in all languages. */
  readonly componentId: Scalars['ID']['output'];
  /** Whom or what it leans on. */
  readonly credits: ReadonlyArray<Credit>;
  /** Things to have at hand that are no appliances, such as a large baking tray. */
  readonly equipment: ReadonlyArray<Scalars['String']['output']>;
  /** Opaque id, for `node`. Another one for readers of another language than the plan's own: `componentId` is the same for all. */
  readonly id: Scalars['ID']['output'];
  /** A picture of the component. Null if there is none. */
  readonly image: Maybe<Image>;
  /** What its writer says of it before anything else. Null if there is none. */
  readonly introduction: Maybe<WrittenText>;
  /** How long it keeps, as its writer states it. */
  readonly keeping: ReadonlyArray<KeepingRule>;
  /** What goes into one batch. */
  readonly lines: ReadonlyArray<Line>;
  /** The meals of the plan whose lines name it. */
  readonly meals: ReadonlyArray<Meal>;
  /** What its writer notes beside it. Null if there is none. */
  readonly notes: Maybe<WrittenText>;
  /** The plan revision that froze it. */
  readonly plan: Plan;
  /** Other ways to get it: a tin, a jar, a quicker method. */
  readonly routes: ReadonlyArray<Route>;
  /** Short name, unique for its publisher. */
  readonly slug: Scalars['String']['output'];
  /** How one batch is made. */
  readonly steps: ReadonlyArray<Step>;
  /**
   * How long it keeps, made as written, where it is best kept first, by the published rules of today or of the day it is
   * made. It keeps as the shortest of its parts. Empty if nobody says of it or of a part, which is no promise.
   */
  readonly storage: ReadonlyArray<StorageGuidance>;
  /** The writer's tips. Null if there is none. */
  readonly tips: Maybe<WrittenText>;
  /** Title. */
  readonly title: Scalars['String']['output'];
  /** What one batch gives. */
  readonly yield: Amount;
  /** Who measured the yield. */
  readonly yieldSource: Source;
};


/** Something made ahead, as one plan revision froze it. */
export type ComponentStorageArgs = {
  kitchen?: KitchenKind;
  madeAt: InputMaybe<MomentInput>;
  region: InputMaybe<Scalars['String']['input']>;
};

/** Which draft corrects what was published. */
export type CorrectPlanInput = {
  /** What readers of the revisions before should know: what was wrong, and what is right. */
  readonly changeNote: Scalars['String']['input'];
  /** The version of the plan's draft that was read. */
  readonly expectedVersion: Scalars['Int']['input'];
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
  /** Slug of the publisher. */
  readonly publisher: Scalars['String']['input'];
  /** Slug of the plan. */
  readonly slug: Scalars['String']['input'];
};

/** What something costs. A food whose price nobody knows is in no sum. */
export type Cost = {
  readonly __typename?: 'Cost';
  /** What the till asks for. */
  readonly atTill: Maybe<Money>;
  /** What stays in the cupboard. */
  readonly carriedOver: Maybe<Money>;
  /** ISO 4217 code. Null if no price is known. */
  readonly currency: Maybe<Scalars['String']['output']>;
  /** `used` for each serving. */
  readonly perServing: Maybe<Money>;
  /** Slugs of the foods without a price. */
  readonly unpriced: ReadonlyArray<Scalars['String']['output']>;
  /** The share of it that these servings eat. */
  readonly used: Maybe<Money>;
};

/** The most that a serving may cost. */
export type CostLimit = {
  /** A decimal number, such as "4.50". */
  readonly amount: Scalars['String']['input'];
  /** ISO 4217 code. */
  readonly currency: Scalars['String']['input'];
};

/** A draft to show. */
export type CreatePreviewLinkInput = {
  /** The number of days that it works: 1 to 90, and no longer than the access token that makes it. Default: 7, or as long as that token. */
  readonly days?: InputMaybe<Scalars['Int']['input']>;
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
  /** Slug of the publisher. */
  readonly publisher: Scalars['String']['input'];
  /** Slug of the plan. */
  readonly slug: Scalars['String']['input'];
};

/** A link that was made, or what was wrong. */
export type CreatePreviewLinkPayload = {
  readonly __typename?: 'CreatePreviewLinkPayload';
  /** Null if there were problems. */
  readonly link: Maybe<PreviewLink>;
  /**
   * Path of the page, below the address of the service; `/list` after it is the shopping list. Whoever has it sees the draft, so send it only to
   * them. It is shown this once. Null if there were problems, or if this answer is given again because of its idempotency key.
   */
  readonly path: Maybe<Scalars['String']['output']>;
  /** Empty if all went well. */
  readonly problems: ReadonlyArray<Problem>;
};

/** A new publisher. */
export type CreatePublisherInput = {
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
  /** Name shown to readers. */
  readonly name: Scalars['String']['input'];
  /** Short name for addresses: lower-case letters and digits, words joined by hyphens. It can never be changed. */
  readonly slug: Scalars['String']['input'];
};

/** A new access token. */
export type CreateTokenInput = {
  /** When it expires: no later than the token that creates it, whose expiry is also the default. */
  readonly expiresAt?: InputMaybe<Scalars['DateTime']['input']>;
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
  /** What it is for, to tell it from others: such as `newsletter script`. */
  readonly name: Scalars['String']['input'];
  /** The points that it may use in a minute: 1,000 to 100,000,000, and never more than the service gives every token. Default: as many as that. */
  readonly pointsPerMinute?: InputMaybe<Scalars['Int']['input']>;
  /** Slug of the publisher it is for. Default: a token of the operator, which only the operator may make. */
  readonly publisher?: InputMaybe<Scalars['String']['input']>;
  /** Its scopes, at least one. No scope includes another. */
  readonly scopes: ReadonlyArray<Scope>;
};

/** A token that was made, or what was wrong. */
export type CreateTokenPayload = {
  readonly __typename?: 'CreateTokenPayload';
  /** Empty on success. */
  readonly problems: ReadonlyArray<Problem>;
  /**
   * The token itself, to be sent as `Authorization: Bearer …`. It is shown this once and cannot be found out again. Null if there
   * were problems, or if this answer is given again because of its idempotency key: revoke the token then, and make another.
   */
  readonly secret: Maybe<Scalars['String']['output']>;
  /** Null if there were problems. */
  readonly token: Maybe<AccessToken>;
};

/** A new webhook. */
export type CreateWebhookInput = {
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
  /** The kinds of change that it is told of. Default, and if empty: all. */
  readonly kinds?: InputMaybe<ReadonlyArray<ChangeKind>>;
  /** Slug of the publisher whose changes it is told of. */
  readonly publisher: Scalars['String']['input'];
  /** The address to call: it begins with https://, on a public host. */
  readonly url: Scalars['String']['input'];
};

/** Whom or what a plan or a component leans on. */
export type Credit = {
  readonly __typename?: 'Credit';
  /** It was changed, beyond being quoted. */
  readonly adapted: Scalars['Boolean']['output'];
  /** Its licence, as its owner names it. Null if it is not stated. */
  readonly licence: Maybe<Scalars['String']['output']>;
  /** Whose it is, or what it is called. */
  readonly name: Scalars['String']['output'];
  /** Where to find it, with http or https. Null if it is not stated. */
  readonly url: Maybe<Scalars['String']['output']>;
};

/** A task that decides how long the session is. */
export type CriticalTask = {
  readonly __typename?: 'CriticalTask';
  /** What it waits for. */
  readonly because: StartReason;
  /** What it is. */
  readonly task: SessionTask;
  /** The same as a sentence. */
  readonly text: Scalars['String']['output'];
  /** The tasks it waits for. */
  readonly waitsFor: ReadonlyArray<SessionTask>;
};

/** A webhook that was removed, or what was wrong. */
export type DeleteWebhookPayload = {
  readonly __typename?: 'DeleteWebhookPayload';
  /** Id of the webhook that was removed. Null if there were problems. */
  readonly deleted: Maybe<Scalars['ID']['output']>;
  /** Empty on success. */
  readonly problems: ReadonlyArray<Problem>;
};

/** The state of a delivery. */
export type DeliveryState =
  /** Given up after ten tries, or because the address is gone. `replayWebhookDelivery` sends it again. */
  | 'DEAD'
  /** Answered with 2xx. */
  | 'DELIVERED'
  /** To be sent, or to be sent again. */
  | 'PENDING';

/** A dish and a diet. */
export type Diet = {
  readonly __typename?: 'Diet';
  /** Foods that break it. */
  readonly breaks: ReadonlyArray<Food>;
  /** What the law of the region ties the claim to. */
  readonly claims: ReadonlyArray<DietClaim>;
  /** Code, as `HouseholdInput.diets` takes it. */
  readonly code: Scalars['String']['output'];
  /** Null if it is not known. */
  readonly fits: Maybe<Scalars['Boolean']['output']>;
  /** What is stated; never a promise. */
  readonly name: Scalars['String']['output'];
  /** Traces of what breaks it: UNKNOWN until stated of every food. `fits` is about ingredients; where a label warns of traces it is null. */
  readonly traces: AllergenPresence;
  /** Foods of which it is not known. */
  readonly unknown: ReadonlyArray<Food>;
};

/** What a law ties a claim to. */
export type DietClaim = {
  readonly __typename?: 'DietClaim';
  /** The law. */
  readonly law: Scalars['String']['output'];
  /** The source of the figure or statement. */
  readonly source: Source;
  /** The number it sets. */
  readonly threshold: Scalars['String']['output'];
};

/** What a number measures. */
export type Dimension =
  /** Count, held in pieces. */
  | 'COUNT'
  /** Mass, held in grams. */
  | 'MASS'
  /** Volume, held in millilitres. */
  | 'VOLUME';

/** Which draft to throw away. */
export type DiscardDraftInput = {
  /** The version that was read. */
  readonly expectedVersion: Scalars['Int']['input'];
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
  /** What it is a draft of. */
  readonly kind: DraftKind;
  /** Slug of the publisher. */
  readonly publisher: Scalars['String']['input'];
  /** Its slug. */
  readonly slug: Scalars['String']['input'];
};

/** A draft that was thrown away, or what was wrong. */
export type DiscardDraftPayload = {
  readonly __typename?: 'DiscardDraftPayload';
  /** The draft that is gone. Null if there were problems. */
  readonly discarded: Maybe<DiscardedDraft>;
  /** Empty on success. */
  readonly problems: ReadonlyArray<Problem>;
};

/** A draft that is gone. */
export type DiscardedDraft = {
  readonly __typename?: 'DiscardedDraft';
  /** What it was a draft of. */
  readonly kind: DraftKind;
  /**
   * Drafts of the publisher with a line or a swap that names it, components first, at most 100. They cannot be published before it is
   * there again, or their lines name another; where a food of that slug is shared by all publishers, that one takes its place.
   */
  readonly namedBy: ReadonlyArray<NamingDraft>;
  /** Its slug. */
  readonly slug: Scalars['String']['output'];
  /** Its last version. A new draft of that name counts on from it. */
  readonly version: Scalars['Int']['output'];
};

/** The format of a document. */
export type DocumentFormat =
  /** JSON. */
  | 'JSON'
  /** YAML 1.2. */
  | 'YAML';

/** A text with one document or several, YAML or JSON. */
export type DocumentTextInput = {
  /** The name that problems use for it, such as a file name. */
  readonly name: Scalars['String']['input'];
  /** The text. Several documents are separated by lines of `---`. */
  readonly text: Scalars['String']['input'];
};

/** What saving documents and publishing their plans would report. */
export type DocumentsCheck = {
  readonly __typename?: 'DocumentsCheck';
  /** What readers would complain about. Those that are marked STOPS keep a plan from being published. */
  readonly findings: ReadonlyArray<Finding>;
  /** How the lines that are written as text were read, in the order of the documents. Empty where the documents cannot be read at all. */
  readonly lines: ReadonlyArray<TextLine>;
  /** What keeps the documents from being saved or computed, each with its place. If there are any, `findings` is empty. */
  readonly problems: ReadonlyArray<Problem>;
};

/** A document that its writer has saved as a draft, whether published or not. */
export type Draft = {
  readonly __typename?: 'Draft';
  /** The document, as its writer wrote it. */
  readonly document: DraftDocument;
  /** What it is a draft of. */
  readonly kind: DraftKind;
  /** The plan as readers would see it if this draft were published now, computed but not published. Null for drafts of anything but plans. */
  readonly preview: Maybe<DraftPreview>;
  /** The publisher that owns it. */
  readonly publisher: Publisher;
  /** Short name, unique for its publisher and kind. */
  readonly slug: Scalars['String']['output'];
  /** Title. */
  readonly title: Scalars['String']['output'];
  /** When it was saved last. */
  readonly updatedAt: Scalars['DateTime']['output'];
  /** Who saved it last: the id of a token of the publisher, `operator`, or the name of a part of the service. Null if it is not known. */
  readonly updatedBy: Maybe<Scalars['String']['output']>;
  /** Grows with every save. The next save must name the version that was read. */
  readonly version: Scalars['Int']['output'];
};

/** What publishing a draft would report. */
export type DraftCheck = {
  readonly __typename?: 'DraftCheck';
  /** What readers would complain about. Those that are marked STOPS keep it from being published. */
  readonly findings: ReadonlyArray<Finding>;
  /** What keeps it from being published or computed. If there are any, `findings` is empty. */
  readonly problems: ReadonlyArray<Problem>;
  /** Version of the draft that was looked at. */
  readonly version: Scalars['Int']['output'];
};

/** A page of drafts. */
export type DraftConnection = {
  readonly __typename?: 'DraftConnection';
  /** The drafts, each with its cursor. */
  readonly edges: ReadonlyArray<DraftEdge>;
  /** The place of the page in the list. */
  readonly pageInfo: PageInfo;
};

/** A document as its writer wrote it. */
export type DraftDocument = {
  readonly __typename?: 'DraftDocument';
  /** The format of the text. */
  readonly format: DocumentFormat;
  /** SHA-256 of the text in UTF-8, hex. */
  readonly hash: Scalars['String']['output'];
  /** The text, with its comments. */
  readonly text: Scalars['String']['output'];
};

/** A draft in a page. */
export type DraftEdge = {
  readonly __typename?: 'DraftEdge';
  /** An opaque cursor for this place in the list. */
  readonly cursor: Scalars['String']['output'];
  /** The draft. */
  readonly node: Draft;
};

/** Kinds of draft. */
export type DraftKind =
  /** A component. */
  | 'COMPONENT'
  /** A food of the publisher's own. */
  | 'FOOD'
  /** Packs and prices that the publisher adds to a food. */
  | 'PACKS'
  /** A plan. */
  | 'PLAN'
  /** The texts of a plan or a component in another language. */
  | 'TRANSLATION';

/** A draft as it would be published at this moment, and what publishing it would meet. */
export type DraftPreview = {
  readonly __typename?: 'DraftPreview';
  /** What readers would complain about. Those that are marked STOPS keep it from being published. */
  readonly findings: ReadonlyArray<Finding>;
  /** Why it cannot be published or even computed. With any of them, nothing is computed. */
  readonly problems: ReadonlyArray<Problem>;
  /** Number that the revision would have. */
  readonly revision: Maybe<Scalars['Int']['output']>;
  /**
   * The plan computed for one household. Null if it cannot be computed, because of `problems`.
   * @deprecated Since 2026-11-30: use `scaling`, which lists what is wrong with a household.
   */
  readonly scaled: Maybe<ScaledPlan>;
  /** The plan computed for one household, or what is wrong with what was asked. Null if it cannot be computed, because of `problems`. */
  readonly scaling: Maybe<ScalingPayload>;
  /** Version of the draft that was looked at: the newest. */
  readonly version: Scalars['Int']['output'];
};


/** A draft as it would be published at this moment, and what publishing it would meet. */
export type DraftPreviewScaledArgs = {
  household: InputMaybe<HouseholdInput>;
  servings: InputMaybe<Scalars['Int']['input']>;
};


/** A draft as it would be published at this moment, and what publishing it would meet. */
export type DraftPreviewScalingArgs = {
  household: InputMaybe<HouseholdInput>;
  servings: InputMaybe<Scalars['Int']['input']>;
};

/** A number of people who eat the same share of a serving. */
export type EatersInput = {
  /** How many people. */
  readonly count: Scalars['Int']['input'];
  /** The share of a serving each of them eats, such as `1/2` for a small child. */
  readonly portion: Scalars['Quantity']['input'];
};

/** The share of a food as bought that is left once prepared. */
export type EdiblePortion = {
  readonly __typename?: 'EdiblePortion';
  /** The preparation it holds for. Null for the usual trimming. */
  readonly form: Maybe<Scalars['String']['output']>;
  /** More than 0, at most 1. */
  readonly share: Scalars['Float']['output'];
  /** The source of the figure or statement. */
  readonly source: Source;
};

/** Version of a draft that its writer read. */
export type ExpectedDraftInput = {
  /** What it is a draft of. */
  readonly kind: DraftKind;
  /** Its slug. */
  readonly slug: Scalars['String']['input'];
  /** Its version. */
  readonly version: Scalars['Int']['input'];
};

/** The origin of files, and how they are read. */
export type Feed = {
  readonly __typename?: 'Feed';
  /** When it is imported: five fields as in a crontab. Null if it is imported only on request. */
  readonly cron: Maybe<Scalars['String']['output']>;
  /** Whether it is imported at its time. */
  readonly enabled: Scalars['Boolean']['output'];
  /** What its files hold. */
  readonly kind: FeedKind;
  /** Its publisher. Null if it is the operator's. */
  readonly publisher: Maybe<Publisher>;
  /** How its files are fetched and read. */
  readonly settings: FeedSettings;
  /** Short name, unique among the feeds of its owner. */
  readonly slug: Scalars['String']['output'];
  /** IANA time zone of `cron`. */
  readonly zone: Scalars['String']['output'];
};

/** An article of a shop, and the food that it is. */
export type FeedArticle = {
  readonly __typename?: 'FeedArticle';
  /** The shop's own number or word for it. */
  readonly article: Scalars['String']['output'];
  /** Slug of the food. */
  readonly food: Scalars['String']['output'];
};

/** An article of a shop, and the food that it is. */
export type FeedArticleInput = {
  /** The shop's own number or word for it. */
  readonly article: Scalars['String']['input'];
  /** Slug of the food. */
  readonly food: Scalars['String']['input'];
};

/** A column that has another name in a file. */
export type FeedColumn = {
  readonly __typename?: 'FeedColumn';
  /** Its name in the header of the file. */
  readonly inFile: Scalars['String']['output'];
  /** The name that this service uses for it. */
  readonly ours: Scalars['String']['output'];
};

/** A column that has another name in a file. */
export type FeedColumnInput = {
  /** Its name in the header of the file. */
  readonly inFile: Scalars['String']['input'];
  /** The name that this service uses for it. */
  readonly ours: Scalars['String']['input'];
};

/** What the files of a feed hold. */
export type FeedKind =
  /** An edition of the open food table, or corrections of it: its table of foods, or its table of weights. */
  | 'CATALOGUE'
  /** Plans and components as YAML or JSON, one or many a file. */
  | 'DOCUMENTS'
  /** A table of foods with their nutrients. */
  | 'FOODS'
  /** A table of packs and what they cost: for everybody where the feed is the operator's, else the packs that its publisher adds to foods. */
  | 'PRICES'
  /** Recipes in the terms of schema.org: JSON-LD, or a saved page that holds it. */
  | 'RECIPES';

/** Shares above which an import stops and loads nothing; 1 turns one off. */
export type FeedLimits = {
  readonly __typename?: 'FeedLimits';
  /** The share of the feed's earlier rows that may change. */
  readonly changed: Scalars['Float']['output'];
  /** The share of rows read that may be quarantined. */
  readonly quarantined: Scalars['Float']['output'];
};

/** Shares above which an import stops and loads nothing, from 0 to 1; 1 turns one off. */
export type FeedLimitsInput = {
  /** The share of the feed's earlier rows that may change. */
  readonly changed: Scalars['Float']['input'];
  /** The share of rows read that may be quarantined. */
  readonly quarantined: Scalars['Float']['input'];
};

/** A feed, or why it was not saved. */
export type FeedPayload = {
  readonly __typename?: 'FeedPayload';
  /** Null if there were problems. */
  readonly feed: Maybe<Feed>;
  /** What is wrong. Empty if the change was made. */
  readonly problems: ReadonlyArray<Problem>;
};

/** The origin of a feed's files. */
export type FeedPlace = {
  readonly __typename?: 'FeedPlace';
  /** Hosts beside that of the address which it may send on to. */
  readonly hosts: ReadonlyArray<Scalars['String']['output']>;
  /** The kind of place. */
  readonly kind: FeedPlaceKind;
  /** Path below the folder for imports. Null for other kinds. */
  readonly path: Maybe<Scalars['String']['output']>;
  /** The address. Null for other kinds. */
  readonly url: Maybe<Scalars['String']['output']>;
};

/** The origin of a feed's files. */
export type FeedPlaceInput = {
  /** For ADDRESS: hosts beside its own which it may send on to. Default: none. */
  readonly hosts?: InputMaybe<ReadonlyArray<Scalars['String']['input']>>;
  /** The kind of place. */
  readonly kind: FeedPlaceKind;
  /** For FOLDER: path below the folder for imports. */
  readonly path?: InputMaybe<Scalars['String']['input']>;
  /** For ADDRESS: beginning with `https://`. */
  readonly url?: InputMaybe<Scalars['String']['input']>;
};

/** Kinds of place. */
export type FeedPlaceKind =
  /** An address on the open internet. */
  | 'ADDRESS'
  /** A file below the folder that the operator keeps for imports; of a publisher below the folder of its slug there. */
  | 'FOLDER'
  /** Files are uploaded over REST. */
  | 'UPLOAD';

/** How a feed's files are fetched and read. */
export type FeedSettings = {
  readonly __typename?: 'FeedSettings';
  /** Foods by the shop's own numbers of articles, for price lists. */
  readonly articles: ReadonlyArray<FeedArticle>;
  /** Columns that have another name in the file. */
  readonly columns: ReadonlyArray<FeedColumn>;
  /** ISO 4217 code where a row names none. */
  readonly currency: Maybe<Scalars['String']['output']>;
  /** What separates the columns. Null if it is found from the header. */
  readonly delimiter: Maybe<Scalars['String']['output']>;
  /** Shares above which an import stops and loads nothing. */
  readonly limits: FeedLimits;
  /** Language of its numbers and words. Null accepts only numbers that can be read in one way. */
  readonly locale: Maybe<Scalars['String']['output']>;
  /** The measures its amounts are written in. */
  readonly measures: MeasureSystem;
  /** The origin of the files. */
  readonly place: FeedPlace;
  /** Whether plans are published once they are saved. */
  readonly publish: Scalars['Boolean']['output'];
  /** ISO 3166 code where a row names none. */
  readonly region: Maybe<Scalars['String']['output']>;
  /** Shown beside every figure that comes from it. */
  readonly source: Scalars['String']['output'];
};

/** How a feed's files are fetched and read. */
export type FeedSettingsInput = {
  /** Foods by the shop's own numbers of articles, for price lists: the column `food` may hold one. At most 5,000; of two with the same number the last counts. */
  readonly articles?: InputMaybe<ReadonlyArray<FeedArticleInput>>;
  /** Columns that have another name in the file. */
  readonly columns?: InputMaybe<ReadonlyArray<FeedColumnInput>>;
  /** ISO 4217 code where a row names none. */
  readonly currency?: InputMaybe<Scalars['String']['input']>;
  /** What separates the columns: a comma, a semicolon, a tab or a bar. Default: found from the header. */
  readonly delimiter?: InputMaybe<Scalars['String']['input']>;
  /** Default: 0.3 and 0.2 for foods and prices, 0.2 of rows quarantined for the open food table, none for documents and recipes. */
  readonly limits?: InputMaybe<FeedLimitsInput>;
  /** Language of its numbers and words, such as `en` or `de-AT`. */
  readonly locale?: InputMaybe<Scalars['String']['input']>;
  /** The measures its amounts are written in. Default: metric. */
  readonly measures?: InputMaybe<MeasureSystem>;
  /** The origin of the files. Default: they are uploaded. */
  readonly place?: InputMaybe<FeedPlaceInput>;
  /** Whether plans are published once they are saved. Default: no. */
  readonly publish?: InputMaybe<Scalars['Boolean']['input']>;
  /** ISO 3166 code where a row names none. */
  readonly region?: InputMaybe<Scalars['String']['input']>;
  /** Shown beside every figure that comes from it. */
  readonly source: Scalars['String']['input'];
};

/** Something that a writer should look at. */
export type Finding = {
  readonly __typename?: 'Finding';
  /** Title of the meal or component it is about; its slug where it has none. Null for the plan itself. */
  readonly about: Maybe<Scalars['String']['output']>;
  /** Code of the caution it is about, for `CAUTION_NOT_NAMED` and `CAUTION_UNKNOWN`; else null. */
  readonly caution: Maybe<Scalars['String']['output']>;
  /** The kind. */
  readonly code: FindingCode;
  /** Column in that line, from 1. */
  readonly column: Maybe<Scalars['Int']['output']>;
  /** The document it stands in, for the check of a draft: `plan` or `component` and its slug. Null where there is no document. */
  readonly file: Maybe<Scalars['String']['output']>;
  /** Line in that document, from 1. */
  readonly line: Maybe<Scalars['Int']['output']>;
  /** A sentence that says what and where. */
  readonly message: Scalars['String']['output'];
  /** Where: slugs and codes from the plan downwards. */
  readonly path: ReadonlyArray<Scalars['String']['output']>;
  /** How serious it is. */
  readonly severity: FindingSeverity;
};

/** Kinds of finding. */
export type FindingCode =
  /** A component is used without an amount. */
  | 'AMOUNT_MISSING'
  /** A step takes up an appliance that the plan's kitchen does not name. */
  | 'APPLIANCE_NOT_IN_KITCHEN'
  /** A caution is due that the writer did not name. */
  | 'CAUTION_NOT_NAMED'
  /** The writer names a caution that no rule knows. */
  | 'CAUTION_UNKNOWN'
  /** A claim of the plan is contradicted by a food. */
  | 'CLAIM_BROKEN'
  /** A claim of the plan is not borne out, because facts are missing. */
  | 'CLAIM_NOT_KNOWN'
  /** A claim of the plan is one that no rule knows. */
  | 'CLAIM_WITHOUT_RULE'
  /** Much of a component is left over. */
  | 'COMPONENT_LEFT_OVER'
  /** A component is made and not eaten. */
  | 'COMPONENT_NEVER_EATEN'
  /** A food is said to be cut, and no step that uses it cuts it. */
  | 'CUT_IN_NO_STEP'
  /** A heating or cutting step takes the same however much is made, with more than one batch. */
  | 'FIXED_FOR_MORE'
  /** A line names a row of the open food table, which says nothing of allergens, diets, keeping and prices. */
  | 'FOOD_OF_OPEN_TABLE'
  /** A line names a form of which its food has no fact. */
  | 'FORM_UNKNOWN'
  /** Nothing says how long something hot may stand. */
  | 'HOT_MAY_WAIT'
  /** Its writer says it keeps longer than any published rule of its class allows. */
  | 'KEPT_BEYOND_RULES'
  /** A meal is planned for later than something keeps. */
  | 'KEPT_TOO_LONG'
  /** No step uses a line. */
  | 'LINE_IN_NO_STEP'
  /** Food that needs the cold is said to keep at room temperature. */
  | 'NEEDS_THE_COLD'
  /** Cooked food is kept for a later day, and no step puts it into the cold. */
  | 'NEVER_CHILLED'
  /** How long something keeps is not stated. */
  | 'NOBODY_SAYS_HOW_LONG'
  /** No kitchen can measure the amount. */
  | 'NOT_MEASURABLE'
  /** Nothing heats the oven before it is used. */
  | 'OVEN_NOT_PREHEATED'
  /** Something bakes without a temperature. */
  | 'OVEN_WITHOUT_TEMPERATURE'
  /** The session is longer than promised. */
  | 'SESSION_TOO_LONG'
  /** Texts of the plan are not translated; readers get them in the plan's own language. */
  | 'TRANSLATION_INCOMPLETE'
  /** A text and its translation have different links. */
  | 'TRANSLATION_LINKS'
  /** A translation has other numbers than its original; the message has those of both. */
  | 'TRANSLATION_NUMBERS'
  /** Texts were translated that are gone. */
  | 'TRANSLATION_ORPHANED'
  /** Texts changed after they were translated. */
  | 'TRANSLATION_OUTDATED';

/** How serious a finding is. */
export type FindingSeverity =
  /** The writer decides. */
  | 'LOOK'
  /** Must be corrected before publishing. */
  | 'STOPS';

/**
 * A food that is bought. `Query.food` gives what is known today; a food reached through a plan is as that revision froze it,
 * and has an id of its own.
 */
export type Food = Node & {
  readonly __typename?: 'Food';
  /** Code of the aisle of the shop. */
  readonly aisle: Scalars['String']['output'];
  /**
   * The aisle for people, in the language asked for; without one in that of the household or the plan that the food is reached through, or else in
   * English.
   */
  readonly aisleName: Scalars['String']['output'];
  /** What is known about allergens. One that is not listed is not known; it is never absent. */
  readonly allergens: ReadonlyArray<FoodAllergen>;
  /** In every kitchen (water from the tap): counted and named, but never on a shopping list. */
  readonly alwaysThere: Scalars['Boolean']['output'];
  /** That row of the table, as it is today. */
  readonly catalogueFood: Maybe<CatalogueFood>;
  /** How heavy a millilitre of it is, by form. */
  readonly densities: ReadonlyArray<FoodDensity>;
  /** What is known about diets. */
  readonly diets: ReadonlyArray<FoodDiet>;
  /** What is left of it once prepared. */
  readonly edible: ReadonlyArray<EdiblePortion>;
  /** Slug of the food it builds on, which all share. Null if the food is shared or builds on none. */
  readonly extends: Maybe<Scalars['String']['output']>;
  /** Opaque id, for `node`. Another one for readers of another language: `slug` is the same for all. */
  readonly id: Scalars['ID']['output'];
  /** How long it keeps, as its writer or its label says. */
  readonly keeping: ReadonlyArray<KeepingRule>;
  /** Measures that only this food has, such as a clove or a stick. */
  readonly measures: ReadonlyArray<FoodMeasure>;
  /**
   * Its name in the singular, in the language asked for; without one in that of the household, or else of the plan, that it is reached through; of
   * `Query.food` and the like in the food's first language.
   */
  readonly name: Scalars['String']['output'];
  /** All its names. */
  readonly names: ReadonlyArray<FoodName>;
  /** Number under which it inherits from the open food table what it does not say itself; each fact's source tells which. */
  readonly ndbNo: Maybe<Scalars['String']['output']>;
  /** In 100 g of edible portion. One that is not listed is not known; it is never zero. */
  readonly nutrients: ReadonlyArray<FoodNutrient>;
  /** The publisher whose own food it is. Null if all publishers share it. */
  readonly owner: Maybe<Publisher>;
  /** What shops sell. */
  readonly packs: ReadonlyArray<Pack>;
  /** What one piece gives besides the rest of it: the juice and the zest of a lemon. */
  readonly parts: ReadonlyArray<FoodPart>;
  /** Sold unchilled and kept on a shelf until it is opened: dry goods, tins, oils. Null if it is not stated. */
  readonly shelfStable: Maybe<Scalars['Boolean']['output']>;
  /** How a shopper asks for it. */
  readonly shoppedBy: Dimension;
  /** One ingredient with nothing added: other allergens are no ingredient of it, by nature. Null if it is not stated. */
  readonly singleIngredient: Maybe<SingleIngredient>;
  /** Short name, the same for the food of today and for every frozen copy of it. */
  readonly slug: Scalars['String']['output'];
  /**
   * How long it keeps on its own, where it is best kept first, by the published rules of today or of the day it is bought.
   * Empty if nobody says, which is no promise.
   */
  readonly storage: ReadonlyArray<StorageGuidance>;
};


/**
 * A food that is bought. `Query.food` gives what is known today; a food reached through a plan is as that revision froze it,
 * and has an id of its own.
 */
export type FoodAisleNameArgs = {
  locale: InputMaybe<Scalars['String']['input']>;
};


/**
 * A food that is bought. `Query.food` gives what is known today; a food reached through a plan is as that revision froze it,
 * and has an id of its own.
 */
export type FoodNameArgs = {
  locale: InputMaybe<Scalars['String']['input']>;
};


/**
 * A food that is bought. `Query.food` gives what is known today; a food reached through a plan is as that revision froze it,
 * and has an id of its own.
 */
export type FoodStorageArgs = {
  boughtAt: InputMaybe<MomentInput>;
  kitchen?: KitchenKind;
  region: InputMaybe<Scalars['String']['input']>;
};

/** One allergen of one food. */
export type FoodAllergen = {
  readonly __typename?: 'FoodAllergen';
  /** Code of the allergen. */
  readonly code: Scalars['String']['output'];
  /** What is known. */
  readonly presence: AllergenPresence;
  /** The source of the figure or statement. */
  readonly source: Source;
  /** What is said of traces, where that is not what `presence` says. Null if nothing else is stated. */
  readonly traces: Maybe<AllergenPresence>;
};

/** One allergen as an ingredient of one food. */
export type FoodAsIngredient = {
  readonly __typename?: 'FoodAsIngredient';
  /** What the answer rests on. Null where it is not known. */
  readonly basis: Maybe<IngredientBasis>;
  /** The food. */
  readonly food: Food;
  /** CONTAINS, DOES_NOT_CONTAIN or UNKNOWN. */
  readonly presence: AllergenPresence;
  /** Who says so. Null where it is not known. */
  readonly source: Maybe<Source>;
};

/** A page of foods. */
export type FoodConnection = {
  readonly __typename?: 'FoodConnection';
  /** The foods, each with its cursor. */
  readonly edges: ReadonlyArray<FoodEdge>;
  /**
   * Rows of the open food table that have all words of the search and that no food of this page has: at most five. They are foods of nobody, and state no
   * allergen and no diet: adopt one (`adoptFood`), or name it in a document by its number (`usda 11233`). Empty without a search.
   */
  readonly openTable: ReadonlyArray<CatalogueFood>;
  /** The place of the page in the list. */
  readonly pageInfo: PageInfo;
};

/** How heavy a millilitre is. */
export type FoodDensity = {
  readonly __typename?: 'FoodDensity';
  /** The form it holds for, such as `chopped`. Null for the food as bought. */
  readonly form: Maybe<Scalars['String']['output']>;
  /** Grams in a millilitre. */
  readonly gramsPerMl: Scalars['Float']['output'];
  /** The source of the figure or statement. */
  readonly source: Source;
};

/** Whether a food fits one diet. */
export type FoodDiet = {
  readonly __typename?: 'FoodDiet';
  /** Code of the diet. */
  readonly diet: Scalars['String']['output'];
  /** Null if it is not known. */
  readonly fits: Maybe<Scalars['Boolean']['output']>;
  /** The source of the figure or statement. */
  readonly source: Source;
};

/** A food in a page. */
export type FoodEdge = {
  readonly __typename?: 'FoodEdge';
  /** An opaque cursor for this place in the list. */
  readonly cursor: Scalars['String']['output'];
  /** The food. */
  readonly node: Food;
};

/** Narrows a list of foods. What is left out does not narrow. */
export type FoodFilter = {
  /** The aisle of the shop. */
  readonly aisle?: InputMaybe<Scalars['String']['input']>;
  /**
   * Slug of a publisher: its own foods go before others, as its newest published plan has them, or, with the scope READ_DRAFTS, as they
   * are saved.
   */
  readonly publisher?: InputMaybe<Scalars['String']['input']>;
  /**
   * A name in any language, or the start of one: in any number and usual spelling, its words in any order, with or without words that
   * change nothing ("fresh", "large", "organic"). The best first: what is called so, then what begins so, then what has all the words
   * in a name; where there is none of them, what is nearest by letters.
   */
  readonly search?: InputMaybe<Scalars['String']['input']>;
};

/** A measure only this food has. At least one of its facts is known. */
export type FoodMeasure = {
  readonly __typename?: 'FoodMeasure';
  /** Mass of one. */
  readonly grams: Maybe<Scalars['Float']['output']>;
  /** The plural. */
  readonly many: Scalars['String']['output'];
  /** Volume of one. */
  readonly millilitres: Maybe<Scalars['Float']['output']>;
  /** Code; lines name it `own:` and this. */
  readonly name: Scalars['String']['output'];
  /** The singular. */
  readonly one: Scalars['String']['output'];
  /** Pieces in one. */
  readonly pieces: Maybe<Scalars['Float']['output']>;
  /** The source of the figure or statement. */
  readonly source: Source;
};

/** A food's name in one language. */
export type FoodName = {
  readonly __typename?: 'FoodName';
  /** Other words for exactly the same food. */
  readonly also: ReadonlyArray<Scalars['String']['output']>;
  /** What numbers of the CLDR category "many" take, where that is another form than the plural: Polish 2 jabłka, 5 jabłek. If null, the plural. */
  readonly counted: Maybe<Scalars['String']['output']>;
  /** BCP 47 language. */
  readonly language: Scalars['String']['output'];
  /** The plural. */
  readonly many: Scalars['String']['output'];
  /** The singular. */
  readonly one: Scalars['String']['output'];
  /** ISO 3166 code, if it is called so only there. */
  readonly region: Maybe<Scalars['String']['output']>;
};

/** How much of one nutrient is in 100 g of a food. */
export type FoodNutrient = {
  readonly __typename?: 'FoodNutrient';
  /** What it is. */
  readonly nutrient: Nutrient;
  /** In 100 g of edible portion. */
  readonly per100g: Scalars['Float']['output'];
  /** The source of the figure or statement. */
  readonly source: Source;
};

/** A co-product of one piece. Pieces to buy are the most that any part needs, never the sum. */
export type FoodPart = {
  readonly __typename?: 'FoodPart';
  /** Parts that must be taken before this one. */
  readonly after: ReadonlyArray<Scalars['String']['output']>;
  /** How long it keeps once its piece is cut, as its writer says. Nobody knows where both are missing. */
  readonly keeping: ReadonlyArray<KeepingRule>;
  /** Class of published keeping rules for the part by itself. Null if there is none. */
  readonly keepsAs: Maybe<Scalars['String']['output']>;
  /** Name of the part, as lines have it. */
  readonly name: Scalars['String']['output'];
  /** Nutrients in 100 g of the part by itself. Empty if nobody gives any, and those of the whole are not its own. */
  readonly nutrients: ReadonlyArray<FoodNutrient>;
  /** What one piece gives. */
  readonly perPiece: Amount;
  /** The source of the figure or statement. */
  readonly source: Source;
  /** The same for people, in the language of the household or the plan that the food is reached through, or else in English. */
  readonly title: Scalars['String']['output'];
};

/** A reader's side of a plan, sent with the query and never stored. Leave out what does not matter. */
export type HouseholdInput = {
  /** Allergens that nobody at the table eats: codes, or their names in any language (`milk`, `Sellerie`); a group stands for all its members. Works like a diet: swaps that are known to be without them are taken, and what contains one, may contain traces, or is not known, is a warning. Nothing is said to be free from anything. */
  readonly avoidAllergens: ReadonlyArray<Scalars['String']['input']>;
  /** ISO 4217 code to pay in. */
  readonly currency?: InputMaybe<Scalars['String']['input']>;
  /** Codes of the diets to keep to. Repeating one changes nothing. */
  readonly diets: ReadonlyArray<Scalars['String']['input']>;
  /** Foods that nobody at the table likes, by their slugs or names in any language. A swap or a route without them is taken where the writer offers one, optional lines of them are left out; where one stays, a warning names the meals. */
  readonly dislikes: ReadonlyArray<Scalars['String']['input']>;
  /** Who eats, if not everybody eats a whole serving. The counts add up to the servings asked for, or are the servings where none are. */
  readonly eaters?: InputMaybe<ReadonlyArray<EatersInput>>;
  /** The reader's own kitchen. Default: the one the plan assumes. */
  readonly kitchen?: InputMaybe<KitchenInput>;
  /** BCP 47 tag of the reader's language. */
  readonly locale?: InputMaybe<Scalars['String']['input']>;
  /** Measures to show amounts in. Default: those of the plan. */
  readonly measures?: InputMaybe<MeasureSystem>;
  /** What is already in the kitchen. Lines that only differ in the amount are added up. */
  readonly onHand: ReadonlyArray<OnHandInput>;
  /** ISO 3166 code of where the reader shops and eats: picks packs, keeping rules and allergen lists. Default: the region of the plan, or else of its publisher; without either the strictest rules of all regions. */
  readonly region?: InputMaybe<Scalars['String']['input']>;
  /** How to get components that can be made or bought. */
  readonly routes?: InputMaybe<RoutesInput>;
  /** When the prep session begins; gives dates to what keeps until when. */
  readonly sessionStart?: InputMaybe<SessionStartInput>;
  /** Foods to swap wherever a line offers it. Repeating one changes nothing. */
  readonly swaps: ReadonlyArray<SwapInput>;
};

/** A picture that a publisher handed in. It may be kept for a day: one that was removed is shown that long. */
export type Image = {
  readonly __typename?: 'Image';
  /** What it shows, for those who do not see it. */
  readonly alt: Scalars['String']['output'];
  /** Who took or drew it. Null if it does not say. */
  readonly credit: Maybe<Scalars['String']['output']>;
  /** What its document calls it: a path from the document, such as `photos/soup.jpg`. */
  readonly file: Scalars['String']['output'];
  /** SHA-256, hex, of the picture as it is kept. It names the picture, for `removeImage`. */
  readonly hash: Scalars['String']['output'];
  /** Pixels, as it is kept. */
  readonly height: Scalars['Int']['output'];
  /** On what terms others may use it: an SPDX identifier, an address, or a sentence. Null if it does not say. */
  readonly licence: Maybe<Scalars['String']['output']>;
  /** Its mean colour, `#rrggbb`, to show until it has come. */
  readonly placeholder: Scalars['String']['output'];
  /**
   * Where it is: a path from the root of the service, such as `/images/third-gate-allotments/…/640.avif`.
   *
   * There are the widths 320, 640 and 1280, never wider than the picture is: the answer is the least that is at least `width`, else the widest.
   */
  readonly url: Scalars['String']['output'];
  /** Pixels, as it is kept. With `height`, the room that it takes at any width. */
  readonly width: Scalars['Int']['output'];
};


/** A picture that a publisher handed in. It may be kept for a day: one that was removed is shown that long. */
export type ImageUrlArgs = {
  format?: InputMaybe<ImageFormat>;
  width: InputMaybe<Scalars['Int']['input']>;
};

/** What a picture can be had in. */
export type ImageFormat =
  /** The smallest; browsers read it since about 2022. */
  | 'AVIF'
  /** Read everywhere, in mail too. */
  | 'JPEG'
  /** Smaller than JPEG; browsers read it since about 2020. */
  | 'WEBP';

/** What an import did to one thing. */
export type ImportChange = {
  readonly __typename?: 'ImportChange';
  /** What changed for readers. */
  readonly differences: ReadonlyArray<ImportDifference>;
  /** It was not there before. */
  readonly isNew: Scalars['Boolean']['output'];
  /** The earlier source that was replaced: a source, or who had saved the draft. Null if it was the feed's own, or there was none. */
  readonly superseded: Maybe<Scalars['String']['output']>;
  /** Such as `plan barley-days`, `food egg` or `pack box-of-6 of egg`. */
  readonly what: Scalars['String']['output'];
};

/** Rows, documents or recipes of an import. */
export type ImportCounts = {
  readonly __typename?: 'ImportCounts';
  /** Known, and different from before. */
  readonly changed: Scalars['Int']['output'];
  /** New. */
  readonly created: Scalars['Int']['output'];
  /** Put aside, to be mended. */
  readonly quarantined: Scalars['Int']['output'];
  /** Read so far. */
  readonly read: Scalars['Int']['output'];
  /** Replaced by a later one of the same file that stands for the same thing. */
  readonly repeated: Scalars['Int']['output'];
  /** Known, and as before. */
  readonly unchanged: Scalars['Int']['output'];
};

/** One thing that changed for readers. */
export type ImportDifference = {
  readonly __typename?: 'ImportDifference';
  /** What it is. Null if it is gone. */
  readonly after: Maybe<Scalars['String']['output']>;
  /** What it was. Null if it is new. */
  readonly before: Maybe<Scalars['String']['output']>;
  /** What it is. */
  readonly what: Scalars['String']['output'];
};

/** An access token from before 0.2.0, when the scope IMPORT alone published through feeds. */
export type ImportOnlyToken = {
  readonly __typename?: 'ImportOnlyToken';
  /** Feeds through which it publishes, as `PUBLISHER/FEED`. */
  readonly feeds: ReadonlyArray<Scalars['String']['output']>;
  /** What it is called. */
  readonly name: Scalars['String']['output'];
  /** Slug of its publisher. Null if it is the operator's. */
  readonly publisher: Maybe<Scalars['String']['output']>;
  /** Id of the token. */
  readonly token: Scalars['ID']['output'];
  /** From then on it needs PUBLISH too. */
  readonly until: Scalars['DateTime']['output'];
};

/** The result of an import. */
export type ImportReport = {
  readonly __typename?: 'ImportReport';
  /** What it changed for readers, or in a dry run would; the first 200. */
  readonly changes: ReadonlyArray<ImportChange>;
  /** The whole report as Markdown (CommonMark). */
  readonly markdown: Scalars['String']['output'];
  /** There are more changes. */
  readonly moreChanges: Scalars['Boolean']['output'];
  /** The import. */
  readonly run: ImportRun;
  /** Rows that were taken although something is wrong with them, such as a code that no closed list has; the first of them. Safety reads such a code at its strictest. */
  readonly warnings: ReadonlyArray<RowWarning>;
};

/** One import of a file. */
export type ImportRun = {
  readonly __typename?: 'ImportRun';
  /** Rows so far. At the end, `read` is the sum of the others. */
  readonly counts: ImportCounts;
  /** When it was requested. */
  readonly createdAt: Scalars['DateTime']['output'];
  /** When it ended. */
  readonly endedAt: Maybe<Scalars['DateTime']['output']>;
  /** The feed it is of. */
  readonly feed: Feed;
  /** How often fetching its file failed for a reason that may pass. */
  readonly fetchesFailed: Scalars['Int']['output'];
  /** Id of its file. Null if it has no file, or none yet. */
  readonly file: Maybe<Scalars['ID']['output']>;
  /** Whether it loads even if it exceeds a limit. */
  readonly force: Scalars['Boolean']['output'];
  /** When its worker was last heard of. */
  readonly heartbeatAt: Maybe<Scalars['DateTime']['output']>;
  /** Its id. */
  readonly id: Scalars['ID']['output'];
  /** What it is to do. */
  readonly kind: ImportRunKind;
  /** When its file is tried again. Null if it is not waiting for its file. */
  readonly nextAt: Maybe<Scalars['DateTime']['output']>;
  /** Why it stopped or failed; while its file is to be tried again, why it could not be fetched. */
  readonly problems: ReadonlyArray<Problem>;
  /** When a worker first took it up. */
  readonly startedAt: Maybe<Scalars['DateTime']['output']>;
  /** Its progress. */
  readonly state: ImportRunState;
  /** Id of the import that it takes back. */
  readonly undoes: Maybe<Scalars['ID']['output']>;
};

/** A page of imports. */
export type ImportRunConnection = {
  readonly __typename?: 'ImportRunConnection';
  /** The entries of this page. */
  readonly edges: ReadonlyArray<ImportRunEdge>;
  /** The place of this page in the list. */
  readonly pageInfo: PageInfo;
};

/** One entry in the list. */
export type ImportRunEdge = {
  readonly __typename?: 'ImportRunEdge';
  /** An opaque cursor for this place in the list. */
  readonly cursor: Scalars['String']['output'];
  /** The entry. */
  readonly node: ImportRun;
};

/** Which import. */
export type ImportRunInput = {
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
  /** Its id. */
  readonly run: Scalars['ID']['input'];
};

/** What an import is to do. */
export type ImportRunKind =
  /** Find out what loading it would do, and load nothing. */
  | 'DRY_RUN'
  /** Load its file. */
  | 'LOAD'
  /** Undo another import. */
  | 'UNDO';

/** An import, or why there is none. */
export type ImportRunPayload = {
  readonly __typename?: 'ImportRunPayload';
  /** What is wrong. Empty if the change was made. */
  readonly problems: ReadonlyArray<Problem>;
  /** Null if there were problems. */
  readonly run: Maybe<ImportRun>;
};

/** The progress of an import. */
export type ImportRunState =
  /** A user disabled it. */
  | 'CANCELLED'
  /** It is done. */
  | 'DONE'
  /** It could not be done. */
  | 'FAILED'
  /** It waits for a worker. */
  | 'QUEUED'
  /** A worker has it. */
  | 'RUNNING'
  /** A limit of its feed stopped it, and nothing was loaded. */
  | 'STOPPED';

/** What is known of an ingredient rests on this. */
export type IngredientBasis =
  /** The food is one ingredient with nothing added, and that ingredient is another: a carrot has no milk. */
  | 'BY_NATURE'
  /** It follows from what is stated of a diet or a group: vegan food has no milk. */
  | 'DERIVED'
  /** The food's data say it of this very allergen. */
  | 'STATED';

/** Anything that keeps: a food, a component or a meal. */
export type Keepable = Component | Food | Meal;

/** How a length of keeping ends. */
export type KeepingCount =
  /** At the end of a calendar day. */
  | 'DAYS'
  /** So many hours after making. */
  | 'HOURS';

/** What the end of keeping protects. */
export type KeepingPurpose =
  /** Taste and texture only. */
  | 'QUALITY'
  /** The eater. */
  | 'SAFETY';

/** How long something keeps, as somebody states it. */
export type KeepingRule = {
  readonly __typename?: 'KeepingRule';
  /** The rule holds only then. */
  readonly condition: Maybe<Scalars['String']['output']>;
  /** The container. */
  readonly container: Maybe<Scalars['String']['output']>;
  /** How many days. */
  readonly days: Scalars['Float']['output'];
  /** The place. */
  readonly place: StoragePlace;
  /** What the end protects: of what freezes, quality, of anything else the eater, unless its source says so. */
  readonly purpose: KeepingPurpose;
  /** Where the figure was published for, as an ISO 3166 code. Null if it is not stated. */
  readonly region: Maybe<Scalars['String']['output']>;
  /** The source of the figure or statement. */
  readonly source: Source;
};

/** What differs from the kitchen the plan assumes. */
export type KitchenInput = {
  /** Appliances of which there are more or fewer than the plan assumes. */
  readonly appliances: ReadonlyArray<ApplianceInput>;
  /** How many cook together, from 1 to 20. Default: as many as the plan assumes. */
  readonly cooks?: InputMaybe<Scalars['Int']['input']>;
};

/** For whom a published rule was written. */
export type KitchenKind =
  /** Kitchens that sell food. Their local code and licence come first. */
  | 'FOOD_SERVICE'
  /** People at home. */
  | 'HOUSEHOLD';

/** A figure as a label may print it. */
export type LabelFigure = {
  readonly __typename?: 'LabelFigure';
  /** Ready to show, with its unit: `12 g`, `<0.5 g`, `less than 5 mg`. */
  readonly text: Scalars['String']['output'];
  /** The upper end. Null if it is not a range. */
  readonly upTo: Maybe<Scalars['Float']['output']>;
  /** Rounded; the lower end of a range. 0 where `text` says less than some amount. */
  readonly value: Scalars['Float']['output'];
};

/** A nutrient as a label may print it, in the reader's language. */
export type LabelNutrient = {
  readonly __typename?: 'LabelNutrient';
  /** What the label calls it: by the rules of the Union salt in place of sodium. */
  readonly name: Scalars['String']['output'];
  /** 100 g as eaten. Null where the dish cannot be weighed. */
  readonly per100g: Maybe<LabelFigure>;
  /** One serving. */
  readonly perServing: LabelFigure;
  /** `g`, `mg` or `kcal`. */
  readonly unit: Scalars['String']['output'];
};

/** Whose rules a figure is rounded by for display. */
export type LabelScheme =
  /** The European Commission's guidance on tolerances. Salt in grams, in place of sodium. */
  | 'EU'
  /** 21 CFR 101.9(c). Sodium in milligrams. */
  | 'US';

/** A food whose label is to be read. */
export type LabelToRead = {
  readonly __typename?: 'LabelToRead';
  /** Codes of the allergens that it may have as ingredients, without those that the dish contains anyway. */
  readonly allergens: ReadonlyArray<Scalars['String']['output']>;
  /** The food. */
  readonly food: Food;
};

/** A meal whose hour comes before it can be ready. */
export type LateMeal = {
  readonly __typename?: 'LateMeal';
  /** The hour its writer gives, `HH:MM`. */
  readonly at: Scalars['String']['output'];
  /** What it is. */
  readonly meal: Meal;
  /** When it is ready at the earliest, `HH:MM` on the clock of the session's place, reckoned from 09:00 without a start. Null if it is not ready before midnight. */
  readonly readyAt: Maybe<Scalars['String']['output']>;
};

/** An amount of a food, a part of one, or a component. */
export type Line = {
  readonly __typename?: 'Line';
  /** How much. Null if it is added to taste. */
  readonly amount: Maybe<Amount>;
  /** Unique inside its meal or component, and stable. */
  readonly code: Scalars['String']['output'];
  /** The component, if it is one. */
  readonly component: Maybe<Component>;
  /** What one of the pieces weighs that `amount` counts, as in 4 potatoes of 170 g. Null for the food's usual weight of a piece. */
  readonly each: Maybe<Amount>;
  /** Share of it that is eaten, as an exact fraction; `0`: thrown away. Null if all of it is eaten that is not poured away. */
  readonly eaten: Maybe<Scalars['String']['output']>;
  /** Only with `POWER`. */
  readonly exponent: Maybe<Scalars['Float']['output']>;
  /** There is more beside it, not measured: plus more for serving. */
  readonly extra: Scalars['Boolean']['output'];
  /** The food, if it is one. */
  readonly food: Maybe<Food>;
  /** The form it was measured in, such as `chopped`. */
  readonly form: Maybe<Scalars['String']['output']>;
  /** A short mark shown beside the line. */
  readonly mark: Maybe<Scalars['String']['output']>;
  /** Before or after trimming. */
  readonly measured: Measured;
  /** May be left out. */
  readonly optional: Scalars['Boolean']['output'];
  /** The part of the food, if it is only a part: `zest`. */
  readonly part: Maybe<Scalars['String']['output']>;
  /** The same for people, in the language of the household or the plan that the line is reached through. */
  readonly partName: Maybe<Scalars['String']['output']>;
  /** How it is prepared. */
  readonly preparation: Maybe<Scalars['String']['output']>;
  /** How it grows. */
  readonly rule: ScalingRule;
  /** Foods that may take its place. */
  readonly swaps: ReadonlyArray<Swap>;
  /** The writer's own words. */
  readonly written: Scalars['String']['output'];
};

/** How lines were read. */
export type LinesRead = {
  readonly __typename?: 'LinesRead';
  /** One for each text, in their order. Empty where there are problems. */
  readonly lines: ReadonlyArray<TextLine>;
  /** Why none was read: too many, too long, no such language tag. */
  readonly problems: ReadonlyArray<Problem>;
};

/** Published rules to load. */
export type LoadRuleSetInput = {
  /** One YAML document each of the kinds `rule-set`, `keeping-classes`, `food-safety`, `cautions` and `allergens`, in any files. */
  readonly files: ReadonlyArray<RuleFileInput>;
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
};

/** A set that was loaded, or what was wrong. */
export type LoadRuleSetPayload = {
  readonly __typename?: 'LoadRuleSetPayload';
  /** Empty on success. Each path begins with `input`, `files` and the place of the file. */
  readonly problems: ReadonlyArray<Problem>;
  /** Null if there were problems. */
  readonly ruleSet: Maybe<RuleSet>;
};

/** An assembly eaten on one day. */
export type Meal = Node & {
  readonly __typename?: 'Meal';
  /** The hour at which it is eaten, `HH:MM` on the clock of the session's place. `18:00` where its writer gives none. */
  readonly at: Scalars['String']['output'];
  /** The components its lines name. */
  readonly components: ReadonlyArray<Component>;
  /** Days after the prep session; 0 is the day of the session. */
  readonly day: Scalars['Int']['output'];
  /** Opaque id, for `node`. Another one for readers of another language than the plan's own: `mealId` is the same for all. */
  readonly id: Scalars['ID']['output'];
  /** A picture of the meal. Null if there is none. */
  readonly image: Maybe<Image>;
  /** What its writer says of it before anything else. Null if there is none. */
  readonly introduction: Maybe<WrittenText>;
  /** What goes into it. */
  readonly lines: ReadonlyArray<Line>;
  /** The same in all revisions of the plan that have a meal of that slug, and in all languages. */
  readonly mealId: Scalars['ID']['output'];
  /** What its writer notes beside it. Null if there is none. */
  readonly notes: Maybe<WrittenText>;
  /** The plan revision it belongs to. */
  readonly plan: Plan;
  /** How many people its lines are written for. */
  readonly serves: Scalars['Float']['output'];
  /** Short name, unique inside the plan. */
  readonly slug: Scalars['String']['output'];
  /** How it is finished on the day. */
  readonly steps: ReadonlyArray<Step>;
  /** The writer's tips. Null if there is none. */
  readonly tips: Maybe<WrittenText>;
  /** Title. */
  readonly title: Scalars['String']['output'];
};

/** The measures a plan is written in, or a reader cooks in. They differ in their cups and spoons. */
export type MeasureSystem =
  /** Australian: cup of 250 ml and a tablespoon of 20 ml. */
  | 'AUSTRALIAN'
  /** Grams and millilitres only. */
  | 'METRIC'
  /** Metric with a cup of 250 ml and a tablespoon of 15 ml. */
  | 'METRIC_CUP'
  /** UK imperial: imperial pints and fluid ounces, ounces, pounds. */
  | 'UK_IMPERIAL'
  /** US customary: cup of 236.588 ml, ounces, pounds, Fahrenheit. */
  | 'US_CUSTOMARY';

/** Whether a line was weighed before or after trimming. */
export type Measured =
  /** Before trimming. */
  | 'AS_BOUGHT'
  /** After trimming; the edible portion then applies. */
  | 'READY';

/** A fact that the sentences of a problem or a warning are made of. */
export type MessageParameter = {
  readonly __typename?: 'MessageParameter';
  /** Its name: `value`, or `offer.nearest` for a part of one. */
  readonly name: Scalars['String']['output'];
  /** As texts: one for each entry of a list, none where it is not known. */
  readonly values: ReadonlyArray<Scalars['String']['output']>;
};

/** A moment in a kitchen. Give `instant` or `local`. */
export type MomentInput = {
  /** A point in time. */
  readonly instant?: InputMaybe<Scalars['DateTime']['input']>;
  /** What the clock on the kitchen wall says, such as `2026-03-01T10:00`. */
  readonly local?: InputMaybe<Scalars['String']['input']>;
  /** IANA name of the kitchen's time zone, such as `Europe/Lisbon`. */
  readonly zone: Scalars['String']['input'];
};

/** A sum of money. Never a float. */
export type Money = {
  readonly __typename?: 'Money';
  /** Decimal text, such as `12.40`. */
  readonly amount: Scalars['String']['output'];
  /** ISO 4217 code. */
  readonly currency: Scalars['String']['output'];
};

/** One of them. */
export type MorningImport = {
  readonly __typename?: 'MorningImport';
  /** The import. */
  readonly run: ImportRun;
  /** The earlier source that it replaced: sources, or who had saved a draft. */
  readonly superseded: ReadonlyArray<Scalars['String']['output']>;
  /** Quarantined rows that nobody has corrected or skipped yet. */
  readonly toMend: Scalars['Int']['output'];
};

/** The results of the imports of a night. */
export type MorningReport = {
  readonly __typename?: 'MorningReport';
  /** Start of the time it covers. */
  readonly from: Scalars['DateTime']['output'];
  /** Access tokens from before 0.2.0 that publish with the scope IMPORT alone, through feeds of that time; the first 100. */
  readonly importOnlyTokens: ReadonlyArray<ImportOnlyToken>;
  /** The first 200. */
  readonly imports: ReadonlyArray<MorningImport>;
  /** Scheduled publications and withdrawals that could not be carried out in that time, the newest first; the first 100. */
  readonly keptBack: ReadonlyArray<ScheduledChange>;
  /** The whole report as Markdown (CommonMark), with what needs somebody first. */
  readonly markdown: Scalars['String']['output'];
  /** There were more. */
  readonly moreImports: Scalars['Boolean']['output'];
  /** Published plans of which a review found something new in that time, the less safe first; the first 100. */
  readonly plans: ReadonlyArray<ChangedPlan>;
  /** End of the time it covers: the moment of the request. */
  readonly to: Scalars['DateTime']['output'];
};

/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type Mutation = {
  readonly __typename?: 'Mutation';
  /**
   * Saves a food of the open food table as a food of the publisher's own, as a draft to be completed: its name and aisle, and by its
   * number its nutrients and measures. Its allergens are unknown until somebody says them. Refused where all publishers share a food of
   * that slug (`FOOD_IS_SHARED`), where there is a draft of it (`STALE_DRAFT`), or where the table has no such number (`UNKNOWN_CODE`).
   * Requires the scope WRITE.
   */
  readonly adoptFood: SaveDraftPayload;
  /** Cancels an import that waits or runs. What it has loaded stays. Requires the scope IMPORT. */
  readonly cancelImport: ImportRunPayload;
  /** Cancels what waits. Requires the scope PUBLISH. */
  readonly cancelScheduled: ScheduledPayload;
  /** Moves what waits to another time. What is published stays the version that it was scheduled with. Requires the scope PUBLISH. */
  readonly changeScheduled: ScheduledPayload;
  /**
   * Publishes the draft of a plan that was published before, with a note for its readers. Refused where nothing would change.
   * Requires the scope PUBLISH.
   */
  readonly correctPlan: PublishPlanPayload;
  /**
   * Makes a link that shows the draft of a plan, as readers would see it, to whoever has its address, until it expires or is taken back. It shows
   * the newest version of the draft at each moment. It ends with the access token that made it. Requires the scope READ_DRAFTS.
   */
  readonly createPreviewLink: CreatePreviewLinkPayload;
  /** Creates a publisher. Requires an operator's token with the scope ADMIN. */
  readonly createPublisher: PublisherPayload;
  /** Creates an access token. Requires a token of that publisher, or of the operator, with the scope ADMIN. */
  readonly createToken: CreateTokenPayload;
  /** Creates a webhook: an address that is told of a publisher's changes and ended imports from now on. Requires the scope WEBHOOKS or ADMIN. */
  readonly createWebhook: WebhookSecretPayload;
  /** Removes a webhook and the list of its deliveries. Requires the scope WEBHOOKS or ADMIN. */
  readonly deleteWebhook: DeleteWebhookPayload;
  /**
   * Deletes a draft, with its text: a component or a food of the publisher's own is withdrawn so. What was published stays.
   * Drafts that name it are listed. Requires the scope WRITE.
   */
  readonly discardDraft: DiscardDraftPayload;
  /**
   * Loads published rules as a set of their own, whole or not at all. From its first day on every answer is computed by it; the
   * sets before it stay. Requires an operator's token with the scope ADMIN.
   */
  readonly loadRuleSet: LoadRuleSetPayload;
  /**
   * Publishes the draft of a plan with its component drafts and the foods of today: one frozen revision, or nothing. Refused where the
   * writer's check finds what stops publishing. Requires the scope PUBLISH.
   */
  readonly publishPlan: PublishPlanPayload;
  /** Removes a feed with its files and imports, and the packs it lists; drafts, foods and rows of the open food table it brought stay. Requires the scope IMPORT. */
  readonly removeFeed: RemoveFeedPayload;
  /**
   * Removes a picture that was published by mistake, for good: its bytes are deleted, every plan is shown without it, and the same picture is
   * not taken again. Whoever has it in a cache has it for a day at most. Scope: `PUBLISH`.
   */
  readonly removeImage: RemoveImagePayload;
  /** Queues an import of the file of an earlier one, with the rules and foods of today. Requires the scope IMPORT. */
  readonly replayImport: ImportRunPayload;
  /** Sends a delivery again, starting with its first attempt. Requires the scope WEBHOOKS or ADMIN. */
  readonly replayWebhookDelivery: WebhookDeliveryPayload;
  /** Takes a preview link back: from now on its address says so. Requires the scope READ_DRAFTS. */
  readonly revokePreviewLink: RevokePreviewLinkPayload;
  /** Revokes an access token at once and for good. Requires a token of that publisher, or of the operator, with the scope ADMIN. */
  readonly revokeToken: RevokeTokenPayload;
  /** Gives a webhook a new secret. The old secret goes on signing for a day. Requires the scope WEBHOOKS or ADMIN. */
  readonly rotateWebhookSecret: WebhookSecretPayload;
  /** Saves the document of one component as a draft. Requires the scope WRITE. */
  readonly saveComponentDraft: SaveDraftPayload;
  /**
   * Saves documents as drafts, such as a plan with its components: all of them or none, in any order. Requires the scope WRITE.
   * Foods are saved as the publisher's own. Foods that an operator's token saves and that extend no other are shared by all
   * publishers.
   */
  readonly saveDocuments: SaveDocumentsPayload;
  /**
   * Creates a feed, or replaces the one with that owner and slug. Feeds of foods and of the open food table are the operator's, since these are shared;
   * feeds of documents and recipes belong to a publisher. A price list of the operator is for everybody, one of a publisher becomes the packs that it adds to foods, as drafts.
   * Requires the scope IMPORT, and PUBLISH where the feed publishes.
   */
  readonly saveFeed: FeedPayload;
  /** Saves the document of one food of the publisher's own as a draft. Requires the scope WRITE. */
  readonly saveFoodDraft: SaveDraftPayload;
  /** Saves foods, which all publishers share, all of them or none. Requires an operator's token with the scope WRITE. */
  readonly saveFoods: SaveFoodsPayload;
  /** Saves the document of one plan as a draft. Requires the scope WRITE. */
  readonly savePlanDraft: SaveDraftPayload;
  /**
   * Schedules the draft of a plan to be published once at a time to come. The version that is named is kept with its components, own foods and pictures: later
   * saves do not change what is published. It replaces a publication of the same plan that waits. It is checked now and again at its time; if it
   * cannot be published then, it is kept back, and webhooks and the morning report say so. Revoking the token that asks for it cancels it. Requires the scope PUBLISH.
   */
  readonly schedulePublication: ScheduledPayload;
  /**
   * Schedules a plan to be withdrawn as a whole at a time to come, as `unpublishPlan` does. It replaces a withdrawal of the same plan that waits. Requires the
   * scope PUBLISH.
   */
  readonly scheduleWithdrawal: ScheduledPayload;
  /** Resolves a row that an import quarantined: with a corrected text it is imported alone, without a text it is skipped. Requires the scope IMPORT. */
  readonly settleRow: SettleRowPayload;
  /** Queues an import of a feed. A feed has at most one import that waits or runs. Requires the scope IMPORT. */
  readonly startImport: ImportRunPayload;
  /** Queues the undo of an import: its changes are reverted, except what somebody has changed since. Requires the scope IMPORT. */
  readonly undoImport: ImportRunPayload;
  /**
   * Takes a plan back as a whole: every revision of it that is in force is withdrawn. Its own address says so, with the reason (status
   * 410; here the code `WITHDRAWN`), feeds tell their readers, and each revision is still found by its number. Publishing it again puts it in
   * force again. Requires the scope PUBLISH.
   */
  readonly unpublishPlan: WithdrawPlanPayload;
  /** Renames a publisher. Requires an operator's token with the scope ADMIN. */
  readonly updatePublisher: PublisherPayload;
  /** Disables or enables a webhook. Requires the scope WEBHOOKS or ADMIN. */
  readonly updateWebhook: WebhookPayload;
  /**
   * Withdraws a revision, with a reason for its readers. It is still found by its number; the plan's own address falls back to
   * the newest revision in force, unless `then` says otherwise. Requires the scope PUBLISH.
   */
  readonly withdrawPlan: WithdrawPlanPayload;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationAdoptFoodArgs = {
  input: AdoptFoodInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationCancelImportArgs = {
  input: ImportRunInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationCancelScheduledArgs = {
  input: CancelScheduledInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationChangeScheduledArgs = {
  input: ChangeScheduledInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationCorrectPlanArgs = {
  input: CorrectPlanInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationCreatePreviewLinkArgs = {
  input: CreatePreviewLinkInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationCreatePublisherArgs = {
  input: CreatePublisherInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationCreateTokenArgs = {
  input: CreateTokenInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationCreateWebhookArgs = {
  input: CreateWebhookInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationDeleteWebhookArgs = {
  input: WebhookInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationDiscardDraftArgs = {
  input: DiscardDraftInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationLoadRuleSetArgs = {
  input: LoadRuleSetInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationPublishPlanArgs = {
  input: PublishPlanInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationRemoveFeedArgs = {
  input: RemoveFeedInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationRemoveImageArgs = {
  input: RemoveImageInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationReplayImportArgs = {
  input: ReplayImportInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationReplayWebhookDeliveryArgs = {
  input: ReplayWebhookDeliveryInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationRevokePreviewLinkArgs = {
  input: RevokePreviewLinkInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationRevokeTokenArgs = {
  input: RevokeTokenInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationRotateWebhookSecretArgs = {
  input: WebhookInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationSaveComponentDraftArgs = {
  input: SaveDraftInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationSaveDocumentsArgs = {
  input: SaveDocumentsInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationSaveFeedArgs = {
  input: SaveFeedInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationSaveFoodDraftArgs = {
  input: SaveDraftInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationSaveFoodsArgs = {
  input: SaveFoodsInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationSavePlanDraftArgs = {
  input: SaveDraftInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationSchedulePublicationArgs = {
  input: SchedulePublicationInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationScheduleWithdrawalArgs = {
  input: ScheduleWithdrawalInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationSettleRowArgs = {
  input: SettleRowInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationStartImportArgs = {
  input: StartImportInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationUndoImportArgs = {
  input: ImportRunInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationUnpublishPlanArgs = {
  input: UnpublishPlanInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationUpdatePublisherArgs = {
  input: UpdatePublisherInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationUpdateWebhookArgs = {
  input: UpdateWebhookInput;
};


/**
 * All mutations. Each takes one `input` and returns what it created or changed, or `problems`; if there are problems, nothing
 * was changed. A missing token or scope gives an error with the code UNAUTHENTICATED or FORBIDDEN.
 */
export type MutationWithdrawPlanArgs = {
  input: WithdrawPlanInput;
};

/** A code and its name. */
export type NamedCode = {
  readonly __typename?: 'NamedCode';
  /** The code as fields take it. */
  readonly code: Scalars['String']['output'];
  /** For people, in the locale. */
  readonly name: Scalars['String']['output'];
};

/** A draft that names another. */
export type NamingDraft = {
  readonly __typename?: 'NamingDraft';
  /** What it is a draft of. */
  readonly kind: DraftKind;
  /** Its slug. */
  readonly slug: Scalars['String']['output'];
};

/** An object that can be fetched again by its id. */
export type Node = {
  /** Opaque, stable, and unique in the whole service. */
  readonly id: Scalars['ID']['output'];
};

/** How much of a food is not eaten, and how that is known. */
export type NotEaten = {
  readonly __typename?: 'NotEaten';
  /** The food. */
  readonly food: Food;
  /** Why. Several, where it goes in by several lines. */
  readonly reasons: ReadonlyArray<NotEatenReason>;
  /** Share of it that is not eaten, from 0 to 1; the lower end of a range. Null if its weight is not known. */
  readonly share: Maybe<Scalars['Float']['output']>;
};

/** Why some of a food is not eaten. */
export type NotEatenReason =
  /** A step drains it. Dissolved salt goes in the share of the water that is poured away; nothing is allowed for what boils off. */
  | 'DRAINED'
  /** The same of a boiled pulse or grain, whose steps do not say whether they drain. */
  | 'DRAINED_BY_CLASS'
  /** A step drains it, but nobody can say how much: nothing is taken off. */
  | 'DRAINED_UNWEIGHED'
  /** The writer says what of the line is eaten, or that it is thrown away. */
  | 'STATED';

/** A nutrient; the letters at the end are its unit. */
export type Nutrient =
  /** Calcium, milligrams. */
  | 'calciumMg'
  /** Carbohydrate, grams. */
  | 'carbohydrateG'
  /** Cholesterol, milligrams. */
  | 'cholesterolMg'
  /** Energy, kilocalories. */
  | 'energyKcal'
  /** Fat, grams. */
  | 'fatG'
  /** Fibre, grams. */
  | 'fibreG'
  /** Iron, milligrams. */
  | 'ironMg'
  /** Potassium, milligrams. */
  | 'potassiumMg'
  /** Protein, grams. */
  | 'proteinG'
  /** Saturated fat, grams. */
  | 'saturatedFatG'
  /** Sodium, milligrams. */
  | 'sodiumMg'
  /** Sugars, grams. */
  | 'sugarsG'
  /** Vitamin C, milligrams. */
  | 'vitaminCMg'
  /** Water, grams. */
  | 'waterG';

/** How much of one nutrient. */
export type NutrientFigure = {
  readonly __typename?: 'NutrientFigure';
  /** Not complete, and what is not known can only add to it. False where something counted may be left out or is an estimate, too. */
  readonly atLeast: Scalars['Boolean']['output'];
  /** Every food was weighed and has a figure. If false, there may be more of it. */
  readonly complete: Scalars['Boolean']['output'];
  /** Share of the food with energy in it that has a figure, from 0 to 1, by weight without water. */
  readonly coverage: Scalars['Float']['output'];
  /** The number that a label may print of one serving, without its unit, whatever the region: `onLabel` follows that. Null if the scheme has no rule for it. */
  readonly label: Maybe<Scalars['String']['output']>;
  /** What it is. */
  readonly nutrient: Nutrient;
  /** As a label may print what is known of it, by `NutritionPerServing.labelScheme`. Null without a scheme, or a rule of it for the nutrient. */
  readonly onLabel: Maybe<LabelNutrient>;
  /** In 100 g as eaten; the lower end of a range. Null where the dish cannot be weighed. */
  readonly per100g: Maybe<Scalars['Float']['output']>;
  /** The upper end. Null if it is not a range. */
  readonly per100gUpTo: Maybe<Scalars['Float']['output']>;
  /** In one serving; the lower end of a range. */
  readonly perServing: Scalars['Float']['output'];
  /** The upper end. Null if it is not a range. */
  readonly perServingUpTo: Maybe<Scalars['Float']['output']>;
  /** Of the raw foods: what cooking destroys of it is not taken off. True of vitamins. */
  readonly raw: Scalars['Boolean']['output'];
  /** Foods without a figure, or with some that nobody weighed. */
  readonly unknown: ReadonlyArray<Food>;
};


/** How much of one nutrient. */
export type NutrientFigureLabelArgs = {
  scheme?: LabelScheme;
};

/** From how much to how much of a nutrient a serving has. */
export type NutrientLimit = {
  /** At most so much, where it is known of every food. */
  readonly max?: InputMaybe<Scalars['Float']['input']>;
  /** At least so much, where that is certain. */
  readonly min?: InputMaybe<Scalars['Float']['input']>;
  /** The nutrient. */
  readonly nutrient: Nutrient;
};

/** What nutrition is computed from. */
export type NutritionBasis =
  /** Raw foods, over the weight of the finished dish and its servings. */
  | 'RAW_FOODS_OVER_COOKED_WEIGHT'
  /** Raw foods, over the servings. */
  | 'RAW_FOODS_OVER_SERVINGS';

/** Nutrition, from figures of the raw foods. */
export type NutritionPerServing = {
  readonly __typename?: 'NutritionPerServing';
  /** Foods of which more goes in than was weighed: to taste, or more for serving. What you add comes on top of the figures. */
  readonly added: ReadonlyArray<Food>;
  /** What the sums stand on. */
  readonly basis: NutritionBasis;
  /** What one serving weighs. Null where not everything can be weighed. */
  readonly gramsPerServing: Maybe<Scalars['Float']['output']>;
  /**
   * Whose rules `NutrientFigure.onLabel` rounds by: those of the region of the answer. Null if no rules of the region are known here, or no region is
   * named.
   */
  readonly labelScheme: Maybe<LabelScheme>;
  /** How many meals the figures are the sum of: 1 for a meal's own, all of them for a plan's. */
  readonly mealCount: Scalars['Int']['output'];
  /** Foods whose energy nobody gives, so that they are missing from the figures. */
  readonly missing: ReadonlyArray<Food>;
  /** Foods that are not eaten whole: thrown away, or poured away with the water they were boiled in. */
  readonly notEaten: ReadonlyArray<NotEaten>;
  /** One entry for every nutrient that some food has a figure for; others are unknown, never zero. */
  readonly nutrients: ReadonlyArray<NutrientFigure>;
  /** Foods of which some or all counts in no sum, because nobody knows what it weighs: what is only added to taste, too. */
  readonly unweighed: ReadonlyArray<Food>;
};

/**
 * Something already in the kitchen: a food, or a component made earlier. `{ food: "carrot", amount: "500g" }`, `{ food: "Möhren", amount: "ein halber Beutel" }`,
 * `{ food: "carrot", amount: "500", unit: "g" }`.
 */
export type OnHandInput = {
  /**
   * How much there is: a number beside `unit`, or without it an amount as people say it: `500g`, `1/2 lb`, `half a bag`, `2 tins`, `une bouteille`. Numbers are
   * written as in the language of `locale`; without one, as in English. A word for a pack means the pack of that name that is sold in `region`; where
   * packs of several sizes are called so, the answer is AMBIGUOUS_UNIT with the choices, such as `bag (500 g)`.
   */
  readonly amount: Scalars['Quantity']['input'];
  /** Also take it for a food it can be turned into with more work: dry beans for tinned. Otherwise that is only offered. */
  readonly asOtherForm: Scalars['Boolean']['input'];
  /** Slug of a component. Give this or `food`. */
  readonly component?: InputMaybe<Scalars['String']['input']>;
  /**
   * A food: its slug, its name in any language ("Möhren"), or `usda 11233`, its number in the open food table. A name of several foods is answered with
   * AMBIGUOUS_FOOD, one of none with UNKNOWN_FOOD. Give this or `component`.
   */
  readonly food?: InputMaybe<Scalars['String']['input']>;
  /** Code of a unit, such as `g` or `piece`, or a measure of the food's own, such as `own:tin`. Leave it out where `amount` says it. */
  readonly unit?: InputMaybe<Scalars['String']['input']>;
  /** Not counted for meals after this day. */
  readonly useBy?: InputMaybe<Scalars['Date']['input']>;
};

/** A region, and who named it. */
export type OwnedRegion = {
  readonly __typename?: 'OwnedRegion';
  /** Who named it. */
  readonly owner: RegionOwner;
  /** ISO 3166 code. A part of a country of which no rule speaks is its country. */
  readonly region: Scalars['String']['output'];
};

/** Something a shop sells. */
export type Pack = {
  readonly __typename?: 'Pack';
  /** Code, unique inside the food. */
  readonly code: Scalars['String']['output'];
  /** What is in it, in the unit of its label. Of what is loose: how much the price is for; on a list, how much is weighed out. */
  readonly content: Amount;
  /** Sold in any amount, not in packs: onions from a crate, nuts from a bin. */
  readonly loose: Scalars['Boolean']['output'];
  /** As sold: tin, bag, punnet. Below a household or a plan in its language. */
  readonly name: Scalars['String']['output'];
  /** Its price. Null if it is not known. */
  readonly price: Maybe<Money>;
  /** ISO 3166 code of where it is sold. Null if it is sold anywhere. */
  readonly region: Maybe<Scalars['String']['output']>;
  /** The day the price was seen. */
  readonly seen: Scalars['Date']['output'];
  /** The source of the figure or statement. */
  readonly source: Source;
  /** Of what is loose: the smallest amount that is weighed out. Null for the usual step of a shop's scales. */
  readonly step: Maybe<Amount>;
};

/** A number of one pack. */
export type PackCount = {
  readonly __typename?: 'PackCount';
  /** The number of them. */
  readonly count: Scalars['Int']['output'];
  /** The pack; of loose goods, what is weighed out, with what the till asks for it. */
  readonly pack: Pack;
  /** Of loose goods: the price they are weighed out at. Null for a pack. */
  readonly weighedFrom: Maybe<Pack>;
};

/** The place of a page in the whole list. */
export type PageInfo = {
  readonly __typename?: 'PageInfo';
  /** Cursor of the last entry, to page forwards with `after`. Null on an empty page. */
  readonly endCursor: Maybe<Scalars['String']['output']>;
  /** There is more after this page. */
  readonly hasNextPage: Scalars['Boolean']['output'];
  /** There is more before this page. */
  readonly hasPreviousPage: Scalars['Boolean']['output'];
  /** Cursor of the first entry, to page backwards with `before`. Null on an empty page. */
  readonly startCursor: Maybe<Scalars['String']['output']>;
};

/** A change of pan. */
export type PanFactor = {
  readonly __typename?: 'PanFactor';
  /** Ratio of the areas. */
  readonly factor: Scalars['Float']['output'];
  /** The pans are so nearly alike that nothing needs to change. */
  readonly leaveAsIs: Scalars['Boolean']['output'];
};

/** A pan by its inside: `diameter` if it is round, else `length` and `width`. Both pans in the same unit. */
export type PanInput = {
  /** Across a round pan. */
  readonly diameter?: InputMaybe<Scalars['Float']['input']>;
  /** One side. */
  readonly length?: InputMaybe<Scalars['Float']['input']>;
  /** The other side. */
  readonly width?: InputMaybe<Scalars['Float']['input']>;
};

/** Some of a part of a food that no use takes. */
export type PartOver = {
  readonly __typename?: 'PartOver';
  /** How much of the part that is. Null if it is not known what one piece gives. */
  readonly amount: Maybe<Amount>;
  /** Name of the part, as lines have it. */
  readonly part: Scalars['String']['output'];
  /** The same for people, in the reader's language. */
  readonly partName: Scalars['String']['output'];
  /** Pieces of the food that it is left of. */
  readonly pieces: Scalars['Float']['output'];
};

/** A published plan: one revision, frozen with every component and food it refers to. It never changes. */
export type Plan = Node & {
  readonly __typename?: 'Plan';
  /** What this revision changed, in its writer's words. Null if it corrects nothing. */
  readonly changeNote: Maybe<Scalars['String']['output']>;
  /** What readers would complain about, at the plan's own servings. Null, with an error, where it cannot be computed. */
  readonly check: Maybe<ReadonlyArray<Finding>>;
  /** The published rules this revision was checked against when it was published. Null if it was published before rule sets were kept. */
  readonly checkedAgainst: Maybe<RuleSet>;
  /** What its writer claims of it, such as a diet. */
  readonly claims: ReadonlyArray<Scalars['String']['output']>;
  /** Every component that a meal draws on, directly or through another component. */
  readonly components: ReadonlyArray<Component>;
  /** Whom or what it leans on. */
  readonly credits: ReadonlyArray<Credit>;
  /** ISO 4217 code its writer reckons in, for readers who name neither a currency nor a region. Null for that of its publisher. */
  readonly currency: Maybe<Scalars['String']['output']>;
  /** Things to have at hand that are no appliances, such as a large baking tray. */
  readonly equipment: ReadonlyArray<Scalars['String']['output']>;
  /** When the first revision of the plan was published. */
  readonly firstPublishedAt: Scalars['DateTime']['output'];
  /** Every food that a line, a swap or a route refers to. */
  readonly foods: ReadonlyArray<Food>;
  /** Opaque id of this revision, for `node`. */
  readonly id: Scalars['ID']['output'];
  /** A picture of the plan. Null if there is none, or if it was removed. */
  readonly image: Maybe<Image>;
  /** What its writer says of it before anything else. Null if there is none. */
  readonly introduction: Maybe<WrittenText>;
  /** BCP 47 tags of the languages it can be read in: its own first, then those it was translated into. Choose one with `household.locale`. */
  readonly languages: ReadonlyArray<Scalars['String']['output']>;
  /** On what terms others may use its texts: an SPDX identifier, an address, or a sentence. Null if it does not say. */
  readonly licence: Maybe<Scalars['String']['output']>;
  /** BCP 47 tag of the language it is written in. */
  readonly locale: Scalars['String']['output'];
  /** The meals, in the order of their days. */
  readonly meals: ReadonlyArray<Meal>;
  /** The measures it is written in. */
  readonly measures: MeasureSystem;
  /** What the plan's own address leads to: its newest revision in force, which may be this one. Null if none is in force. */
  readonly newest: Maybe<Plan>;
  /** What its writer notes beside it. Null if there is none. */
  readonly notes: Maybe<WrittenText>;
  /** The same for all revisions of the plan, and what feeds call it: `urn:uuid:…`. For ticks, ratings and favourites that outlive a correction. */
  readonly planId: Scalars['ID']['output'];
  /** The session length its writer promises. */
  readonly promisedMinutes: Maybe<Scalars['Float']['output']>;
  /** When this revision was published. */
  readonly publishedAt: Scalars['DateTime']['output'];
  /** Who published it. */
  readonly publisher: Publisher;
  /** ISO 3166 code of where it is written for: whose rules hold where a reader gives no region. Null for that of its publisher. */
  readonly region: Maybe<Scalars['String']['output']>;
  /** Counts from 1 for each plan. */
  readonly revision: Scalars['Int']['output'];
  /** Every revision of the plan, withdrawn ones too, the newest number first. */
  readonly revisions: PlanConnection;
  /**
   * The plan computed for a number of servings and one household.
   * @deprecated Since 2026-11-30: use `scaling`, which lists what is wrong with a household and leaves the plan in the answer.
   */
  readonly scaled: ScaledPlan;
  /**
   * The plan computed for a number of servings and one household. What is wrong with them stands in `problems` and in no error: the plan, and the
   * others of its page, are in the answer all the same.
   */
  readonly scaling: ScalingPayload;
  /** How many people it was written for. */
  readonly serves: Scalars['Int']['output'];
  /** What the plan costs and leaves over at every number of servings, to see where it comes out even. At most 200 rows. */
  readonly servingsTable: ReadonlyArray<ServingsRow>;
  /** Short name used in addresses; the same for all its revisions. */
  readonly slug: Scalars['String']['output'];
  /** A sentence or two about it. */
  readonly summary: Maybe<Scalars['String']['output']>;
  /** The newest revision in force, if it is a later one than this. Null if nothing later is in force. */
  readonly supersededBy: Maybe<Plan>;
  /** What readers look for it by, as written: at most 30. */
  readonly tags: ReadonlyArray<Scalars['String']['output']>;
  /** What it is called in a reader's language, as far as it was translated. Lists read no whole plan for that. */
  readonly texts: PlanTexts;
  /** The writer's tips. Null if there is none. */
  readonly tips: Maybe<WrittenText>;
  /** Title. */
  readonly title: Scalars['String']['output'];
  /** When the newest revision in force was published. Of a plan that was withdrawn as a whole, when this revision was withdrawn. */
  readonly updatedAt: Scalars['DateTime']['output'];
  /** When this revision was withdrawn. Null if it is in force. */
  readonly withdrawnAt: Maybe<Scalars['DateTime']['output']>;
  /** Why it was withdrawn. */
  readonly withdrawnBecause: Maybe<Scalars['String']['output']>;
};


/** A published plan: one revision, frozen with every component and food it refers to. It never changes. */
export type PlanRevisionsArgs = {
  after: InputMaybe<Scalars['String']['input']>;
  before: InputMaybe<Scalars['String']['input']>;
  first: InputMaybe<Scalars['Int']['input']>;
  last: InputMaybe<Scalars['Int']['input']>;
};


/** A published plan: one revision, frozen with every component and food it refers to. It never changes. */
export type PlanScaledArgs = {
  household: InputMaybe<HouseholdInput>;
  servings: InputMaybe<Scalars['Int']['input']>;
};


/** A published plan: one revision, frozen with every component and food it refers to. It never changes. */
export type PlanScalingArgs = {
  household: InputMaybe<HouseholdInput>;
  servings: InputMaybe<Scalars['Int']['input']>;
};


/** A published plan: one revision, frozen with every component and food it refers to. It never changes. */
export type PlanServingsTableArgs = {
  from: Scalars['Int']['input'];
  household: InputMaybe<HouseholdInput>;
  to: Scalars['Int']['input'];
};


/** A published plan: one revision, frozen with every component and food it refers to. It never changes. */
export type PlanTextsArgs = {
  locale: Scalars['String']['input'];
};

/** An allergen of a plan. */
export type PlanAllergen = {
  readonly __typename?: 'PlanAllergen';
  /** Its code. */
  readonly allergen: Scalars['String']['output'];
  /** As an ingredient. */
  readonly presence: AllergenPresence;
  /** As traces. UNKNOWN unless every food says. */
  readonly traces: AllergenPresence;
};

/** A page of plans. */
export type PlanConnection = {
  readonly __typename?: 'PlanConnection';
  /** The plans, each with its cursor. */
  readonly edges: ReadonlyArray<PlanEdge>;
  /** How many plans of the list are of each kind. Null in lists of revisions. */
  readonly facets: Maybe<ReadonlyArray<PlanFacet>>;
  /** The plans without their cursors. */
  readonly nodes: ReadonlyArray<Plan>;
  /** The place of the page in the list. */
  readonly pageInfo: PageInfo;
  /**
   * How many plans the list has: exactly up to 10,000, and 10,000 where there are more. Plans that a page would leave out count until their facts are
   * worked out again. Null in lists of revisions.
   */
  readonly totalCount: Maybe<Scalars['Int']['output']>;
  /** Whether `totalCount` is exact; false where there are more. Null in lists of revisions. */
  readonly totalCountIsExact: Maybe<Scalars['Boolean']['output']>;
};

/** What a serving costs. */
export type PlanCost = {
  readonly __typename?: 'PlanCost';
  /** The day of the prices. */
  readonly date: Scalars['Date']['output'];
  /** The cost. */
  readonly perServing: Money;
};

/** A change that readers notice. */
export type PlanDifference = {
  readonly __typename?: 'PlanDifference';
  /** What it says. Null if it is gone. */
  readonly after: Maybe<Scalars['String']['output']>;
  /** What it said. Null if it is new. */
  readonly before: Maybe<Scalars['String']['output']>;
  /** The kind of change. */
  readonly kind: PlanDifferenceKind;
  /** Where: slugs, ids and codes from the plan downwards. */
  readonly path: ReadonlyArray<Scalars['String']['output']>;
};

/** The kinds of change that a reader would notice. */
export type PlanDifferenceKind =
  /** Whether an allergen is contained. */
  | 'ALLERGEN'
  /** Amount of a line, at the plan's servings. */
  | 'AMOUNT'
  /** How many batches of a component are made. */
  | 'BATCHES'
  /** A claim, such as a diet. */
  | 'CLAIM'
  /** A component, by its title. */
  | 'COMPONENT'
  /** What the till asks for, at the plan's servings and the prices that were frozen. */
  | 'COST'
  /** Whom or what the plan or a component leans on. */
  | 'CREDIT'
  /** ISO 4217 code its writer reckons in. */
  | 'CURRENCY'
  /** Day of a meal. */
  | 'DAY'
  /** Whether a diet fits. */
  | 'DIET'
  /** A piece of equipment. */
  | 'EQUIPMENT'
  /** What a line names, and how it is prepared. */
  | 'INGREDIENT'
  /** The introduction of the plan, a meal or a component. Long texts are cut. */
  | 'INTRODUCTION'
  /** Days that something keeps in one place. */
  | 'KEEPING'
  /** The licence of the plan. */
  | 'LICENCE'
  /** A meal, by its title. */
  | 'MEAL'
  /** Hour at which a meal is eaten. */
  | 'MEAL_TIME'
  /** How much of a food is needed as bought, at the plan's servings. */
  | 'NEED'
  /** The notes of the plan, a meal or a component. Long texts are cut. */
  | 'NOTES'
  /** Sodium of one serving of a meal. Only reviews of published plans name it. */
  | 'NUTRITION'
  /** The session length it promises, in minutes. */
  | 'PROMISED_TIME'
  /** How many it is written for. */
  | 'SERVES'
  /** A step, with its minutes. */
  | 'STEP'
  /** Its summary. */
  | 'SUMMARY'
  /** A tag. */
  | 'TAG'
  /** The tips of the plan, a meal or a component. Long texts are cut. */
  | 'TIPS'
  /** Title of the plan. */
  | 'TITLE'
  /** A text in another language. The path begins with `translations` and the language. */
  | 'TRANSLATION';

/** A plan in a page. */
export type PlanEdge = {
  readonly __typename?: 'PlanEdge';
  /** An opaque cursor for this place in the list. */
  readonly cursor: Scalars['String']['output'];
  /** What the list finds the plan by. Null where it is not worked out yet, and in lists of revisions. */
  readonly facts: Maybe<PlanFacts>;
  /** The plan: in lists of plans its newest revision, in lists of revisions that one. */
  readonly node: Plan;
};

/** Plans of a list by what they have in common. */
export type PlanFacet = {
  readonly __typename?: 'PlanFacet';
  /** Whether every plan of the list is counted; false: 10,000 of them. */
  readonly isExact: Scalars['Boolean']['output'];
  /** What it counts by. */
  readonly kind: PlanFacetKind;
  /** The commonest values first, at most 50. */
  readonly values: ReadonlyArray<PlanFacetValue>;
};

/** What a facet counts plans by. */
export type PlanFacetKind =
  /** Appliances that they need. */
  | 'APPLIANCE'
  /** Diets that they keep. */
  | 'DIET'
  /** Languages that they can be read in. */
  | 'LANGUAGE'
  /** Their tags, folded: in lower case and without accents. */
  | 'TAG'
  /** Allergens that they are without. */
  | 'WITHOUT_ALLERGEN';

/** A value of a facet. */
export type PlanFacetValue = {
  readonly __typename?: 'PlanFacetValue';
  /** How many plans have it. */
  readonly count: Scalars['Int']['output'];
  /** A code, tag or language, as the filter takes it. */
  readonly value: Scalars['String']['output'];
};

/**
 * What a list finds a plan by, of its own servings and routes, without swaps, and by the rules, foods and prices of a day. For one household ask
 * `Plan.scaling`.
 */
export type PlanFacts = {
  readonly __typename?: 'PlanFacts';
  /** Every allergen, by the lists of the region of the filter. */
  readonly allergens: ReadonlyArray<PlanAllergen>;
  /** What a serving costs in the region of the filter, in every currency in which the price of every food is known. */
  readonly costs: ReadonlyArray<PlanCost>;
  /** Days from its first meal to its last, both counted. */
  readonly days: Scalars['Int']['output'];
  /** Codes of the diets that it keeps in the region of the filter. */
  readonly diets: ReadonlyArray<Scalars['String']['output']>;
  /** How many of them are at hand. Null if the filter does not say what is. */
  readonly foodsAtHand: Maybe<Scalars['Int']['output']>;
  /** How many foods are to be bought. */
  readonly foodsToBuy: Scalars['Int']['output'];
  /** Minutes of hands in all its sessions. */
  readonly handsOnMinutes: Maybe<Scalars['Float']['output']>;
  /** What is certain of the nutrients of a serving, in all its meals together. */
  readonly nutrients: ReadonlyArray<PlanNutrient>;
  /** People that it is written for. */
  readonly servings: Scalars['Int']['output'];
  /** Minutes of its longest session. Null where its steps fit no order. */
  readonly sessionMinutes: Maybe<Scalars['Float']['output']>;
  /** When it was worked out. Allergens and diets are those of now. */
  readonly workedOutAt: Scalars['DateTime']['output'];
};

/** Narrows a list of plans. What is left out does not narrow. */
export type PlanFilter = {
  /**
   * Diets that the plan keeps by what it is made of, as `ScaledPlan.diets` says. Only where that is known of every food. Codes of
   * `vocabulary`, at most 50.
   */
  readonly diets?: InputMaybe<ReadonlyArray<Scalars['String']['input']>>;
  /**
   * Foods that are at hand: slugs, or names in any language, at most 200. Lists plans that need some of them, those first of whose shopping list the most is
   * there. Of the newest 5,000 that need any.
   */
  readonly foodsAtHand?: InputMaybe<ReadonlyArray<Scalars['String']['input']>>;
  /** BCP 47 tag of a language that the plan can be read in. */
  readonly language?: InputMaybe<Scalars['String']['input']>;
  /** Grams of carbohydrate, in the same way. */
  readonly maxCarbohydrateGrams?: InputMaybe<Scalars['Float']['input']>;
  /** What a serving costs at most, as `ShoppingList.cost.perServing` says. Only where the price of every food is known in that currency. */
  readonly maxCostPerServing?: InputMaybe<CostLimit>;
  /** Kilocalories that a serving has at most, in all meals of the plan together. Only where they are known of every food. */
  readonly maxEnergyKcal?: InputMaybe<Scalars['Float']['input']>;
  /** The shopping list has at most so many foods, as `PlanFacts.foodsToBuy` says. */
  readonly maxFoodsToBuy?: InputMaybe<Scalars['Int']['input']>;
  /** The plan needs the hands for at most so many minutes, in all its sessions. */
  readonly maxHandsOnMinutes?: InputMaybe<Scalars['Float']['input']>;
  /** Grams of saturated fat, in the same way. */
  readonly maxSaturatedFatGrams?: InputMaybe<Scalars['Float']['input']>;
  /** The longest session that the plan needs has at most so many minutes. */
  readonly maxSessionMinutes?: InputMaybe<Scalars['Float']['input']>;
  /** Milligrams of sodium, in the same way. */
  readonly maxSodiumMilligrams?: InputMaybe<Scalars['Float']['input']>;
  /** Grams of sugars, in the same way. */
  readonly maxSugarsGrams?: InputMaybe<Scalars['Float']['input']>;
  /** Grams of fibre, in the same way. */
  readonly minFibreGrams?: InputMaybe<Scalars['Float']['input']>;
  /** Grams of protein that a serving has at least, in all meals of the plan together, as `ScaledPlan.nutrition` says. Only where that is certain. */
  readonly minProteinGrams?: InputMaybe<Scalars['Float']['input']>;
  /** Limits of any nutrients, in the same ways. At most 50. */
  readonly nutrients?: InputMaybe<ReadonlyArray<NutrientLimit>>;
  /** Its newest revision was published after this time. */
  readonly publishedAfter?: InputMaybe<Scalars['DateTime']['input']>;
  /** Slug of a publisher. */
  readonly publisher?: InputMaybe<Scalars['String']['input']>;
  /** ISO 3166 code of where the reader is, by whose lists allergens and diets are judged and prices found. Default: where each plan is for. */
  readonly region?: InputMaybe<Scalars['String']['input']>;
  /**
   * Words, or beginnings of words, in any case and order, of which a plan has all: in its title, summary, introduction, notes and tags, in what its meals
   * and components are called, and in the names of its foods in every language. A word that no plan has is also taken for one that differs by a letter.
   */
  readonly search?: InputMaybe<Scalars['String']['input']>;
  /** Tags that the plan has, each of them, in any case. At most 50. */
  readonly tags?: InputMaybe<ReadonlyArray<Scalars['String']['input']>>;
  /** Foods that the plan uses, each of them: slugs, or names in any language. At most 50. */
  readonly usesAllOf?: InputMaybe<ReadonlyArray<Scalars['String']['input']>>;
  /** Foods of which the plan uses at least one: slugs, or names in any language. At most 50. */
  readonly usesAnyOf?: InputMaybe<ReadonlyArray<Scalars['String']['input']>>;
  /** Slug of a component that the plan uses. */
  readonly usesComponent?: InputMaybe<Scalars['String']['input']>;
  /** Slug of a food that the plan uses. */
  readonly usesFood?: InputMaybe<Scalars['String']['input']>;
  /**
   * Allergens that no ingredient of the plan has and of which no food may have traces. Only where every food says so of its ingredients; of traces
   * most say nothing: `PlanEdge.facts` shows what is known of them. Codes of `vocabulary`, at most 50.
   */
  readonly withoutAllergens?: InputMaybe<ReadonlyArray<Scalars['String']['input']>>;
  /** Appliances that no step of the plan needs: codes of `vocabulary`, such as `oven-shelf`, at most 50. */
  readonly withoutAppliances?: InputMaybe<ReadonlyArray<Scalars['String']['input']>>;
};

/** Names a plan. */
export type PlanNameInput = {
  /** Slug of its publisher. */
  readonly publisher: Scalars['String']['input'];
  /** Default: the newest that is not withdrawn. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  /** Slug of the plan. */
  readonly slug: Scalars['String']['input'];
};

/** How much of a nutrient a serving has. */
export type PlanNutrient = {
  readonly __typename?: 'PlanNutrient';
  /** So much at most. Null if that is not known. */
  readonly max: Maybe<Scalars['Float']['output']>;
  /** So much at least. Null if that is not known. */
  readonly min: Maybe<Scalars['Float']['output']>;
  /** The nutrient. */
  readonly nutrient: Nutrient;
};

/** The order of a list of plans; of equal ones, by the id of the revision. */
export type PlanOrder =
  /** The plan that was first published last comes first; corrections do not move it. */
  | 'FIRST_PUBLISHED'
  /** The fewest minutes of hands first. Plans without known ones are left out. */
  | 'LEAST_HANDS_ON'
  /** The newest revision first. */
  | 'NEWEST'
  /** The shortest session first. Plans without a known one are left out. */
  | 'SHORTEST_SESSION';

/** A plan and how many it is cooked for. */
export type PlanPortionInput = {
  /** Slug of its publisher. */
  readonly publisher: Scalars['String']['input'];
  /** Default: the newest that is not withdrawn. */
  readonly revision?: InputMaybe<Scalars['Int']['input']>;
  /** How many people eat: a whole number from 1. Default: as many as `household.eaters`, or else as the plan is written for. */
  readonly servings?: InputMaybe<Scalars['Int']['input']>;
  /** Slug of the plan. */
  readonly slug: Scalars['String']['input'];
};

/** How often readers asked for one plan on one day. */
export type PlanRequests = {
  readonly __typename?: 'PlanRequests';
  /** The day, in UTC. */
  readonly day: Scalars['Date']['output'];
  /** The number of requests. */
  readonly requests: Scalars['Float']['output'];
  /** Slug of the plan. */
  readonly slug: Scalars['String']['output'];
};

/** A page of counted requests. */
export type PlanRequestsConnection = {
  readonly __typename?: 'PlanRequestsConnection';
  /** The entries of this page. */
  readonly edges: ReadonlyArray<PlanRequestsEdge>;
  /** The place of this page in the list. */
  readonly pageInfo: PageInfo;
};

/** One row of counted requests in a list. */
export type PlanRequestsEdge = {
  readonly __typename?: 'PlanRequestsEdge';
  /** An opaque cursor for this place in the list. */
  readonly cursor: Scalars['String']['output'];
  /** The row. */
  readonly node: PlanRequests;
};

/** What a plan is called in a language. What was not translated is as it was written. */
export type PlanTexts = {
  readonly __typename?: 'PlanTexts';
  /** BCP 47 tag of the language of the title. */
  readonly language: Scalars['String']['output'];
  /** A sentence or two about it. Null if there is none. */
  readonly summary: Maybe<Scalars['String']['output']>;
  /** BCP 47 tag of the language of the summary. */
  readonly summaryLanguage: Scalars['String']['output'];
  /** Title. */
  readonly title: Scalars['String']['output'];
};

/** The work of a session, ordered to be done soonest, and the hands free as early as that allows. */
export type PrepSession = {
  readonly __typename?: 'PrepSession';
  /** Appliances that steps use and the kitchen does not list: one of each was assumed. */
  readonly assumedAppliances: ReadonlyArray<Scalars['String']['output']>;
  /** Minutes to wash up and wipe down at the end, not part of `totalMinutes`. A rule of thumb: 10, and 5 more for each hour of work with the hands, up to 45. */
  readonly clearingUpMinutes: Scalars['Float']['output'];
  /** What is made in it. */
  readonly components: ReadonlyArray<SessionComponent>;
  /** How many cooks would have six hours of work each at most. */
  readonly cooksForADay: Scalars['Int']['output'];
  /** From the start to the end: each task, and why it could not begin earlier. */
  readonly criticalPath: ReadonlyArray<CriticalTask>;
  /** Days after the first session, whose day is 0. */
  readonly day: Scalars['Int']['output'];
  /** Tasks of the evening before. */
  readonly eveningBefore: ReadonlyArray<SessionTask>;
  /** How far the session may be from the shortest: (total - bound) / bound. */
  readonly gap: Scalars['Float']['output'];
  /** When the last work with the hands ends, in minutes from the start. */
  readonly handsFreeMinute: Scalars['Float']['output'];
  /** Minutes of work with the hands, on the day and the evening before. */
  readonly handsOnMinutes: Scalars['Float']['output'];
  /** Meals of its day whose writer gives an hour at which they cannot be ready. */
  readonly lateMeals: ReadonlyArray<LateMeal>;
  /** The length its writer promises, in minutes, if the session takes longer. Null if it does not, or if nothing is promised. */
  readonly longerThanPromised: Maybe<Scalars['Float']['output']>;
  /** No session can be shorter than this many minutes. */
  readonly lowerBoundMinutes: Scalars['Float']['output'];
  /** Whether the hands have more to do than a day holds: over six hours for each cook. */
  readonly moreThanADay: Scalars['Boolean']['output'];
  /** No session is shorter. */
  readonly optimal: Scalars['Boolean']['output'];
  /** What must come before what. */
  readonly order: ReadonlyArray<TaskOrder>;
  /** By start. */
  readonly tasks: ReadonlyArray<SessionTask>;
  /** From the start to the last finish, in minutes. */
  readonly totalMinutes: Scalars['Float']['output'];
};

/** Shows the draft of a plan to whoever has its address. */
export type PreviewLink = {
  readonly __typename?: 'PreviewLink';
  /** When it was made. */
  readonly createdAt: Scalars['DateTime']['output'];
  /** When it ends. */
  readonly expiresAt: Scalars['DateTime']['output'];
  /** Its id, to take it back by. */
  readonly id: Scalars['ID']['output'];
  /** Whose it is. */
  readonly publisher: Publisher;
  /** When it was taken back. Null if it was not. */
  readonly revokedAt: Maybe<Scalars['DateTime']['output']>;
  /** Slug of the plan. */
  readonly slug: Scalars['String']['output'];
};

/** A page of preview links. */
export type PreviewLinkConnection = {
  readonly __typename?: 'PreviewLinkConnection';
  /** The entries of this page. */
  readonly edges: ReadonlyArray<PreviewLinkEdge>;
  /** Where this page lies. */
  readonly pageInfo: PageInfo;
};

/** One preview link in a list. */
export type PreviewLinkEdge = {
  readonly __typename?: 'PreviewLinkEdge';
  /** Place in the list. */
  readonly cursor: Scalars['String']['output'];
  /** The link. */
  readonly node: PreviewLink;
};

/** Something wrong in the input. Until it is corrected, nothing is changed. */
export type Problem = {
  readonly __typename?: 'Problem';
  /** The kind. */
  readonly code: ProblemCode;
  /** Column in that line, from 1. */
  readonly column: Maybe<Scalars['Int']['output']>;
  /** The text it stands in, by the name it was sent under. Null where there is no document. */
  readonly file: Maybe<Scalars['String']['output']>;
  /** Line in the document that was sent, from 1. Null where there is no document, or the place is not known. */
  readonly line: Maybe<Scalars['Int']['output']>;
  /** A sentence or two that say where it is, what is wrong, and what to do. */
  readonly message: Scalars['String']['output'];
  /** The facts that the sentences are made of. */
  readonly parameters: ReadonlyArray<MessageParameter>;
  /**
   * Where: from the input downwards, or inside the draft document that `file` names: names of fields, slugs, codes and places in
   * lists.
   */
  readonly path: ReadonlyArray<Scalars['String']['output']>;
  /** For people, in that language: what is wrong and what to do, without the place. What only a program can get wrong is said in English. */
  readonly text: Scalars['String']['output'];
  /** The kind in a few words: in the language of `household.locale` where a reader can cause it, else in English. */
  readonly title: Scalars['String']['output'];
  /** The same place in one text, by the names of arguments and input fields: `household.diets.1`. The same over REST, whose parameters have other names. */
  readonly where: Scalars['String']['output'];
};

/** Kinds of problem. */
export type ProblemCode =
  /** A row of a table that says less of an allergen than is known of its food. Only a person may take an allergen away. */
  | 'ALLERGEN_WEAKENED'
  /** The revision was withdrawn before. */
  | 'ALREADY_WITHDRAWN'
  /** One name of several foods; `candidates` are those it may be. */
  | 'AMBIGUOUS_FOOD'
  /** A unit of more than one size. */
  | 'AMBIGUOUS_UNIT'
  /** A number that is too small or too large. */
  | 'AMOUNT_OUT_OF_RANGE'
  /** Something that cannot be read as an amount. */
  | 'BAD_AMOUNT'
  /** An archive of a publisher, or a file in it, is not what an export writes. */
  | 'BAD_ARCHIVE'
  /** A household that is not possible. */
  | 'BAD_HOUSEHOLD'
  /** A value of the wrong kind. */
  | 'BAD_SHAPE'
  /** A time that does not exist, is ambiguous, has passed, or is in an unknown time zone; the message says what to write instead. */
  | 'BAD_TIME'
  /** An amount that a spreadsheet program turned into a date. */
  | 'CELL_IS_A_DATE'
  /** The plan was published or withdrawn after its publication was scheduled. */
  | 'CHANGED_SINCE_SCHEDULED'
  /** A claim of the plan is contradicted by a food. */
  | 'CLAIM_BROKEN'
  /** A claim of the plan is not borne out, because facts are missing. */
  | 'CLAIM_NOT_KNOWN'
  /** A claim of the plan is one that no rule knows. */
  | 'CLAIM_WITHOUT_RULE'
  /** A component is made from itself. */
  | 'COMPONENT_CYCLE'
  /** No meal draws on a component. */
  | 'COMPONENT_NOT_REACHED'
  /** A document builds on a component that was quarantined in the same file. */
  | 'COMPONENT_SET_ASIDE'
  /** A table whose columns may be parted by more than one mark, or by none. */
  | 'DELIMITER_UNCLEAR'
  /** The same entry appears twice. */
  | 'DUPLICATE'
  /** A file cannot be fetched from its feed's place. */
  | 'FILE_NOT_HAD'
  /** There is a food of this slug that all publishers share: extend it, or choose another slug. */
  | 'FOOD_IS_SHARED'
  /** A line names a form of which its food has no fact. */
  | 'FORM_UNKNOWN'
  /** A picture is not taken: another format, damaged, too large, too small, or removed before. */
  | 'IMAGE_REFUSED'
  /** The import has ended already. */
  | 'IMPORT_ENDED'
  /** An import failed on our side. */
  | 'IMPORT_FAULT'
  /** An import of the feed waits or is going on. */
  | 'IMPORT_GOING_ON'
  /** Its writer says it keeps longer than any published rule of its class allows. */
  | 'KEPT_BEYOND_RULES'
  /** The write with that idempotency key is still running. */
  | 'KEY_IN_USE'
  /** The idempotency key was sent before with other input. */
  | 'KEY_REUSED'
  /** Steps need an appliance of which the reader's kitchen has none. */
  | 'KITCHEN_WITHOUT'
  /** An import would change or refuse more than its feed allows. */
  | 'LIMIT_PASSED'
  /** A line written as text that may mean several things, or nothing that is known. */
  | 'LINE_OPEN'
  /** Stands last, where more problems were found than are listed. */
  | 'MORE_PROBLEMS'
  /** An import put more rows aside than it keeps to be mended: 10,000. The others are only counted. */
  | 'MORE_PUT_ASIDE'
  /** Food that needs the cold is said to keep at room temperature. */
  | 'NEEDS_THE_COLD'
  /** The revision in force says exactly this already. */
  | 'NOTHING_CHANGED'
  /** An amount cannot be turned into what is needed, because a fact is missing. */
  | 'NOT_CONVERTIBLE'
  /** Bytes that are no text in the encoding of the file. */
  | 'NOT_TEXT'
  /** What was scheduled does not wait any more: it was carried out, kept back or cancelled. */
  | 'NOT_WAITING'
  /** The preview has expired, was taken back, or its draft is gone. */
  | 'PREVIEW_ENDED'
  /** A price far from what the other packs of its food cost for as much. */
  | 'PRICE_OUT_OF_LINE'
  /** The publisher that an archive is to be imported into has content already. */
  | 'PUBLISHER_NOT_EMPTY'
  /** The draft says `publish-at`, and that time is to come: schedule its publication. */
  | 'PUBLISH_AT_LATER'
  /** What a person must still say of a recipe before it can be a draft. */
  | 'RECIPE_OPEN'
  /** The row is already resolved. */
  | 'ROW_SETTLED'
  /** A set of published rules of that code is loaded, and says something else. */
  | 'RULE_SET_EXISTS'
  /** A number of servings that cannot be computed. */
  | 'SERVINGS_OUT_OF_RANGE'
  /** Something else has that slug already. */
  | 'SLUG_TAKEN'
  /** A draft was saved, made or discarded since it was read. */
  | 'STALE_DRAFT'
  /** Steps that wait for one another. */
  | 'STEPS_IN_A_CIRCLE'
  /** More than the limit. */
  | 'TOO_LARGE'
  /** A translation of a text that the plan or component does not have; the message offers the nearest. */
  | 'TRANSLATES_NOTHING'
  /** A translation has other numbers than its original; the message has those of both. */
  | 'TRANSLATION_NUMBERS'
  /** A word that its closed list (allergens, keeping classes, aisles ...) does not have; the message offers the nearest. */
  | 'UNKNOWN_CODE'
  /** There is no such component. */
  | 'UNKNOWN_COMPONENT'
  /** There is no such delivery. */
  | 'UNKNOWN_DELIVERY'
  /** There is no such draft. */
  | 'UNKNOWN_DRAFT'
  /** There is no such feed. */
  | 'UNKNOWN_FEED'
  /** The feed has no such file. */
  | 'UNKNOWN_FILE'
  /** There is no such food. */
  | 'UNKNOWN_FOOD'
  /** No picture was handed in under that name or hash. */
  | 'UNKNOWN_IMAGE'
  /** A food has no such part. */
  | 'UNKNOWN_PART'
  /** There is no such plan, or not that revision of it. */
  | 'UNKNOWN_PLAN'
  /** There is no such preview link. */
  | 'UNKNOWN_PREVIEW_LINK'
  /** There is no such publisher. */
  | 'UNKNOWN_PUBLISHER'
  /** A component has no such route. */
  | 'UNKNOWN_ROUTE'
  /** No such row was quarantined. */
  | 'UNKNOWN_ROW'
  /** There is no such import. */
  | 'UNKNOWN_RUN'
  /** Nothing of that id is scheduled. */
  | 'UNKNOWN_SCHEDULED'
  /** There is no such access token. */
  | 'UNKNOWN_TOKEN'
  /** A unit that nobody knows. */
  | 'UNKNOWN_UNIT'
  /** There is no such webhook. */
  | 'UNKNOWN_WEBHOOK'
  /** Waits that no order of the steps keeps. */
  | 'WAITS_CANNOT_BE_KEPT'
  /** The plan was withdrawn by its publisher, as a whole: `message` says when, and the reason given. */
  | 'WITHDRAWN';

/** Which draft to publish. */
export type PublishPlanInput = {
  /** The version of the plan's draft that was read. */
  readonly expectedVersion: Scalars['Int']['input'];
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
  /** Slug of the publisher. */
  readonly publisher: Scalars['String']['input'];
  /** Slug of the plan. */
  readonly slug: Scalars['String']['input'];
};

/** What was published, or what was wrong. */
export type PublishPlanPayload = {
  readonly __typename?: 'PublishPlanPayload';
  /** False if the newest revision said exactly this already. Null if there were problems. */
  readonly created: Maybe<Scalars['Boolean']['output']>;
  /** The revision. Null if there were problems. */
  readonly plan: Maybe<Plan>;
  /** Everything that is wrong, each with its place in the documents. Empty on success. */
  readonly problems: ReadonlyArray<Problem>;
};

/** A writer or a publication that publishes plans. */
export type Publisher = Node & {
  readonly __typename?: 'Publisher';
  /** ISO 4217 code of its prices. Null if it does not say. */
  readonly currency: Maybe<Scalars['String']['output']>;
  /** A few sentences about it, for readers. Null if there is none. */
  readonly description: Maybe<Scalars['String']['output']>;
  /** Opaque id, for `node`. */
  readonly id: Scalars['ID']['output'];
  /** A picture of it. Null if there is none. */
  readonly image: Maybe<Image>;
  /** BCP 47 tags of the languages it publishes in. */
  readonly languages: ReadonlyArray<Scalars['String']['output']>;
  /** Name shown to readers. */
  readonly name: Scalars['String']['output'];
  /** Its plans, newest first, each in its newest revision. */
  readonly plans: PlanConnection;
  /** ISO 3166 code of where it publishes: for its plans that name none, where a reader gives none. Null if it does not say. */
  readonly region: Maybe<Scalars['String']['output']>;
  /** Short name used in addresses; never changes. */
  readonly slug: Scalars['String']['output'];
  /** Its own place on the web, with http or https. Null if there is none. */
  readonly website: Maybe<Scalars['String']['output']>;
};


/** A writer or a publication that publishes plans. */
export type PublisherPlansArgs = {
  after: InputMaybe<Scalars['String']['input']>;
  before: InputMaybe<Scalars['String']['input']>;
  first: InputMaybe<Scalars['Int']['input']>;
  last: InputMaybe<Scalars['Int']['input']>;
};

/** A page of publishers. */
export type PublisherConnection = {
  readonly __typename?: 'PublisherConnection';
  /** The publishers, each with its cursor. */
  readonly edges: ReadonlyArray<PublisherEdge>;
  /** The place of the page in the list. */
  readonly pageInfo: PageInfo;
};

/** A publisher in a page. */
export type PublisherEdge = {
  readonly __typename?: 'PublisherEdge';
  /** An opaque cursor for this place in the list. */
  readonly cursor: Scalars['String']['output'];
  /** The publisher. */
  readonly node: Publisher;
};

/** A publisher that was made or changed, or what was wrong. */
export type PublisherPayload = {
  readonly __typename?: 'PublisherPayload';
  /** Empty on success. */
  readonly problems: ReadonlyArray<Problem>;
  /** Null if there were problems. */
  readonly publisher: Maybe<Publisher>;
};

/** A row of a file that could not be imported. */
export type QuarantinedRow = {
  readonly __typename?: 'QuarantinedRow';
  /** The line it begins on, from 1. */
  readonly line: Scalars['Int']['output'];
  /** A starting point for the correction: for a recipe, the draft as far as it could be read, with what is still open. */
  readonly offer: Maybe<Scalars['String']['output']>;
  /** From 0: several recipes may begin on one line. */
  readonly part: Scalars['Int']['output'];
  /** Everything that is wrong with it. */
  readonly problems: ReadonlyArray<Problem>;
  /** The text of the row in the file. */
  readonly raw: Scalars['String']['output'];
  /** When it was resolved. Null if it is still open. */
  readonly settledAt: Maybe<Scalars['DateTime']['output']>;
};

/** A page of rows that were quarantined. */
export type QuarantinedRowConnection = {
  readonly __typename?: 'QuarantinedRowConnection';
  /** The entries of this page. */
  readonly edges: ReadonlyArray<QuarantinedRowEdge>;
  /** The place of this page in the list. */
  readonly pageInfo: PageInfo;
};

/** One entry in the list. */
export type QuarantinedRowEdge = {
  readonly __typename?: 'QuarantinedRowEdge';
  /** An opaque cursor for this place in the list. */
  readonly cursor: Scalars['String']['output'];
  /** The entry. */
  readonly node: QuarantinedRow;
};

/** All queries. */
export type Query = {
  readonly __typename?: 'Query';
  /** Every write, newest first. Requires the scope ADMIN. */
  readonly auditTrail: AuditEntryConnection;
  /** A food of the open food table. Null if no food has that number. */
  readonly catalogueFood: Maybe<CatalogueFood>;
  /** Foods of the open food table, the plainest description first, so that a writer finds the number to inherit from. */
  readonly catalogueFoods: CatalogueFoodConnection;
  /**
   * What was published, corrected and withdrawn, the oldest first. Keep the last cursor and ask for what comes `after` it: every
   * change is seen once, in order, however many publishers write at the same time. On an empty page keep the cursor you have.
   * `last: 1` gives the newest, to begin from now. Changes are kept for ever, so a cursor never grows old.
   */
  readonly changes: ChangeConnection;
  /**
   * What saving these documents and publishing their plans would report, checked with the publisher's component drafts and
   * today's foods. Nothing is saved. Requires the scope READ_DRAFTS.
   */
  readonly checkDocuments: DocumentsCheck;
  /**
   * What publishing the draft of a plan would report now, checked with its component drafts and today's foods. Null if there is no such
   * draft. Requires the scope READ_DRAFTS.
   */
  readonly checkDraft: Maybe<DraftCheck>;
  /**
   * What changes for readers between two revisions of a plan, or from one to its draft: amounts at the plan's servings, components,
   * days, steps, keeping, allergens, cost. Requires the scope READ_DRAFTS where the draft is compared.
   */
  readonly compare: ReadonlyArray<PlanDifference>;
  /** A component, from the newest revision that holds it. Null if there is none. */
  readonly component: Maybe<Component>;
  /** The draft of a component. Null if there is none. Requires the scope READ_DRAFTS. */
  readonly componentDraft: Maybe<Draft>;
  /** Drafts of one publisher: components, then plans, each by slug. Requires the scope READ_DRAFTS. */
  readonly drafts: DraftConnection;
  /** A feed. Requires the scope IMPORT. */
  readonly feed: Maybe<Feed>;
  /** Feeds of one owner, by slug. Requires the scope IMPORT. */
  readonly feeds: ReadonlyArray<Feed>;
  /**
   * A food as it is known today. Null if there is none. With a publisher, one of its own goes first: as its newest published plan has
   * it, or, with the scope READ_DRAFTS, as it is saved.
   */
  readonly food: Maybe<Food>;
  /** The draft of a publisher's own food. Null if there is none. Requires the scope READ_DRAFTS. */
  readonly foodDraft: Maybe<Draft>;
  /** Foods as they are known today, by slug; for a search the best first. */
  readonly foods: FoodConnection;
  /** The result of an import: what it changed, and what is left to do. Requires the scope IMPORT. Null if there is no such import. */
  readonly importReport: Maybe<ImportReport>;
  /** An import. Requires the scope IMPORT. Null also for one of another publisher. */
  readonly importRun: Maybe<ImportRun>;
  /** Imports of a feed, newest first. Requires the scope IMPORT. Null if there is no such feed. */
  readonly importRuns: Maybe<ImportRunConnection>;
  /**
   * The results of the imports that ended lately, the newest first. An operator's token sees all of them; a publisher's token
   * sees that publisher's. Requires the scope IMPORT.
   */
  readonly morningReport: Maybe<MorningReport>;
  /** Any object that has an id. Null if it no longer exists. */
  readonly node: Maybe<Node>;
  /** Several of them, in the order asked for; null for those that no longer exist, and for what is no id of this service. */
  readonly nodes: ReadonlyArray<Maybe<Node>>;
  /** The packs that a publisher adds to a food. Requires the scope READ_DRAFTS. */
  readonly packsDraft: Maybe<Draft>;
  /** The factor that fits a recipe to another pan at the same depth. Oven times do not scale with it: check them. */
  readonly panFactor: PanFactor;
  /**
   * One plan. Null if there is none of that name, or none of that revision. Null with an error of the code `WITHDRAWN`, which says when and
   * why, if its publisher took it back as a whole.
   */
  readonly plan: Maybe<Plan>;
  /** The draft of a plan. Null if there is none. Requires the scope READ_DRAFTS. */
  readonly planDraft: Maybe<Draft>;
  /**
   * How often readers asked for the plans of a publisher: a row for each plan and day (UTC) with requests, newest day first. Counted are answers to
   * requests that name one plan, in their address or as `plan` in GraphQL, without a token or with one for `READ` alone; nothing is kept of who asked.
   * Some seconds late. Days are kept for 400 days. Requires the scope READ_DRAFTS.
   */
  readonly planRequests: PlanRequestsConnection;
  /**
   * Published plans, newest first, each in its newest revision. Before a page is answered its plans are held against the rules and foods of today;
   * one that is no longer what was asked for is left out, so that a page may be shorter than was asked for.
   */
  readonly plans: PlanConnection;
  /** Several plans by their names, in the order asked for; null where there is none, or it was withdrawn as a whole. */
  readonly plansBySlug: ReadonlyArray<Maybe<Plan>>;
  /**
   * The draft that a preview link shows, to whoever has its address `/preview/PUBLISHER/SLUG/SECRET`: no access token is needed. Null if there
   * is no such link. The code PREVIEW_ENDED says that it has expired, was taken back, or that the draft is gone.
   */
  readonly preview: Maybe<DraftPreview>;
  /** Preview links of one publisher, newest first, those that have ended too; never their addresses. Requires the scope READ_DRAFTS. */
  readonly previewLinks: PreviewLinkConnection;
  /** A publisher. Null if there is none. */
  readonly publisher: Maybe<Publisher>;
  /** Publishers with a plan in force, by slug. */
  readonly publishers: PublisherConnection;
  /** What an import quarantined, in the order of its file. Requires the scope IMPORT. Null if there is no such import. */
  readonly quarantinedRows: Maybe<QuarantinedRowConnection>;
  /**
   * Reads ingredient lines as people write them: "2 cups pearl barley, rinsed". Made for editors. Without `publisher`, lines
   * may name the foods that all publishers share, and no token is needed. Its cost grows with the length of the texts.
   */
  readonly readLines: LinesRead;
  /** Every set of published rules that was loaded, the one that begins last first. */
  readonly ruleSets: ReadonlyArray<RuleSet>;
  /** Publications and withdrawals of one publisher that are scheduled, and what became of them, the next first. Requires the scope READ_DRAFTS. */
  readonly scheduled: ScheduledChangeConnection;
  /** One list for several plans, each at its own servings, or what is wrong with what was asked, all of it, in `problems` and in no error. */
  readonly shopping: ShoppingPayload;
  /**
   * One list for several plans, each at its own servings.
   * @deprecated Since 2026-11-30: use `shopping`, which lists what is wrong with what was asked.
   */
  readonly shoppingList: ShoppingList;
  /** Access tokens, newest first, revoked ones too. Requires the scope ADMIN. */
  readonly tokens: AccessTokenConnection;
  /**
   * The translation of a plan or a component into a language. Null if there is none. Its slug is made of language, kind and slug:
   * `de-plan-barley-lunches`. Requires the scope READ_DRAFTS.
   */
  readonly translationDraft: Maybe<Draft>;
  /**
   * What documents of a publisher mean by the names of these files now. A name that no picture was handed in under is left out.
   *
   * Scope: `WRITE` or `READ_DRAFTS`. Pictures are handed in over REST: `POST /v1/publishers/{publisher}/images?file=photos/soup.jpg`.
   */
  readonly uploadedImages: ReadonlyArray<UploadedImage>;
  /** The access token that was sent with this request: its owner, its scopes and its expiry. Null without a token. */
  readonly viewer: Maybe<AccessToken>;
  /** Every closed list that fields take their codes from, as it is today. Documents are checked against the same lists. */
  readonly vocabulary: Vocabulary;
  /** Deliveries to one webhook, sent and waiting, newest first. Requires the scope WEBHOOKS or ADMIN. */
  readonly webhookDeliveries: WebhookDeliveryConnection;
  /** Webhooks, newest first. Requires the scope WEBHOOKS or ADMIN. */
  readonly webhooks: WebhookConnection;
};


/** All queries. */
export type QueryAuditTrailArgs = {
  after: InputMaybe<Scalars['String']['input']>;
  before: InputMaybe<Scalars['String']['input']>;
  first: InputMaybe<Scalars['Int']['input']>;
  last: InputMaybe<Scalars['Int']['input']>;
  publisher: InputMaybe<Scalars['String']['input']>;
};


/** All queries. */
export type QueryCatalogueFoodArgs = {
  ndbNo: Scalars['String']['input'];
};


/** All queries. */
export type QueryCatalogueFoodsArgs = {
  after: InputMaybe<Scalars['String']['input']>;
  before: InputMaybe<Scalars['String']['input']>;
  first: InputMaybe<Scalars['Int']['input']>;
  last: InputMaybe<Scalars['Int']['input']>;
  search: InputMaybe<Scalars['String']['input']>;
};


/** All queries. */
export type QueryChangesArgs = {
  after: InputMaybe<Scalars['String']['input']>;
  before: InputMaybe<Scalars['String']['input']>;
  first: InputMaybe<Scalars['Int']['input']>;
  last: InputMaybe<Scalars['Int']['input']>;
  publisher: InputMaybe<Scalars['String']['input']>;
};


/** All queries. */
export type QueryCheckDocumentsArgs = {
  publisher: Scalars['String']['input'];
  region: InputMaybe<Scalars['String']['input']>;
  texts: ReadonlyArray<DocumentTextInput>;
};


/** All queries. */
export type QueryCheckDraftArgs = {
  publisher: Scalars['String']['input'];
  region: InputMaybe<Scalars['String']['input']>;
  slug: Scalars['String']['input'];
};


/** All queries. */
export type QueryCompareArgs = {
  from: InputMaybe<Scalars['Int']['input']>;
  publisher: Scalars['String']['input'];
  slug: Scalars['String']['input'];
  to: InputMaybe<Scalars['Int']['input']>;
};


/** All queries. */
export type QueryComponentArgs = {
  publisher: Scalars['String']['input'];
  slug: Scalars['String']['input'];
};


/** All queries. */
export type QueryComponentDraftArgs = {
  publisher: Scalars['String']['input'];
  slug: Scalars['String']['input'];
};


/** All queries. */
export type QueryDraftsArgs = {
  after: InputMaybe<Scalars['String']['input']>;
  before: InputMaybe<Scalars['String']['input']>;
  first: InputMaybe<Scalars['Int']['input']>;
  kind: InputMaybe<DraftKind>;
  last: InputMaybe<Scalars['Int']['input']>;
  publisher: Scalars['String']['input'];
};


/** All queries. */
export type QueryFeedArgs = {
  publisher: InputMaybe<Scalars['String']['input']>;
  slug: Scalars['String']['input'];
};


/** All queries. */
export type QueryFeedsArgs = {
  publisher: InputMaybe<Scalars['String']['input']>;
};


/** All queries. */
export type QueryFoodArgs = {
  publisher: InputMaybe<Scalars['String']['input']>;
  slug: Scalars['String']['input'];
};


/** All queries. */
export type QueryFoodDraftArgs = {
  publisher: Scalars['String']['input'];
  slug: Scalars['String']['input'];
};


/** All queries. */
export type QueryFoodsArgs = {
  after: InputMaybe<Scalars['String']['input']>;
  before: InputMaybe<Scalars['String']['input']>;
  filter: InputMaybe<FoodFilter>;
  first: InputMaybe<Scalars['Int']['input']>;
  last: InputMaybe<Scalars['Int']['input']>;
};


/** All queries. */
export type QueryImportReportArgs = {
  run: Scalars['ID']['input'];
};


/** All queries. */
export type QueryImportRunArgs = {
  id: Scalars['ID']['input'];
};


/** All queries. */
export type QueryImportRunsArgs = {
  after: InputMaybe<Scalars['String']['input']>;
  before: InputMaybe<Scalars['String']['input']>;
  feed: Scalars['String']['input'];
  first: InputMaybe<Scalars['Int']['input']>;
  last: InputMaybe<Scalars['Int']['input']>;
  publisher: InputMaybe<Scalars['String']['input']>;
};


/** All queries. */
export type QueryMorningReportArgs = {
  hours?: Scalars['Int']['input'];
};


/** All queries. */
export type QueryNodeArgs = {
  id: Scalars['ID']['input'];
};


/** All queries. */
export type QueryNodesArgs = {
  ids: ReadonlyArray<Scalars['ID']['input']>;
};


/** All queries. */
export type QueryPacksDraftArgs = {
  publisher: Scalars['String']['input'];
  slug: Scalars['String']['input'];
};


/** All queries. */
export type QueryPanFactorArgs = {
  from: PanInput;
  to: PanInput;
};


/** All queries. */
export type QueryPlanArgs = {
  publisher: Scalars['String']['input'];
  revision: InputMaybe<Scalars['Int']['input']>;
  slug: Scalars['String']['input'];
};


/** All queries. */
export type QueryPlanDraftArgs = {
  publisher: Scalars['String']['input'];
  slug: Scalars['String']['input'];
};


/** All queries. */
export type QueryPlanRequestsArgs = {
  after: InputMaybe<Scalars['String']['input']>;
  before: InputMaybe<Scalars['String']['input']>;
  first: InputMaybe<Scalars['Int']['input']>;
  last: InputMaybe<Scalars['Int']['input']>;
  publisher: Scalars['String']['input'];
  slug: InputMaybe<Scalars['String']['input']>;
};


/** All queries. */
export type QueryPlansArgs = {
  after: InputMaybe<Scalars['String']['input']>;
  before: InputMaybe<Scalars['String']['input']>;
  filter: InputMaybe<PlanFilter>;
  first: InputMaybe<Scalars['Int']['input']>;
  last: InputMaybe<Scalars['Int']['input']>;
  orderBy: InputMaybe<PlanOrder>;
};


/** All queries. */
export type QueryPlansBySlugArgs = {
  plans: ReadonlyArray<PlanNameInput>;
};


/** All queries. */
export type QueryPreviewArgs = {
  publisher: Scalars['String']['input'];
  secret: Scalars['String']['input'];
  slug: Scalars['String']['input'];
};


/** All queries. */
export type QueryPreviewLinksArgs = {
  after: InputMaybe<Scalars['String']['input']>;
  before: InputMaybe<Scalars['String']['input']>;
  first: InputMaybe<Scalars['Int']['input']>;
  last: InputMaybe<Scalars['Int']['input']>;
  publisher: Scalars['String']['input'];
};


/** All queries. */
export type QueryPublisherArgs = {
  slug: Scalars['String']['input'];
};


/** All queries. */
export type QueryPublishersArgs = {
  after: InputMaybe<Scalars['String']['input']>;
  before: InputMaybe<Scalars['String']['input']>;
  first: InputMaybe<Scalars['Int']['input']>;
  last: InputMaybe<Scalars['Int']['input']>;
};


/** All queries. */
export type QueryQuarantinedRowsArgs = {
  after: InputMaybe<Scalars['String']['input']>;
  before: InputMaybe<Scalars['String']['input']>;
  first: InputMaybe<Scalars['Int']['input']>;
  last: InputMaybe<Scalars['Int']['input']>;
  run: Scalars['ID']['input'];
};


/** All queries. */
export type QueryReadLinesArgs = {
  locale: Scalars['String']['input'];
  measures: InputMaybe<MeasureSystem>;
  publisher: InputMaybe<Scalars['String']['input']>;
  texts: ReadonlyArray<Scalars['String']['input']>;
};


/** All queries. */
export type QueryScheduledArgs = {
  after: InputMaybe<Scalars['String']['input']>;
  before: InputMaybe<Scalars['String']['input']>;
  first: InputMaybe<Scalars['Int']['input']>;
  last: InputMaybe<Scalars['Int']['input']>;
  publisher: Scalars['String']['input'];
  states?: InputMaybe<ReadonlyArray<ScheduledState>>;
};


/** All queries. */
export type QueryShoppingArgs = {
  household: InputMaybe<HouseholdInput>;
  plans: ReadonlyArray<PlanPortionInput>;
};


/** All queries. */
export type QueryShoppingListArgs = {
  household: InputMaybe<HouseholdInput>;
  plans: ReadonlyArray<PlanPortionInput>;
};


/** All queries. */
export type QueryTokensArgs = {
  after: InputMaybe<Scalars['String']['input']>;
  before: InputMaybe<Scalars['String']['input']>;
  first: InputMaybe<Scalars['Int']['input']>;
  last: InputMaybe<Scalars['Int']['input']>;
  publisher: InputMaybe<Scalars['String']['input']>;
};


/** All queries. */
export type QueryTranslationDraftArgs = {
  publisher: Scalars['String']['input'];
  slug: Scalars['String']['input'];
};


/** All queries. */
export type QueryUploadedImagesArgs = {
  files: ReadonlyArray<Scalars['String']['input']>;
  publisher: Scalars['String']['input'];
};


/** All queries. */
export type QueryVocabularyArgs = {
  locale: InputMaybe<Scalars['String']['input']>;
};


/** All queries. */
export type QueryWebhookDeliveriesArgs = {
  after: InputMaybe<Scalars['String']['input']>;
  before: InputMaybe<Scalars['String']['input']>;
  first: InputMaybe<Scalars['Int']['input']>;
  last: InputMaybe<Scalars['Int']['input']>;
  state: InputMaybe<DeliveryState>;
  webhook: Scalars['ID']['input'];
};


/** All queries. */
export type QueryWebhooksArgs = {
  after: InputMaybe<Scalars['String']['input']>;
  before: InputMaybe<Scalars['String']['input']>;
  first: InputMaybe<Scalars['Int']['input']>;
  last: InputMaybe<Scalars['Int']['input']>;
  publisher: InputMaybe<Scalars['String']['input']>;
};

/** Who named a region. Each goes before those below it. */
export type RegionOwner =
  /** The plan. */
  | 'PLAN'
  /** The publisher of the plan. */
  | 'PUBLISHER'
  /** The reader, in the household. */
  | 'READER';

/** Which feed to remove. */
export type RemoveFeedInput = {
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
  /** Slug of its publisher. Default: the operator's. */
  readonly publisher?: InputMaybe<Scalars['String']['input']>;
  /** Its slug. */
  readonly slug: Scalars['String']['input'];
};

/** A feed that was removed, or why not. */
export type RemoveFeedPayload = {
  readonly __typename?: 'RemoveFeedPayload';
  /** What is wrong. Empty if the change was made. */
  readonly problems: ReadonlyArray<Problem>;
  /** Slug of the feed. Null if there were problems. */
  readonly removed: Maybe<Scalars['String']['output']>;
};

/** A picture to remove. */
export type RemoveImageInput = {
  /** SHA-256, hex, of the picture as it is kept. It stands in its addresses. */
  readonly hash: Scalars['String']['input'];
  /** Any text of your own: the same key with the same input gives the first answer again. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
  /** Slug of its publisher. */
  readonly publisher: Scalars['String']['input'];
};

/** What became of it. */
export type RemoveImagePayload = {
  readonly __typename?: 'RemoveImagePayload';
  /** What is wrong with the input. Nothing was changed. */
  readonly problems: ReadonlyArray<Problem>;
  /** The hash of the picture that was removed. Null where there are problems. */
  readonly removed: Maybe<Scalars['String']['output']>;
};

/** Which import to do again. */
export type ReplayImportInput = {
  /** Find out what it would do, and load nothing. */
  readonly dryRun?: InputMaybe<Scalars['Boolean']['input']>;
  /** Load even if the import exceeds a limit of its feed. */
  readonly force?: InputMaybe<Scalars['Boolean']['input']>;
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
  /** Its id. */
  readonly run: Scalars['ID']['input'];
};

/** Which delivery to send again. */
export type ReplayWebhookDeliveryInput = {
  /** Its id. */
  readonly id: Scalars['ID']['input'];
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
};

/** Which link to take back. */
export type RevokePreviewLinkInput = {
  /** Its id. */
  readonly id: Scalars['ID']['input'];
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
};

/** A link that was taken back, or what was wrong. */
export type RevokePreviewLinkPayload = {
  readonly __typename?: 'RevokePreviewLinkPayload';
  /** Null if there were problems. */
  readonly link: Maybe<PreviewLink>;
  /** Empty if all went well. */
  readonly problems: ReadonlyArray<Problem>;
};

/** The token to revoke. */
export type RevokeTokenInput = {
  /** Its id: the eight characters after `prepwright_`. */
  readonly id: Scalars['ID']['input'];
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
};

/** A token that was revoked, or what was wrong. */
export type RevokeTokenPayload = {
  readonly __typename?: 'RevokeTokenPayload';
  /** Empty on success. */
  readonly problems: ReadonlyArray<Problem>;
  /** Null if there were problems. */
  readonly token: Maybe<AccessToken>;
};

/** Another way to get one batch of a component. */
export type Route = {
  readonly __typename?: 'Route';
  /** Whether it is made or bought. */
  readonly kind: RouteKind;
  /** What goes into it instead. */
  readonly lines: ReadonlyArray<Line>;
  /** Name, unique inside the component. */
  readonly name: Scalars['String']['output'];
  /** How it is made instead. */
  readonly steps: ReadonlyArray<Step>;
};

/** The route for one component. */
export type RouteChoiceInput = {
  /** Slug of the component. */
  readonly component: Scalars['String']['input'];
  /** Name of one of its routes. */
  readonly route: Scalars['String']['input'];
};

/** Whether a route is cooked or comes from a shop. */
export type RouteKind =
  /** Bought ready. */
  | 'BUY'
  /** Made another way. */
  | 'MAKE';

/** How to choose between making and buying. */
export type RouteMode =
  /** As the plan says. */
  | 'AS_WRITTEN'
  /** What costs least. */
  | 'CHEAPEST'
  /** What takes the least work. */
  | 'LEAST_WORK';

/** How to get components that can be made or bought. */
export type RoutesInput = {
  /** Choices for single components. */
  readonly byName: ReadonlyArray<RouteChoiceInput>;
  /** The rule for all components that are not named. */
  readonly mode: RouteMode;
};

/** A row of a file that was taken although something is wrong with it. */
export type RowWarning = {
  readonly __typename?: 'RowWarning';
  /** The line it begins on, from 1. */
  readonly line: Scalars['Int']['output'];
  /** From 0: several recipes may begin on one line. */
  readonly part: Scalars['Int']['output'];
  /** What is wrong with it, and what it may have meant. */
  readonly problem: Problem;
};

/** A file of published rules. */
export type RuleFileInput = {
  /** Its name, to tell where a problem is. */
  readonly name: Scalars['String']['input'];
  /** Its text. */
  readonly text: Scalars['String']['input'];
};

/** How the region asked for and the rules used belong together. */
export type RuleReach =
  /** The rule was written for kitchens that sell food, or the other way round. */
  | 'OTHER_AUDIENCE'
  /** The rules are those of the region. */
  | 'REGION'
  /** No region was given; the strictest rules were used. */
  | 'REGION_NOT_GIVEN'
  /** The region has no rule of its own for this; those of the plan's or the publisher's region were used (`whose`), or the strictest of all. */
  | 'REGION_WITHOUT_RULE';

/** Whose published rules were used. */
export type RuleScope = {
  readonly __typename?: 'RuleScope';
  /** The region that the reader asked for. Null if the reader named none. */
  readonly asked: Maybe<Scalars['String']['output']>;
  /** How the two belong together. */
  readonly reach: RuleReach;
  /** The region whose rules were used. */
  readonly used: Scalars['String']['output'];
  /** Who named the region whose rules were used. Null if nobody did; the strictest rules of all regions were used then. */
  readonly whose: Maybe<RegionOwner>;
};

/**
 * Published rules that were issued together: keeping, handling, cautions, allergen lists, diets. A set never changes;
 * from the first day of a later set on, answers are computed by that one.
 */
export type RuleSet = {
  readonly __typename?: 'RuleSet';
  /** SHA-256 of its content, in hexadecimal. */
  readonly checksum: Scalars['String']['output'];
  /** Its edition. No two sets have the same. */
  readonly code: Scalars['String']['output'];
  /** The first day it is used. */
  readonly inForceFrom: Scalars['Date']['output'];
  /** The first day of the set that took its place. Null if it is the newest. */
  readonly inForceTo: Maybe<Scalars['Date']['output']>;
  /** When it was loaded. */
  readonly loadedAt: Scalars['DateTime']['output'];
  /** Title. */
  readonly title: Scalars['String']['output'];
};

/** What published rules are about. More may be added. */
export type RuleSubject =
  /** What must be declared. */
  | 'ALLERGENS'
  /** Words of cautions. */
  | 'CAUTIONS'
  /** What breaks a diet, and what a claim is tied to. */
  | 'DIETS'
  /** Cooling, reheating, thawing, temperatures. */
  | 'HANDLING'
  /** How long food keeps. */
  | 'KEEPING';

/** A region that rules were published for. */
export type RuledRegion = {
  readonly __typename?: 'RuledRegion';
  /** ISO 3166 code, `EU`, `ANZ` (Australia and New Zealand), or `INT` for all. */
  readonly code: Scalars['String']['output'];
  /** ISO 3166 codes that a household may name for it. Null if it may be any. */
  readonly holdsIn: Maybe<ReadonlyArray<Scalars['String']['output']>>;
  /** For people, in the locale. */
  readonly name: Scalars['String']['output'];
  /** What they are about. */
  readonly rules: ReadonlyArray<RuleSubject>;
};

/** Documents to save together. */
export type SaveDocumentsInput = {
  /** The versions of the drafts that are there already. A draft that is not named here must be new. */
  readonly expected?: InputMaybe<ReadonlyArray<ExpectedDraftInput>>;
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
  /** Slug of the publisher. */
  readonly publisher: Scalars['String']['input'];
  /** The texts, with at most 300 documents among them. Each may have 50,000 keys, 100,000 entries of lists and maps, and 24 levels. */
  readonly texts: ReadonlyArray<DocumentTextInput>;
};

/** Documents that were saved, or what was wrong. */
export type SaveDocumentsPayload = {
  readonly __typename?: 'SaveDocumentsPayload';
  /** The drafts as saved. Null if there were problems. */
  readonly drafts: Maybe<ReadonlyArray<SavedDraft>>;
  /** The foods as saved: the publisher's own, which are drafts too, or those that all share, from the operator. Null if there were problems. */
  readonly foods: Maybe<ReadonlyArray<Food>>;
  /** Everything that is wrong in all documents, each with its place. Empty on success. */
  readonly problems: ReadonlyArray<Problem>;
};

/** One document to save. */
export type SaveDraftInput = {
  /** The version of the draft that was read. Omit it for a new draft. */
  readonly expectedVersion?: InputMaybe<Scalars['Int']['input']>;
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
  /** The name that problems use for the text, such as a file name. */
  readonly name: Scalars['String']['input'];
  /** Slug of the publisher. */
  readonly publisher: Scalars['String']['input'];
  /** The text, with one document, YAML or JSON. */
  readonly text: Scalars['String']['input'];
};

/** A document that was saved, or what was wrong. */
export type SaveDraftPayload = {
  readonly __typename?: 'SaveDraftPayload';
  /** The draft as saved. Null if there were problems. */
  readonly draft: Maybe<SavedDraft>;
  /** Everything that is wrong, each with its place. Empty on success. */
  readonly problems: ReadonlyArray<Problem>;
};

/** A feed to save. */
export type SaveFeedInput = {
  /** When it is imported: five fields as in a crontab. Without it, the feed is imported only on request. */
  readonly cron?: InputMaybe<Scalars['String']['input']>;
  /** Whether it is imported at its time. Default: yes. */
  readonly enabled?: InputMaybe<Scalars['Boolean']['input']>;
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
  /** What its files hold. It cannot be changed later. */
  readonly kind: FeedKind;
  /** Slug of its publisher. Default: the operator's. */
  readonly publisher?: InputMaybe<Scalars['String']['input']>;
  /** How its files are fetched and read. */
  readonly settings: FeedSettingsInput;
  /** Lower-case letters and digits, words joined by hyphens. */
  readonly slug: Scalars['String']['input'];
  /** IANA time zone of `cron`. Default: UTC. */
  readonly zone?: InputMaybe<Scalars['String']['input']>;
};

/** Foods to save together. */
export type SaveFoodsInput = {
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
  /** The texts, with at most 300 documents among them. Each may have 50,000 keys, 100,000 entries of lists and maps, and 24 levels. */
  readonly texts: ReadonlyArray<DocumentTextInput>;
};

/** Foods that were saved, or what was wrong. */
export type SaveFoodsPayload = {
  readonly __typename?: 'SaveFoodsPayload';
  /** How many of them are new or different. Null if there were problems. */
  readonly changed: Maybe<Scalars['Int']['output']>;
  /** The foods as known now. Null if there were problems. */
  readonly foods: Maybe<ReadonlyArray<Food>>;
  /** Everything that is wrong, each with its place. Empty on success. */
  readonly problems: ReadonlyArray<Problem>;
};

/** A draft as it was saved. */
export type SavedDraft = {
  readonly __typename?: 'SavedDraft';
  /** The draft as it is now. Null if it was discarded since. Requires the scope READ_DRAFTS. */
  readonly draft: Maybe<Draft>;
  /** What it is a draft of. */
  readonly kind: DraftKind;
  /** Its slug. */
  readonly slug: Scalars['String']['output'];
  /** Its version after this save. */
  readonly version: Scalars['Int']['output'];
};

/** A component computed. `used` + `leftOver` = `made`, what was on hand not counted in `made`. */
export type ScaledComponent = {
  readonly __typename?: 'ScaledComponent';
  /** How many batches are made. */
  readonly batches: Scalars['Float']['output'];
  /** The component as written. */
  readonly component: Component;
  /** How much of it is left. */
  readonly leftOver: Amount;
  /** Its lines, scaled and swapped. */
  readonly lines: ReadonlyArray<ScaledLine>;
  /** Pots or trays it is made in. */
  readonly loads: Scalars['Int']['output'];
  /** How much is made. */
  readonly made: Amount;
  /** How much was there already. */
  readonly onHand: Amount;
  /** The route taken. Null if it is made as written. */
  readonly route: Maybe<Route>;
  /** How much of it goes into meals and other components. */
  readonly used: Amount;
};

/** A line after scaling and swapping. */
export type ScaledLine = {
  readonly __typename?: 'ScaledLine';
  /** How much. Null if it is added to taste. */
  readonly amount: Maybe<Amount>;
  /** The component that is used. */
  readonly component: Maybe<Component>;
  /** The food that is used, after any swap. */
  readonly food: Maybe<Food>;
  /** The line as written. */
  readonly line: Line;
  /** The part of the food that is used. */
  readonly part: Maybe<Scalars['String']['output']>;
  /** The same for people, in the reader's language. */
  readonly partName: Maybe<Scalars['String']['output']>;
  /** The food is not the one written: a swap was taken. */
  readonly swapped: Scalars['Boolean']['output'];
};

/** A meal computed. */
export type ScaledMeal = {
  readonly __typename?: 'ScaledMeal';
  /** What the meal contains of what must be declared. */
  readonly allergens: AllergenStatement;
  /** The meal held against every diet there is a rule for. */
  readonly diets: ReadonlyArray<Diet>;
  /** Servings asked for, divided by the people the meal is written for. */
  readonly factor: Scalars['Float']['output'];
  /** Its lines, scaled and swapped. */
  readonly lines: ReadonlyArray<ScaledLine>;
  /** The meal as written. */
  readonly meal: Meal;
  /** What one serving of the meal gives. */
  readonly nutrition: NutritionPerServing;
};

/** A plan computed for a number of servings and one household. */
export type ScaledPlan = {
  readonly __typename?: 'ScaledPlan';
  /** What the whole plan contains of what must be declared. */
  readonly allergens: AllergenStatement;
  /** What to mind in the kitchen. The words are the same wherever they are shown. */
  readonly cautions: ReadonlyArray<Caution>;
  /** The components, in an order in which they can be made. */
  readonly components: ReadonlyArray<ScaledComponent>;
  /** The plan held against every diet there is a rule for. */
  readonly diets: ReadonlyArray<Diet>;
  /** What the writer says before anything else, in that language. Null if nothing. */
  readonly introduction: Maybe<WrittenText>;
  /** BCP 47 tag of the language of the writer's texts: one that the plan was translated into, by `household.locale`, or else the plan's own. */
  readonly language: Scalars['String']['output'];
  /**
   * BCP 47 tags of the languages this answer is in: that of sentences, cautions and names of lists, by `household.locale` or else the plan's, then that
   * of the writer's texts where it is another one, then that of texts which were not translated. Sentences are in English, German, French, Spanish or Polish.
   */
  readonly languages: ReadonlyArray<Scalars['String']['output']>;
  /** The meals, in the order of their days. */
  readonly meals: ReadonlyArray<ScaledMeal>;
  /** Notes, in that language. Null if there are none. */
  readonly notes: Maybe<WrittenText>;
  /** What all meals together give one person: a serving of each. */
  readonly nutrition: NutritionPerServing;
  /**
   * Where it holds: keeping rules, allergen lists, prices and units are those of the first region, and each further one counts where those
   * before it have no rule of their own. Empty if neither the reader, the plan nor its publisher says; the strictest of all regions holds.
   */
  readonly regions: ReadonlyArray<OwnedRegion>;
  /** How many it was computed for. */
  readonly servings: Scalars['Int']['output'];
  /** The order of the prep session. Null, with an error that says why, where the steps cannot be put in any order. */
  readonly session: Maybe<PrepSession>;
  /**
   * The sessions to do it in, by day. One where one serves: `session`. Where one cannot keep the limits of its steps, or is more than a
   * day's work (`moreThanADay`), several: what is eaten later is made later, up to the day on which it is eaten, and in parts where that
   * is not enough. Nothing keeps longer than from the first day, which `storage` reckons with. Empty where no division keeps the limits either;
   * the error of `session` then says why.
   */
  readonly sessions: ReadonlyArray<PrepSession>;
  /** What to buy for it. */
  readonly shoppingList: ShoppingList;
  /** How long every component, meal and food keeps: where it is best kept first. */
  readonly storage: ReadonlyArray<StorageGuidance>;
  /** A sentence or two about the plan, in that language. Null if there is none. */
  readonly summary: Maybe<Scalars['String']['output']>;
  /** Tips, in that language. Null if there are none. */
  readonly tips: Maybe<WrittenText>;
  /** Title, in that language. */
  readonly title: Scalars['String']['output'];
  /** What the reader should know beside the answer. */
  readonly warnings: ReadonlyArray<Warning>;
};

/** A plan computed for one household, or what is wrong with what was asked. Other fields of the answer are as they would be. */
export type ScalingPayload = {
  readonly __typename?: 'ScalingPayload';
  /** Everything that is wrong with the servings and the household, each with its place. Empty on success. */
  readonly problems: ReadonlyArray<Problem>;
  /** Null if there were problems. */
  readonly scaled: Maybe<ScaledPlan>;
};

/** How a line grows. */
export type ScalingRule =
  /** Once for every batch begun: a bay leaf. */
  | 'PER_BATCH'
  /** Slower than the pot, by an exponent: seasoning. */
  | 'POWER'
  /** With the pot. */
  | 'PROPORTIONAL'
  /** No amount at all. */
  | 'TO_TASTE';

/** A publication at a time. */
export type SchedulePublicationInput = {
  /** When, on the clock of `zone`: `2026-12-24T06:00`. An hour that the clocks repeat needs its offset: `2026-10-25T02:30+01:00`. */
  readonly at: Scalars['String']['input'];
  /** A note for readers of what was published before. */
  readonly changeNote?: InputMaybe<Scalars['String']['input']>;
  /** The version of the plan's draft that was read. */
  readonly expectedVersion: Scalars['Int']['input'];
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
  /** Slug of the publisher. */
  readonly publisher: Scalars['String']['input'];
  /** Slug of the plan. */
  readonly slug: Scalars['String']['input'];
  /** IANA name of the time zone, such as `Europe/Berlin`. */
  readonly zone: Scalars['String']['input'];
};

/** A withdrawal at a time. */
export type ScheduleWithdrawalInput = {
  /** When, on the clock of `zone`: `2026-12-24T06:00`. An hour that the clocks repeat needs its offset: `2026-10-25T02:30+01:00`. */
  readonly at: Scalars['String']['input'];
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
  /** Slug of the publisher. */
  readonly publisher: Scalars['String']['input'];
  /** Why, in words for readers. */
  readonly reason: Scalars['String']['input'];
  /** Slug of the plan. */
  readonly slug: Scalars['String']['input'];
  /** IANA name of the time zone, such as `Europe/Berlin`. */
  readonly zone: Scalars['String']['input'];
};

/** A publication or a withdrawal of a plan at a time. */
export type ScheduledChange = {
  readonly __typename?: 'ScheduledChange';
  /** Why it was cancelled. Null if it was not. */
  readonly cancelledBecause: Maybe<CancelledBecause>;
  /** The note for readers of the revision before. Null if there is none. */
  readonly changeNote: Maybe<Scalars['String']['output']>;
  /** When it was asked for. */
  readonly createdAt: Scalars['DateTime']['output'];
  /** When it is due. */
  readonly dueAt: Scalars['DateTime']['output'];
  /** When it was carried out, kept back or cancelled. Null if it waits. */
  readonly endedAt: Maybe<Scalars['DateTime']['output']>;
  /** Its id. */
  readonly id: Scalars['ID']['output'];
  /** What is to be done. */
  readonly kind: ScheduledKind;
  /** The same on the clock of `zone`, such as `2026-12-24T06:00`. */
  readonly localTime: Scalars['String']['output'];
  /** What to know about it, in a sentence. */
  readonly notice: Scalars['String']['output'];
  /** Why it was kept back. */
  readonly problems: ReadonlyArray<Problem>;
  /** Whose plan it is. */
  readonly publisher: Publisher;
  /** The reason for readers. Null if it is a publication. */
  readonly reason: Maybe<Scalars['String']['output']>;
  /** Number of the revision that was published or withdrawn. Null if it was not carried out. */
  readonly revision: Maybe<Scalars['Int']['output']>;
  /** Slug of the plan. */
  readonly slug: Scalars['String']['output'];
  /** How it stands. */
  readonly state: ScheduledState;
  /** Version of the draft that is published. Null if it is a withdrawal. */
  readonly version: Maybe<Scalars['Int']['output']>;
  /** IANA name of the time zone. */
  readonly zone: Scalars['String']['output'];
};

/** A page of what is scheduled. */
export type ScheduledChangeConnection = {
  readonly __typename?: 'ScheduledChangeConnection';
  /** The entries of this page. */
  readonly edges: ReadonlyArray<ScheduledChangeEdge>;
  /** Where this page lies. */
  readonly pageInfo: PageInfo;
};

/** One entry in a list of what is scheduled. */
export type ScheduledChangeEdge = {
  readonly __typename?: 'ScheduledChangeEdge';
  /** Place in the list. */
  readonly cursor: Scalars['String']['output'];
  /** The publication or withdrawal. */
  readonly node: ScheduledChange;
};

/** What is to be done at a time. */
export type ScheduledKind =
  /** The draft is published. */
  | 'PUBLISH'
  /** The plan is withdrawn as a whole. */
  | 'WITHDRAW';

/** What is scheduled, or what was wrong. */
export type ScheduledPayload = {
  readonly __typename?: 'ScheduledPayload';
  /** Empty if all went well. */
  readonly problems: ReadonlyArray<Problem>;
  /** Null if there were problems. */
  readonly scheduled: Maybe<ScheduledChange>;
};

/** How something scheduled stands. */
export type ScheduledState =
  /** It was cancelled. */
  | 'CANCELLED'
  /** It was carried out. */
  | 'DONE'
  /** It could not be carried out; `problems` says why. */
  | 'KEPT_BACK'
  /** It is not due yet. */
  | 'WAITING';

/** What an access token may do, for its own publisher, or the operator's for every publisher. No scope includes another. */
export type Scope =
  /** Create and revoke tokens and webhooks, and read the audit trail. */
  | 'ADMIN'
  /** Run imports. */
  | 'IMPORT'
  /** Publish, correct and withdraw. */
  | 'PUBLISH'
  /** See what everybody sees, with points of its own. For apps and their servers. */
  | 'READ'
  /** See what is not published yet. */
  | 'READ_DRAFTS'
  /** Create and remove webhooks, and see what was sent to them. ADMIN may do so too. */
  | 'WEBHOOKS'
  /** Save drafts. */
  | 'WRITE';

/** A plan at one number of servings. */
export type ServingsRow = {
  readonly __typename?: 'ServingsRow';
  /** What the till asks for. Null if no price is known. */
  readonly atTill: Maybe<Money>;
  /** Nothing of any component is left over. */
  readonly even: Scalars['Boolean']['output'];
  /** Share of what is made that nobody eats, on average over the components. */
  readonly leftOverShare: Scalars['Float']['output'];
  /** Share of what is bought that is not used, on average over the foods bought in packs. */
  readonly packWasteShare: Scalars['Float']['output'];
  /** What one serving costs. Null if no price is known. */
  readonly perServing: Maybe<Money>;
  /** The number of people who eat. */
  readonly servings: Scalars['Int']['output'];
};

/** What is made of a component in one session. */
export type SessionComponent = {
  readonly __typename?: 'SessionComponent';
  /** Batches made in this session. */
  readonly batches: Scalars['Float']['output'];
  /** What it is. */
  readonly component: Component;
  /** Pots or trays they are made in. */
  readonly loads: Scalars['Int']['output'];
};

/** When the prep session begins. Give `instant` or `local`. */
export type SessionStartInput = {
  /** A point in time. */
  readonly instant?: InputMaybe<Scalars['DateTime']['input']>;
  /** What the clock on the kitchen wall says, such as `2026-03-01T10:00`. */
  readonly local?: InputMaybe<Scalars['String']['input']>;
  /** IANA name of the reader's time zone, such as `Europe/Lisbon`. */
  readonly zone: Scalars['String']['input'];
};

/** One piece of work. */
export type SessionTask = {
  readonly __typename?: 'SessionTask';
  /** The appliance. */
  readonly appliance: Maybe<Scalars['String']['output']>;
  /** Whether it takes hands. */
  readonly attention: Attention;
  /** Code inside this session. */
  readonly code: Scalars['String']['output'];
  /** Numbers of the cooks, from 1. */
  readonly cooks: ReadonlyArray<Scalars['Int']['output']>;
  /** Minutes from the start. */
  readonly endMinute: Scalars['Float']['output'];
  /** Clock time with its offset, if the household gave `sessionStart`. */
  readonly endsAt: Maybe<Scalars['String']['output']>;
  /** Done the evening before. */
  readonly eveningBefore: Scalars['Boolean']['output'];
  /** First load of a step that takes several. Null if it is done once. */
  readonly firstLoad: Maybe<Scalars['Int']['output']>;
  /** A step of the plan, or washing a machine between two of them. */
  readonly kind: SessionTaskKind;
  /** Which of that appliance, from 1: shelves, rings. */
  readonly lanes: ReadonlyArray<Scalars['Int']['output']>;
  /** Last load of a step that takes several. */
  readonly lastLoad: Maybe<Scalars['Int']['output']>;
  /** How many loads the step takes in all. */
  readonly loads: Maybe<Scalars['Int']['output']>;
  /** What it belongs to. */
  readonly of: Keepable;
  /** Minutes from the start; negative on the evening before. */
  readonly startMinute: Scalars['Float']['output'];
  /** Clock time with its offset, if the household gave `sessionStart`. */
  readonly startsAt: Maybe<Scalars['String']['output']>;
  /** The same in the degrees of the reader's region; an oven's in Fahrenheit are the nearest mark on its dial. */
  readonly temperature: Maybe<Temperature>;
  /** Temperature in degrees Celsius. */
  readonly temperatureC: Maybe<Scalars['Float']['output']>;
  /** What to do, in the writer's words. */
  readonly text: Scalars['String']['output'];
};

/** What a piece of work is. */
export type SessionTaskKind =
  /** A step of the plan. */
  | 'STEP'
  /** Washing a machine. */
  | 'WASH';

/** What to do with a row that was quarantined. */
export type SettleRowInput = {
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
  /** The line it begins on. */
  readonly line: Scalars['Int']['input'];
  /** Which of several on that line. Default: the first, 0. */
  readonly part?: InputMaybe<Scalars['Int']['input']>;
  /** Id of the import. */
  readonly run: Scalars['ID']['input'];
  /** The row as it should be, of a table without its header. Without it, the row is skipped. */
  readonly text?: InputMaybe<Scalars['String']['input']>;
};

/** A row that was resolved, or why not. */
export type SettleRowPayload = {
  readonly __typename?: 'SettleRowPayload';
  /** What is wrong. Empty if the change was made. */
  readonly problems: ReadonlyArray<Problem>;
  /** Null if there were problems. */
  readonly row: Maybe<QuarantinedRow>;
  /** The import of the corrected row alone. Null if it was skipped, or there were problems. */
  readonly run: Maybe<ImportRun>;
};

/** A part of a shop. */
export type ShoppingAisle = {
  readonly __typename?: 'ShoppingAisle';
  /** Its code, as `Food.aisle` has it. */
  readonly code: Scalars['String']['output'];
  /** What to buy there. */
  readonly lines: ReadonlyArray<ShoppingLine>;
  /**
   * Its code.
   * @deprecated Since 2026-12-01: it is the code. Use `code`, and `title` for people.
   */
  readonly name: Scalars['String']['output'];
  /** Its name for people, in the reader's language. */
  readonly title: Scalars['String']['output'];
};

/** One food to buy. */
export type ShoppingLine = {
  readonly __typename?: 'ShoppingLine';
  /** The packs, and weights of what is loose, that cover it at the least cost. */
  readonly buy: ReadonlyArray<PackCount>;
  /** The cost of the packs. */
  readonly cost: Cost;
  /** The food as known today, or as the plan froze it if it is no longer known. */
  readonly food: Food;
  /** How much is needed, as bought, before anything on hand is taken off. Null if it is only used to taste. */
  readonly need: Maybe<Amount>;
  /** How much of it was there already. */
  readonly onHand: Maybe<Amount>;
  /** Some use asks for an amount to taste, or for an open extra. */
  readonly open: Scalars['Boolean']['output'];
  /** Every line that takes it may be left out. */
  readonly optional: Scalars['Boolean']['output'];
  /** What is left of the pieces that parts are taken from, such as the yolks of a meringue. Empty where no part is used. */
  readonly partsOver: ReadonlyArray<PartOver>;
  /** How much the packs must cover. Its `text` counts whole pieces, which is what can be bought. */
  readonly toBuy: Maybe<Amount>;
  /** What to take from the shelf, ready to show: packs, or the amount itself, of pieces whole ones. Null if there is nothing to take, or the amount is not known. */
  readonly toTake: Maybe<Scalars['String']['output']>;
  /** The meals and components that use it, with amounts. */
  readonly uses: ReadonlyArray<Use>;
};

/** What to buy. */
export type ShoppingList = {
  readonly __typename?: 'ShoppingList';
  /** The lines, by part of the shop. */
  readonly aisles: ReadonlyArray<ShoppingAisle>;
  /** The total cost. */
  readonly cost: Cost;
  /** All lines. */
  readonly lines: ReadonlyArray<ShoppingLine>;
  /** What the reader should know beside the list. */
  readonly warnings: ReadonlyArray<Warning>;
};

/** A list for several plans, or what is wrong with what was asked. */
export type ShoppingPayload = {
  readonly __typename?: 'ShoppingPayload';
  /** Null if there were problems. */
  readonly list: Maybe<ShoppingList>;
  /** Everything that is wrong with the plans, their servings and the household, each with its place. Empty on success. */
  readonly problems: ReadonlyArray<Problem>;
};

/** A food of one ingredient: a carrot, dry lentils. */
export type SingleIngredient = {
  readonly __typename?: 'SingleIngredient';
  /** Codes of the allergens that the ingredient is itself: `egg` of an egg. */
  readonly is: ReadonlyArray<Scalars['String']['output']>;
  /** The source of the figure or statement. */
  readonly source: Source;
};

/** The source of the figure or statement. */
export type Source = {
  readonly __typename?: 'Source';
  /** The kind of authority. */
  readonly kind: SourceKind;
  /** The section of it, if it has sections. */
  readonly section: Maybe<Scalars['String']['output']>;
  /** Title of the table, rule or person. */
  readonly title: Scalars['String']['output'];
};

/** The kind of authority behind a figure. */
export type SourceKind =
  /** Common practice of the trade, not published. */
  | 'COMMON_PRACTICE'
  /** Invented for a demonstration. */
  | 'INVENTED'
  /** A published table or rule. */
  | 'PUBLISHED'
  /** Measured or decided by the writer. */
  | 'WRITER';

/** An import to queue. */
export type StartImportInput = {
  /** Find out what it would do, and load nothing. */
  readonly dryRun?: InputMaybe<Scalars['Boolean']['input']>;
  /** Id of a file that the feed has had. Default: fetched from the feed's place, or the file uploaded last. */
  readonly file?: InputMaybe<Scalars['ID']['input']>;
  /** Load even if the import exceeds a limit of its feed. */
  readonly force?: InputMaybe<Scalars['Boolean']['input']>;
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
  /** Slug of the feed's publisher. Default: the operator's. */
  readonly publisher?: InputMaybe<Scalars['String']['input']>;
  /** Slug of the feed. */
  readonly slug: Scalars['String']['input'];
};

/** Why a task does not begin earlier. */
export type StartReason =
  /** The appliance is busy. */
  | 'APPLIANCE'
  /** It is the beginning. */
  | 'BEGINNING'
  /** It could begin earlier, but nothing would be gained. */
  | 'CHOICE'
  /** It must not be done too long before what follows. */
  | 'GREATEST_WAIT'
  /** All cooks are busy. */
  | 'HANDS'
  /** Something must be finished first. */
  | 'PRECEDENCE'
  /** The oven has another temperature. */
  | 'TEMPERATURE';

/** One thing to do. */
export type Step = {
  readonly __typename?: 'Step';
  /** Codes of the steps that come first. */
  readonly after: ReadonlyArray<Scalars['String']['output']>;
  /** Code of the appliance it occupies, such as `oven-shelf`. */
  readonly appliance: Maybe<Scalars['String']['output']>;
  /** Whether it needs the cook. */
  readonly attention: Attention;
  /** Whether it puts what is made into the cold, so that what is eaten warm on the day is taken before it. Null if its writer does not say. */
  readonly chills: Maybe<Scalars['Boolean']['output']>;
  /** Unique inside its meal or component, and stable. */
  readonly code: Scalars['String']['output'];
  /** Pours off the water of the steps before it, with its share of their salt. Null if it is not stated. */
  readonly drains: Maybe<Scalars['Boolean']['output']>;
  /** May be done the evening before. */
  readonly eveningBefore: Scalars['Boolean']['output'];
  /** How its length grows: as its writer says, or as is usual for such a step where nobody says. */
  readonly grows: StepGrowth;
  /** The part of `minutes` until one batch boils or is hot, which grows with what is in the pot. Null if its writer does not say. */
  readonly heatUpMinutes: Maybe<Scalars['Float']['output']>;
  /** What it leaves in its appliance: another use that leaves something else waits for a wash. */
  readonly leaves: Maybe<Scalars['String']['output']>;
  /** Minutes that may pass at most. Null if there is no limit. */
  readonly maxWait: Maybe<Scalars['Float']['output']>;
  /** Minutes that must pass after the last step before it. */
  readonly minWait: Scalars['Float']['output'];
  /** How long, as written for one batch, coming to the boil included. */
  readonly minutes: Scalars['Float']['output'];
  /** The same, in degrees that are asked for. */
  readonly temperature: Maybe<Temperature>;
  /** Oven or liquid temperature, in degrees Celsius. */
  readonly temperatureC: Maybe<Scalars['Float']['output']>;
  /** What to do. */
  readonly text: Scalars['String']['output'];
  /** Hands-on minutes of that wash. */
  readonly washMinutes: Maybe<Scalars['Float']['output']>;
};


/** One thing to do. */
export type StepTemperatureArgs = {
  unit?: TemperatureUnit;
};

/** How the length of a step grows. */
export type StepGrowth =
  /** Takes the same however much is made. */
  | 'FIXED'
  /** Grows with the batches. */
  | 'PER_BATCH'
  /** Once for every load. */
  | 'PER_LOAD';

/**
 * How long something keeps in one place, and on whose authority. Local food-safety codes and the practice of licensed
 * kitchens come first; nothing here promises that food is safe.
 */
export type StorageGuidance = {
  readonly __typename?: 'StorageGuidance';
  /** What to do, in sentences. */
  readonly advice: ReadonlyArray<Scalars['String']['output']>;
  /** All that was weighed, first what holds in the reader's region; the strictest decides. */
  readonly basis: ReadonlyArray<Basis>;
  /** It holds only then. */
  readonly condition: Maybe<Scalars['String']['output']>;
  /** The container. */
  readonly container: Maybe<Scalars['String']['output']>;
  /** Whether the end is that of a calendar day, or so many hours after making. */
  readonly counts: KeepingCount;
  /**
   * How many days after the day it is made, a meal after the day of the session. Fractions where hours count. Of a printed range the
   * lower end, by which plans go.
   */
  readonly days: Scalars['Float']['output'];
  /** The last moment, if it is known when it is made: from `sessionStart`, `madeAt` or `boughtAt`. */
  readonly keepUntil: Maybe<Scalars['DateTime']['output']>;
  /** The last day, if it is known when it is made: from `sessionStart`, `madeAt` or `boughtAt`. */
  readonly lastDay: Maybe<Scalars['Date']['output']>;
  /** The part that decides, if it is not the subject itself. */
  readonly limitedBy: Maybe<Keepable>;
  /** The place. */
  readonly place: StoragePlace;
  /** What the end protects. */
  readonly purpose: KeepingPurpose;
  /** Whose published rules or figures were used. Null if only the writer's own figure was used. */
  readonly scope: Maybe<RuleScope>;
  /** What keeps. */
  readonly subject: Keepable;
  /** Meals planned for later than it keeps, by the hour at which they are eaten. Empty where it was asked for without a plan. */
  readonly tooLateFor: ReadonlyArray<ScaledMeal>;
  /** The upper end where what decides is printed as a range: 4 of `3 to 4 days`. Null if it is not a range. */
  readonly upToDays: Maybe<Scalars['Float']['output']>;
};

/** Where something is kept. */
export type StoragePlace =
  /** In a freezer. */
  | 'FREEZER'
  /** In a refrigerator. */
  | 'FRIDGE'
  /** At room temperature. */
  | 'ROOM';

/**
 * What happens, as it happens. Send a subscription to `/graphql/stream` with `Accept: text/event-stream`, in the distinct connections mode of the
 * GraphQL over SSE protocol. Each result costs as much as the first.
 */
export type Subscription = {
  readonly __typename?: 'Subscription';
  /**
   * An import as it is, and again when its progress is different, looked at each second, until it has ended. Requires the scope IMPORT. The problem
   * `UNKNOWN_RUN` also for one of another publisher.
   */
  readonly importProgress: ImportRun;
  /**
   * Each change of a plan, a moment after it was committed through any instance. Keep the last `cursor`: with it as `after`, a subscription goes on
   * without gaps. It is a position in `changes`.
   */
  readonly planChanged: ChangeEdge;
};


/**
 * What happens, as it happens. Send a subscription to `/graphql/stream` with `Accept: text/event-stream`, in the distinct connections mode of the
 * GraphQL over SSE protocol. Each result costs as much as the first.
 */
export type SubscriptionImportProgressArgs = {
  id: Scalars['ID']['input'];
};


/**
 * What happens, as it happens. Send a subscription to `/graphql/stream` with `Accept: text/event-stream`, in the distinct connections mode of the
 * GraphQL over SSE protocol. Each result costs as much as the first.
 */
export type SubscriptionPlanChangedArgs = {
  after: InputMaybe<Scalars['String']['input']>;
  publisher: Scalars['String']['input'];
  slug: Scalars['String']['input'];
};

/** Another food for a line. */
export type Swap = {
  readonly __typename?: 'Swap';
  /** Codes of the diets it serves. */
  readonly diets: ReadonlyArray<Scalars['String']['output']>;
  /** The food that takes the place. */
  readonly food: Food;
  /** The form it is measured in. Null keeps the form of the line. */
  readonly form: Maybe<Scalars['String']['output']>;
  /** Class of published keeping rules of what is then made. Null if the swap changes nothing here. */
  readonly keepsAs: Maybe<Scalars['String']['output']>;
  /** A short note on it. */
  readonly note: Maybe<Scalars['String']['output']>;
  /** How this food is prepared. Null if it is not stated; the preparation of the other food is never taken over. */
  readonly preparation: Maybe<Scalars['String']['output']>;
  /** How much of it for one of the line's, as an exact fraction. */
  readonly ratio: Scalars['String']['output'];
  /** Steps that are then done otherwise. */
  readonly steps: ReadonlyArray<SwapStep>;
  /** What one batch of the component then gives, by the writer's word. Null if the swap changes nothing here. */
  readonly yield: Maybe<Amount>;
};

/** Take one food for another, wherever a line offers that swap. */
export type SwapInput = {
  /** Slug of the food as written, or `usda 11233`: its number in the open food table. */
  readonly from: Scalars['String']['input'];
  /** Slug of the food to take, or its number in the open food table. */
  readonly to: Scalars['String']['input'];
};

/** A step that is done otherwise where a swap is taken. */
export type SwapStep = {
  readonly __typename?: 'SwapStep';
  /** Code of the step. */
  readonly code: Scalars['String']['output'];
  /** Minutes. Null keeps those of the step. */
  readonly minutes: Maybe<Scalars['Float']['output']>;
  /** What is done. Null keeps the text of the step. */
  readonly text: Maybe<Scalars['String']['output']>;
};

/** One order between two tasks, for machines to read. */
export type TaskOrder = {
  readonly __typename?: 'TaskOrder';
  /** Code of the later task. */
  readonly after: Scalars['String']['output'];
  /** Code of the earlier task. */
  readonly before: Scalars['String']['output'];
  /** Minutes that may pass at most. Null if there is no limit. */
  readonly maxWait: Maybe<Scalars['Float']['output']>;
  /** Minutes that must pass between them. */
  readonly minWait: Scalars['Float']['output'];
};

/** What an oven or a liquid is brought to. */
export type Temperature = {
  readonly __typename?: 'Temperature';
  /** Value and unit, such as "425 °F". */
  readonly text: Scalars['String']['output'];
  /** The degrees. */
  readonly unit: TemperatureUnit;
  /** In degrees of `unit`. */
  readonly value: Scalars['Float']['output'];
};

/** Degrees that temperatures are given in. */
export type TemperatureUnit =
  /** Degrees Celsius. */
  | 'CELSIUS'
  /** Degrees Fahrenheit. */
  | 'FAHRENHEIT';

/** A line as one writes it, and what it means. */
export type TextLine = {
  readonly __typename?: 'TextLine';
  /** Column there, from 1. */
  readonly column: Maybe<Scalars['Int']['output']>;
  /** Name of the document's text. Null outside documents. */
  readonly file: Maybe<Scalars['String']['output']>;
  /** Line there, from 1. */
  readonly line: Maybe<Scalars['Int']['output']>;
  /** Slugs of foods and components that it may name, where that is not clear. */
  readonly mayName: ReadonlyArray<Scalars['String']['output']>;
  /** Amounts that it may mean, where that is not clear: `1 us-cup`. */
  readonly mayTake: ReadonlyArray<Scalars['String']['output']>;
  /** Why it is not clear, and what it may mean. Null where it is. Nothing is guessed. */
  readonly problem: Maybe<Problem>;
  /** The lines with keys that it stands for: two for "juice and zest of 2 lemons". Empty where it is not clear. */
  readonly takes: ReadonlyArray<TextLineItem>;
  /** The line as it was written, unchanged. */
  readonly written: Scalars['String']['output'];
};

/** What a line takes, in the words of a document's keys. */
export type TextLineItem = {
  readonly __typename?: 'TextLineItem';
  /** The amount as a document writes it, exactly: `2 us-cup`, `3/2 kg`, `3 clove`. Null if it is added to taste. */
  readonly amount: Maybe<Scalars['String']['output']>;
  /** Slug of the component. Null if it takes a food. */
  readonly component: Maybe<Scalars['String']['output']>;
  /** What one of the pieces weighs that the amount counts: `170 g`. */
  readonly each: Maybe<Scalars['String']['output']>;
  /** Slug of the food. Null if it takes a component. */
  readonly food: Maybe<Scalars['String']['output']>;
  /** The form that it is measured in: `chopped`. */
  readonly form: Maybe<Scalars['String']['output']>;
  /** What steps of its document call it. Null outside documents. */
  readonly id: Maybe<Scalars['String']['output']>;
  /** Weighed or measured after trimming, not as bought. */
  readonly isReady: Scalars['Boolean']['output'];
  /** It may be left out. */
  readonly optional: Scalars['Boolean']['output'];
  /** Part of the food, such as `juice`. */
  readonly part: Maybe<Scalars['String']['output']>;
  /** More of it is taken as needed, beside the amount. */
  readonly plusMore: Scalars['Boolean']['output'];
  /** What is done to it, as written. */
  readonly preparation: Maybe<Scalars['String']['output']>;
  /** What one is like, as written: `large`. */
  readonly size: Maybe<Scalars['String']['output']>;
};

/** What the requests with a token came to on one day. */
export type TokenUsage = {
  readonly __typename?: 'TokenUsage';
  /** The day, in UTC. */
  readonly day: Scalars['Date']['output'];
  /** The points that they cost. */
  readonly points: Scalars['Float']['output'];
  /** Those among them that were refused because the points of that minute were used up. */
  readonly refused: Scalars['Float']['output'];
  /** The number of requests. */
  readonly requests: Scalars['Float']['output'];
};

/** What an amount is counted in. */
export type Unit = {
  readonly __typename?: 'Unit';
  /** Stable code: `g`, `us-cup`, `piece`, or a measure of the food's own such as `own:clove`. */
  readonly code: Scalars['String']['output'];
  /** What it measures. Null for a measure of a food's own, whose meaning is that food's. */
  readonly dimension: Maybe<Dimension>;
  /** Its name in the reader's language, in the form that goes with the amount. */
  readonly name: Scalars['String']['output'];
};

/** Which plan to take back as a whole. */
export type UnpublishPlanInput = {
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
  /** Slug of the publisher. */
  readonly publisher: Scalars['String']['input'];
  /** Why, in words for readers. */
  readonly reason: Scalars['String']['input'];
  /** Slug of the plan. */
  readonly slug: Scalars['String']['input'];
};

/** A publisher's new name. */
export type UpdatePublisherInput = {
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
  /** Name shown to readers. */
  readonly name: Scalars['String']['input'];
  /** Which publisher. */
  readonly slug: Scalars['String']['input'];
};

/** What to change of a webhook. */
export type UpdateWebhookInput = {
  /** Whether it is to be told of changes. What waits for it when it is stopped is sent when it goes on. */
  readonly enabled: Scalars['Boolean']['input'];
  /** Its id. */
  readonly id: Scalars['ID']['input'];
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
};

/** A picture that was handed in under the name of a file. */
export type UploadedImage = {
  readonly __typename?: 'UploadedImage';
  /** When it was first handed in. */
  readonly createdAt: Scalars['DateTime']['output'];
  /** What documents call it. */
  readonly file: Scalars['String']['output'];
  /** SHA-256, hex, of the file that was handed in. */
  readonly fileHash: Scalars['String']['output'];
  /** SHA-256, hex, of the picture as it is kept. */
  readonly hash: Scalars['String']['output'];
  /** Pixels, as it is kept. */
  readonly height: Scalars['Int']['output'];
  /**
   * Where it is as it is kept, without what its camera wrote into it: a path from the root of the service, answered to a token with the scope
   * `READ_DRAFTS`. Handed in again, it is the same picture.
   */
  readonly original: Scalars['String']['output'];
  /** Pixels, as it is kept. */
  readonly width: Scalars['Int']['output'];
};

/** A meal or component that uses a food, and how much. */
export type Use = {
  readonly __typename?: 'Use';
  /** How much, in the unit of the need. Null if it is added to taste. */
  readonly amount: Maybe<Amount>;
  /** The line in the writer's own words. */
  readonly asWritten: Scalars['String']['output'];
  /** The component, if a component takes it. */
  readonly component: Maybe<Component>;
  /** The meal, if a meal takes it. */
  readonly meal: Maybe<Meal>;
  /** The line that takes it may be left out. */
  readonly optional: Scalars['Boolean']['output'];
  /** The part of the food it takes; `amount` then counts the pieces it needs. */
  readonly part: Maybe<Scalars['String']['output']>;
  /** The same for people, in the reader's language. */
  readonly partName: Maybe<Scalars['String']['output']>;
  /** The plan. */
  readonly plan: Plan;
};

/** Every closed list. */
export type Vocabulary = {
  readonly __typename?: 'Vocabulary';
  /** The codes of the list `allergen`, with the laws that name each. */
  readonly allergens: ReadonlyArray<VocabularyAllergen>;
  /** Currencies that packs of foods are priced in. A publisher's own packs may have others. */
  readonly currenciesWithPrices: ReadonlyArray<NamedCode>;
  /** Languages of the fixed words. In others they are English. */
  readonly languagesOfWords: ReadonlyArray<NamedCode>;
  /** The lists. */
  readonly lists: ReadonlyArray<VocabularyList>;
  /** BCP 47 tag that the names were asked for in. */
  readonly locale: Scalars['String']['output'];
  /** Every code of problems: those of `ProblemCode`, with titles and parameters. */
  readonly problemKinds: ReadonlyArray<VocabularyMessage>;
  /** Where rules in force were published. Elsewhere the strictest rules of all regions hold. */
  readonly regionsWithRules: ReadonlyArray<RuledRegion>;
  /** Every code of warnings. */
  readonly warningKinds: ReadonlyArray<VocabularyMessage>;
};

/** An allergen, and the laws that name it. */
export type VocabularyAllergen = {
  readonly __typename?: 'VocabularyAllergen';
  /** The code as fields take it. */
  readonly code: Scalars['String']['output'];
  /** For people, in the locale. */
  readonly name: Scalars['String']['output'];
  /** The lists in force that name it, itself or as one of a group. Empty if no law here asks for it. */
  readonly namedBy: ReadonlyArray<AllergenNaming>;
};

/** A code of a closed list. */
export type VocabularyCode = {
  readonly __typename?: 'VocabularyCode';
  /** The code as fields take it. */
  readonly code: Scalars['String']['output'];
  /** For people: of cautions, measures and places in English, of all else in the locale. */
  readonly name: Scalars['String']['output'];
  /** Other spellings that are taken for it. All others are refused. */
  readonly spellings: ReadonlyArray<Scalars['String']['output']>;
};

/** A closed list. */
export type VocabularyList = {
  readonly __typename?: 'VocabularyList';
  /** All of them, in the order of the list. */
  readonly codes: ReadonlyArray<VocabularyCode>;
  /**
   * Its name, as `UNKNOWN_CODE` says it: `keeping-class`, `allergen`, `diet`, `caution`, `aisle`, `appliance`, `unit`, `measures`,
   * `place`, `region`, `currency` or `language`. More may be added.
   */
  readonly list: Scalars['String']['output'];
};

/** A kind of problem or warning. */
export type VocabularyMessage = {
  readonly __typename?: 'VocabularyMessage';
  /** As the `code` of a problem or a warning. */
  readonly code: Scalars['String']['output'];
  /** What its `parameters` are called. Those that are not known are left out of a message. */
  readonly parameters: ReadonlyArray<Scalars['String']['output']>;
  /** The kind in a few words, in the locale where a reader can cause it, else in English. */
  readonly title: Scalars['String']['output'];
};

/** Something a reader should know beside an answer that still stands. */
export type Warning = {
  readonly __typename?: 'Warning';
  /** The kind. */
  readonly code: WarningCode;
  /** A sentence that says where, and what to do. */
  readonly message: Scalars['String']['output'];
  /** The facts that the sentences are made of, with slugs. */
  readonly parameters: ReadonlyArray<MessageParameter>;
  /** Where: slugs and codes from the plan downwards, or names of input fields. */
  readonly path: ReadonlyArray<Scalars['String']['output']>;
  /** For people, in that language: with the names of foods, meals and components in place of slugs, and without the place. */
  readonly text: Scalars['String']['output'];
  /** The kind in a few words, in the reader's language. */
  readonly title: Scalars['String']['output'];
};

/** Kinds of warning. */
export type WarningCode =
  /** A food contains an allergen that the household avoids, may contain it, or nobody knows whether it does. */
  | 'ALLERGEN_NOT_AVOIDED'
  /** A food does not keep until some of its meals: buy their share on a later trip. */
  | 'BUY_LATER'
  /** A diet is not met, or it is not known whether it is. */
  | 'DIET_NOT_MET'
  /** A food that the household does not like is optional, and was left out. */
  | 'DISLIKE_LEFT_OUT'
  /** A food that the household does not like stays in some meals. */
  | 'DISLIKE_NOT_AVOIDED'
  /** How much is lost in trimming is not known. */
  | 'EDIBLE_PORTION_UNKNOWN'
  /** It is kept as a class of food that the rules do not know, so the strictest rule of any class was taken. */
  | 'KEEPING_CLASS_UNKNOWN'
  /** How long it keeps is not stated. */
  | 'KEEPING_UNKNOWN'
  /** More is made than is eaten. */
  | 'LEFT_OVER'
  /** Two plans make the same component. */
  | 'MADE_IN_TWO_PLANS'
  /** A meal of the first day is eaten at an hour before the session begins. */
  | 'MEAL_BEFORE_SESSION'
  /** Two amounts of a food cannot be added, because a fact about the food is missing. */
  | 'NOT_COMBINED'
  /** Something on hand could be turned into a food that is needed, with more work. */
  | 'ON_HAND_IN_OTHER_FORM'
  /** What is on hand cannot be compared with the need. */
  | 'ON_HAND_NOT_COMPARABLE'
  /** Something on hand is past its date when some of the meals that need it are eaten; it was not counted for them. */
  | 'ON_HAND_NOT_IN_TIME'
  /** Something on hand is not needed. */
  | 'ON_HAND_NOT_NEEDED'
  /** Something on hand is past its date when the session begins (today, where nobody says when that is); none of it was counted. */
  | 'ON_HAND_TOO_OLD'
  /** A pack cannot be compared with the need. */
  | 'PACK_NOT_COMPARABLE'
  /** A part of a food cannot be turned into pieces to buy. */
  | 'PART_NOT_COUNTED'
  /** What is left of a piece cut for another part does not keep until this meal; a fresh one is counted where it is needed. */
  | 'PART_TOO_OLD'
  /** The price of a food is not known; where nothing that is to be bought has a price, once for the whole list, with an empty path. */
  | 'PRICE_UNKNOWN'
  /** No region was given, so the strictest rule was taken. */
  | 'REGION_NOT_GIVEN'
  /** A swap cannot be computed, because a fact is missing. */
  | 'SWAP_NOT_CONVERTIBLE'
  /** No line offers the swap that was asked for. */
  | 'SWAP_NOT_OFFERED';

/** An address that is told of changes and ended imports: by POST, with JSON that names what changed, signed by the Standard Webhooks specification. */
export type Webhook = {
  readonly __typename?: 'Webhook';
  /** When it was made. */
  readonly createdAt: Scalars['DateTime']['output'];
  /** When it was disabled. Null if it is enabled. */
  readonly disabledAt: Maybe<Scalars['DateTime']['output']>;
  /** Why it is disabled. Null if it is enabled. */
  readonly disabledBecause: Maybe<WebhookStop>;
  /** Id of the webhook. */
  readonly id: Scalars['ID']['output'];
  /** The kinds of change that it is told of. Empty means all. */
  readonly kinds: ReadonlyArray<ChangeKind>;
  /** Whose changes it is told of. */
  readonly publisher: Publisher;
  /** The address that is called. */
  readonly url: Scalars['String']['output'];
};

/** A page of webhooks. */
export type WebhookConnection = {
  readonly __typename?: 'WebhookConnection';
  /** The entries of this page. */
  readonly edges: ReadonlyArray<WebhookEdge>;
  /** The place of this page in the list. */
  readonly pageInfo: PageInfo;
};

/** One change, or one ended import, for one webhook. */
export type WebhookDelivery = {
  readonly __typename?: 'WebhookDelivery';
  /** The number of attempts. */
  readonly attempts: Scalars['Int']['output'];
  /** Id of the change it tells of. Null if it is about an import. */
  readonly change: Maybe<Scalars['ID']['output']>;
  /** When it was made. */
  readonly createdAt: Scalars['DateTime']['output'];
  /** Why the last try failed. Null if it succeeded. */
  readonly error: Maybe<Scalars['String']['output']>;
  /** Sent as `webhook-id`, the same at every try. */
  readonly id: Scalars['ID']['output'];
  /** What happened. */
  readonly kind: ChangeKind;
  /** When it is tried next. Null if it is not tried any more. */
  readonly nextAt: Maybe<Scalars['DateTime']['output']>;
  /** The plan it happened to. Null if it is about an import. */
  readonly plan: Maybe<Plan>;
  /** Id of the import it tells of. Null if it is about a change. */
  readonly run: Maybe<Scalars['ID']['output']>;
  /** Id of the scheduled publication or withdrawal that was kept back. Null if it tells of something else. */
  readonly scheduled: Maybe<Scalars['ID']['output']>;
  /** Its state. */
  readonly state: DeliveryState;
  /** HTTP status of the last answer. Null if there was none. */
  readonly status: Maybe<Scalars['Int']['output']>;
  /** When it was last tried. Null if it has not been tried. */
  readonly triedAt: Maybe<Scalars['DateTime']['output']>;
};

/** A page of deliveries. */
export type WebhookDeliveryConnection = {
  readonly __typename?: 'WebhookDeliveryConnection';
  /** The entries of this page. */
  readonly edges: ReadonlyArray<WebhookDeliveryEdge>;
  /** The place of this page in the list. */
  readonly pageInfo: PageInfo;
};

/** One delivery in a list. */
export type WebhookDeliveryEdge = {
  readonly __typename?: 'WebhookDeliveryEdge';
  /** An opaque cursor for this place in the list. */
  readonly cursor: Scalars['String']['output'];
  /** The delivery. */
  readonly node: WebhookDelivery;
};

/** A delivery that is sent again, or what was wrong. */
export type WebhookDeliveryPayload = {
  readonly __typename?: 'WebhookDeliveryPayload';
  /** Null if there were problems. */
  readonly delivery: Maybe<WebhookDelivery>;
  /** Empty on success. */
  readonly problems: ReadonlyArray<Problem>;
};

/** One webhook in a list. */
export type WebhookEdge = {
  readonly __typename?: 'WebhookEdge';
  /** An opaque cursor for this place in the list. */
  readonly cursor: Scalars['String']['output'];
  /** The webhook. */
  readonly node: Webhook;
};

/** Which webhook. */
export type WebhookInput = {
  /** Its id. */
  readonly id: Scalars['ID']['input'];
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
};

/** A webhook that was changed, or what was wrong. */
export type WebhookPayload = {
  readonly __typename?: 'WebhookPayload';
  /** Empty on success. */
  readonly problems: ReadonlyArray<Problem>;
  /** Null if there were problems. */
  readonly webhook: Maybe<Webhook>;
};

/** A webhook that was made or has a new secret, or what was wrong. */
export type WebhookSecretPayload = {
  readonly __typename?: 'WebhookSecretPayload';
  /** Empty on success. */
  readonly problems: ReadonlyArray<Problem>;
  /**
   * What its messages are signed with: `whsec_` and base64. It is shown this once. Null if there were problems, or if this answer is
   * given again because of its idempotency key: ask for a new one then.
   */
  readonly secret: Maybe<Scalars['String']['output']>;
  /** Null if there were problems. */
  readonly webhook: Maybe<Webhook>;
};

/** Why a webhook is disabled. */
export type WebhookStop =
  /** A user disabled it. */
  | 'ASKED'
  /**
   * Nothing arrived at the address during all tries of a delivery, some three days. Changes of the time in which it is disabled are not sent: read them
   * from `changes`. `updateWebhook` or `replayWebhookDelivery` enables it.
   */
  | 'FAILING'
  /** The address answered 410: it is gone. */
  | 'GONE';

/** The revision to withdraw. */
export type WithdrawPlanInput = {
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: InputMaybe<Scalars['String']['input']>;
  /** Slug of the publisher. */
  readonly publisher: Scalars['String']['input'];
  /** Why, in words for readers. */
  readonly reason: Scalars['String']['input'];
  /** Number of the revision. */
  readonly revision: Scalars['Int']['input'];
  /** Slug of the plan. */
  readonly slug: Scalars['String']['input'];
  /** What the plan's own address leads to then. */
  readonly then?: InputMaybe<WithdrawThen>;
};

/** A revision that was withdrawn, or what was wrong. */
export type WithdrawPlanPayload = {
  readonly __typename?: 'WithdrawPlanPayload';
  /** The revision that was withdrawn; `newest` is what its address leads to now. Null if there were problems. */
  readonly plan: Maybe<Plan>;
  /** Empty on success. */
  readonly problems: ReadonlyArray<Problem>;
};

/** What the own address of a plan leads to once a revision of it is withdrawn. */
export type WithdrawThen =
  /** That the plan was withdrawn: all other revisions that are in force are withdrawn with it. */
  | 'NOTHING'
  /** The newest revision that is still in force; where there is none, that the plan was withdrawn. */
  | 'PREVIOUS';

/** A text of a writer's. It is CommonMark with paragraphs, emphasis, lists and links to the web, and nothing else. */
export type WrittenText = {
  readonly __typename?: 'WrittenText';
  /** As HTML: `p`, `ul`, `ol`, `li`, `em`, `strong`, `br`, and `a` with an address of http or https. Everything else is escaped. */
  readonly html: Scalars['String']['output'];
  /** As written: at most 8,000 characters of CommonMark. */
  readonly source: Scalars['String']['output'];
  /** Without any markup. The address of a link stands behind its words. */
  readonly text: Scalars['String']['output'];
};



export type ResolverTypeWrapper<T> = Promise<T> | T;


export type ResolverWithResolve<TResult, TParent, TContext, TArgs> = {
  resolve: ResolverFn<TResult, TParent, TContext, TArgs>;
};
export type Resolver<TResult, TParent = Record<PropertyKey, never>, TContext = Record<PropertyKey, never>, TArgs = Record<PropertyKey, never>> = ResolverFn<TResult, TParent, TContext, TArgs> | ResolverWithResolve<TResult, TParent, TContext, TArgs>;

export type ResolverFn<TResult, TParent, TContext, TArgs> = (
  parent: TParent,
  args: TArgs,
  context: TContext,
  info: GraphQLResolveInfo
) => Promise<TResult> | TResult;

export type SubscriptionSubscribeFn<TResult, TParent, TContext, TArgs> = (
  parent: TParent,
  args: TArgs,
  context: TContext,
  info: GraphQLResolveInfo
) => AsyncIterable<TResult> | Promise<AsyncIterable<TResult>>;

export type SubscriptionResolveFn<TResult, TParent, TContext, TArgs> = (
  parent: TParent,
  args: TArgs,
  context: TContext,
  info: GraphQLResolveInfo
) => TResult | Promise<TResult>;

export interface SubscriptionSubscriberObject<TResult, TKey extends string, TParent, TContext, TArgs> {
  subscribe: SubscriptionSubscribeFn<{ [key in TKey]: TResult }, TParent, TContext, TArgs>;
  resolve?: SubscriptionResolveFn<TResult, { [key in TKey]: TResult }, TContext, TArgs>;
}

export interface SubscriptionResolverObject<TResult, TParent, TContext, TArgs> {
  subscribe: SubscriptionSubscribeFn<any, TParent, TContext, TArgs>;
  resolve: SubscriptionResolveFn<TResult, any, TContext, TArgs>;
}

export type SubscriptionObject<TResult, TKey extends string, TParent, TContext, TArgs> =
  | SubscriptionSubscriberObject<TResult, TKey, TParent, TContext, TArgs>
  | SubscriptionResolverObject<TResult, TParent, TContext, TArgs>;

export type SubscriptionResolver<TResult, TKey extends string, TParent = Record<PropertyKey, never>, TContext = Record<PropertyKey, never>, TArgs = Record<PropertyKey, never>> =
  | ((...args: any[]) => SubscriptionObject<TResult, TKey, TParent, TContext, TArgs>)
  | SubscriptionObject<TResult, TKey, TParent, TContext, TArgs>;

export type TypeResolveFn<TTypes, TParent = Record<PropertyKey, never>, TContext = Record<PropertyKey, never>> = (
  parent: TParent,
  context: TContext,
  info: GraphQLResolveInfo
) => Maybe<TTypes> | Promise<Maybe<TTypes>>;

export type IsTypeOfResolverFn<T = Record<PropertyKey, never>, TContext = Record<PropertyKey, never>> = (obj: T, context: TContext, info: GraphQLResolveInfo) => boolean | Promise<boolean>;

export type NextResolverFn<T> = () => Promise<T>;

export type DirectiveResolverFn<TResult = Record<PropertyKey, never>, TParent = Record<PropertyKey, never>, TContext = Record<PropertyKey, never>, TArgs = Record<PropertyKey, never>> = (
  next: NextResolverFn<TResult>,
  parent: TParent,
  args: TArgs,
  context: TContext,
  info: GraphQLResolveInfo
) => TResult | Promise<TResult>;





/** Mapping between all available schema types and the resolvers types */
export type ResolversTypes = {
  AccessToken: ResolverTypeWrapper<AccessTokenParent>;
  AccessTokenConnection: ResolverTypeWrapper<Omit<AccessTokenConnection, 'edges'> & { edges: ReadonlyArray<ResolversTypes['AccessTokenEdge']> }>;
  AccessTokenEdge: ResolverTypeWrapper<Omit<AccessTokenEdge, 'node'> & { node: ResolversTypes['AccessToken'] }>;
  AdoptFoodInput: AdoptFoodInput;
  AllergenFinding: ResolverTypeWrapper<AllergenFindingParent>;
  AllergenList: ResolverTypeWrapper<AllergenList>;
  AllergenNaming: ResolverTypeWrapper<AllergenNaming>;
  AllergenPresence: AllergenPresence;
  AllergenReach: AllergenReach;
  AllergenStatement: ResolverTypeWrapper<AllergenStatementParent>;
  Amount: ResolverTypeWrapper<AmountParent>;
  ApplianceInput: ApplianceInput;
  AsIngredient: ResolverTypeWrapper<AsIngredientParent>;
  Attention: Attention;
  AuditAction: AuditAction;
  AuditAuthor: ResolverTypeWrapper<AuditAuthor>;
  AuditAuthorKind: AuditAuthorKind;
  AuditEntry: ResolverTypeWrapper<AuditEntryParent>;
  AuditEntryConnection: ResolverTypeWrapper<Omit<AuditEntryConnection, 'edges'> & { edges: ReadonlyArray<ResolversTypes['AuditEntryEdge']> }>;
  AuditEntryEdge: ResolverTypeWrapper<Omit<AuditEntryEdge, 'node'> & { node: ResolversTypes['AuditEntry'] }>;
  AuditSubjectKind: AuditSubjectKind;
  Basis: ResolverTypeWrapper<BasisParent>;
  BatchRule: ResolverTypeWrapper<BatchRule>;
  Boolean: ResolverTypeWrapper<Scalars['Boolean']['output']>;
  CancelScheduledInput: CancelScheduledInput;
  CancelledBecause: CancelledBecause;
  CatalogueFood: ResolverTypeWrapper<CatalogueFoodParent>;
  CatalogueFoodConnection: ResolverTypeWrapper<Omit<CatalogueFoodConnection, 'edges'> & { edges: ReadonlyArray<ResolversTypes['CatalogueFoodEdge']> }>;
  CatalogueFoodEdge: ResolverTypeWrapper<Omit<CatalogueFoodEdge, 'node'> & { node: ResolversTypes['CatalogueFood'] }>;
  Caution: ResolverTypeWrapper<CautionParent>;
  Change: ResolverTypeWrapper<ChangeParent>;
  ChangeConnection: ResolverTypeWrapper<Omit<ChangeConnection, 'edges'> & { edges: ReadonlyArray<ResolversTypes['ChangeEdge']> }>;
  ChangeEdge: ResolverTypeWrapper<Omit<ChangeEdge, 'node'> & { node: ResolversTypes['Change'] }>;
  ChangeKind: ChangeKind;
  ChangeScheduledInput: ChangeScheduledInput;
  ChangedPlan: ResolverTypeWrapper<Omit<ChangedPlan, 'plan'> & { plan: ResolversTypes['Plan'] }>;
  Component: ResolverTypeWrapper<ComponentParent>;
  CorrectPlanInput: CorrectPlanInput;
  Cost: ResolverTypeWrapper<Cost>;
  CostLimit: CostLimit;
  CreatePreviewLinkInput: CreatePreviewLinkInput;
  CreatePreviewLinkPayload: ResolverTypeWrapper<Omit<CreatePreviewLinkPayload, 'link' | 'problems'> & { link: Maybe<ResolversTypes['PreviewLink']>, problems: ReadonlyArray<ResolversTypes['Problem']> }>;
  CreatePublisherInput: CreatePublisherInput;
  CreateTokenInput: CreateTokenInput;
  CreateTokenPayload: ResolverTypeWrapper<Omit<CreateTokenPayload, 'problems' | 'token'> & { problems: ReadonlyArray<ResolversTypes['Problem']>, token: Maybe<ResolversTypes['AccessToken']> }>;
  CreateWebhookInput: CreateWebhookInput;
  Credit: ResolverTypeWrapper<CreditParent>;
  CriticalTask: ResolverTypeWrapper<CriticalTaskParent>;
  Date: ResolverTypeWrapper<Scalars['Date']['output']>;
  DateTime: ResolverTypeWrapper<Scalars['DateTime']['output']>;
  DeleteWebhookPayload: ResolverTypeWrapper<Omit<DeleteWebhookPayload, 'problems'> & { problems: ReadonlyArray<ResolversTypes['Problem']> }>;
  DeliveryState: DeliveryState;
  Diet: ResolverTypeWrapper<DietParent>;
  DietClaim: ResolverTypeWrapper<DietClaim>;
  Dimension: Dimension;
  DiscardDraftInput: DiscardDraftInput;
  DiscardDraftPayload: ResolverTypeWrapper<Omit<DiscardDraftPayload, 'problems'> & { problems: ReadonlyArray<ResolversTypes['Problem']> }>;
  DiscardedDraft: ResolverTypeWrapper<DiscardedDraft>;
  DocumentFormat: DocumentFormat;
  DocumentTextInput: DocumentTextInput;
  DocumentsCheck: ResolverTypeWrapper<Omit<DocumentsCheck, 'findings' | 'lines' | 'problems'> & { findings: ReadonlyArray<ResolversTypes['Finding']>, lines: ReadonlyArray<ResolversTypes['TextLine']>, problems: ReadonlyArray<ResolversTypes['Problem']> }>;
  Draft: ResolverTypeWrapper<DraftParent>;
  DraftCheck: ResolverTypeWrapper<Omit<DraftCheck, 'findings' | 'problems'> & { findings: ReadonlyArray<ResolversTypes['Finding']>, problems: ReadonlyArray<ResolversTypes['Problem']> }>;
  DraftConnection: ResolverTypeWrapper<Omit<DraftConnection, 'edges'> & { edges: ReadonlyArray<ResolversTypes['DraftEdge']> }>;
  DraftDocument: ResolverTypeWrapper<DraftDocument>;
  DraftEdge: ResolverTypeWrapper<Omit<DraftEdge, 'node'> & { node: ResolversTypes['Draft'] }>;
  DraftKind: DraftKind;
  DraftPreview: ResolverTypeWrapper<DraftPreviewParent>;
  EatersInput: EatersInput;
  EdiblePortion: ResolverTypeWrapper<EdiblePortion>;
  ExpectedDraftInput: ExpectedDraftInput;
  Feed: ResolverTypeWrapper<FeedParent>;
  FeedArticle: ResolverTypeWrapper<FeedArticle>;
  FeedArticleInput: FeedArticleInput;
  FeedColumn: ResolverTypeWrapper<FeedColumn>;
  FeedColumnInput: FeedColumnInput;
  FeedKind: FeedKind;
  FeedLimits: ResolverTypeWrapper<FeedLimits>;
  FeedLimitsInput: FeedLimitsInput;
  FeedPayload: ResolverTypeWrapper<Omit<FeedPayload, 'feed' | 'problems'> & { feed: Maybe<ResolversTypes['Feed']>, problems: ReadonlyArray<ResolversTypes['Problem']> }>;
  FeedPlace: ResolverTypeWrapper<FeedPlace>;
  FeedPlaceInput: FeedPlaceInput;
  FeedPlaceKind: FeedPlaceKind;
  FeedSettings: ResolverTypeWrapper<FeedSettings>;
  FeedSettingsInput: FeedSettingsInput;
  Finding: ResolverTypeWrapper<FindingParent>;
  FindingCode: FindingCode;
  FindingSeverity: FindingSeverity;
  Float: ResolverTypeWrapper<Scalars['Float']['output']>;
  Food: ResolverTypeWrapper<FoodParent>;
  FoodAllergen: ResolverTypeWrapper<FoodAllergen>;
  FoodAsIngredient: ResolverTypeWrapper<FoodAsIngredientParent>;
  FoodConnection: ResolverTypeWrapper<FoodConnectionParent>;
  FoodDensity: ResolverTypeWrapper<FoodDensity>;
  FoodDiet: ResolverTypeWrapper<FoodDiet>;
  FoodEdge: ResolverTypeWrapper<Omit<FoodEdge, 'node'> & { node: ResolversTypes['Food'] }>;
  FoodFilter: FoodFilter;
  FoodMeasure: ResolverTypeWrapper<FoodMeasure>;
  FoodName: ResolverTypeWrapper<FoodName>;
  FoodNutrient: ResolverTypeWrapper<FoodNutrient>;
  FoodPart: ResolverTypeWrapper<FoodPartParent>;
  HouseholdInput: HouseholdInput;
  ID: ResolverTypeWrapper<Scalars['ID']['output']>;
  Image: ResolverTypeWrapper<ImageParent>;
  ImageFormat: ImageFormat;
  ImportChange: ResolverTypeWrapper<ImportChange>;
  ImportCounts: ResolverTypeWrapper<ImportCounts>;
  ImportDifference: ResolverTypeWrapper<ImportDifference>;
  ImportOnlyToken: ResolverTypeWrapper<ImportOnlyToken>;
  ImportReport: ResolverTypeWrapper<Omit<ImportReport, 'run' | 'warnings'> & { run: ResolversTypes['ImportRun'], warnings: ReadonlyArray<ResolversTypes['RowWarning']> }>;
  ImportRun: ResolverTypeWrapper<ImportRunParent>;
  ImportRunConnection: ResolverTypeWrapper<Omit<ImportRunConnection, 'edges'> & { edges: ReadonlyArray<ResolversTypes['ImportRunEdge']> }>;
  ImportRunEdge: ResolverTypeWrapper<Omit<ImportRunEdge, 'node'> & { node: ResolversTypes['ImportRun'] }>;
  ImportRunInput: ImportRunInput;
  ImportRunKind: ImportRunKind;
  ImportRunPayload: ResolverTypeWrapper<Omit<ImportRunPayload, 'problems' | 'run'> & { problems: ReadonlyArray<ResolversTypes['Problem']>, run: Maybe<ResolversTypes['ImportRun']> }>;
  ImportRunState: ImportRunState;
  IngredientBasis: IngredientBasis;
  Int: ResolverTypeWrapper<Scalars['Int']['output']>;
  Keepable: ResolverTypeWrapper<KeepableParent>;
  KeepingCount: KeepingCount;
  KeepingPurpose: KeepingPurpose;
  KeepingRule: ResolverTypeWrapper<KeepingRuleParent>;
  KitchenInput: KitchenInput;
  KitchenKind: KitchenKind;
  LabelFigure: ResolverTypeWrapper<LabelFigure>;
  LabelNutrient: ResolverTypeWrapper<LabelNutrient>;
  LabelScheme: LabelScheme;
  LabelToRead: ResolverTypeWrapper<LabelToReadParent>;
  LateMeal: ResolverTypeWrapper<LateMealParent>;
  Line: ResolverTypeWrapper<LineParent>;
  LinesRead: ResolverTypeWrapper<Omit<LinesRead, 'lines' | 'problems'> & { lines: ReadonlyArray<ResolversTypes['TextLine']>, problems: ReadonlyArray<ResolversTypes['Problem']> }>;
  LoadRuleSetInput: LoadRuleSetInput;
  LoadRuleSetPayload: ResolverTypeWrapper<Omit<LoadRuleSetPayload, 'problems' | 'ruleSet'> & { problems: ReadonlyArray<ResolversTypes['Problem']>, ruleSet: Maybe<ResolversTypes['RuleSet']> }>;
  Meal: ResolverTypeWrapper<MealParent>;
  MeasureSystem: MeasureSystem;
  Measured: Measured;
  MessageParameter: ResolverTypeWrapper<MessageParameter>;
  MomentInput: MomentInput;
  Money: ResolverTypeWrapper<Money>;
  MorningImport: ResolverTypeWrapper<Omit<MorningImport, 'run'> & { run: ResolversTypes['ImportRun'] }>;
  MorningReport: ResolverTypeWrapper<Omit<MorningReport, 'imports' | 'keptBack' | 'plans'> & { imports: ReadonlyArray<ResolversTypes['MorningImport']>, keptBack: ReadonlyArray<ResolversTypes['ScheduledChange']>, plans: ReadonlyArray<ResolversTypes['ChangedPlan']> }>;
  Mutation: ResolverTypeWrapper<Record<PropertyKey, never>>;
  NamedCode: ResolverTypeWrapper<NamedCode>;
  NamingDraft: ResolverTypeWrapper<NamingDraft>;
  Node: ResolverTypeWrapper<NodeParent>;
  NotEaten: ResolverTypeWrapper<NotEatenParent>;
  NotEatenReason: NotEatenReason;
  Nutrient: Nutrient;
  NutrientFigure: ResolverTypeWrapper<NutrientFigureParent>;
  NutrientLimit: NutrientLimit;
  NutritionBasis: NutritionBasis;
  NutritionPerServing: ResolverTypeWrapper<NutritionParent>;
  OnHandInput: OnHandInput;
  OwnedRegion: ResolverTypeWrapper<OwnedRegion>;
  Pack: ResolverTypeWrapper<PackParent>;
  PackCount: ResolverTypeWrapper<PackCountParent>;
  PageInfo: ResolverTypeWrapper<PageInfo>;
  PanFactor: ResolverTypeWrapper<PanFactor>;
  PanInput: PanInput;
  PartOver: ResolverTypeWrapper<Omit<PartOver, 'amount'> & { amount: Maybe<ResolversTypes['Amount']> }>;
  Plan: ResolverTypeWrapper<PlanParent>;
  PlanAllergen: ResolverTypeWrapper<PlanAllergen>;
  PlanConnection: ResolverTypeWrapper<PlanConnectionParent>;
  PlanCost: ResolverTypeWrapper<PlanCost>;
  PlanDifference: ResolverTypeWrapper<PlanDifference>;
  PlanDifferenceKind: PlanDifferenceKind;
  PlanEdge: ResolverTypeWrapper<PlanEdgeParent>;
  PlanFacet: ResolverTypeWrapper<PlanFacet>;
  PlanFacetKind: PlanFacetKind;
  PlanFacetValue: ResolverTypeWrapper<PlanFacetValue>;
  PlanFacts: ResolverTypeWrapper<PlanFactsParent>;
  PlanFilter: PlanFilter;
  PlanNameInput: PlanNameInput;
  PlanNutrient: ResolverTypeWrapper<PlanNutrient>;
  PlanOrder: PlanOrder;
  PlanPortionInput: PlanPortionInput;
  PlanRequests: ResolverTypeWrapper<PlanRequests>;
  PlanRequestsConnection: ResolverTypeWrapper<PlanRequestsConnection>;
  PlanRequestsEdge: ResolverTypeWrapper<PlanRequestsEdge>;
  PlanTexts: ResolverTypeWrapper<PlanTextsParent>;
  PrepSession: ResolverTypeWrapper<PrepSessionParent>;
  PreviewLink: ResolverTypeWrapper<PreviewLinkParent>;
  PreviewLinkConnection: ResolverTypeWrapper<Omit<PreviewLinkConnection, 'edges'> & { edges: ReadonlyArray<ResolversTypes['PreviewLinkEdge']> }>;
  PreviewLinkEdge: ResolverTypeWrapper<Omit<PreviewLinkEdge, 'node'> & { node: ResolversTypes['PreviewLink'] }>;
  Problem: ResolverTypeWrapper<ProblemParent>;
  ProblemCode: ProblemCode;
  PublishPlanInput: PublishPlanInput;
  PublishPlanPayload: ResolverTypeWrapper<Omit<PublishPlanPayload, 'plan' | 'problems'> & { plan: Maybe<ResolversTypes['Plan']>, problems: ReadonlyArray<ResolversTypes['Problem']> }>;
  Publisher: ResolverTypeWrapper<PublisherParent>;
  PublisherConnection: ResolverTypeWrapper<Omit<PublisherConnection, 'edges'> & { edges: ReadonlyArray<ResolversTypes['PublisherEdge']> }>;
  PublisherEdge: ResolverTypeWrapper<Omit<PublisherEdge, 'node'> & { node: ResolversTypes['Publisher'] }>;
  PublisherPayload: ResolverTypeWrapper<Omit<PublisherPayload, 'problems' | 'publisher'> & { problems: ReadonlyArray<ResolversTypes['Problem']>, publisher: Maybe<ResolversTypes['Publisher']> }>;
  Quantity: ResolverTypeWrapper<Scalars['Quantity']['output']>;
  QuarantinedRow: ResolverTypeWrapper<Omit<QuarantinedRow, 'problems'> & { problems: ReadonlyArray<ResolversTypes['Problem']> }>;
  QuarantinedRowConnection: ResolverTypeWrapper<Omit<QuarantinedRowConnection, 'edges'> & { edges: ReadonlyArray<ResolversTypes['QuarantinedRowEdge']> }>;
  QuarantinedRowEdge: ResolverTypeWrapper<Omit<QuarantinedRowEdge, 'node'> & { node: ResolversTypes['QuarantinedRow'] }>;
  Query: ResolverTypeWrapper<Record<PropertyKey, never>>;
  RegionOwner: RegionOwner;
  RemoveFeedInput: RemoveFeedInput;
  RemoveFeedPayload: ResolverTypeWrapper<Omit<RemoveFeedPayload, 'problems'> & { problems: ReadonlyArray<ResolversTypes['Problem']> }>;
  RemoveImageInput: RemoveImageInput;
  RemoveImagePayload: ResolverTypeWrapper<Omit<RemoveImagePayload, 'problems'> & { problems: ReadonlyArray<ResolversTypes['Problem']> }>;
  ReplayImportInput: ReplayImportInput;
  ReplayWebhookDeliveryInput: ReplayWebhookDeliveryInput;
  RevokePreviewLinkInput: RevokePreviewLinkInput;
  RevokePreviewLinkPayload: ResolverTypeWrapper<Omit<RevokePreviewLinkPayload, 'link' | 'problems'> & { link: Maybe<ResolversTypes['PreviewLink']>, problems: ReadonlyArray<ResolversTypes['Problem']> }>;
  RevokeTokenInput: RevokeTokenInput;
  RevokeTokenPayload: ResolverTypeWrapper<Omit<RevokeTokenPayload, 'problems' | 'token'> & { problems: ReadonlyArray<ResolversTypes['Problem']>, token: Maybe<ResolversTypes['AccessToken']> }>;
  Route: ResolverTypeWrapper<RouteParent>;
  RouteChoiceInput: RouteChoiceInput;
  RouteKind: RouteKind;
  RouteMode: RouteMode;
  RoutesInput: RoutesInput;
  RowWarning: ResolverTypeWrapper<Omit<RowWarning, 'problem'> & { problem: ResolversTypes['Problem'] }>;
  RuleFileInput: RuleFileInput;
  RuleReach: RuleReach;
  RuleScope: ResolverTypeWrapper<RuleScope>;
  RuleSet: ResolverTypeWrapper<RuleSetSummary>;
  RuleSubject: RuleSubject;
  RuledRegion: ResolverTypeWrapper<RuledRegion>;
  SaveDocumentsInput: SaveDocumentsInput;
  SaveDocumentsPayload: ResolverTypeWrapper<Omit<SaveDocumentsPayload, 'drafts' | 'foods' | 'problems'> & { drafts: Maybe<ReadonlyArray<ResolversTypes['SavedDraft']>>, foods: Maybe<ReadonlyArray<ResolversTypes['Food']>>, problems: ReadonlyArray<ResolversTypes['Problem']> }>;
  SaveDraftInput: SaveDraftInput;
  SaveDraftPayload: ResolverTypeWrapper<Omit<SaveDraftPayload, 'draft' | 'problems'> & { draft: Maybe<ResolversTypes['SavedDraft']>, problems: ReadonlyArray<ResolversTypes['Problem']> }>;
  SaveFeedInput: SaveFeedInput;
  SaveFoodsInput: SaveFoodsInput;
  SaveFoodsPayload: ResolverTypeWrapper<Omit<SaveFoodsPayload, 'foods' | 'problems'> & { foods: Maybe<ReadonlyArray<ResolversTypes['Food']>>, problems: ReadonlyArray<ResolversTypes['Problem']> }>;
  SavedDraft: ResolverTypeWrapper<SavedDraftParent>;
  ScaledComponent: ResolverTypeWrapper<ScaledComponentParent>;
  ScaledLine: ResolverTypeWrapper<ScaledLineParent>;
  ScaledMeal: ResolverTypeWrapper<ScaledMealParent>;
  ScaledPlan: ResolverTypeWrapper<ScaledPlanParent>;
  ScalingPayload: ResolverTypeWrapper<ScalingPayloadParent>;
  ScalingRule: ScalingRule;
  SchedulePublicationInput: SchedulePublicationInput;
  ScheduleWithdrawalInput: ScheduleWithdrawalInput;
  ScheduledChange: ResolverTypeWrapper<ScheduledChangeParent>;
  ScheduledChangeConnection: ResolverTypeWrapper<Omit<ScheduledChangeConnection, 'edges'> & { edges: ReadonlyArray<ResolversTypes['ScheduledChangeEdge']> }>;
  ScheduledChangeEdge: ResolverTypeWrapper<Omit<ScheduledChangeEdge, 'node'> & { node: ResolversTypes['ScheduledChange'] }>;
  ScheduledKind: ScheduledKind;
  ScheduledPayload: ResolverTypeWrapper<Omit<ScheduledPayload, 'problems' | 'scheduled'> & { problems: ReadonlyArray<ResolversTypes['Problem']>, scheduled: Maybe<ResolversTypes['ScheduledChange']> }>;
  ScheduledState: ScheduledState;
  Scope: Scope;
  ServingsRow: ResolverTypeWrapper<ServingsRowParent>;
  SessionComponent: ResolverTypeWrapper<SessionComponentParent>;
  SessionStartInput: SessionStartInput;
  SessionTask: ResolverTypeWrapper<SessionTaskParent>;
  SessionTaskKind: SessionTaskKind;
  SettleRowInput: SettleRowInput;
  SettleRowPayload: ResolverTypeWrapper<Omit<SettleRowPayload, 'problems' | 'row' | 'run'> & { problems: ReadonlyArray<ResolversTypes['Problem']>, row: Maybe<ResolversTypes['QuarantinedRow']>, run: Maybe<ResolversTypes['ImportRun']> }>;
  ShoppingAisle: ResolverTypeWrapper<Omit<ShoppingAisle, 'lines'> & { lines: ReadonlyArray<ResolversTypes['ShoppingLine']> }>;
  ShoppingLine: ResolverTypeWrapper<ShoppingLineParent>;
  ShoppingList: ResolverTypeWrapper<ShoppingListParent>;
  ShoppingPayload: ResolverTypeWrapper<ShoppingPayloadParent>;
  SingleIngredient: ResolverTypeWrapper<SingleIngredient>;
  Source: ResolverTypeWrapper<Source>;
  SourceKind: SourceKind;
  StartImportInput: StartImportInput;
  StartReason: StartReason;
  Step: ResolverTypeWrapper<StepParent>;
  StepGrowth: StepGrowth;
  StorageGuidance: ResolverTypeWrapper<StorageGuidanceParent>;
  StoragePlace: StoragePlace;
  String: ResolverTypeWrapper<Scalars['String']['output']>;
  Subscription: ResolverTypeWrapper<Record<PropertyKey, never>>;
  Swap: ResolverTypeWrapper<SwapParent>;
  SwapInput: SwapInput;
  SwapStep: ResolverTypeWrapper<SwapStep>;
  TaskOrder: ResolverTypeWrapper<TaskOrder>;
  Temperature: ResolverTypeWrapper<Temperature>;
  TemperatureUnit: TemperatureUnit;
  TextLine: ResolverTypeWrapper<TextLineParent>;
  TextLineItem: ResolverTypeWrapper<TextLineItem>;
  TokenUsage: ResolverTypeWrapper<TokenUsage>;
  Unit: ResolverTypeWrapper<UnitParent>;
  UnpublishPlanInput: UnpublishPlanInput;
  UpdatePublisherInput: UpdatePublisherInput;
  UpdateWebhookInput: UpdateWebhookInput;
  UploadedImage: ResolverTypeWrapper<UploadedImage>;
  Use: ResolverTypeWrapper<UseParent>;
  Vocabulary: ResolverTypeWrapper<Vocabulary>;
  VocabularyAllergen: ResolverTypeWrapper<VocabularyAllergen>;
  VocabularyCode: ResolverTypeWrapper<VocabularyCode>;
  VocabularyList: ResolverTypeWrapper<VocabularyList>;
  VocabularyMessage: ResolverTypeWrapper<VocabularyMessage>;
  Warning: ResolverTypeWrapper<WarningParent>;
  WarningCode: WarningCode;
  Webhook: ResolverTypeWrapper<WebhookParent>;
  WebhookConnection: ResolverTypeWrapper<Omit<WebhookConnection, 'edges'> & { edges: ReadonlyArray<ResolversTypes['WebhookEdge']> }>;
  WebhookDelivery: ResolverTypeWrapper<WebhookDeliveryParent>;
  WebhookDeliveryConnection: ResolverTypeWrapper<Omit<WebhookDeliveryConnection, 'edges'> & { edges: ReadonlyArray<ResolversTypes['WebhookDeliveryEdge']> }>;
  WebhookDeliveryEdge: ResolverTypeWrapper<Omit<WebhookDeliveryEdge, 'node'> & { node: ResolversTypes['WebhookDelivery'] }>;
  WebhookDeliveryPayload: ResolverTypeWrapper<Omit<WebhookDeliveryPayload, 'delivery' | 'problems'> & { delivery: Maybe<ResolversTypes['WebhookDelivery']>, problems: ReadonlyArray<ResolversTypes['Problem']> }>;
  WebhookEdge: ResolverTypeWrapper<Omit<WebhookEdge, 'node'> & { node: ResolversTypes['Webhook'] }>;
  WebhookInput: WebhookInput;
  WebhookPayload: ResolverTypeWrapper<Omit<WebhookPayload, 'problems' | 'webhook'> & { problems: ReadonlyArray<ResolversTypes['Problem']>, webhook: Maybe<ResolversTypes['Webhook']> }>;
  WebhookSecretPayload: ResolverTypeWrapper<Omit<WebhookSecretPayload, 'problems' | 'webhook'> & { problems: ReadonlyArray<ResolversTypes['Problem']>, webhook: Maybe<ResolversTypes['Webhook']> }>;
  WebhookStop: WebhookStop;
  WithdrawPlanInput: WithdrawPlanInput;
  WithdrawPlanPayload: ResolverTypeWrapper<Omit<WithdrawPlanPayload, 'plan' | 'problems'> & { plan: Maybe<ResolversTypes['Plan']>, problems: ReadonlyArray<ResolversTypes['Problem']> }>;
  WithdrawThen: WithdrawThen;
  WrittenText: ResolverTypeWrapper<WrittenTextParent>;
};

/** Mapping between all available schema types and the resolvers parents */
export type ResolversParentTypes = {
  AccessToken: AccessTokenParent;
  AccessTokenConnection: Omit<AccessTokenConnection, 'edges'> & { edges: ReadonlyArray<ResolversParentTypes['AccessTokenEdge']> };
  AccessTokenEdge: Omit<AccessTokenEdge, 'node'> & { node: ResolversParentTypes['AccessToken'] };
  AdoptFoodInput: AdoptFoodInput;
  AllergenFinding: AllergenFindingParent;
  AllergenList: AllergenList;
  AllergenNaming: AllergenNaming;
  AllergenStatement: AllergenStatementParent;
  Amount: AmountParent;
  ApplianceInput: ApplianceInput;
  AsIngredient: AsIngredientParent;
  AuditAuthor: AuditAuthor;
  AuditEntry: AuditEntryParent;
  AuditEntryConnection: Omit<AuditEntryConnection, 'edges'> & { edges: ReadonlyArray<ResolversParentTypes['AuditEntryEdge']> };
  AuditEntryEdge: Omit<AuditEntryEdge, 'node'> & { node: ResolversParentTypes['AuditEntry'] };
  Basis: BasisParent;
  BatchRule: BatchRule;
  Boolean: Scalars['Boolean']['output'];
  CancelScheduledInput: CancelScheduledInput;
  CatalogueFood: CatalogueFoodParent;
  CatalogueFoodConnection: Omit<CatalogueFoodConnection, 'edges'> & { edges: ReadonlyArray<ResolversParentTypes['CatalogueFoodEdge']> };
  CatalogueFoodEdge: Omit<CatalogueFoodEdge, 'node'> & { node: ResolversParentTypes['CatalogueFood'] };
  Caution: CautionParent;
  Change: ChangeParent;
  ChangeConnection: Omit<ChangeConnection, 'edges'> & { edges: ReadonlyArray<ResolversParentTypes['ChangeEdge']> };
  ChangeEdge: Omit<ChangeEdge, 'node'> & { node: ResolversParentTypes['Change'] };
  ChangeScheduledInput: ChangeScheduledInput;
  ChangedPlan: Omit<ChangedPlan, 'plan'> & { plan: ResolversParentTypes['Plan'] };
  Component: ComponentParent;
  CorrectPlanInput: CorrectPlanInput;
  Cost: Cost;
  CostLimit: CostLimit;
  CreatePreviewLinkInput: CreatePreviewLinkInput;
  CreatePreviewLinkPayload: Omit<CreatePreviewLinkPayload, 'link' | 'problems'> & { link: Maybe<ResolversParentTypes['PreviewLink']>, problems: ReadonlyArray<ResolversParentTypes['Problem']> };
  CreatePublisherInput: CreatePublisherInput;
  CreateTokenInput: CreateTokenInput;
  CreateTokenPayload: Omit<CreateTokenPayload, 'problems' | 'token'> & { problems: ReadonlyArray<ResolversParentTypes['Problem']>, token: Maybe<ResolversParentTypes['AccessToken']> };
  CreateWebhookInput: CreateWebhookInput;
  Credit: CreditParent;
  CriticalTask: CriticalTaskParent;
  Date: Scalars['Date']['output'];
  DateTime: Scalars['DateTime']['output'];
  DeleteWebhookPayload: Omit<DeleteWebhookPayload, 'problems'> & { problems: ReadonlyArray<ResolversParentTypes['Problem']> };
  Diet: DietParent;
  DietClaim: DietClaim;
  DiscardDraftInput: DiscardDraftInput;
  DiscardDraftPayload: Omit<DiscardDraftPayload, 'problems'> & { problems: ReadonlyArray<ResolversParentTypes['Problem']> };
  DiscardedDraft: DiscardedDraft;
  DocumentTextInput: DocumentTextInput;
  DocumentsCheck: Omit<DocumentsCheck, 'findings' | 'lines' | 'problems'> & { findings: ReadonlyArray<ResolversParentTypes['Finding']>, lines: ReadonlyArray<ResolversParentTypes['TextLine']>, problems: ReadonlyArray<ResolversParentTypes['Problem']> };
  Draft: DraftParent;
  DraftCheck: Omit<DraftCheck, 'findings' | 'problems'> & { findings: ReadonlyArray<ResolversParentTypes['Finding']>, problems: ReadonlyArray<ResolversParentTypes['Problem']> };
  DraftConnection: Omit<DraftConnection, 'edges'> & { edges: ReadonlyArray<ResolversParentTypes['DraftEdge']> };
  DraftDocument: DraftDocument;
  DraftEdge: Omit<DraftEdge, 'node'> & { node: ResolversParentTypes['Draft'] };
  DraftPreview: DraftPreviewParent;
  EatersInput: EatersInput;
  EdiblePortion: EdiblePortion;
  ExpectedDraftInput: ExpectedDraftInput;
  Feed: FeedParent;
  FeedArticle: FeedArticle;
  FeedArticleInput: FeedArticleInput;
  FeedColumn: FeedColumn;
  FeedColumnInput: FeedColumnInput;
  FeedLimits: FeedLimits;
  FeedLimitsInput: FeedLimitsInput;
  FeedPayload: Omit<FeedPayload, 'feed' | 'problems'> & { feed: Maybe<ResolversParentTypes['Feed']>, problems: ReadonlyArray<ResolversParentTypes['Problem']> };
  FeedPlace: FeedPlace;
  FeedPlaceInput: FeedPlaceInput;
  FeedSettings: FeedSettings;
  FeedSettingsInput: FeedSettingsInput;
  Finding: FindingParent;
  Float: Scalars['Float']['output'];
  Food: FoodParent;
  FoodAllergen: FoodAllergen;
  FoodAsIngredient: FoodAsIngredientParent;
  FoodConnection: FoodConnectionParent;
  FoodDensity: FoodDensity;
  FoodDiet: FoodDiet;
  FoodEdge: Omit<FoodEdge, 'node'> & { node: ResolversParentTypes['Food'] };
  FoodFilter: FoodFilter;
  FoodMeasure: FoodMeasure;
  FoodName: FoodName;
  FoodNutrient: FoodNutrient;
  FoodPart: FoodPartParent;
  HouseholdInput: HouseholdInput;
  ID: Scalars['ID']['output'];
  Image: ImageParent;
  ImportChange: ImportChange;
  ImportCounts: ImportCounts;
  ImportDifference: ImportDifference;
  ImportOnlyToken: ImportOnlyToken;
  ImportReport: Omit<ImportReport, 'run' | 'warnings'> & { run: ResolversParentTypes['ImportRun'], warnings: ReadonlyArray<ResolversParentTypes['RowWarning']> };
  ImportRun: ImportRunParent;
  ImportRunConnection: Omit<ImportRunConnection, 'edges'> & { edges: ReadonlyArray<ResolversParentTypes['ImportRunEdge']> };
  ImportRunEdge: Omit<ImportRunEdge, 'node'> & { node: ResolversParentTypes['ImportRun'] };
  ImportRunInput: ImportRunInput;
  ImportRunPayload: Omit<ImportRunPayload, 'problems' | 'run'> & { problems: ReadonlyArray<ResolversParentTypes['Problem']>, run: Maybe<ResolversParentTypes['ImportRun']> };
  Int: Scalars['Int']['output'];
  Keepable: KeepableParent;
  KeepingRule: KeepingRuleParent;
  KitchenInput: KitchenInput;
  LabelFigure: LabelFigure;
  LabelNutrient: LabelNutrient;
  LabelToRead: LabelToReadParent;
  LateMeal: LateMealParent;
  Line: LineParent;
  LinesRead: Omit<LinesRead, 'lines' | 'problems'> & { lines: ReadonlyArray<ResolversParentTypes['TextLine']>, problems: ReadonlyArray<ResolversParentTypes['Problem']> };
  LoadRuleSetInput: LoadRuleSetInput;
  LoadRuleSetPayload: Omit<LoadRuleSetPayload, 'problems' | 'ruleSet'> & { problems: ReadonlyArray<ResolversParentTypes['Problem']>, ruleSet: Maybe<ResolversParentTypes['RuleSet']> };
  Meal: MealParent;
  MessageParameter: MessageParameter;
  MomentInput: MomentInput;
  Money: Money;
  MorningImport: Omit<MorningImport, 'run'> & { run: ResolversParentTypes['ImportRun'] };
  MorningReport: Omit<MorningReport, 'imports' | 'keptBack' | 'plans'> & { imports: ReadonlyArray<ResolversParentTypes['MorningImport']>, keptBack: ReadonlyArray<ResolversParentTypes['ScheduledChange']>, plans: ReadonlyArray<ResolversParentTypes['ChangedPlan']> };
  Mutation: Record<PropertyKey, never>;
  NamedCode: NamedCode;
  NamingDraft: NamingDraft;
  Node: NodeParent;
  NotEaten: NotEatenParent;
  NutrientFigure: NutrientFigureParent;
  NutrientLimit: NutrientLimit;
  NutritionPerServing: NutritionParent;
  OnHandInput: OnHandInput;
  OwnedRegion: OwnedRegion;
  Pack: PackParent;
  PackCount: PackCountParent;
  PageInfo: PageInfo;
  PanFactor: PanFactor;
  PanInput: PanInput;
  PartOver: Omit<PartOver, 'amount'> & { amount: Maybe<ResolversParentTypes['Amount']> };
  Plan: PlanParent;
  PlanAllergen: PlanAllergen;
  PlanConnection: PlanConnectionParent;
  PlanCost: PlanCost;
  PlanDifference: PlanDifference;
  PlanEdge: PlanEdgeParent;
  PlanFacet: PlanFacet;
  PlanFacetValue: PlanFacetValue;
  PlanFacts: PlanFactsParent;
  PlanFilter: PlanFilter;
  PlanNameInput: PlanNameInput;
  PlanNutrient: PlanNutrient;
  PlanPortionInput: PlanPortionInput;
  PlanRequests: PlanRequests;
  PlanRequestsConnection: PlanRequestsConnection;
  PlanRequestsEdge: PlanRequestsEdge;
  PlanTexts: PlanTextsParent;
  PrepSession: PrepSessionParent;
  PreviewLink: PreviewLinkParent;
  PreviewLinkConnection: Omit<PreviewLinkConnection, 'edges'> & { edges: ReadonlyArray<ResolversParentTypes['PreviewLinkEdge']> };
  PreviewLinkEdge: Omit<PreviewLinkEdge, 'node'> & { node: ResolversParentTypes['PreviewLink'] };
  Problem: ProblemParent;
  PublishPlanInput: PublishPlanInput;
  PublishPlanPayload: Omit<PublishPlanPayload, 'plan' | 'problems'> & { plan: Maybe<ResolversParentTypes['Plan']>, problems: ReadonlyArray<ResolversParentTypes['Problem']> };
  Publisher: PublisherParent;
  PublisherConnection: Omit<PublisherConnection, 'edges'> & { edges: ReadonlyArray<ResolversParentTypes['PublisherEdge']> };
  PublisherEdge: Omit<PublisherEdge, 'node'> & { node: ResolversParentTypes['Publisher'] };
  PublisherPayload: Omit<PublisherPayload, 'problems' | 'publisher'> & { problems: ReadonlyArray<ResolversParentTypes['Problem']>, publisher: Maybe<ResolversParentTypes['Publisher']> };
  Quantity: Scalars['Quantity']['output'];
  QuarantinedRow: Omit<QuarantinedRow, 'problems'> & { problems: ReadonlyArray<ResolversParentTypes['Problem']> };
  QuarantinedRowConnection: Omit<QuarantinedRowConnection, 'edges'> & { edges: ReadonlyArray<ResolversParentTypes['QuarantinedRowEdge']> };
  QuarantinedRowEdge: Omit<QuarantinedRowEdge, 'node'> & { node: ResolversParentTypes['QuarantinedRow'] };
  Query: Record<PropertyKey, never>;
  RemoveFeedInput: RemoveFeedInput;
  RemoveFeedPayload: Omit<RemoveFeedPayload, 'problems'> & { problems: ReadonlyArray<ResolversParentTypes['Problem']> };
  RemoveImageInput: RemoveImageInput;
  RemoveImagePayload: Omit<RemoveImagePayload, 'problems'> & { problems: ReadonlyArray<ResolversParentTypes['Problem']> };
  ReplayImportInput: ReplayImportInput;
  ReplayWebhookDeliveryInput: ReplayWebhookDeliveryInput;
  RevokePreviewLinkInput: RevokePreviewLinkInput;
  RevokePreviewLinkPayload: Omit<RevokePreviewLinkPayload, 'link' | 'problems'> & { link: Maybe<ResolversParentTypes['PreviewLink']>, problems: ReadonlyArray<ResolversParentTypes['Problem']> };
  RevokeTokenInput: RevokeTokenInput;
  RevokeTokenPayload: Omit<RevokeTokenPayload, 'problems' | 'token'> & { problems: ReadonlyArray<ResolversParentTypes['Problem']>, token: Maybe<ResolversParentTypes['AccessToken']> };
  Route: RouteParent;
  RouteChoiceInput: RouteChoiceInput;
  RoutesInput: RoutesInput;
  RowWarning: Omit<RowWarning, 'problem'> & { problem: ResolversParentTypes['Problem'] };
  RuleFileInput: RuleFileInput;
  RuleScope: RuleScope;
  RuleSet: RuleSetSummary;
  RuledRegion: RuledRegion;
  SaveDocumentsInput: SaveDocumentsInput;
  SaveDocumentsPayload: Omit<SaveDocumentsPayload, 'drafts' | 'foods' | 'problems'> & { drafts: Maybe<ReadonlyArray<ResolversParentTypes['SavedDraft']>>, foods: Maybe<ReadonlyArray<ResolversParentTypes['Food']>>, problems: ReadonlyArray<ResolversParentTypes['Problem']> };
  SaveDraftInput: SaveDraftInput;
  SaveDraftPayload: Omit<SaveDraftPayload, 'draft' | 'problems'> & { draft: Maybe<ResolversParentTypes['SavedDraft']>, problems: ReadonlyArray<ResolversParentTypes['Problem']> };
  SaveFeedInput: SaveFeedInput;
  SaveFoodsInput: SaveFoodsInput;
  SaveFoodsPayload: Omit<SaveFoodsPayload, 'foods' | 'problems'> & { foods: Maybe<ReadonlyArray<ResolversParentTypes['Food']>>, problems: ReadonlyArray<ResolversParentTypes['Problem']> };
  SavedDraft: SavedDraftParent;
  ScaledComponent: ScaledComponentParent;
  ScaledLine: ScaledLineParent;
  ScaledMeal: ScaledMealParent;
  ScaledPlan: ScaledPlanParent;
  ScalingPayload: ScalingPayloadParent;
  SchedulePublicationInput: SchedulePublicationInput;
  ScheduleWithdrawalInput: ScheduleWithdrawalInput;
  ScheduledChange: ScheduledChangeParent;
  ScheduledChangeConnection: Omit<ScheduledChangeConnection, 'edges'> & { edges: ReadonlyArray<ResolversParentTypes['ScheduledChangeEdge']> };
  ScheduledChangeEdge: Omit<ScheduledChangeEdge, 'node'> & { node: ResolversParentTypes['ScheduledChange'] };
  ScheduledPayload: Omit<ScheduledPayload, 'problems' | 'scheduled'> & { problems: ReadonlyArray<ResolversParentTypes['Problem']>, scheduled: Maybe<ResolversParentTypes['ScheduledChange']> };
  ServingsRow: ServingsRowParent;
  SessionComponent: SessionComponentParent;
  SessionStartInput: SessionStartInput;
  SessionTask: SessionTaskParent;
  SettleRowInput: SettleRowInput;
  SettleRowPayload: Omit<SettleRowPayload, 'problems' | 'row' | 'run'> & { problems: ReadonlyArray<ResolversParentTypes['Problem']>, row: Maybe<ResolversParentTypes['QuarantinedRow']>, run: Maybe<ResolversParentTypes['ImportRun']> };
  ShoppingAisle: Omit<ShoppingAisle, 'lines'> & { lines: ReadonlyArray<ResolversParentTypes['ShoppingLine']> };
  ShoppingLine: ShoppingLineParent;
  ShoppingList: ShoppingListParent;
  ShoppingPayload: ShoppingPayloadParent;
  SingleIngredient: SingleIngredient;
  Source: Source;
  StartImportInput: StartImportInput;
  Step: StepParent;
  StorageGuidance: StorageGuidanceParent;
  String: Scalars['String']['output'];
  Subscription: Record<PropertyKey, never>;
  Swap: SwapParent;
  SwapInput: SwapInput;
  SwapStep: SwapStep;
  TaskOrder: TaskOrder;
  Temperature: Temperature;
  TextLine: TextLineParent;
  TextLineItem: TextLineItem;
  TokenUsage: TokenUsage;
  Unit: UnitParent;
  UnpublishPlanInput: UnpublishPlanInput;
  UpdatePublisherInput: UpdatePublisherInput;
  UpdateWebhookInput: UpdateWebhookInput;
  UploadedImage: UploadedImage;
  Use: UseParent;
  Vocabulary: Vocabulary;
  VocabularyAllergen: VocabularyAllergen;
  VocabularyCode: VocabularyCode;
  VocabularyList: VocabularyList;
  VocabularyMessage: VocabularyMessage;
  Warning: WarningParent;
  Webhook: WebhookParent;
  WebhookConnection: Omit<WebhookConnection, 'edges'> & { edges: ReadonlyArray<ResolversParentTypes['WebhookEdge']> };
  WebhookDelivery: WebhookDeliveryParent;
  WebhookDeliveryConnection: Omit<WebhookDeliveryConnection, 'edges'> & { edges: ReadonlyArray<ResolversParentTypes['WebhookDeliveryEdge']> };
  WebhookDeliveryEdge: Omit<WebhookDeliveryEdge, 'node'> & { node: ResolversParentTypes['WebhookDelivery'] };
  WebhookDeliveryPayload: Omit<WebhookDeliveryPayload, 'delivery' | 'problems'> & { delivery: Maybe<ResolversParentTypes['WebhookDelivery']>, problems: ReadonlyArray<ResolversParentTypes['Problem']> };
  WebhookEdge: Omit<WebhookEdge, 'node'> & { node: ResolversParentTypes['Webhook'] };
  WebhookInput: WebhookInput;
  WebhookPayload: Omit<WebhookPayload, 'problems' | 'webhook'> & { problems: ReadonlyArray<ResolversParentTypes['Problem']>, webhook: Maybe<ResolversParentTypes['Webhook']> };
  WebhookSecretPayload: Omit<WebhookSecretPayload, 'problems' | 'webhook'> & { problems: ReadonlyArray<ResolversParentTypes['Problem']>, webhook: Maybe<ResolversParentTypes['Webhook']> };
  WithdrawPlanInput: WithdrawPlanInput;
  WithdrawPlanPayload: Omit<WithdrawPlanPayload, 'plan' | 'problems'> & { plan: Maybe<ResolversParentTypes['Plan']>, problems: ReadonlyArray<ResolversParentTypes['Problem']> };
  WrittenText: WrittenTextParent;
};

export type AccessTokenResolvers<ContextType = Context, ParentType extends ResolversParentTypes['AccessToken'] = ResolversParentTypes['AccessToken']> = {
  createdAt: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  expiresAt: Resolver<Maybe<ResolversTypes['DateTime']>, ParentType, ContextType>;
  id: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  lastUsedAt: Resolver<Maybe<ResolversTypes['DateTime']>, ParentType, ContextType>;
  name: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  pointsPerMinute: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  publisher: Resolver<Maybe<ResolversTypes['Publisher']>, ParentType, ContextType>;
  revokedAt: Resolver<Maybe<ResolversTypes['DateTime']>, ParentType, ContextType>;
  scopes: Resolver<ReadonlyArray<ResolversTypes['Scope']>, ParentType, ContextType>;
  usage: Resolver<ReadonlyArray<ResolversTypes['TokenUsage']>, ParentType, ContextType, RequireFields<AccessTokenUsageArgs, 'days'>>;
};

export type AccessTokenConnectionResolvers<ContextType = Context, ParentType extends ResolversParentTypes['AccessTokenConnection'] = ResolversParentTypes['AccessTokenConnection']> = {
  edges: Resolver<ReadonlyArray<ResolversTypes['AccessTokenEdge']>, ParentType, ContextType>;
  pageInfo: Resolver<ResolversTypes['PageInfo'], ParentType, ContextType>;
};

export type AccessTokenEdgeResolvers<ContextType = Context, ParentType extends ResolversParentTypes['AccessTokenEdge'] = ResolversParentTypes['AccessTokenEdge']> = {
  cursor: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  node: Resolver<ResolversTypes['AccessToken'], ParentType, ContextType>;
};

export type AllergenFindingResolvers<ContextType = Context, ParentType extends ResolversParentTypes['AllergenFinding'] = ResolversParentTypes['AllergenFinding']> = {
  asIngredient: Resolver<ResolversTypes['AsIngredient'], ParentType, ContextType>;
  code: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  contains: Resolver<ReadonlyArray<ResolversTypes['Food']>, ParentType, ContextType>;
  mayContain: Resolver<ReadonlyArray<ResolversTypes['Food']>, ParentType, ContextType>;
  name: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  presence: Resolver<ResolversTypes['AllergenPresence'], ParentType, ContextType>;
  threshold: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  traces: Resolver<ResolversTypes['AllergenPresence'], ParentType, ContextType>;
  unknown: Resolver<ReadonlyArray<ResolversTypes['Food']>, ParentType, ContextType>;
};

export type AllergenListResolvers<ContextType = Context, ParentType extends ResolversParentTypes['AllergenList'] = ResolversParentTypes['AllergenList']> = {
  code: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  law: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  region: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type AllergenNamingResolvers<ContextType = Context, ParentType extends ResolversParentTypes['AllergenNaming'] = ResolversParentTypes['AllergenNaming']> = {
  law: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  list: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  name: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  region: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type AllergenStatementResolvers<ContextType = Context, ParentType extends ResolversParentTypes['AllergenStatement'] = ResolversParentTypes['AllergenStatement']> = {
  alsoContains: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  asked: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  findings: Resolver<ReadonlyArray<ResolversTypes['AllergenFinding']>, ParentType, ContextType>;
  labelsToRead: Resolver<ReadonlyArray<ResolversTypes['LabelToRead']>, ParentType, ContextType>;
  lists: Resolver<ReadonlyArray<ResolversTypes['AllergenList']>, ParentType, ContextType>;
  reach: Resolver<ResolversTypes['AllergenReach'], ParentType, ContextType>;
  whose: Resolver<Maybe<ResolversTypes['RegionOwner']>, ParentType, ContextType>;
};

export type AmountResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Amount'] = ResolversParentTypes['Amount']> = {
  exact: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  grams: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  millilitres: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  text: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  unit: Resolver<ResolversTypes['Unit'], ParentType, ContextType>;
  upTo: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  value: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
};

export type AsIngredientResolvers<ContextType = Context, ParentType extends ResolversParentTypes['AsIngredient'] = ResolversParentTypes['AsIngredient']> = {
  basis: Resolver<Maybe<ResolversTypes['IngredientBasis']>, ParentType, ContextType>;
  foods: Resolver<ReadonlyArray<ResolversTypes['FoodAsIngredient']>, ParentType, ContextType>;
  glutenFreeOnly: Resolver<ReadonlyArray<ResolversTypes['Food']>, ParentType, ContextType>;
  presence: Resolver<ResolversTypes['AllergenPresence'], ParentType, ContextType>;
  source: Resolver<Maybe<ResolversTypes['Source']>, ParentType, ContextType>;
  unknown: Resolver<ReadonlyArray<ResolversTypes['Food']>, ParentType, ContextType>;
};

export type AuditAuthorResolvers<ContextType = Context, ParentType extends ResolversParentTypes['AuditAuthor'] = ResolversParentTypes['AuditAuthor']> = {
  kind: Resolver<ResolversTypes['AuditAuthorKind'], ParentType, ContextType>;
  name: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  token: Resolver<Maybe<ResolversTypes['ID']>, ParentType, ContextType>;
};

export type AuditEntryResolvers<ContextType = Context, ParentType extends ResolversParentTypes['AuditEntry'] = ResolversParentTypes['AuditEntry']> = {
  action: Resolver<ResolversTypes['AuditAction'], ParentType, ContextType>;
  after: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  at: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  before: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  by: Resolver<ResolversTypes['AuditAuthor'], ParentType, ContextType>;
  id: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  publisher: Resolver<Maybe<ResolversTypes['Publisher']>, ParentType, ContextType>;
  requestId: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  subject: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  subjectKind: Resolver<ResolversTypes['AuditSubjectKind'], ParentType, ContextType>;
};

export type AuditEntryConnectionResolvers<ContextType = Context, ParentType extends ResolversParentTypes['AuditEntryConnection'] = ResolversParentTypes['AuditEntryConnection']> = {
  edges: Resolver<ReadonlyArray<ResolversTypes['AuditEntryEdge']>, ParentType, ContextType>;
  pageInfo: Resolver<ResolversTypes['PageInfo'], ParentType, ContextType>;
};

export type AuditEntryEdgeResolvers<ContextType = Context, ParentType extends ResolversParentTypes['AuditEntryEdge'] = ResolversParentTypes['AuditEntryEdge']> = {
  cursor: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  node: Resolver<ResolversTypes['AuditEntry'], ParentType, ContextType>;
};

export type BasisResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Basis'] = ResolversParentTypes['Basis']> = {
  byAnalogy: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  condition: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  days: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  daysFrom: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  decides: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  note: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  of: Resolver<ResolversTypes['Keepable'], ParentType, ContextType>;
  printed: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  purpose: Resolver<ResolversTypes['KeepingPurpose'], ParentType, ContextType>;
  region: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  source: Resolver<ResolversTypes['Source'], ParentType, ContextType>;
  sourced: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  temperature: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
};

export type BatchRuleResolvers<ContextType = Context, ParentType extends ResolversParentTypes['BatchRule'] = ResolversParentTypes['BatchRule']> = {
  increment: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  max: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  min: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
};

export type CatalogueFoodResolvers<ContextType = Context, ParentType extends ResolversParentTypes['CatalogueFood'] = ResolversParentTypes['CatalogueFood']> = {
  aisle: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  densities: Resolver<ReadonlyArray<ResolversTypes['FoodDensity']>, ParentType, ContextType>;
  description: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  edible: Resolver<ReadonlyArray<ResolversTypes['EdiblePortion']>, ParentType, ContextType>;
  edition: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  measures: Resolver<ReadonlyArray<ResolversTypes['FoodMeasure']>, ParentType, ContextType>;
  ndbNo: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  nutrients: Resolver<ReadonlyArray<ResolversTypes['FoodNutrient']>, ParentType, ContextType>;
  otherNames: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
};

export type CatalogueFoodConnectionResolvers<ContextType = Context, ParentType extends ResolversParentTypes['CatalogueFoodConnection'] = ResolversParentTypes['CatalogueFoodConnection']> = {
  edges: Resolver<ReadonlyArray<ResolversTypes['CatalogueFoodEdge']>, ParentType, ContextType>;
  pageInfo: Resolver<ResolversTypes['PageInfo'], ParentType, ContextType>;
};

export type CatalogueFoodEdgeResolvers<ContextType = Context, ParentType extends ResolversParentTypes['CatalogueFoodEdge'] = ResolversParentTypes['CatalogueFoodEdge']> = {
  cursor: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  node: Resolver<ResolversTypes['CatalogueFood'], ParentType, ContextType>;
};

export type CautionResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Caution'] = ResolversParentTypes['Caution']> = {
  about: Resolver<ReadonlyArray<ResolversTypes['Keepable']>, ParentType, ContextType>;
  code: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  restsOn: Resolver<ReadonlyArray<ResolversTypes['Source']>, ParentType, ContextType>;
  source: Resolver<ResolversTypes['Source'], ParentType, ContextType>;
  text: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type ChangeResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Change'] = ResolversParentTypes['Change']> = {
  at: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  id: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  kind: Resolver<ResolversTypes['ChangeKind'], ParentType, ContextType>;
  plan: Resolver<ResolversTypes['Plan'], ParentType, ContextType>;
};

export type ChangeConnectionResolvers<ContextType = Context, ParentType extends ResolversParentTypes['ChangeConnection'] = ResolversParentTypes['ChangeConnection']> = {
  edges: Resolver<ReadonlyArray<ResolversTypes['ChangeEdge']>, ParentType, ContextType>;
  pageInfo: Resolver<ResolversTypes['PageInfo'], ParentType, ContextType>;
};

export type ChangeEdgeResolvers<ContextType = Context, ParentType extends ResolversParentTypes['ChangeEdge'] = ResolversParentTypes['ChangeEdge']> = {
  cursor: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  node: Resolver<ResolversTypes['Change'], ParentType, ContextType>;
};

export type ChangedPlanResolvers<ContextType = Context, ParentType extends ResolversParentTypes['ChangedPlan'] = ResolversParentTypes['ChangedPlan']> = {
  changedAt: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  differences: Resolver<ReadonlyArray<ResolversTypes['PlanDifference']>, ParentType, ContextType>;
  lessSafe: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  plan: Resolver<ResolversTypes['Plan'], ParentType, ContextType>;
};

export type ComponentResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Component'] = ResolversParentTypes['Component']> = {
  batch: Resolver<ResolversTypes['BatchRule'], ParentType, ContextType>;
  componentId: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  credits: Resolver<ReadonlyArray<ResolversTypes['Credit']>, ParentType, ContextType>;
  equipment: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  id: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  image: Resolver<Maybe<ResolversTypes['Image']>, ParentType, ContextType>;
  introduction: Resolver<Maybe<ResolversTypes['WrittenText']>, ParentType, ContextType>;
  keeping: Resolver<ReadonlyArray<ResolversTypes['KeepingRule']>, ParentType, ContextType>;
  lines: Resolver<ReadonlyArray<ResolversTypes['Line']>, ParentType, ContextType>;
  meals: Resolver<ReadonlyArray<ResolversTypes['Meal']>, ParentType, ContextType>;
  notes: Resolver<Maybe<ResolversTypes['WrittenText']>, ParentType, ContextType>;
  plan: Resolver<ResolversTypes['Plan'], ParentType, ContextType>;
  routes: Resolver<ReadonlyArray<ResolversTypes['Route']>, ParentType, ContextType>;
  slug: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  steps: Resolver<ReadonlyArray<ResolversTypes['Step']>, ParentType, ContextType>;
  storage: Resolver<ReadonlyArray<ResolversTypes['StorageGuidance']>, ParentType, ContextType, RequireFields<ComponentStorageArgs, 'kitchen'>>;
  tips: Resolver<Maybe<ResolversTypes['WrittenText']>, ParentType, ContextType>;
  title: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  yield: Resolver<ResolversTypes['Amount'], ParentType, ContextType>;
  yieldSource: Resolver<ResolversTypes['Source'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type CostResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Cost'] = ResolversParentTypes['Cost']> = {
  atTill: Resolver<Maybe<ResolversTypes['Money']>, ParentType, ContextType>;
  carriedOver: Resolver<Maybe<ResolversTypes['Money']>, ParentType, ContextType>;
  currency: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  perServing: Resolver<Maybe<ResolversTypes['Money']>, ParentType, ContextType>;
  unpriced: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  used: Resolver<Maybe<ResolversTypes['Money']>, ParentType, ContextType>;
};

export type CreatePreviewLinkPayloadResolvers<ContextType = Context, ParentType extends ResolversParentTypes['CreatePreviewLinkPayload'] = ResolversParentTypes['CreatePreviewLinkPayload']> = {
  link: Resolver<Maybe<ResolversTypes['PreviewLink']>, ParentType, ContextType>;
  path: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
};

export type CreateTokenPayloadResolvers<ContextType = Context, ParentType extends ResolversParentTypes['CreateTokenPayload'] = ResolversParentTypes['CreateTokenPayload']> = {
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
  secret: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  token: Resolver<Maybe<ResolversTypes['AccessToken']>, ParentType, ContextType>;
};

export type CreditResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Credit'] = ResolversParentTypes['Credit']> = {
  adapted: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  licence: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  name: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  url: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
};

export type CriticalTaskResolvers<ContextType = Context, ParentType extends ResolversParentTypes['CriticalTask'] = ResolversParentTypes['CriticalTask']> = {
  because: Resolver<ResolversTypes['StartReason'], ParentType, ContextType>;
  task: Resolver<ResolversTypes['SessionTask'], ParentType, ContextType>;
  text: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  waitsFor: Resolver<ReadonlyArray<ResolversTypes['SessionTask']>, ParentType, ContextType>;
};

export interface DateScalarConfig extends GraphQLScalarTypeConfig<ResolversTypes['Date'], any> {
  name: 'Date';
}

export interface DateTimeScalarConfig extends GraphQLScalarTypeConfig<ResolversTypes['DateTime'], any> {
  name: 'DateTime';
}

export type DeleteWebhookPayloadResolvers<ContextType = Context, ParentType extends ResolversParentTypes['DeleteWebhookPayload'] = ResolversParentTypes['DeleteWebhookPayload']> = {
  deleted: Resolver<Maybe<ResolversTypes['ID']>, ParentType, ContextType>;
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
};

export type DietResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Diet'] = ResolversParentTypes['Diet']> = {
  breaks: Resolver<ReadonlyArray<ResolversTypes['Food']>, ParentType, ContextType>;
  claims: Resolver<ReadonlyArray<ResolversTypes['DietClaim']>, ParentType, ContextType>;
  code: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  fits: Resolver<Maybe<ResolversTypes['Boolean']>, ParentType, ContextType>;
  name: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  traces: Resolver<ResolversTypes['AllergenPresence'], ParentType, ContextType>;
  unknown: Resolver<ReadonlyArray<ResolversTypes['Food']>, ParentType, ContextType>;
};

export type DietClaimResolvers<ContextType = Context, ParentType extends ResolversParentTypes['DietClaim'] = ResolversParentTypes['DietClaim']> = {
  law: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  source: Resolver<ResolversTypes['Source'], ParentType, ContextType>;
  threshold: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type DiscardDraftPayloadResolvers<ContextType = Context, ParentType extends ResolversParentTypes['DiscardDraftPayload'] = ResolversParentTypes['DiscardDraftPayload']> = {
  discarded: Resolver<Maybe<ResolversTypes['DiscardedDraft']>, ParentType, ContextType>;
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
};

export type DiscardedDraftResolvers<ContextType = Context, ParentType extends ResolversParentTypes['DiscardedDraft'] = ResolversParentTypes['DiscardedDraft']> = {
  kind: Resolver<ResolversTypes['DraftKind'], ParentType, ContextType>;
  namedBy: Resolver<ReadonlyArray<ResolversTypes['NamingDraft']>, ParentType, ContextType>;
  slug: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  version: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
};

export type DocumentsCheckResolvers<ContextType = Context, ParentType extends ResolversParentTypes['DocumentsCheck'] = ResolversParentTypes['DocumentsCheck']> = {
  findings: Resolver<ReadonlyArray<ResolversTypes['Finding']>, ParentType, ContextType>;
  lines: Resolver<ReadonlyArray<ResolversTypes['TextLine']>, ParentType, ContextType>;
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
};

export type DraftResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Draft'] = ResolversParentTypes['Draft']> = {
  document: Resolver<ResolversTypes['DraftDocument'], ParentType, ContextType>;
  kind: Resolver<ResolversTypes['DraftKind'], ParentType, ContextType>;
  preview: Resolver<Maybe<ResolversTypes['DraftPreview']>, ParentType, ContextType>;
  publisher: Resolver<ResolversTypes['Publisher'], ParentType, ContextType>;
  slug: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  title: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  updatedAt: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  updatedBy: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  version: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
};

export type DraftCheckResolvers<ContextType = Context, ParentType extends ResolversParentTypes['DraftCheck'] = ResolversParentTypes['DraftCheck']> = {
  findings: Resolver<ReadonlyArray<ResolversTypes['Finding']>, ParentType, ContextType>;
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
  version: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
};

export type DraftConnectionResolvers<ContextType = Context, ParentType extends ResolversParentTypes['DraftConnection'] = ResolversParentTypes['DraftConnection']> = {
  edges: Resolver<ReadonlyArray<ResolversTypes['DraftEdge']>, ParentType, ContextType>;
  pageInfo: Resolver<ResolversTypes['PageInfo'], ParentType, ContextType>;
};

export type DraftDocumentResolvers<ContextType = Context, ParentType extends ResolversParentTypes['DraftDocument'] = ResolversParentTypes['DraftDocument']> = {
  format: Resolver<ResolversTypes['DocumentFormat'], ParentType, ContextType>;
  hash: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  text: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type DraftEdgeResolvers<ContextType = Context, ParentType extends ResolversParentTypes['DraftEdge'] = ResolversParentTypes['DraftEdge']> = {
  cursor: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  node: Resolver<ResolversTypes['Draft'], ParentType, ContextType>;
};

export type DraftPreviewResolvers<ContextType = Context, ParentType extends ResolversParentTypes['DraftPreview'] = ResolversParentTypes['DraftPreview']> = {
  findings: Resolver<ReadonlyArray<ResolversTypes['Finding']>, ParentType, ContextType>;
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
  revision: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  scaled: Resolver<Maybe<ResolversTypes['ScaledPlan']>, ParentType, ContextType, Partial<DraftPreviewScaledArgs>>;
  scaling: Resolver<Maybe<ResolversTypes['ScalingPayload']>, ParentType, ContextType, Partial<DraftPreviewScalingArgs>>;
  version: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
};

export type EdiblePortionResolvers<ContextType = Context, ParentType extends ResolversParentTypes['EdiblePortion'] = ResolversParentTypes['EdiblePortion']> = {
  form: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  share: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  source: Resolver<ResolversTypes['Source'], ParentType, ContextType>;
};

export type FeedResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Feed'] = ResolversParentTypes['Feed']> = {
  cron: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  enabled: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  kind: Resolver<ResolversTypes['FeedKind'], ParentType, ContextType>;
  publisher: Resolver<Maybe<ResolversTypes['Publisher']>, ParentType, ContextType>;
  settings: Resolver<ResolversTypes['FeedSettings'], ParentType, ContextType>;
  slug: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  zone: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type FeedArticleResolvers<ContextType = Context, ParentType extends ResolversParentTypes['FeedArticle'] = ResolversParentTypes['FeedArticle']> = {
  article: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  food: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type FeedColumnResolvers<ContextType = Context, ParentType extends ResolversParentTypes['FeedColumn'] = ResolversParentTypes['FeedColumn']> = {
  inFile: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  ours: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type FeedLimitsResolvers<ContextType = Context, ParentType extends ResolversParentTypes['FeedLimits'] = ResolversParentTypes['FeedLimits']> = {
  changed: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  quarantined: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
};

export type FeedPayloadResolvers<ContextType = Context, ParentType extends ResolversParentTypes['FeedPayload'] = ResolversParentTypes['FeedPayload']> = {
  feed: Resolver<Maybe<ResolversTypes['Feed']>, ParentType, ContextType>;
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
};

export type FeedPlaceResolvers<ContextType = Context, ParentType extends ResolversParentTypes['FeedPlace'] = ResolversParentTypes['FeedPlace']> = {
  hosts: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  kind: Resolver<ResolversTypes['FeedPlaceKind'], ParentType, ContextType>;
  path: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  url: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
};

export type FeedSettingsResolvers<ContextType = Context, ParentType extends ResolversParentTypes['FeedSettings'] = ResolversParentTypes['FeedSettings']> = {
  articles: Resolver<ReadonlyArray<ResolversTypes['FeedArticle']>, ParentType, ContextType>;
  columns: Resolver<ReadonlyArray<ResolversTypes['FeedColumn']>, ParentType, ContextType>;
  currency: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  delimiter: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  limits: Resolver<ResolversTypes['FeedLimits'], ParentType, ContextType>;
  locale: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  measures: Resolver<ResolversTypes['MeasureSystem'], ParentType, ContextType>;
  place: Resolver<ResolversTypes['FeedPlace'], ParentType, ContextType>;
  publish: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  region: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  source: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type FindingResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Finding'] = ResolversParentTypes['Finding']> = {
  about: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  caution: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  code: Resolver<ResolversTypes['FindingCode'], ParentType, ContextType>;
  column: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  file: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  line: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  message: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  path: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  severity: Resolver<ResolversTypes['FindingSeverity'], ParentType, ContextType>;
};

export type FoodResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Food'] = ResolversParentTypes['Food']> = {
  aisle: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  aisleName: Resolver<ResolversTypes['String'], ParentType, ContextType, Partial<FoodAisleNameArgs>>;
  allergens: Resolver<ReadonlyArray<ResolversTypes['FoodAllergen']>, ParentType, ContextType>;
  alwaysThere: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  catalogueFood: Resolver<Maybe<ResolversTypes['CatalogueFood']>, ParentType, ContextType>;
  densities: Resolver<ReadonlyArray<ResolversTypes['FoodDensity']>, ParentType, ContextType>;
  diets: Resolver<ReadonlyArray<ResolversTypes['FoodDiet']>, ParentType, ContextType>;
  edible: Resolver<ReadonlyArray<ResolversTypes['EdiblePortion']>, ParentType, ContextType>;
  extends: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  id: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  keeping: Resolver<ReadonlyArray<ResolversTypes['KeepingRule']>, ParentType, ContextType>;
  measures: Resolver<ReadonlyArray<ResolversTypes['FoodMeasure']>, ParentType, ContextType>;
  name: Resolver<ResolversTypes['String'], ParentType, ContextType, Partial<FoodNameArgs>>;
  names: Resolver<ReadonlyArray<ResolversTypes['FoodName']>, ParentType, ContextType>;
  ndbNo: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  nutrients: Resolver<ReadonlyArray<ResolversTypes['FoodNutrient']>, ParentType, ContextType>;
  owner: Resolver<Maybe<ResolversTypes['Publisher']>, ParentType, ContextType>;
  packs: Resolver<ReadonlyArray<ResolversTypes['Pack']>, ParentType, ContextType>;
  parts: Resolver<ReadonlyArray<ResolversTypes['FoodPart']>, ParentType, ContextType>;
  shelfStable: Resolver<Maybe<ResolversTypes['Boolean']>, ParentType, ContextType>;
  shoppedBy: Resolver<ResolversTypes['Dimension'], ParentType, ContextType>;
  singleIngredient: Resolver<Maybe<ResolversTypes['SingleIngredient']>, ParentType, ContextType>;
  slug: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  storage: Resolver<ReadonlyArray<ResolversTypes['StorageGuidance']>, ParentType, ContextType, RequireFields<FoodStorageArgs, 'kitchen'>>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type FoodAllergenResolvers<ContextType = Context, ParentType extends ResolversParentTypes['FoodAllergen'] = ResolversParentTypes['FoodAllergen']> = {
  code: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  presence: Resolver<ResolversTypes['AllergenPresence'], ParentType, ContextType>;
  source: Resolver<ResolversTypes['Source'], ParentType, ContextType>;
  traces: Resolver<Maybe<ResolversTypes['AllergenPresence']>, ParentType, ContextType>;
};

export type FoodAsIngredientResolvers<ContextType = Context, ParentType extends ResolversParentTypes['FoodAsIngredient'] = ResolversParentTypes['FoodAsIngredient']> = {
  basis: Resolver<Maybe<ResolversTypes['IngredientBasis']>, ParentType, ContextType>;
  food: Resolver<ResolversTypes['Food'], ParentType, ContextType>;
  presence: Resolver<ResolversTypes['AllergenPresence'], ParentType, ContextType>;
  source: Resolver<Maybe<ResolversTypes['Source']>, ParentType, ContextType>;
};

export type FoodConnectionResolvers<ContextType = Context, ParentType extends ResolversParentTypes['FoodConnection'] = ResolversParentTypes['FoodConnection']> = {
  edges: Resolver<ReadonlyArray<ResolversTypes['FoodEdge']>, ParentType, ContextType>;
  openTable: Resolver<ReadonlyArray<ResolversTypes['CatalogueFood']>, ParentType, ContextType>;
  pageInfo: Resolver<ResolversTypes['PageInfo'], ParentType, ContextType>;
};

export type FoodDensityResolvers<ContextType = Context, ParentType extends ResolversParentTypes['FoodDensity'] = ResolversParentTypes['FoodDensity']> = {
  form: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  gramsPerMl: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  source: Resolver<ResolversTypes['Source'], ParentType, ContextType>;
};

export type FoodDietResolvers<ContextType = Context, ParentType extends ResolversParentTypes['FoodDiet'] = ResolversParentTypes['FoodDiet']> = {
  diet: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  fits: Resolver<Maybe<ResolversTypes['Boolean']>, ParentType, ContextType>;
  source: Resolver<ResolversTypes['Source'], ParentType, ContextType>;
};

export type FoodEdgeResolvers<ContextType = Context, ParentType extends ResolversParentTypes['FoodEdge'] = ResolversParentTypes['FoodEdge']> = {
  cursor: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  node: Resolver<ResolversTypes['Food'], ParentType, ContextType>;
};

export type FoodMeasureResolvers<ContextType = Context, ParentType extends ResolversParentTypes['FoodMeasure'] = ResolversParentTypes['FoodMeasure']> = {
  grams: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  many: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  millilitres: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  name: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  one: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  pieces: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  source: Resolver<ResolversTypes['Source'], ParentType, ContextType>;
};

export type FoodNameResolvers<ContextType = Context, ParentType extends ResolversParentTypes['FoodName'] = ResolversParentTypes['FoodName']> = {
  also: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  counted: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  language: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  many: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  one: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  region: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
};

export type FoodNutrientResolvers<ContextType = Context, ParentType extends ResolversParentTypes['FoodNutrient'] = ResolversParentTypes['FoodNutrient']> = {
  nutrient: Resolver<ResolversTypes['Nutrient'], ParentType, ContextType>;
  per100g: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  source: Resolver<ResolversTypes['Source'], ParentType, ContextType>;
};

export type FoodPartResolvers<ContextType = Context, ParentType extends ResolversParentTypes['FoodPart'] = ResolversParentTypes['FoodPart']> = {
  after: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  keeping: Resolver<ReadonlyArray<ResolversTypes['KeepingRule']>, ParentType, ContextType>;
  keepsAs: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  name: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  nutrients: Resolver<ReadonlyArray<ResolversTypes['FoodNutrient']>, ParentType, ContextType>;
  perPiece: Resolver<ResolversTypes['Amount'], ParentType, ContextType>;
  source: Resolver<ResolversTypes['Source'], ParentType, ContextType>;
  title: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type ImageResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Image'] = ResolversParentTypes['Image']> = {
  alt: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  credit: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  file: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  hash: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  height: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  licence: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  placeholder: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  url: Resolver<ResolversTypes['String'], ParentType, ContextType, RequireFields<ImageUrlArgs, 'format'>>;
  width: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
};

export type ImportChangeResolvers<ContextType = Context, ParentType extends ResolversParentTypes['ImportChange'] = ResolversParentTypes['ImportChange']> = {
  differences: Resolver<ReadonlyArray<ResolversTypes['ImportDifference']>, ParentType, ContextType>;
  isNew: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  superseded: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  what: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type ImportCountsResolvers<ContextType = Context, ParentType extends ResolversParentTypes['ImportCounts'] = ResolversParentTypes['ImportCounts']> = {
  changed: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  created: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  quarantined: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  read: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  repeated: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  unchanged: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
};

export type ImportDifferenceResolvers<ContextType = Context, ParentType extends ResolversParentTypes['ImportDifference'] = ResolversParentTypes['ImportDifference']> = {
  after: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  before: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  what: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type ImportOnlyTokenResolvers<ContextType = Context, ParentType extends ResolversParentTypes['ImportOnlyToken'] = ResolversParentTypes['ImportOnlyToken']> = {
  feeds: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  name: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  publisher: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  token: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  until: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
};

export type ImportReportResolvers<ContextType = Context, ParentType extends ResolversParentTypes['ImportReport'] = ResolversParentTypes['ImportReport']> = {
  changes: Resolver<ReadonlyArray<ResolversTypes['ImportChange']>, ParentType, ContextType>;
  markdown: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  moreChanges: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  run: Resolver<ResolversTypes['ImportRun'], ParentType, ContextType>;
  warnings: Resolver<ReadonlyArray<ResolversTypes['RowWarning']>, ParentType, ContextType>;
};

export type ImportRunResolvers<ContextType = Context, ParentType extends ResolversParentTypes['ImportRun'] = ResolversParentTypes['ImportRun']> = {
  counts: Resolver<ResolversTypes['ImportCounts'], ParentType, ContextType>;
  createdAt: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  endedAt: Resolver<Maybe<ResolversTypes['DateTime']>, ParentType, ContextType>;
  feed: Resolver<ResolversTypes['Feed'], ParentType, ContextType>;
  fetchesFailed: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  file: Resolver<Maybe<ResolversTypes['ID']>, ParentType, ContextType>;
  force: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  heartbeatAt: Resolver<Maybe<ResolversTypes['DateTime']>, ParentType, ContextType>;
  id: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  kind: Resolver<ResolversTypes['ImportRunKind'], ParentType, ContextType>;
  nextAt: Resolver<Maybe<ResolversTypes['DateTime']>, ParentType, ContextType>;
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
  startedAt: Resolver<Maybe<ResolversTypes['DateTime']>, ParentType, ContextType>;
  state: Resolver<ResolversTypes['ImportRunState'], ParentType, ContextType>;
  undoes: Resolver<Maybe<ResolversTypes['ID']>, ParentType, ContextType>;
};

export type ImportRunConnectionResolvers<ContextType = Context, ParentType extends ResolversParentTypes['ImportRunConnection'] = ResolversParentTypes['ImportRunConnection']> = {
  edges: Resolver<ReadonlyArray<ResolversTypes['ImportRunEdge']>, ParentType, ContextType>;
  pageInfo: Resolver<ResolversTypes['PageInfo'], ParentType, ContextType>;
};

export type ImportRunEdgeResolvers<ContextType = Context, ParentType extends ResolversParentTypes['ImportRunEdge'] = ResolversParentTypes['ImportRunEdge']> = {
  cursor: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  node: Resolver<ResolversTypes['ImportRun'], ParentType, ContextType>;
};

export type ImportRunPayloadResolvers<ContextType = Context, ParentType extends ResolversParentTypes['ImportRunPayload'] = ResolversParentTypes['ImportRunPayload']> = {
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
  run: Resolver<Maybe<ResolversTypes['ImportRun']>, ParentType, ContextType>;
};

export type KeepableResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Keepable'] = ResolversParentTypes['Keepable']> = {
  __resolveType: TypeResolveFn<'Component' | 'Food' | 'Meal', ParentType, ContextType>;
};

export type KeepingRuleResolvers<ContextType = Context, ParentType extends ResolversParentTypes['KeepingRule'] = ResolversParentTypes['KeepingRule']> = {
  condition: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  container: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  days: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  place: Resolver<ResolversTypes['StoragePlace'], ParentType, ContextType>;
  purpose: Resolver<ResolversTypes['KeepingPurpose'], ParentType, ContextType>;
  region: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  source: Resolver<ResolversTypes['Source'], ParentType, ContextType>;
};

export type LabelFigureResolvers<ContextType = Context, ParentType extends ResolversParentTypes['LabelFigure'] = ResolversParentTypes['LabelFigure']> = {
  text: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  upTo: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  value: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
};

export type LabelNutrientResolvers<ContextType = Context, ParentType extends ResolversParentTypes['LabelNutrient'] = ResolversParentTypes['LabelNutrient']> = {
  name: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  per100g: Resolver<Maybe<ResolversTypes['LabelFigure']>, ParentType, ContextType>;
  perServing: Resolver<ResolversTypes['LabelFigure'], ParentType, ContextType>;
  unit: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type LabelToReadResolvers<ContextType = Context, ParentType extends ResolversParentTypes['LabelToRead'] = ResolversParentTypes['LabelToRead']> = {
  allergens: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  food: Resolver<ResolversTypes['Food'], ParentType, ContextType>;
};

export type LateMealResolvers<ContextType = Context, ParentType extends ResolversParentTypes['LateMeal'] = ResolversParentTypes['LateMeal']> = {
  at: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  meal: Resolver<ResolversTypes['Meal'], ParentType, ContextType>;
  readyAt: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
};

export type LineResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Line'] = ResolversParentTypes['Line']> = {
  amount: Resolver<Maybe<ResolversTypes['Amount']>, ParentType, ContextType>;
  code: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  component: Resolver<Maybe<ResolversTypes['Component']>, ParentType, ContextType>;
  each: Resolver<Maybe<ResolversTypes['Amount']>, ParentType, ContextType>;
  eaten: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  exponent: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  extra: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  food: Resolver<Maybe<ResolversTypes['Food']>, ParentType, ContextType>;
  form: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  mark: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  measured: Resolver<ResolversTypes['Measured'], ParentType, ContextType>;
  optional: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  part: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  partName: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  preparation: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  rule: Resolver<ResolversTypes['ScalingRule'], ParentType, ContextType>;
  swaps: Resolver<ReadonlyArray<ResolversTypes['Swap']>, ParentType, ContextType>;
  written: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type LinesReadResolvers<ContextType = Context, ParentType extends ResolversParentTypes['LinesRead'] = ResolversParentTypes['LinesRead']> = {
  lines: Resolver<ReadonlyArray<ResolversTypes['TextLine']>, ParentType, ContextType>;
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
};

export type LoadRuleSetPayloadResolvers<ContextType = Context, ParentType extends ResolversParentTypes['LoadRuleSetPayload'] = ResolversParentTypes['LoadRuleSetPayload']> = {
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
  ruleSet: Resolver<Maybe<ResolversTypes['RuleSet']>, ParentType, ContextType>;
};

export type MealResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Meal'] = ResolversParentTypes['Meal']> = {
  at: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  components: Resolver<ReadonlyArray<ResolversTypes['Component']>, ParentType, ContextType>;
  day: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  id: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  image: Resolver<Maybe<ResolversTypes['Image']>, ParentType, ContextType>;
  introduction: Resolver<Maybe<ResolversTypes['WrittenText']>, ParentType, ContextType>;
  lines: Resolver<ReadonlyArray<ResolversTypes['Line']>, ParentType, ContextType>;
  mealId: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  notes: Resolver<Maybe<ResolversTypes['WrittenText']>, ParentType, ContextType>;
  plan: Resolver<ResolversTypes['Plan'], ParentType, ContextType>;
  serves: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  slug: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  steps: Resolver<ReadonlyArray<ResolversTypes['Step']>, ParentType, ContextType>;
  tips: Resolver<Maybe<ResolversTypes['WrittenText']>, ParentType, ContextType>;
  title: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type MessageParameterResolvers<ContextType = Context, ParentType extends ResolversParentTypes['MessageParameter'] = ResolversParentTypes['MessageParameter']> = {
  name: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  values: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
};

export type MoneyResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Money'] = ResolversParentTypes['Money']> = {
  amount: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  currency: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type MorningImportResolvers<ContextType = Context, ParentType extends ResolversParentTypes['MorningImport'] = ResolversParentTypes['MorningImport']> = {
  run: Resolver<ResolversTypes['ImportRun'], ParentType, ContextType>;
  superseded: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  toMend: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
};

export type MorningReportResolvers<ContextType = Context, ParentType extends ResolversParentTypes['MorningReport'] = ResolversParentTypes['MorningReport']> = {
  from: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  importOnlyTokens: Resolver<ReadonlyArray<ResolversTypes['ImportOnlyToken']>, ParentType, ContextType>;
  imports: Resolver<ReadonlyArray<ResolversTypes['MorningImport']>, ParentType, ContextType>;
  keptBack: Resolver<ReadonlyArray<ResolversTypes['ScheduledChange']>, ParentType, ContextType>;
  markdown: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  moreImports: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  plans: Resolver<ReadonlyArray<ResolversTypes['ChangedPlan']>, ParentType, ContextType>;
  to: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
};

export type MutationResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Mutation'] = ResolversParentTypes['Mutation']> = {
  adoptFood?: Resolver<ResolversTypes['SaveDraftPayload'], ParentType, ContextType, RequireFields<MutationAdoptFoodArgs, 'input'>>;
  cancelImport?: Resolver<ResolversTypes['ImportRunPayload'], ParentType, ContextType, RequireFields<MutationCancelImportArgs, 'input'>>;
  cancelScheduled?: Resolver<ResolversTypes['ScheduledPayload'], ParentType, ContextType, RequireFields<MutationCancelScheduledArgs, 'input'>>;
  changeScheduled?: Resolver<ResolversTypes['ScheduledPayload'], ParentType, ContextType, RequireFields<MutationChangeScheduledArgs, 'input'>>;
  correctPlan?: Resolver<ResolversTypes['PublishPlanPayload'], ParentType, ContextType, RequireFields<MutationCorrectPlanArgs, 'input'>>;
  createPreviewLink?: Resolver<ResolversTypes['CreatePreviewLinkPayload'], ParentType, ContextType, RequireFields<MutationCreatePreviewLinkArgs, 'input'>>;
  createPublisher?: Resolver<ResolversTypes['PublisherPayload'], ParentType, ContextType, RequireFields<MutationCreatePublisherArgs, 'input'>>;
  createToken?: Resolver<ResolversTypes['CreateTokenPayload'], ParentType, ContextType, RequireFields<MutationCreateTokenArgs, 'input'>>;
  createWebhook?: Resolver<ResolversTypes['WebhookSecretPayload'], ParentType, ContextType, RequireFields<MutationCreateWebhookArgs, 'input'>>;
  deleteWebhook?: Resolver<ResolversTypes['DeleteWebhookPayload'], ParentType, ContextType, RequireFields<MutationDeleteWebhookArgs, 'input'>>;
  discardDraft?: Resolver<ResolversTypes['DiscardDraftPayload'], ParentType, ContextType, RequireFields<MutationDiscardDraftArgs, 'input'>>;
  loadRuleSet?: Resolver<ResolversTypes['LoadRuleSetPayload'], ParentType, ContextType, RequireFields<MutationLoadRuleSetArgs, 'input'>>;
  publishPlan?: Resolver<ResolversTypes['PublishPlanPayload'], ParentType, ContextType, RequireFields<MutationPublishPlanArgs, 'input'>>;
  removeFeed?: Resolver<ResolversTypes['RemoveFeedPayload'], ParentType, ContextType, RequireFields<MutationRemoveFeedArgs, 'input'>>;
  removeImage?: Resolver<ResolversTypes['RemoveImagePayload'], ParentType, ContextType, RequireFields<MutationRemoveImageArgs, 'input'>>;
  replayImport?: Resolver<ResolversTypes['ImportRunPayload'], ParentType, ContextType, RequireFields<MutationReplayImportArgs, 'input'>>;
  replayWebhookDelivery?: Resolver<ResolversTypes['WebhookDeliveryPayload'], ParentType, ContextType, RequireFields<MutationReplayWebhookDeliveryArgs, 'input'>>;
  revokePreviewLink?: Resolver<ResolversTypes['RevokePreviewLinkPayload'], ParentType, ContextType, RequireFields<MutationRevokePreviewLinkArgs, 'input'>>;
  revokeToken?: Resolver<ResolversTypes['RevokeTokenPayload'], ParentType, ContextType, RequireFields<MutationRevokeTokenArgs, 'input'>>;
  rotateWebhookSecret?: Resolver<ResolversTypes['WebhookSecretPayload'], ParentType, ContextType, RequireFields<MutationRotateWebhookSecretArgs, 'input'>>;
  saveComponentDraft?: Resolver<ResolversTypes['SaveDraftPayload'], ParentType, ContextType, RequireFields<MutationSaveComponentDraftArgs, 'input'>>;
  saveDocuments?: Resolver<ResolversTypes['SaveDocumentsPayload'], ParentType, ContextType, RequireFields<MutationSaveDocumentsArgs, 'input'>>;
  saveFeed?: Resolver<ResolversTypes['FeedPayload'], ParentType, ContextType, RequireFields<MutationSaveFeedArgs, 'input'>>;
  saveFoodDraft?: Resolver<ResolversTypes['SaveDraftPayload'], ParentType, ContextType, RequireFields<MutationSaveFoodDraftArgs, 'input'>>;
  saveFoods?: Resolver<ResolversTypes['SaveFoodsPayload'], ParentType, ContextType, RequireFields<MutationSaveFoodsArgs, 'input'>>;
  savePlanDraft?: Resolver<ResolversTypes['SaveDraftPayload'], ParentType, ContextType, RequireFields<MutationSavePlanDraftArgs, 'input'>>;
  schedulePublication?: Resolver<ResolversTypes['ScheduledPayload'], ParentType, ContextType, RequireFields<MutationSchedulePublicationArgs, 'input'>>;
  scheduleWithdrawal?: Resolver<ResolversTypes['ScheduledPayload'], ParentType, ContextType, RequireFields<MutationScheduleWithdrawalArgs, 'input'>>;
  settleRow?: Resolver<ResolversTypes['SettleRowPayload'], ParentType, ContextType, RequireFields<MutationSettleRowArgs, 'input'>>;
  startImport?: Resolver<ResolversTypes['ImportRunPayload'], ParentType, ContextType, RequireFields<MutationStartImportArgs, 'input'>>;
  undoImport?: Resolver<ResolversTypes['ImportRunPayload'], ParentType, ContextType, RequireFields<MutationUndoImportArgs, 'input'>>;
  unpublishPlan?: Resolver<ResolversTypes['WithdrawPlanPayload'], ParentType, ContextType, RequireFields<MutationUnpublishPlanArgs, 'input'>>;
  updatePublisher?: Resolver<ResolversTypes['PublisherPayload'], ParentType, ContextType, RequireFields<MutationUpdatePublisherArgs, 'input'>>;
  updateWebhook?: Resolver<ResolversTypes['WebhookPayload'], ParentType, ContextType, RequireFields<MutationUpdateWebhookArgs, 'input'>>;
  withdrawPlan?: Resolver<ResolversTypes['WithdrawPlanPayload'], ParentType, ContextType, RequireFields<MutationWithdrawPlanArgs, 'input'>>;
};

export type NamedCodeResolvers<ContextType = Context, ParentType extends ResolversParentTypes['NamedCode'] = ResolversParentTypes['NamedCode']> = {
  code: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  name: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type NamingDraftResolvers<ContextType = Context, ParentType extends ResolversParentTypes['NamingDraft'] = ResolversParentTypes['NamingDraft']> = {
  kind: Resolver<ResolversTypes['DraftKind'], ParentType, ContextType>;
  slug: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type NodeResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Node'] = ResolversParentTypes['Node']> = {
  __resolveType: TypeResolveFn<'Component' | 'Food' | 'Meal' | 'Plan' | 'Publisher', ParentType, ContextType>;
};

export type NotEatenResolvers<ContextType = Context, ParentType extends ResolversParentTypes['NotEaten'] = ResolversParentTypes['NotEaten']> = {
  food: Resolver<ResolversTypes['Food'], ParentType, ContextType>;
  reasons: Resolver<ReadonlyArray<ResolversTypes['NotEatenReason']>, ParentType, ContextType>;
  share: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
};

export type NutrientFigureResolvers<ContextType = Context, ParentType extends ResolversParentTypes['NutrientFigure'] = ResolversParentTypes['NutrientFigure']> = {
  atLeast: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  complete: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  coverage: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  label: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType, RequireFields<NutrientFigureLabelArgs, 'scheme'>>;
  nutrient: Resolver<ResolversTypes['Nutrient'], ParentType, ContextType>;
  onLabel: Resolver<Maybe<ResolversTypes['LabelNutrient']>, ParentType, ContextType>;
  per100g: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  per100gUpTo: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  perServing: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  perServingUpTo: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  raw: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  unknown: Resolver<ReadonlyArray<ResolversTypes['Food']>, ParentType, ContextType>;
};

export type NutritionPerServingResolvers<ContextType = Context, ParentType extends ResolversParentTypes['NutritionPerServing'] = ResolversParentTypes['NutritionPerServing']> = {
  added: Resolver<ReadonlyArray<ResolversTypes['Food']>, ParentType, ContextType>;
  basis: Resolver<ResolversTypes['NutritionBasis'], ParentType, ContextType>;
  gramsPerServing: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  labelScheme: Resolver<Maybe<ResolversTypes['LabelScheme']>, ParentType, ContextType>;
  mealCount: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  missing: Resolver<ReadonlyArray<ResolversTypes['Food']>, ParentType, ContextType>;
  notEaten: Resolver<ReadonlyArray<ResolversTypes['NotEaten']>, ParentType, ContextType>;
  nutrients: Resolver<ReadonlyArray<ResolversTypes['NutrientFigure']>, ParentType, ContextType>;
  unweighed: Resolver<ReadonlyArray<ResolversTypes['Food']>, ParentType, ContextType>;
};

export type OwnedRegionResolvers<ContextType = Context, ParentType extends ResolversParentTypes['OwnedRegion'] = ResolversParentTypes['OwnedRegion']> = {
  owner: Resolver<ResolversTypes['RegionOwner'], ParentType, ContextType>;
  region: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type PackResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Pack'] = ResolversParentTypes['Pack']> = {
  code: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  content: Resolver<ResolversTypes['Amount'], ParentType, ContextType>;
  loose: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  name: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  price: Resolver<Maybe<ResolversTypes['Money']>, ParentType, ContextType>;
  region: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  seen: Resolver<ResolversTypes['Date'], ParentType, ContextType>;
  source: Resolver<ResolversTypes['Source'], ParentType, ContextType>;
  step: Resolver<Maybe<ResolversTypes['Amount']>, ParentType, ContextType>;
};

export type PackCountResolvers<ContextType = Context, ParentType extends ResolversParentTypes['PackCount'] = ResolversParentTypes['PackCount']> = {
  count: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  pack: Resolver<ResolversTypes['Pack'], ParentType, ContextType>;
  weighedFrom: Resolver<Maybe<ResolversTypes['Pack']>, ParentType, ContextType>;
};

export type PageInfoResolvers<ContextType = Context, ParentType extends ResolversParentTypes['PageInfo'] = ResolversParentTypes['PageInfo']> = {
  endCursor: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  hasNextPage: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  hasPreviousPage: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  startCursor: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
};

export type PanFactorResolvers<ContextType = Context, ParentType extends ResolversParentTypes['PanFactor'] = ResolversParentTypes['PanFactor']> = {
  factor: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  leaveAsIs: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
};

export type PartOverResolvers<ContextType = Context, ParentType extends ResolversParentTypes['PartOver'] = ResolversParentTypes['PartOver']> = {
  amount: Resolver<Maybe<ResolversTypes['Amount']>, ParentType, ContextType>;
  part: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  partName: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  pieces: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
};

export type PlanResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Plan'] = ResolversParentTypes['Plan']> = {
  changeNote: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  check: Resolver<Maybe<ReadonlyArray<ResolversTypes['Finding']>>, ParentType, ContextType>;
  checkedAgainst: Resolver<Maybe<ResolversTypes['RuleSet']>, ParentType, ContextType>;
  claims: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  components: Resolver<ReadonlyArray<ResolversTypes['Component']>, ParentType, ContextType>;
  credits: Resolver<ReadonlyArray<ResolversTypes['Credit']>, ParentType, ContextType>;
  currency: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  equipment: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  firstPublishedAt: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  foods: Resolver<ReadonlyArray<ResolversTypes['Food']>, ParentType, ContextType>;
  id: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  image: Resolver<Maybe<ResolversTypes['Image']>, ParentType, ContextType>;
  introduction: Resolver<Maybe<ResolversTypes['WrittenText']>, ParentType, ContextType>;
  languages: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  licence: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  locale: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  meals: Resolver<ReadonlyArray<ResolversTypes['Meal']>, ParentType, ContextType>;
  measures: Resolver<ResolversTypes['MeasureSystem'], ParentType, ContextType>;
  newest: Resolver<Maybe<ResolversTypes['Plan']>, ParentType, ContextType>;
  notes: Resolver<Maybe<ResolversTypes['WrittenText']>, ParentType, ContextType>;
  planId: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  promisedMinutes: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  publishedAt: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  publisher: Resolver<ResolversTypes['Publisher'], ParentType, ContextType>;
  region: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  revision: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  revisions: Resolver<ResolversTypes['PlanConnection'], ParentType, ContextType, Partial<PlanRevisionsArgs>>;
  scaled: Resolver<ResolversTypes['ScaledPlan'], ParentType, ContextType, Partial<PlanScaledArgs>>;
  scaling: Resolver<ResolversTypes['ScalingPayload'], ParentType, ContextType, Partial<PlanScalingArgs>>;
  serves: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  servingsTable: Resolver<ReadonlyArray<ResolversTypes['ServingsRow']>, ParentType, ContextType, RequireFields<PlanServingsTableArgs, 'from' | 'to'>>;
  slug: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  summary: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  supersededBy: Resolver<Maybe<ResolversTypes['Plan']>, ParentType, ContextType>;
  tags: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  texts: Resolver<ResolversTypes['PlanTexts'], ParentType, ContextType, RequireFields<PlanTextsArgs, 'locale'>>;
  tips: Resolver<Maybe<ResolversTypes['WrittenText']>, ParentType, ContextType>;
  title: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  updatedAt: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  withdrawnAt: Resolver<Maybe<ResolversTypes['DateTime']>, ParentType, ContextType>;
  withdrawnBecause: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type PlanAllergenResolvers<ContextType = Context, ParentType extends ResolversParentTypes['PlanAllergen'] = ResolversParentTypes['PlanAllergen']> = {
  allergen: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  presence: Resolver<ResolversTypes['AllergenPresence'], ParentType, ContextType>;
  traces: Resolver<ResolversTypes['AllergenPresence'], ParentType, ContextType>;
};

export type PlanConnectionResolvers<ContextType = Context, ParentType extends ResolversParentTypes['PlanConnection'] = ResolversParentTypes['PlanConnection']> = {
  edges: Resolver<ReadonlyArray<ResolversTypes['PlanEdge']>, ParentType, ContextType>;
  facets: Resolver<Maybe<ReadonlyArray<ResolversTypes['PlanFacet']>>, ParentType, ContextType>;
  nodes: Resolver<ReadonlyArray<ResolversTypes['Plan']>, ParentType, ContextType>;
  pageInfo: Resolver<ResolversTypes['PageInfo'], ParentType, ContextType>;
  totalCount: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  totalCountIsExact: Resolver<Maybe<ResolversTypes['Boolean']>, ParentType, ContextType>;
};

export type PlanCostResolvers<ContextType = Context, ParentType extends ResolversParentTypes['PlanCost'] = ResolversParentTypes['PlanCost']> = {
  date: Resolver<ResolversTypes['Date'], ParentType, ContextType>;
  perServing: Resolver<ResolversTypes['Money'], ParentType, ContextType>;
};

export type PlanDifferenceResolvers<ContextType = Context, ParentType extends ResolversParentTypes['PlanDifference'] = ResolversParentTypes['PlanDifference']> = {
  after: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  before: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  kind: Resolver<ResolversTypes['PlanDifferenceKind'], ParentType, ContextType>;
  path: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
};

export type PlanEdgeResolvers<ContextType = Context, ParentType extends ResolversParentTypes['PlanEdge'] = ResolversParentTypes['PlanEdge']> = {
  cursor: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  facts: Resolver<Maybe<ResolversTypes['PlanFacts']>, ParentType, ContextType>;
  node: Resolver<ResolversTypes['Plan'], ParentType, ContextType>;
};

export type PlanFacetResolvers<ContextType = Context, ParentType extends ResolversParentTypes['PlanFacet'] = ResolversParentTypes['PlanFacet']> = {
  isExact: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  kind: Resolver<ResolversTypes['PlanFacetKind'], ParentType, ContextType>;
  values: Resolver<ReadonlyArray<ResolversTypes['PlanFacetValue']>, ParentType, ContextType>;
};

export type PlanFacetValueResolvers<ContextType = Context, ParentType extends ResolversParentTypes['PlanFacetValue'] = ResolversParentTypes['PlanFacetValue']> = {
  count: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  value: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type PlanFactsResolvers<ContextType = Context, ParentType extends ResolversParentTypes['PlanFacts'] = ResolversParentTypes['PlanFacts']> = {
  allergens: Resolver<ReadonlyArray<ResolversTypes['PlanAllergen']>, ParentType, ContextType>;
  costs: Resolver<ReadonlyArray<ResolversTypes['PlanCost']>, ParentType, ContextType>;
  days: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  diets: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  foodsAtHand: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  foodsToBuy: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  handsOnMinutes: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  nutrients: Resolver<ReadonlyArray<ResolversTypes['PlanNutrient']>, ParentType, ContextType>;
  servings: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  sessionMinutes: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  workedOutAt: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
};

export type PlanNutrientResolvers<ContextType = Context, ParentType extends ResolversParentTypes['PlanNutrient'] = ResolversParentTypes['PlanNutrient']> = {
  max: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  min: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  nutrient: Resolver<ResolversTypes['Nutrient'], ParentType, ContextType>;
};

export type PlanRequestsResolvers<ContextType = Context, ParentType extends ResolversParentTypes['PlanRequests'] = ResolversParentTypes['PlanRequests']> = {
  day: Resolver<ResolversTypes['Date'], ParentType, ContextType>;
  requests: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  slug: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type PlanRequestsConnectionResolvers<ContextType = Context, ParentType extends ResolversParentTypes['PlanRequestsConnection'] = ResolversParentTypes['PlanRequestsConnection']> = {
  edges: Resolver<ReadonlyArray<ResolversTypes['PlanRequestsEdge']>, ParentType, ContextType>;
  pageInfo: Resolver<ResolversTypes['PageInfo'], ParentType, ContextType>;
};

export type PlanRequestsEdgeResolvers<ContextType = Context, ParentType extends ResolversParentTypes['PlanRequestsEdge'] = ResolversParentTypes['PlanRequestsEdge']> = {
  cursor: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  node: Resolver<ResolversTypes['PlanRequests'], ParentType, ContextType>;
};

export type PlanTextsResolvers<ContextType = Context, ParentType extends ResolversParentTypes['PlanTexts'] = ResolversParentTypes['PlanTexts']> = {
  language: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  summary: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  summaryLanguage: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  title: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type PrepSessionResolvers<ContextType = Context, ParentType extends ResolversParentTypes['PrepSession'] = ResolversParentTypes['PrepSession']> = {
  assumedAppliances: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  clearingUpMinutes: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  components: Resolver<ReadonlyArray<ResolversTypes['SessionComponent']>, ParentType, ContextType>;
  cooksForADay: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  criticalPath: Resolver<ReadonlyArray<ResolversTypes['CriticalTask']>, ParentType, ContextType>;
  day: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  eveningBefore: Resolver<ReadonlyArray<ResolversTypes['SessionTask']>, ParentType, ContextType>;
  gap: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  handsFreeMinute: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  handsOnMinutes: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  lateMeals: Resolver<ReadonlyArray<ResolversTypes['LateMeal']>, ParentType, ContextType>;
  longerThanPromised: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  lowerBoundMinutes: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  moreThanADay: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  optimal: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  order: Resolver<ReadonlyArray<ResolversTypes['TaskOrder']>, ParentType, ContextType>;
  tasks: Resolver<ReadonlyArray<ResolversTypes['SessionTask']>, ParentType, ContextType>;
  totalMinutes: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
};

export type PreviewLinkResolvers<ContextType = Context, ParentType extends ResolversParentTypes['PreviewLink'] = ResolversParentTypes['PreviewLink']> = {
  createdAt: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  expiresAt: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  id: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  publisher: Resolver<ResolversTypes['Publisher'], ParentType, ContextType>;
  revokedAt: Resolver<Maybe<ResolversTypes['DateTime']>, ParentType, ContextType>;
  slug: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type PreviewLinkConnectionResolvers<ContextType = Context, ParentType extends ResolversParentTypes['PreviewLinkConnection'] = ResolversParentTypes['PreviewLinkConnection']> = {
  edges: Resolver<ReadonlyArray<ResolversTypes['PreviewLinkEdge']>, ParentType, ContextType>;
  pageInfo: Resolver<ResolversTypes['PageInfo'], ParentType, ContextType>;
};

export type PreviewLinkEdgeResolvers<ContextType = Context, ParentType extends ResolversParentTypes['PreviewLinkEdge'] = ResolversParentTypes['PreviewLinkEdge']> = {
  cursor: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  node: Resolver<ResolversTypes['PreviewLink'], ParentType, ContextType>;
};

export type ProblemResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Problem'] = ResolversParentTypes['Problem']> = {
  code: Resolver<ResolversTypes['ProblemCode'], ParentType, ContextType>;
  column: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  file: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  line: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  message: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  parameters: Resolver<ReadonlyArray<ResolversTypes['MessageParameter']>, ParentType, ContextType>;
  path: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  text: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  title: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  where: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type PublishPlanPayloadResolvers<ContextType = Context, ParentType extends ResolversParentTypes['PublishPlanPayload'] = ResolversParentTypes['PublishPlanPayload']> = {
  created: Resolver<Maybe<ResolversTypes['Boolean']>, ParentType, ContextType>;
  plan: Resolver<Maybe<ResolversTypes['Plan']>, ParentType, ContextType>;
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
};

export type PublisherResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Publisher'] = ResolversParentTypes['Publisher']> = {
  currency: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  description: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  id: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  image: Resolver<Maybe<ResolversTypes['Image']>, ParentType, ContextType>;
  languages: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  name: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  plans: Resolver<ResolversTypes['PlanConnection'], ParentType, ContextType, Partial<PublisherPlansArgs>>;
  region: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  slug: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  website: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type PublisherConnectionResolvers<ContextType = Context, ParentType extends ResolversParentTypes['PublisherConnection'] = ResolversParentTypes['PublisherConnection']> = {
  edges: Resolver<ReadonlyArray<ResolversTypes['PublisherEdge']>, ParentType, ContextType>;
  pageInfo: Resolver<ResolversTypes['PageInfo'], ParentType, ContextType>;
};

export type PublisherEdgeResolvers<ContextType = Context, ParentType extends ResolversParentTypes['PublisherEdge'] = ResolversParentTypes['PublisherEdge']> = {
  cursor: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  node: Resolver<ResolversTypes['Publisher'], ParentType, ContextType>;
};

export type PublisherPayloadResolvers<ContextType = Context, ParentType extends ResolversParentTypes['PublisherPayload'] = ResolversParentTypes['PublisherPayload']> = {
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
  publisher: Resolver<Maybe<ResolversTypes['Publisher']>, ParentType, ContextType>;
};

export interface QuantityScalarConfig extends GraphQLScalarTypeConfig<ResolversTypes['Quantity'], any> {
  name: 'Quantity';
}

export type QuarantinedRowResolvers<ContextType = Context, ParentType extends ResolversParentTypes['QuarantinedRow'] = ResolversParentTypes['QuarantinedRow']> = {
  line: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  offer: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  part: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
  raw: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  settledAt: Resolver<Maybe<ResolversTypes['DateTime']>, ParentType, ContextType>;
};

export type QuarantinedRowConnectionResolvers<ContextType = Context, ParentType extends ResolversParentTypes['QuarantinedRowConnection'] = ResolversParentTypes['QuarantinedRowConnection']> = {
  edges: Resolver<ReadonlyArray<ResolversTypes['QuarantinedRowEdge']>, ParentType, ContextType>;
  pageInfo: Resolver<ResolversTypes['PageInfo'], ParentType, ContextType>;
};

export type QuarantinedRowEdgeResolvers<ContextType = Context, ParentType extends ResolversParentTypes['QuarantinedRowEdge'] = ResolversParentTypes['QuarantinedRowEdge']> = {
  cursor: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  node: Resolver<ResolversTypes['QuarantinedRow'], ParentType, ContextType>;
};

export type QueryResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Query'] = ResolversParentTypes['Query']> = {
  auditTrail?: Resolver<ResolversTypes['AuditEntryConnection'], ParentType, ContextType, Partial<QueryAuditTrailArgs>>;
  catalogueFood?: Resolver<Maybe<ResolversTypes['CatalogueFood']>, ParentType, ContextType, RequireFields<QueryCatalogueFoodArgs, 'ndbNo'>>;
  catalogueFoods?: Resolver<ResolversTypes['CatalogueFoodConnection'], ParentType, ContextType, Partial<QueryCatalogueFoodsArgs>>;
  changes?: Resolver<ResolversTypes['ChangeConnection'], ParentType, ContextType, Partial<QueryChangesArgs>>;
  checkDocuments?: Resolver<ResolversTypes['DocumentsCheck'], ParentType, ContextType, RequireFields<QueryCheckDocumentsArgs, 'publisher' | 'texts'>>;
  checkDraft?: Resolver<Maybe<ResolversTypes['DraftCheck']>, ParentType, ContextType, RequireFields<QueryCheckDraftArgs, 'publisher' | 'slug'>>;
  compare?: Resolver<ReadonlyArray<ResolversTypes['PlanDifference']>, ParentType, ContextType, RequireFields<QueryCompareArgs, 'publisher' | 'slug'>>;
  component?: Resolver<Maybe<ResolversTypes['Component']>, ParentType, ContextType, RequireFields<QueryComponentArgs, 'publisher' | 'slug'>>;
  componentDraft?: Resolver<Maybe<ResolversTypes['Draft']>, ParentType, ContextType, RequireFields<QueryComponentDraftArgs, 'publisher' | 'slug'>>;
  drafts?: Resolver<ResolversTypes['DraftConnection'], ParentType, ContextType, RequireFields<QueryDraftsArgs, 'publisher'>>;
  feed?: Resolver<Maybe<ResolversTypes['Feed']>, ParentType, ContextType, RequireFields<QueryFeedArgs, 'slug'>>;
  feeds?: Resolver<ReadonlyArray<ResolversTypes['Feed']>, ParentType, ContextType, Partial<QueryFeedsArgs>>;
  food?: Resolver<Maybe<ResolversTypes['Food']>, ParentType, ContextType, RequireFields<QueryFoodArgs, 'slug'>>;
  foodDraft?: Resolver<Maybe<ResolversTypes['Draft']>, ParentType, ContextType, RequireFields<QueryFoodDraftArgs, 'publisher' | 'slug'>>;
  foods?: Resolver<ResolversTypes['FoodConnection'], ParentType, ContextType, Partial<QueryFoodsArgs>>;
  importReport?: Resolver<Maybe<ResolversTypes['ImportReport']>, ParentType, ContextType, RequireFields<QueryImportReportArgs, 'run'>>;
  importRun?: Resolver<Maybe<ResolversTypes['ImportRun']>, ParentType, ContextType, RequireFields<QueryImportRunArgs, 'id'>>;
  importRuns?: Resolver<Maybe<ResolversTypes['ImportRunConnection']>, ParentType, ContextType, RequireFields<QueryImportRunsArgs, 'feed'>>;
  morningReport?: Resolver<Maybe<ResolversTypes['MorningReport']>, ParentType, ContextType, RequireFields<QueryMorningReportArgs, 'hours'>>;
  node?: Resolver<Maybe<ResolversTypes['Node']>, ParentType, ContextType, RequireFields<QueryNodeArgs, 'id'>>;
  nodes?: Resolver<ReadonlyArray<Maybe<ResolversTypes['Node']>>, ParentType, ContextType, RequireFields<QueryNodesArgs, 'ids'>>;
  packsDraft?: Resolver<Maybe<ResolversTypes['Draft']>, ParentType, ContextType, RequireFields<QueryPacksDraftArgs, 'publisher' | 'slug'>>;
  panFactor?: Resolver<ResolversTypes['PanFactor'], ParentType, ContextType, RequireFields<QueryPanFactorArgs, 'from' | 'to'>>;
  plan?: Resolver<Maybe<ResolversTypes['Plan']>, ParentType, ContextType, RequireFields<QueryPlanArgs, 'publisher' | 'slug'>>;
  planDraft?: Resolver<Maybe<ResolversTypes['Draft']>, ParentType, ContextType, RequireFields<QueryPlanDraftArgs, 'publisher' | 'slug'>>;
  planRequests?: Resolver<ResolversTypes['PlanRequestsConnection'], ParentType, ContextType, RequireFields<QueryPlanRequestsArgs, 'publisher'>>;
  plans?: Resolver<ResolversTypes['PlanConnection'], ParentType, ContextType, Partial<QueryPlansArgs>>;
  plansBySlug?: Resolver<ReadonlyArray<Maybe<ResolversTypes['Plan']>>, ParentType, ContextType, RequireFields<QueryPlansBySlugArgs, 'plans'>>;
  preview?: Resolver<Maybe<ResolversTypes['DraftPreview']>, ParentType, ContextType, RequireFields<QueryPreviewArgs, 'publisher' | 'secret' | 'slug'>>;
  previewLinks?: Resolver<ResolversTypes['PreviewLinkConnection'], ParentType, ContextType, RequireFields<QueryPreviewLinksArgs, 'publisher'>>;
  publisher?: Resolver<Maybe<ResolversTypes['Publisher']>, ParentType, ContextType, RequireFields<QueryPublisherArgs, 'slug'>>;
  publishers?: Resolver<ResolversTypes['PublisherConnection'], ParentType, ContextType, Partial<QueryPublishersArgs>>;
  quarantinedRows?: Resolver<Maybe<ResolversTypes['QuarantinedRowConnection']>, ParentType, ContextType, RequireFields<QueryQuarantinedRowsArgs, 'run'>>;
  readLines?: Resolver<ResolversTypes['LinesRead'], ParentType, ContextType, RequireFields<QueryReadLinesArgs, 'locale' | 'texts'>>;
  ruleSets?: Resolver<ReadonlyArray<ResolversTypes['RuleSet']>, ParentType, ContextType>;
  scheduled?: Resolver<ResolversTypes['ScheduledChangeConnection'], ParentType, ContextType, RequireFields<QueryScheduledArgs, 'publisher' | 'states'>>;
  shopping?: Resolver<ResolversTypes['ShoppingPayload'], ParentType, ContextType, RequireFields<QueryShoppingArgs, 'plans'>>;
  shoppingList?: Resolver<ResolversTypes['ShoppingList'], ParentType, ContextType, RequireFields<QueryShoppingListArgs, 'plans'>>;
  tokens?: Resolver<ResolversTypes['AccessTokenConnection'], ParentType, ContextType, Partial<QueryTokensArgs>>;
  translationDraft?: Resolver<Maybe<ResolversTypes['Draft']>, ParentType, ContextType, RequireFields<QueryTranslationDraftArgs, 'publisher' | 'slug'>>;
  uploadedImages?: Resolver<ReadonlyArray<ResolversTypes['UploadedImage']>, ParentType, ContextType, RequireFields<QueryUploadedImagesArgs, 'files' | 'publisher'>>;
  viewer?: Resolver<Maybe<ResolversTypes['AccessToken']>, ParentType, ContextType>;
  vocabulary?: Resolver<ResolversTypes['Vocabulary'], ParentType, ContextType, Partial<QueryVocabularyArgs>>;
  webhookDeliveries?: Resolver<ResolversTypes['WebhookDeliveryConnection'], ParentType, ContextType, RequireFields<QueryWebhookDeliveriesArgs, 'webhook'>>;
  webhooks?: Resolver<ResolversTypes['WebhookConnection'], ParentType, ContextType, Partial<QueryWebhooksArgs>>;
};

export type RemoveFeedPayloadResolvers<ContextType = Context, ParentType extends ResolversParentTypes['RemoveFeedPayload'] = ResolversParentTypes['RemoveFeedPayload']> = {
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
  removed: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
};

export type RemoveImagePayloadResolvers<ContextType = Context, ParentType extends ResolversParentTypes['RemoveImagePayload'] = ResolversParentTypes['RemoveImagePayload']> = {
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
  removed: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
};

export type RevokePreviewLinkPayloadResolvers<ContextType = Context, ParentType extends ResolversParentTypes['RevokePreviewLinkPayload'] = ResolversParentTypes['RevokePreviewLinkPayload']> = {
  link: Resolver<Maybe<ResolversTypes['PreviewLink']>, ParentType, ContextType>;
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
};

export type RevokeTokenPayloadResolvers<ContextType = Context, ParentType extends ResolversParentTypes['RevokeTokenPayload'] = ResolversParentTypes['RevokeTokenPayload']> = {
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
  token: Resolver<Maybe<ResolversTypes['AccessToken']>, ParentType, ContextType>;
};

export type RouteResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Route'] = ResolversParentTypes['Route']> = {
  kind: Resolver<ResolversTypes['RouteKind'], ParentType, ContextType>;
  lines: Resolver<ReadonlyArray<ResolversTypes['Line']>, ParentType, ContextType>;
  name: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  steps: Resolver<ReadonlyArray<ResolversTypes['Step']>, ParentType, ContextType>;
};

export type RowWarningResolvers<ContextType = Context, ParentType extends ResolversParentTypes['RowWarning'] = ResolversParentTypes['RowWarning']> = {
  line: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  part: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  problem: Resolver<ResolversTypes['Problem'], ParentType, ContextType>;
};

export type RuleScopeResolvers<ContextType = Context, ParentType extends ResolversParentTypes['RuleScope'] = ResolversParentTypes['RuleScope']> = {
  asked: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  reach: Resolver<ResolversTypes['RuleReach'], ParentType, ContextType>;
  used: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  whose: Resolver<Maybe<ResolversTypes['RegionOwner']>, ParentType, ContextType>;
};

export type RuleSetResolvers<ContextType = Context, ParentType extends ResolversParentTypes['RuleSet'] = ResolversParentTypes['RuleSet']> = {
  checksum: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  code: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  inForceFrom: Resolver<ResolversTypes['Date'], ParentType, ContextType>;
  inForceTo: Resolver<Maybe<ResolversTypes['Date']>, ParentType, ContextType>;
  loadedAt: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  title: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type RuledRegionResolvers<ContextType = Context, ParentType extends ResolversParentTypes['RuledRegion'] = ResolversParentTypes['RuledRegion']> = {
  code: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  holdsIn: Resolver<Maybe<ReadonlyArray<ResolversTypes['String']>>, ParentType, ContextType>;
  name: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  rules: Resolver<ReadonlyArray<ResolversTypes['RuleSubject']>, ParentType, ContextType>;
};

export type SaveDocumentsPayloadResolvers<ContextType = Context, ParentType extends ResolversParentTypes['SaveDocumentsPayload'] = ResolversParentTypes['SaveDocumentsPayload']> = {
  drafts: Resolver<Maybe<ReadonlyArray<ResolversTypes['SavedDraft']>>, ParentType, ContextType>;
  foods: Resolver<Maybe<ReadonlyArray<ResolversTypes['Food']>>, ParentType, ContextType>;
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
};

export type SaveDraftPayloadResolvers<ContextType = Context, ParentType extends ResolversParentTypes['SaveDraftPayload'] = ResolversParentTypes['SaveDraftPayload']> = {
  draft: Resolver<Maybe<ResolversTypes['SavedDraft']>, ParentType, ContextType>;
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
};

export type SaveFoodsPayloadResolvers<ContextType = Context, ParentType extends ResolversParentTypes['SaveFoodsPayload'] = ResolversParentTypes['SaveFoodsPayload']> = {
  changed: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  foods: Resolver<Maybe<ReadonlyArray<ResolversTypes['Food']>>, ParentType, ContextType>;
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
};

export type SavedDraftResolvers<ContextType = Context, ParentType extends ResolversParentTypes['SavedDraft'] = ResolversParentTypes['SavedDraft']> = {
  draft: Resolver<Maybe<ResolversTypes['Draft']>, ParentType, ContextType>;
  kind: Resolver<ResolversTypes['DraftKind'], ParentType, ContextType>;
  slug: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  version: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
};

export type ScaledComponentResolvers<ContextType = Context, ParentType extends ResolversParentTypes['ScaledComponent'] = ResolversParentTypes['ScaledComponent']> = {
  batches: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  component: Resolver<ResolversTypes['Component'], ParentType, ContextType>;
  leftOver: Resolver<ResolversTypes['Amount'], ParentType, ContextType>;
  lines: Resolver<ReadonlyArray<ResolversTypes['ScaledLine']>, ParentType, ContextType>;
  loads: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  made: Resolver<ResolversTypes['Amount'], ParentType, ContextType>;
  onHand: Resolver<ResolversTypes['Amount'], ParentType, ContextType>;
  route: Resolver<Maybe<ResolversTypes['Route']>, ParentType, ContextType>;
  used: Resolver<ResolversTypes['Amount'], ParentType, ContextType>;
};

export type ScaledLineResolvers<ContextType = Context, ParentType extends ResolversParentTypes['ScaledLine'] = ResolversParentTypes['ScaledLine']> = {
  amount: Resolver<Maybe<ResolversTypes['Amount']>, ParentType, ContextType>;
  component: Resolver<Maybe<ResolversTypes['Component']>, ParentType, ContextType>;
  food: Resolver<Maybe<ResolversTypes['Food']>, ParentType, ContextType>;
  line: Resolver<ResolversTypes['Line'], ParentType, ContextType>;
  part: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  partName: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  swapped: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
};

export type ScaledMealResolvers<ContextType = Context, ParentType extends ResolversParentTypes['ScaledMeal'] = ResolversParentTypes['ScaledMeal']> = {
  allergens: Resolver<ResolversTypes['AllergenStatement'], ParentType, ContextType>;
  diets: Resolver<ReadonlyArray<ResolversTypes['Diet']>, ParentType, ContextType>;
  factor: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  lines: Resolver<ReadonlyArray<ResolversTypes['ScaledLine']>, ParentType, ContextType>;
  meal: Resolver<ResolversTypes['Meal'], ParentType, ContextType>;
  nutrition: Resolver<ResolversTypes['NutritionPerServing'], ParentType, ContextType>;
};

export type ScaledPlanResolvers<ContextType = Context, ParentType extends ResolversParentTypes['ScaledPlan'] = ResolversParentTypes['ScaledPlan']> = {
  allergens: Resolver<ResolversTypes['AllergenStatement'], ParentType, ContextType>;
  cautions: Resolver<ReadonlyArray<ResolversTypes['Caution']>, ParentType, ContextType>;
  components: Resolver<ReadonlyArray<ResolversTypes['ScaledComponent']>, ParentType, ContextType>;
  diets: Resolver<ReadonlyArray<ResolversTypes['Diet']>, ParentType, ContextType>;
  introduction: Resolver<Maybe<ResolversTypes['WrittenText']>, ParentType, ContextType>;
  language: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  languages: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  meals: Resolver<ReadonlyArray<ResolversTypes['ScaledMeal']>, ParentType, ContextType>;
  notes: Resolver<Maybe<ResolversTypes['WrittenText']>, ParentType, ContextType>;
  nutrition: Resolver<ResolversTypes['NutritionPerServing'], ParentType, ContextType>;
  regions: Resolver<ReadonlyArray<ResolversTypes['OwnedRegion']>, ParentType, ContextType>;
  servings: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  session: Resolver<Maybe<ResolversTypes['PrepSession']>, ParentType, ContextType>;
  sessions: Resolver<ReadonlyArray<ResolversTypes['PrepSession']>, ParentType, ContextType>;
  shoppingList: Resolver<ResolversTypes['ShoppingList'], ParentType, ContextType>;
  storage: Resolver<ReadonlyArray<ResolversTypes['StorageGuidance']>, ParentType, ContextType>;
  summary: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  tips: Resolver<Maybe<ResolversTypes['WrittenText']>, ParentType, ContextType>;
  title: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  warnings: Resolver<ReadonlyArray<ResolversTypes['Warning']>, ParentType, ContextType>;
};

export type ScalingPayloadResolvers<ContextType = Context, ParentType extends ResolversParentTypes['ScalingPayload'] = ResolversParentTypes['ScalingPayload']> = {
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
  scaled: Resolver<Maybe<ResolversTypes['ScaledPlan']>, ParentType, ContextType>;
};

export type ScheduledChangeResolvers<ContextType = Context, ParentType extends ResolversParentTypes['ScheduledChange'] = ResolversParentTypes['ScheduledChange']> = {
  cancelledBecause: Resolver<Maybe<ResolversTypes['CancelledBecause']>, ParentType, ContextType>;
  changeNote: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  createdAt: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  dueAt: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  endedAt: Resolver<Maybe<ResolversTypes['DateTime']>, ParentType, ContextType>;
  id: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  kind: Resolver<ResolversTypes['ScheduledKind'], ParentType, ContextType>;
  localTime: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  notice: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
  publisher: Resolver<ResolversTypes['Publisher'], ParentType, ContextType>;
  reason: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  revision: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  slug: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  state: Resolver<ResolversTypes['ScheduledState'], ParentType, ContextType>;
  version: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  zone: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type ScheduledChangeConnectionResolvers<ContextType = Context, ParentType extends ResolversParentTypes['ScheduledChangeConnection'] = ResolversParentTypes['ScheduledChangeConnection']> = {
  edges: Resolver<ReadonlyArray<ResolversTypes['ScheduledChangeEdge']>, ParentType, ContextType>;
  pageInfo: Resolver<ResolversTypes['PageInfo'], ParentType, ContextType>;
};

export type ScheduledChangeEdgeResolvers<ContextType = Context, ParentType extends ResolversParentTypes['ScheduledChangeEdge'] = ResolversParentTypes['ScheduledChangeEdge']> = {
  cursor: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  node: Resolver<ResolversTypes['ScheduledChange'], ParentType, ContextType>;
};

export type ScheduledPayloadResolvers<ContextType = Context, ParentType extends ResolversParentTypes['ScheduledPayload'] = ResolversParentTypes['ScheduledPayload']> = {
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
  scheduled: Resolver<Maybe<ResolversTypes['ScheduledChange']>, ParentType, ContextType>;
};

export type ServingsRowResolvers<ContextType = Context, ParentType extends ResolversParentTypes['ServingsRow'] = ResolversParentTypes['ServingsRow']> = {
  atTill: Resolver<Maybe<ResolversTypes['Money']>, ParentType, ContextType>;
  even: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  leftOverShare: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  packWasteShare: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  perServing: Resolver<Maybe<ResolversTypes['Money']>, ParentType, ContextType>;
  servings: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
};

export type SessionComponentResolvers<ContextType = Context, ParentType extends ResolversParentTypes['SessionComponent'] = ResolversParentTypes['SessionComponent']> = {
  batches: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  component: Resolver<ResolversTypes['Component'], ParentType, ContextType>;
  loads: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
};

export type SessionTaskResolvers<ContextType = Context, ParentType extends ResolversParentTypes['SessionTask'] = ResolversParentTypes['SessionTask']> = {
  appliance: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  attention: Resolver<ResolversTypes['Attention'], ParentType, ContextType>;
  code: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  cooks: Resolver<ReadonlyArray<ResolversTypes['Int']>, ParentType, ContextType>;
  endMinute: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  endsAt: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  eveningBefore: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  firstLoad: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  kind: Resolver<ResolversTypes['SessionTaskKind'], ParentType, ContextType>;
  lanes: Resolver<ReadonlyArray<ResolversTypes['Int']>, ParentType, ContextType>;
  lastLoad: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  loads: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  of: Resolver<ResolversTypes['Keepable'], ParentType, ContextType>;
  startMinute: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  startsAt: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  temperature: Resolver<Maybe<ResolversTypes['Temperature']>, ParentType, ContextType>;
  temperatureC: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  text: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type SettleRowPayloadResolvers<ContextType = Context, ParentType extends ResolversParentTypes['SettleRowPayload'] = ResolversParentTypes['SettleRowPayload']> = {
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
  row: Resolver<Maybe<ResolversTypes['QuarantinedRow']>, ParentType, ContextType>;
  run: Resolver<Maybe<ResolversTypes['ImportRun']>, ParentType, ContextType>;
};

export type ShoppingAisleResolvers<ContextType = Context, ParentType extends ResolversParentTypes['ShoppingAisle'] = ResolversParentTypes['ShoppingAisle']> = {
  code: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  lines: Resolver<ReadonlyArray<ResolversTypes['ShoppingLine']>, ParentType, ContextType>;
  name: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  title: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type ShoppingLineResolvers<ContextType = Context, ParentType extends ResolversParentTypes['ShoppingLine'] = ResolversParentTypes['ShoppingLine']> = {
  buy: Resolver<ReadonlyArray<ResolversTypes['PackCount']>, ParentType, ContextType>;
  cost: Resolver<ResolversTypes['Cost'], ParentType, ContextType>;
  food: Resolver<ResolversTypes['Food'], ParentType, ContextType>;
  need: Resolver<Maybe<ResolversTypes['Amount']>, ParentType, ContextType>;
  onHand: Resolver<Maybe<ResolversTypes['Amount']>, ParentType, ContextType>;
  open: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  optional: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  partsOver: Resolver<ReadonlyArray<ResolversTypes['PartOver']>, ParentType, ContextType>;
  toBuy: Resolver<Maybe<ResolversTypes['Amount']>, ParentType, ContextType>;
  toTake: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  uses: Resolver<ReadonlyArray<ResolversTypes['Use']>, ParentType, ContextType>;
};

export type ShoppingListResolvers<ContextType = Context, ParentType extends ResolversParentTypes['ShoppingList'] = ResolversParentTypes['ShoppingList']> = {
  aisles: Resolver<ReadonlyArray<ResolversTypes['ShoppingAisle']>, ParentType, ContextType>;
  cost: Resolver<ResolversTypes['Cost'], ParentType, ContextType>;
  lines: Resolver<ReadonlyArray<ResolversTypes['ShoppingLine']>, ParentType, ContextType>;
  warnings: Resolver<ReadonlyArray<ResolversTypes['Warning']>, ParentType, ContextType>;
};

export type ShoppingPayloadResolvers<ContextType = Context, ParentType extends ResolversParentTypes['ShoppingPayload'] = ResolversParentTypes['ShoppingPayload']> = {
  list: Resolver<Maybe<ResolversTypes['ShoppingList']>, ParentType, ContextType>;
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
};

export type SingleIngredientResolvers<ContextType = Context, ParentType extends ResolversParentTypes['SingleIngredient'] = ResolversParentTypes['SingleIngredient']> = {
  is: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  source: Resolver<ResolversTypes['Source'], ParentType, ContextType>;
};

export type SourceResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Source'] = ResolversParentTypes['Source']> = {
  kind: Resolver<ResolversTypes['SourceKind'], ParentType, ContextType>;
  section: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  title: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type StepResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Step'] = ResolversParentTypes['Step']> = {
  after: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  appliance: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  attention: Resolver<ResolversTypes['Attention'], ParentType, ContextType>;
  chills: Resolver<Maybe<ResolversTypes['Boolean']>, ParentType, ContextType>;
  code: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  drains: Resolver<Maybe<ResolversTypes['Boolean']>, ParentType, ContextType>;
  eveningBefore: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  grows: Resolver<ResolversTypes['StepGrowth'], ParentType, ContextType>;
  heatUpMinutes: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  leaves: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  maxWait: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  minWait: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  minutes: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  temperature: Resolver<Maybe<ResolversTypes['Temperature']>, ParentType, ContextType, RequireFields<StepTemperatureArgs, 'unit'>>;
  temperatureC: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  text: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  washMinutes: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
};

export type StorageGuidanceResolvers<ContextType = Context, ParentType extends ResolversParentTypes['StorageGuidance'] = ResolversParentTypes['StorageGuidance']> = {
  advice: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  basis: Resolver<ReadonlyArray<ResolversTypes['Basis']>, ParentType, ContextType>;
  condition: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  container: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  counts: Resolver<ResolversTypes['KeepingCount'], ParentType, ContextType>;
  days: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  keepUntil: Resolver<Maybe<ResolversTypes['DateTime']>, ParentType, ContextType>;
  lastDay: Resolver<Maybe<ResolversTypes['Date']>, ParentType, ContextType>;
  limitedBy: Resolver<Maybe<ResolversTypes['Keepable']>, ParentType, ContextType>;
  place: Resolver<ResolversTypes['StoragePlace'], ParentType, ContextType>;
  purpose: Resolver<ResolversTypes['KeepingPurpose'], ParentType, ContextType>;
  scope: Resolver<Maybe<ResolversTypes['RuleScope']>, ParentType, ContextType>;
  subject: Resolver<ResolversTypes['Keepable'], ParentType, ContextType>;
  tooLateFor: Resolver<ReadonlyArray<ResolversTypes['ScaledMeal']>, ParentType, ContextType>;
  upToDays: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
};

export type SubscriptionResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Subscription'] = ResolversParentTypes['Subscription']> = {
  importProgress?: SubscriptionResolver<ResolversTypes['ImportRun'], "importProgress", ParentType, ContextType, RequireFields<SubscriptionImportProgressArgs, 'id'>>;
  planChanged?: SubscriptionResolver<ResolversTypes['ChangeEdge'], "planChanged", ParentType, ContextType, RequireFields<SubscriptionPlanChangedArgs, 'publisher' | 'slug'>>;
};

export type SwapResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Swap'] = ResolversParentTypes['Swap']> = {
  diets: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  food: Resolver<ResolversTypes['Food'], ParentType, ContextType>;
  form: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  keepsAs: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  note: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  preparation: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  ratio: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  steps: Resolver<ReadonlyArray<ResolversTypes['SwapStep']>, ParentType, ContextType>;
  yield: Resolver<Maybe<ResolversTypes['Amount']>, ParentType, ContextType>;
};

export type SwapStepResolvers<ContextType = Context, ParentType extends ResolversParentTypes['SwapStep'] = ResolversParentTypes['SwapStep']> = {
  code: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  minutes: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  text: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
};

export type TaskOrderResolvers<ContextType = Context, ParentType extends ResolversParentTypes['TaskOrder'] = ResolversParentTypes['TaskOrder']> = {
  after: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  before: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  maxWait: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  minWait: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
};

export type TemperatureResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Temperature'] = ResolversParentTypes['Temperature']> = {
  text: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  unit: Resolver<ResolversTypes['TemperatureUnit'], ParentType, ContextType>;
  value: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
};

export type TextLineResolvers<ContextType = Context, ParentType extends ResolversParentTypes['TextLine'] = ResolversParentTypes['TextLine']> = {
  column: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  file: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  line: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  mayName: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  mayTake: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  problem: Resolver<Maybe<ResolversTypes['Problem']>, ParentType, ContextType>;
  takes: Resolver<ReadonlyArray<ResolversTypes['TextLineItem']>, ParentType, ContextType>;
  written: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type TextLineItemResolvers<ContextType = Context, ParentType extends ResolversParentTypes['TextLineItem'] = ResolversParentTypes['TextLineItem']> = {
  amount: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  component: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  each: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  food: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  form: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  id: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  isReady: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  optional: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  part: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  plusMore: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  preparation: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  size: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
};

export type TokenUsageResolvers<ContextType = Context, ParentType extends ResolversParentTypes['TokenUsage'] = ResolversParentTypes['TokenUsage']> = {
  day: Resolver<ResolversTypes['Date'], ParentType, ContextType>;
  points: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  refused: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  requests: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
};

export type UnitResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Unit'] = ResolversParentTypes['Unit']> = {
  code: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  dimension: Resolver<Maybe<ResolversTypes['Dimension']>, ParentType, ContextType>;
  name: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type UploadedImageResolvers<ContextType = Context, ParentType extends ResolversParentTypes['UploadedImage'] = ResolversParentTypes['UploadedImage']> = {
  createdAt: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  file: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  fileHash: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  hash: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  height: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  original: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  width: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
};

export type UseResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Use'] = ResolversParentTypes['Use']> = {
  amount: Resolver<Maybe<ResolversTypes['Amount']>, ParentType, ContextType>;
  asWritten: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  component: Resolver<Maybe<ResolversTypes['Component']>, ParentType, ContextType>;
  meal: Resolver<Maybe<ResolversTypes['Meal']>, ParentType, ContextType>;
  optional: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  part: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  partName: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  plan: Resolver<ResolversTypes['Plan'], ParentType, ContextType>;
};

export type VocabularyResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Vocabulary'] = ResolversParentTypes['Vocabulary']> = {
  allergens: Resolver<ReadonlyArray<ResolversTypes['VocabularyAllergen']>, ParentType, ContextType>;
  currenciesWithPrices: Resolver<ReadonlyArray<ResolversTypes['NamedCode']>, ParentType, ContextType>;
  languagesOfWords: Resolver<ReadonlyArray<ResolversTypes['NamedCode']>, ParentType, ContextType>;
  lists: Resolver<ReadonlyArray<ResolversTypes['VocabularyList']>, ParentType, ContextType>;
  locale: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  problemKinds: Resolver<ReadonlyArray<ResolversTypes['VocabularyMessage']>, ParentType, ContextType>;
  regionsWithRules: Resolver<ReadonlyArray<ResolversTypes['RuledRegion']>, ParentType, ContextType>;
  warningKinds: Resolver<ReadonlyArray<ResolversTypes['VocabularyMessage']>, ParentType, ContextType>;
};

export type VocabularyAllergenResolvers<ContextType = Context, ParentType extends ResolversParentTypes['VocabularyAllergen'] = ResolversParentTypes['VocabularyAllergen']> = {
  code: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  name: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  namedBy: Resolver<ReadonlyArray<ResolversTypes['AllergenNaming']>, ParentType, ContextType>;
};

export type VocabularyCodeResolvers<ContextType = Context, ParentType extends ResolversParentTypes['VocabularyCode'] = ResolversParentTypes['VocabularyCode']> = {
  code: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  name: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  spellings: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
};

export type VocabularyListResolvers<ContextType = Context, ParentType extends ResolversParentTypes['VocabularyList'] = ResolversParentTypes['VocabularyList']> = {
  codes: Resolver<ReadonlyArray<ResolversTypes['VocabularyCode']>, ParentType, ContextType>;
  list: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type VocabularyMessageResolvers<ContextType = Context, ParentType extends ResolversParentTypes['VocabularyMessage'] = ResolversParentTypes['VocabularyMessage']> = {
  code: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  parameters: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  title: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type WarningResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Warning'] = ResolversParentTypes['Warning']> = {
  code: Resolver<ResolversTypes['WarningCode'], ParentType, ContextType>;
  message: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  parameters: Resolver<ReadonlyArray<ResolversTypes['MessageParameter']>, ParentType, ContextType>;
  path: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  text: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  title: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type WebhookResolvers<ContextType = Context, ParentType extends ResolversParentTypes['Webhook'] = ResolversParentTypes['Webhook']> = {
  createdAt: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  disabledAt: Resolver<Maybe<ResolversTypes['DateTime']>, ParentType, ContextType>;
  disabledBecause: Resolver<Maybe<ResolversTypes['WebhookStop']>, ParentType, ContextType>;
  id: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  kinds: Resolver<ReadonlyArray<ResolversTypes['ChangeKind']>, ParentType, ContextType>;
  publisher: Resolver<ResolversTypes['Publisher'], ParentType, ContextType>;
  url: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type WebhookConnectionResolvers<ContextType = Context, ParentType extends ResolversParentTypes['WebhookConnection'] = ResolversParentTypes['WebhookConnection']> = {
  edges: Resolver<ReadonlyArray<ResolversTypes['WebhookEdge']>, ParentType, ContextType>;
  pageInfo: Resolver<ResolversTypes['PageInfo'], ParentType, ContextType>;
};

export type WebhookDeliveryResolvers<ContextType = Context, ParentType extends ResolversParentTypes['WebhookDelivery'] = ResolversParentTypes['WebhookDelivery']> = {
  attempts: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  change: Resolver<Maybe<ResolversTypes['ID']>, ParentType, ContextType>;
  createdAt: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  error: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  id: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  kind: Resolver<ResolversTypes['ChangeKind'], ParentType, ContextType>;
  nextAt: Resolver<Maybe<ResolversTypes['DateTime']>, ParentType, ContextType>;
  plan: Resolver<Maybe<ResolversTypes['Plan']>, ParentType, ContextType>;
  run: Resolver<Maybe<ResolversTypes['ID']>, ParentType, ContextType>;
  scheduled: Resolver<Maybe<ResolversTypes['ID']>, ParentType, ContextType>;
  state: Resolver<ResolversTypes['DeliveryState'], ParentType, ContextType>;
  status: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  triedAt: Resolver<Maybe<ResolversTypes['DateTime']>, ParentType, ContextType>;
};

export type WebhookDeliveryConnectionResolvers<ContextType = Context, ParentType extends ResolversParentTypes['WebhookDeliveryConnection'] = ResolversParentTypes['WebhookDeliveryConnection']> = {
  edges: Resolver<ReadonlyArray<ResolversTypes['WebhookDeliveryEdge']>, ParentType, ContextType>;
  pageInfo: Resolver<ResolversTypes['PageInfo'], ParentType, ContextType>;
};

export type WebhookDeliveryEdgeResolvers<ContextType = Context, ParentType extends ResolversParentTypes['WebhookDeliveryEdge'] = ResolversParentTypes['WebhookDeliveryEdge']> = {
  cursor: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  node: Resolver<ResolversTypes['WebhookDelivery'], ParentType, ContextType>;
};

export type WebhookDeliveryPayloadResolvers<ContextType = Context, ParentType extends ResolversParentTypes['WebhookDeliveryPayload'] = ResolversParentTypes['WebhookDeliveryPayload']> = {
  delivery: Resolver<Maybe<ResolversTypes['WebhookDelivery']>, ParentType, ContextType>;
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
};

export type WebhookEdgeResolvers<ContextType = Context, ParentType extends ResolversParentTypes['WebhookEdge'] = ResolversParentTypes['WebhookEdge']> = {
  cursor: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  node: Resolver<ResolversTypes['Webhook'], ParentType, ContextType>;
};

export type WebhookPayloadResolvers<ContextType = Context, ParentType extends ResolversParentTypes['WebhookPayload'] = ResolversParentTypes['WebhookPayload']> = {
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
  webhook: Resolver<Maybe<ResolversTypes['Webhook']>, ParentType, ContextType>;
};

export type WebhookSecretPayloadResolvers<ContextType = Context, ParentType extends ResolversParentTypes['WebhookSecretPayload'] = ResolversParentTypes['WebhookSecretPayload']> = {
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
  secret: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  webhook: Resolver<Maybe<ResolversTypes['Webhook']>, ParentType, ContextType>;
};

export type WithdrawPlanPayloadResolvers<ContextType = Context, ParentType extends ResolversParentTypes['WithdrawPlanPayload'] = ResolversParentTypes['WithdrawPlanPayload']> = {
  plan: Resolver<Maybe<ResolversTypes['Plan']>, ParentType, ContextType>;
  problems: Resolver<ReadonlyArray<ResolversTypes['Problem']>, ParentType, ContextType>;
};

export type WrittenTextResolvers<ContextType = Context, ParentType extends ResolversParentTypes['WrittenText'] = ResolversParentTypes['WrittenText']> = {
  html: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  source: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  text: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type Resolvers<ContextType = Context> = {
  AccessToken: AccessTokenResolvers<ContextType>;
  AccessTokenConnection: AccessTokenConnectionResolvers<ContextType>;
  AccessTokenEdge: AccessTokenEdgeResolvers<ContextType>;
  AllergenFinding: AllergenFindingResolvers<ContextType>;
  AllergenList: AllergenListResolvers<ContextType>;
  AllergenNaming: AllergenNamingResolvers<ContextType>;
  AllergenStatement: AllergenStatementResolvers<ContextType>;
  Amount: AmountResolvers<ContextType>;
  AsIngredient: AsIngredientResolvers<ContextType>;
  AuditAuthor: AuditAuthorResolvers<ContextType>;
  AuditEntry: AuditEntryResolvers<ContextType>;
  AuditEntryConnection: AuditEntryConnectionResolvers<ContextType>;
  AuditEntryEdge: AuditEntryEdgeResolvers<ContextType>;
  Basis: BasisResolvers<ContextType>;
  BatchRule: BatchRuleResolvers<ContextType>;
  CatalogueFood: CatalogueFoodResolvers<ContextType>;
  CatalogueFoodConnection: CatalogueFoodConnectionResolvers<ContextType>;
  CatalogueFoodEdge: CatalogueFoodEdgeResolvers<ContextType>;
  Caution: CautionResolvers<ContextType>;
  Change: ChangeResolvers<ContextType>;
  ChangeConnection: ChangeConnectionResolvers<ContextType>;
  ChangeEdge: ChangeEdgeResolvers<ContextType>;
  ChangedPlan: ChangedPlanResolvers<ContextType>;
  Component: ComponentResolvers<ContextType>;
  Cost: CostResolvers<ContextType>;
  CreatePreviewLinkPayload: CreatePreviewLinkPayloadResolvers<ContextType>;
  CreateTokenPayload: CreateTokenPayloadResolvers<ContextType>;
  Credit: CreditResolvers<ContextType>;
  CriticalTask: CriticalTaskResolvers<ContextType>;
  Date: GraphQLScalarType;
  DateTime: GraphQLScalarType;
  DeleteWebhookPayload: DeleteWebhookPayloadResolvers<ContextType>;
  Diet: DietResolvers<ContextType>;
  DietClaim: DietClaimResolvers<ContextType>;
  DiscardDraftPayload: DiscardDraftPayloadResolvers<ContextType>;
  DiscardedDraft: DiscardedDraftResolvers<ContextType>;
  DocumentsCheck: DocumentsCheckResolvers<ContextType>;
  Draft: DraftResolvers<ContextType>;
  DraftCheck: DraftCheckResolvers<ContextType>;
  DraftConnection: DraftConnectionResolvers<ContextType>;
  DraftDocument: DraftDocumentResolvers<ContextType>;
  DraftEdge: DraftEdgeResolvers<ContextType>;
  DraftPreview: DraftPreviewResolvers<ContextType>;
  EdiblePortion: EdiblePortionResolvers<ContextType>;
  Feed: FeedResolvers<ContextType>;
  FeedArticle: FeedArticleResolvers<ContextType>;
  FeedColumn: FeedColumnResolvers<ContextType>;
  FeedLimits: FeedLimitsResolvers<ContextType>;
  FeedPayload: FeedPayloadResolvers<ContextType>;
  FeedPlace: FeedPlaceResolvers<ContextType>;
  FeedSettings: FeedSettingsResolvers<ContextType>;
  Finding: FindingResolvers<ContextType>;
  Food: FoodResolvers<ContextType>;
  FoodAllergen: FoodAllergenResolvers<ContextType>;
  FoodAsIngredient: FoodAsIngredientResolvers<ContextType>;
  FoodConnection: FoodConnectionResolvers<ContextType>;
  FoodDensity: FoodDensityResolvers<ContextType>;
  FoodDiet: FoodDietResolvers<ContextType>;
  FoodEdge: FoodEdgeResolvers<ContextType>;
  FoodMeasure: FoodMeasureResolvers<ContextType>;
  FoodName: FoodNameResolvers<ContextType>;
  FoodNutrient: FoodNutrientResolvers<ContextType>;
  FoodPart: FoodPartResolvers<ContextType>;
  Image: ImageResolvers<ContextType>;
  ImportChange: ImportChangeResolvers<ContextType>;
  ImportCounts: ImportCountsResolvers<ContextType>;
  ImportDifference: ImportDifferenceResolvers<ContextType>;
  ImportOnlyToken: ImportOnlyTokenResolvers<ContextType>;
  ImportReport: ImportReportResolvers<ContextType>;
  ImportRun: ImportRunResolvers<ContextType>;
  ImportRunConnection: ImportRunConnectionResolvers<ContextType>;
  ImportRunEdge: ImportRunEdgeResolvers<ContextType>;
  ImportRunPayload: ImportRunPayloadResolvers<ContextType>;
  Keepable: KeepableResolvers<ContextType>;
  KeepingRule: KeepingRuleResolvers<ContextType>;
  LabelFigure: LabelFigureResolvers<ContextType>;
  LabelNutrient: LabelNutrientResolvers<ContextType>;
  LabelToRead: LabelToReadResolvers<ContextType>;
  LateMeal: LateMealResolvers<ContextType>;
  Line: LineResolvers<ContextType>;
  LinesRead: LinesReadResolvers<ContextType>;
  LoadRuleSetPayload: LoadRuleSetPayloadResolvers<ContextType>;
  Meal: MealResolvers<ContextType>;
  MessageParameter: MessageParameterResolvers<ContextType>;
  Money: MoneyResolvers<ContextType>;
  MorningImport: MorningImportResolvers<ContextType>;
  MorningReport: MorningReportResolvers<ContextType>;
  Mutation: MutationResolvers<ContextType>;
  NamedCode: NamedCodeResolvers<ContextType>;
  NamingDraft: NamingDraftResolvers<ContextType>;
  Node: NodeResolvers<ContextType>;
  NotEaten: NotEatenResolvers<ContextType>;
  NutrientFigure: NutrientFigureResolvers<ContextType>;
  NutritionPerServing: NutritionPerServingResolvers<ContextType>;
  OwnedRegion: OwnedRegionResolvers<ContextType>;
  Pack: PackResolvers<ContextType>;
  PackCount: PackCountResolvers<ContextType>;
  PageInfo: PageInfoResolvers<ContextType>;
  PanFactor: PanFactorResolvers<ContextType>;
  PartOver: PartOverResolvers<ContextType>;
  Plan: PlanResolvers<ContextType>;
  PlanAllergen: PlanAllergenResolvers<ContextType>;
  PlanConnection: PlanConnectionResolvers<ContextType>;
  PlanCost: PlanCostResolvers<ContextType>;
  PlanDifference: PlanDifferenceResolvers<ContextType>;
  PlanEdge: PlanEdgeResolvers<ContextType>;
  PlanFacet: PlanFacetResolvers<ContextType>;
  PlanFacetValue: PlanFacetValueResolvers<ContextType>;
  PlanFacts: PlanFactsResolvers<ContextType>;
  PlanNutrient: PlanNutrientResolvers<ContextType>;
  PlanRequests: PlanRequestsResolvers<ContextType>;
  PlanRequestsConnection: PlanRequestsConnectionResolvers<ContextType>;
  PlanRequestsEdge: PlanRequestsEdgeResolvers<ContextType>;
  PlanTexts: PlanTextsResolvers<ContextType>;
  PrepSession: PrepSessionResolvers<ContextType>;
  PreviewLink: PreviewLinkResolvers<ContextType>;
  PreviewLinkConnection: PreviewLinkConnectionResolvers<ContextType>;
  PreviewLinkEdge: PreviewLinkEdgeResolvers<ContextType>;
  Problem: ProblemResolvers<ContextType>;
  PublishPlanPayload: PublishPlanPayloadResolvers<ContextType>;
  Publisher: PublisherResolvers<ContextType>;
  PublisherConnection: PublisherConnectionResolvers<ContextType>;
  PublisherEdge: PublisherEdgeResolvers<ContextType>;
  PublisherPayload: PublisherPayloadResolvers<ContextType>;
  Quantity: GraphQLScalarType;
  QuarantinedRow: QuarantinedRowResolvers<ContextType>;
  QuarantinedRowConnection: QuarantinedRowConnectionResolvers<ContextType>;
  QuarantinedRowEdge: QuarantinedRowEdgeResolvers<ContextType>;
  Query: QueryResolvers<ContextType>;
  RemoveFeedPayload: RemoveFeedPayloadResolvers<ContextType>;
  RemoveImagePayload: RemoveImagePayloadResolvers<ContextType>;
  RevokePreviewLinkPayload: RevokePreviewLinkPayloadResolvers<ContextType>;
  RevokeTokenPayload: RevokeTokenPayloadResolvers<ContextType>;
  Route: RouteResolvers<ContextType>;
  RowWarning: RowWarningResolvers<ContextType>;
  RuleScope: RuleScopeResolvers<ContextType>;
  RuleSet: RuleSetResolvers<ContextType>;
  RuledRegion: RuledRegionResolvers<ContextType>;
  SaveDocumentsPayload: SaveDocumentsPayloadResolvers<ContextType>;
  SaveDraftPayload: SaveDraftPayloadResolvers<ContextType>;
  SaveFoodsPayload: SaveFoodsPayloadResolvers<ContextType>;
  SavedDraft: SavedDraftResolvers<ContextType>;
  ScaledComponent: ScaledComponentResolvers<ContextType>;
  ScaledLine: ScaledLineResolvers<ContextType>;
  ScaledMeal: ScaledMealResolvers<ContextType>;
  ScaledPlan: ScaledPlanResolvers<ContextType>;
  ScalingPayload: ScalingPayloadResolvers<ContextType>;
  ScheduledChange: ScheduledChangeResolvers<ContextType>;
  ScheduledChangeConnection: ScheduledChangeConnectionResolvers<ContextType>;
  ScheduledChangeEdge: ScheduledChangeEdgeResolvers<ContextType>;
  ScheduledPayload: ScheduledPayloadResolvers<ContextType>;
  ServingsRow: ServingsRowResolvers<ContextType>;
  SessionComponent: SessionComponentResolvers<ContextType>;
  SessionTask: SessionTaskResolvers<ContextType>;
  SettleRowPayload: SettleRowPayloadResolvers<ContextType>;
  ShoppingAisle: ShoppingAisleResolvers<ContextType>;
  ShoppingLine: ShoppingLineResolvers<ContextType>;
  ShoppingList: ShoppingListResolvers<ContextType>;
  ShoppingPayload: ShoppingPayloadResolvers<ContextType>;
  SingleIngredient: SingleIngredientResolvers<ContextType>;
  Source: SourceResolvers<ContextType>;
  Step: StepResolvers<ContextType>;
  StorageGuidance: StorageGuidanceResolvers<ContextType>;
  Subscription: SubscriptionResolvers<ContextType>;
  Swap: SwapResolvers<ContextType>;
  SwapStep: SwapStepResolvers<ContextType>;
  TaskOrder: TaskOrderResolvers<ContextType>;
  Temperature: TemperatureResolvers<ContextType>;
  TextLine: TextLineResolvers<ContextType>;
  TextLineItem: TextLineItemResolvers<ContextType>;
  TokenUsage: TokenUsageResolvers<ContextType>;
  Unit: UnitResolvers<ContextType>;
  UploadedImage: UploadedImageResolvers<ContextType>;
  Use: UseResolvers<ContextType>;
  Vocabulary: VocabularyResolvers<ContextType>;
  VocabularyAllergen: VocabularyAllergenResolvers<ContextType>;
  VocabularyCode: VocabularyCodeResolvers<ContextType>;
  VocabularyList: VocabularyListResolvers<ContextType>;
  VocabularyMessage: VocabularyMessageResolvers<ContextType>;
  Warning: WarningResolvers<ContextType>;
  Webhook: WebhookResolvers<ContextType>;
  WebhookConnection: WebhookConnectionResolvers<ContextType>;
  WebhookDelivery: WebhookDeliveryResolvers<ContextType>;
  WebhookDeliveryConnection: WebhookDeliveryConnectionResolvers<ContextType>;
  WebhookDeliveryEdge: WebhookDeliveryEdgeResolvers<ContextType>;
  WebhookDeliveryPayload: WebhookDeliveryPayloadResolvers<ContextType>;
  WebhookEdge: WebhookEdgeResolvers<ContextType>;
  WebhookPayload: WebhookPayloadResolvers<ContextType>;
  WebhookSecretPayload: WebhookSecretPayloadResolvers<ContextType>;
  WithdrawPlanPayload: WithdrawPlanPayloadResolvers<ContextType>;
  WrittenText: WrittenTextResolvers<ContextType>;
};

