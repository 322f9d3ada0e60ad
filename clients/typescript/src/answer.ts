import type { components } from "./generated/rest.js";

/** Why there is no answer (RFC 9457): `title` and `detail` for people, `problems` with everything that is wrong. */
export type Problem = components["schemas"]["Problem"];

export interface Failure {
  readonly ok: false;
  readonly problem: Problem;
  /** Seconds after which the service asks to be asked again, after 429 and 503; null: it does not say. */
  readonly retryAfter: number | null;
}

/** What was asked for, or why it is not there. Only a service that cannot be reached at all throws, as `fetch` does. */
export type Answer<Data> = { readonly ok: true; readonly data: Data } | Failure;

interface Fetched<Data> {
  readonly data?: Data;
  readonly error?: unknown;
  readonly response: Response;
}

const isProblem = (value: unknown): value is Problem =>
  typeof value === "object" && value !== null && "type" in value && "title" in value && "problems" in value;

/** Of an answer that is none of the service's own, such as one of a proxy before it. */
const foreignProblem = (response: Response, text: string): Problem => ({
  type: "about:blank",
  title: response.statusText === "" ? `HTTP ${response.status}` : response.statusText,
  status: response.status,
  detail: text.slice(0, 500),
  instance: response.url,
  requestId: response.headers.get("x-request-id") ?? "",
  problems: [],
});

export const textOf = (value: unknown): string => (typeof value === "string" ? value : (JSON.stringify(value) ?? ""));

export function failureOf(response: Response, error: unknown): Failure {
  const seconds = response.headers.get("retry-after");
  return {
    ok: false,
    problem: isProblem(error) ? error : foreignProblem(response, textOf(error)),
    retryAfter: seconds !== null && /^\d{1,9}$/.test(seconds) ? Number(seconds) : null,
  };
}

export async function answerOf<Data>(asking: Promise<Fetched<Data>>): Promise<Answer<Data>> {
  const { data, error, response } = await asking;
  return response.ok && data !== undefined ? { ok: true, data } : failureOf(response, error);
}
