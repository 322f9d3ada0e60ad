import sharp from "sharp";
import { crc32, deflateSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { problemText } from "../../../src/exports/sentences/problem-text.js";
import { imageHeight, imageWidths } from "../../../src/domain/model/image.js";
import { fileKind } from "../../../src/imports/images/image-signature.js";
import { readImage, type ReadImage } from "../../../src/imports/images/read-image.js";
import { diceFrom } from "../../kit/arbitrary/dice.js";
import { sampleImages, smuggled, turnedPhoto } from "../../kit/sample-images.js";
import { mutations } from "../../fuzz/mutate.js";

const samples = await sampleImages();
const jpeg = samples["JPEG"]!;

async function faultOf(bytes: Uint8Array): Promise<string> {
  const read = await readImage(bytes);
  if (read.ok) return "taken";
  const [problem] = read.problems;
  expect(problemText(problem!).length).toBeGreaterThan(30);
  return problem?.code === "IMAGE_REFUSED" ? problem.fault : String(problem?.code);
}

async function taken(bytes: Uint8Array): Promise<ReadImage> {
  const read = await readImage(bytes);
  if (!read.ok) throw new Error(problemText(read.problems[0]!));
  return read.value;
}

/** Everything that could be sent is the picture that it says it is, and nothing of what was smuggled in. */
async function expectOnlyImages(image: ReadImage): Promise<void> {
  const names = { AVIF: "heif", WEBP: "webp", JPEG: "jpeg" } as const;
  for (const { bytes, format, width } of image.made) {
    const head = await sharp(bytes).metadata();
    expect([head.format, head.width, head.height]).toEqual([names[format], width, imageHeight(image, width)]);
    expect([head.exif, head.xmp, head.iptc]).toEqual([undefined, undefined, undefined]);
    expect(fileKind(bytes)).toBe(format);
  }
  for (const bytes of [image.kept, ...image.made.map((each) => each.bytes)]) {
    expect(Buffer.from(bytes).includes(smuggled)).toBe(false);
  }
}

const chunk = (type: string, data: Uint8Array): Buffer => {
  const body = Buffer.concat([Buffer.from(type, "latin1"), data]);
  const ends = Buffer.alloc(8);
  ends.writeUInt32BE(data.length, 0);
  ends.writeUInt32BE(crc32(body), 4);
  return Buffer.concat([ends.subarray(0, 4), body, ends.subarray(4)]);
};

/** A PNG of one colour (W3C PNG 11.2.2): a few hundred kilobytes that are gigabytes once they are decoded. */
function flatPng(width: number, height: number, rows = height): Buffer {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([1, 0, 0, 0, 0], 8);
  const data = deflateSync(Buffer.alloc((1 + Math.ceil(width / 8)) * rows));
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([signature, chunk("IHDR", head), chunk("IDAT", data), chunk("IEND", Buffer.alloc(0))]);
}

/** The height in the frame header of a JPEG (ITU-T T.81 B.2.2), overwritten. */
function tallJpeg(height: number): Buffer {
  const bytes = Buffer.from(jpeg);
  const frame = bytes.indexOf(Buffer.from([0xff, 0xc0]));
  bytes.writeUInt16BE(height, frame + 5);
  return bytes;
}

describe("a picture", () => {
  it("is taken in each format, and made in AVIF, WebP and JPEG, never wider than it is", async () => {
    for (const [name, bytes] of Object.entries(samples)) {
      const image = await taken(bytes);
      expect([image.width, image.height], name).toEqual([96, 72]);
      expect(image.placeholder).toMatch(/^#[0-9a-f]{6}$/);
      expect(image.made.map(({ width, format }) => `${width} ${format}`)).toEqual(["96 AVIF", "96 WEBP", "96 JPEG"]);
      await expectOnlyImages(image);
    }
    const large = await taken(flatPng(3_000, 1_500));
    expect([large.width, large.height]).toEqual([2_560, 1_280]);
    expect(imageWidths(large)).toEqual([320, 640, 1_280]);
    expect([...new Set(large.made.map(({ width }) => width))]).toEqual([320, 640, 1_280]);
    expect(imageWidths({ width: 700 })).toEqual([320, 640, 700]);
    expect(imageWidths({ width: 1_280 })).toEqual([320, 640, 1_280]);
  });

  it("is turned upright, and keeps nothing of where and with what it was taken", async () => {
    const image = await taken(await turnedPhoto(200, 100));
    expect([image.width, image.height]).toEqual([100, 200]);
    await expectOnlyImages(image);
    const { exif, orientation } = await sharp(image.kept).metadata();
    expect([exif, orientation]).toEqual([undefined, undefined]);
  });

  it("is the same picture again when the same bytes are read", async () => {
    expect((await taken(jpeg)).hash).toBe((await taken(jpeg)).hash);
  });

  it("in grey, with 16 bits, transparent or in a printer's colours comes out in the colours of screens", async () => {
    const base = () => sharp({ create: { width: 80, height: 80, channels: 4, background: "#ff000080" } });
    const others = [
      await base().greyscale().png().toBuffer(),
      await base().toColourspace("rgb16").png().toBuffer(),
      await base().png({ palette: true }).toBuffer(),
      await base().flatten().toColourspace("cmyk").jpeg().toBuffer(),
    ];
    for (const bytes of others) await expectOnlyImages(await taken(bytes));
  });

  it("of another format is refused by its name", async () => {
    const others: readonly (readonly [Buffer | string, string])[] = [
      ["", "EMPTY"],
      ["just text", "NOT_AN_IMAGE"],
      ['<svg xmlns="http://www.w3.org/2000/svg" width="99" height="99"/>', "OTHER_FORMAT"],
      [`<?xml version="1.0"?><!DOCTYPE svg [<!ENTITY a "b">]><svg>${smuggled}</svg>`, "OTHER_FORMAT"],
      [`<!doctype html><html>${smuggled}</html>`, "OTHER_FORMAT"],
      ["GIF89a\x01\0\x01\0\0\0\0;", "OTHER_FORMAT"],
      [`GIF89a/*${smuggled}*/=1`, "OTHER_FORMAT"],
      ["%PDF-1.7\n", "OTHER_FORMAT"],
      ["II*\0\x08\0\0\0", "OTHER_FORMAT"],
      ["BM\0\0\0\0", "OTHER_FORMAT"],
      ["PK\x03\x04", "OTHER_FORMAT"],
      ["\0\0\0\x18ftypheic\0\0\0\0mif1heic", "OTHER_FORMAT"],
      ["\0\0\0\x18ftypisom\0\0\0\0isommp41", "OTHER_FORMAT"],
      ["\0\0\0\x18ftypavis\0\0\0\0avismiaf", "OTHER_FORMAT"],
      ["RIFF\0\0\0\0WAVE", "OTHER_FORMAT"],
    ];
    for (const [bytes, fault] of others) expect(await faultOf(Buffer.from(bytes)), String(bytes)).toBe(fault);
  });

  it("with several frames, too small, or a ribbon is refused", async () => {
    const frames = Buffer.alloc(80 * 160 * 3, 90);
    frames.fill(200, 80 * 80 * 3);
    const film = await sharp(frames, { raw: { width: 80, height: 160, channels: 3, pageHeight: 80 } })
      .webp({ delay: [100, 100] })
      .toBuffer();
    expect(await faultOf(film)).toBe("ANIMATED");
    expect(await faultOf((await sampleImages(63, 64))["PNG"]!)).toBe("TOO_SMALL");
    expect(await faultOf((await sampleImages(301, 100))["PNG"]!)).toBe("TOO_NARROW");
  });

  it("that says it is huge is refused before it is decoded, whether it is or not", async () => {
    expect(await faultOf(flatPng(20_000, 20_000))).toBe("TOO_MANY_PIXELS");
    expect(await faultOf(flatPng(2_000_000_000, 2_000_000_000, 1))).not.toBe("taken");
    expect(await faultOf(tallJpeg(65_500))).not.toBe("taken");
    expect(await faultOf(flatPng(6_000, 6_000, 10))).toBe("DAMAGED");
    expect(await faultOf(Buffer.concat([jpeg, Buffer.alloc(15 * 1024 * 1024)]))).toBe("TOO_MANY_BYTES");
  });

  it("that is also something else comes out as a picture and nothing else", async () => {
    const page = Buffer.from(`<!doctype html><html><body>${smuggled}</body></html>`);
    const comment = Buffer.concat([Buffer.from([0xff, 0xfe, 0, page.length + 2]), page]);
    const archive = Buffer.from(`PK\x03\x04${smuggled}`);
    const end = samples["PNG"]!.length - 12;
    const png = samples["PNG"]!;
    const polyglots = [
      Buffer.concat([jpeg.subarray(0, 2), comment, jpeg.subarray(2)]),
      ...Object.values(samples).flatMap((bytes) => [page, archive].map((more) => Buffer.concat([bytes, more]))),
      Buffer.concat([png.subarray(0, end), chunk("tEXt", Buffer.from(`Comment\0${smuggled}`)), png.subarray(end)]),
    ];
    for (const bytes of polyglots) {
      const read = await readImage(bytes);
      if (read.ok) await expectOnlyImages(read.value);
      else expect(read.problems[0]).toMatchObject({ code: "IMAGE_REFUSED" });
    }
    expect(await faultOf(Buffer.concat([page, jpeg]))).toBe("OTHER_FORMAT");
    expect(await faultOf(Buffer.concat([Buffer.from("%PDF-1.7\n"), jpeg]))).toBe("OTHER_FORMAT");
  });

  it("that was damaged in any of 1,000 ways is a picture or refused, and leaves no memory behind", async () => {
    const dice = diceFrom(20261130);
    const names = Object.keys(mutations);
    const seeds = Object.values(samples);
    const counts = { taken: 0, refused: 0 };
    for (let file = 0; file < 1_000; file += 1) {
      const ways = Array.from({ length: 1 + dice.roll(2) }, () => dice.pick(names));
      const bytes = ways.reduce<Buffer>((so, way) => mutations[way]?.(so, dice) ?? so, dice.pick(seeds));
      const read = await readImage(bytes);
      if (read.ok) {
        counts.taken += 1;
        await expectOnlyImages(read.value);
      } else {
        counts.refused += 1;
        expect(read.problems[0], ways.join()).toMatchObject({ code: "IMAGE_REFUSED" });
      }
    }
    expect(counts.taken).toBeGreaterThan(20);
    expect(counts.refused).toBeGreaterThan(500);
    expect(process.resourceUsage().maxRSS).toBeLessThan(1_500_000);
  });
});
