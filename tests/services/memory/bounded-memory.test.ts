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

describe("what a process remembers", () => {
  it("does not grow with what it is asked for: households, regions, locales, documents, callers", async () => {
    const program = ["--expose-gc", "--import", "tsx", "tests/kit/memory-growth.ts"];
    const { stdout } = await promisify(execFile)(process.execPath, program);
    const grown = JSON.parse(stdout) as readonly Grown[];
    expect(grown.length).toBeGreaterThan(10);
    expect(grown.filter(({ share }) => share >= 0.05)).toEqual([]);
    expect(grown.filter(({ things, bytesEach }) => things >= 1_000 && bytesEach >= leastKept)).toEqual([]);
  }, 300_000);
});
