import { parseList, type InnerList, type Item } from "structured-headers";
import type { Response as Answer } from "light-my-request";
import { beforeEach, describe, expect, it } from "vitest";
import { endpoints } from "../../../src/rest/endpoints.js";
import { pointsOfAnswer } from "../../../src/rest/endpoint-cost.js";
import { newTokenParts, tokenText } from "../../../src/services/access/token-text.js";
import { openTestApp, type TestApp } from "../../graphql/open-test-app.js";
import { describeOnEmbedded, type TestDatabase } from "../../kit/databases.js";

/** Structured fields (RFC 9651) as the package structured-headers reads them: the name of each item, and its parameters. */
function read(
  answer: Answer,
  field: string,
): readonly { name: unknown; parameters: Readonly<Record<string, unknown>> }[] {
  return parseList(String(answer.headers[field])).map((each: Item | InnerList) => ({
    name: each[0],
    parameters: Object.fromEntries(each[1]),
  }));
}

const fields = ["ratelimit", "ratelimit-policy", "retry-after"];
const limits = { perAddress: 1500, perToken: 2500, refusedTokensPerAddress: 3 };

describeOnEmbedded("rate limits", (open) => {
  let database: TestDatabase | undefined;
  let app: TestApp;
  let now: Date;
  const pass = (seconds: number): void => {
    now = new Date(now.getTime() + seconds * 1000);
  };
  const reopen = async (more: Parameters<typeof openTestApp>[4] = {}): Promise<void> => {
    database ??= await open();
    app = await openTestApp(database.data, undefined, () => now, {}, { rateLimit: limits, ...more });
  };
  beforeEach(async () => {
    now = new Date("2026-03-01T09:00:00Z");
    await reopen();
    return () => app.close();
  });
  const ask = (url: string, remoteAddress = "192.0.2.1", headers: Record<string, string> = {}): Promise<Answer> =>
    app.app.inject({ url, remoteAddress, headers });
  const spendAll = async (remoteAddress = "192.0.2.1", headers: Record<string, string> = {}): Promise<void> => {
    for (let n = 0; n < 3; n += 1) expect((await ask("/v1/foods", remoteAddress, headers)).statusCode).toBe(200);
  };

  it("say in every answer what is left, in structured fields (draft-ietf-httpapi-ratelimit-headers-11)", async () => {
    const first = await ask("/v1/foods");
    expect(read(first, "ratelimit-policy")).toEqual([{ name: "address", parameters: { q: 1500, w: 60 } }]);
    expect(read(first, "ratelimit")).toEqual([{ name: "address", parameters: { r: 1000, t: 60 } }]);
    pass(12.5);
    expect(read(await ask("/schemas/food.json"), "ratelimit")).toEqual([
      { name: "address", parameters: { r: 999, t: 48 } },
    ]);
    expect(first.headers["retry-after"]).toBeUndefined();
  });

  it("take more for a list of many plans and a table of many rows, and for what a household says, before anything is run", async () => {
    const plans = (count: number) =>
      Array.from({ length: count }, (_, at) => ({ publisher: "nobody", slug: `plan-${at}`, servings: 2 }));
    const leftAfter = async (url: string, payload?: object): Promise<unknown> => {
      await reopen();
      const answer = await app.app.inject({ url, method: payload ? "POST" : "GET", ...(payload ? { payload } : {}) });
      return read(answer, "ratelimit")[0]?.parameters["r"];
    };
    const list = "/v1/shopping-list";
    expect(await leftAfter(list, { plans: plans(5) })).toBe(1000);
    expect(await leftAfter(list, { plans: plans(12) })).toBe(1500 - 1200);
    expect(await leftAfter(list, { plans: plans(12), household: { diets: ["vegan"] } })).toBe(1500 - 12 * 105);
    const table = "/v1/plans/nobody/nothing/servings-table";
    expect(await leftAfter(table)).toBe(1000);
    expect(await leftAfter(`${table}?from=1&to=60`)).toBe(1500 - 60 * 20);
    expect(await leftAfter(`${table}?from=1&to=30&routes=CHEAPEST`)).toBe(1500 - 30 * 40);
    expect(await leftAfter(`${table}?from=x&to=9e99`)).toBe(1000);
    const diets = Array.from({ length: 100 }, () => "diet=vegan").join("&");
    const ways = ["", "/list", "/session", "/storage", "/mail", ".md"].map((part) => `/v1/plans/nobody/nothing${part}`);
    for (const path of ways) {
      expect([path, await leftAfter(path)]).toEqual([path, 1000]);
      expect([path, await leftAfter(`${path}?${diets}`)]).toEqual([path, 1500 - 100 - 100 * 5]);
    }
    // The page of a plan weighs up to three routes that are not taken, each for the same household.
    const page = "/p/nobody/nothing";
    expect(await leftAfter(page)).toBe(1500 - 800);
    const twenty = Array.from({ length: 20 }, () => "diet=vegan").join("&");
    expect(await leftAfter(`${page}?${twenty}`)).toBe(1500 - 800 - (4 * (100 + 20 * 5) - 500));
    const others = Array.from({ length: 11 }, (_, at) => `plan=nobody/plan-${at}`).join("&");
    expect(await leftAfter(`/p/nobody/nothing/list?${others}`)).toBe(1500 - 1200);
    expect(await leftAfter(`/p/nobody/nothing/list?${others}&diet=vegan`)).toBe(1500 - 12 * 105);
  });

  it("take a little for a GraphQL document that is refused, by its length, and refuse no good one for it", async () => {
    const charged = async (payload: object | string): Promise<number> => {
      await reopen();
      const headers = { "content-type": "application/json" };
      const answer = await app.app.inject({ url: "/graphql", method: "POST", payload, headers });
      expect(answer.statusCode).toBeGreaterThanOrEqual(400);
      return 1500 - Number(read(answer, "ratelimit")[0]?.parameters["r"]);
    };
    const unknown = (fields: number): object => ({
      query: `{ ${Array.from({ length: fields }, (_, at) => `nothing${at}`).join(" ")} }`,
    });
    expect(await charged(unknown(1))).toBeLessThan(10);
    expect(await charged(unknown(300))).toBeGreaterThan(300);
    expect(await charged({ query: "{ a" })).toBeLessThan(10);
    expect(await charged("[".repeat(400_000))).toBeGreaterThan(1000);
    // As many as somebody sends who is still trying: the good one that comes then is answered.
    await reopen();
    const ask = (query: string): Promise<Answer> =>
      app.app.inject({ url: "/graphql", method: "POST", payload: { query } });
    for (let n = 0; n < 100; n += 1) expect((await ask("{ nothing }")).statusCode).toBe(400);
    expect((await ask("{ plans(first: 1) { edges { node { slug } } } }")).statusCode).toBe(200);
  });

  it("refuse what is over the budget with the registered problem, and say when to ask again", async () => {
    await spendAll();
    pass(20);
    const refused = await ask("/v1/foods");
    expect(refused.statusCode).toBe(429);
    expect(refused.headers["content-type"]).toMatch(/^application\/problem\+json/);
    expect(refused.json()).toMatchObject({
      type: "https://iana.org/assignments/http-problem-types#quota-exceeded",
      status: 429,
      "violated-policies": ["address"],
      requestId: refused.headers["x-request-id"],
    });
    // Section 6: Retry-After is not before the end of the effective window.
    const effectiveWindow = Number(read(refused, "ratelimit")[0]?.parameters["t"]);
    expect(Number(refused.headers["retry-after"])).toBeGreaterThanOrEqual(effectiveWindow);
    pass(Number(refused.headers["retry-after"]) - 1);
    expect((await ask("/v1/foods")).statusCode).toBe(429);
    pass(1);
    expect((await ask("/v1/foods")).statusCode).toBe(200);
  });

  it("come before any work: what is refused sends no statement to the database", async () => {
    await spendAll();
    database?.statements.clear();
    expect((await ask("/v1/foods")).statusCode).toBe(429);
    expect(database?.statements.sent).toEqual([]);
  });

  it("cost 500 points for each answer below /v1, and say so in the description", async () => {
    expect(pointsOfAnswer).toBe(500);
    for (const [at, { path, method, events }] of endpoints.entries()) {
      const url = path.replace(/\{[a-z]+\}/gi, "none-such");
      const answer = await app.app.inject({
        method,
        url,
        remoteAddress: `198.51.100.${at}`,
        // All of a stream never comes.
        payloadAsStream: events !== undefined,
      });
      if (events !== undefined) answer.raw.res.destroy();
      expect(read(answer, "ratelimit")[0]?.parameters["r"], `${method} ${url}`).toBe(1000);
    }
  });

  it("leave the health of the service, and what browsers ask before they ask, free", async () => {
    for (let n = 0; n < 60; n += 1) {
      const health = await ask("/healthz");
      expect([health.statusCode, fields.filter((name) => name in health.headers)]).toEqual([200, []]);
      const headers = { origin: "https://blog.example", "access-control-request-method": "GET" };
      const { statusCode } = await app.app.inject({
        method: "OPTIONS",
        url: "/v1/foods",
        headers,
        remoteAddress: "192.0.2.1",
      });
      expect(statusCode).toBe(204);
    }
    expect((await ask("/v1/foods")).statusCode).toBe(200);
  });

  it("answer people with a page, and GraphQL clients with an error", async () => {
    await spendAll();
    const page = await ask("/");
    expect([page.statusCode, page.headers["content-type"]]).toEqual([429, "text/html; charset=utf-8"]);
    expect(page.headers["retry-after"]).toBe("60");
    expect(page.body).toContain("60 seconds");
    const asked = { method: "POST", url: "/graphql", remoteAddress: "192.0.2.1" } as const;
    const answer = await app.app.inject({ ...asked, payload: { query: "{ __typename }" } });
    expect([answer.statusCode, answer.headers["retry-after"]]).toEqual([429, "60"]);
    expect(answer.json().errors[0].extensions.code).toBe("RATE_LIMITED");
  });

  it("count every address for itself, and the first 64 bits of an IPv6 address as one", async () => {
    await spendAll("2001:db8:1:2::1");
    expect((await ask("/v1/foods", "2001:db8:1:2:ffff::9")).statusCode).toBe(429);
    expect((await ask("/v1/foods", "2001:db8:1:3::1")).statusCode).toBe(200);
    await spendAll("::ffff:192.0.2.9");
    expect((await ask("/v1/foods", "192.0.2.9")).statusCode).toBe(429);
  });

  it("count a token for itself, wherever it is used from, and not the address", async () => {
    const token = { authorization: `Bearer ${await app.tokenFor(null, ["WRITE"])}` };
    for (const last of [1, 2, 3, 4, 5]) {
      const answer = await ask("/v1/foods", `192.0.2.${last}`, token);
      expect(read(answer, "ratelimit")[0]).toEqual({ name: "token", parameters: { r: 2500 - 500 * last, t: 60 } });
    }
    const refused = await ask("/v1/foods", "192.0.2.6", token);
    expect([refused.statusCode, refused.json()["violated-policies"]]).toEqual([429, ["token"]]);
    await spendAll("192.0.2.1");
  });

  describe("on tokens that are not taken", () => {
    const bearer = (text: string) => ({ authorization: `Bearer ${text}` });
    const right = () => app.tokenFor(null, ["WRITE"]);
    const unknown = () => Promise.resolve(tokenText(newTokenParts()));
    /** A right one with a slip of the pen in its secret, and so with the wrong checksum. */
    const slipped = async () =>
      (await right()).replace(/(.{20})$/, (end) => (end.startsWith("A") ? "B" : "A") + end.slice(1));
    const kinds: readonly (readonly [string, () => Promise<string>, number])[] = [
      ["nonsense", () => Promise.resolve("wrong"), 0],
      ["with a wrong checksum", slipped, 0],
      ["of nobody", unknown, 500],
      [
        "revoked",
        async () => {
          const text = await right();
          await app.deps.data.accessTokens.revoke(text.slice(11, 19), now);
          return text;
        },
        500,
      ],
      [
        "expired",
        async () => {
          const text = await app.tokenFor(null, ["WRITE"], new Date(now.getTime() + 1));
          pass(0.001);
          return text;
        },
        500,
      ],
    ];

    it.each(kinds)("never keep a right one out, %s", async (_, make, points) => {
      await app.close();
      await reopen({ rateLimit: { perAddress: 20_000, perToken: 20_000, refusedTokensPerAddress: 30 } });
      const token = bearer(await right());
      const wrong = bearer(await make());
      expect((await ask("/v1/foods", "192.0.2.1", token)).statusCode).toBe(200);
      database?.statements.clear();
      for (let n = 0; n < 31; n += 1) {
        const answer = await ask("/v1/foods", "192.0.2.1", wrong);
        expect([n, answer.statusCode]).toEqual([n, n < 30 ? 401 : 429]);
        if (n === 30) expect(answer.json()["violated-policies"]).toEqual(["refused-tokens"]);
      }
      expect(database?.statements.sent.length === 0).toBe(points === 0);
      expect((await ask("/v1/foods", "192.0.2.1", token)).statusCode).toBe(200);
      // And readers of the address go on with what is left.
      const anyone = await ask("/v1/foods", "192.0.2.1");
      expect(read(anyone, "ratelimit")[0]?.parameters["r"]).toBe(20_000 - 30 * points - 500);
      expect((await ask("/v1/foods", "192.0.2.2", wrong)).statusCode).toBe(401);
      pass(60);
      expect((await ask("/v1/foods", "192.0.2.1", wrong)).statusCode).toBe(401);
    });

    it("never keep a right one out, also where the address has no points left", async () => {
      await app.close();
      await reopen({ rateLimit: { perAddress: 1500, perToken: 2500, refusedTokensPerAddress: 0 } });
      const token = bearer(await right());
      const wrong = bearer(await unknown());
      const answers = [];
      for (let n = 0; n < 5; n += 1) answers.push(await ask("/v1/foods", "192.0.2.1", wrong));
      expect(answers.map(({ statusCode }) => statusCode)).toEqual([401, 401, 401, 429, 429]);
      expect(answers[3]?.json()["violated-policies"]).toEqual(["address"]);
      expect((await ask("/v1/foods", "192.0.2.1")).statusCode).toBe(429);
      expect((await ask("/v1/foods", "192.0.2.1", token)).statusCode).toBe(200);
      expect(answers[4]?.headers["access-control-allow-origin"]).toBe("*");
    });
  });

  it("are off where they are set to 0", async () => {
    await app.close();
    await reopen({ rateLimit: { perAddress: 0, perToken: 0, refusedTokensPerAddress: 0 } });
    for (let n = 0; n < 20; n += 1) {
      const answer = await ask("/v1/foods", "192.0.2.1", n % 2 === 0 ? {} : { authorization: "Bearer wrong" });
      expect([answer.statusCode, fields.filter((name) => name in answer.headers)]).toEqual([
        n % 2 === 0 ? 200 : 401,
        [],
      ]);
    }
  });

  describe("with X-Forwarded-For", () => {
    const via = (remoteAddress: string, forwarded: string): Promise<Answer> =>
      ask("/v1/foods", remoteAddress, { "x-forwarded-for": forwarded });

    it("do not believe it of anybody by default", async () => {
      await spendAll();
      expect((await via("192.0.2.1", "198.51.100.7")).statusCode).toBe(429);
    });

    it("believe trusted proxies, and of the chain only what trusted ones wrote", async () => {
      await app.close();
      await reopen({ trustedProxies: ["10.0.0.0/8", "2001:db8:f::/48"] });
      for (let n = 0; n < 3; n += 1) expect((await via("10.0.0.1", "198.51.100.7")).statusCode).toBe(200);
      expect((await via("10.0.0.1", "198.51.100.7")).statusCode).toBe(429);
      expect((await via("2001:db8:f::1", "198.51.100.7, 10.9.9.9")).statusCode).toBe(429);
      // What the caller itself wrote stands before what the proxy saw, and changes nothing.
      expect((await via("10.0.0.1", "203.0.113.5, 198.51.100.7")).statusCode).toBe(429);
      expect((await via("10.0.0.1", "203.0.113.5")).statusCode).toBe(200);
      // Who is no trusted proxy cannot be somebody else.
      await spendAll("198.51.100.9");
      expect((await via("198.51.100.9", "203.0.113.77")).statusCode).toBe(429);
    });

    it("count who is behind a proxy that names nobody as one", async () => {
      await app.close();
      await reopen({ trustedProxies: ["10.0.0.0/8"] });
      for (const forwarded of ["unknown", "x".repeat(5000), "203.0.113.5:4711"]) {
        expect((await via("10.0.0.1", forwarded)).statusCode).toBe(200);
      }
      expect((await via("10.0.0.1", "_hidden")).statusCode).toBe(429);
    });
  });
});
