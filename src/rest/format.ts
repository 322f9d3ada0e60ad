import { memoizeLatest } from "../domain/memoize.js";
import { acceptedType } from "../http/accepted-type.js";
import { eventStreamType } from "../http/event-stream.js";
import type { IncomingHttpHeaders } from "node:http";

/** A form that an answer can be had in. */
export interface Format {
  /** Ending of the address that asks for it. */
  readonly suffix: string;
  /** Media type as sent. */
  readonly type: string;
  /** Other media types that ask for it. */
  readonly also?: readonly string[];
}

export const formats = {
  json: { suffix: "json", type: "application/json; charset=utf-8" },
  /** Parts of a plan, with what is repeated said once. */
  brief: { suffix: "brief", type: "application/vnd.prepwright.brief+json" },
  jsonLd: { suffix: "jsonld", type: "application/ld+json; charset=utf-8" },
  markdown: { suffix: "md", type: "text/markdown; charset=utf-8" },
  html: { suffix: "html", type: "text/html; charset=utf-8", also: ["application/xhtml+xml"] },
  calendar: { suffix: "ics", type: "text/calendar; charset=utf-8" },
  csv: { suffix: "csv", type: "text/csv; charset=utf-8" },
  text: { suffix: "txt", type: "text/plain; charset=utf-8" },
  events: { suffix: "events", type: eventStreamType },
  zip: { suffix: "zip", type: "application/zip" },
  jsonFeed: { suffix: "json", type: "application/feed+json; charset=utf-8", also: ["application/json"] },
  atom: { suffix: "atom", type: "application/atom+xml; charset=utf-8", also: ["application/xml", "text/xml"] },
} as const satisfies Record<string, Format>;

export type FormatName = keyof typeof formats;

const suffixes: ReadonlySet<string> = new Set(Object.values(formats).map(({ suffix }) => suffix));

/** An address below /v1 without the ending that asks for a form, and that ending; null if it has none. */
export function splitSuffix(url: string): { readonly url: string; readonly suffix: string | null } {
  const [, path = url, suffix = "", query = ""] = /^(\/v1\/[^?]*?)\.([a-z]+)(\?.*)?$/.exec(url) ?? [];
  return suffixes.has(suffix) ? { url: path + query, suffix } : { url, suffix: null };
}

/** Media type without its parameters. */
export const bareType = (type: string): string => type.split(";")[0] ?? type;

/** The form asked for: by the ending of the address, else by `Accept`, else the first. null: none of these. */
function chooseFormat<T extends Format>(
  offered: readonly T[],
  suffix: string | null,
  headers: IncomingHttpHeaders,
): T | null {
  if (suffix !== null) return offered.find((format) => format.suffix === suffix) ?? null;
  const byType = new Map(
    offered.flatMap((format) => [format.type, ...(format.also ?? [])].map((type) => [type, format])),
  );
  return byType.get(acceptedType(headers, [...byType.keys()]) ?? "") ?? null;
}

/** The most `Accept` headers whose choice is remembered, and how long one may be: browsers send few, and always the same. */
const keptChoices = { count: 64, characters: 200 };

/** `chooseFormat` among the same forms each time. */
export function formatChooser<T extends Format>(
  offered: readonly T[],
): (suffix: string | null, headers: IncomingHttpHeaders) => T | null {
  const choose = memoizeLatest(
    "accepted-types",
    keptChoices.count,
    (headers: IncomingHttpHeaders) => headers.accept ?? "*/*",
    (headers) => chooseFormat(offered, null, headers),
  );
  return (suffix, headers) =>
    suffix !== null || (headers.accept?.length ?? 0) > keptChoices.characters
      ? chooseFormat(offered, suffix, headers)
      : choose(headers);
}
