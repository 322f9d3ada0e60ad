import Fastify from "fastify";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import request from "supertest";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { committedExplorer as folder } from "../../../scripts/bundle-explorer.mjs";
import { openExplorer } from "../../../src/graphql/explorer.js";

describe("the page for browsers", () => {
  const app = Fastify();

  beforeAll(async () => {
    const explorer = openExplorer(folder);
    if (explorer === null) throw new Error("no page was built");
    app.get("/graphql", (_request, reply) => explorer.sendPage(reply));
    app.get("/graphql/explorer/:name", (asked, reply) =>
      explorer.sendAsset((asked.params as { name: string }).name, asked, reply),
    );
    await app.ready();
  });
  afterAll(() => app.close());

  it("loads scripts from here and nowhere else", async () => {
    const page = await request(app.server).get("/graphql");
    expect([page.status, page.type]).toEqual([200, "text/html"]);
    const policy = page.headers["content-security-policy"];
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("script-src 'self';");
    expect(page.headers["cache-control"]).toBe("no-cache");
    expect(page.text).not.toMatch(/https?:/);
    expect(page.text).not.toMatch(/<script>|<script [^>]*>[^<]/);
  });

  it("finds every file it names, each to be kept for ever under the hash in its name", async () => {
    const { text } = await request(app.server).get("/graphql");
    const names = text.match(/\/graphql\/explorer\/[\w.-]+/g) ?? [];
    expect(names.length).toBeGreaterThan(4);
    for (const name of names) {
      const file = await request(app.server).get(name);
      expect([name, file.status]).toEqual([name, 200]);
      expect(file.headers["cache-control"]).toContain("immutable");
      expect(name).toMatch(/-[A-Z0-9]{8}\./);
    }
  });

  it.each(["index.html", "..%2f..%2fpackage.json", "%2e%2e%2fpage.js", "nothing.js", "%00"])(
    "does not serve %s as an asset",
    async (name) => {
      const { status } = await request(app.server).get(`/graphql/explorer/${name}`);
      expect(status).toBeGreaterThanOrEqual(400);
      expect(status).toBeLessThan(500);
    },
  );

  it("sends its files compressed to those who take that, and as they are to others", async () => {
    const { text } = await request(app.server).get("/graphql");
    const [script = ""] = text.match(/\/graphql\/explorer\/page-[\w-]+\.js/) ?? [];
    const lengthFor = async (encodings: string): Promise<[string | undefined, number]> => {
      const { headers } = await request(app.server).get(script).set("accept-encoding", encodings);
      expect(headers["vary"]).toBe("accept-encoding");
      return [headers["content-encoding"], Number(headers["content-length"])];
    };
    const [packed, plain] = [await lengthFor("gzip, deflate, br"), await lengthFor("identity")];
    expect([packed[0], plain[0]]).toEqual(["gzip", undefined]);
    expect(packed[1]).toBeLessThan(plain[1] / 2);
    expect(await lengthFor("gzip;q=0, br")).toEqual(plain);
  });

  it("has a style sheet that fetches nothing from elsewhere", async () => {
    const page = await readFile(join(folder, "index.html"), "utf8");
    const [, name] = /href="\/graphql\/explorer\/(page-[^"]+\.css)"/.exec(page) ?? [];
    const { text } = await request(app.server).get(`/graphql/explorer/${name}`);
    expect(text).toContain("graphiql");
    expect(text).not.toMatch(/url\(["']?https?:/);
  });
});
