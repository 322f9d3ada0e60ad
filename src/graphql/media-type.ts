import Negotiator from "negotiator";
import type { IncomingHttpHeaders } from "node:http";

/** The form of an answer. */
export interface MediaType {
  /** As sent. */
  readonly contentType: string;
  /** The client names `application/json`, and so may look into answers of status 200 alone. Who accepts anything is not meant. */
  readonly older: boolean;
}

const newer = "application/graphql-response+json";
const json = "application/json";
const page = "text/html";
const withCharset = (type: string): string => `${type}; charset=utf-8`;

/** Of equal weight and equally precise, the first is taken. */
const offered = [json, withCharset(json), newer, withCharset(newer)];

/** An empty `Accept` says as little as none. */
const best = ({ accept }: IncomingHttpHeaders, types: readonly string[]): string | undefined =>
  new Negotiator({ headers: { accept: accept === "" ? undefined : accept } }).mediaTypes([...types])[0];

/** The form that the client likes best, by its weights; null: it accepts none that there is. */
export function chooseMediaType(headers: IncomingHttpHeaders): MediaType | null {
  const found = best(headers, offered);
  if (found === undefined) return null;
  const isJson = found.startsWith(json);
  return {
    contentType: withCharset(isJson ? json : newer),
    older: isJson && (headers.accept ?? "").toLowerCase().includes(json),
  };
}

/** A browser that follows a link would rather have a page. */
export const prefersPage = (headers: IncomingHttpHeaders): boolean =>
  (headers.accept ?? "").includes(page) && best(headers, [...offered, page]) === page;
