import type { ReadRequest } from "./read-request.js";
import { refusal, type Refusal } from "./refusal.js";

/** What a request says, as GraphQL over HTTP has it. */
interface OperationRequest {
  readonly source: string | null;
  readonly documentId: unknown;
  /** undefined: there is one operation. */
  readonly operationName: string | undefined;
  readonly variables: Readonly<Record<string, unknown>>;
  readonly extensions: Readonly<Record<string, unknown>>;
}

/** Reads what Apollo Server reads of other operations, which it does not read of subscriptions. */
export function readOperationRequest({ search, body, documentId }: ReadRequest): OperationRequest | Refusal {
  const given = body === undefined ? ofAddress(search) : body;
  if (!isObject(given)) return refusal("BAD_REQUEST", "Send an object of JSON with `query` and `variables`.");
  const { query = null, operationName = null, variables = null, extensions = null } = given;
  if (query !== null && typeof query !== "string") return wrong("query", "a text");
  if (operationName !== null && typeof operationName !== "string") return wrong("operationName", "a text");
  if (variables !== null && !isObject(variables)) return wrong("variables", "an object of JSON");
  if (extensions !== null && !isObject(extensions)) return wrong("extensions", "an object of JSON");
  return {
    ...{ source: query, documentId: documentId ?? null, variables: variables ?? {}, extensions: extensions ?? {} },
    operationName: operationName === null || operationName === "" ? undefined : operationName,
  };
}

function ofAddress(search: string): Readonly<Record<string, unknown>> {
  const given = Object.fromEntries(new URLSearchParams(search));
  return Object.fromEntries(
    Object.entries(given).map(([name, value]) => [
      name,
      name === "variables" || name === "extensions" ? parsed(value) : value,
    ]),
  );
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    if (error instanceof SyntaxError) return text;
    throw error;
  }
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const wrong = (name: string, expected: string): Refusal =>
  refusal("BAD_REQUEST", `\`${name}\` must be ${expected}, or left out.`);
