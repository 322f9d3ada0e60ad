import { execFile } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { promisify } from "node:util";
import { beforeAll, describe, expect, it } from "vitest";
import type { NamedCaches } from "../../../src/domain/cache-table.js";

interface Grown {
  readonly name: string;
  readonly things: number;
  readonly bytesEach: number;
  readonly share: number;
}

interface Grew {
  readonly grown: readonly Grown[];
  readonly caches: readonly NamedCaches[];
}

/** Less than a key and its place in a Map take. */
const leastKept = 64;

/** Bytes by which a heap differs from one look to the next, whatever was asked: counts where only some things were. */
const noise = 2_000_000;

/** Caches that are not filled here, and why that is no matter. */
const unasked: Readonly<Record<string, string>> = {
  "diet-judges": "shared by all regions for which the rules have the same lines",
  "sessions-over-days": "bounded as sessions are",
  keeping: "four questions for each plan",
  introspection: "kept by the engine itself, each text that is no more than the standard query",
  "graphql-addresses": "bounded as graphql-bodies are",
  origins: "64 of them, each a host of at most 253 characters",
  "plans-in-languages": "12 for each plan that is cached itself",
  "names-on-hand": "2,000 names of at most 200 characters, for each state of the foods",
  messages: "4,000 sentences, and asked for none but those of the catalogues",
};

const texts = (folder: string): readonly string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return entry.name === "generated" ? [] : texts(path);
    return path.endsWith(".ts") ? [readFileSync(path, "utf8")] : [];
  });
const made = /\b(?:memoizeLatest|memoizeLatestInSlices|BoundedCache|recentBytes)(?:<[^(]*>)?\(\s*"([^"]+)"/g;

describe("what a process remembers", () => {
  let grew: Grew;
  beforeAll(async () => {
    const program = ["--expose-gc", "--import", "tsx", "tests/kit/memory-growth.ts"];
    const { stdout } = await promisify(execFile)(process.execPath, program);
    grew = JSON.parse(stdout) as Grew;
  }, 900_000);

  it("does not grow with 100,000 things that it is asked for: households, regions, locales, documents, callers", () => {
    const { grown } = grew;
    expect(grown.filter(({ things }) => things === 100_000).length).toBeGreaterThan(14);
    expect(grown.filter(({ share }) => share >= 0.05)).toEqual([]);
    const kept = grown.filter(({ things, bytesEach }) => bytesEach >= leastKept && things * bytesEach >= noise);
    expect(kept).toEqual([]);
  });

  it("is in one table, every cache of it filled until things gave way", () => {
    const names = new Set(texts("src").flatMap((text) => [...text.matchAll(made)].flatMap(([, name]) => name ?? [])));
    expect(names.size).toBeGreaterThan(20);
    const full = new Set(grew.caches.flatMap(({ name, evicted }) => (evicted > 0 ? [name] : [])));
    expect([...names].filter((name) => !full.has(name) && unasked[name] === undefined)).toEqual([]);
    expect(Object.keys(unasked).filter((name) => !names.has(name) || full.has(name))).toEqual([]);
  });
});
