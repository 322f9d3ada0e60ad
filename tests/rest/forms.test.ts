import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnBothDatabases } from "../kit/databases.js";
import { openRest, planOf, publisher, type RestApp } from "./open-rest.js";

/** The media type of an answer without its parameters. */
const typeOf = (headers: Readonly<Record<string, string>>): string =>
  (headers["content-type"] ?? "").split(";")[0] ?? "";

describeOnBothDatabases("the forms of an answer over REST", (open) => {
  let app: RestApp;
  const plan = planOf("lentils-and-greens");

  beforeAll(async () => {
    app = await openRest(open);
  });
  afterAll(() => app.close());

  // RFC 9110 12.5.1: weights, the most specific range, and */* for who says nothing.
  it.each([
    [undefined, "application/json"],
    ["*/*", "application/json"],
    ["application/json", "application/json"],
    ["application/json; charset=utf-8", "application/json"],
    ["text/markdown", "text/markdown"],
    ["text/*;q=0.5, application/json;q=0.4", "text/markdown"],
    ["text/markdown;q=0.2, text/plain;q=0.9, application/json;q=0.1", "text/plain"],
    ["application/json;q=0, */*", "text/markdown"],
    ["image/png, */*;q=0.1", "application/json"],
  ])("answers Accept %j with %s", async (accept, type) => {
    const { status, headers } = await app.get(plan, accept === undefined ? {} : { accept });
    expect(status).toBe(200);
    expect(typeOf(headers)).toBe(type);
    expect(headers["vary"]).toMatch(/\baccept\b/i);
  });

  it("lists what there is where nothing is acceptable, and echoes nothing", async () => {
    const { status, body, text } = await app.get(plan, { accept: "image/x-nothing" });
    expect(status).toBe(406);
    expect(body.available).toContain("text/markdown");
    expect(body.available).toContain("application/json");
    expect(text).not.toContain("x-nothing");
  });

  it("answers an ending whatever Accept says, and then does not vary by it", async () => {
    for (const [ending, type] of [
      ["json", "application/json"],
      ["md", "text/markdown"],
      ["txt", "text/plain"],
    ]) {
      const { status, headers } = await app.get(`${plan}.${ending}?servings=3`, { accept: "image/png" });
      expect([status, typeOf(headers)]).toEqual([200, type]);
      expect((headers["vary"] ?? "").split(", ")).not.toContain("Accept");
    }
    const list = await app.get(`${plan}/list.md`);
    expect(list.text).toContain("# ");
  });

  it("has nothing at an ending that the thing cannot be had in, and says which there are", async () => {
    const { status, body } = await app.get(`${plan}/session.md`);
    expect(status).toBe(404);
    expect(body.detail).toContain(".json");
    expect((await app.get(`${plan}.exe`)).status).toBe(404);
  });

  it("computes the same household in every form", async () => {
    const query = "?servings=9&measures=US_CUSTOMARY&region=GB";
    const json = await app.get(`${plan}.json${query}`);
    const markdown = await app.get(`${plan}.md${query}`);
    const list = await app.get(`${plan}/list.md${query}`);
    for (const line of json.body.shoppingList.lines) {
      if (line.need === null) continue;
      expect(list.text.replaceAll("\\", "")).toContain(line.need.text);
    }
    expect(markdown.text).toContain(json.body.title);
  });

  it("answers HEAD as GET without the body", async () => {
    for (const url of [plan, `${plan}.md`, "/v1/plans", `/v1/publishers/${publisher}`, "/v1/openapi.json"]) {
      // The test client says what codings it takes, but not with HEAD.
      const headers = { "accept-encoding": "gzip" };
      const [get, head] = [await app.get(url, headers), await app.rest("HEAD", url, { headers })];
      expect(head.status).toBe(200);
      expect(head.text).toBe("");
      for (const name of ["content-type", "etag", "cache-control", "vary", "link"]) {
        expect(head.headers[name]).toBe(get.headers[name]);
      }
    }
  });
});
