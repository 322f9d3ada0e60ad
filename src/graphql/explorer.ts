import { existsSync, readdirSync, readFileSync } from "node:fs";
import { extname, join } from "node:path";
import { gunzipSync } from "node:zlib";
import type { FastifyReply, FastifyRequest } from "fastify";
import Negotiator from "negotiator";

/** The page a browser gets at the endpoint, and the files it loads. */
export interface Explorer {
  sendPage(reply: FastifyReply): FastifyReply;
  sendAsset(name: string, request: FastifyRequest, reply: FastifyReply): FastifyReply | void;
}

const types: Readonly<Record<string, string>> = {
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".ttf": "font/ttf",
  ".woff2": "font/woff2",
  ".svg": "image/svg+xml",
};

/** The editor writes style elements while it runs, hence inline styles; scripts come from here and nowhere else. */
const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "font-src 'self' data:",
  "img-src 'self' data:",
  "connect-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join("; ");

/** Opens a folder that `scripts/bundle-explorer.mjs` wrote; null if it was never built. Files are read when asked for. */
export function openExplorer(folder: string): Explorer | null {
  const page = join(folder, "index.html");
  if (!existsSync(page)) return null;
  // Only names that stood in the folder at the start are served, so no name can lead out of it. Most are kept compressed.
  const files = new Map(
    readdirSync(folder).flatMap((file) => {
      const name = file.replace(/\.gz$/, "");
      const type = types[extname(name)];
      return type === undefined ? [] : [[name, { path: join(folder, file), type, packed: name !== file }] as const];
    }),
  );
  return {
    sendPage: (reply) =>
      reply
        .header("content-security-policy", policy)
        .header("cross-origin-embedder-policy", "require-corp")
        .header("cross-origin-opener-policy", "same-origin")
        .header("cross-origin-resource-policy", "same-origin")
        .header("x-permitted-cross-domain-policies", "none")
        .header("permissions-policy", "camera=(), geolocation=(), microphone=()")
        .header("cache-control", "no-cache")
        .header("vary", "accept")
        .type("text/html; charset=utf-8")
        .send(readFileSync(page)),
    sendAsset: (name, request, reply) => {
      const file = files.get(name);
      if (file === undefined) return reply.callNotFound();
      const bytes = readFileSync(file.path);
      reply.header("cache-control", "public, max-age=31536000, immutable").type(file.type);
      if (!file.packed) return reply.send(bytes);
      reply.header("vary", "accept-encoding");
      return takesGzip(request) ? reply.header("content-encoding", "gzip").send(bytes) : reply.send(gunzipSync(bytes));
    },
  };
}

/** Only what names it: a client that says nothing may be one that cannot unpack. */
const takesGzip = ({ headers }: FastifyRequest): boolean =>
  headers["accept-encoding"] !== undefined && new Negotiator({ headers }).encodings(["gzip"]).length > 0;
