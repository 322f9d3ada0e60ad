import { execFile } from "node:child_process";
import { promisify } from "node:util";
import { describe, expect, it } from "vitest";

interface Grown {
  readonly name: string;
  readonly things: number;
  readonly bytesEach: number;
  readonly share: number;
}

/** Less than a key and its place in a Map take. */
const leastKept = 64;

/** Bytes by which a heap differs from one look to the next, whatever was asked. */
const noise = 400_000;

describe("what a process remembers", () => {
  it("does not grow with what it is asked for: households, regions, locales, documents, callers", async () => {
    const program = ["--expose-gc", "--import", "tsx", "tests/kit/memory-growth.ts"];
    const { stdout } = await promisify(execFile)(process.execPath, program);
    const grown = JSON.parse(stdout) as readonly Grown[];
    expect(grown.length).toBeGreaterThan(10);
    expect(grown.filter(({ share }) => share >= 0.05)).toEqual([]);
    const kept = grown.filter(({ things, bytesEach }) => bytesEach >= leastKept && things * bytesEach >= noise);
    expect(kept).toEqual([]);
  }, 300_000);
});
