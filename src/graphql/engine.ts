import type { GraphQLError } from "graphql";
import type { Caller } from "../services/actor.js";
import { DatabaseAway, noteAway } from "../services/database-away.js";
import type { Deps } from "../services/deps.js";
import { knownAnswer, rememberAnswer, type Computed } from "../services/memory/remember-answer.js";
import { inStage } from "../services/stage.js";
import { withinTime } from "../services/within-time.js";
import {
  compiledOperations,
  keptDocuments,
  type CompiledDocument,
  type CompiledOperation,
} from "./compiled-operations.js";
import { createContext } from "./context.js";
import { coded, codedWithoutSuggestion, shownFieldError } from "./errors.js";
import { mutationPatience, type EngineOptions } from "./engine-options.js";
import { hashOf, knownDocuments } from "./known-documents.js";
import type { GraphqlRequest } from "./read-request.js";
import { refusal, type AskedCost, type Refusal } from "./refusal.js";
import { createSchema } from "./schema.js";

/** What came of a request: an answer with data (or with the errors of fields in its place), or none. */
export type Outcome =
  /** JSON, as it goes out, and whether it holds errors of fields. */
  | {
      readonly kind: "ANSWERED";
      readonly body: Buffer;
      readonly hasErrors: boolean;
      /** It was asked for by the hash of its document, so its address means the same for ever. */
      readonly isNamed: boolean;
    }
  | { readonly kind: "REFUSED"; readonly refusal: Refusal };

/** By which method, and at whose expense. */
export interface Asked {
  /** false: by a method that must change nothing. */
  readonly mayWrite: boolean;
  /** Called with the points of an operation that may run, before any of it runs. It may throw: then it does not. */
  charge(cost: number): void;
  /** Tells when whoever asks has gone. A mutation is finished all the same. */
  gone(): AbortSignal;
  /** Called with what an operation is, as soon as that is known, whether it may run or not. */
  tell(operation: ToldOperation): void;
}

/** An operation as logs and figures know it. */
export interface ToldOperation {
  readonly kind: "query" | "mutation";
  /** The caller's own word; null: it has none. */
  readonly operation: string | null;
  /** The operator has registered it. */
  readonly isRegistered: boolean;
  readonly cost: number;
}

/** Who asks, in which request, and what it may be answered with. */
export interface Asker extends Caller {
  readonly requestId: string;
  readonly deps: Deps;
}

export interface Engine {
  answer(request: GraphqlRequest, asked: Asked, asker: Asker): Promise<Outcome>;
}

/**
 * The schema behind a request that was read: finds or compiles its operation, prices it, has it charged, and runs it, unless the
 * answer is known.
 */
export function createEngine({ costLimit, introspection, queryTime, registered }: EngineOptions): Engine {
  const compiled = compiledOperations(createSchema(), { introspection });
  const shown = introspection ? coded : codedWithoutSuggestion;
  for (const source of registered ?? []) checkRegistered(source, compiled.compile(source));
  const documents = knownDocuments(registered ? new Map(registered.map((source) => [hashOf(source), source])) : null);
  return {
    answer: async (request, { mayWrite, charge, gone, tell }, asker) => {
      const found = documents.find(request);
      if (!("source" in found)) return refused(found);
      const { source, isNamed, isRegistered } = found;
      const { operationName, variables } = request;
      const chosen = chooseOperation(
        inStage(asker.deps, "compile", () => compiled.compile(source)),
        operationName,
        shown,
      );
      if (!("run" in chosen)) return refused(chosen);
      if (chosen.kind === "mutation" && !mayWrite) {
        return refused(refusal("METHOD_NOT_ALLOWED", "Send mutations by POST.", {}, { headers: { allow: "POST" } }));
      }
      const coerced = chosen.coerce(variables);
      if (!coerced.ok) {
        const code = "BAD_USER_INPUT";
        return refused({ code, errors: coerced.errors.map((error) => shown(error, code)), headers: {} });
      }
      const cost = { asked: chosen.cost(coerced.variables), limit: costLimit };
      tell({ kind: chosen.kind, operation: chosen.name, isRegistered, cost: cost.asked });
      if (cost.asked > costLimit) return refused(tooDear(cost));
      charge(cost.asked);
      const isQuery = chosen.kind === "query";
      if (isQuery) found.keep();
      const { memory } = asker.deps;
      const isShared = isQuery && asker.actor.kind === "ANYONE" && source.length <= keptDocuments.longest;
      // With defaults, and in the order of the schema: however they were sent, the same variables are the same text.
      const key = `${chosen.id} ${JSON.stringify(coerced.variables)}`;
      const known = memory && isShared ? knownAnswer(memory, "graphqlAnswers", key, asker.deps) : undefined;
      if (known !== undefined) return { kind: "ANSWERED", body: known as Buffer, isNamed, hasErrors: false };
      let hasErrors = false;
      const body = await withinTime(
        isQuery ? queryTime : mutationPatience * queryTime,
        isQuery ? gone() : null,
        async (over) => {
          const compute = async (deps: Deps): Promise<Computed<Buffer>> => {
            const computed = await run(chosen, variables, cost, { ...asker, deps }, over);
            hasErrors = computed.hasErrors;
            return computed;
          };
          return memory && isShared
            ? rememberAnswer(memory, "graphqlAnswers", key, asker.deps, compute)
            : (await compute(asker.deps)).answer;
        },
      );
      return body === "ENDED" ? refused({ ...timedOut, cost }) : { kind: "ANSWERED", body, isNamed, hasErrors };
    },
  };
}

/**
 * Errors carry the id of their request, so that an answer with one is nobody else's.
 *
 * @throws DatabaseAway where nothing is left of the answer without the database
 */
async function run(
  operation: CompiledOperation,
  variables: GraphqlRequest["variables"],
  cost: AskedCost,
  { deps, requestId, actor }: Asker,
  over: AbortSignal,
): Promise<Computed<Buffer> & { readonly hasErrors: boolean }> {
  const { data = null, errors = [] } = await operation.run(variables, createContext(deps, requestId, actor));
  // What failed because it was ended is nobody's fault, and nobody's answer.
  if (over.aborted) return { answer: Buffer.alloc(0), hasErrors: true, bytes: null };
  const away = errors.map(({ originalError }) => originalError).find((error) => error instanceof DatabaseAway);
  if (away !== undefined) {
    if (isEmpty(data) && errors.every(({ originalError }) => originalError instanceof DatabaseAway)) throw away;
    noteAway(deps.log, requestId, away);
  }
  const told = errors.map((error) => shownFieldError(error, requestId, deps.log));
  const extensions = { cost };
  const result = told.length > 0 ? { errors: told, data, extensions } : { data, extensions };
  const answer = Buffer.from(JSON.stringify(result));
  const hasErrors = told.length > 0;
  return { answer, hasErrors, bytes: hasErrors ? null : answer.length };
}

const isEmpty = (data: Readonly<Record<string, unknown>> | null): boolean =>
  data === null || Object.values(data).every((field) => field === null);

/** A registered document that is no good is a fault of the operator's: the service does not start with it. */
function checkRegistered(source: string, document: CompiledDocument): void {
  if (document.ok) return;
  const faults = document.errors.map(({ message }) => message).join(" ");
  throw new Error(`a registered document is refused: ${faults} It begins with: ${source.slice(0, 100)}`);
}

const timedOut = refusal("TIMED_OUT", "This took too long and was ended. Ask for less, or again later.");

const tooDear = (cost: AskedCost): Refusal =>
  refusal(
    "COST_TOO_HIGH",
    `This may cost ${cost.asked} points; a request may cost ${cost.limit}. Ask for less: shorter pages, or several requests.`,
    { ...cost },
    { cost },
  );

const refused = (why: Refusal): Outcome => ({ kind: "REFUSED", refusal: why });

/** The operation of that name, or the only one. */
function chooseOperation(
  document: CompiledDocument,
  name: string | null,
  shown: typeof coded,
): CompiledOperation | Refusal {
  if (!document.ok) {
    const general = document.stage === "PARSE" ? "GRAPHQL_PARSE_FAILED" : "GRAPHQL_VALIDATION_FAILED";
    const codeOf = (error: GraphQLError) => ("limit" in error.extensions ? "TOO_LARGE" : general);
    const errors = document.errors.map((error) => shown(error, codeOf(error)));
    return { code: general, errors, headers: {} };
  }
  const { operations } = document;
  const [first, ...others] = operations;
  if (name === null && first !== undefined && others.length === 0) return first;
  const found = name === null ? undefined : operations.find((operation) => operation.name === name);
  if (found !== undefined) return found;
  const message =
    name !== null
      ? `The document has no operation named ${JSON.stringify(name)}.`
      : first === undefined
        ? "The document has no operation."
        : "The document has several operations. Say which by `operationName`.";
  return refusal("OPERATION_RESOLUTION_FAILURE", message);
}
