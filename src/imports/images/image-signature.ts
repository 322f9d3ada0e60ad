/** What is read, and what is recognised so that its refusal can name it. */
export type FileKind = "JPEG" | "PNG" | "WEBP" | "AVIF" | { readonly other: string };

const ascii = (bytes: Uint8Array, from: number, to: number): string =>
  String.fromCharCode(...bytes.subarray(from, Math.min(to, bytes.length)));

const begins = (bytes: Uint8Array, ...signature: readonly number[]): boolean =>
  signature.every((byte, at) => bytes[at] === byte);

const jpegMark = [0xff, 0xd8, 0xff] as const;
const pngMark = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a] as const;

/**
 * What a file is by its first bytes, so that no decoder is handed anything but what it is for. Sources of the signatures: ITU-T T.81
 * B.1.1.3 (JPEG), W3C PNG 5.2, RFC 9649 2.4 (WebP), AV1 Image File Format 1.1 with ISO/IEC 14496-12 4.3 (AVIF). null: nothing known.
 */
export function fileKind(bytes: Uint8Array): FileKind | null {
  if (begins(bytes, ...jpegMark)) return "JPEG";
  if (begins(bytes, ...pngMark)) return "PNG";
  const start = ascii(bytes, 0, 4);
  if (start === "RIFF") return ascii(bytes, 8, 12) === "WEBP" ? "WEBP" : { other: "a RIFF file" };
  if (ascii(bytes, 4, 8) === "ftyp") return brandKind(bytes);
  if (/^GIF8/.test(start)) return { other: "a GIF" };
  if (start === "II*\0" || start === "MM\0*") return { other: "a TIFF, or a raw file of a camera" };
  if (start === "%PDF") return { other: "a PDF" };
  if (start.startsWith("BM")) return { other: "a BMP" };
  if (start.startsWith("PK")) return { other: "an archive" };
  if (begins(bytes, 0, 0, 0, 0x0c) || begins(bytes, 0xff, 0x0a)) return { other: "a JPEG 2000 or JPEG XL" };
  return markupKind(ascii(bytes, 0, 1_024));
}

/** The major brand, or one of those it says it is compatible with, names the coding. */
function brandKind(bytes: Uint8Array): FileKind {
  const size = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength).getUint32(0);
  const brands = ascii(bytes, 8, Math.min(size, 256));
  if (brands.includes("avif")) return "AVIF";
  if (brands.includes("avis")) return { other: "an AVIF with several frames" };
  return { other: /hei|hev|mif1|msf1/.test(brands) ? "a HEIC" : "a film" };
}

function markupKind(head: string): FileKind | null {
  if (/<svg[\s>]/i.test(head)) return { other: "an SVG" };
  if (/<!doctype html|<html[\s>]|<script[\s>]/i.test(head)) return { other: "a web page" };
  if (/^\s*<\?xml/.test(head)) return { other: "XML" };
  return null;
}
