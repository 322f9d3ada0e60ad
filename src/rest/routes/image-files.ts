import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { imageFormats } from "../../domain/model/image.js";
import { imageEndings, imageTypes, originalFormat } from "../../exports/image-address.js";
import { byteRange } from "../../http/byte-range.js";
import { isKnownTag } from "../../http/entity-tag.js";
import type { Deps } from "../../services/deps.js";
import { depsForActor } from "../../services/deps-for-actor.js";
import {
  findImageFile,
  findOriginalImage,
  type AskedImageFile,
  type ImageFileFound,
} from "../../services/images/find-image-file.js";
import { cacheControlOf } from "../cached-response.js";
import { pointsOfImage } from "../endpoint-cost.js";
import { notFound, removed } from "../refusal.js";
import { sendRefusal } from "../send-problem.js";

type ImageRequest = FastifyRequest<{
  Params: { readonly publisher: string; readonly hash: string; readonly file: string };
}>;

/**
 * Pictures as readers get them: by the hash of their content, in a width and a format; and as they are kept, for their publisher. Nothing else
 * is ever sent from here.
 */
export function registerImageFiles(app: FastifyInstance, deps: Deps): void {
  app.get(
    "/images/:publisher/:hash/:file",
    { config: { points: pointsOfImage } },
    async (request: ImageRequest, reply) => {
      const original = originalFormat(request.params.file);
      if (original !== null) return sendOriginal(deps, original, request, reply);
      const asked = askedFile(request);
      const file = asked === null ? "NOTHING" : await findImageFile(depsForActor(deps, request.actor), asked);
      if (asked === null || file === "NOTHING") return sendRefusal(nothing, request, reply);
      if (file === "REMOVED") return sendRefusal(gone, request, reply);
      return sendImage(file, { type: imageTypes[asked.format], caching: "FROZEN" }, request, reply);
    },
  );
}

async function sendOriginal(
  deps: Deps,
  format: keyof typeof imageTypes,
  request: ImageRequest,
  reply: FastifyReply,
): Promise<FastifyReply> {
  const { publisher, hash } = request.params;
  const file = await findOriginalImage(deps, request.actor, { publisher, hash, format });
  if (file === "NOTHING") return sendRefusal(nothing, request, reply);
  if (file === "REMOVED") return sendRefusal(gone, request, reply);
  return sendImage(file, { type: imageTypes[format], caching: "NEVER" }, request, reply);
}

const nothing = notFound("There is no such picture, or not in this width and format. Take addresses from the plan.");
const gone = removed("Its publisher removed this picture.");

/** null: no picture has such a name. */
function askedFile({ params: { publisher, hash, file } }: ImageRequest): AskedImageFile | null {
  const [, width, ending] = /^([1-9]\d{0,4})\.([a-z]{3,4})$/.exec(file) ?? [];
  const format = imageFormats.find((each) => imageEndings[each] === ending);
  return width === undefined || format === undefined ? null : { publisher, hash, width: Number(width), format };
}

async function sendImage(
  { sha256, size, bytes }: ImageFileFound,
  { type, caching }: { readonly type: string; readonly caching: "FROZEN" | "NEVER" },
  { headers }: FastifyRequest,
  reply: FastifyReply,
): Promise<FastifyReply> {
  const etag = `"${sha256}"`;
  reply.headers({ etag, "cache-control": cacheControlOf(caching), "accept-ranges": "bytes" });
  if (isKnownTag(headers["if-none-match"], etag)) return reply.code(304).send();
  // A part is worth having only of what the caller has the rest of (RFC 9110, 13.1.5).
  const isSame = headers["if-range"] === undefined || headers["if-range"] === etag;
  const range = isSame ? byteRange(headers.range, size) : null;
  if (range === "OUTSIDE") {
    return reply
      .code(416)
      .headers({ "content-range": `bytes */${size}`, "cache-control": cacheControlOf("NEVER") })
      .send();
  }
  const { from, to } = range ?? { from: 0, to: size - 1 };
  if (range !== null) reply.code(206).header("content-range", `bytes ${from}-${to}/${size}`);
  return reply.type(type).send(Buffer.from(await bytes(from, to)));
}
