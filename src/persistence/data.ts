import type { Component } from "../domain/model/component.js";
import type { Food } from "../domain/model/food.js";
import type { PublishedKeepingRule } from "../domain/model/keeping.js";
import type { Plan, PlanBundle } from "../domain/model/plan.js";

/** The tenant: a writer or a title. */
export interface Publisher {
  readonly id: string;
  readonly slug: string;
  readonly name: string;
}

/** The columns that find a published revision; its content is `PublishedRevision.bundle`. */
export interface RevisionSummary {
  readonly id: string;
  readonly publisher: string;
  readonly slug: string;
  readonly title: string;
  readonly revision: number;
  readonly serves: number;
  readonly locale: string;
  readonly publishedAt: Date;
  readonly withdrawnAt: Date | null;
  /** SHA-256 of the frozen document, hex. */
  readonly checksum: string;
}

export interface PublishedRevision extends RevisionSummary {
  readonly bundle: PlanBundle;
}

/** `revision` null: the newest one that is not withdrawn. */
export interface RevisionRef {
  readonly publisher: string;
  readonly slug: string;
  readonly revision: number | null;
}

export interface PlanFilter {
  readonly publisher: string | null;
  /** Words of the title, any case. */
  readonly search: string | null;
  readonly usesFood: string | null;
  readonly usesComponent: string | null;
}

export interface FoodFilter {
  /** A name in any language, or the start of one. */
  readonly search: string | null;
  readonly aisle: string | null;
}

/** Relay: `first`/`after` walk forwards, `last`/`before` backwards. Cursors are opaque and survive inserts between pages. */
export interface PageRequest {
  readonly first: number | null;
  readonly after: string | null;
  readonly last: number | null;
  readonly before: string | null;
}

export interface Page<T> {
  readonly items: readonly { readonly cursor: string; readonly item: T }[];
  readonly hasNext: boolean;
  readonly hasPrevious: boolean;
}

/** A batched read answers in the order of its keys, null where nothing was found. */
export type Batched<K, V> = (keys: readonly K[]) => Promise<readonly (V | null)[]>;

export interface OwnedSlug {
  readonly publisher: string;
  readonly slug: string;
}

/** A draft and the version a writer must name to overwrite it. */
export interface Draft<T> {
  readonly value: T;
  readonly version: number;
  readonly updatedAt: Date;
}

/**
 * Everything the services may ask of the database. Rows never leave this folder: values in and out are the domain's.
 * Thrown errors are faults (the database is gone), except those of the caller from persistence/errors.ts: `StaleDraft`,
 * `BadCursor`, `UnknownPublisher` (saving or publishing for nobody) and `UnstorableText` (with the path to it).
 */
export interface Data {
  readonly publishers: {
    save(publisher: { slug: string; name: string }): Promise<Publisher>;
    bySlugs: Batched<string, Publisher>;
    byIds: Batched<string, Publisher>;
  };
  readonly foods: {
    /** Inserts or replaces by slug, all or none; counts rows that really changed. */
    save(foods: readonly Food[]): Promise<{ readonly changed: number }>;
    bySlugs: Batched<string, Food>;
    byIds: Batched<string, { readonly id: string; readonly food: Food }>;
    /** Database ids by slug, for global ids. */
    idsBySlugs: Batched<string, string>;
    page(filter: FoodFilter, request: PageRequest): Promise<Page<Food>>;
    /** For each slug another food that lists its name as one more word for itself, or null: the two are shopped as one. */
    synonyms: Batched<string, string>;
  };
  readonly components: {
    saveDraft(publisher: string, component: Component, expectedVersion: number | null): Promise<number>;
    drafts: Batched<OwnedSlug, Draft<Component>>;
  };
  readonly plans: {
    saveDraft(plan: Plan, expectedVersion: number | null): Promise<number>;
    drafts: Batched<OwnedSlug, Draft<Plan>>;
  };
  readonly revisions: {
    /** The next revision of that plan; returns the existing newest one unchanged when its document is the same. */
    publish(
      bundle: PlanBundle,
      publishedAt: Date,
    ): Promise<{ readonly summary: RevisionSummary; readonly created: boolean }>;
    withdraw(ref: OwnedSlug & { readonly revision: number }, at: Date): Promise<boolean>;
    /** A named revision is found even when withdrawn (old newsletters keep resolving). */
    summaries: Batched<RevisionRef, RevisionSummary>;
    summariesByIds: Batched<string, RevisionSummary>;
    /** Frozen documents by revision id. */
    bundles: Batched<string, PlanBundle>;
    /**
     * Every revision, withdrawn ones too, in the order of its id: the checksum stored with it, and one computed from the
     * stored document now. `after` is an id or null for the start.
     */
    checksums(
      after: string | null,
      limit: number,
    ): Promise<readonly { readonly id: string; readonly stored: string; readonly computed: string }[]>;
    /** Newest revision not withdrawn that holds this component. */
    holdingComponents: Batched<OwnedSlug, RevisionSummary>;
    /** Newest revision of each plan that is not withdrawn, in total order (publishedAt descending, id). */
    page(filter: PlanFilter, request: PageRequest): Promise<Page<RevisionSummary>>;
  };
  readonly keepingRules: {
    /** Adds or replaces rules by id; superseded ones are kept with their `inForceTo`. */
    save(rules: readonly PublishedKeepingRule[]): Promise<{ readonly changed: number }>;
    /** Rules in force on an ISO date. */
    inForce(date: string): Promise<readonly PublishedKeepingRule[]>;
  };
  transaction<T>(work: (data: Data) => Promise<T>): Promise<T>;
  /** Rejects when the database does not answer. */
  ping(): Promise<void>;
  close(): Promise<void>;
}
