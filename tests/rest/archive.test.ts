import request from "supertest";
import { buffer } from "node:stream/consumers";
import type { Readable } from "node:stream";
import { afterAll, beforeAll, expect, it } from "vitest";
import { openFull, openEmpty, publisher } from "../services/archive/archive-of-a-publisher.js";
import type { TestApp } from "../graphql/open-test-app.js";
import { describeOnEmbedded } from "../kit/databases.js";
import { expectDescribed } from "./described-answers.js";

describeOnEmbedded("archives over REST", (open) => {
  let here: TestApp;
  let there: TestApp;
  let writer: string;
  let operator: string;
  let zip: Buffer;
  const exporting = `/v1/publishers/${publisher}/export`;
  const importing = `/v1/publishers/${publisher}/import`;

  beforeAll(async () => {
    here = await openFull(open);
    there = await openEmpty(open);
    writer = await here.tokenFor(publisher, ["READ_DRAFTS", "ADMIN"]);
    operator = await there.tokenFor(null, ["ADMIN"]);
  });
  afterAll(() => Promise.all([here.close(), there.close()]));

  const bearer = (token: string) => ({ authorization: `Bearer ${token}` });
  const whole = (answer: unknown, done: (error: Error | null, body: Buffer) => void): void => {
    buffer(answer as Readable).then(
      (body) => done(null, body),
      (error: Error) => done(error, Buffer.alloc(0)),
    );
  };
  const download = (token: string, url = exporting) =>
    request(here.app.server).get(url).set(bearer(token)).buffer(true).parse(whole);
  const upload = async (token: string | null, body: Buffer, url = importing) => {
    const answer = await request(there.app.server)
      .post(url)
      .set({ "content-type": "application/zip", ...(token === null ? {} : bearer(token)) })
      .send(body);
    expectDescribed("POST", url, answer);
    return answer;
  };

  it("are sent as a file that nobody keeps, to whom READ_DRAFTS allows it", async () => {
    const answer = await download(writer);
    zip = answer.body as Buffer;
    expect([answer.status, answer.headers["content-type"], answer.headers["cache-control"]]).toEqual([
      ...[200, "application/zip", "no-store"],
    ]);
    expect(answer.headers["content-disposition"]).toBe(`attachment; filename="${publisher}.zip"`);
    expect(zip.subarray(0, 2).toString()).toBe("PK");
    expect((await download(writer, `${exporting}.zip`)).body).toEqual(zip);
    const head = await request(here.app.server).head(exporting).set(bearer(writer));
    expect([head.status, head.headers["content-type"]]).toEqual([200, "application/zip"]);
    const foreign = await here.tokenFor("third-gate-allotments", ["WRITE"]);
    for (const [token, status] of [
      [foreign, 403],
      [null, 401],
    ] as const) {
      const refused = await request(here.app.server)
        .get(exporting)
        .set(token === null ? {} : bearer(token));
      expect(refused.status).toBe(status);
      expectDescribed("GET", exporting, refused);
    }
    const every = await here.tokenFor(null, ["READ_DRAFTS"]);
    const unknown = await request(here.app.server).get("/v1/publishers/nobody/export").set(bearer(every));
    expect(unknown.status).toBe(404);
  });

  it("are tried, then imported by the operator alone; what is wrong is named with its file", async () => {
    expect((await upload(null, zip)).status).toBe(401);
    expect((await upload(await there.tokenFor(publisher, ["ADMIN", "WRITE", "PUBLISH"]), zip)).status).toBe(403);
    expect((await upload(operator, zip, "/v1/publishers/nobody/import")).status).toBe(422);
    const cut = await upload(operator, zip.subarray(0, 5_000));
    expect([cut.status, cut.body.problems]).toMatchObject([422, [{ code: "BAD_ARCHIVE", path: ["archive"] }]]);
    expect((await upload(operator, zip, `${importing}?dryRun=perhaps`)).status).toBe(400);
    const tried = await upload(operator, zip, `${importing}?dryRun=yes`);
    expect([tried.status, tried.body]).toMatchObject([200, { publisher, revisions: 9, webhooks: 1 }]);
    const done = await upload(operator, zip);
    expect([done.status, done.body]).toEqual([200, tried.body]);
    expect((await upload(operator, zip)).body.problems).toMatchObject([{ code: "PUBLISHER_NOT_EMPTY" }]);
    const page = await request(there.app.server).get(`/v1/plans/${publisher}/beans?servings=5`);
    expect([page.status, page.body.revision]).toEqual([200, 3]);
  });
});
