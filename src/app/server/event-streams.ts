import type { FastifyInstance, FastifyReply } from "fastify";
import { PassThrough } from "node:stream";
import {
  eventStreamType,
  TooManyStreams,
  type EventStream,
  type StreamEnd,
  type WriteStreamEnd,
} from "../../http/event-stream.js";
import { QuotaExceeded, type RateLimit } from "../../services/access/rate-limit.js";
import { callerAddress } from "./caller-address.js";

declare module "fastify" {
  interface FastifyReply {
    /**
     * Answers with a stream of events, which begins with this text.
     * @throws TooManyStreams before anything is sent
     */
    openStream(beginning: string, writeEnd: WriteStreamEnd): EventStream;
    /** Milliseconds until it was answered by a stream; null: it is none. */
    streamedAfter: number | null;
  }
}

/** Milliseconds, but for the counts. */
export interface StreamLimits {
  /** Of one access token, or else of one address. */
  readonly perCaller: number;
  /** Of this process: some forty kilobytes each. */
  readonly inAll: number;
  /** Between two signs of life: proxies cut what is silent for a minute. */
  readonly heartbeat: number;
  /** Within which a reader takes something of what waits for it. */
  readonly stuck: number;
  /** Of one stream. Its reader goes on in another one: so nobody is held for ever whose network is gone without a word. */
  readonly longest: number;
  /** Of one that a token was shown for: a token that is revoked is good for no longer than that. */
  readonly longestOfToken: number;
  /** Between two charges. */
  readonly minute: number;
}

export const usualStreams: StreamLimits = {
  perCaller: 50,
  inAll: 2_000,
  heartbeat: 15_000,
  stuck: 30_000,
  longest: 30 * 60_000,
  longestOfToken: 5 * 60_000,
  minute: 60_000,
};

/** Points for each further minute of a stream, as much as asking once; the first is paid by its request. */
const pointsOfMinute = 500;
/** Milliseconds after which the reader of a stream that was ended comes back, and how much more at random, so that not all come at once. */
const comeBack = { after: 1_000, spread: 4_000 } as const;
/** The same where there is a reason to wait. */
const comeBackLater = 10_000;
/** Milliseconds that the reader of a stream has to take its end. */
const patience = 2_000;

interface StreamOptions {
  readonly limits: StreamLimits;
  readonly limit: RateLimit;
  /** Milliseconds of a clock that only goes forward. */
  readonly now: () => number;
  /** From 0 to 1. */
  readonly dice: () => number;
}

/** A stream with what is looked at from time to time. */
interface Held {
  look(now: number): void;
  end(why: StreamEnd): void;
  cut(): void;
}

/** Lets routes answer with streams of events, and holds every stream to its limits. They end when the application closes. */
export function addEventStreams(app: FastifyInstance, { limits, limit, now, dice }: StreamOptions): void {
  const open = new Set<Held>();
  const perCaller = new Map<string, number>();
  let isClosing = false;

  /** Returns what gives the place back. */
  const takePlace = (caller: string): (() => void) => {
    const ofCaller = perCaller.get(caller) ?? 0;
    if (ofCaller >= limits.perCaller) throw new TooManyStreams(true, limits.perCaller);
    if (open.size >= limits.inAll) throw new TooManyStreams(false, limits.inAll);
    perCaller.set(caller, ofCaller + 1);
    return () => {
      const left = (perCaller.get(caller) ?? 1) - 1;
      if (left === 0) perCaller.delete(caller);
      else perCaller.set(caller, left);
    };
  };

  function openStream(reply: FastifyReply, beginning: string, writeEnd: WriteStreamEnd): EventStream {
    const { request, raw } = reply;
    const { actor } = request;
    const address = callerAddress(request);
    const leave = takePlace(actor.kind === "TOKEN" ? `token ${actor.token}` : address);
    const body = new PassThrough();
    const over = new AbortController();
    const begun = now();
    // Not all at once, although many may have come back together.
    const most = actor.kind === "TOKEN" ? Math.min(limits.longest, limits.longestOfToken) : limits.longest;
    const longest = most * (0.75 + dice() / 4);
    let paidUntil = begun + limits.minute;
    let taken = { bytes: 0, at: begun };
    let lastSent = begun;

    const finish = (text: string): void => {
      if (over.signal.aborted) return;
      over.abort();
      body.end(text);
      setTimeout(cut, patience).unref();
    };
    const cut = (): void => {
      over.abort();
      if (!raw.writableFinished) raw.destroy();
    };
    const endAfter = (why: StreamEnd, retryMs: number): void => finish(writeEnd(why, Math.round(retryMs)));
    const end = (why: StreamEnd): void =>
      endAfter(
        why,
        (why === "UNAVAILABLE" || why === "FAULT" ? comeBackLater : comeBack.after) + dice() * comeBack.spread,
      );
    const charge = (points: number): boolean => {
      try {
        limit.charge(actor, address, points);
        reply.paid += points;
        return true;
      } catch (error) {
        if (!(error instanceof QuotaExceeded)) throw error;
        endAfter("BUDGET", error.retryAfter * 1_000 + dice() * comeBack.spread);
        return false;
      }
    };
    let room: Promise<void> | null = null;
    let makeRoom = (): void => undefined;
    const hasRoom = (): void => {
      makeRoom();
      room = null;
    };
    body.on("drain", hasRoom);
    over.signal.addEventListener("abort", hasRoom, { once: true });
    const send = async (text: string | Buffer): Promise<void> => {
      if (over.signal.aborted) return;
      lastSent = now();
      if (body.write(text)) return;
      await (room ??= new Promise((resolve) => (makeRoom = resolve)));
    };
    const held: Held = {
      end,
      cut,
      look: (at) => {
        const waiting = body.readableLength + body.writableLength + raw.writableLength;
        const bytes = (raw.socket?.bytesWritten ?? 0) - (raw.socket?.writableLength ?? 0);
        if (waiting === 0 || bytes !== taken.bytes) taken = { bytes, at };
        if (at - taken.at >= limits.stuck) return cut();
        if (over.signal.aborted) return;
        if (at - begun >= longest) return end("TIME");
        if (at >= paidUntil) {
          paidUntil += limits.minute;
          if (!charge(pointsOfMinute)) return;
        }
        if (waiting === 0 && at - lastSent >= limits.heartbeat) void send(":\n\n");
      },
    };
    open.add(held);
    raw.once("close", () => {
      over.abort();
      body.destroy();
      open.delete(held);
      leave();
    });
    reply.streamedAfter = reply.elapsedTime;
    void reply
      .headers({
        "content-type": eventStreamType,
        // Neither kept nor packed on the way, which would hold events back; the last is for proxies that collect answers.
        "cache-control": actor.kind === "ANYONE" ? "no-cache, no-transform" : "no-store, no-transform",
        "x-accel-buffering": "no",
      })
      .send(body);
    void send(beginning);
    if (isClosing) end("STOPPING");
    return { over: over.signal, send, charge, end, finish };
  }

  app.decorateReply("streamedAfter", null);
  app.decorateReply("openStream", function (this: FastifyReply, beginning: string, writeEnd: WriteStreamEnd) {
    return openStream(this, beginning, writeEnd);
  });
  const looks = setInterval(
    () => {
      const at = now();
      for (const held of open) held.look(at);
    },
    Math.min(1_000, limits.heartbeat / 4),
  );
  looks.unref();
  app.addHook("preClose", (done) => {
    isClosing = true;
    for (const held of open) held.end("STOPPING");
    done();
  });
  app.addHook("onClose", (_app, done) => {
    clearInterval(looks);
    done();
  });
}
