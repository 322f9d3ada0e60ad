import { boundedJson } from "../http/bounded-json.js";
import { tagged, untagged, type EncodedResponse } from "./cached-response.js";

/** OFFLINE: the page loads our own script, which keeps it for when there is no network. */
export type PageScripts = "NONE" | "OFFLINE";

/** Nothing but our own style sheet and, where a page keeps something on the device, our own script. */
const policy = (scripts: PageScripts): string =>
  [
    "default-src 'none'",
    "style-src 'self'",
    "img-src 'self'",
    ...(scripts === "OFFLINE" ? ["script-src 'self'", "worker-src 'self'", "connect-src 'self'"] : []),
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
  /** Left out: it loads none. */
  readonly scripts?: PageScripts;
}

/** A page of a route that is marked as one. */
export function pageAnswer({ html, status = 200, scripts = "NONE" }: Page): EncodedResponse {
  return written(html, status, {
    ...headers,
    "content-security-policy": policy(scripts),
    "content-type": "text/html; charset=utf-8",
  });
}

/** A page that tells of somebody's diets: nobody on its way keeps or lists it. */
export function privateAnswer({ html, status = 200, scripts = "NONE" }: Page): EncodedResponse {
  return untagged(html, status, {
    "cache-control": "no-store",
    vary: "Accept-Language",
    "content-security-policy": policy(scripts),
    "content-type": "text/html; charset=utf-8",
    "x-robots-tag": "noindex",
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
