import type { RuleSet } from "../domain/plan/compile/rule-set.js";
import type { FileSources } from "./imports/files/file-sources.js";
import type { AroundStage } from "./answer-stage.js";
import type { OperatorAddress } from "./imports/feeds/operator-address.js";
import type { Data, RevisionSummary } from "../persistence/data.js";
import type { ListedPlan as PlanOfList } from "../persistence/plans/plan-facts-data.js";
import type { TimeSlicer, SlicedWork } from "./time-slices.js";
import type { Cache } from "./cache/cache.js";
import type { ChangeSignals } from "./plans/change-signals.js";

export type { BaseFoodsChanged } from "../persistence/foods/base-food-data.js";
export type { KnownCatalogueRow } from "../persistence/foods/catalogue-data.js";
export type {
  Data,
  AccessToken,
  AuditRecord,
  Author,
  Change,
  Draft,
  DraftDocument,
  DraftFilter,
  DraftRef,
  DraftSummary,
  DraftText,
  DraftWriting,
  ClaimedDelivery,
  DeliveryState,
  FoodFilter,
  OwnedSlug,
  PlanFilter,
  PublishedRevision,
  Publisher,
  RevisionInForce,
  RevisionRef,
  WithdrawThen,
  RevisionReview,
  RevisionSummary,
  TitleAsked,
  Webhook,
  WebhookDelivery,
  WebhookKind,
  RuleSetSummary,
} from "../persistence/data.js";
export type { ScheduledChange, ScheduledState, ScheduledTime } from "../persistence/plans/scheduled-change-data.js";
export type { CountedRequests, PlanRequests, TokenUsage } from "../persistence/access/usage-data.js";
export type { PreviewLink } from "../persistence/plans/preview-link-data.js";
export type { DraftKind } from "../domain/problem.js";
export type { FactFilter, FactSourceNow, PlanOrder, StoredFacts } from "../persistence/plans/plan-facts-data.js";
export type { Page, PageRequest } from "../persistence/sql/page.js";

export type {
  Feed,
  FeedKind,
  FileTags,
  ImportChange,
  ImportFile,
  ImportRun,
  QuarantinedRow,
  RunKind,
} from "../persistence/imports/import-data.js";

/** A published plan as a list finds it. */
export type ListedPlan = PlanOfList<RevisionSummary>;

/** Facts first, then a sentence: the order pino takes them in. */
export interface Log {
  info(facts: object, message: string): void;
  warn(facts: object, message: string): void;
  error(facts: object, message: string): void;
}

export type Clock = () => Date;

/** What every service may use besides its input. */
export interface Deps {
  readonly data: Data;
  /** `Data` for one request of the public, from a replica of the database; left out: there are none. See `depsFor`. */
  readonly publicData?: () => Data;
  /**
   * `Data` for those who show a token: nothing that changes comes from the cache, because they may have changed it a moment ago through
   * another instance, of which this one has not heard yet. Left out: `data` is as good. See `depsFor`.
   */
  readonly ownData?: Data;
  readonly clock: Clock;
  readonly log: Log;
  /** Whether webhooks may lead to private networks, and go without encryption; left out: no. */
  readonly allowPrivateWebhooks?: boolean;
  /** Where the operator is told of imports each morning; left out: nowhere but in the log. */
  readonly operator?: OperatorAddress;
  /** Where files of feeds are come by; left out: this process fetches none. */
  readonly sources?: FileSources;
  /** Whoever is told what computing takes; left out: nobody. */
  readonly aroundStage?: AroundStage;
  /** Rule sets that were read already, by id. A set never changes, so what is here is right. See `findRules`. */
  readonly knownRules: Map<string, RuleSet>;
  /** Time slices for computing; left out: each request is computed without a pause. */
  readonly slicer?: TimeSlicer;
  /** The computation of this one request; left out: it has no time limit and never yields. See `withTimeLimit`. */
  readonly work?: SlicedWork;
  /** Left out: every answer is computed. */
  readonly cache?: Cache;
  /** Left out: this process does not follow the database, and has no streams. */
  readonly signals?: ChangeSignals;
}
