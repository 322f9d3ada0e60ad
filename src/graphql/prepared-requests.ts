import type { GraphQLError } from "graphql";
import type { Deps } from "../services/deps.js";
import { answerPlace, type AnswerPlace } from "../services/memory/remember-answer.js";
import { inStage } from "../services/stage.js";
import {
  compiledOperations,
  keptDocuments,
  type CompiledDocument,
  type CompiledOperation,
} from "./compiled-operations.js";
import type { EngineOptions } from "./engine-options.js";
import { coded, codedWithoutSuggestion } from "./errors.js";
import { hashOf, knownDocuments } from "./known-documents.js";
import type { GraphqlRequest, ReadRequest } from "./read-request.js";
import { recentBytes } from "./recent-bytes.js";
import { refusal, type Refusal } from "./refusal.js";
import { createSchema } from "./schema.js";

/** A request as it came. */
export interface RawRequest {
  /** All of it that says what is asked: the same bytes are the same request for ever. */
  readonly bytes: Buffer;
  /** false: by a method that must change nothing. */
  readonly mayWrite: boolean;
  read(): ReadRequest;
}

/** An operation as logs and figures know it. */
export interface ToldOperation {
  readonly kind: "query" | "mutation";
  /** The caller's own word; null: it has none. */
  readonly operation: string | null;
  /** The operator has registered it. */
  readonly isRegistered: boolean;
  /** Points. */
  readonly cost: number;
  readonly hasErrors: false;
}

/** A request that was read, compiled, checked and priced: all that can be known of it whoever asks. */
export interface PreparedRequest {
  readonly ok: true;
  readonly operation: CompiledOperation;
  readonly variables: GraphqlRequest["variables"];
  /** The document was named by its hash. */
  readonly isNamed: boolean;
  readonly told: ToldOperation;
  /** Where its answer is kept; null: it is not. */
  readonly place: AnswerPlace | null;
}

export type Prepared = PreparedRequest | { readonly ok: false; readonly refusal: Refusal };

export interface PreparedRequests {
  prepare(request: RawRequest, deps: Deps): Prepared;
}

/**
 * Requests by their bytes: reading, compiling, checking and pricing is done once for each, as long as it is asked for. Refused ones,
 * those that are too dear and those that change something are prepared each time.
 */
export function preparedRequests({ costLimit, introspection, registered }: EngineOptions): PreparedRequests {
  const compiled = compiledOperations(createSchema(), { introspection });
  const shown = introspection ? coded : codedWithoutSuggestion;
  for (const source of registered ?? []) checkRegistered(source, compiled.compile(source));
  const documents = knownDocuments(registered ? new Map(registered.map((source) => [hashOf(source), source])) : null);
  // The same bytes in an address and in a body may mean something else.
  const inBodies = recentBytes<PreparedRequest>(keptDocuments);
  const inAddresses = recentBytes<PreparedRequest>(keptDocuments);

  const prepare = (request: GraphqlRequest, mayWrite: boolean, deps: Deps): Prepared => {
    const found = documents.find(request);
    if (!("source" in found)) return refused(found);
    const { source, isNamed, isRegistered } = found;
    const chosen = chooseOperation(
      inStage(deps, "compile", () => compiled.compile(source)),
      request.operationName,
      shown,
    );
    if (!("run" in chosen)) return refused(chosen);
    if (chosen.kind === "mutation" && !mayWrite) return refused(mutationByGet);
    const coerced = chosen.coerce(request.variables);
    if (!coerced.ok) {
      const code = "BAD_USER_INPUT";
      return refused({ code, errors: coerced.errors.map((error) => shown(error, code)), headers: {} });
    }
    const cost = chosen.cost(coerced.variables);
    const isQuery = chosen.kind === "query";
    if (isQuery && cost <= costLimit) found.keep();
    return {
      ok: true,
      operation: chosen,
      variables: request.variables,
      isNamed,
      told: { kind: chosen.kind, operation: chosen.name, isRegistered, cost, hasErrors: false },
      // With defaults, and in the order of the schema: however they were sent, the same variables are the same text.
      place:
        isQuery && chosen.aboutSchema === null && source.length <= keptDocuments.longest
          ? answerPlace("graphqlAnswers", `${chosen.id} ${JSON.stringify(coerced.variables)}`)
          : null,
    };
  };

  return {
    prepare: ({ bytes, mayWrite, read }, deps) => {
      const known = mayWrite ? inBodies : inAddresses;
      const found = known.get(bytes);
      if (found !== undefined) return found;
      const request = read();
      if (!request.ok) return request;
      const prepared = prepare(request.value, mayWrite, deps);
      if (prepared.ok && prepared.place !== null && prepared.told.cost <= costLimit) {
        known.keep(bytes, prepared);
      }
      return prepared;
    },
  };
}

const refused = (why: Refusal): Prepared => ({ ok: false, refusal: why });

const mutationByGet = refusal("METHOD_NOT_ALLOWED", "Send mutations by POST.", {}, { headers: { allow: "POST" } });

/** A registered document that is no good is a fault of the operator's: the service does not start with it. */
function checkRegistered(source: string, document: CompiledDocument): void {
  if (document.ok) return;
  const faults = document.errors.map(({ message }) => message).join(" ");
  throw new Error(`a registered document is refused: ${faults} It begins with: ${source.slice(0, 100)}`);
}

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
