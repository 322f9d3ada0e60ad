import { createHash } from "node:crypto";
import { brotliDecompressSync, gunzipSync } from "node:zlib";
import { afterAll, beforeAll, expect, it } from "vitest";
import { openCache } from "../../src/services/cache/cache.js";
import { cachedData } from "../../src/services/cache/cached-data.js";
import { loadSeeds } from "../../src/services/drafts/load-seeds.js";
import { demo, openTestApp, type TestApp } from "../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../kit/databases.js";
import { demoSlugs, planOf, publisher } from "./open-rest.js";

const unpack = { br: brotliDecompressSync, gzip: gunzipSync };

describeOnBothDatabases("answers on the wire", (open) => {
  let app: TestApp;
  const closing: (() => Promise<void>)[] = [];
  let cache: ReturnType<typeof openCache>;
  const get = (url: string, headers: Readonly<Record<string, string>> = {}) =>
    app.app.inject({ method: "GET", url, headers });

  beforeAll(async () => {
    const database = await open();
    cache = openCache(64_000_000);
    const followed = await database.follow(cache.follower);
    app = await openTestApp(cachedData(database.data, cache, followed), undefined, undefined, { cache });
    closing.push(
      () => app.close(),
      () => followed.close(),
    );
    const loaded = await loadSeeds(app.deps, demo);
    if (!loaded.ok) throw new Error("the demo was refused");
  });
  afterAll(async () => {
    for (const close of closing) await close();
  });

  it("takes at most 30 kB for a whole plan, in either coding, and is the same plan", async () => {
    for (const slug of demoSlugs) {
      const plain = await get(planOf(slug));
      for (const coding of ["br", "gzip"] as const) {
        for (const _ of ["computed", "ready"]) {
          const packed = await get(planOf(slug), { "accept-encoding": coding });
          expect(packed.statusCode).toBe(200);
          expect(packed.headers["content-encoding"]).toBe(coding);
          expect(Number(packed.headers["content-length"])).toBe(packed.rawPayload.length);
          expect(packed.rawPayload.length, `${slug} ${coding}`).toBeLessThanOrEqual(30_000);
          expect(unpack[coding](packed.rawPayload).equals(plain.rawPayload), `${slug} ${coding}`).toBe(true);
        }
      }
    }
  });

  it("has an ETag for each coding, and says what it varies by", async () => {
    const url = planOf("bean-night");
    const [plain, br, gzip] = await Promise.all([
      get(url),
      ...["br", "gzip"].map((coding) => get(url, { "accept-encoding": coding })),
    ]);
    const tags = [plain, br, gzip].map((answer) => String(answer?.headers["etag"]));
    expect(new Set(tags).size).toBe(3);
    for (const answer of [plain, br, gzip]) expect(answer?.headers["vary"]).toBe("Accept, Accept-Encoding");
    for (const [at, coding] of ["identity", "br", "gzip"].entries()) {
      for (const [other, tag] of tags.entries()) {
        const again = await get(url, { "accept-encoding": coding, "if-none-match": tag });
        expect(again.statusCode, `${coding} with ${tag}`).toBe(other === at ? 304 : 200);
        expect(again.headers["etag"]).toBe(tags[at]);
        expect(again.headers["vary"]).toBe("Accept, Accept-Encoding");
      }
    }
  });

  it("counts the compressed bytes in the cache, once for each coding", async () => {
    const url = planOf("eggs-and-oats");
    await get(`${url}?servings=3`);
    const before = cache.store.calculatedSize;
    const packed = await get(`${url}?servings=3`, { "accept-encoding": "br" });
    expect(cache.store.calculatedSize - before).toBe(packed.rawPayload.length);
    await get(`${url}?servings=3`, { "accept-encoding": "br" });
    expect(cache.store.calculatedSize - before).toBe(packed.rawPayload.length);
  });

  it("compresses pages, feeds, tables and letters", async () => {
    const page = `/p/${publisher}/bean-night`;
    const texts = [
      page,
      `/v1/publishers/${publisher}/feed.atom`,
      `${planOf("bean-night")}/list.csv`,
      `${planOf("bean-night")}.md`,
    ];
    for (const url of texts) {
      const { headers, statusCode } = await get(url, { "accept-encoding": "gzip, deflate, br" });
      expect([statusCode, headers["content-encoding"]], url).toEqual([200, "br"]);
      expect(headers["vary"], url).toContain("Accept-Encoding");
    }
  });

  it("compresses nothing that came with a token, nor what is refused or short", async () => {
    const authorization = `Bearer ${await app.tokenFor(publisher, ["READ_DRAFTS"])}`;
    for (const [url, headers] of [
      [planOf("bean-night"), { authorization }],
      [`/graphql?query=${encodeURIComponent(`{ plans { nodes { title, summary, slug } } }`)}`, { authorization }],
      [planOf("no-such-plan"), {}],
      [`${planOf("bean-night")}?servings=none`, {}],
      [`/v1/publishers/${publisher}`, {}],
    ] as const) {
      const answer = await get(url, { ...headers, "accept-encoding": "br, gzip" });
      expect(answer.headers["content-encoding"], url).toBeUndefined();
    }
  });

  it("compresses what anybody asks over GraphQL, in a body and by a hash", async () => {
    const query = `{ plan(publisher: "${publisher}", slug: "bean-night") { scaled(servings: 4) { shoppingList { lines { food { name } need { text } uses { asWritten } } } } } }`;
    const post = (coding: string) =>
      app.app.inject({
        method: "POST",
        url: "/graphql",
        headers: { "content-type": "application/json", "accept-encoding": coding },
        payload: JSON.stringify({ query }),
      });
    const plain = await post("identity");
    expect(plain.json().errors).toBeUndefined();
    for (const _ of ["known", "ready"]) {
      const packed = await post("gzip");
      expect([packed.headers["content-encoding"], packed.headers["cache-control"]]).toEqual(["gzip", "no-store"]);
      expect(packed.headers["vary"]).toBe("accept, Accept-Encoding");
      expect(gunzipSync(packed.rawPayload).toString()).toBe(plain.payload);
    }
    const hash = createHash("sha256").update(query).digest("hex");
    const url = `/graphql?extensions=${encodeURIComponent(JSON.stringify({ persistedQuery: { version: 1, sha256Hash: hash } }))}`;
    await get(`${url}&query=${encodeURIComponent(query)}`);
    const named = await get(url, { "accept-encoding": "br" });
    expect(brotliDecompressSync(named.rawPayload).toString()).toBe(plain.payload);
    expect(named.headers["vary"]).toBe("accept, authorization, Accept-Encoding");
    const again = await get(url, { "accept-encoding": "br", "if-none-match": String(named.headers["etag"]) });
    expect([again.statusCode, again.rawPayload.length]).toEqual([304, 0]);
    const otherCoding = await get(url, { "if-none-match": String(named.headers["etag"]) });
    expect(otherCoding.statusCode).toBe(200);
  });
});
