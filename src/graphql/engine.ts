import type { FormattedExecutionResult, GraphQLError } from "graphql";
import { compiledOperations, type CompiledDocument, type CompiledOperation } from "./compiled-operations.js";
import type { Context } from "./context.js";
import { coded, shownFieldError } from "./errors.js";
import type { GraphqlRequest } from "./read-request.js";
import { refusal, type Refusal } from "./refusal.js";
import { createSchema } from "./schema.js";

/** What came of a request: an answer with data (or with the errors of fields in its place), or none. */
export type Outcome =
  | { readonly kind: "ANSWERED"; readonly result: FormattedExecutionResult }
  | { readonly kind: "REFUSED"; readonly refusal: Refusal };

export interface Engine {
  /** `mayWrite` false: by a method that must change nothing. */
  answer(request: GraphqlRequest, mayWrite: boolean, context: Context): Promise<Outcome>;
}

/** The schema behind a request that was read: finds or compiles its operation, and runs it. */
export function createEngine(): Engine {
  const compiled = compiledOperations(createSchema());
  return {
    answer: async ({ source, operationName, variables }, mayWrite, context) => {
      if (source === null) return refused(refusal("BAD_REQUEST", "Send a GraphQL document as `query`."));
      const chosen = chooseOperation(compiled.compile(source), operationName);
      if (!("run" in chosen)) return refused(chosen);
      if (chosen.kind === "mutation" && !mayWrite) {
        return refused(refusal("METHOD_NOT_ALLOWED", "Send mutations by POST.", {}, { headers: { allow: "POST" } }));
      }
      const coerced = chosen.coerce(variables);
      if (!coerced.ok) {
        const code = "BAD_USER_INPUT";
        return refused({ code, errors: coerced.errors.map((error) => coded(error, code)), headers: {} });
      }
      const { data = null, errors = [] } = await chosen.run(variables, context);
      const shown = errors.map((error) => shownFieldError(error, context.requestId, context.deps.log));
      return { kind: "ANSWERED", result: shown.length > 0 ? { errors: shown, data } : { data } };
    },
  };
}

const refused = (why: Refusal): Outcome => ({ kind: "REFUSED", refusal: why });

/** The operation of that name, or the only one. */
function chooseOperation(document: CompiledDocument, name: string | null): CompiledOperation | Refusal {
  if (!document.ok) {
    const general = document.stage === "PARSE" ? "GRAPHQL_PARSE_FAILED" : "GRAPHQL_VALIDATION_FAILED";
    const codeOf = (error: GraphQLError) => ("limit" in error.extensions ? "TOO_LARGE" : general);
    const errors = document.errors.map((error) => coded(error, codeOf(error)));
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
