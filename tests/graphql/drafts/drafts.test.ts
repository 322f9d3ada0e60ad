import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnBothDatabases, describeOnServer, type TestDatabase } from "../../kit/databases.js";
import { demo, openTestApp, type TestApp } from "../open-test-app.js";

const publisher = "third-gate-allotments";
const saveDocuments = `mutation ($input: SaveDocumentsInput!) { saveDocuments(input: $input) {
  drafts { kind slug version } foods { slug } problems { code message path file line column } } }`;
const savePlan = `mutation ($input: SaveDraftInput!) { savePlanDraft(input: $input) {
  draft { kind slug version } problems { code message path file line column } } }`;
const saveComponent = `mutation ($input: SaveDraftInput!) { saveComponentDraft(input: $input) {
  draft { kind slug version draft { title updatedBy } } problems { code message path file line column } } }`;
const discard = `mutation ($input: DiscardDraftInput!) { discardDraft(input: $input) {
  discarded { kind slug version } problems { code path message } } }`;
const saveFoods = `mutation ($input: SaveFoodsInput!) { saveFoods(input: $input) {
  foods { slug aisle } changed problems { code path file line column } } }`;
const planDraft = `query ($slug: String!) { planDraft(publisher: "${publisher}", slug: $slug) {
  kind slug title version updatedAt updatedBy publisher { slug } document { text format hash } } }`;
const check = `query ($slug: String!) { checkDraft(publisher: "${publisher}", slug: $slug) {
  version problems { code file line column path message } findings { code severity file line column } } }`;

const component = `# my own remark
kind: component
slug: mashed-swede
title: Mashed swede
measured-in: metric
lines:
  - { food: swede, amount: 500 g } # from the third bed
yield: { amount: 450 g }
steps:
  - { do: Boil and mash., time: 25 min, appliance: hob-ring, uses: [swede] }
`;
const plan = `kind: plan
publisher: ${publisher}
slug: swede-week
title: Swede week
locale: en-GB
measured-in: metric
serves: 2
meals:
  - slug: mash
    title: Mash
    day: 0
    lines:
      - { component: mashed-swede, amount: 400 g }
      - { food: salt, rule: to taste }
`;

interface Problem {
  readonly code: string;
  readonly message: string;
  readonly path: readonly string[];
  readonly file: string | null;
  readonly line: number | null;
  readonly column: number | null;
}
type Payload = Record<string, unknown> & { readonly problems: readonly Problem[] };

const setUp = async (database: TestDatabase): Promise<TestApp> => {
  const app = await openTestApp(database.data);
  await database.data.publishers.save({ slug: publisher, name: "Third Gate" });
  await database.data.publishers.save({ slug: "elsewhere", name: "Elsewhere" });
  await database.data.foods.save(demo.foods);
  return app;
};

const changer =
  (app: TestApp) =>
  async (query: string, input: object, token: string): Promise<Payload> => {
    const { data, errors } = await app.ask(query, { input }, token);
    expect(errors).toEqual([]);
    return Object.values(data ?? {})[0] as Payload;
  };

describeOnBothDatabases("drafts over GraphQL", (open) => {
  let database: TestDatabase;
  let app: TestApp;
  let writer: string;
  let reader: string;
  let operator: string;
  let change: ReturnType<typeof changer>;

  beforeAll(async () => {
    database = await open();
    app = await setUp(database);
    change = changer(app);
    writer = await app.tokenFor(publisher, ["WRITE"]);
    reader = await app.tokenFor(publisher, ["READ_DRAFTS"]);
    operator = await app.tokenFor(null, ["WRITE", "READ_DRAFTS"]);
  });
  afterAll(() => app.close());

  const read = async (slug: string, token = reader): Promise<Record<string, unknown> | null> => {
    const { data, errors } = await app.ask(planDraft, { slug }, token);
    expect(errors).toEqual([]);
    return data?.["planDraft"] as Record<string, unknown> | null;
  };

  it("are saved together in any order, and keep their writer's text to the byte", async () => {
    const text = `${plan}--- # and what it draws on\n${component}`;
    const saved = await change(saveDocuments, { publisher, texts: [{ name: "week.yaml", text }] }, writer);
    expect(saved).toEqual({
      drafts: [
        { kind: "COMPONENT", slug: "mashed-swede", version: 1 },
        { kind: "PLAN", slug: "swede-week", version: 1 },
      ],
      foods: [],
      problems: [],
    });
    const draft = await read("swede-week");
    expect(draft).toMatchObject({
      kind: "PLAN",
      title: "Swede week",
      version: 1,
      updatedBy: writer.slice(11, 19),
      publisher: { slug: publisher },
      document: { text: plan, format: "YAML", hash: createHash("sha256").update(plan).digest("hex") },
    });
    const { data } = await app.ask(
      `{ componentDraft(publisher: "${publisher}", slug: "mashed-swede") { document { text } }
        missing: componentDraft(publisher: "${publisher}", slug: "swede-week") { slug } }`,
      {},
      reader,
    );
    expect(data).toEqual({
      componentDraft: { document: { text: `--- # and what it draws on\n${component}` } },
      missing: null,
    });
  });

  it("of every plan of the demo can be saved in one call, and checked without being published", async () => {
    const name = (folder: string, slug: string) => `seeds/${folder}/${slug}.yaml`;
    const files = [
      ...demo.plans.map(({ slug }) => name("plans", slug)),
      ...demo.components.map(({ slug }) => name("components", slug)),
    ];
    const texts = await Promise.all(files.map(async (file) => ({ name: file, text: await readFile(file, "utf8") })));
    const saved = await change(saveDocuments, { publisher, texts }, writer);
    expect(saved.problems).toEqual([]);
    expect(saved["drafts"]).toHaveLength(texts.length);
    const all = `{ drafts(publisher: "${publisher}", first: 100) { edges { node { kind slug document { text } } } } }`;
    const { data, errors } = await app.ask(all, {}, reader);
    expect(errors).toEqual([]);
    const { edges } = data?.["drafts"] as {
      edges: readonly { node: { kind: string; slug: string; document: { text: string } } }[];
    };
    const kept = new Map(edges.map(({ node }) => [`${node.kind} ${node.slug}`, node.document.text]));
    demo.plans.forEach(({ slug }, index) => expect(kept.get(`PLAN ${slug}`)).toBe(texts[index]?.text));

    for (const { slug } of demo.plans) {
      const checked = await app.ask(check, { slug }, reader);
      expect(checked.errors).toEqual([]);
      expect(checked.data?.["checkDraft"]).toMatchObject({ version: 1, problems: [] });
    }
    expect((await app.ask(`{ plans { edges { node { slug } } } }`)).data).toEqual({ plans: { edges: [] } });
  });

  it("show every problem of every text at once, each at its line and column, and change nothing", async () => {
    const before = await read("swede-week");
    const bad = plan.replace("serves: 2", "serves: two").replace("title: Mash", "title: Mash\n    tittle: Mesh");
    const worse = component.replace("500 g", "500 gg").replace("slug: mashed-swede", "slug: other-mash");
    const input = {
      publisher,
      texts: [
        { name: "plan.yaml", text: bad },
        { name: "made.yaml", text: `${worse}---\nkind: component\nslug: torn\ntitle: [` },
      ],
      expected: [{ kind: "PLAN", slug: "swede-week", version: 1 }],
    };
    const { problems, drafts } = await change(saveDocuments, input, writer);
    expect(drafts).toBeNull();
    const places = problems.map(({ code, file, line, column, path }) => ({
      code,
      file,
      line,
      column,
      path: path.join("."),
    }));
    expect(places).toEqual(
      expect.arrayContaining([
        { code: "BAD_SHAPE", file: "plan.yaml", line: 7, column: 9, path: "serves" },
        { code: "BAD_SHAPE", file: "plan.yaml", line: 11, column: 5, path: "meals.0.tittle" },
        { code: "UNKNOWN_UNIT", file: "made.yaml", line: 7, column: 28, path: "lines.0.amount" },
        expect.objectContaining({ code: "BAD_SHAPE", file: "made.yaml", line: 14 }),
      ]),
    );
    expect(places).toHaveLength(4);
    for (const { message } of problems) expect(message.length).toBeGreaterThan(10);
    expect(await read("swede-week")).toEqual(before);
  });

  it("are refused for what makes a plan uncomputable, in the document where it is to be mended", async () => {
    const circle = (slug: string, other: string) =>
      `kind: component\nslug: ${slug}\ntitle: ${slug}\nyield: { amount: 100 g }\nlines:\n  - { component: ${other}, amount: 10 g }\n`;
    const texts = [
      { name: "a.yaml", text: circle("ring-a", "ring-b") },
      { name: "b.yaml", text: circle("ring-b", "ring-a") },
    ];
    const { problems } = await change(saveDocuments, { publisher, texts }, writer);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ code: "COMPONENT_CYCLE", line: 1 });
    expect(["a.yaml", "b.yaml"]).toContain(problems[0]?.file);

    const lost = { name: "lost.yaml", text: circle("lost", "nowhere") };
    expect((await change(saveDocuments, { publisher, texts: [lost] }, writer)).problems).toMatchObject([
      { code: "UNKNOWN_COMPONENT", file: "lost.yaml", line: 6, path: ["lines", "0", "component"] },
    ]);
    const heavy = { name: "cups.yaml", text: circle("cups", "mashed-swede").replace("10 g", "2 pieces") };
    expect((await change(saveDocuments, { publisher, texts: [heavy] }, writer)).problems).toMatchObject([
      { code: "NOT_CONVERTIBLE", file: "cups.yaml", line: 6 },
    ]);
  });

  it("know a version, and refuse whoever read an older one, with both", async () => {
    const one = { publisher, name: "mash.yaml", text: component.replaceAll("mashed-swede", "versioned") };
    const saved = await change(saveComponent, one, operator);
    expect(saved["draft"]).toEqual({
      kind: "COMPONENT",
      slug: "versioned",
      version: 1,
      draft: { title: "Mashed swede", updatedBy: "operator" },
    });
    const again = { ...one, text: one.text.replace("Mashed swede", "Swede, mashed"), expectedVersion: 1 };
    expect(await change(saveComponent, again, operator)).toMatchObject({
      draft: { version: 2, draft: { title: "Swede, mashed" } },
    });
    const stale = await change(saveComponent, again, operator);
    expect(stale).toMatchObject({
      draft: null,
      problems: [{ code: "STALE_DRAFT", path: ["input", "expectedVersion"] }],
    });
    expect(stale.problems[0]?.message).toMatch(/version 2, not 1/);
    const unread = await change(saveComponent, one, operator);
    expect(unread.problems[0]?.message).toMatch(/already, at version 2/);
    const several = {
      publisher,
      texts: [{ name: "mash.yaml", text: one.text }],
      expected: [
        { kind: "COMPONENT", slug: "versioned", version: 7 },
        { kind: "PLAN", slug: "not-among-them", version: 1 },
      ],
    };
    expect((await change(saveDocuments, several, writer)).problems).toMatchObject([
      { code: "STALE_DRAFT", path: ["input", "expected", "0", "version"] },
      { code: "BAD_SHAPE", path: ["input", "expected", "1"] },
    ]);
    const gone = { publisher, kind: "COMPONENT", slug: "versioned" };
    expect((await change(discard, { ...gone, expectedVersion: 1 }, writer)).problems).toMatchObject([
      { code: "STALE_DRAFT" },
    ]);
    expect(await change(discard, { ...gone, expectedVersion: 2 }, writer)).toEqual({
      discarded: { kind: "COMPONENT", slug: "versioned", version: 2 },
      problems: [],
    });
    // Counts on, so that an old version fits nothing.
    expect(await change(saveComponent, one, operator)).toMatchObject({ draft: { version: 3 } });
  });

  it("take one document of the right kind where one is asked for", async () => {
    const of = (text: string) => change(savePlan, { publisher, text }, writer);
    expect((await of(component)).problems).toMatchObject([{ code: "BAD_SHAPE", path: ["input", "text"] }]);
    expect((await of(`${plan}---\n${component}`)).problems).toMatchObject([
      { code: "BAD_SHAPE", path: ["input", "text"] },
    ]);
    expect((await of("# nothing\n")).problems).toMatchObject([{ code: "BAD_SHAPE", path: ["input", "text"] }]);
    expect((await of("kind: plan\n")).problems.length).toBeGreaterThan(3);
    const json = {
      kind: "plan",
      $schema: "./plan.json",
      publisher,
      slug: "as-json",
      title: "J",
      locale: "en",
      "measured-in": "metric",
      serves: 1,
      meals: [{ slug: "m", title: "M", day: 0, lines: [{ food: "salt", rule: "to taste" }] }],
    };
    expect((await of(JSON.stringify(json, null, 1))).problems).toEqual([]);
    expect(await read("as-json")).toMatchObject({ document: { format: "JSON", text: JSON.stringify(json, null, 1) } });
    const foreign = await of(
      plan.replace(`publisher: ${publisher}`, "publisher: elsewhere").replace("swede-week", "foreign"),
    );
    expect(foreign.problems).toMatchObject([
      { code: "BAD_SHAPE", path: ["publisher"], file: "document", line: 2, column: 12 },
    ]);
    const torn = await change(
      savePlan,
      { publisher, text: plan.replace("slug: swede-week", "slug: torn").replace("Swede week", '"\\0"') },
      writer,
    );
    expect(torn.problems).toMatchObject([{ code: "BAD_SHAPE" }]);
  });

  it("hold the publisher's own foods, and only the operator saves those that all share", async () => {
    const food = "kind: food\nslug: lovage\nnames: { en: lovage }\naisle: fresh-herbs\nshopped-by: mass\n";
    const texts = [{ name: "lovage.yaml", text: food }];
    const { errors } = await app.ask(saveFoods, { input: { texts } }, writer);
    expect(errors).toMatchObject([{ extensions: { code: "FORBIDDEN" } }]);
    expect((await app.ask(`{ food(slug: "lovage") { slug } }`)).data).toEqual({ food: null });

    expect(await change(saveFoods, { texts }, operator)).toEqual({
      foods: [{ slug: "lovage", aisle: "fresh-herbs" }],
      changed: 1,
      problems: [],
    });
    expect(await change(saveFoods, { texts }, operator)).toMatchObject({ changed: 0 });
    const refused = await change(saveDocuments, { publisher, texts }, writer);
    expect(refused.problems).toMatchObject([
      { code: "FOOD_IS_SHARED", file: "lovage.yaml", line: 2, column: 7, path: ["slug"] },
    ]);
    expect(refused.problems[0]?.message).toMatch(/"extends: lovage"/);
    const extended = [{ name: "lovage.yaml", text: "kind: food\nslug: lovage\nextends: lovage\n" }];
    expect(await change(saveDocuments, { publisher, texts: extended }, writer)).toEqual({
      drafts: [{ kind: "FOOD", slug: "lovage", version: 1 }],
      foods: [{ slug: "lovage" }],
      problems: [],
    });
    expect((await change(saveFoods, { texts: extended }, operator)).problems).toMatchObject([
      { code: "BAD_SHAPE", file: "lovage.yaml", path: ["extends"] },
    ]);
    const mixed = [
      {
        name: "all.yaml",
        text: `${food.replace("slug: lovage", "slug: sorrel")}---\n${component.replaceAll("mashed-swede", "sorrel-mash").replace("food: swede", "food: sorrel").replace("uses: [swede]", "uses: [sorrel]")}`,
      },
    ];
    expect((await change(saveFoods, { texts: mixed }, operator)).problems).toMatchObject([
      { code: "BAD_SHAPE", file: "all.yaml", path: ["kind"] },
    ]);
    expect(await change(saveDocuments, { publisher, texts: mixed }, operator)).toMatchObject({
      drafts: [{ slug: "sorrel-mash" }],
      foods: [{ slug: "sorrel" }],
      problems: [],
    });
  });

  it("are nobody else's to see or to change", async () => {
    const other = await app.tokenFor("elsewhere", ["WRITE", "READ_DRAFTS", "PUBLISH", "IMPORT", "ADMIN"]);
    const asks: readonly [string, object][] = [
      [planDraft, { slug: "swede-week" }],
      [planDraft, { slug: "there-is-none" }],
      [check, { slug: "swede-week" }],
      [`{ drafts(publisher: "${publisher}") { edges { cursor } } }`, {}],
      [saveDocuments, { input: { publisher, texts: [{ name: "x", text: plan }] } }],
      [savePlan, { input: { publisher, text: plan, expectedVersion: 1 } }],
      [discard, { input: { publisher, kind: "PLAN", slug: "swede-week", expectedVersion: 1 } }],
    ];
    for (const [query, variables] of asks) {
      for (const [token, code] of [
        [other, "FORBIDDEN"],
        [undefined, "UNAUTHENTICATED"],
      ] as const) {
        const { errors, data } = await app.ask(query, { ...variables }, token);
        expect(errors, query).toMatchObject([{ extensions: { code } }]);
        expect(JSON.stringify(data)).not.toContain("Swede");
      }
    }
    // No scope holds another: a writer who may not read sees what was saved, and nothing of the draft.
    const own = { publisher, text: component.replaceAll("mashed-swede", "unread") };
    const { data, errors } = await app.ask(saveComponent, { input: own }, writer);
    expect(errors).toMatchObject([
      { path: ["saveComponentDraft", "draft", "draft"], extensions: { code: "FORBIDDEN" } },
    ]);
    expect(data).toMatchObject({ saveComponentDraft: { draft: { version: 1, draft: null } } });
  });

  it("come back the same under one idempotency key, and are saved once", async () => {
    const input = {
      publisher,
      text: plan.replace("slug: swede-week", "slug: once"),
      idempotencyKey: "once-and-for-all",
    };
    const first = await change(savePlan, input, writer);
    expect(first).toMatchObject({ draft: { version: 1 }, problems: [] });
    expect(await change(savePlan, input, writer)).toEqual(first);
    const other = await change(savePlan, { ...input, text: `${input.text}# more\n` }, writer);
    expect(other.problems).toMatchObject([{ code: "KEY_REUSED" }]);
    expect(await read("once")).toMatchObject({ version: 1 });
    const trail = await database.data.auditTrail.page(publisher, { first: 100, after: null, last: null, before: null });
    expect(trail.items.filter(({ item }) => item.subject === "once")).toMatchObject([
      { item: { action: "SAVE_DRAFTS", subjectKind: "PLAN_DRAFT", before: null, after: 1 } },
    ]);
  });

  it("page through a cursor that fits, and refuse another", async () => {
    const page = `query ($after: String) { drafts(publisher: "${publisher}", kind: PLAN, first: 2, after: $after) {
      edges { node { slug kind } } pageInfo { endCursor hasNextPage } } }`;
    const seen: string[] = [];
    let after: string | null = null;
    for (;;) {
      const { data } = await app.ask(page, { after }, reader);
      const { edges, pageInfo } = data?.["drafts"] as {
        edges: readonly { node: { slug: string; kind: string } }[];
        pageInfo: { endCursor: string; hasNextPage: boolean };
      };
      seen.push(...edges.map(({ node }) => node.slug));
      expect(edges.every(({ node }) => node.kind === "PLAN")).toBe(true);
      after = pageInfo.endCursor;
      if (!pageInfo.hasNextPage) break;
    }
    expect(seen).toEqual(seen.toSorted());
    expect(new Set(seen).size).toBe(seen.length);
    expect(seen.length).toBeGreaterThan(4);
    const { errors } = await app.ask(page, { after: "nonsense" }, reader);
    expect(errors).toMatchObject([{ extensions: { code: "BAD_SHAPE" } }]);
  });
});

describeOnServer("drafts under many writers at once", (open) => {
  let app: TestApp;
  let writer: string;
  let change: ReturnType<typeof changer>;
  beforeAll(async () => {
    app = await setUp(await open());
    change = changer(app);
    writer = await app.tokenFor(publisher, ["WRITE", "READ_DRAFTS"]);
    await change(saveDocuments, { publisher, texts: [{ name: "all", text: `${plan}---\n${component}` }] }, writer);
  });
  afterAll(() => app.close());

  it("let exactly one of twenty win who read the same version, and tell the others both versions", async () => {
    const titles = Array.from({ length: 20 }, (_, index) => `Writer ${index}`);
    const answers = await Promise.all(
      titles.map((title) =>
        change(savePlan, { publisher, text: plan.replace("Swede week", title), expectedVersion: 1 }, writer),
      ),
    );
    const won = answers.flatMap(({ draft }, index) => (draft === null ? [] : [titles[index]]));
    expect(won).toHaveLength(1);
    for (const { draft, problems } of answers) {
      if (draft === null) expect(problems).toMatchObject([{ code: "STALE_DRAFT" }]);
    }
    const { data } = await app.ask(planDraft, { slug: "swede-week" }, writer);
    expect(data?.["planDraft"]).toMatchObject({ version: 2, title: won[0] });
  });

  it("do fifty equal calls of one key once, and answer each with that or that it still runs", async () => {
    const input = { publisher, text: plan.replace("slug: swede-week", "slug: fifty"), idempotencyKey: "fifty" };
    const answers = await Promise.all(Array.from({ length: 50 }, () => change(savePlan, input, writer)));
    const saved = { draft: { kind: "PLAN", slug: "fifty", version: 1 }, problems: [] };
    const done = answers.filter(({ problems }) => problems.length === 0);
    expect(done.length).toBeGreaterThan(0);
    for (const answer of done) expect(answer).toEqual(saved);
    for (const { problems } of answers)
      if (problems.length > 0) expect(problems).toMatchObject([{ code: "KEY_IN_USE" }]);
    expect(await change(savePlan, input, writer)).toEqual(saved);
  });

  it("save plans and components crosswise without waiting for each other for ever", async () => {
    const text = (order: number, round: number): string => {
      const both = [
        plan.replaceAll("swede-week", "crossed").replaceAll("mashed-swede", "crossed-mash"),
        component.replaceAll("mashed-swede", "crossed-mash"),
      ];
      return `# round ${round}\n${(order === 0 ? both : both.toReversed()).join("---\n")}`;
    };
    await change(saveDocuments, { publisher, texts: [{ name: "x", text: text(0, 0) }] }, writer);
    for (let version = 1; version <= 3; version++) {
      const expected = [
        { kind: "PLAN", slug: "crossed", version },
        { kind: "COMPONENT", slug: "crossed-mash", version },
      ];
      const answers = await Promise.all(
        Array.from({ length: 8 }, (_, index) =>
          change(
            saveDocuments,
            { publisher, texts: [{ name: "x", text: text(index % 2, version) }], expected },
            writer,
          ),
        ),
      );
      expect(answers.filter(({ problems }) => problems.length === 0)).toHaveLength(1);
    }
  });
});
