import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnBothDatabases, type TestDatabase } from "../../kit/databases.js";
import { demo, openTestApp, type TestApp } from "../open-test-app.js";

const publisher = "third-gate-allotments";
const revision = `title revision publishedAt withdrawnAt withdrawnBecause changeNote
  newest { revision } supersededBy { revision } revisions { edges { node { revision } } }`;
const publishPlan = `mutation ($input: PublishPlanInput!) { publishPlan(input: $input) {
  plan { ${revision} } created problems { code message path file line column } } }`;
const correctPlan = `mutation ($input: CorrectPlanInput!) { correctPlan(input: $input) {
  plan { ${revision} } created problems { code message path file line column } } }`;
const withdrawPlan = `mutation ($input: WithdrawPlanInput!) { withdrawPlan(input: $input) {
  plan { ${revision} } problems { code path message } } }`;
const saveDocuments = `mutation ($input: SaveDocumentsInput!) { saveDocuments(input: $input) {
  drafts { kind slug version } problems { code message file line } } }`;
const saveFoods = `mutation ($input: SaveFoodsInput!) { saveFoods(input: $input) { changed problems { code message } } }`;
const readPlan = `query ($slug: String!, $revision: Int) {
  plan(publisher: "${publisher}", slug: $slug, revision: $revision) { ${revision} } }`;
const check = `query ($slug: String!) { checkDraft(publisher: "${publisher}", slug: $slug) {
  version problems { code file line column } findings { code severity file line column } } }`;

const component = (slug: string, amount: string): string => `kind: component
slug: ${slug}
title: Boiled barley
measured-in: metric
lines:
  - { food: pearl-barley, amount: ${amount} }
yield: { amount: 900 g }
steps:
  - { do: Boil., time: 40 min, hands: off, appliance: hob-ring, uses: [pearl-barley] }
`;
const plan = (slug: string, made: string, title = "Barley week", claims = "[]"): string => `kind: plan
publisher: ${publisher}
slug: ${slug}
title: ${title}
locale: en-GB
measured-in: metric
serves: 2
claims: ${claims}
kitchen: { appliances: { hob-ring: 2 } }
meals:
  - slug: bowl
    title: Bowl
    day: 1
    lines:
      - { component: ${made}, amount: 400 g }
`;

interface Revision {
  readonly revision: number;
  readonly title: string;
  readonly withdrawnAt: string | null;
}
type Payload = Record<string, unknown> & {
  readonly plan: Revision | null;
  readonly problems: readonly { readonly code: string; readonly message: string }[];
};

describeOnBothDatabases("publishing", (open) => {
  let database: TestDatabase;
  let app: TestApp;
  let writer: string;
  let operator: string;
  let now = new Date("2026-03-01T09:00:00Z");

  beforeAll(async () => {
    database = await open();
    app = await openTestApp(database.data, undefined, () => now);
    await database.data.publishers.save({ slug: publisher, name: "Third Gate" });
    await database.data.publishers.save({ slug: "elsewhere", name: "Elsewhere" });
    await database.data.foods.save(demo.foods);
    writer = await app.tokenFor(publisher, ["WRITE", "READ_DRAFTS", "PUBLISH"]);
    operator = await app.tokenFor(null, ["WRITE"]);
  });
  afterAll(() => app.close());

  const change = async (query: string, input: object, token = writer): Promise<Payload> => {
    const { data, errors } = await app.ask(query, { input }, token);
    expect(errors).toEqual([]);
    return Object.values(data ?? {})[0] as Payload;
  };
  const save = async (slug: string, version: number | null, texts: readonly string[]): Promise<void> => {
    const expected =
      version === null
        ? []
        : [
            { kind: "PLAN", slug, version },
            { kind: "COMPONENT", slug: `${slug}-barley`, version },
          ];
    const named = texts.map((text, index) => ({ name: `${index}.yaml`, text }));
    expect((await change(saveDocuments, { publisher, texts: named, expected })).problems).toEqual([]);
  };
  const both = (slug: string, amount: string, title?: string) => [
    plan(slug, `${slug}-barley`, title),
    component(`${slug}-barley`, amount),
  ];
  const read = async (slug: string, number: number | null = null): Promise<Revision | null> => {
    const { data, errors } = await app.ask(readPlan, { slug, revision: number });
    expect(errors).toEqual([]);
    return data?.["plan"] as Revision | null;
  };

  it("freezes a draft with its components and the foods of today, and a later draft changes nothing of it", async () => {
    await save("frozen", null, both("frozen", "300 g"));
    const input = { publisher, slug: "frozen", expectedVersion: 1 };
    const published = await change(publishPlan, input);
    expect(published).toMatchObject({
      plan: { title: "Barley week", revision: 1, changeNote: null, newest: { revision: 1 }, supersededBy: null },
      created: true,
      problems: [],
    });
    expect(await change(publishPlan, input)).toMatchObject({ plan: { revision: 1 }, created: false, problems: [] });
    const before = await app.ask(
      `{ plan(publisher: "${publisher}", slug: "frozen") { components { slug lines { written } } foods { slug aisle } } }`,
    );
    expect(before.data).toEqual({
      plan: {
        components: [{ slug: "frozen-barley", lines: [{ written: "300 g" }] }],
        foods: [{ slug: "pearl-barley", aisle: "dry-goods" }],
      },
    });
    await save("frozen", 1, both("frozen", "350 g"));
    const barley = "kind: food\nslug: pearl-barley\nnames: { en: barley }\naisle: drinks\nshopped-by: mass\n";
    await change(saveFoods, { texts: [{ name: "barley.yaml", text: barley }] }, operator);
    const after = await app.ask(
      `{ plan(publisher: "${publisher}", slug: "frozen") { components { slug lines { written } } foods { slug aisle } } }`,
    );
    expect(after.data).toEqual(before.data);
    expect(await change(publishPlan, { ...input, expectedVersion: 2 })).toMatchObject({ plan: { revision: 2 } });
    const newest = await app.ask(`{ plan(publisher: "${publisher}", slug: "frozen") { foods { aisle } } }`);
    expect(newest.data).toEqual({ plan: { foods: [{ aisle: "drinks" }] } });
    await database.data.foods.save(demo.foods);
  });

  it("keeps old addresses, and says on them what corrected them and why", async () => {
    await save("salted", null, both("salted", "300 g"));
    await change(publishPlan, { publisher, slug: "salted", expectedVersion: 1 });
    now = new Date("2026-03-02T09:00:00Z");
    await save("salted", 1, both("salted", "330 g"));
    const note = "330 g of barley, not 300 g: the first print would have left one of you hungry.";
    const input = { publisher, slug: "salted", expectedVersion: 2, changeNote: note };
    expect(await change(correctPlan, input)).toMatchObject({
      plan: { revision: 2, changeNote: note, publishedAt: "2026-03-02T09:00:00.000Z" },
      created: true,
    });
    expect(await read("salted")).toMatchObject({ revision: 2, changeNote: note, supersededBy: null });
    expect(await read("salted", 1)).toMatchObject({
      revision: 1,
      changeNote: null,
      newest: { revision: 2 },
      supersededBy: { revision: 2 },
      revisions: { edges: [{ node: { revision: 2 } }, { node: { revision: 1 } }] },
    });
    expect((await change(correctPlan, input)).problems).toMatchObject([{ code: "NOTHING_CHANGED" }]);
    for (const changeNote of ["", " \n", "x".repeat(5000)]) {
      const refused = await change(correctPlan, { ...input, changeNote });
      expect(refused.problems).toMatchObject([{ path: ["input", "changeNote"] }]);
    }
    await save("unpublished", null, both("unpublished", "300 g"));
    const first = await change(correctPlan, { ...input, slug: "unpublished", expectedVersion: 1 });
    expect(first.problems).toMatchObject([{ code: "UNKNOWN_PLAN", path: ["input", "slug"] }]);
    expect(await read("unpublished")).toBeNull();
  });

  it("falls back to the revision before when the newest is withdrawn, and to nothing when all are", async () => {
    await save("withdrawn", null, both("withdrawn", "300 g"));
    await change(publishPlan, { publisher, slug: "withdrawn", expectedVersion: 1 });
    await save("withdrawn", 1, both("withdrawn", "320 g", "Second"));
    await change(publishPlan, { publisher, slug: "withdrawn", expectedVersion: 2 });
    const input = { publisher, slug: "withdrawn", revision: 2, reason: "The barley was weighed wet." };
    expect((await change(withdrawPlan, { ...input, reason: " " })).problems).toMatchObject([
      { path: ["input", "reason"] },
    ]);
    expect((await change(withdrawPlan, { ...input, revision: 9 })).problems).toMatchObject([{ code: "UNKNOWN_PLAN" }]);
    expect(await change(withdrawPlan, input)).toMatchObject({
      plan: {
        revision: 2,
        withdrawnBecause: "The barley was weighed wet.",
        newest: { revision: 1 },
        supersededBy: null,
      },
      problems: [],
    });
    expect((await change(withdrawPlan, input)).problems).toMatchObject([{ code: "ALREADY_WITHDRAWN" }]);
    expect(await read("withdrawn")).toMatchObject({ revision: 1 });
    expect(await read("withdrawn", 2)).toMatchObject({
      revision: 2,
      title: "Second",
      withdrawnAt: "2026-03-02T09:00:00.000Z",
    });
    await change(withdrawPlan, { ...input, revision: 1 });
    expect(await app.ask(readPlan, { slug: "withdrawn", revision: null })).toMatchObject({
      data: { plan: null },
      errors: [{ path: ["plan"], extensions: { code: "WITHDRAWN" } }],
    });
    expect(await read("withdrawn", 1)).toMatchObject({
      revision: 1,
      newest: null,
      supersededBy: null,
      revisions: { edges: [{ node: { revision: 2 } }, { node: { revision: 1 } }] },
    });
    // A number is never given out twice.
    expect(await change(publishPlan, { publisher, slug: "withdrawn", expectedVersion: 2 })).toMatchObject({
      plan: { revision: 3 },
    });
  });

  it("refuses a draft of another version, one that is not there, and what the check stops, at its place in the text", async () => {
    await save("claiming", null, [
      plan("claiming", "claiming-barley", "Claims", "[vegetarian, gluten-free]"),
      component("claiming-barley", "300 g"),
    ]);
    const input = { publisher, slug: "claiming", expectedVersion: 1 };
    const checked = await app.ask(check, { slug: "claiming" }, writer);
    expect(checked.data?.["checkDraft"]).toMatchObject({
      version: 1,
      problems: [],
      findings: expect.arrayContaining([
        { code: "CLAIM_BROKEN", severity: "STOPS", file: "plan claiming", line: 8, column: 22 },
        { code: "NOBODY_SAYS_HOW_LONG", severity: "LOOK", file: "component claiming-barley", line: 1, column: 1 },
      ]),
    });
    const refused = await change(publishPlan, input);
    expect(refused).toMatchObject({
      plan: null,
      created: null,
      problems: [{ code: "CLAIM_BROKEN", file: "plan claiming", line: 8, column: 22, path: ["claims", "1"] }],
    });
    expect(await read("claiming", 1)).toBeNull();
    expect((await change(publishPlan, { ...input, expectedVersion: 7 })).problems).toMatchObject([
      { code: "STALE_DRAFT", path: ["input", "expectedVersion"] },
    ]);
    expect((await change(publishPlan, { ...input, slug: "nothing" })).problems).toMatchObject([
      { code: "UNKNOWN_DRAFT" },
    ]);

    // A component that was discarded since: the plan's draft still names it.
    await save("orphan", null, both("orphan", "300 g"));
    await database.data.drafts.discard({ kind: "COMPONENT", publisher, slug: "orphan-barley" }, 1);
    const orphan = await change(publishPlan, { ...input, slug: "orphan" });
    expect(orphan.problems).toMatchObject([{ code: "UNKNOWN_COMPONENT", file: "plan orphan", line: 15 }]);
    expect((await app.ask(check, { slug: "orphan" }, writer)).data?.["checkDraft"]).toMatchObject({
      problems: [{ code: "UNKNOWN_COMPONENT", file: "plan orphan", line: 15 }],
      findings: [],
    });
    expect((await app.ask(check, { slug: "nothing" }, writer)).data).toEqual({ checkDraft: null });
  });

  it("is done once under one key, and written down once", async () => {
    await save("keyed", null, both("keyed", "300 g"));
    const input = { publisher, slug: "keyed", expectedVersion: 1, idempotencyKey: "publish-keyed" };
    const first = await change(publishPlan, input);
    await save("keyed", 1, both("keyed", "310 g"));
    expect(await change(publishPlan, input)).toEqual(first);
    const gone = { publisher, slug: "keyed", revision: 1, reason: "Early.", idempotencyKey: "withdraw-keyed" };
    const withdrawn = await change(withdrawPlan, gone);
    expect(withdrawn.problems).toEqual([]);
    expect(await change(withdrawPlan, gone)).toEqual(withdrawn);
    const trail = await database.data.auditTrail.page(publisher, { first: 100, after: null, last: null, before: null });
    const entries = trail.items.filter(({ item }) => item.subject === "keyed" && item.subjectKind === "PLAN");
    expect(entries.map(({ item }) => [item.action, item.before, item.after])).toEqual([
      ["WITHDRAW_PLAN", 1, null],
      ["PUBLISH_PLAN", null, 1],
    ]);
  });

  it("is nobody's who may not: the answer is the same whether the plan is there or not", async () => {
    const other = await app.tokenFor("elsewhere", ["WRITE", "READ_DRAFTS", "PUBLISH", "IMPORT", "ADMIN"]);
    const scribe = await app.tokenFor(publisher, ["WRITE", "READ_DRAFTS", "IMPORT", "ADMIN"]);
    for (const slug of ["salted", "there-is-none"]) {
      for (const [query, more] of [
        [publishPlan, { expectedVersion: 1 }],
        [correctPlan, { expectedVersion: 1, changeNote: "x" }],
        [withdrawPlan, { revision: 1, reason: "x" }],
      ] as const) {
        for (const [token, code] of [
          [other, "FORBIDDEN"],
          [scribe, "FORBIDDEN"],
          [undefined, "UNAUTHENTICATED"],
        ] as const) {
          const { errors } = await app.ask(query, { input: { publisher, slug, ...more } }, token);
          expect(errors.map(({ extensions }) => extensions)).toEqual([expect.objectContaining({ code })]);
        }
      }
    }
  });

  it("gives twenty who publish one draft at once one revision, whole", async () => {
    await save("crowded", null, both("crowded", "300 g"));
    const answers = await Promise.all(
      Array.from({ length: 20 }, () => change(publishPlan, { publisher, slug: "crowded", expectedVersion: 1 })),
    );
    expect(answers.filter(({ created }) => created === true)).toHaveLength(1);
    for (const { plan: published } of answers) expect(published?.revision).toBe(1);
  });

  it("compares the draft with the newest revision, and revisions with each other", async () => {
    const compare = `query ($slug: String!, $from: Int, $to: Int) {
      compare(publisher: "${publisher}", slug: $slug, from: $from, to: $to) { kind path before after } }`;
    await save("compared", null, both("compared", "300 g"));
    await change(publishPlan, { publisher, slug: "compared", expectedVersion: 1 });
    const slug = "compared";
    expect((await app.ask(compare, { slug }, writer)).data).toEqual({ compare: [] });
    await save("compared", 1, both("compared", "330 g", "Barley again"));
    const drafted = await app.ask(compare, { slug }, writer);
    const amount = {
      kind: "AMOUNT",
      path: ["components", "compared-barley", "lines", "pearl-barley", "amount"],
      before: "135 g",
      after: "145 g",
    };
    expect(drafted.errors).toEqual([]);
    expect(drafted.data?.["compare"]).toEqual(
      expect.arrayContaining([
        { kind: "TITLE", path: ["title"], before: "Barley week", after: "Barley again" },
        amount,
        expect.objectContaining({ kind: "NEED", path: ["foods", "pearl-barley", "need"] }),
      ]),
    );
    await change(publishPlan, { publisher, slug: "compared", expectedVersion: 2 });
    // Revisions are for everybody, drafts are not.
    expect((await app.ask(compare, { slug, from: 1, to: 2 })).data).toEqual(drafted.data);
    expect((await app.ask(compare, { slug, from: 1 })).errors).toMatchObject([
      { extensions: { code: "UNAUTHENTICATED" } },
    ]);
    expect((await app.ask(compare, { slug, from: 7, to: 8 })).errors).toMatchObject([
      {
        extensions: {
          problems: [
            { code: "UNKNOWN_PLAN", path: ["from"] },
            { code: "UNKNOWN_PLAN", path: ["to"] },
          ],
        },
      },
    ]);
    expect((await app.ask(compare, { slug: "nothing" }, writer)).errors).toMatchObject([
      { extensions: { problems: [{ code: "UNKNOWN_PLAN" }, { code: "UNKNOWN_DRAFT" }] } },
    ]);
  });

  it("lists revisions in pages", async () => {
    const page = `query ($after: String) { plan(publisher: "${publisher}", slug: "frozen") {
      revisions(first: 1, after: $after) { edges { node { revision } } pageInfo { endCursor hasNextPage } } } }`;
    const first = (await app.ask(page)).data?.["plan"] as { revisions: { pageInfo: { endCursor: string } } };
    expect(first).toMatchObject({ revisions: { edges: [{ node: { revision: 2 } }], pageInfo: { hasNextPage: true } } });
    const after = first.revisions.pageInfo.endCursor;
    expect((await app.ask(page, { after })).data?.["plan"]).toMatchObject({
      revisions: { edges: [{ node: { revision: 1 } }], pageInfo: { hasNextPage: false } },
    });
    expect((await app.ask(page, { after: "x" })).errors).toMatchObject([{ extensions: { code: "BAD_SHAPE" } }]);
  });
});
