import type { IncomingHttpHeaders } from "node:http";
import { promisify } from "node:util";
import { brotliCompress, constants, gzip } from "node:zlib";
import Negotiator from "negotiator";

/** Content codings (RFC 9110, 8.4.1) that answers are sent in, the one we prefer first. */
const codings = ["br", "gzip"] as const;
export type Coding = (typeof codings)[number];

/** Bytes below which an answer fits a packet or two as it is. */
const leastBytes = 1_000;
/** Codings of an `Accept-Encoding` that are looked at; a browser names four. */
const mostNamed = 20;
/** Answers that are compressed at a time in one process: each takes a core, and megabytes of memory. */
const mostAtATime = 2;
/** Those that wait for it; beyond them, answers are sent as they are. */
const mostWaiting = 30;

/** Texts; pictures and archives are compressed as they are. */
const isText = (type: string): boolean =>
  /^(?:text\/|application\/(?:[\w.-]+\+)?(?:json|xml)\b|image\/svg\+xml\b)/.test(type);

/** Whether an answer of this length and media type is worth compressing. */
export const isCompressible = (length: number, type: string): boolean => length >= leastBytes && isText(type);

/**
 * The coding to answer in (RFC 9110, 12.5.3); null: as it is. Only what says what it takes is sent something compressed: a client that says
 * nothing may be one that cannot unpack.
 */
export function acceptedCoding(headers: IncomingHttpHeaders): Coding | null {
  const named = headers["accept-encoding"];
  if (named === undefined) return null;
  // Of equal weight, the one named first is taken.
  const ours = (range: string): number => (range.trim().startsWith("br") ? 0 : 1);
  const accepted = String(named)
    .split(",", mostNamed)
    .toSorted((a, b) => ours(a) - ours(b))
    .join(",");
  const best = new Negotiator({ headers: { "accept-encoding": accepted } }).encodings([...codings, "identity"])[0];
  return codings.find((coding) => coding === best) ?? null;
}

const pack = { br: promisify(brotliCompress), gzip: promisify(gzip) };

/** At this quality brotli takes no longer than gzip, and what it makes is a quarter smaller. */
const packed = (body: Buffer, coding: Coding): Promise<Buffer> =>
  coding === "gzip"
    ? pack.gzip(body, { level: constants.Z_DEFAULT_COMPRESSION })
    : pack.br(body, {
        params: {
          [constants.BROTLI_PARAM_MODE]: constants.BROTLI_MODE_TEXT,
          [constants.BROTLI_PARAM_QUALITY]: 4,
          [constants.BROTLI_PARAM_SIZE_HINT]: body.length,
        },
      });

interface Packed {
  readonly done: Partial<Record<Coding, Buffer>>;
  readonly running: Partial<Record<Coding, Promise<Buffer>>>;
}

interface Compressor {
  /** The bytes compressed, if they are by now. They are known as long as the bytes themselves. */
  ready(body: Buffer, coding: Coding): Buffer | undefined;
  /** Compresses them; those who ask for the same meanwhile get the same. null: too many wait already. */
  compress(body: Buffer, coding: Coding, onDone: (bytes: number) => void): Promise<Buffer> | null;
}

export function openCompressor(work: typeof packed = packed): Compressor {
  const known = new WeakMap<Buffer, Packed>();
  const waiting: (() => void)[] = [];
  let running = 0;

  const turn = async (body: Buffer, coding: Coding): Promise<Buffer> => {
    if (running >= mostAtATime) await new Promise<void>((go) => waiting.push(go));
    else running += 1;
    try {
      return await work(body, coding);
    } finally {
      const next = waiting.shift();
      if (next === undefined) running -= 1;
      else next();
    }
  };
  const begin = async (
    body: Buffer,
    coding: Coding,
    { done, running: ongoing }: Packed,
    onDone: (bytes: number) => void,
  ): Promise<Buffer> => {
    try {
      const bytes = await turn(body, coding);
      done[coding] = bytes;
      onDone(bytes.length);
      return bytes;
    } finally {
      delete ongoing[coding];
    }
  };
  return {
    ready: (body, coding) => known.get(body)?.done[coding],
    compress: (body, coding, onDone) => {
      const here = known.get(body) ?? { done: {}, running: {} };
      known.set(body, here);
      const ongoing = here.running[coding];
      if (ongoing !== undefined) return ongoing;
      if (waiting.length >= mostWaiting) return null;
      return (here.running[coding] = begin(body, coding, here, onDone));
    },
  };
}

/** Of this process: its cores and memory are one. */
export const compressor = openCompressor();

/** Bytes that are compressed in one step of work. */
const bytesInStep = 80;

/** What compressing takes, in steps. */
export const stepsOfCompression = (bytes: number): number => Math.ceil(bytes / bytesInStep);
