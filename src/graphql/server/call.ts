import { GraphQLError, type OperationTypeNode } from "graphql";
import type { Caller } from "../../services/access/actor.js";
import type { Deps } from "../../services/deps.js";
import type { TimeLimit } from "../../services/time-limit.js";
import type { CompiledOperation } from "./compiled-operations.js";
import type { NamedPlan } from "../../services/usage/request-counts.js";
import type { MediaType } from "./media-type.js";
import type { AnswerKey } from "../../services/cache/cached-answer.js";
import type { AskedCost, Refusal } from "./refusal.js";

/** An operation as logs and figures know it. */
export interface ReportedOperation {
  readonly kind: `${OperationTypeNode}`;
  /** The caller's own word; null: it has none. */
  readonly operation: string | null;
  /** The operator has registered it. */
  readonly isRegistered: boolean;
  /** Points. */
  readonly cost: number;
  readonly hasErrors: false;
  /** Those that it asks for by name. */
  readonly plans: readonly NamedPlan[];
}

/** At whose expense. */
export interface Asked {
  /** Called with the points of an operation that may run, before any of it runs. It may throw: then it does not. */
  charge(cost: number): void;
  /** Called with the steps that computing took, whatever came of it. */
  chargeOwed(steps: number): void;
  /** Tells when whoever asks has gone. A mutation is finished all the same. */
  gone(): AbortSignal;
  /** Called with what an operation is, as soon as that is known, whether it may run or not. */
  report(operation: ReportedOperation): void;
}

/** Who asks, in which request, and what it may be answered with. */
export interface Asker extends Caller {
  readonly requestId: string;
  readonly deps: Deps;
}

/** Answers to anyone are everyone's. */
export const isShared = ({ actor }: Pick<Asker, "actor">): boolean => actor.kind === "ANYONE";

/** The operation of a request, once it is known to be a good one. */
interface ChosenOperation {
  readonly operation: CompiledOperation;
  /** The document was named by its hash: its address means the same for ever. */
  readonly isNamed: boolean;
  readonly isRegistered: boolean;
  /** The document is short enough for what is computed from it to be kept. */
  readonly mayBeKept: boolean;
}

/** What is known of an operation with its variables before it is run. */
interface PricedOperation {
  /** With defaults, and in the order of the schema: however they were sent, the same variables are the same text. */
  readonly variables: Readonly<Record<string, unknown>>;
  readonly reported: ReportedOperation;
  readonly cost: AskedCost;
}

/** One request on its way through Apollo Server: what the plugins are told of it, and what one of them finds out for the others. */
export interface Call {
  readonly asked: Asked;
  readonly asker: Asker;
  /** The form of the answer. */
  readonly type: MediaType;
  /** As it was sent; undefined: the request names no document by it. */
  readonly documentId: unknown;
  readonly limit: TimeLimit;
  /** `documents`. */
  chosen: ChosenOperation | null;
  /** `cost`. */
  priced: PricedOperation | null;
  /** What it is computed with; null: it is not computed. `answers`. */
  deps: Deps | null;
  /** Where its answer is kept; null: it is not. `answers`. */
  answerKey: AnswerKey | null;
  /** The answer as it goes out, where Apollo Server is not to write it. `answers`. */
  answer: Buffer | null;
  /** To be called when nothing more will come: then others that wait for the same answer go on. `answers`. */
  close(): void;
  /** `errors`. */
  hasErrors: boolean;
  /** What went wrong within Apollo Server or a plugin. `errors`. */
  fault: Error | null;
}

/** What Apollo Server hands from plugin to plugin; while a request is executed, it is the resolvers' `Context`, too. */
export interface CallContext {
  readonly call: Call;
}

/** Thrown by a plugin that knows why a request is not run; `errors` answers with it. Before `didResolveOperation` it would be a fault. */
export class Refused extends GraphQLError {
  constructor(readonly refusal: Refusal) {
    super(refusal.code);
  }
}
