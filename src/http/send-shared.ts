import type { FastifyReply, FastifyRequest } from "fastify";
import { acceptedCoding, compressor, isCompressible, stepsOfCompression, type Coding } from "./compression.js";
import { isKnownTag } from "./entity-tag.js";

/** An answer that is the same for everybody who asks the same. */
interface SharedAnswer {
  readonly body: Buffer;
  readonly type: string;
  /** null: it is not asked for again. */
  readonly etag: string | null;
  /** What it varies by beside the coding; null: nothing. */
  readonly vary: string | null;
  /** Told how many bytes are held with it from now on. */
  onCompressed(bytes: number): void;
}

type Sent = FastifyReply | Promise<FastifyReply>;

/**
 * Sends it compressed to who takes it so, or 304 to who has it. What came with a token is never sent so, nor what was made for one caller: the
 * length of a compressed answer tells of what is in it.
 */
export function sendShared(answer: SharedAnswer, request: FastifyRequest, reply: FastifyReply): Sent {
  const { body, type, etag, vary, onCompressed } = answer;
  const send = (bytes: Buffer, coding: Coding | null): FastifyReply => {
    if (etag !== null) {
      const tag = coding === null ? etag : tagInCoding(etag, coding);
      void reply.header("etag", tag);
      if (isKnownTag(request.headers["if-none-match"], tag)) return reply.code(304).send();
    }
    if (coding !== null) void reply.header("content-encoding", coding);
    return reply.header("content-type", type).send(bytes);
  };
  const varies = request.actor.kind === "ANYONE" && isCompressible(body.length, type);
  const fields = [...(vary === null ? [] : [vary]), ...(varies ? ["Accept-Encoding"] : [])];
  if (fields.length > 0) void reply.header("vary", fields.join(", "));
  const coding = varies ? acceptedCoding(request.headers) : null;
  if (coding === null) return send(body, null);
  if (etag !== null && isKnownTag(request.headers["if-none-match"], tagInCoding(etag, coding)))
    return send(body, coding);
  const ready = compressor.ready(body, coding);
  if (ready !== undefined) return send(ready, coding);
  const compressed = compressor.compress(body, coding, onCompressed);
  if (compressed === null) return send(body, null);
  reply.chargeOwed(stepsOfCompression(body.length));
  return compressed.then((bytes) => send(bytes, coding));
}

/** Of the same answer in a coding: a strong tag is of the bytes that are sent (RFC 9110, 8.8.3). */
const tagInCoding = (etag: string, coding: Coding): string => etag.replace(/"$/, `-${coding}"`);
