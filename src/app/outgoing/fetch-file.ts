import type { IncomingMessage } from "node:http";
import { request as plainRequest } from "node:http";
import { request as secureRequest } from "node:https";
import { pipeline } from "node:stream";
import { createGunzip } from "node:zlib";
import { FileNotHad, type Passing } from "../../services/imports/files/collect-file.js";
import type { FoundFile } from "../../services/imports/files/file-sources.js";
import type { FileTags } from "../../services/deps.js";
import { isPublicAddress, literalAddress } from "../../services/webhooks/webhook-address.js";
import { PrivateAddress, publicLookup } from "./send-webhook.js";

/** Milliseconds that a fetch may take from beginning to end, and that it may be silent. */
const fetchTimes = { whole: 600_000, silent: 30_000 } as const;

/** The most times an address may send on to another. */
const mostHops = 5;

/** The most that a compressed file may grow, beyond its first megabytes: real tables shrink to a tenth or a fiftieth. */
const bomb = { ratio: 200, from: 16 * 1024 * 1024 } as const;

const anyTime: Passing = { retryAfter: null };

interface FetchOptions {
  /** Also from http: and from private networks; for tests. */
  readonly allowPrivate?: boolean;
  readonly whole?: number;
  readonly silent?: number;
}

/**
 * Fetches a file if it has changed (RFC 9110, 13.1): null where it has not. The address connected to is the one that was checked,
 * at every hop anew; an address may send on to its own host and to those named.
 */
export async function fetchFile(
  address: string,
  hosts: readonly string[],
  known: FileTags | null,
  options: FetchOptions = {},
): Promise<FoundFile | null> {
  const signal = AbortSignal.timeout(options.whole ?? fetchTimes.whole);
  const first = new URL(address);
  const allowed = new Set([first.hostname, ...hosts]);
  let url = first;
  for (let hop = 0; hop <= mostHops; hop += 1) {
    const answer = await ask(url, known, options, signal);
    const { statusCode: status = 0, headers } = answer;
    if (status === 304) {
      answer.resume();
      return null;
    }
    if (status === 200) {
      const name = decodedName(first);
      const tags = { etag: headers.etag ?? null, lastModified: headers["last-modified"] ?? null };
      return { name, bytes: bytesOf(answer), tags };
    }
    answer.destroy();
    const { location } = headers;
    if (![301, 302, 303, 307, 308].includes(status) || location === undefined) {
      const isPassing = status >= 500 || status === 408 || status === 429;
      const passing = isPassing ? { retryAfter: headers["retry-after"] ?? null } : null;
      throw new FileNotHad(`the address answered ${String(status)}`, passing);
    }
    if (!URL.canParse(location, url.href)) throw new FileNotHad("the address redirects to an invalid address");
    url = new URL(location, url);
    if (!allowed.has(url.hostname)) {
      throw new FileNotHad(`the address redirects to ${url.hostname}, which the feed does not name among its hosts`);
    }
  }
  throw new FileNotHad(`the address redirects more than ${String(mostHops)} times`);
}

/**
 * The same words, and the same tries, for a name that there is not, a machine that does not answer, a network that is not to be asked: else a feed would
 * tell its keeper what there is in the network of the service. The log says which.
 */
const unreachable = (why: Error): FileNotHad => new FileNotHad("the address cannot be reached", anyTime, why);

function ask(url: URL, known: FileTags | null, options: FetchOptions, signal: AbortSignal): Promise<IncomingMessage> {
  const allowPrivate = options.allowPrivate ?? false;
  const literal = literalAddress(url);
  if (url.protocol !== "https:" && !(allowPrivate && url.protocol === "http:")) {
    return Promise.reject(new FileNotHad("only https: addresses are fetched"));
  }
  if (!allowPrivate && literal !== null && !isPublicAddress(literal)) {
    return Promise.reject(unreachable(new PrivateAddress()));
  }
  const send = url.protocol === "https:" ? secureRequest : plainRequest;
  const headers = {
    accept: "*/*",
    "accept-encoding": "gzip, identity",
    "user-agent": "Prepwright",
    ...(known?.etag ? { "if-none-match": known.etag } : {}),
    ...(known?.lastModified ? { "if-modified-since": known.lastModified } : {}),
  };
  return new Promise((settled, failed) => {
    const sending = send(url, {
      method: "GET",
      agent: false,
      headers,
      signal,
      ...(allowPrivate ? {} : { lookup: publicLookup }),
    });
    sending.setTimeout(options.silent ?? fetchTimes.silent, () =>
      sending.destroy(new Error("no data arrived for too long")),
    );
    sending.on("response", settled);
    sending.on("error", (error) => failed(unreachable(error)));
    sending.end();
  });
}

/** The bytes, unpacked. What unpacks to far more than any table does is given up. */
async function* bytesOf(answer: IncomingMessage): AsyncGenerator<Uint8Array> {
  const encoding = (answer.headers["content-encoding"] ?? "identity").toLowerCase();
  if (encoding !== "gzip" && encoding !== "identity") {
    answer.destroy();
    throw new FileNotHad(`the file is compressed as ${encoding}, which was not asked for`);
  }
  let packed = 0;
  let unpacked = 0;
  answer.on("data", (piece: Uint8Array) => {
    packed += piece.length;
  });
  answer.pause();
  const stream: AsyncIterable<Uint8Array> =
    encoding === "gzip" ? pipeline(answer, createGunzip(), () => undefined) : answer;
  try {
    for await (const piece of stream) {
      unpacked += piece.length;
      if (unpacked > bomb.from && unpacked > packed * bomb.ratio) {
        answer.destroy();
        throw new FileNotHad(`the file expands to more than ${String(bomb.ratio)} times its size`);
      }
      yield piece;
    }
  } catch (error) {
    if (error instanceof FileNotHad || !(error instanceof Error)) throw error;
    throw new FileNotHad(`the file was truncated: ${error.message}`, anyTime);
  } finally {
    answer.destroy();
  }
}

function decodedName({ hostname, pathname }: URL): string {
  const last = pathname.split("/").at(-1) ?? "";
  return last === "" ? hostname : last.slice(0, 200);
}
