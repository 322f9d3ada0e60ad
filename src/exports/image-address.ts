import { imageHeight, imageWidths, type ImageFormat, type StoredImage } from "../domain/model/image.js";

/** How formats are called in addresses, and over HTTP. PNG: only as a picture may be kept. */
export const imageEndings = { AVIF: "avif", WEBP: "webp", JPEG: "jpg", PNG: "png" } as const;
export const imageTypes = {
  AVIF: "image/avif",
  WEBP: "image/webp",
  JPEG: "image/jpeg",
  PNG: "image/png",
} as const;

type KeptFormat = keyof typeof imageEndings;

/** Where readers get a picture, below the origin of the service. */
export const imagePath = (publisher: string, { hash }: StoredImage, width: number, format: ImageFormat): string =>
  `/images/${encodeURIComponent(publisher)}/${hash}/${width}.${imageEndings[format]}`;

/** Where a publisher gets a picture as it is kept. */
export const originalPath = (
  publisher: string,
  { hash, format }: Pick<StoredImage, "hash"> & { readonly format: KeptFormat },
): string => `/images/${encodeURIComponent(publisher)}/${hash}/original.${imageEndings[format]}`;

const keptFormats: readonly KeptFormat[] = ["AVIF", "WEBP", "JPEG", "PNG"];

/** The format of a picture as it is kept that a file of an address names; null: it names none. */
export const originalFormat = (file: string): KeptFormat | null =>
  keptFormats.find((format) => file === `original.${imageEndings[format]}`) ?? null;

/** A picture in one of the ways that it can be had. */
export interface ImageSource {
  readonly url: string;
  readonly type: string;
  readonly width: number;
  readonly height: number;
}

/** Every way of one format, the narrowest first. */
export const imageSources = (
  origin: string,
  publisher: string,
  image: StoredImage,
  format: ImageFormat,
): readonly ImageSource[] =>
  imageWidths(image).map((width) => ({
    url: origin + imagePath(publisher, image, width, format),
    type: imageTypes[format],
    width,
    height: imageHeight(image, width),
  }));
