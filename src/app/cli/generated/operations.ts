/** Internal type. DO NOT USE DIRECTLY. */
type Exact<T extends { [key: string]: unknown }> = { [K in keyof T]: T[K] };
/** Internal type. DO NOT USE DIRECTLY. */
export type Incremental<T> = T | { [P in keyof T]?: P extends ' $fragmentName' | '__typename' ? T[P] : never };
import type { DocumentTypeDecoration } from '@graphql-typed-document-node/core';
/** Which one to cancel. */
export type CancelScheduledInput = {
  /** Its id. */
  readonly id: string;
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: string | null | undefined;
};

/** Another time for what waits. */
export type ChangeScheduledInput = {
  /** When, on the clock of `zone`: `2026-12-24T06:00`. An hour that the clocks repeat needs its offset: `2026-10-25T02:30+01:00`. */
  readonly at: string;
  /** Its id. */
  readonly id: string;
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: string | null | undefined;
  /** IANA name of the time zone, such as `Europe/Berlin`. */
  readonly zone: string;
};

/** Which draft corrects what was published. */
export type CorrectPlanInput = {
  /** What readers of the revisions before should know: what was wrong, and what is right. */
  readonly changeNote: string;
  /** The version of the plan's draft that was read. */
  readonly expectedVersion: number;
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: string | null | undefined;
  /** Slug of the publisher. */
  readonly publisher: string;
  /** Slug of the plan. */
  readonly slug: string;
};

/** A draft to show. */
export type CreatePreviewLinkInput = {
  /** The number of days that it works: 1 to 90, and no longer than the access token that makes it. Default: 7, or as long as that token. */
  readonly days?: number | null | undefined;
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: string | null | undefined;
  /** Slug of the publisher. */
  readonly publisher: string;
  /** Slug of the plan. */
  readonly slug: string;
};

/** A new publisher. */
export type CreatePublisherInput = {
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: string | null | undefined;
  /** Name shown to readers. */
  readonly name: string;
  /** Short name for addresses: lower-case letters and digits, words joined by hyphens. It can never be changed. */
  readonly slug: string;
};

/** A new access token. */
export type CreateTokenInput = {
  /** When it expires: no later than the token that creates it, whose expiry is also the default. */
  readonly expiresAt?: string | null | undefined;
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: string | null | undefined;
  /** What it is for, to tell it from others: such as `newsletter script`. */
  readonly name: string;
  /** The points that it may use in a minute: 1,000 to 100,000,000, and never more than the service gives every token. Default: as many as that. */
  readonly pointsPerMinute?: number | null | undefined;
  /** Slug of the publisher it is for. Default: a token of the operator, which only the operator may make. */
  readonly publisher?: string | null | undefined;
  /** Its scopes, at least one. No scope includes another. */
  readonly scopes: ReadonlyArray<Scope>;
};

/** Which draft to throw away. */
export type DiscardDraftInput = {
  /** The version that was read. */
  readonly expectedVersion: number;
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: string | null | undefined;
  /** What it is a draft of. */
  readonly kind: DraftKind;
  /** Slug of the publisher. */
  readonly publisher: string;
  /** Its slug. */
  readonly slug: string;
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
  readonly name: string;
  /** The text. Several documents are separated by lines of `---`. */
  readonly text: string;
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

/** Version of a draft that its writer read. */
export type ExpectedDraftInput = {
  /** What it is a draft of. */
  readonly kind: DraftKind;
  /** Its slug. */
  readonly slug: string;
  /** Its version. */
  readonly version: number;
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

/** What an import is to do. */
export type ImportRunKind =
  /** Find out what loading it would do, and load nothing. */
  | 'DRY_RUN'
  /** Load its file. */
  | 'LOAD'
  /** Undo another import. */
  | 'UNDO';

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

/** Published rules to load. */
export type LoadRuleSetInput = {
  /** One YAML document each of the kinds `rule-set`, `keeping-classes`, `food-safety`, `cautions` and `allergens`, in any files. */
  readonly files: ReadonlyArray<RuleFileInput>;
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: string | null | undefined;
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
  readonly expectedVersion: number;
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: string | null | undefined;
  /** Slug of the publisher. */
  readonly publisher: string;
  /** Slug of the plan. */
  readonly slug: string;
};

/** A picture to remove. */
export type RemoveImageInput = {
  /** SHA-256, hex, of the picture as it is kept. It stands in its addresses. */
  readonly hash: string;
  /** Any text of your own: the same key with the same input gives the first answer again. */
  readonly idempotencyKey?: string | null | undefined;
  /** Slug of its publisher. */
  readonly publisher: string;
};

/** Which link to take back. */
export type RevokePreviewLinkInput = {
  /** Its id. */
  readonly id: string;
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: string | null | undefined;
};

/** The token to revoke. */
export type RevokeTokenInput = {
  /** Its id: the eight characters after `prepwright_`. */
  readonly id: string;
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: string | null | undefined;
};

/** A file of published rules. */
export type RuleFileInput = {
  /** Its name, to tell where a problem is. */
  readonly name: string;
  /** Its text. */
  readonly text: string;
};

/** Documents to save together. */
export type SaveDocumentsInput = {
  /** The versions of the drafts that are there already. A draft that is not named here must be new. */
  readonly expected?: ReadonlyArray<ExpectedDraftInput> | null | undefined;
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: string | null | undefined;
  /** Slug of the publisher. */
  readonly publisher: string;
  /** The texts, with at most 300 documents among them. Each may have 50,000 keys, 100,000 entries of lists and maps, and 24 levels. */
  readonly texts: ReadonlyArray<DocumentTextInput>;
};

/** A publication at a time. */
export type SchedulePublicationInput = {
  /** When, on the clock of `zone`: `2026-12-24T06:00`. An hour that the clocks repeat needs its offset: `2026-10-25T02:30+01:00`. */
  readonly at: string;
  /** A note for readers of what was published before. */
  readonly changeNote?: string | null | undefined;
  /** The version of the plan's draft that was read. */
  readonly expectedVersion: number;
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: string | null | undefined;
  /** Slug of the publisher. */
  readonly publisher: string;
  /** Slug of the plan. */
  readonly slug: string;
  /** IANA name of the time zone, such as `Europe/Berlin`. */
  readonly zone: string;
};

/** A withdrawal at a time. */
export type ScheduleWithdrawalInput = {
  /** When, on the clock of `zone`: `2026-12-24T06:00`. An hour that the clocks repeat needs its offset: `2026-10-25T02:30+01:00`. */
  readonly at: string;
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: string | null | undefined;
  /** Slug of the publisher. */
  readonly publisher: string;
  /** Why, in words for readers. */
  readonly reason: string;
  /** Slug of the plan. */
  readonly slug: string;
  /** IANA name of the time zone, such as `Europe/Berlin`. */
  readonly zone: string;
};

/** What is to be done at a time. */
export type ScheduledKind =
  /** The draft is published. */
  | 'PUBLISH'
  /** The plan is withdrawn as a whole. */
  | 'WITHDRAW';

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

/** Which plan to take back as a whole. */
export type UnpublishPlanInput = {
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: string | null | undefined;
  /** Slug of the publisher. */
  readonly publisher: string;
  /** Why, in words for readers. */
  readonly reason: string;
  /** Slug of the plan. */
  readonly slug: string;
};

/** The revision to withdraw. */
export type WithdrawPlanInput = {
  /** A key that you choose, such as a UUID. A call repeated with the same key is carried out once. Keys are kept for at least a day. */
  readonly idempotencyKey?: string | null | undefined;
  /** Slug of the publisher. */
  readonly publisher: string;
  /** Why, in words for readers. */
  readonly reason: string;
  /** Number of the revision. */
  readonly revision: number;
  /** Slug of the plan. */
  readonly slug: string;
  /** What the plan's own address leads to then. */
  readonly then?: WithdrawThen | null | undefined;
};

/** What the own address of a plan leads to once a revision of it is withdrawn. */
export type WithdrawThen =
  /** That the plan was withdrawn: all other revisions that are in force are withdrawn with it. */
  | 'NOTHING'
  /** The newest revision that is still in force; where there is none, that the plan was withdrawn. */
  | 'PREVIOUS';

export type ProblemPartsFragment = { readonly code: ProblemCode, readonly message: string, readonly path: ReadonlyArray<string>, readonly file: string | null, readonly line: number | null, readonly column: number | null };

export type ViewerQueryVariables = Exact<{ [key: string]: never; }>;


export type ViewerQuery = { readonly viewer: { readonly id: string, readonly scopes: ReadonlyArray<Scope>, readonly publisher: { readonly slug: string } | null } | null };

export type CheckDocumentsQueryVariables = Exact<{
  publisher: string;
  texts: ReadonlyArray<DocumentTextInput> | DocumentTextInput;
  region?: string | null | undefined;
  explain?: boolean;
}>;


export type CheckDocumentsQuery = { readonly checkDocuments: { readonly problems: ReadonlyArray<{ readonly code: ProblemCode, readonly message: string, readonly path: ReadonlyArray<string>, readonly file: string | null, readonly line: number | null, readonly column: number | null }>, readonly findings: ReadonlyArray<{ readonly code: FindingCode, readonly severity: FindingSeverity, readonly message: string, readonly about: string | null, readonly caution: string | null, readonly path: ReadonlyArray<string>, readonly file: string | null, readonly line: number | null, readonly column: number | null }>, readonly lines?: ReadonlyArray<{ readonly written: string, readonly file: string | null, readonly line: number | null, readonly column: number | null, readonly mayName: ReadonlyArray<string>, readonly mayTake: ReadonlyArray<string>, readonly problem: { readonly message: string } | null, readonly takes: ReadonlyArray<{ readonly id: string | null, readonly food: string | null, readonly component: string | null, readonly part: string | null, readonly amount: string | null, readonly each: string | null, readonly isReady: boolean, readonly form: string | null, readonly preparation: string | null, readonly size: string | null, readonly plusMore: boolean, readonly optional: boolean }> }> } };

export type DraftVersionsQueryVariables = Exact<{
  publisher: string;
  after?: string | null | undefined;
}>;


export type DraftVersionsQuery = { readonly drafts: { readonly edges: ReadonlyArray<{ readonly node: { readonly kind: DraftKind, readonly slug: string, readonly title: string, readonly version: number, readonly updatedAt: string, readonly updatedBy: string | null, readonly document: { readonly hash: string } } }>, readonly pageInfo: { readonly hasNextPage: boolean, readonly endCursor: string | null } } };

export type PlanDraftTextQueryVariables = Exact<{
  publisher: string;
  slug: string;
}>;


export type PlanDraftTextQuery = { readonly draft: { readonly kind: DraftKind, readonly slug: string, readonly version: number, readonly publisher: { readonly region: string | null, readonly currency: string | null, readonly languages: ReadonlyArray<string>, readonly description: string | null, readonly website: string | null, readonly image: { readonly file: string, readonly alt: string, readonly credit: string | null, readonly licence: string | null } | null }, readonly document: { readonly text: string, readonly format: DocumentFormat } } | null };

export type ComponentDraftTextQueryVariables = Exact<{
  publisher: string;
  slug: string;
}>;


export type ComponentDraftTextQuery = { readonly draft: { readonly kind: DraftKind, readonly slug: string, readonly version: number, readonly document: { readonly text: string, readonly format: DocumentFormat } } | null };

export type FoodDraftTextQueryVariables = Exact<{
  publisher: string;
  slug: string;
}>;


export type FoodDraftTextQuery = { readonly draft: { readonly kind: DraftKind, readonly slug: string, readonly version: number, readonly document: { readonly text: string, readonly format: DocumentFormat } } | null };

export type TranslationDraftTextQueryVariables = Exact<{
  publisher: string;
  slug: string;
}>;


export type TranslationDraftTextQuery = { readonly draft: { readonly kind: DraftKind, readonly slug: string, readonly version: number, readonly document: { readonly text: string, readonly format: DocumentFormat } } | null };

export type PacksDraftTextQueryVariables = Exact<{
  publisher: string;
  slug: string;
}>;


export type PacksDraftTextQuery = { readonly draft: { readonly kind: DraftKind, readonly slug: string, readonly version: number, readonly document: { readonly text: string, readonly format: DocumentFormat } } | null };

export type SaveDocumentsMutationVariables = Exact<{
  input: SaveDocumentsInput;
}>;


export type SaveDocumentsMutation = { readonly saveDocuments: { readonly drafts: ReadonlyArray<{ readonly kind: DraftKind, readonly slug: string, readonly version: number }> | null, readonly foods: ReadonlyArray<{ readonly slug: string }> | null, readonly problems: ReadonlyArray<{ readonly code: ProblemCode, readonly message: string, readonly path: ReadonlyArray<string>, readonly file: string | null, readonly line: number | null, readonly column: number | null }> } };

export type PublishPlanMutationVariables = Exact<{
  input: PublishPlanInput;
}>;


export type PublishPlanMutation = { readonly publishPlan: { readonly created: boolean | null, readonly plan: { readonly slug: string, readonly title: string, readonly revision: number } | null, readonly problems: ReadonlyArray<{ readonly code: ProblemCode, readonly message: string, readonly path: ReadonlyArray<string>, readonly file: string | null, readonly line: number | null, readonly column: number | null }> } };

export type CorrectPlanMutationVariables = Exact<{
  input: CorrectPlanInput;
}>;


export type CorrectPlanMutation = { readonly correctPlan: { readonly created: boolean | null, readonly plan: { readonly slug: string, readonly title: string, readonly revision: number } | null, readonly problems: ReadonlyArray<{ readonly code: ProblemCode, readonly message: string, readonly path: ReadonlyArray<string>, readonly file: string | null, readonly line: number | null, readonly column: number | null }> } };

export type WithdrawPlanMutationVariables = Exact<{
  input: WithdrawPlanInput;
}>;


export type WithdrawPlanMutation = { readonly withdrawPlan: { readonly plan: { readonly slug: string, readonly revision: number, readonly newest: { readonly revision: number } | null } | null, readonly problems: ReadonlyArray<{ readonly code: ProblemCode, readonly message: string, readonly path: ReadonlyArray<string>, readonly file: string | null, readonly line: number | null, readonly column: number | null }> } };

export type DiscardDraftMutationVariables = Exact<{
  input: DiscardDraftInput;
}>;


export type DiscardDraftMutation = { readonly discardDraft: { readonly discarded: { readonly kind: DraftKind, readonly slug: string, readonly version: number, readonly namedBy: ReadonlyArray<{ readonly kind: DraftKind, readonly slug: string }> } | null, readonly problems: ReadonlyArray<{ readonly code: ProblemCode, readonly message: string, readonly path: ReadonlyArray<string>, readonly file: string | null, readonly line: number | null, readonly column: number | null }> } };

export type CreatePublisherMutationVariables = Exact<{
  input: CreatePublisherInput;
}>;


export type CreatePublisherMutation = { readonly createPublisher: { readonly publisher: { readonly slug: string, readonly name: string } | null, readonly problems: ReadonlyArray<{ readonly code: ProblemCode, readonly message: string, readonly path: ReadonlyArray<string>, readonly file: string | null, readonly line: number | null, readonly column: number | null }> } };

export type TokenPartsFragment = { readonly id: string, readonly name: string, readonly scopes: ReadonlyArray<Scope>, readonly createdAt: string, readonly expiresAt: string | null, readonly lastUsedAt: string | null, readonly revokedAt: string | null, readonly pointsPerMinute: number | null, readonly publisher: { readonly slug: string } | null };

export type CreateTokenMutationVariables = Exact<{
  input: CreateTokenInput;
}>;


export type CreateTokenMutation = { readonly createToken: { readonly secret: string | null, readonly token: { readonly id: string, readonly name: string, readonly scopes: ReadonlyArray<Scope>, readonly createdAt: string, readonly expiresAt: string | null, readonly lastUsedAt: string | null, readonly revokedAt: string | null, readonly pointsPerMinute: number | null, readonly publisher: { readonly slug: string } | null } | null, readonly problems: ReadonlyArray<{ readonly code: ProblemCode, readonly message: string, readonly path: ReadonlyArray<string>, readonly file: string | null, readonly line: number | null, readonly column: number | null }> } };

export type RevokeTokenMutationVariables = Exact<{
  input: RevokeTokenInput;
}>;


export type RevokeTokenMutation = { readonly revokeToken: { readonly token: { readonly id: string, readonly name: string, readonly scopes: ReadonlyArray<Scope>, readonly createdAt: string, readonly expiresAt: string | null, readonly lastUsedAt: string | null, readonly revokedAt: string | null, readonly pointsPerMinute: number | null, readonly publisher: { readonly slug: string } | null } | null, readonly problems: ReadonlyArray<{ readonly code: ProblemCode, readonly message: string, readonly path: ReadonlyArray<string>, readonly file: string | null, readonly line: number | null, readonly column: number | null }> } };

export type TokensQueryVariables = Exact<{
  publisher?: string | null | undefined;
  after?: string | null | undefined;
}>;


export type TokensQuery = { readonly tokens: { readonly edges: ReadonlyArray<{ readonly node: { readonly id: string, readonly name: string, readonly scopes: ReadonlyArray<Scope>, readonly createdAt: string, readonly expiresAt: string | null, readonly lastUsedAt: string | null, readonly revokedAt: string | null, readonly pointsPerMinute: number | null, readonly publisher: { readonly slug: string } | null } }>, readonly pageInfo: { readonly hasNextPage: boolean, readonly endCursor: string | null } } };

export type LoadRuleSetMutationVariables = Exact<{
  input: LoadRuleSetInput;
}>;


export type LoadRuleSetMutation = { readonly loadRuleSet: { readonly ruleSet: { readonly code: string, readonly title: string, readonly inForceFrom: string } | null, readonly problems: ReadonlyArray<{ readonly code: ProblemCode, readonly message: string, readonly path: ReadonlyArray<string>, readonly file: string | null, readonly line: number | null, readonly column: number | null }> } };

export type ImportRunQueryVariables = Exact<{
  run: string;
}>;


export type ImportRunQuery = { readonly importRun: { readonly id: string, readonly kind: ImportRunKind, readonly state: ImportRunState, readonly feed: { readonly kind: FeedKind }, readonly counts: { readonly read: number, readonly created: number, readonly changed: number, readonly unchanged: number, readonly quarantined: number, readonly repeated: number }, readonly problems: ReadonlyArray<{ readonly code: ProblemCode, readonly message: string, readonly path: ReadonlyArray<string>, readonly file: string | null, readonly line: number | null, readonly column: number | null }> } | null };

export type QuarantinedRowsQueryVariables = Exact<{
  run: string;
}>;


export type QuarantinedRowsQuery = { readonly quarantinedRows: { readonly edges: ReadonlyArray<{ readonly node: { readonly line: number, readonly problems: ReadonlyArray<{ readonly code: ProblemCode, readonly message: string, readonly path: ReadonlyArray<string>, readonly file: string | null, readonly line: number | null, readonly column: number | null }> } }> } | null };

export type RevisionsInForceQueryVariables = Exact<{
  publisher: string;
  slug: string;
  revision: number;
}>;


export type RevisionsInForceQuery = { readonly plan: { readonly title: string, readonly withdrawnAt: string | null, readonly revisions: { readonly edges: ReadonlyArray<{ readonly node: { readonly revision: number, readonly withdrawnAt: string | null } }> } } | null };

export type UnpublishPlanMutationVariables = Exact<{
  input: UnpublishPlanInput;
}>;


export type UnpublishPlanMutation = { readonly unpublishPlan: { readonly plan: { readonly slug: string, readonly revision: number } | null, readonly problems: ReadonlyArray<{ readonly code: ProblemCode, readonly message: string, readonly path: ReadonlyArray<string>, readonly file: string | null, readonly line: number | null, readonly column: number | null }> } };

export type UploadedImagesQueryVariables = Exact<{
  publisher: string;
  files: ReadonlyArray<string> | string;
}>;


export type UploadedImagesQuery = { readonly uploadedImages: ReadonlyArray<{ readonly file: string, readonly fileHash: string, readonly hash: string, readonly original: string }> };

export type RemoveImageMutationVariables = Exact<{
  input: RemoveImageInput;
}>;


export type RemoveImageMutation = { readonly removeImage: { readonly removed: string | null, readonly problems: ReadonlyArray<{ readonly code: ProblemCode, readonly message: string, readonly path: ReadonlyArray<string>, readonly file: string | null, readonly line: number | null, readonly column: number | null }> } };

export type PreviewLinkPartsFragment = { readonly id: string, readonly slug: string, readonly createdAt: string, readonly expiresAt: string, readonly revokedAt: string | null };

export type CreatePreviewLinkMutationVariables = Exact<{
  input: CreatePreviewLinkInput;
}>;


export type CreatePreviewLinkMutation = { readonly createPreviewLink: { readonly path: string | null, readonly link: { readonly id: string, readonly slug: string, readonly createdAt: string, readonly expiresAt: string, readonly revokedAt: string | null } | null, readonly problems: ReadonlyArray<{ readonly code: ProblemCode, readonly message: string, readonly path: ReadonlyArray<string>, readonly file: string | null, readonly line: number | null, readonly column: number | null }> } };

export type RevokePreviewLinkMutationVariables = Exact<{
  input: RevokePreviewLinkInput;
}>;


export type RevokePreviewLinkMutation = { readonly revokePreviewLink: { readonly link: { readonly id: string, readonly slug: string, readonly createdAt: string, readonly expiresAt: string, readonly revokedAt: string | null } | null, readonly problems: ReadonlyArray<{ readonly code: ProblemCode, readonly message: string, readonly path: ReadonlyArray<string>, readonly file: string | null, readonly line: number | null, readonly column: number | null }> } };

export type PreviewLinksQueryVariables = Exact<{
  publisher: string;
  after?: string | null | undefined;
}>;


export type PreviewLinksQuery = { readonly previewLinks: { readonly edges: ReadonlyArray<{ readonly node: { readonly id: string, readonly slug: string, readonly createdAt: string, readonly expiresAt: string, readonly revokedAt: string | null } }>, readonly pageInfo: { readonly hasNextPage: boolean, readonly endCursor: string | null } } };

export type ScheduledPartsFragment = { readonly id: string, readonly slug: string, readonly kind: ScheduledKind, readonly state: ScheduledState, readonly dueAt: string, readonly localTime: string, readonly zone: string, readonly version: number | null, readonly revision: number | null, readonly notice: string, readonly publisher: { readonly slug: string }, readonly problems: ReadonlyArray<{ readonly code: ProblemCode, readonly message: string }> };

export type SchedulePublicationMutationVariables = Exact<{
  input: SchedulePublicationInput;
}>;


export type SchedulePublicationMutation = { readonly schedulePublication: { readonly scheduled: { readonly id: string, readonly slug: string, readonly kind: ScheduledKind, readonly state: ScheduledState, readonly dueAt: string, readonly localTime: string, readonly zone: string, readonly version: number | null, readonly revision: number | null, readonly notice: string, readonly publisher: { readonly slug: string }, readonly problems: ReadonlyArray<{ readonly code: ProblemCode, readonly message: string }> } | null, readonly problems: ReadonlyArray<{ readonly code: ProblemCode, readonly message: string, readonly path: ReadonlyArray<string>, readonly file: string | null, readonly line: number | null, readonly column: number | null }> } };

export type ScheduleWithdrawalMutationVariables = Exact<{
  input: ScheduleWithdrawalInput;
}>;


export type ScheduleWithdrawalMutation = { readonly scheduleWithdrawal: { readonly scheduled: { readonly id: string, readonly slug: string, readonly kind: ScheduledKind, readonly state: ScheduledState, readonly dueAt: string, readonly localTime: string, readonly zone: string, readonly version: number | null, readonly revision: number | null, readonly notice: string, readonly publisher: { readonly slug: string }, readonly problems: ReadonlyArray<{ readonly code: ProblemCode, readonly message: string }> } | null, readonly problems: ReadonlyArray<{ readonly code: ProblemCode, readonly message: string, readonly path: ReadonlyArray<string>, readonly file: string | null, readonly line: number | null, readonly column: number | null }> } };

export type ChangeScheduledMutationVariables = Exact<{
  input: ChangeScheduledInput;
}>;


export type ChangeScheduledMutation = { readonly changeScheduled: { readonly scheduled: { readonly id: string, readonly slug: string, readonly kind: ScheduledKind, readonly state: ScheduledState, readonly dueAt: string, readonly localTime: string, readonly zone: string, readonly version: number | null, readonly revision: number | null, readonly notice: string, readonly publisher: { readonly slug: string }, readonly problems: ReadonlyArray<{ readonly code: ProblemCode, readonly message: string }> } | null, readonly problems: ReadonlyArray<{ readonly code: ProblemCode, readonly message: string, readonly path: ReadonlyArray<string>, readonly file: string | null, readonly line: number | null, readonly column: number | null }> } };

export type CancelScheduledMutationVariables = Exact<{
  input: CancelScheduledInput;
}>;


export type CancelScheduledMutation = { readonly cancelScheduled: { readonly scheduled: { readonly id: string, readonly slug: string, readonly kind: ScheduledKind, readonly state: ScheduledState, readonly dueAt: string, readonly localTime: string, readonly zone: string, readonly version: number | null, readonly revision: number | null, readonly notice: string, readonly publisher: { readonly slug: string }, readonly problems: ReadonlyArray<{ readonly code: ProblemCode, readonly message: string }> } | null, readonly problems: ReadonlyArray<{ readonly code: ProblemCode, readonly message: string, readonly path: ReadonlyArray<string>, readonly file: string | null, readonly line: number | null, readonly column: number | null }> } };

export type ScheduledQueryVariables = Exact<{
  publisher: string;
  states?: ReadonlyArray<ScheduledState> | ScheduledState | null | undefined;
  after?: string | null | undefined;
}>;


export type ScheduledQuery = { readonly scheduled: { readonly edges: ReadonlyArray<{ readonly node: { readonly id: string, readonly slug: string, readonly kind: ScheduledKind, readonly state: ScheduledState, readonly dueAt: string, readonly localTime: string, readonly zone: string, readonly version: number | null, readonly revision: number | null, readonly notice: string, readonly publisher: { readonly slug: string }, readonly problems: ReadonlyArray<{ readonly code: ProblemCode, readonly message: string }> } }>, readonly pageInfo: { readonly hasNextPage: boolean, readonly endCursor: string | null } } };

export class TypedDocumentString<TResult, TVariables>
  extends String
  implements DocumentTypeDecoration<TResult, TVariables>
{
  __apiType?: NonNullable<DocumentTypeDecoration<TResult, TVariables>['__apiType']>;
  private value: string;
  public __meta__?: Record<string, any> | undefined;

  constructor(value: string, __meta__?: Record<string, any> | undefined) {
    super(value);
    this.value = value;
    this.__meta__ = __meta__;
  }

  override toString(): string & DocumentTypeDecoration<TResult, TVariables> {
    return this.value;
  }
}
export const ProblemPartsFragmentDoc = new TypedDocumentString(`
    fragment ProblemParts on Problem {
  code
  message
  path
  file
  line
  column
}
    `, {"fragmentName":"ProblemParts"}) as unknown as TypedDocumentString<ProblemPartsFragment, unknown>;
export const TokenPartsFragmentDoc = new TypedDocumentString(`
    fragment TokenParts on AccessToken {
  id
  name
  publisher {
    slug
  }
  scopes
  createdAt
  expiresAt
  lastUsedAt
  revokedAt
  pointsPerMinute
}
    `, {"fragmentName":"TokenParts"}) as unknown as TypedDocumentString<TokenPartsFragment, unknown>;
export const PreviewLinkPartsFragmentDoc = new TypedDocumentString(`
    fragment PreviewLinkParts on PreviewLink {
  id
  slug
  createdAt
  expiresAt
  revokedAt
}
    `, {"fragmentName":"PreviewLinkParts"}) as unknown as TypedDocumentString<PreviewLinkPartsFragment, unknown>;
export const ScheduledPartsFragmentDoc = new TypedDocumentString(`
    fragment ScheduledParts on ScheduledChange {
  id
  publisher {
    slug
  }
  slug
  kind
  state
  dueAt
  localTime
  zone
  version
  revision
  notice
  problems {
    code
    message
  }
}
    `, {"fragmentName":"ScheduledParts"}) as unknown as TypedDocumentString<ScheduledPartsFragment, unknown>;
export const ViewerDocument = new TypedDocumentString(`
    query Viewer {
  viewer {
    id
    publisher {
      slug
    }
    scopes
  }
}
    `) as unknown as TypedDocumentString<ViewerQuery, ViewerQueryVariables>;
export const CheckDocumentsDocument = new TypedDocumentString(`
    query CheckDocuments($publisher: String!, $texts: [DocumentTextInput!]!, $region: String, $explain: Boolean! = false) {
  checkDocuments(publisher: $publisher, texts: $texts, region: $region) {
    problems {
      ...ProblemParts
    }
    findings {
      code
      severity
      message
      about
      caution
      path
      file
      line
      column
    }
    lines @include(if: $explain) {
      written
      file
      line
      column
      mayName
      mayTake
      problem {
        message
      }
      takes {
        id
        food
        component
        part
        amount
        each
        isReady
        form
        preparation
        size
        plusMore
        optional
      }
    }
  }
}
    fragment ProblemParts on Problem {
  code
  message
  path
  file
  line
  column
}`) as unknown as TypedDocumentString<CheckDocumentsQuery, CheckDocumentsQueryVariables>;
export const DraftVersionsDocument = new TypedDocumentString(`
    query DraftVersions($publisher: String!, $after: String) {
  drafts(publisher: $publisher, first: 100, after: $after) {
    edges {
      node {
        kind
        slug
        title
        version
        updatedAt
        updatedBy
        document {
          hash
        }
      }
    }
    pageInfo {
      hasNextPage
      endCursor
    }
  }
}
    `) as unknown as TypedDocumentString<DraftVersionsQuery, DraftVersionsQueryVariables>;
export const PlanDraftTextDocument = new TypedDocumentString(`
    query PlanDraftText($publisher: String!, $slug: String!) {
  draft: planDraft(publisher: $publisher, slug: $slug) {
    kind
    slug
    version
    publisher {
      region
      currency
      languages
      description
      website
      image {
        file
        alt
        credit
        licence
      }
    }
    document {
      text
      format
    }
  }
}
    `) as unknown as TypedDocumentString<PlanDraftTextQuery, PlanDraftTextQueryVariables>;
export const ComponentDraftTextDocument = new TypedDocumentString(`
    query ComponentDraftText($publisher: String!, $slug: String!) {
  draft: componentDraft(publisher: $publisher, slug: $slug) {
    kind
    slug
    version
    document {
      text
      format
    }
  }
}
    `) as unknown as TypedDocumentString<ComponentDraftTextQuery, ComponentDraftTextQueryVariables>;
export const FoodDraftTextDocument = new TypedDocumentString(`
    query FoodDraftText($publisher: String!, $slug: String!) {
  draft: foodDraft(publisher: $publisher, slug: $slug) {
    kind
    slug
    version
    document {
      text
      format
    }
  }
}
    `) as unknown as TypedDocumentString<FoodDraftTextQuery, FoodDraftTextQueryVariables>;
export const TranslationDraftTextDocument = new TypedDocumentString(`
    query TranslationDraftText($publisher: String!, $slug: String!) {
  draft: translationDraft(publisher: $publisher, slug: $slug) {
    kind
    slug
    version
    document {
      text
      format
    }
  }
}
    `) as unknown as TypedDocumentString<TranslationDraftTextQuery, TranslationDraftTextQueryVariables>;
export const PacksDraftTextDocument = new TypedDocumentString(`
    query PacksDraftText($publisher: String!, $slug: String!) {
  draft: packsDraft(publisher: $publisher, slug: $slug) {
    kind
    slug
    version
    document {
      text
      format
    }
  }
}
    `) as unknown as TypedDocumentString<PacksDraftTextQuery, PacksDraftTextQueryVariables>;
export const SaveDocumentsDocument = new TypedDocumentString(`
    mutation SaveDocuments($input: SaveDocumentsInput!) {
  saveDocuments(input: $input) {
    drafts {
      kind
      slug
      version
    }
    foods {
      slug
    }
    problems {
      ...ProblemParts
    }
  }
}
    fragment ProblemParts on Problem {
  code
  message
  path
  file
  line
  column
}`) as unknown as TypedDocumentString<SaveDocumentsMutation, SaveDocumentsMutationVariables>;
export const PublishPlanDocument = new TypedDocumentString(`
    mutation PublishPlan($input: PublishPlanInput!) {
  publishPlan(input: $input) {
    plan {
      slug
      title
      revision
    }
    created
    problems {
      ...ProblemParts
    }
  }
}
    fragment ProblemParts on Problem {
  code
  message
  path
  file
  line
  column
}`) as unknown as TypedDocumentString<PublishPlanMutation, PublishPlanMutationVariables>;
export const CorrectPlanDocument = new TypedDocumentString(`
    mutation CorrectPlan($input: CorrectPlanInput!) {
  correctPlan(input: $input) {
    plan {
      slug
      title
      revision
    }
    created
    problems {
      ...ProblemParts
    }
  }
}
    fragment ProblemParts on Problem {
  code
  message
  path
  file
  line
  column
}`) as unknown as TypedDocumentString<CorrectPlanMutation, CorrectPlanMutationVariables>;
export const WithdrawPlanDocument = new TypedDocumentString(`
    mutation WithdrawPlan($input: WithdrawPlanInput!) {
  withdrawPlan(input: $input) {
    plan {
      slug
      revision
      newest {
        revision
      }
    }
    problems {
      ...ProblemParts
    }
  }
}
    fragment ProblemParts on Problem {
  code
  message
  path
  file
  line
  column
}`) as unknown as TypedDocumentString<WithdrawPlanMutation, WithdrawPlanMutationVariables>;
export const DiscardDraftDocument = new TypedDocumentString(`
    mutation DiscardDraft($input: DiscardDraftInput!) {
  discardDraft(input: $input) {
    discarded {
      kind
      slug
      version
      namedBy {
        kind
        slug
      }
    }
    problems {
      ...ProblemParts
    }
  }
}
    fragment ProblemParts on Problem {
  code
  message
  path
  file
  line
  column
}`) as unknown as TypedDocumentString<DiscardDraftMutation, DiscardDraftMutationVariables>;
export const CreatePublisherDocument = new TypedDocumentString(`
    mutation CreatePublisher($input: CreatePublisherInput!) {
  createPublisher(input: $input) {
    publisher {
      slug
      name
    }
    problems {
      ...ProblemParts
    }
  }
}
    fragment ProblemParts on Problem {
  code
  message
  path
  file
  line
  column
}`) as unknown as TypedDocumentString<CreatePublisherMutation, CreatePublisherMutationVariables>;
export const CreateTokenDocument = new TypedDocumentString(`
    mutation CreateToken($input: CreateTokenInput!) {
  createToken(input: $input) {
    token {
      ...TokenParts
    }
    secret
    problems {
      ...ProblemParts
    }
  }
}
    fragment ProblemParts on Problem {
  code
  message
  path
  file
  line
  column
}
fragment TokenParts on AccessToken {
  id
  name
  publisher {
    slug
  }
  scopes
  createdAt
  expiresAt
  lastUsedAt
  revokedAt
  pointsPerMinute
}`) as unknown as TypedDocumentString<CreateTokenMutation, CreateTokenMutationVariables>;
export const RevokeTokenDocument = new TypedDocumentString(`
    mutation RevokeToken($input: RevokeTokenInput!) {
  revokeToken(input: $input) {
    token {
      ...TokenParts
    }
    problems {
      ...ProblemParts
    }
  }
}
    fragment ProblemParts on Problem {
  code
  message
  path
  file
  line
  column
}
fragment TokenParts on AccessToken {
  id
  name
  publisher {
    slug
  }
  scopes
  createdAt
  expiresAt
  lastUsedAt
  revokedAt
  pointsPerMinute
}`) as unknown as TypedDocumentString<RevokeTokenMutation, RevokeTokenMutationVariables>;
export const TokensDocument = new TypedDocumentString(`
    query Tokens($publisher: String, $after: String) {
  tokens(publisher: $publisher, first: 100, after: $after) {
    edges {
      node {
        ...TokenParts
      }
    }
    pageInfo {
      hasNextPage
      endCursor
    }
  }
}
    fragment TokenParts on AccessToken {
  id
  name
  publisher {
    slug
  }
  scopes
  createdAt
  expiresAt
  lastUsedAt
  revokedAt
  pointsPerMinute
}`) as unknown as TypedDocumentString<TokensQuery, TokensQueryVariables>;
export const LoadRuleSetDocument = new TypedDocumentString(`
    mutation LoadRuleSet($input: LoadRuleSetInput!) {
  loadRuleSet(input: $input) {
    ruleSet {
      code
      title
      inForceFrom
    }
    problems {
      ...ProblemParts
    }
  }
}
    fragment ProblemParts on Problem {
  code
  message
  path
  file
  line
  column
}`) as unknown as TypedDocumentString<LoadRuleSetMutation, LoadRuleSetMutationVariables>;
export const ImportRunDocument = new TypedDocumentString(`
    query ImportRun($run: ID!) {
  importRun(id: $run) {
    id
    kind
    state
    feed {
      kind
    }
    counts {
      read
      created
      changed
      unchanged
      quarantined
      repeated
    }
    problems {
      ...ProblemParts
    }
  }
}
    fragment ProblemParts on Problem {
  code
  message
  path
  file
  line
  column
}`) as unknown as TypedDocumentString<ImportRunQuery, ImportRunQueryVariables>;
export const QuarantinedRowsDocument = new TypedDocumentString(`
    query QuarantinedRows($run: ID!) {
  quarantinedRows(run: $run, first: 20) {
    edges {
      node {
        line
        problems {
          ...ProblemParts
        }
      }
    }
  }
}
    fragment ProblemParts on Problem {
  code
  message
  path
  file
  line
  column
}`) as unknown as TypedDocumentString<QuarantinedRowsQuery, QuarantinedRowsQueryVariables>;
export const RevisionsInForceDocument = new TypedDocumentString(`
    query RevisionsInForce($publisher: String!, $slug: String!, $revision: Int!) {
  plan(publisher: $publisher, slug: $slug, revision: $revision) {
    title
    withdrawnAt
    revisions(first: 100) {
      edges {
        node {
          revision
          withdrawnAt
        }
      }
    }
  }
}
    `) as unknown as TypedDocumentString<RevisionsInForceQuery, RevisionsInForceQueryVariables>;
export const UnpublishPlanDocument = new TypedDocumentString(`
    mutation UnpublishPlan($input: UnpublishPlanInput!) {
  unpublishPlan(input: $input) {
    plan {
      slug
      revision
    }
    problems {
      ...ProblemParts
    }
  }
}
    fragment ProblemParts on Problem {
  code
  message
  path
  file
  line
  column
}`) as unknown as TypedDocumentString<UnpublishPlanMutation, UnpublishPlanMutationVariables>;
export const UploadedImagesDocument = new TypedDocumentString(`
    query UploadedImages($publisher: String!, $files: [String!]!) {
  uploadedImages(publisher: $publisher, files: $files) {
    file
    fileHash
    hash
    original
  }
}
    `) as unknown as TypedDocumentString<UploadedImagesQuery, UploadedImagesQueryVariables>;
export const RemoveImageDocument = new TypedDocumentString(`
    mutation RemoveImage($input: RemoveImageInput!) {
  removeImage(input: $input) {
    removed
    problems {
      ...ProblemParts
    }
  }
}
    fragment ProblemParts on Problem {
  code
  message
  path
  file
  line
  column
}`) as unknown as TypedDocumentString<RemoveImageMutation, RemoveImageMutationVariables>;
export const CreatePreviewLinkDocument = new TypedDocumentString(`
    mutation CreatePreviewLink($input: CreatePreviewLinkInput!) {
  createPreviewLink(input: $input) {
    link {
      ...PreviewLinkParts
    }
    path
    problems {
      ...ProblemParts
    }
  }
}
    fragment ProblemParts on Problem {
  code
  message
  path
  file
  line
  column
}
fragment PreviewLinkParts on PreviewLink {
  id
  slug
  createdAt
  expiresAt
  revokedAt
}`) as unknown as TypedDocumentString<CreatePreviewLinkMutation, CreatePreviewLinkMutationVariables>;
export const RevokePreviewLinkDocument = new TypedDocumentString(`
    mutation RevokePreviewLink($input: RevokePreviewLinkInput!) {
  revokePreviewLink(input: $input) {
    link {
      ...PreviewLinkParts
    }
    problems {
      ...ProblemParts
    }
  }
}
    fragment ProblemParts on Problem {
  code
  message
  path
  file
  line
  column
}
fragment PreviewLinkParts on PreviewLink {
  id
  slug
  createdAt
  expiresAt
  revokedAt
}`) as unknown as TypedDocumentString<RevokePreviewLinkMutation, RevokePreviewLinkMutationVariables>;
export const PreviewLinksDocument = new TypedDocumentString(`
    query PreviewLinks($publisher: String!, $after: String) {
  previewLinks(publisher: $publisher, first: 100, after: $after) {
    edges {
      node {
        ...PreviewLinkParts
      }
    }
    pageInfo {
      hasNextPage
      endCursor
    }
  }
}
    fragment PreviewLinkParts on PreviewLink {
  id
  slug
  createdAt
  expiresAt
  revokedAt
}`) as unknown as TypedDocumentString<PreviewLinksQuery, PreviewLinksQueryVariables>;
export const SchedulePublicationDocument = new TypedDocumentString(`
    mutation SchedulePublication($input: SchedulePublicationInput!) {
  schedulePublication(input: $input) {
    scheduled {
      ...ScheduledParts
    }
    problems {
      ...ProblemParts
    }
  }
}
    fragment ProblemParts on Problem {
  code
  message
  path
  file
  line
  column
}
fragment ScheduledParts on ScheduledChange {
  id
  publisher {
    slug
  }
  slug
  kind
  state
  dueAt
  localTime
  zone
  version
  revision
  notice
  problems {
    code
    message
  }
}`) as unknown as TypedDocumentString<SchedulePublicationMutation, SchedulePublicationMutationVariables>;
export const ScheduleWithdrawalDocument = new TypedDocumentString(`
    mutation ScheduleWithdrawal($input: ScheduleWithdrawalInput!) {
  scheduleWithdrawal(input: $input) {
    scheduled {
      ...ScheduledParts
    }
    problems {
      ...ProblemParts
    }
  }
}
    fragment ProblemParts on Problem {
  code
  message
  path
  file
  line
  column
}
fragment ScheduledParts on ScheduledChange {
  id
  publisher {
    slug
  }
  slug
  kind
  state
  dueAt
  localTime
  zone
  version
  revision
  notice
  problems {
    code
    message
  }
}`) as unknown as TypedDocumentString<ScheduleWithdrawalMutation, ScheduleWithdrawalMutationVariables>;
export const ChangeScheduledDocument = new TypedDocumentString(`
    mutation ChangeScheduled($input: ChangeScheduledInput!) {
  changeScheduled(input: $input) {
    scheduled {
      ...ScheduledParts
    }
    problems {
      ...ProblemParts
    }
  }
}
    fragment ProblemParts on Problem {
  code
  message
  path
  file
  line
  column
}
fragment ScheduledParts on ScheduledChange {
  id
  publisher {
    slug
  }
  slug
  kind
  state
  dueAt
  localTime
  zone
  version
  revision
  notice
  problems {
    code
    message
  }
}`) as unknown as TypedDocumentString<ChangeScheduledMutation, ChangeScheduledMutationVariables>;
export const CancelScheduledDocument = new TypedDocumentString(`
    mutation CancelScheduled($input: CancelScheduledInput!) {
  cancelScheduled(input: $input) {
    scheduled {
      ...ScheduledParts
    }
    problems {
      ...ProblemParts
    }
  }
}
    fragment ProblemParts on Problem {
  code
  message
  path
  file
  line
  column
}
fragment ScheduledParts on ScheduledChange {
  id
  publisher {
    slug
  }
  slug
  kind
  state
  dueAt
  localTime
  zone
  version
  revision
  notice
  problems {
    code
    message
  }
}`) as unknown as TypedDocumentString<CancelScheduledMutation, CancelScheduledMutationVariables>;
export const ScheduledDocument = new TypedDocumentString(`
    query Scheduled($publisher: String!, $states: [ScheduledState!], $after: String) {
  scheduled(publisher: $publisher, states: $states, first: 100, after: $after) {
    edges {
      node {
        ...ScheduledParts
      }
    }
    pageInfo {
      hasNextPage
      endCursor
    }
  }
}
    fragment ScheduledParts on ScheduledChange {
  id
  publisher {
    slug
  }
  slug
  kind
  state
  dueAt
  localTime
  zone
  version
  revision
  notice
  problems {
    code
    message
  }
}`) as unknown as TypedDocumentString<ScheduledQuery, ScheduledQueryVariables>;