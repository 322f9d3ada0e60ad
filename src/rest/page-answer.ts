import { boundedJson } from "../http/bounded-json.js";
import { tagged, untagged, type EncodedResponse } from "./cached-response.js";

/** Nothing but our own style sheet and, where a page keeps ticks, our own script. */
const policy = (scripts: boolean): string =>
  [
    "default-src 'none'",
    "style-src 'self'",
    "img-src 'self'",
    ...(scripts ? ["script-src 'self'"] : []),
    "form-action 'self'",
    "base-uri 'none'",
    "frame-ancestors 'none'",
  ].join("; ");

const headers = {
  // Prices and rules of today are in it, so it is asked for again each time; unchanged, it is not sent again.
  "cache-control": "no-cache",
  vary: "Accept-Language",
} as const;

export interface Page {
  readonly html: string;
  readonly status?: number;
  /** It loads the script that keeps ticks. */
  readonly scripts?: boolean;
}

/** A page of a route that is marked as one. */
export function pageAnswer({ html, status = 200, scripts = false }: Page): EncodedResponse {
  return written(html, status, {
    ...headers,
    "content-security-policy": policy(scripts),
    "content-type": "text/html; charset=utf-8",
  });
}

/** What other people's pages fetch. */
export function jsonAnswer(status: number, value: object): EncodedResponse {
  return written(boundedJson(value), status, {
    "cache-control": status === 200 ? "public, max-age=60, stale-while-revalidate=3600" : "no-store",
    "content-type": "application/json; charset=utf-8",
  });
}

const written = (text: string, status: number, fields: Readonly<Record<string, string>>): EncodedResponse =>
  status === 200 ? tagged(text, status, fields) : untagged(text, status, fields);
