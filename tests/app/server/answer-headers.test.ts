import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { InjectOptions, Response as Answer } from "light-my-request";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { demo, openTestApp, type TestApp } from "../../graphql/open-test-app.js";
import { splitSuffix } from "../../../src/rest/format.js";
import { describeOnEmbedded } from "../../kit/databases.js";
import { routesOf, type Route } from "./routes-of.js";

/** Names of headers that tell what a service is made of. Source: OWASP Secure Headers Project, headers to remove (2024-07-19). */
const banners =
  /^(host-header|powered-by|product|server|sourcemap|x-(b3-.*|cms|diaginfo|framework|generat.*|powered-.*|redirect-by|server-.*|source.*|.*-version))$/;

const here = "https://plans.example";
const elsewhere = "https://blog.example";

/** What stands for the parameters of a path: things that are in the demo, and things that are nowhere. */
const named: Readonly<Record<string, string>> = {
  publisher: "third-gate-allotments",
  slug: "bean-night",
  revision: "1",
  kind: "not-found",
};
const fill = (path: string, given: Readonly<Record<string, string>>): string =>
  path.replace(/:([a-z]+)/g, (_all, name: string) => given[name] ?? "none-such");

const text = (answer: Answer, name: string): string => String(answer.headers[name] ?? "");

describeOnEmbedded("what every answer says to browsers", (open) => {
  let app: TestApp;
  let routes: readonly Route[];

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    await loadSeeds(app.deps, demo);
    routes = routesOf(app.app);
  });
  afterAll(() => app.close());

  const headOf = async (asked: InjectOptions): Promise<Answer> => {
    const answer = await app.app.inject({ ...asked, payloadAsStream: true });
    answer.raw.res.destroy();
    return answer;
  };
  const answers = async (headers: Record<string, string> = {}): Promise<readonly [string, Answer][]> => {
    const asked = routes.flatMap(({ path, methods }) =>
      [named, {}].flatMap((given) => methods.map((method) => ({ method, url: fill(path, given) }))),
    );
    const found: [string, Answer][] = [];
    for (const { method, url } of asked) {
      const isStream = method === "GET" && url.endsWith("/stream");
      const asked = { method: method as "GET", url, headers };
      // What a stream says comes with its head; all of it never comes.
      const answer = isStream ? await headOf(asked) : await app.app.inject(asked);
      found.push([`${method} ${url} ${answer.statusCode}`, answer]);
    }
    return found;
  };

  it("reads every route: those of the OpenAPI document, the pages, the endpoint", () => {
    const paths = routes.map(({ path }) => path);
    const { paths: described } = JSON.parse(readFileSync("openapi.json", "utf8")) as { paths: object };
    const ours = Object.keys(described).map((path) => splitSuffix(path).url.replace(/\{([a-z]+)\}/gi, ":$1"));
    expect(paths).toEqual(expect.arrayContaining(ours));
    expect(paths).toEqual(
      expect.arrayContaining(["/", "/p/:publisher/:slug/list", "/graphql", "/embed.js", "/healthz"]),
    );
  });

  it("keeps it from being sniffed, framed, run and kept, on every route and method (OWASP)", async () => {
    for (const [asked, answer] of await answers()) {
      expect(text(answer, "x-content-type-options"), asked).toBe("nosniff");
      expect(text(answer, "x-frame-options"), asked).toBe("DENY");
      expect(text(answer, "referrer-policy"), asked).toBe("no-referrer");
      expect(text(answer, "cache-control"), asked).not.toBe("");
      const policy = text(answer, "content-security-policy");
      expect(policy, asked).toContain("default-src 'none'");
      expect(policy, asked).toContain("frame-ancestors 'none'");
      expect(policy, asked).not.toMatch(/unsafe-eval|script-src[^;]*(unsafe-inline|\*|https?:)/);
      expect(
        Object.keys(answer.headers).filter((name) => banners.test(name)),
        asked,
      ).toEqual([]);
      expect(answer.headers["set-cookie"], asked).toBeUndefined();
      expect(answer.headers["strict-transport-security"], asked).toBeUndefined();
    }
  });

  it("shuts its pages off from those of others (OWASP; HTML standard, cross-origin isolation)", async () => {
    // What is below /v1 is for programs, also as HTML: the first test has it in a sandbox.
    const pages = (await answers({ accept: "text/html" })).filter(
      ([asked, answer]) => text(answer, "content-type").startsWith("text/html") && !asked.includes(" /v1/"),
    );
    expect(pages.length).toBeGreaterThan(12);
    for (const [asked, answer] of pages) {
      expect(text(answer, "cross-origin-opener-policy"), asked).toBe("same-origin");
      expect(text(answer, "cross-origin-embedder-policy"), asked).toBe("require-corp");
      expect(text(answer, "cross-origin-resource-policy"), asked).toBe("same-origin");
      expect(text(answer, "permissions-policy"), asked).toContain("camera=()");
      expect(text(answer, "x-permitted-cross-domain-policies"), asked).toBe("none");
    }
  });

  it("lets any page read, and no page act with what its visitor's browser holds (Fetch standard, CORS protocol)", async () => {
    for (const [asked, answer] of await answers({ origin: elsewhere })) {
      expect(text(answer, "access-control-allow-origin"), asked).toBe("*");
      expect(answer.headers["access-control-allow-credentials"], asked).toBeUndefined();
      expect(text(answer, "access-control-expose-headers").split(", "), asked).toEqual(
        expect.arrayContaining(["etag", "ratelimit", "ratelimit-policy", "retry-after", "x-request-id"]),
      );
    }
  });

  it("tells a browser once a day that a page elsewhere may send JSON and a token of its own", async () => {
    for (const { path } of routes) {
      const answer = await app.app.inject({
        method: "OPTIONS",
        url: fill(path, named),
        headers: {
          origin: elsewhere,
          "access-control-request-method": "POST",
          "access-control-request-headers": "authorization,content-type,idempotency-key",
        },
      });
      expect(answer.statusCode, path).toBe(204);
      expect(text(answer, "access-control-allow-origin"), path).toBe("*");
      expect(text(answer, "access-control-allow-methods").split(", "), path).toContain("POST");
      expect(text(answer, "access-control-allow-headers").split(", "), path).toEqual(
        expect.arrayContaining([
          ...["authorization", "content-type", "idempotency-key", "if-none-match", "traceparent", "tracestate"],
          ...["graphql-client-name", "apollographql-client-name", "apollographql-client-version"],
        ]),
      );
      expect(text(answer, "access-control-max-age"), path).toBe("86400");
    }
  });

  it("changes nothing for what a page can make a browser send unasked: forms, and GET (OWASP CSRF cheat sheet)", async () => {
    const writing = routes.filter(({ methods }) => methods.includes("POST"));
    expect(writing.length).toBeGreaterThan(10);
    const simple = ["application/x-www-form-urlencoded", "multipart/form-data; boundary=x", "text/plain"];
    const mutation = `mutation { createToken(input: { publisher: null, name: "x", scopes: [ADMIN] }) { text } }`;
    for (const { path } of writing) {
      for (const type of simple) {
        const payload = JSON.stringify({ query: mutation });
        const headers = { origin: elsewhere, "content-type": type };
        const { statusCode } = await app.app.inject({ method: "POST", url: fill(path, named), headers, payload });
        // The forms of pages only ask: they are sent so that allergies stand in no address.
        const onlyAsks = /^\/(p|preview)\//.test(path) ? [200, 303, 422] : [];
        expect([401, 403, 404, 405, 415, ...onlyAsks], `${path} ${type}`).toContain(statusCode);
      }
    }
    const got = await app.app.inject({
      method: "GET",
      url: `/graphql?query=${encodeURIComponent("mutation { __typename }")}`,
    });
    expect([got.statusCode, got.headers["allow"], got.json().data]).toEqual([405, "POST", undefined]);
  });

  it.each([
    ["an address that cannot be decoded", "/v1/plans/%zz", 400],
    ["a parameter that is too long", `/p/${"x".repeat(300)}`, 414],
    ["nothing at all", "/nowhere", 404],
  ])("says the same to %s, in a problem document", async (_what, url, status) => {
    const answer = await app.app.inject({ method: "GET", url });
    expect(answer.statusCode).toBe(status);
    expect(text(answer, "content-type")).toContain("application/problem+json");
    expect(answer.json().requestId).toBe(answer.headers["x-request-id"]);
    expect(text(answer, "x-content-type-options")).toBe("nosniff");
    expect(text(answer, "content-security-policy")).toContain("default-src 'none'");
  });

  it("says it also where a token is not taken, so that a page elsewhere can read why", async () => {
    const answer = await app.app.inject({
      url: "/v1/plans",
      headers: { authorization: "Bearer x", origin: elsewhere },
    });
    expect(answer.statusCode).toBe(401);
    expect(text(answer, "access-control-allow-origin")).toBe("*");
    expect(text(answer, "x-content-type-options")).toBe("nosniff");
  });
});

describe("Strict-Transport-Security (RFC 6797)", () => {
  describeOnEmbedded("behind a proxy", (open) => {
    let app: TestApp;
    beforeAll(async () => {
      app = await openTestApp((await open()).data, undefined, undefined, {}, { trustedProxies: ["192.0.2.0/28"] });
    });
    afterAll(() => app.close());
    const ask = (remoteAddress: string, headers: Record<string, string>) =>
      app.app.inject({ url: "/v1/plans", remoteAddress, headers: { host: "plans.example", ...headers } });

    it("is said where a trusted proxy took the request by HTTPS, and to nobody else", async () => {
      const encrypted = await ask("192.0.2.1", { "x-forwarded-proto": "https" });
      expect(text(encrypted, "strict-transport-security")).toBe("max-age=31536000");
      for (const answer of [
        await ask("192.0.2.1", { "x-forwarded-proto": "http" }),
        await ask("192.0.2.1", {}),
        await ask("198.51.100.1", { "x-forwarded-proto": "https" }),
      ]) {
        expect(answer.headers["strict-transport-security"]).toBeUndefined();
      }
    });

    it("comes with addresses of the host and scheme that readers use, and of no other", async () => {
      const start = async (remoteAddress: string) =>
        (
          await app.app.inject({
            url: "/",
            remoteAddress,
            headers: { host: "plans.internal", "x-forwarded-proto": "https", "x-forwarded-host": "plans.example" },
          })
        ).body;
      expect(await start("192.0.2.1")).not.toContain("plans.internal");
      expect(await start("198.51.100.1")).not.toContain(here);
    });
  });
});
