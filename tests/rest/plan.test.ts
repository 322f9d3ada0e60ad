import type { Response } from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { loadSeeds } from "../../src/services/drafts/load-seeds.js";
import { demo, openTestApp, type TestApp } from "../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../kit/databases.js";
import { askRest, type Asking, type Method } from "./described-answers.js";

const plan = "/v1/plans/third-gate-allotments/bean-night";

describeOnBothDatabases("a plan over REST", (open) => {
  let app: TestApp;
  const ask = (method: Method, url: string, asking: Asking = {}): Promise<Response> =>
    askRest(app.app, method, url, asking);

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    await loadSeeds(app.deps, demo);
  });
  afterAll(() => app.close());

  it("is JSON for the servings it is written for, and for any other number", async () => {
    const written = await ask("GET", plan);
    expect(written.status).toBe(200);
    expect(written.body.servings).toBe(written.body.serves);
    const seven = await ask("GET", `${plan}?servings=7`);
    expect(seven.body.servings).toBe(7);
    expect(seven.body.components.length).toBeGreaterThan(0);
  });

  it("answers 304 to whoever has it, by RFC 9110's weak comparison, and another tag for another household", async () => {
    const first = await ask("GET", `${plan}?servings=7`);
    const etag = first.headers["etag"] ?? "";
    for (const tag of [etag, `W/${etag}`, `"other", ${etag}`, "*"]) {
      const again = await ask("GET", `${plan}?servings=7`, { headers: { "if-none-match": tag } });
      expect(again.status).toBe(304);
      expect(again.text).toBe("");
      expect(again.headers["etag"]).toBe(etag);
    }
    const other = await ask("GET", `${plan}?servings=8`, { headers: { "if-none-match": etag } });
    expect(other.status).toBe(200);
  });

  it("names every parameter that is wrong, in one answer, with what to write instead", async () => {
    const query =
      "servings=lots&region=Nowhere&currency=euros&measures=cups&locale=-&diet=none-such&swap=a&route=b&on-hand=carrot" +
      "&on-hand=carrot:3+bushels&eaters=two&start=yesterday&zone=Mars/Base&serving=7&revision=0";
    const unknown = await ask("GET", `${plan}?${query}`);
    expect(unknown.status).toBe(400);
    expect(unknown.headers["content-type"]).toMatch(/^application\/problem\+json/);
    expect(unknown.body.type).toBe("/problems/bad-parameters");
    expect(unknown.body.problems.map((problem: { path: string[] }) => problem.path[0])).toContain("serving");
    const { body } = await ask("GET", `${plan}?${query.replace("&serving=7", "")}`);
    const names = body.problems.map((problem: { path: string[] }) => problem.path[0]).toSorted();
    for (const name of [
      "servings",
      "region",
      "currency",
      "measures",
      "locale",
      "diet",
      "swap",
      "route",
      "on-hand",
      "eaters",
      "start",
      "revision",
    ]) {
      expect(names).toContain(name);
    }
    for (const { path, message } of body.problems) expect(message.startsWith(path[0])).toBe(true);
  });
});
