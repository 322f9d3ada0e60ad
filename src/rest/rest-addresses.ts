import { planAddress, type Addresses } from "../exports/addresses.js";
import { planPath, publisherPath } from "../exports/page/page-links.js";
import type { Question } from "./endpoint.js";

/** Where one answer can be had again, with what was asked of it. */
export function addressesOf(
  { origin, address }: Question,
  plan: { readonly publisher: string; readonly slug: string },
  revision: number,
): Addresses {
  const at = address.indexOf("?");
  const asked = new URLSearchParams(at < 0 ? "" : address.slice(at));
  // Only the mail asks for them.
  asked.delete("pictures");
  const numbered = new URLSearchParams(asked);
  numbered.set("revision", String(revision));
  const moving = new URLSearchParams(asked);
  moving.delete("revision");
  const page = origin + planPath(plan);
  const here = origin + planAddress(plan);
  const withQuery = (path: string, query: URLSearchParams): string => (query.size === 0 ? path : `${path}?${query}`);
  return {
    plan: withQuery(page, moving),
    revision: withQuery(page, numbered),
    publisher: origin + publisherPath(plan.publisher),
    list: withQuery(`${here}/list.md`, asked),
    calendar: withQuery(`${here}.ics`, asked),
  };
}
