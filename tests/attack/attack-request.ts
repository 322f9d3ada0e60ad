import type { FuzzedRequest } from "../fuzz/fuzzed-request.js";

/** A request that is meant to cost more than it is worth. */
export interface AttackRequest extends FuzzedRequest {
  readonly name: string;
  /** Sent with a token that may do everything. */
  readonly authorised?: true;
}

/** What exists in the service that is attacked. */
export interface Target {
  readonly publisher: string;
  readonly plans: readonly string[];
  readonly foods: readonly string[];
  readonly components: readonly string[];
}

/** With spaces between. */
export const times = (count: number, text: (at: number) => string, between = " "): string =>
  Array.from({ length: count }, (_, at) => text(at)).join(between);

export const listOf = <T>(count: number, of: (at: number) => T): readonly T[] =>
  Array.from({ length: count }, (_, at) => of(at));

/** The entry at a place, round and round. */
export function around<T>(entries: readonly T[], at: number): T {
  const entry = entries[at % entries.length];
  if (entry === undefined) throw new Error("there is nothing to attack");
  return entry;
}

const json = { "content-type": "application/json" };

export const get = (name: string, path: string, headers: Readonly<Record<string, string>> = {}): AttackRequest => ({
  ...{ name, method: "GET", path, headers, body: null },
});

export const post = (name: string, path: string, value: unknown, headers = json): AttackRequest => ({
  ...{ name, method: "POST", path, headers },
  body: typeof value === "string" ? Buffer.from(value) : Buffer.from(JSON.stringify(value)),
});

export const graphql = (
  name: string,
  query: string,
  variables: Readonly<Record<string, unknown>> = {},
): AttackRequest => post(name, "/graphql", { query, variables });
