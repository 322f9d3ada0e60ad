import type { IncomingHttpHeaders } from "node:http";
import { BoundedCache } from "../../domain/bounded-cache.js";
import { acceptedType } from "../../http/accepted-type.js";

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

/** The form that the client likes best, by its weights; null: it accepts none that there is. */
export function chooseMediaType(headers: IncomingHttpHeaders): MediaType | null {
  const { accept = "" } = headers;
  const known = chosen.get(accept);
  if (known !== undefined) return known;
  const found = acceptedType(headers, offered);
  if (found === undefined) return null;
  const isJson = found.startsWith(json);
  const type = {
    contentType: withCharset(isJson ? json : newer),
    older: isJson && accept.toLowerCase().includes(json),
  };
  chosen.set(accept, type, { size: accept.length + 1 });
  return type;
}

/** By the header field `Accept`: there are few, and weighing one takes longer than a ready answer. */
const chosen = new BoundedCache<MediaType>("media-types", { max: 100, maxSize: 10_000, maxEntrySize: 500 });

/** A browser that follows a link would rather have a page. */
export const prefersPage = (headers: IncomingHttpHeaders): boolean =>
  (headers.accept ?? "").includes(page) && acceptedType(headers, [...offered, page]) === page;
