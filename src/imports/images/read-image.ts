import { createHash } from "node:crypto";
import type { Metadata } from "sharp";
import { imageHeight, imageWidths, type ImageFormat, type StoredImage } from "../../domain/model/image.js";
import { failed, ok, type ImageFault, type Result } from "../../domain/problem.js";
import { decoded } from "./decoder.js";
import { fileKind, type FileKind } from "./image-signature.js";
import { largestImageFile, leastSide, longestKeptSide, mostPixels, mostTimesLonger } from "./image-limits.js";

/** Formats that are read, and kept. */
type KeptFormat = Exclude<FileKind, { readonly other: string }>;

/** One way that a picture is handed out. */
interface MadeImage {
  readonly width: number;
  readonly format: ImageFormat;
  readonly bytes: Uint8Array;
}

/** A picture that was decoded whole and written anew: nothing of the file is in it but what is seen. */
export interface ReadImage extends StoredImage {
  readonly format: KeptFormat;
  /** As it is kept: upright, at most `longestKeptSide` pixels long, without what its camera wrote into it. */
  readonly kept: Uint8Array;
  readonly made: readonly MadeImage[];
}

class Refused extends Error {
  override readonly name = "Refused";
  constructor(
    readonly fault: ImageFault,
    readonly found: string,
  ) {
    super(fault);
  }
}

/**
 * Decodes a picture and makes everything that is kept of it. The work is done in threads of the decoder; one picture takes a second or
 * two, and memory for its pixels once.
 */
export async function readImage(bytes: Uint8Array): Promise<Result<ReadImage>> {
  try {
    const format = acceptedKind(bytes);
    const head = await orDamaged(() => decoded(bytes).metadata());
    checkHead(format, head);
    const kept = await orDamaged(() => keep(bytes, format));
    const { width, height } = await decoded(kept).metadata();
    const made: MadeImage[] = [];
    for (const at of imageWidths({ width })) made.push(...(await make(kept, at, imageHeight({ width, height }, at))));
    const hash = createHash("sha256").update(kept).digest("hex");
    return ok({ hash, width, height, placeholder: await meanColour(kept), format, kept, made });
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    return failed([{ code: "IMAGE_REFUSED", path: ["body"], fault: error.fault, found: error.found }]);
  }
}

/** Whatever the decoder cannot do with these bytes is the fault of the bytes: they come from outside. */
async function orDamaged<T>(decode: () => Promise<T>): Promise<T> {
  try {
    return await decode();
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    if (message.includes("exceeds pixel limit")) throw new Refused("TOO_MANY_PIXELS", `more than ${mostPixels} pixels`);
    throw new Refused("DAMAGED", "it cannot be decoded to its end");
  }
}

function acceptedKind(bytes: Uint8Array): KeptFormat {
  if (bytes.length === 0) throw new Refused("EMPTY", "nothing");
  if (bytes.length > largestImageFile) throw new Refused("TOO_MANY_BYTES", `${bytes.length} bytes`);
  const kind = fileKind(bytes);
  if (kind === null) throw new Refused("NOT_AN_IMAGE", "bytes that are no picture");
  if (typeof kind === "object") throw new Refused("OTHER_FORMAT", kind.other);
  return kind;
}

const decoderNames: Readonly<Record<KeptFormat, string>> = { JPEG: "jpeg", PNG: "png", WEBP: "webp", AVIF: "heif" };

function checkHead(format: KeptFormat, { format: decoder, width, height, pages = 1, compression }: Metadata): void {
  const isOther = decoder !== decoderNames[format] || (format === "AVIF" && compression !== "av1");
  if (isOther) throw new Refused("OTHER_FORMAT", "something else than its first bytes say");
  const size = `${width} x ${height} pixels`;
  if (width * height > mostPixels) throw new Refused("TOO_MANY_PIXELS", size);
  if (pages > 1) throw new Refused("ANIMATED", `${pages} frames`);
  if (Math.min(width, height) < leastSide) throw new Refused("TOO_SMALL", size);
  if (Math.max(width, height) > mostTimesLonger * Math.min(width, height)) throw new Refused("TOO_NARROW", size);
}

async function keep(bytes: Uint8Array, format: KeptFormat): Promise<Uint8Array> {
  const upright = decoded(bytes)
    .autoOrient()
    .resize({ width: longestKeptSide, height: longestKeptSide, fit: "inside", withoutEnlargement: true })
    .toColourspace("srgb");
  if (format === "PNG") return upright.png().toBuffer();
  if (format === "WEBP") return upright.webp({ quality: 92 }).toBuffer();
  if (format === "AVIF") return upright.avif({ quality: 75, effort: 2 }).toBuffer();
  return upright.jpeg({ quality: 92, chromaSubsampling: "4:4:4" }).toBuffer();
}

/** One after another: several at once would take several times the memory, and other requests' cores. */
async function make(kept: Uint8Array, width: number, height: number): Promise<readonly MadeImage[]> {
  const sized = () => decoded(kept).resize({ width, height, fit: "fill" });
  const avif = await sized().avif({ quality: 55, effort: 2 }).toBuffer();
  const webp = await sized().webp({ quality: 76 }).toBuffer();
  // JPEG knows no transparency: what is seen through is white, as a page is.
  const jpeg = await sized().flatten({ background: "#ffffff" }).jpeg({ quality: 78, progressive: true }).toBuffer();
  return [
    { width, format: "AVIF", bytes: avif },
    { width, format: "WEBP", bytes: webp },
    { width, format: "JPEG", bytes: jpeg },
  ];
}

async function meanColour(kept: Uint8Array): Promise<string> {
  const one = await decoded(kept)
    .flatten({ background: "#ffffff" })
    .toColourspace("srgb")
    .resize({ width: 1, height: 1, fit: "fill" })
    .raw()
    .toBuffer();
  return `#${one.subarray(0, 3).toString("hex").padEnd(6, "0")}`;
}
