import request from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { reviewRevisions } from "../../../src/services/plans/review-revisions.js";
import { openTestApp, type TestApp } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { planText, prepareWriting, publisher } from "../../kit/plan-writer.js";
import { publish, recall, save, saveFoods } from "../../kit/recalled-food.js";

const contents = `{ plan(publisher: "${publisher}", slug: "recalled") { scaled(servings: 2, household: { region: "GB" }) {
  allergens { findings { code presence contains { slug } } } meals { allergens { findings { code presence } } } } } }`;

describeOnBothDatabases("a food that is corrected after plans with it were published", (open) => {
  let app: TestApp;

  beforeAll(async () => {
    const opened = await open();
    const token = await prepareWriting(opened);
    app = await openTestApp(opened.data);
    const input = { publisher, text: planText("recalled", "Recalled") };
    expect((await app.ask(save, { input }, token)).data).toMatchObject({ savePlanDraft: { problems: [] } });
    const published = await app.ask(publish, { input: { publisher, slug: "recalled", expectedVersion: 1 } }, token);
    expect(published.data).toMatchObject({ publishPlan: { problems: [] } });
  });
  afterAll(() => app.close());

  const peanut = async () => {
    const answer = JSON.stringify((await app.ask(contents)).data);
    return [...answer.matchAll(/"code":"peanut","presence":"(\w+)"/g)].map(([, presence]) => presence);
  };

  it("is told of in all of them at once, and their documents stay as they were", async () => {
    const before = await app.deps.data.revisions.summaries([{ publisher, slug: "recalled", revision: null }]);
    expect(await peanut()).not.toContain("CONTAINS");
    const operator = await app.tokenFor(null, ["ADMIN", "WRITE"]);
    const saved = await app.ask(saveFoods, { input: { texts: [{ name: "recall.yaml", text: recall }] } }, operator);
    expect(saved.data).toMatchObject({ saveFoods: { changed: 1, problems: [] } });

    expect(await peanut()).toEqual(["CONTAINS", "CONTAINS"]);
    const rest = await request(app.app.server).get(`/v1/plans/${publisher}/recalled?region=GB&servings=2`);
    expect(JSON.stringify(rest.body)).toMatch(/"code":"peanut","name":"\w+","presence":"CONTAINS"/);
    const text = await request(app.app.server)
      .get(`/v1/plans/${publisher}/recalled?region=GB&servings=2`)
      .set("accept", "text/markdown");
    expect(text.text).toMatch(/\*\*Contains:\*\*.*peanuts? \(carrots?\)/);
    expect(await reviewRevisions(app.deps)).toMatchObject({ reviewed: 1, changed: 1, lessSafe: 1 });
    const changes = await app.ask("{ changes(last: 1) { edges { node { kind plan { slug } } } } }");
    expect(changes.data).toEqual({
      changes: { edges: [{ node: { kind: "PLAN_LESS_SAFE", plan: { slug: "recalled" } } }] },
    });
    const after = await app.deps.data.revisions.summaries([{ publisher, slug: "recalled", revision: null }]);
    expect(after[0]?.checksum).toBe(before[0]?.checksum);
  });
});
