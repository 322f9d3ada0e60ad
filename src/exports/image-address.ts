import { imageHeight, imageWidths, type ImageFormat, type StoredImage } from "../domain/model/image.js";

/** How formats are called in addresses, and over HTTP. */
export const imageEndings: Readonly<Record<ImageFormat, string>> = { AVIF: "avif", WEBP: "webp", JPEG: "jpg" };
export const imageTypes: Readonly<Record<ImageFormat, string>> = {
  AVIF: "image/avif",
  WEBP: "image/webp",
  JPEG: "image/jpeg",
};

/** Where readers get a picture, below the origin of the service. */
export const imagePath = (publisher: string, { hash }: StoredImage, width: number, format: ImageFormat): string =>
  `/images/${encodeURIComponent(publisher)}/${hash}/${width}.${imageEndings[format]}`;

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
