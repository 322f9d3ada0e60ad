// @ts-nocheck
import type { RuleSet } from "../domain/plan/rule-set.js";
import type { Data } from "../persistence/data.js";

export type {
  AccessToken,
  AuditRecord,
  Author,
  Change,
  ChangeKind,
  FoodFilter,
  OwnedSlug,
  Page,
  PageRequest,
  PlanFilter,
  PublishedRevision,
  Publisher,
  RevisionRef,
  RevisionSummary,
  RuleSetSummary,
} from "../persistence/data.js";

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
  readonly clock: Clock;
  readonly log: Log;
  /** Rule sets that were read already, by id. A set never changes, so what is here is right. See `findRules`. */
  readonly knownRules: Map<string, RuleSet>;
}
