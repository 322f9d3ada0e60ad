import type { Rules } from "../imports/rules/read-rules.js";
import type { Data } from "../persistence/data.js";

export type { Rules } from "../imports/rules/read-rules.js";
export type {
  FoodFilter,
  OwnedSlug,
  Page,
  PageRequest,
  PlanFilter,
  PublishedRevision,
  Publisher,
  RevisionRef,
  RevisionSummary,
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
  /** Published rules that come with this version: cautions, handling, allergens and diets. */
  readonly rules: Rules;
}
