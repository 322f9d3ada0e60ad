import { z } from "zod";
import { imageFormats, type Image, type StoredImage } from "../../domain/model/image.js";
import { imageSources } from "../image-address.js";
import { list, named, text, type Json } from "./named-schema.js";

const imageSourceSchema = named(
  "ImageSource",
  "A picture in one width and format.",
  z.object({
    url: text("Where it is. May be kept for a day.", 2_000),
    type: text("Media type: `image/avif`, `image/webp` or `image/jpeg`.", 40),
    width: z.number().int().min(1).describe("Pixels."),
    height: z.number().int().min(1).describe("Pixels."),
  }),
);

const storedShape = {
  hash: text("SHA-256, hex, of the picture as it is kept. It names the picture.", 64),
  width: z.number().int().min(1).describe("Pixels, as it is kept."),
  height: z.number().int().min(1).describe("Pixels, as it is kept."),
  placeholder: text("Its mean colour, `#rrggbb`, to show until it has come.", 7),
  sources: list(imageSourceSchema, "Every way that it can be had: AVIF, WebP, JPEG, each from narrow to wide."),
};

const sourcesOf = (origin: string, publisher: string, image: StoredImage) =>
  imageFormats.flatMap((format) => imageSources(origin, publisher, image, format));

export const imageSchema = named(
  "Image",
  "A picture. It may be kept for a day.",
  z.object({
    alt: text("What it shows, for those who do not see it."),
    credit: text("Who took or drew it. Null if it does not say.").nullable(),
    licence: text(
      "On what terms others may use it: an SPDX identifier, an address, or a sentence. Null if it does not say.",
    ).nullable(),
    ...storedShape,
  }),
);

/** null: there is none, or none that can be shown. */
export function imageJson(
  origin: string,
  publisher: string,
  image: Image | null | undefined,
): Json<typeof imageSchema> | null {
  if (!image?.stored) return null;
  const { alt, credit, licence, stored } = image;
  const { hash, width, height, placeholder } = stored;
  return { alt, credit, licence, hash, width, height, placeholder, sources: sourcesOf(origin, publisher, stored) };
}

/** A picture as a revision froze it. */
export const frozenImageSchema = named(
  "FrozenImage",
  "A picture, as its writer named it.",
  z.object({
    file: text("The file under which it was handed in."),
    alt: text("What it shows, for those who do not see it."),
    credit: text("Who took or drew it. Null if it does not say.").nullable(),
    licence: text("On what terms others may use it. Null if it does not say.").nullable(),
    stored: z
      .object({
        hash: storedShape.hash,
        width: storedShape.width,
        height: storedShape.height,
        placeholder: storedShape.placeholder,
      })
      .optional()
      .describe("The picture that the file was. It may have been removed since."),
  }),
);

export const uploadedImageSchema = named(
  "UploadedImage",
  "A picture that was handed in.",
  z.object({
    ...storedShape,
    created: z.boolean().describe("Whether these bytes are new; false if they were handed in before."),
  }),
);

export const uploadedImageJson = (
  origin: string,
  publisher: string,
  image: StoredImage,
  created: boolean,
): Json<typeof uploadedImageSchema> => {
  const { hash, width, height, placeholder } = image;
  return { hash, width, height, placeholder, sources: sourcesOf(origin, publisher, image), created };
};
