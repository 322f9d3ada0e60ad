import { existsSync, readdirSync, readFileSync } from "node:fs";
import { extname, join } from "node:path";
import type { FastifyReply, FastifyRequest } from "fastify";
import { sendShared, tagged, type EncodedResponse } from "./cached-response.js";

type Sent = FastifyReply | Promise<FastifyReply> | void;

/** Files that pages load, each to be kept for ever under the hash in its name. */
export interface PageAssets {
  /** Addresses; null where the file was not built. */
  readonly style: string | null;
  readonly ticks: string | null;
  readonly cook: string | null;
  /** The script that answers for pages when there is no network; null where it was not built. */
  readonly offline: string | null;
  send(name: string, request: FastifyRequest, reply: FastifyReply): Sent;
  /** The element for other people's pages. Its address stays, so it is kept for a day and asked for again then. */
  sendEmbed(request: FastifyRequest, reply: FastifyReply): Sent;
}

const types: Readonly<Record<string, string>> = {
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
};

export const assetsPath = "/p-assets";

/** Three packets on a shelf. Browsers ask for one at the second address where a page, or an answer that is none, names none. */
export const iconPaths = ["/favicon.svg", "/favicon.ico"] as const;

export const icon = tagged(
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 16 16"><rect width="16" height="16" rx="3" fill="#2c5b35"/><path fill="#f8faf2" d="M3 4h2v7H3zM7 5h2v6H7zM11 3h2v8h-2zM2 12h12v1H2z"/></svg>\n',
  200,
  { "cache-control": "public, max-age=86400", "content-type": "image/svg+xml" },
);

/** Opens a folder that `scripts/bundle-browser.mjs` wrote. Without it the pages are plain, and all there. */
export function openPageAssets(folder: string): PageAssets {
  // Only names that stood in the folder at the start are served, so no name can lead out of it.
  const names = existsSync(folder) ? readdirSync(folder).filter((name) => types[extname(name)] !== undefined) : [];
  const addressOf = (start: string, end: string): string | null => {
    const name = names.find((each) => each.startsWith(`${start}-`) && each.endsWith(end));
    return name === undefined ? null : `${assetsPath}/${name}`;
  };
  // Read once: they are small, and compressed once.
  const files = new Map(
    names.map((name): readonly [string, EncodedResponse] => [
      name,
      tagged(readFileSync(join(folder, name), "utf8"), 200, {
        "cache-control": "public, max-age=31536000, immutable",
        "content-type": types[extname(name)] ?? "application/octet-stream",
      }),
    ]),
  );
  const send = (file: EncodedResponse | undefined, request: FastifyRequest, reply: FastifyReply): Sent =>
    file === undefined ? reply.callNotFound() : sendShared(file, request, reply);
  const embed = names.includes("embed.js")
    ? tagged(readFileSync(join(folder, "embed.js"), "utf8"), 200, {
        "cache-control": "public, max-age=86400, stale-while-revalidate=604800",
        "content-type": "text/javascript; charset=utf-8",
      })
    : undefined;
  return {
    style: addressOf("page", ".css"),
    ticks: addressOf("ticks", ".js"),
    cook: addressOf("cook", ".js"),
    offline: names.includes("offline.js") ? readFileSync(join(folder, "offline.js"), "utf8") : null,
    send: (name, request, reply) => send(files.get(name), request, reply),
    sendEmbed: (request, reply) => send(embed, request, reply),
  };
}
