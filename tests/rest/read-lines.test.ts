import request from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnBothDatabases } from "../kit/databases.js";
import { demo, openTestApp, type TestApp } from "../graphql/open-test-app.js";

describeOnBothDatabases("lines that are read for an editor", (open) => {
  let app: TestApp;
  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    await app.deps.data.foods.save(demo.foods);
  });
  afterAll(() => app.close());

  const asked = { locale: "en-US", measures: "US_CUSTOMARY" };
  const overRest = (body: object) => request(app.app.server).post("/v1/read-lines").send(body);
  const query = `query ($texts: [String!]!, $locale: String!, $measures: MeasureSystem!, $publisher: String) {
    readLines(texts: $texts, locale: $locale, measures: $measures, publisher: $publisher) {
      problems { code path message }
      lines { written takes { food part amount preparation } problem { code message } mayName mayTake }
    }
  }`;
  const ask = (variables: object) => request(app.app.server).post("/graphql").send({ query, variables });

  const texts = ["2 cups pearl barley, rinsed", "juice and zest of 2 lemons", "salt, to taste", "100 g perl barley"];
  const meant = [
    [{ food: "pearl-barley", part: null, amount: "2 us-cup", preparation: "rinsed" }],
    [
      { food: "lemon", part: "juice", amount: "2 piece", preparation: null },
      { food: "lemon", part: "zest", amount: "2 piece", preparation: null },
    ],
    [{ food: "salt", part: null, amount: null, preparation: null }],
    [],
  ];

  it("says what each means, without a token, in the same way over GraphQL and REST", async () => {
    const rest = await overRest({ ...asked, texts }).expect(200);
    const graphql = await ask({ ...asked, texts }).expect(200);
    const lines = (graphql.body as { data: { readLines: { lines: object[]; problems: object[] } } }).data.readLines;
    expect(lines.problems).toEqual([]);
    expect(lines.lines).toMatchObject(meant.map((takes, at) => ({ written: texts[at], takes })));
    expect((rest.body as { lines: object[] }).lines).toMatchObject(
      meant.map((takes, at) => ({ written: texts[at], takes })),
    );
    for (const last of [lines.lines.at(-1), (rest.body as { lines: object[] }).lines.at(-1)])
      expect(last).toMatchObject({ mayName: ["pearl-barley"] });
    expect(lines.lines.at(-1)).toMatchObject({ problem: { code: "LINE_OPEN" } });
  });

  it.each([
    ["en-US", "2 us-tbsp"],
    ["en-AU", "2 au-tbsp"],
    ["en-GB", "2 metric-tbsp"],
    ["en", "2 metric-tbsp"],
  ])("takes the spoons of the country of %s where nobody says whose they are", async (locale, amount) => {
    const lines = [{ takes: [{ food: "pearl-barley", amount }] }];
    const rest = await overRest({ locale, texts: ["2 tbsp pearl barley"] }).expect(200);
    expect(rest.body).toMatchObject({ lines });
    const short =
      "query ($texts: [String!]!, $locale: String!) { readLines(texts: $texts, locale: $locale) { lines { takes { food amount } } } }";
    const graphql = await request(app.app.server)
      .post("/graphql")
      .send({ query: short, variables: { locale, texts: ["2 tbsp pearl barley"] } });
    expect(graphql.body).toMatchObject({ data: { readLines: { lines } } });
  });

  it("refuses too many, too long ones and no language, saying where", async () => {
    const many = Array.from({ length: 201 }, () => "salt, to taste");
    const found = async (variables: object) =>
      ((await ask({ ...asked, ...variables })).body as { data: { readLines: { problems: object[] } } }).data.readLines
        .problems;
    expect(await found({ texts: many })).toMatchObject([{ code: "TOO_LARGE", path: ["texts"] }]);
    expect(await found({ texts: ["salt", "x".repeat(501)] })).toMatchObject([
      { code: "TOO_LARGE", path: ["texts", "1"] },
    ]);
    expect(await found({ texts: ["salt"], locale: "tongues" })).toMatchObject([
      { code: "BAD_SHAPE", path: ["locale"] },
    ]);
    await overRest({ ...asked, texts: many }).expect(422);
    await overRest({ ...asked, texts: ["x".repeat(501)] }).expect(422);
    await overRest({ ...asked, texts: ["salt"], measures: "ELLS" }).expect(422);
  });

  it("knows components that are not published only with the right to read drafts", async () => {
    const publisher = "third-gate-allotments";
    await app.deps.data.publishers.save({ slug: publisher, name: "Third Gate" });
    const document = `kind: component
slug: sodden-barley
title: Sodden barley
measured-in: metric
lines:
  - { food: pearl-barley, amount: 300 g }
yield: { amount: 900 g }
steps:
  - { do: Boil., time: 40 min, hands: off, appliance: hob-ring, uses: [pearl-barley] }
`;
    const write = await app.tokenFor(publisher, ["WRITE"]);
    const saved = await app.ask(
      "mutation ($input: SaveDocumentsInput!) { saveDocuments(input: $input) { problems { message } } }",
      { input: { publisher, texts: [{ name: "a.yaml", text: document }], expected: [] } },
      write,
    );
    expect(saved).toMatchObject({ errors: [], data: { saveDocuments: { problems: [] } } });
    const variables = { ...asked, texts: ["1/2 batch sodden barley"], publisher };
    const read = async (token?: string): Promise<unknown> => {
      const { data, errors } = await app.ask(query, variables, token);
      expect(errors).toEqual([]);
      return (data as { readLines: { lines: readonly unknown[] } }).readLines.lines[0];
    };
    const elsewhere = await app.tokenFor(null, ["WRITE"]);
    for (const token of [undefined, write, elsewhere]) {
      const line = await read(token);
      expect(line).toMatchObject({ takes: [], problem: { code: "LINE_OPEN" } });
      expect(JSON.stringify(line)).not.toContain("sodden-barley");
    }
    const reader = await app.tokenFor(publisher, ["READ_DRAFTS"]);
    expect(await read(reader)).toMatchObject({ problem: null });
    // The same over REST: published foods to everybody, drafts with the scope.
    const over = async (token: string | null) => {
      const asking = request(app.app.server).post("/v1/read-lines");
      const sent = token === null ? asking : asking.set("authorization", `Bearer ${token}`);
      const { body } = await sent.send(variables).expect(200);
      return (body as { lines: readonly unknown[] }).lines[0];
    };
    expect(await over(reader)).toMatchObject({ problem: null });
    for (const token of [null, write]) expect(JSON.stringify(await over(token))).not.toContain("sodden-barley");
  });
});
