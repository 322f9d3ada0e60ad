import { z } from "zod";
import { imageFormats, type StoredImage } from "../../domain/model/image.js";
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
