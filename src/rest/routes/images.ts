import { imageFormats } from "../../domain/model/image.js";
import type { Problem } from "../../domain/problem.js";
import { uploadedImageJson, uploadedImageSchema } from "../../exports/json/image.js";
import { largestImageFile, receiveImage, type ReceivedImage } from "../../services/images/receive-image.js";
import { TooManyUploads } from "../../services/images/upload-turns.js";
import { asJson, endpoint, found, refused, type Found, type Question } from "../endpoint.js";
import { inPath, inQuery, one } from "../parameter.js";
import { pointsOfUpload } from "../endpoint-cost.js";
import { badParameters, notFound, notProcessable, refusal, type Refusal } from "../refusal.js";
import { mebibytes, readUpload } from "../upload-body.js";

const pictures = { what: "Pictures", largest: largestImageFile } as const;

async function receive(question: Question): Promise<Found<ReceivedImage>> {
  const { deps, caller, query, path } = question;
  const file = one(query, "file");
  try {
    return await readUpload(question, pictures, async (bytes) => {
      const received = await receiveImage(deps, caller, { publisher: path["publisher"] ?? "", file, bytes });
      return received.ok ? found(received.value) : refused(whyNot(received.problems));
    });
  } catch (error) {
    if (!(error instanceof TooManyUploads)) throw error;
    const headers = { "retry-after": String(error.retryAfter), connection: "close" };
    return refused(
      refusal("overloaded", "Several pictures are coming in already. Try again in a moment.", { headers }),
    );
  }
}

function whyNot(problems: readonly Problem[]): Refusal {
  if (problems.some(({ code }) => code === "UNKNOWN_PUBLISHER"))
    return notFound("There is no such publisher.", problems);
  return problems.some(({ path: [name] }) => name === "file") ? badParameters(problems) : notProcessable(problems);
}

export const imageEndpoint = endpoint(
  {
    method: "POST",
    path: "/v1/publishers/{publisher}/images",
    operationId: "uploadImage",
    tag: "publishers",
    summary: "Hand in a picture",
    description:
      `The body is the picture itself, up to ${mebibytes(largestImageFile)} and 50 million pixels: JPEG, PNG, WebP or AVIF. It is decoded, turned upright and` +
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
