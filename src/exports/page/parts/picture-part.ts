import { imageHeight, imageWidthFor, imageWidths, type Image, type ImageFormat } from "../../../domain/model/image.js";
import { imagePath, imageTypes } from "../../image-address.js";
import { attributes, markup, type Content } from "../markup.js";

interface PictureInput {
  readonly image: Image | undefined;
  /** BCP 47 tag of its words, where the page is in another language. */
  readonly language?: string | null;
  /** Slug of its publisher. */
  readonly publisher: string;
  /** How wide it is shown, as `sizes` of HTML says it: `(min-width: 60rem) 40rem, 100vw`. */
  readonly sizes: string;
  /** Before anything else of the page; left out: when it comes near. */
  readonly first?: boolean;
}

/**
 * A picture in the smallest form that the browser reads, no wider than it is shown. Its room is kept from the start, so that nothing moves
 * when it comes. Nothing where there is no picture.
 */
export function picturePart({ image, language = null, publisher, sizes, first = false }: PictureInput): Content {
  if (image?.stored === undefined) return null;
  const { alt, credit, stored } = image;
  const path = (width: number, format: ImageFormat): string => imagePath(publisher, stored, width, format);
  const widths = imageWidths(stored);
  const srcset = (format: ImageFormat): string => widths.map((width) => `${path(width, format)} ${width}w`).join(", ");
  const source = (format: ImageFormat): Content =>
    markup`<source${attributes({ type: imageTypes[format], srcset: srcset(format), sizes })}>`;
  const width = widths.at(-1) ?? stored.width;
  const shown = attributes({
    ...{ src: path(imageWidthFor(stored, 640), "JPEG"), srcset: srcset("JPEG"), sizes },
    ...{ width, height: imageHeight(stored, width), alt, lang: language },
    ...(first ? { fetchpriority: "high" } : { loading: "lazy" }),
    decoding: "async",
  });
  return markup`<figure class="picture"><picture>${source("AVIF")}${source("WEBP")}<img${shown}></picture>${credit !== null && markup`<figcaption class="quiet"${attributes({ lang: language })}>${credit}</figcaption>`}</figure>`;
}
