import { request } from "node:http";
import { connect } from "node:net";
import type { AddressInfo } from "node:net";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { endpoints } from "../../src/rest/endpoints.js";
import { describeOnEmbedded } from "../kit/databases.js";
import { openRest, planOf, publisher, type RestApp } from "./open-rest.js";

const slug = "bean-night";
/** Every address that is asked for by GET, with something to find, in every form it has. */
const urls = [
  ...[
    "/",
    `/p/${publisher}`,
    `/p/${publisher}/${slug}`,
    `/p/${publisher}/${slug}/list`,
    `/p/${publisher}/${slug}/card`,
  ],
  ...["/p/nobody/nothing", "/nothing", "/embed.js", "/schemas/plan.json"],
  ...endpoints
    .filter(({ method, scope, events }) => method === "GET" && scope === undefined && events === undefined)
    .flatMap(({ path, writings }) => {
      const whole = path.replace("{publisher}", publisher).replace("{slug}", slug).replace("{revision}", "1");
      return writings.map(({ format }) => `${whole}.${format.suffix}`);
    }),
];

/** Names in this domain are ours; what an attacker sends is in another. */
const evil = "attacker.example";

describeOnEmbedded("links", (open) => {
  let app: RestApp;
  let port: number;

  /** Over a connection of our own: other clients mend such headers. */
  const ask = (path: string, host: string): Promise<{ status: number; text: string; headers: string }> =>
    new Promise((resolve, reject) => {
      const asked = request({ port, path, agent: false, setHost: false, headers: { host } }, (answer) => {
        let text = "";
        answer.setEncoding("utf8").on("data", (piece: string) => (text += piece));
        answer.on("end", () =>
          resolve({ status: answer.statusCode ?? 0, text, headers: JSON.stringify(answer.headers) }),
        );
      });
      asked.on("error", reject).end();
    });
  const started = async (options: Parameters<typeof openRest>[1]): Promise<void> => {
    app = await openRest(open, { ...options });
    await app.app.listen({ port: 0, host: "127.0.0.1" });
    ({ port } = app.app.server.address() as AddressInfo);
  };

  describe("of a service that was told where readers reach it", () => {
    beforeAll(() => started({ publicUrl: "https://plans.example" }));
    afterAll(() => app.close());

    it("are what it was told, in every answer there is, whatever Host says", async () => {
      let linked = 0;
      for (const url of urls) {
        const honest = await ask(url, "plans.example");
        for (const host of [evil, `${evil}:4000`, `plans.example@${evil}`, `"><script>`]) {
          const answer = await ask(url, host);
          expect([url, host, answer.status]).toEqual([url, host, honest.status]);
          expect(answer.text + answer.headers, url).not.toContain(evil);
          expect(answer.text, url).not.toContain(`127.0.0.1:${port}`);
        }
        if (honest.text.includes("https://plans.example/")) linked += 1;
        expect(honest.text, url).not.toContain("http://plans.example");
      }
      // Pages, the card, feeds, calendar, Markdown, mail, schema.org: a test that finds no links tests nothing.
      expect(linked).toBeGreaterThan(8);
    }, 120_000);

    it("are so in each of the forms that have any", async () => {
      const plan = planOf(slug);
      for (const url of [
        ...[
          `/p/${publisher}/${slug}`,
          `/p/${publisher}/${slug}/card`,
          `${plan}.ics?start=2026-03-28T09:00&zone=Europe/Berlin`,
          `${plan}.md`,
          `${plan}.jsonld`,
        ],
        ...[`/v1/publishers/${publisher}/feed.json`, `/v1/publishers/${publisher}/feed.atom`],
      ]) {
        const { status, text } = await ask(url, evil);
        // Calendars fold lines.
        expect([url, status, text.replaceAll("\r\n ", "").includes("https://plans.example/")]).toEqual([
          url,
          200,
          true,
        ]);
      }
      expect(JSON.parse((await ask("/v1/openapi", evil)).text)).toMatchObject({
        servers: [{ url: "https://plans.example" }],
      });
    });
  });

  describe("of a service that was not", () => {
    beforeAll(() => started({ trustedProxies: ["127.0.0.1"] }));
    afterAll(() => app.close());
    const page = `/p/${publisher}/${slug}`;
    const canonical = (text: string) => /<link rel="canonical" href="([^"]*)"/.exec(text)?.[1];

    it.each([
      ["plans.example", "http://plans.example"],
      ["Plans.Example:80", "http://plans.example"],
      ["plans.example:8080", "http://plans.example:8080"],
      ["[2001:db8::1]:4000", "http://[2001:db8::1]:4000"],
      ["my_service:4000", "http://my_service:4000"],
      ["192.0.2.1", "http://192.0.2.1"],
    ])("follow a Host header that is a host: %s", async (host, origin) => {
      const { status, text } = await ask(page, host);
      expect([status, canonical(text)?.startsWith(`${origin}/p/`)]).toEqual([200, true]);
    });

    it.each([
      ...["a b", "<x>", '"', "x/y", "x?y", "x#y", "x@y", "x:y", "x:99999", "x:80:80", "[::1", "::1", "a,b", "x\\y"],
      ...["%41", "x'y", "x`y", "x;y", "x:-1", "[zz]", "x".repeat(300), "é", "http://x"],
    ])("are not made of one that is none: %j", async (host) => {
      const answer = await ask(page, Buffer.from(host).toString("latin1"));
      expect(answer.status).toBe(400);
      expect(JSON.parse(answer.text)).toMatchObject({ type: "/problems/bad-request", status: 400 });
      expect(answer.text).toContain("Host");
    });

    it("follow a trusted proxy's header, if it is a host and a scheme", async () => {
      const via = (headers: Record<string, string>) =>
        app.app.inject({ url: page, remoteAddress: "127.0.0.1", headers: { host: "inside", ...headers } });
      const good = await via({ "x-forwarded-host": "plans.example", "x-forwarded-proto": "https" });
      expect(canonical(good.body)).toMatch(/^https:\/\/plans\.example\/p\//);
      expect((await via({ "x-forwarded-host": "<x>" })).statusCode).toBe(400);
      const scheme = await via({ "x-forwarded-proto": "javascript" });
      expect(canonical(scheme.body)).toMatch(/^http:\/\/inside\/p\//);
    });

    it("lead to the address of the connection where HTTP/1.0 says no host", async () => {
      const text = await new Promise<string>((resolve, reject) => {
        let got = "";
        const socket = connect(port, "127.0.0.1", () => socket.write(`GET ${page} HTTP/1.0\r\n\r\n`));
        socket.setEncoding("utf8").on("data", (piece: string) => (got += piece));
        socket.on("end", () => resolve(got)).on("error", reject);
      });
      expect(text).toContain("200 OK");
      expect(canonical(text)).toMatch(`http://127.0.0.1:${port}/p/`);
    });
  });
});
