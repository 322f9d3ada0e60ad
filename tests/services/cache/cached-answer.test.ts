import { expect, it } from "vitest";
import type { Deps } from "../../../src/services/deps.js";
import { openCache, type Cache } from "../../../src/services/cache/cache.js";
import { answerKey, cachedAnswer } from "../../../src/services/cache/cached-answer.js";
import { describeOnEmbedded } from "../../kit/databases.js";

describeOnEmbedded("a remembered answer", (open) => {
  let now = new Date("2026-03-01T23:59:00Z");
  const opened = async (): Promise<{ readonly deps: Deps; readonly cache: Cache }> => {
    const { data } = await open();
    const log = { info: () => undefined, warn: () => undefined, error: () => undefined };
    const cache = openCache(1_000_000);
    cache.follower.listening(true);
    return { deps: { data, log, clock: () => now, knownRules: new Map() }, cache };
  };
  /** How often it was computed for two who ask one after the other. */
  const times = async ({ deps, cache }: Awaited<ReturnType<typeof opened>>, read: (deps: Deps) => Promise<unknown>) => {
    let computed = 0;
    for (let at = 0; at < 2; at += 1) {
      await cachedAnswer(cache, answerKey("restAnswers", "question"), deps, async (watched) => {
        computed += 1;
        await read(watched);
        return { answer: "answer", bytes: 6 };
      });
    }
    return computed;
  };

  it("is computed once", async () => {
    expect(await times(await opened(), (deps) => deps.data.publishers.bySlugs(["a"]))).toBe(1);
  });

  it.each<readonly [string, (deps: Deps) => Promise<unknown>]>([
    ["drafts", (deps) => deps.data.drafts.versions([{ kind: "PLAN", publisher: "a", slug: "b" }])],
    ["tokens", (deps) => deps.data.accessTokens.find("a")],
    ["a transaction", (deps) => deps.data.transaction(() => Promise.resolve(null))],
    ["a write", (deps) => deps.data.publishers.create({ slug: "north-field", name: "North Field" })],
  ])("is not kept where it was computed from %s", async (_, read) => {
    expect(await times(await opened(), read)).toBe(2);
  });

  it("is not kept where it changed while it was computed", async () => {
    const world = await opened();
    const changing = async (deps: Deps): Promise<void> => {
      await deps.data.foods.bySlugs(["carrot"]);
      world.cache.follower.heard("foods");
    };
    expect(await times(world, changing)).toBe(2);
  });

  it("is of its day where it looked at the clock", async () => {
    const world = await opened();
    const dated = async (deps: Deps): Promise<string> => Promise.resolve(deps.clock().toISOString());
    expect(await times(world, dated)).toBe(1);
    now = new Date("2026-03-02T00:00:00Z");
    expect(await times(world, dated)).toBe(1);
    now = new Date("2026-03-01T23:59:30Z");
    expect(await times(world, dated)).toBe(1);
  });

  it("is computed by one of many who ask at once", async () => {
    const { deps, cache } = await opened();
    let computed = 0;
    const ask = () =>
      cachedAnswer(cache, answerKey("graphqlAnswers", "question"), deps, async (watched) => {
        computed += 1;
        await watched.data.publishers.bySlugs(["a"]);
        return { answer: computed, bytes: 8 };
      });
    expect(await Promise.all(Array.from({ length: 20 }, ask))).toEqual(Array.from({ length: 20 }, () => 1));
  });
});
