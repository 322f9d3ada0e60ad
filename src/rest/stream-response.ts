import { Readable } from "node:stream";
import type { FastifyReply, FastifyRequest } from "fastify";
import type { Found, Question } from "./endpoint.js";
import type { StreamedFile } from "./streamed-file.js";
import { cacheControlOf } from "./cached-response.js";
import { sendRefusal } from "./send-problem.js";

/** Sends it at the speed of whoever reads it. A fault on the way, or the end of the time, cuts the connection, so that part of a file is not taken for all of it. */
export async function streamResponse(
  find: (question: Question) => Promise<Found<StreamedFile>>,
  question: Question,
  { type, limit }: { readonly type: string; readonly limit: number },
  request: FastifyRequest,
  reply: FastifyReply,
): Promise<FastifyReply> {
  const found = await find(question);
  if (!found.ok) return sendRefusal(found.refusal, request, reply);
  const { name, points, bytes } = found.value;
  if (points > 0) reply.charge(points);
  reply.headers({
    ...{ "content-type": type, "cache-control": cacheControlOf("NEVER") },
    "content-disposition": `attachment; filename="${name}"`,
  });
  if (request.method === "HEAD") return reply.send();
  return reply.send(Readable.from(bytes, { objectMode: false, signal: AbortSignal.timeout(limit) }));
}
