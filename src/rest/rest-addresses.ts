import type { Addresses } from "../exports/addresses.js";
import type { Question } from "./endpoint.js";

interface Named {
  readonly publisher: string;
  readonly slug: string;
}

const part = encodeURIComponent;

export const planAddress = ({ publisher, slug }: Named): string => `/v1/plans/${part(publisher)}/${part(slug)}`;
export const publisherAddress = (publisher: string): string => `/v1/publishers/${part(publisher)}`;
/** Pages for people. */
export const publisherPage = (publisher: string): string => `/p/${part(publisher)}`;
export const pageAddress = ({ publisher, slug }: Named): string => `${publisherPage(publisher)}/${part(slug)}`;

/** Where one answer can be had again, with what was asked of it. */
export function addressesOf({ origin, address }: Question, plan: Named, revision: number): Addresses {
  const at = address.indexOf("?");
  const asked = new URLSearchParams(at < 0 ? "" : address.slice(at));
  // Only the mail asks for them.
  asked.delete("pictures");
  const numbered = new URLSearchParams(asked);
  numbered.set("revision", String(revision));
  const moving = new URLSearchParams(asked);
  moving.delete("revision");
  const page = origin + pageAddress(plan);
  const here = origin + planAddress(plan);
  const withQuery = (path: string, query: URLSearchParams): string => (query.size === 0 ? path : `${path}?${query}`);
  return {
    plan: withQuery(page, moving),
    revision: withQuery(page, numbered),
    publisher: origin + publisherPage(plan.publisher),
    list: withQuery(`${here}/list.md`, asked),
    calendar: withQuery(`${here}.ics`, asked),
  };
}
