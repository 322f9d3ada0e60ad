import request from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { reviewRevisions } from "../../../src/services/plans/review-revisions.js";
import { openTestApp, type TestApp } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { planText, prepareWriting, publisher } from "../../kit/plan-writer.js";
import { publish, recall, save, saveFoods } from "../../kit/recalled-food.js";

const changes = `{ changes(first: 100) { edges { node { kind plan { slug revision } } } } }`;
const morning = `{ morningReport { markdown plans { plan { slug revision } lessSafe changedAt
  differences { kind path before after } } } }`;

const saveDocuments = `mutation ($input: SaveDocumentsInput!) { saveDocuments(input: $input) { problems { message } } }`;
/** Cooked rice that keeps four days by the shipped rules of US, and less by those of GB. */
const rice = `kind: component
slug: cold-barley
title: Cold barley
measured-in: metric
lines:
  - { food: pearl-barley, amount: 300 g }
yield: { amount: 900 g }
keeps-as: cooked-rice
keeping: [{ place: fridge, days: 4 }]
steps:
  - { do: Boil., time: 40 min, hands: off, appliance: hob-ring, uses: [pearl-barley] }
  - { do: Cool and cover., time: 5 min }
---
kind: plan
publisher: ${publisher}
slug: moved
title: Moved
locale: en-GB
measured-in: metric
serves: 2
kitchen: { appliances: { hob-ring: 2 } }
meals:
  - slug: bowl
    title: Bowl
    day: 1
    lines:
      - { component: cold-barley, amount: 400 g }
      - { food: carrot, amount: 100 g }
`;
const publisherIs = (facts: string): string => `kind: publisher\nslug: ${publisher}\n${facts}`;

interface Told {
  readonly changes: {
    readonly edges: readonly { readonly node: { readonly kind: string; readonly plan: { readonly slug: string } } }[];
  };
}
interface Morning {
  readonly morningReport: {
    readonly markdown: string;
    readonly plans: readonly {
      readonly plan: { readonly slug: string; readonly revision: number };
      readonly lessSafe: boolean;
      readonly differences: readonly {
        readonly kind: string;
        readonly path: readonly string[];
        readonly before: string | null;
        readonly after: string;
      }[];
    }[];
  };
}

describeOnBothDatabases("the review of what is published", (open) => {
  let app: TestApp;
  let operator: string;

  beforeAll(async () => {
    const opened = await open();
    const token = await prepareWriting(opened);
    app = await openTestApp(opened.data);
    operator = await app.tokenFor(null, ["ADMIN", "WRITE", "IMPORT"]);
    const input = { publisher, text: planText("recalled", "Recalled") };
    expect((await app.ask(save, { input }, token)).data).toMatchObject({ savePlanDraft: { problems: [] } });
    const published = await app.ask(publish, { input: { publisher, slug: "recalled", expectedVersion: 1 } }, token);
    expect(published.data).toMatchObject({ publishPlan: { problems: [] } });
  });
  afterAll(() => app.close());

  const told = async () =>
    ((await app.ask(changes)).data as unknown as Told).changes.edges.map(
      ({ node: { kind, plan } }) => `${kind} ${plan.slug}`,
    );

  it("tells of a plan that became less safe once: in the changes and in the report, and leaves its document", async () => {
    const ref = { publisher, slug: "recalled", revision: null };
    const [before] = await app.deps.data.revisions.summaries([ref]);
    const first = await reviewRevisions(app.deps);
    expect(first).toMatchObject({ reviewed: 1, failed: [] });
    expect(await told()).not.toContain("PLAN_LESS_SAFE recalled");

    const saved = await app.ask(saveFoods, { input: { texts: [{ name: "recall.yaml", text: recall }] } }, operator);
    expect(saved.data).toMatchObject({ saveFoods: { changed: 1, problems: [] } });
    expect(await reviewRevisions(app.deps)).toMatchObject({ reviewed: 1, changed: 1, lessSafe: 1 });
    expect(await reviewRevisions(app.deps)).toMatchObject({ reviewed: 1, changed: 0, lessSafe: 0 });
    expect((await told()).filter((each) => each === "PLAN_LESS_SAFE recalled")).toHaveLength(1);

    const { morningReport } = (await app.ask(morning, {}, operator)).data as unknown as Morning;
    expect(morningReport.plans).toMatchObject([{ plan: { slug: "recalled", revision: 1 }, lessSafe: true }]);
    expect(morningReport.plans[0]?.differences[0]).toMatchObject({
      kind: "ALLERGEN",
      path: ["allergens", "peanut"],
      after: "CONTAINS",
    });
    expect(morningReport.markdown).toContain("Published plans that became less safe");
    const rest = await request(app.app.server).get("/v1/imports/report").set("authorization", `Bearer ${operator}`);
    expect(rest.body).toMatchObject({ plans: [{ slug: "recalled", lessSafe: true }] });
    const [after] = await app.deps.data.revisions.summaries([ref]);
    expect(after?.checksum).toBe(before?.checksum);
  });

  it("shows a publisher its own plans only, and passes over what is withdrawn", async () => {
    await app.deps.data.publishers.save({ slug: "other", name: "Other" });
    const other = await app.tokenFor("other", ["IMPORT"]);
    expect(((await app.ask(morning, {}, other)).data as unknown as Morning).morningReport.plans).toEqual([]);
    await app.deps.data.revisions.withdraw({ publisher, slug: "recalled", revision: 1 }, new Date());
    expect(await reviewRevisions(app.deps)).toMatchObject({ reviewed: 0 });
    expect(((await app.ask(morning, {}, operator)).data as unknown as Morning).morningReport.plans).toEqual([]);
  });

  it("finds what a publisher's move to another region changes for readers who give none, and loses it when it moves back", async () => {
    const writer = await app.tokenFor(publisher, ["WRITE", "READ_DRAFTS", "PUBLISH"]);
    const saveText = async (text: string): Promise<void> => {
      const saved = await app.ask(saveDocuments, { input: { publisher, texts: [{ name: "a.yaml", text }] } }, writer);
      expect(saved).toMatchObject({ errors: [], data: { saveDocuments: { problems: [] } } });
    };
    await saveText(publisherIs("region: US\ncurrency: USD\n"));
    await saveText(rice);
    const published = await app.ask(publish, { input: { publisher, slug: "moved", expectedVersion: 1 } }, writer);
    expect(published.data).toMatchObject({ publishPlan: { problems: [] } });
    const differences = async () =>
      ((await app.ask(morning, {}, operator)).data as unknown as Morning).morningReport.plans
        .filter(({ plan }) => plan.slug === "moved")
        .flatMap(({ lessSafe, differences: found }) =>
          found
            .filter(({ kind }) => kind === "KEEPING")
            .map(({ path, before, after }) => ({ lessSafe, path, before, after })),
        );
    await reviewRevisions(app.deps);
    expect(await differences()).toEqual([]);

    await saveText(publisherIs("region: GB\ncurrency: GBP\n"));
    await reviewRevisions(app.deps);
    expect(await differences()).toContainEqual({
      lessSafe: true,
      path: ["components", "cold-barley", "keeping", "FRIDGE"],
      before: "3",
      after: "1",
    });
    expect((await told()).filter((each) => each === "PLAN_LESS_SAFE moved")).toHaveLength(1);

    await saveText(publisherIs("region: US\ncurrency: USD\n"));
    await reviewRevisions(app.deps);
    expect(await differences()).toEqual([]);
  });
});
