import { afterAll, beforeAll, expect, it } from "vitest";
import request from "supertest";
import { runImports } from "../../src/services/imports/run-imports.js";
import { saveFeed } from "../../src/services/imports/feeds/save-feed.js";
import { describeOnBothDatabases } from "../kit/databases.js";
import { expectDescribed } from "./described-answers.js";
import { openRest, publisher, type RestApp } from "./open-rest.js";

describeOnBothDatabases("imports over REST", (open) => {
  let app: RestApp;
  let operator: string;
  let own: string;
  const files = "/v1/feeds/corner-shop/files";

  beforeAll(async () => {
    app = await openRest(open);
    operator = await app.tokenFor(null, ["IMPORT"]);
    own = await app.tokenFor(publisher, ["IMPORT"]);
    const caller = { actor: { kind: "PROGRAM", name: "test" }, requestId: null } as const;
    const settings = { source: "Corner shop", currency: "XTS", locale: "en", limits: { changed: 1, quarantined: 1 } };
    await saveFeed(app.deps, caller, { publisher: null, slug: "corner-shop", kind: "PRICES", settings });
    await saveFeed(app.deps, caller, { publisher, slug: "plans", kind: "DOCUMENTS", settings: { source: "Ours" } });
  });
  afterAll(() => app.close());

  async function post(url: string, body: string, token?: string, type = "text/csv") {
    const headers = token === undefined ? {} : { authorization: `Bearer ${token}` };
    const answer = await request(app.app.server)
      .post(url)
      .set({ "content-type": type, ...headers })
      .send(body);
    expectDescribed("POST", url, answer);
    return answer;
  }
  const get = (url: string, token: string, headers: Readonly<Record<string, string>> = {}) =>
    app.get(url, { authorization: `Bearer ${token}`, ...headers });

  it("take a file as it is, import it, and answer how far it is and what became of it, as JSON and as Markdown", async () => {
    const posted = await post(
      `${files}?name=monday.csv`,
      "food,pack,content,price\negg,rest-box,6 piece,1.50\nmoon,x,1 kg,2\n",
      operator,
    );
    expect([posted.status, posted.body.state]).toEqual([202, "QUEUED"]);
    expect(posted.headers["cache-control"]).toBe("no-store");
    const run = `/v1/feeds/corner-shop/runs/${String(posted.body.id)}`;
    await runImports(app.deps, "worker-1");
    const done = await get(run, operator);
    expect(done.body).toMatchObject({
      state: "DONE",
      publisher: null,
      counts: { read: 2, created: 1, quarantined: 1 },
    });
    const report = await get(`${run}/report`, operator);
    expect(report.body).toMatchObject({
      fileName: "monday.csv",
      rows: [{ line: 3, problems: [{ code: "UNKNOWN_FOOD" }] }],
    });
    const text = await get(`${run}/report.md`, operator);
    expect(text.headers["content-type"]).toContain("text/markdown");
    expect(text.text).toContain("- 1 put aside");
    // Somebody else's is not there, and neither is one of another feed.
    expect((await get(run, own)).status).toBe(404);
    expect((await get(run.replace("corner-shop", "other"), operator)).status).toBe(404);
  });

  it("are all in the report of the morning, as JSON and as Markdown", async () => {
    const report = await get("/v1/imports/report?hours=48", operator);
    expect(report.body).toMatchObject({
      imports: [{ feed: "corner-shop", state: "DONE", toMend: 1 }],
      moreImports: false,
    });
    const text = await get("/v1/imports/report.md", operator);
    expect([text.headers["content-type"], text.headers["cache-control"]]).toEqual([
      expect.stringContaining("text/markdown"),
      "no-store",
    ]);
    expect(text.text).toContain("corner-shop");
    expect((await get("/v1/imports/report", own)).body).toMatchObject({ imports: [] });
    expect((await app.rest("GET", "/v1/imports/report")).status).toBe(401);
    for (const hours of ["0", "745", "x", "1.5"]) {
      const refused = await get(`/v1/imports/report?hours=${hours}`, operator);
      expect([refused.status, refused.body.problems[0].path]).toEqual([400, ["hours"]]);
    }
  });

  it("ask for a token with the scope, and name what is wrong", async () => {
    expect((await post(files, "x")).status).toBe(401);
    expect((await post(files, "x", own)).status).toBe(403);
    expect((await post("/v1/feeds/none/files", "x", operator)).status).toBe(404);
    expect((await post(`${files}?dryRun=maybe`, "x", operator)).status).toBe(400);
    expect((await post(files, "", operator)).status).toBe(422);
    expect((await app.rest("PUT", files)).status).toBe(405);
  });

  it("answer 413 before they read a file that says that it is too large, and go on one at a time", async () => {
    const url = `/v1/publishers/${publisher}/feeds/plans/files`;
    const huge = await app.app.inject({
      method: "POST",
      url,
      headers: { authorization: `Bearer ${own}`, "content-type": "text/yaml", "content-length": String(2 ** 40) },
    });
    expect([huge.statusCode, huge.json<{ detail: string }>().detail]).toEqual([413, "Files are taken up to 512 MiB."]);
    expect((await post(url, "kind: plan\n", own, "application/json")).status).toBe(202);
    const second = await post(url, "kind: plan # again\n", own, "text/yaml");
    expect([second.status, second.body.problems[0].code]).toEqual([422, "IMPORT_GOING_ON"]);
  });
});
