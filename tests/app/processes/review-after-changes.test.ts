import { afterAll, beforeAll, expect, it } from "vitest";
import { startJobQueue, type JobQueue } from "../../../src/app/processes/job-queue.js";
import { reviewAfterChanges } from "../../../src/app/processes/review-after-changes.js";
import { reviewRevisionsJob } from "../../../src/jobs/jobs.js";
import type { Followed } from "../../../src/persistence/database/change-signals.js";
import { loadShippedRules } from "../../../src/services/rules/load-rule-set.js";
import { reviewRevisions } from "../../../src/services/plans/review-revisions.js";
import { openTestApp, rules, type TestApp } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases, type TestDatabase } from "../../kit/databases.js";
import { planText, prepareWriting, publisher } from "../../kit/plan-writer.js";
import { publish, recall, save, saveFoods } from "../../kit/recalled-food.js";

const saveDocuments = `mutation ($input: SaveDocumentsInput!) { saveDocuments(input: $input) { problems { message } } }`;

describeOnBothDatabases("a change of what published plans are answered by", (open) => {
  let database: TestDatabase;
  let app: TestApp;
  let queue: JobQueue;
  let followed: Followed;
  let writer: string;
  let done = 0;

  beforeAll(async () => {
    database = await open();
    writer = await prepareWriting(database);
    app = await openTestApp(database.data);
    const input = { publisher, text: planText("recalled", "Recalled") };
    expect((await app.ask(save, { input }, writer)).data).toMatchObject({ savePlanDraft: { problems: [] } });
    const published = await app.ask(publish, { input: { publisher, slug: "recalled", expectedVersion: 1 } }, writer);
    expect(published.data).toMatchObject({ publishPlan: { problems: [] } });
    await reviewRevisions(app.deps);
    const note = (_: object, message: string): void => void (message === "job done" && (done += 1));
    const log = { info: note, warn: note, error: note };
    queue = await startJobQueue({ sql: database.sql, zone: "UTC", jobs: [reviewRevisionsJob], deps: app.deps, log });
    followed = await reviewAfterChanges(database.follow, queue, log, 1);
  });
  afterAll(async () => {
    await followed.close();
    await queue.close();
    await app.close();
  });

  /** Once one more review has run. */
  const reviewed = async (before: number): Promise<void> => {
    for (let tries = 0; tries < 300 && done === before; tries += 1) {
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
    expect(done).toBeGreaterThan(before);
  };

  const told = async (): Promise<readonly string[]> => {
    const { data } = await app.ask(`{ changes(first: 100) { edges { node { kind plan { slug } } } } }`);
    const { changes } = data as {
      changes: { edges: readonly { node: { kind: string; plan: { slug: string } } }[] };
    };
    return changes.edges.map(({ node: { kind, plan } }) => `${kind} ${plan.slug}`);
  };

  it("has a food that is recalled told of at once, not the next morning", async () => {
    const operator = await app.tokenFor(null, ["ADMIN", "WRITE"]);
    const before = done;
    const saved = await app.ask(saveFoods, { input: { texts: [{ name: "recall.yaml", text: recall }] } }, operator);
    expect(saved.data).toMatchObject({ saveFoods: { changed: 1, problems: [] } });
    await reviewed(before);
    expect(await told()).toContain("PLAN_LESS_SAFE recalled");
  });

  it("asks for a review of the plans of a publisher that names its region", async () => {
    const before = done;
    const text = `kind: publisher\nslug: ${publisher}\nregion: US\n`;
    const saved = await app.ask(
      saveDocuments,
      { input: { publisher, texts: [{ name: "publisher.yaml", text }] } },
      writer,
    );
    expect(saved.data).toMatchObject({ saveDocuments: { problems: [] } });
    await reviewed(before);
  });

  it("asks for one when a rule set is loaded", async () => {
    const before = done;
    await loadShippedRules(app.deps, { ...rules, code: "another-set" });
    await reviewed(before);
  });

  it("asks for none when a plan is saved", async () => {
    await followed.caughtUp();
    await new Promise((resolve) => setTimeout(resolve, 3_000));
    const before = done;
    const input = { publisher, text: planText("another", "Another") };
    expect((await app.ask(save, { input }, writer)).data).toMatchObject({ savePlanDraft: { problems: [] } });
    await followed.caughtUp();
    const { rows } = await database.sql.query(
      "SELECT count(*)::int AS waiting FROM pgboss.job WHERE name = 'review-revisions' AND state = 'created'",
    );
    expect(rows).toEqual([{ waiting: 0 }]);
    expect(done).toBe(before);
  });
});
