import fc from "fast-check";
import { afterAll, beforeAll, expect, it } from "vitest";
import request from "supertest";
import { openServer } from "../../../src/persistence/database/open-server.js";
import type { OpenedDatabase } from "../../../src/persistence/database/opened-database.js";
import type { Followed } from "../../../src/persistence/database/change-signals.js";
import { openCache, type Cache } from "../../../src/services/cache/cache.js";
import { cachedData } from "../../../src/services/cache/cached-data.js";
import { openTestApp, type TestApp } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { changes, questions, settle, type World } from "./changing-world.js";

interface Remembering {
  readonly app: TestApp;
  readonly cache: Cache;
  readonly followed: Followed;
}

const megabyte = 1024 * 1024;

describeOnBothDatabases("an instance that remembers", (open) => {
  let now = new Date("2026-03-01T09:00:00Z");
  const clock = (): Date => now;
  let plain: TestApp;
  /** The first makes the changes; on a server there is a second, which only hears of them. */
  const instances: Remembering[] = [];
  let world: World;
  const closing: (() => Promise<void>)[] = [];

  async function remembering({ data, follow }: OpenedDatabase): Promise<Remembering> {
    const cache = openCache(32 * megabyte);
    const followed = await follow(cache.follower);
    closing.unshift(() => followed.close());
    const app = await openTestApp(cachedData(data, cache, followed), undefined, clock, { cache });
    closing.unshift(() => app.close());
    return { app, cache, followed };
  }

  beforeAll(async () => {
    const database = await open();
    plain = await openTestApp(database.data, undefined, clock);
    closing.push(() => plain.close());
    await settle(plain.deps);
    instances.push(await remembering(database));
    if (database.url !== null) {
      const other = await openServer(database.url, { poolSize: 3 });
      closing.push(() => other.close());
      instances.push(await remembering(other));
    }
    const [first] = instances;
    if (first === undefined) throw new Error("there is no instance");
    world = {
      deps: first.app.deps,
      sql: database.sql,
      passDay: () => {
        now = new Date(now.getTime() + 86_400_000);
      },
    };
  });
  afterAll(async () => {
    for (const close of closing) await close();
  });

  const ask = async ({ app }: TestApp, question: string): Promise<string> => {
    const asking = question.startsWith("{")
      ? request(app.server).post("/graphql").send({ query: question })
      : request(app.server).get(question);
    const { status, headers, text } = await asking.set("host", "plans.example");
    if (text.startsWith('{"errors"')) throw new Error(text);
    return `${String(status)} ${String(headers["etag"])} ${text}`;
  };
  const askAll = (app: TestApp, addresses = questions) => Promise.all(addresses.map((address) => ask(app, address)));

  async function expectSame(addresses = questions): Promise<void> {
    const right = await askAll(plain, addresses);
    for (const [at, { app, followed }] of instances.entries()) {
      // Whoever made the change need not wait for it to be heard; another instance hears it as soon as the database says it.
      if (at > 0) await followed.caughtUp();
      for (const [which, answer] of (await askAll(app, addresses)).entries()) {
        expect(answer, `instance ${String(at)}: ${addresses[which] ?? ""}`).toBe(right[which]);
      }
    }
  }

  const answered = ({ counts }: Cache): number => counts.restAnswers.hits + counts.graphqlAnswers.hits;

  it("answers from memory what was asked before", async () => {
    await expectSame();
    for (const { app, cache } of instances) {
      const before = answered(cache);
      await askAll(app);
      expect(answered(cache) - before).toBe(questions.length);
    }
  });

  it("knows the same variables in any order, and others for others", async () => {
    const [first] = instances;
    if (first === undefined) throw new Error("there is no instance");
    const query = `query ($publisher: String!, $slug: String!, $n: Int = 3) {
      plan(publisher: $publisher, slug: $slug) { scaled(servings: $n) { servings } } }`;
    const { app, cache } = first;
    const hits = async (variables: Record<string, unknown>): Promise<number> => {
      const before = cache.counts.graphqlAnswers.hits;
      const { data } = await app.ask(query, variables);
      expect(data).toMatchObject({ plan: { scaled: { servings: variables["n"] ?? 3 } } });
      return cache.counts.graphqlAnswers.hits - before;
    };
    const [publisher, slug] = ["third-gate-allotments", "roots-and-barley"];
    expect(await hits({ publisher, slug })).toBe(0);
    expect(await hits({ slug, publisher, n: 3 })).toBe(1);
    expect(await hits({ slug, publisher, n: 4 })).toBe(0);
  });

  it("keeps nothing of what somebody with a token asks, and gives it nothing that was kept", async () => {
    const [first] = instances;
    if (first === undefined) throw new Error("there is no instance");
    const { app, cache } = first;
    const token = await app.tokenFor(null, ["READ_DRAFTS"]);
    const query = '{ plan(publisher: "third-gate-allotments", slug: "roots-and-barley") { title } }';
    const byToken = await app.ask(query, {}, token);
    const counts = JSON.stringify(cache.counts.graphqlAnswers);
    expect((await app.ask(query, {}, token)).data).toEqual(byToken.data);
    expect(JSON.stringify(cache.counts.graphqlAnswers)).toBe(counts);
    const drafts = '{ drafts(publisher: "third-gate-allotments") { edges { node { slug } } } }';
    expect((await app.ask(drafts, {}, token)).data).toMatchObject({ drafts: {} });
    expect((await app.ask(drafts)).errors[0]?.extensions).toMatchObject({ code: "UNAUTHENTICATED" });
  });

  it.each(Object.keys(changes))("answers as one that remembers nothing after %s", async (name) => {
    await expectSame();
    const before = await askAll(plain);
    await changes[name]?.(world, 1);
    if (name === "somebody changes rows by hand") await instances[0]?.followed.caughtUp();
    await expectSame();
    if (name !== "a day passes" && name !== "a price list is taken back")
      expect(await askAll(plain)).not.toEqual(before);
  });

  it("answers as one that remembers nothing, whatever happens in whatever order", async () => {
    let n = 10;
    const step = fc.record({
      change: fc.constantFrom(...Object.keys(changes)),
      asked: fc.subarray([...questions], { minLength: 1, maxLength: 4 }),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(step, { minLength: 2, maxLength: 6 }), async (steps) => {
        for (const { change, asked } of steps) {
          n += 1;
          await changes[change]?.(world, n);
          if (change === "somebody changes rows by hand") await instances[0]?.followed.caughtUp();
          await expectSame(asked);
        }
      }),
      { numRuns: 8, seed: 20261125, endOnFailure: true },
    );
  }, 300_000);

  it("gives nothing from memory while changes are not heard", async () => {
    const [first] = instances;
    if (first === undefined) throw new Error("there is no instance");
    const { app, cache } = first;
    await askAll(app);
    cache.follower.listening(false);
    const before = answered(cache);
    await changes["foods are saved"]?.({ ...world, deps: plain.deps }, 5_000);
    await expectSame();
    expect(answered(cache)).toBe(before);
    cache.follower.listening(true);
    await expectSame();
  });
});
