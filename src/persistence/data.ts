import type { Batched, Page, PageRequest } from "./sql/page.js";
import type { ReviewedDifference } from "../domain/plan/review/review-plan.js";
import type { PublisherFacts } from "../domain/model/publisher.js";
import type { ArchiveData } from "./archive/archive-data.js";
import type { BaseFoodData } from "./foods/base-food-data.js";
import type { CatalogueData } from "./foods/catalogue-data.js";
import type { Component } from "../domain/model/component.js";
import type { Food, OwnMeasure } from "../domain/model/food.js";
import type {
  FeedData,
  ImportFileData,
  ImportRunData,
  ListedPackData,
  RunCounts,
  RunKind,
  RunState,
} from "./imports/import-data.js";
import type { ImageData } from "./images/image-data.js";
import type { TranslatedTitle } from "../domain/plan/translate/in-language.js";
import type { Plan, PlanBundle } from "../domain/model/plan.js";
import type { Author } from "./access/author.js";
import type { RevisionSummary, TitleAsked } from "./plans/found-revision.js";
import type { UsageData } from "./access/usage-data.js";
import type { ScheduledChangeData } from "./plans/scheduled-change-data.js";
import type { FactFilter, PlanFactsData } from "./plans/plan-facts-data.js";
import type { PreviewLinkData } from "./plans/preview-link-data.js";
import type { RuleSet } from "../domain/plan/compile/rule-set.js";
import type { ClaimedKey } from "./access/claimed-key.js";
import type { Translation } from "../domain/model/translation.js";
import type { TranslationData } from "./drafts/translation-data.js";
import type { DraftKind } from "../domain/problem.js";

export type { Author } from "./access/author.js";

/** The tenant: a writer or a title. */
export interface Publisher extends PublisherFacts {
  readonly id: string;
  readonly slug: string;
  readonly name: string;
}

/** What is known of a revision beside its document, for its review. */
export interface RevisionInForce {
  readonly id: string;
  /** 0.1.0 froze it. */
  readonly asBy010: boolean;
  /** What its publisher said of itself when it was published. */
  readonly publisherThen: Pick<PublisherFacts, "region" | "currency">;
}

/** What a publisher's own food is called. `base`: slug of the food that it builds on. */
export interface OwnFoodNames extends Pick<Food, "slug" | "names"> {
  readonly aisle: string | null;
  readonly base: string | null;
}

/** What a publisher calls something of its own. */
export interface OwnedSlug {
  readonly publisher: string;
  readonly slug: string;
}

export type { RevisionSummary, TitleAsked } from "./plans/found-revision.js";

/** The columns of a rule set beside its content. */
export interface RuleSetSummary {
  readonly id: string;
  readonly code: string;
  readonly title: string;
  /** ISO date of its first day. */
  readonly inForceFrom: string;
  /** ISO date of the first day of the set that took its place; null: none has. */
  readonly inForceTo: string | null;
  readonly loadedAt: Date;
  /** SHA-256 of the content, hex. */
  readonly checksum: string;
}

export interface PublishedRevision extends RevisionSummary {
  readonly bundle: PlanBundle;
}

/** What a plan's own address leads to once a revision is withdrawn: the newest that is still in force, or nothing. */
export type WithdrawThen = "PREVIOUS" | "NOTHING";

/** `revision` null: the newest one that is not withdrawn. */
export interface RevisionRef {
  readonly publisher: string;
  readonly slug: string;
  readonly revision: number | null;
}

export interface PlanFilter extends Pick<FactFilter, "publisher" | "usesFood" | "usesComponent"> {
  /** Words of the title, any case. */
  readonly search: string | null;
}

export interface FoodFilter {
  readonly aisle: string | null;
}

/** A document as its writer wrote it, comments and all. */
interface DocumentText {
  readonly text: string;
  readonly format: "YAML" | "JSON";
}

export interface DraftDocument extends DocumentText {
  /** SHA-256 of the text, hex. */
  readonly hash: string;
}

/** What is kept of a draft beside its value when it is saved. */
export interface DraftWriting {
  /** null: it was saved as a value. */
  readonly document: DocumentText | null;
  /** Id of the token, or name of the part of the program, that saves it; null: not known. */
  readonly by: string | null;
}

/** What is known of a draft beside its value. */
export interface DraftMarks {
  /** Which a writer must name to overwrite it. */
  readonly version: number;
  readonly updatedAt: Date;
  readonly updatedBy: string | null;
  readonly document: DraftDocument | null;
}

export interface Draft<T> extends DraftMarks {
  readonly value: T;
}

export interface DraftRef extends OwnedSlug {
  readonly kind: DraftKind;
}

/** The columns that list a draft. */
export interface DraftSummary extends DraftRef {
  readonly title: string;
  readonly version: number;
  readonly updatedAt: Date;
  readonly updatedBy: string | null;
}

export interface DraftText {
  readonly version: number;
  readonly updatedBy: string | null;
  readonly text: string | null;
}

export interface DraftFilter {
  readonly publisher: string;
  readonly kind: DraftKind | null;
}

/** All of a token but its secret. */
export interface AccessToken {
  /** The public part of its text. */
  readonly id: string;
  /** Slug; null: the operator's. */
  readonly publisher: string | null;
  readonly name: string;
  readonly scopes: readonly string[];
  readonly createdAt: Date;
  readonly createdBy: Author;
  readonly expiresAt: Date | null;
  /** To the minute. */
  readonly lastUsedAt: Date | null;
  readonly revokedAt: Date | null;
  /** It is from before 0.2.0, when IMPORT alone published through feeds. */
  readonly importPublishes: boolean;
  /** Its own limit. null: that of the service. */
  readonly pointsPerMinute: number | null;
}

interface NewAccessToken extends Omit<AccessToken, "lastUsedAt" | "revokedAt" | "importPublishes" | "pointsPerMinute"> {
  readonly pointsPerMinute?: number | null;
  /** SHA-256 of the secret part of its text, hex. */
  readonly secretHash: string;
}

/** Something that was done, to be written down. */
interface NewAuditRecord {
  readonly at: Date;
  readonly author: Author;
  /** Slug of whose thing it was; null: what all publishers share. */
  readonly publisher: string | null;
  readonly action: string;
  readonly subjectKind: string;
  /** Slug, or id of what has none. */
  readonly subject: string;
  /** Version of a draft, number of a revision; null where there was none. */
  readonly before: number | null;
  readonly after: number | null;
  readonly requestId: string | null;
}

export interface AuditRecord extends NewAuditRecord {
  readonly id: string;
  /** null where a program did it. */
  readonly tokenName: string | null;
  /** Slug; null where a program did it, or a token of the operator. */
  readonly tokenPublisher: string | null;
}

export type ChangeKind =
  "PLAN_PUBLISHED" | "PLAN_CORRECTED" | "PLAN_WITHDRAWN" | "PLAN_ANSWER_CHANGED" | "PLAN_LESS_SAFE";

/** What readers of a revision find otherwise than it was frozen, the less safe first. */
export interface RevisionReview {
  readonly revisionId: string;
  readonly differences: readonly ReviewedDifference[];
  readonly lessSafe: boolean;
  /** When that was first found. */
  readonly changedAt: Date;
}

/** What webhooks tell of: changes of plans, and imports that ended. */
export type WebhookKind = ChangeKind | "IMPORT_ENDED" | "PLAN_KEPT_BACK";

/** Something that happened to a revision. */
export interface Change {
  readonly id: string;
  /** Slug. */
  readonly publisher: string;
  readonly kind: ChangeKind;
  readonly revisionId: string;
  readonly at: Date;
}

/** An address that is told of its publisher's changes and imports, without its secret. */
export interface Webhook {
  readonly id: string;
  /** Slug. */
  readonly publisher: string;
  readonly url: string;
  /** Empty: all. */
  readonly kinds: readonly WebhookKind[];
  readonly createdAt: Date;
  readonly disabledAt: Date | null;
  /** ASKED; GONE: the address answered 410; FAILING: nothing arrived during all tries of a delivery; null where it is not disabled. */
  readonly disabledBecause: "ASKED" | "GONE" | "FAILING" | null;
}

interface NewWebhook extends Pick<Webhook, "publisher" | "url" | "kinds" | "createdAt"> {
  readonly secret: string;
}

export type DeliveryState = "PENDING" | "DELIVERED" | "DEAD";

/** One change, or one ended import, for one webhook. */
export interface WebhookDelivery {
  readonly id: string;
  /** Slug. */
  readonly publisher: string;
  readonly webhookId: string;
  readonly kind: WebhookKind;
  /** The change and its revision; null where it tells of an import. */
  readonly changeId: string | null;
  readonly revisionId: string | null;
  /** The import; null where it tells of a change. */
  readonly runId: string | null;
  /** What was scheduled and kept back; null where it tells of something else. */
  readonly scheduledId: string | null;
  readonly state: DeliveryState;
  readonly attempts: number;
  readonly dueAt: Date;
  readonly createdAt: Date;
  readonly triedAt: Date | null;
  readonly status: number | null;
  readonly error: string | null;
}

/** A delivery that a worker has to itself for a while, with all it takes to send it. */
export interface ClaimedDelivery {
  readonly id: string;
  readonly webhookId: string;
  /** The one that is about to be made included. */
  readonly attempts: number;
  readonly url: string;
  readonly secret: string;
  readonly oldSecret: string | null;
  readonly oldSecretUntil: Date | null;
  readonly at: Date;
  /** Slug. */
  readonly publisher: string;
  readonly tells: ToldChange | ToldImport | ToldKeptBack;
}

/** What a message says of a change. */
interface ToldChange {
  readonly kind: ChangeKind;
  readonly changeId: string;
  /** Slug. */
  readonly plan: string;
  readonly revision: number;
}

/** What a message says of an import that ended. */
interface ToldImport {
  readonly kind: "IMPORT_ENDED";
  readonly runId: string;
  /** Slug. */
  readonly feed: string;
  readonly runKind: RunKind;
  readonly state: RunState;
  readonly counts: RunCounts;
}

/** What a message says of something scheduled that was kept back. */
interface ToldKeptBack {
  readonly kind: "PLAN_KEPT_BACK";
  readonly scheduledId: string;
  /** Slug. */
  readonly plan: string;
  readonly scheduled: "PUBLISH" | "WITHDRAW";
  /** Codes of the problems. */
  readonly problems: readonly string[];
}

/**
 * Everything the services may ask of the database. Rows never leave this folder: values in and out are the domain's.
 * Thrown errors are faults (the database is gone), except those of the caller from persistence/errors.ts: `StaleDraft`,
 * `BadCursor`, `UnknownPublisher` (saving or publishing for nobody) and `UnstorableText` (with the path to it).
 */
export interface Data {
  readonly publishers: {
    save(publisher: { slug: string; name: string }): Promise<Publisher>;
    /** Inside a transaction: until it ends, whoever locks the same publisher waits. One writer at a time sees and changes its drafts. */
    lock(slug: string): Promise<void>;
    /** Inside a transaction: waits for all who write anything of the publisher's, and until it ends they wait: each of its rows refers to it. */
    lockAlone(slug: string): Promise<void>;
    /** false: the slug is taken. */
    create(publisher: { slug: string; name: string }): Promise<boolean>;
    /** false: there is none. */
    rename(slug: string, name: string): Promise<boolean>;
    /** Takes over what its document says. false: there is none. */
    describe(slug: string, facts: PublisherFacts): Promise<boolean>;
    bySlugs: Batched<string, Publisher>;
    byIds: Batched<string, Publisher>;
    /** Those that have a plan in force, by slug. @throws BadCursor */
    page(request: PageRequest): Promise<Page<Publisher>>;
  };
  readonly foods: BaseFoodData & {
    /** Inserts or replaces by slug, all or none; counts rows that really changed. */
    save(foods: readonly Food[]): Promise<{ readonly changed: number }>;
    bySlugs: Batched<string, Food>;
    byIds: Batched<string, { readonly id: string; readonly food: Food }>;
    /** Database ids by slug, for global ids. */
    idsBySlugs: Batched<string, string>;
    page(filter: FoodFilter, request: PageRequest): Promise<Page<Food>>;
    /** Own measures of every food, by slug. */
    measures(): Promise<ReadonlyMap<string, readonly OwnMeasure[]>>;
    /** Slug, names and aisle of every food, to find foods by. The same list for as long as the foods stay the same. */
    names(): Promise<readonly (Pick<Food, "slug" | "names" | "aisle"> & { readonly base?: boolean })[]>;
    /** ISO 4217 codes of the prices of their packs, those of price lists too. */
    currencies(): Promise<readonly string[]>;
    /** Takes foods away; what was published keeps its own copy. Counts them. */
    remove(slugs: readonly string[]): Promise<number>;
    /** For each slug another food that lists its name as one more word for itself, or null: the two are shopped as one. */
    synonyms: Batched<string, string>;
  };
  /** Foods of publishers, each seen by its own publisher alone until a plan with it is published. */
  readonly publisherFoods: {
    /** As the document says it. `expectedVersion` null: there must be none yet. Returns the new version. */
    saveDraft(publisher: string, food: Food, expectedVersion: number | null, writing: DraftWriting): Promise<number>;
    drafts: Batched<OwnedSlug, Draft<Food>>;
    /** As the newest published plan with each froze it; null: none has it. */
    published: Batched<OwnedSlug, Food>;
    /** What its own foods are called, as they are saved or as published plans froze them, by slug. */
    names(publisher: string, as: "SAVED" | "PUBLISHED"): Promise<readonly OwnFoodNames[]>;
    notePublished(publisher: string, foods: readonly Food[]): Promise<void>;
  };
  /** The packs that publishers add to foods, each as a food that builds on that one and says nothing else. */
  readonly publisherPacks: Omit<Data["publisherFoods"], "names">;
  readonly translations: TranslationData<Draft<Translation>, DraftWriting, OwnedSlug>;
  readonly components: {
    /** `expectedVersion` null: there must be no draft yet. Returns the new version. */
    saveDraft(
      publisher: string,
      component: Component,
      expectedVersion: number | null,
      writing?: DraftWriting,
    ): Promise<number>;
    drafts: Batched<OwnedSlug, Draft<Component>>;
  };
  readonly plans: {
    /** `expectedVersion` null: there must be no draft yet. Returns the new version. */
    saveDraft(plan: Plan, expectedVersion: number | null, writing?: DraftWriting): Promise<number>;
    drafts: Batched<OwnedSlug, Draft<Plan>>;
  };
  readonly drafts: {
    /** Drafts of one publisher: components, then foods, then packs, then plans, then translations, each by slug. */
    page(filter: DraftFilter, request: PageRequest): Promise<Page<DraftSummary>>;
    /** The versions they are at now. */
    versions: Batched<DraftRef, number>;
    /** Their texts, without the values; `text` null: it was saved as a value. */
    texts: Batched<DraftRef, DraftText>;
    /** The drafts of plans that have one of these titles, in any case and with or without a number in brackets behind it. */
    titled(publisher: string, titles: readonly string[]): Promise<readonly Pick<DraftSummary, "slug" | "title">[]>;
    /** Drafts of the same publisher with a line that names this one: at most so many, components first. */
    naming(draft: DraftRef, most: number): Promise<readonly { readonly kind: DraftKind; readonly slug: string }[]>;
    /** The next draft of that name counts its versions on from there. */
    discard(draft: DraftRef, expectedVersion: number): Promise<void>;
  };
  readonly revisions: {
    /** The next revision of that plan; returns the existing newest one unchanged when its document is the same. */
    publish(
      bundle: PlanBundle,
      publishedAt: Date,
      changeNote?: string | null,
      ruleSet?: string | null,
    ): Promise<{ readonly summary: RevisionSummary; readonly created: boolean }>;
    /** With all others of the plan that are in force where `then` is NOTHING. false: there is no such revision, or it was withdrawn before. */
    withdraw(
      ref: OwnedSlug & { readonly revision: number },
      at: Date,
      because?: string | null,
      then?: WithdrawThen,
    ): Promise<boolean>;
    /** Every revision of one plan, withdrawn ones too, the newest number first. */
    ofPlan(name: OwnedSlug, request: PageRequest): Promise<Page<RevisionSummary>>;
    /** A named revision is found even when withdrawn (old newsletters keep resolving). */
    summaries: Batched<RevisionRef, RevisionSummary>;
    summariesByIds: Batched<string, RevisionSummary>;
    /** Frozen documents by revision id. */
    bundles: Batched<string, PlanBundle>;
    /** What plans are called in other languages, without their documents. */
    titles: Batched<TitleAsked, TranslatedTitle>;
    /**
     * Every revision, withdrawn ones too, in the order of its id: the checksum stored with it, and one computed from the
     * stored document now. `after` is an id or null for the start.
     */
    checksums(
      after: string | null,
      limit: number,
    ): Promise<readonly { readonly id: string; readonly stored: string; readonly computed: string }[]>;
    /** Of plans that have none in force: the revision that was withdrawn last, which says when and why. */
    withdrawn: Batched<OwnedSlug, RevisionSummary>;
    /** The same of all such plans of a publisher, the last withdrawn first. */
    withdrawnOf(publisher: string, limit: number): Promise<readonly RevisionSummary[]>;
    /** Newest revision not withdrawn that holds this component. */
    holdingComponents: Batched<OwnedSlug, RevisionSummary>;
    /** Newest revision of each plan that is not withdrawn, in total order (publishedAt descending, id). */
    page(filter: PlanFilter, request: PageRequest): Promise<Page<RevisionSummary>>;
  };
  readonly planFacts: PlanFactsData<RevisionSummary>;
  readonly reviews: {
    /** Revisions that are not withdrawn, in the order of the ids. `after` is an id or null for the start. */
    inForce(after: string | null, limit: number): Promise<readonly RevisionInForce[]>;
    /** false: the last review of it found the same. Else it is added to the changes, unless the first review finds nothing. */
    save(review: {
      readonly revisionId: string;
      readonly differences: readonly ReviewedDifference[];
      readonly lessSafe: boolean;
      readonly at: Date;
    }): Promise<boolean>;
    /** Reviews that found something new after a time, of revisions in force; of one publisher, or (null) all. Less safe first. */
    changedSince(from: Date, publisher: string | null, limit: number): Promise<readonly RevisionReview[]>;
  };
  readonly ruleSets: {
    /** Adds a set unless there is one of its code, which stays as it is; `same`: it says what the given one says. */
    add(
      set: RuleSet,
      loadedAt: Date,
    ): Promise<{ readonly summary: RuleSetSummary; readonly added: boolean; readonly same: boolean }>;
    /**
     * Id of the set of an ISO date: the last that has begun, of equal ones the last loaded. Before the first has begun it
     * is the first, because rules that are too new are better than none. null: none was ever loaded.
     */
    inForce(date: string): Promise<string | null>;
    /** Every set, the one that begins last first. */
    all(): Promise<readonly RuleSetSummary[]>;
    byIds: Batched<string, RuleSetSummary>;
    /** The rules themselves, by the set's id. */
    contents: Batched<string, RuleSet>;
  };
  readonly accessTokens: {
    create(token: NewAccessToken): Promise<void>;
    find(id: string): Promise<{ readonly token: AccessToken; readonly secretHash: string } | null>;
    /** Notes that a token was used, unless a use since then is noted already. */
    noteUse(id: string, at: Date, unlessSince: Date): Promise<void>;
    /** false: there is none, or it was revoked before. */
    revoke(id: string, at: Date): Promise<boolean>;
    /** Newest first; of one publisher, or (null) all with the operator's. */
    page(publisher: string | null, request: PageRequest): Promise<Page<AccessToken>>;
    /** Tokens good at an instant that `importPublishes` and have IMPORT but not PUBLISH; of one publisher, or (null) all with the operator's. */
    importOnly(publisher: string | null, at: Date): Promise<readonly AccessToken[]>;
  };
  readonly auditTrail: {
    add(record: NewAuditRecord): Promise<void>;
    /** Newest first; of one publisher, or (null) all. */
    page(publisher: string | null, request: PageRequest): Promise<Page<AuditRecord>>;
  };
  readonly idempotencyKeys: {
    /** Inside a transaction: the key stays claimed until it ends. */
    claim(owner: string, key: string): Promise<ClaimedKey>;
    store(answered: {
      readonly owner: string;
      readonly key: string;
      readonly fingerprint: string;
      /** JSON. */
      readonly answer: unknown;
      readonly at: Date;
    }): Promise<void>;
    /** Forgets the keys that were stored before; counts them. */
    sweep(before: Date): Promise<number>;
  };
  readonly changes: {
    /**
     * In the order of commits, the oldest first; of one publisher, or (null) all. `revisions.publish` and `withdraw` add to
     * them. A page from a cursor on neither misses nor repeats a change, whatever is being written beside.
     */
    page(publisher: string | null, request: PageRequest): Promise<Page<Change>>;
  };
  readonly archives: ArchiveData;
  readonly feeds: FeedData;
  readonly images: ImageData;
  readonly importFiles: ImportFileData;
  readonly importRuns: ImportRunData;
  readonly listedPacks: ListedPackData;
  readonly webhooks: {
    /** Returns its id. */
    create(webhook: NewWebhook): Promise<string>;
    find(id: string): Promise<Webhook | null>;
    count(publisher: string): Promise<number>;
    /** Newest first; of one publisher, or (null) all. */
    page(publisher: string | null, request: PageRequest): Promise<Page<Webhook>>;
    rotate(id: string, secret: string, oldUntil: Date): Promise<void>;
    enable(id: string): Promise<void>;
    disable(id: string, at: Date, because: NonNullable<Webhook["disabledBecause"]>): Promise<void>;
    /** With its deliveries. */
    remove(id: string): Promise<void>;
  };
  readonly webhookDeliveries: {
    find(id: string): Promise<WebhookDelivery | null>;
    /** Newest first. */
    page(webhook: string, state: DeliveryState | null, request: PageRequest): Promise<Page<WebhookDelivery>>;
    /** Takes what is due at `now`, for this worker alone until the lease is over. */
    claim(now: Date, leaseUntil: Date, limit: number): Promise<readonly ClaimedDelivery[]>;
    /** `dueAt` null: it stays as it is. Does nothing if another worker has the delivery by now. */
    settle(
      claimed: Pick<ClaimedDelivery, "id" | "attempts">,
      outcome: {
        readonly state: DeliveryState;
        readonly dueAt: Date | null;
        readonly status: number | null;
        readonly error: string | null;
      },
    ): Promise<void>;
    /** Everything that waits for this webhook is dead. */
    giveUp(webhook: string, error: string): Promise<void>;
    replay(id: string, at: Date): Promise<void>;
    /** Whether anything has arrived at the webhook of a delivery since that was made. */
    hasArrivedSince(id: string): Promise<boolean>;
    /** Forgets those that are done with and were made before; counts them. */
    forget(before: Date): Promise<number>;
  };
  readonly previewLinks: PreviewLinkData;
  readonly scheduled: ScheduledChangeData;
  readonly usage: UsageData;
  readonly catalogue: CatalogueData;
  /** @param longest milliseconds that it may take; left out: two minutes. One that joins another takes what that has. */
  transaction<T>(work: (data: Data) => Promise<T>, longest?: number): Promise<T>;
  /** Rejects when the database does not answer. */
  ping(): Promise<void>;
  close(): Promise<void>;
}
