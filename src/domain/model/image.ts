/** What pictures are made in, the smallest first. */
export const imageFormats = ["AVIF", "WEBP", "JPEG"] as const;
export type ImageFormat = (typeof imageFormats)[number];

/** Widths that pictures are made in, in pixels; none wider than the picture itself. */
const usualWidths = [320, 640, 1280] as const;

/** A picture as it is kept. */
export interface StoredImage {
  /** SHA-256, hex, of the picture as it is kept: it names the picture in addresses. */
  readonly hash: string;
  /** In pixels. */
  readonly width: number;
  readonly height: number;
  /** Its mean colour, `#rrggbb`, to be shown until it has come. */
  readonly placeholder: string;
}

/** A picture as a document names it. */
export interface ImageUse {
  /** Under which it was handed in: a path from the document. */
  readonly file: string;
  /** What it shows, for those who do not see it. */
  readonly alt: string;
  /** Who took or drew it. */
  readonly credit: string | null;
  /** On what terms others may use it, as an SPDX identifier, an address or a sentence. */
  readonly licence: string | null;
}

/** A picture of something published: what its document says, and the picture that its file was then. */
export interface Image extends ImageUse {
  /** Left out: a draft, whose file is looked up when it is published. */
  readonly stored?: StoredImage;
}

/** The widths that a picture can be had in, the least first. */
export function imageWidths({ width }: Pick<StoredImage, "width">): readonly number[] {
  const least = usualWidths.filter((each) => each < width);
  return width > usualWidths[2] ? least : [...least, width];
}

/** Of a picture at another width, at least one pixel. */
export const imageHeight = ({ width, height }: Pick<StoredImage, "width" | "height">, at: number): number =>
  Math.max(1, Math.round((height * at) / width));

/** The least width that is wide enough; the greatest where none is. */
export function imageWidthFor(image: Pick<StoredImage, "width">, wanted: number): number {
  const widths = imageWidths(image);
  return widths.find((width) => width >= wanted) ?? widths.at(-1) ?? image.width;
}

/** Longest name of a file, in characters. */
export const longestImageFile = 200;

/** Whether a name leads from its document to a file beside or below it: no root, no drive, no way up, nothing that is not written. */
export function isImageFile(name: string): boolean {
  if (name.length > longestImageFile || name !== name.trim()) return false;
  return name.split("/").every((part) => !/^\.{0,2}$/.test(part) && !/[\p{C}\\:*?"<>|]/u.test(part));
}
