import type { Addresses } from "../services/as-text.js";
import type { Question } from "./endpoint.js";

interface Named {
  readonly publisher: string;
  readonly slug: string;
}

const part = encodeURIComponent;

export const planAddress = ({ publisher, slug }: Named): string => `/v1/plans/${part(publisher)}/${part(slug)}`;
export const publisherAddress = (publisher: string): string => `/v1/publishers/${part(publisher)}`;
export const componentAddress = ({ publisher, slug }: Named): string =>
  `/v1/components/${part(publisher)}/${part(slug)}`;
export const foodAddress = (slug: string): string => `/v1/foods/${part(slug)}`;

/** Where one answer can be had again, with what was asked of it. */
export function addressesOf({ origin, address }: Question, plan: Named, revision: number): Addresses {
  const at = address.indexOf("?");
  const asked = new URLSearchParams(at < 0 ? "" : address.slice(at));
  const numbered = new URLSearchParams(asked);
  numbered.set("revision", String(revision));
  const moving = new URLSearchParams(asked);
  moving.delete("revision");
  const here = origin + planAddress(plan);
  const withQuery = (path: string, query: URLSearchParams): string => (query.size === 0 ? path : `${path}?${query}`);
  return {
    plan: withQuery(here, moving),
    revision: withQuery(here, numbered),
    publisher: origin + publisherAddress(plan.publisher),
    list: withQuery(`${here}/list`, asked),
    calendar: withQuery(`${here}.ics`, asked),
  };
}
