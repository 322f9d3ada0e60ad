import { brotliDecompressSync, gunzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { acceptedCoding, isCompressible, openCompressor } from "../../src/http/compression.js";

describe("the coding that a client is answered in", () => {
  it.each([
    [undefined, null],
    ["", null],
    ["gzip, deflate, br, zstd", "br"],
    ["gzip, deflate", "gzip"],
    ["br;q=0.5, gzip", "gzip"],
    ["br;q=0, gzip;q=0", null],
    ["gzip;q=0.5, identity", null],
    ["*", "br"],
    ["br;q=0, *", "gzip"],
    ["identity", null],
    ["zstd", null],
    ["GZIP", "gzip"],
    [";;;,,=,q=", null],
    // Nobody reads that many.
    [`${"x,".repeat(5_000)}gzip`, null],
  ])("of %j is %s (RFC 9110, 12.5.3)", (named, coding) => {
    expect(acceptedCoding(named === undefined ? {} : { "accept-encoding": named })).toBe(coding);
  });
});

describe("what is compressed", () => {
  it.each(["application/json; charset=utf-8", "application/ld+json", "text/calendar; charset=utf-8", "image/svg+xml"])(
    "is %s, if it is long enough",
    (type) => {
      expect([isCompressible(100_000, type), isCompressible(100, type)]).toEqual([true, false]);
    },
  );

  it.each(["image/webp", "image/jpeg", "application/zip", "application/octet-stream", "application/jsonx"])(
    "is never %s",
    (type) => {
      expect(isCompressible(100_000, type)).toBe(false);
    },
  );
});

describe("compressing", () => {
  const body = (at: number): Buffer => Buffer.from(`answer ${String(at)} `.repeat(500));

  it("gives the same bytes back in either coding, and compresses them once", async () => {
    const compressor = openCompressor();
    const sizes: number[] = [];
    const text = body(0);
    const both = [1, 2].map(() => compressor.compress(text, "br", (bytes) => sizes.push(bytes)));
    const [first, second] = await Promise.all(both);
    expect(first).toBe(second);
    expect(sizes).toEqual([first?.length]);
    expect(compressor.ready(text, "br")).toBe(first);
    expect(compressor.ready(text, "gzip")).toBeUndefined();
    expect(brotliDecompressSync(first!).toString()).toBe(text.toString());
    const gzip = await compressor.compress(text, "gzip", () => undefined);
    expect(gunzipSync(gzip!).toString()).toBe(text.toString());
  });

  it("compresses two at a time, lets thirty wait, and sends the rest as they are", async () => {
    const going: (() => void)[] = [];
    let running = 0;
    let most = 0;
    const compressor = openCompressor(async (bytes) => {
      running += 1;
      most = Math.max(most, running);
      await new Promise<void>((go) => going.push(go));
      running -= 1;
      return bytes;
    });
    const asked = Array.from({ length: 40 }, (_, at) => compressor.compress(body(at), "gzip", () => undefined));
    expect(asked.map((each) => each === null)).toEqual(asked.map((_, at) => at >= 32));
    for (let done = 0; done < 32; done += 1) {
      await new Promise(setImmediate);
      going.shift()?.();
    }
    await Promise.all(asked);
    expect(most).toBe(2);
    expect(compressor.compress(body(50), "gzip", () => undefined)).not.toBeNull();
  });

  it("goes on after a failure, and tries the same again", async () => {
    let fails = true;
    const compressor = openCompressor((bytes) =>
      fails ? Promise.reject(new Error("no memory")) : Promise.resolve(bytes),
    );
    const text = body(1);
    await expect(compressor.compress(text, "br", () => undefined)).rejects.toThrow("no memory");
    fails = false;
    expect(await compressor.compress(text, "br", () => undefined)).toBe(text);
  });
});
