import { boundedJson } from "../http/bounded-json.js";
import { cacheControlOf, tagged, untagged, type EncodedResponse } from "./cached-response.js";

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

const headersOf = (scripts: PageScripts): Readonly<Record<string, string>> => ({
  vary: "Accept-Language",
  "content-security-policy": policy(scripts),
  "content-type": "text/html; charset=utf-8",
});

export interface Page {
  readonly html: string;
  readonly status?: number;
  /** Left out: it loads none. */
  readonly scripts?: PageScripts;
  /** BCP 47 tags of what it is written in (RFC 9110, 8.5); left out: it is not said. */
  readonly languages?: readonly string[];
}

/** A page of a route that is marked as one. */
export const pageAnswer = ({ html, status = 200, scripts = "NONE", languages = [] }: Page): EncodedResponse =>
  // Prices and rules of today are in it, so it is asked for again each time; unchanged, it is not sent again.
  written(html, status, { ...headersOf(scripts), ...inLanguages(languages), "cache-control": "no-cache" });

/** A page that tells of somebody's diets: nobody on its way keeps or lists it. */
export const privateAnswer = ({ html, status = 200, scripts = "NONE", languages = [] }: Page): EncodedResponse =>
  untagged(html, status, {
    ...headersOf(scripts),
    ...inLanguages(languages),
    "cache-control": cacheControlOf("NEVER"),
    "x-robots-tag": "noindex",
  });

const inLanguages = (languages: readonly string[]): Readonly<Record<string, string>> =>
  languages.length === 0 ? {} : { "content-language": languages.join(", ") };

/** What other people's pages fetch. */
export function jsonAnswer(status: number, value: object): EncodedResponse {
  return written(boundedJson(value), status, {
    "cache-control": cacheControlOf(status === 200 ? "LIVE" : "NEVER"),
    "content-type": "application/json; charset=utf-8",
  });
}

const written = (text: string, status: number, fields: Readonly<Record<string, string>>): EncodedResponse =>
  status === 200 ? tagged(text, status, fields) : untagged(text, status, fields);
