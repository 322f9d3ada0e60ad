import { imageFormats } from "../../domain/model/image.js";
import { uploadedImageJson, uploadedImageSchema } from "../../exports/json/image.js";
import { FileTooLarge } from "../../services/imports/files/receive-file.js";
import { receiveImage, type ReceivedImage } from "../../services/images/receive-image.js";
import { TooManyUploads } from "../../services/images/upload-turns.js";
import { asJson, endpoint, found, refused, type Found, type Question } from "../endpoint.js";
import { one } from "../pagination.js";
import { inPath, inQuery } from "../parameter.js";
import { pointsOfUpload } from "../endpoint-cost.js";
import { badParameters, notFound, notProcessable, refusal } from "../refusal.js";
import { bytesOf } from "../upload-body.js";

const largest = 15 * 1024 * 1024;
const tooLarge = refused(
  refusal("too-large", "Pictures are taken up to 15 MiB.", { headers: { connection: "close" } }),
);

async function receive(question: Question): Promise<Found<ReceivedImage>> {
  const { deps, caller, query, body, path, bodyLength } = question;
  const publisher = path["publisher"] ?? "";
  if (bodyLength !== null && bodyLength > largest) return tooLarge;
  try {
    const received = await receiveImage(deps, caller, { publisher, file: one(query, "file"), bytes: bytesOf(body) });
    if (received.ok) return found(received.value);
    const { problems } = received;
    if (problems.some(({ code }) => code === "UNKNOWN_PUBLISHER")) {
      return refused(notFound("There is no such publisher.", problems));
    }
    return refused(
      problems.some(({ path: [name] }) => name === "file") ? badParameters(problems) : notProcessable(problems),
    );
  } catch (error) {
    if (error instanceof FileTooLarge) return tooLarge;
    if (!(error instanceof TooManyUploads)) throw error;
    const headers = { "retry-after": String(error.retryAfter), connection: "close" };
    return refused(
      refusal("overloaded", "Several pictures are coming in already. Try again in a moment.", { headers }),
    );
  }
}

export const imageEndpoint = endpoint(
  {
    method: "POST",
    path: "/v1/publishers/{publisher}/images",
    operationId: "uploadImage",
    tag: "publishers",
    summary: "Hand in a picture",
    description:
      "The body is the picture itself, up to 15 MiB and 50 million pixels: JPEG, PNG, WebP or AVIF. It is decoded, turned upright and" +
      " kept without what its camera wrote into it, and made in the widths 320, 640 and 1280 (never wider than it is) as" +
      ` ${imageFormats.join(", ")}. From then on documents mean it by \`file\`. The same bytes as before are the picture from before.`,
    parameters: [
      inPath("publisher", "Slug of the publisher."),
      inQuery("file", "What documents call it, such as `photos/soup.jpg`. Nothing yet if it is left out.", undefined, {
        example: "photos/soup.jpg",
      }),
    ],
    scope: "WRITE",
    upload: true,
    refusals: ["not-found", "not-processable", "too-large"],
    points: () => pointsOfUpload,
    caching: "NEVER",
  },
  receive,
  [
    asJson(uploadedImageSchema, "The picture.", ({ image, created }: ReceivedImage, { path, origin }) =>
      uploadedImageJson(origin, path["publisher"] ?? "", image, created),
    ),
  ],
);
