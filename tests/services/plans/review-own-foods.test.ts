import { afterAll, beforeAll, expect, it } from "vitest";
import { reviewRevisions } from "../../../src/services/plans/review-revisions.js";
import { openTestApp, type TestApp } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { planText, prepareWriting, publisher } from "../../kit/plan-writer.js";
import { publish, recall, saveFoods } from "../../kit/recalled-food.js";

const saveDocuments = `mutation ($input: SaveDocumentsInput!) { saveDocuments(input: $input) { problems { message } } }`;
const changes = `{ changes(first: 100) { edges { node { kind plan { slug } } } } }`;

/** One that builds on the carrot, one of the publisher alone, and packs that it adds to the carrot. */
const ownFoods = `kind: food
slug: early-carrot
extends: carrot
names: { en: { one: early carrot, many: early carrots } }
---
kind: food
slug: oca
names: { en: oca }
aisle: vegetables
shopped-by: mass
---
kind: packs
slug: carrot
packs: [{ id: crate, name: crate, content: 5 kg, price: 4.00 XTS, seen: 2026-02-01, source: writer }]
---
`;

const planOf = (food: string): string =>
  planText(`of-${food}`, `Of ${food}`).replace("food: carrot", `food: ${food}`).replace("food: lemon", "food: oca");

describeOnBothDatabases("the review of plans with foods of their publisher's own", (open) => {
  let app: TestApp;

  beforeAll(async () => {
    const opened = await open();
    const token = await prepareWriting(opened);
    app = await openTestApp(opened.data);
    const text = `${ownFoods}${["early-carrot", "carrot", "lemon"].map(planOf).join("---\n")}`;
    const input = { publisher, texts: [{ name: "all.yaml", text }] };
    expect((await app.ask(saveDocuments, { input }, token)).data).toEqual({ saveDocuments: { problems: [] } });
    for (const food of ["early-carrot", "carrot", "lemon"]) {
      const done = await app.ask(publish, { input: { publisher, slug: `of-${food}`, expectedVersion: 1 } }, token);
      expect(done.data).toMatchObject({ publishPlan: { problems: [] } });
    }
  });
  afterAll(() => app.close());

  it("names those that build on a food that is corrected to be less safe, and no other", async () => {
    expect(await reviewRevisions(app.deps)).toMatchObject({ reviewed: 3, lessSafe: 0, failed: [] });
    const operator = await app.tokenFor(null, ["WRITE"]);
    const saved = await app.ask(saveFoods, { input: { texts: [{ name: "recall.yaml", text: recall }] } }, operator);
    expect(saved.data).toMatchObject({ saveFoods: { changed: 1, problems: [] } });
    expect(await reviewRevisions(app.deps)).toMatchObject({ reviewed: 3, changed: 2, lessSafe: 2, failed: [] });
    expect(await reviewRevisions(app.deps)).toMatchObject({ reviewed: 3, changed: 0 });
    const { data } = await app.ask(changes);
    const { changes: told } = data as unknown as {
      changes: { edges: readonly { node: { kind: string; plan: { slug: string } } }[] };
    };
    expect(
      told.edges.flatMap(({ node }) => (node.kind === "PLAN_LESS_SAFE" ? [node.plan.slug] : [])).toSorted(),
    ).toEqual(["of-carrot", "of-early-carrot"]);
  });
});
