import { refusal, type Refusal } from "./refusal.js";

/** What a request asks for, whichever way it came. */
export interface GraphqlRequest {
  /** The document; null: it is only named. */
  readonly source: string | null;
  /** Names the document by the hash of its text. */
  readonly documentId: string | null;
  readonly operationName: string | null;
  readonly variables: Readonly<Record<string, unknown>>;
  readonly extensions: Readonly<Record<string, unknown>>;
}

export type ReadRequest =
  { readonly ok: true; readonly value: GraphqlRequest } | { readonly ok: false; readonly refusal: Refusal };

type Members = Readonly<Record<string, unknown>>;

/** Reads a body that was JSON. */
export function readBody(body: unknown): ReadRequest {
  if (Array.isArray(body)) {
    return refused("Send one operation a request. Lists of operations are not taken.", "BATCHING_REFUSED");
  }
  if (!isObject(body)) return refused("The body must be a JSON object with a `query`.");
  return readMembers(body);
}

/** Reads the parameters of an address. Objects are JSON there. */
export function readParameters(parameters: Members): ReadRequest {
  const repeated = names.find((name) => Array.isArray(parameters[name]));
  if (repeated !== undefined) return refused(`Give \`${repeated}\` once.`);
  const members: Record<string, unknown> = { ...parameters };
  for (const name of ["variables", "extensions"]) {
    const text = parameters[name];
    if (typeof text !== "string" || text === "") continue;
    const value = parsed(text);
    if (value === undefined) return refused(`\`${name}\` must be a JSON object in the address.`);
    members[name] = value;
  }
  for (const name of names) if (members[name] === "") members[name] = null;
  return readMembers(members);
}

const names = ["query", "documentId", "operationName", "variables", "extensions"] as const;

function readMembers({
  query = null,
  documentId = null,
  operationName = null,
  variables = null,
  extensions = null,
}: Members): ReadRequest {
  if (query !== null && typeof query !== "string") return refused("`query` must be a text: a GraphQL document.");
  if (documentId !== null && typeof documentId !== "string") return refused("`documentId` must be a text.");
  if (operationName !== null && typeof operationName !== "string") return refused("`operationName` must be a text.");
  if (variables !== null && !isObject(variables)) return refused("`variables` must be an object.");
  if (extensions !== null && !isObject(extensions)) return refused("`extensions` must be an object.");
  return {
    ok: true,
    value: {
      source: query,
      documentId,
      operationName: operationName === "" ? null : operationName,
      variables: variables ?? {},
      extensions: extensions ?? {},
    },
  };
}

const isObject = (value: unknown): value is Members =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const refused = (message: string, code: "BAD_REQUEST" | "BATCHING_REFUSED" = "BAD_REQUEST"): ReadRequest => ({
  ok: false,
  refusal: refusal(code, message),
});

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
}
