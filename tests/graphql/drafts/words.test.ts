import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { prepareWriting, publisher } from "../../kit/plan-writer.js";
import { openTestApp, type TestApp } from "../open-test-app.js";

const texts = "introduction { source html text } notes { text } tips { html }";

const component = (more = ""): string => `kind: component
slug: worded-barley
title: Boiled barley
measured-in: metric
lines: [{ food: pearl-barley, amount: 300 g }]
yield: { amount: 900 g }
steps: [{ do: Boil., time: 40 min, hands: off, appliance: hob-ring, uses: [pearl-barley] }]
introduction: Barley *waits* for you.
equipment: [a wide pot]
credits: [{ name: An old letter, url: "https://plans.example/letter", licence: CC0, adapted: yes }]
${more}`;
const plan = (introduction: string, more = ""): string => `kind: plan
publisher: ${publisher}
slug: worded
title: Barley week
locale: en-GB
currency: XTS
measured-in: metric
serves: 2
kitchen: { appliances: { hob-ring: 2 } }
introduction: |   # a block keeps its lines
${introduction.replace(/^/gm, "  ")}
tags: [One  pot, winter]
${more}meals:
  - slug: bowl
    title: Bowl
    day: 1
    notes: |-
      Eat it

      - warm
    tips: Salt last.
    lines: [{ component: worded-barley, amount: 400 g }]
`;

describeOnBothDatabases("words of a writer", (open) => {
  let app: TestApp;
  let writer: string;

  beforeAll(async () => {
    const database = await open();
    app = await openTestApp(database.data);
    writer = await prepareWriting(database);
  });
  afterAll(() => app.close());

  const save = async (documents: readonly string[], version: number | null) => {
    const expected =
      version === null
        ? []
        : [
            { kind: "PLAN", slug: "worded", version },
            { kind: "COMPONENT", slug: "worded-barley", version },
          ];
    const input = { publisher, texts: documents.map((text, at) => ({ name: `${at}.yaml`, text })), expected };
    const { data, errors } = await app.ask(
      `mutation ($input: SaveDocumentsInput!) { saveDocuments(input: $input) { problems { code message line } } }`,
      { input },
      writer,
    );
    expect(errors).toEqual([]);
    return (data?.["saveDocuments"] as { problems: { code: string; message: string; line: number }[] }).problems;
  };
  const publish = async (expectedVersion: number) => {
    const { data } = await app.ask(
      `mutation ($input: PublishPlanInput!) { publishPlan(input: $input) { created problems { message } } }`,
      { input: { publisher, slug: "worded", expectedVersion } },
      writer,
    );
    expect(data?.["publishPlan"]).toEqual({ created: true, problems: [] });
  };
  const first = "First *one* thing.\n\n1. then\n2. [another](https://plans.example/b?c=d&e=f)\n";

  it("are kept as written, frozen, and read back in every form", async () => {
    expect(await save([plan(first), component()], null)).toEqual([]);
    const draft = await app.ask(
      `{ planDraft(publisher: "${publisher}", slug: "worded") { document { text } } }`,
      {},
      writer,
    );
    expect(draft.data?.["planDraft"]).toEqual({ document: { text: plan(first) } });
    await publish(1);
    const { data, errors } = await app.ask(
      `{ plan(publisher: "${publisher}", slug: "worded") { currency tags equipment credits { name } ${texts}
        meals { ${texts} } components { equipment credits { name url licence adapted } ${texts} } } }`,
      {},
    );
    expect(errors).toEqual([]);
    expect(data?.["plan"]).toMatchObject({
      currency: "XTS",
      tags: ["One pot", "winter"],
      equipment: [],
      credits: [],
      introduction: {
        source: first,
        html: `<p>First <em>one</em> thing.</p>\n<ol>\n<li>then</li>\n<li><a href="https://plans.example/b?c=d&amp;e=f" rel="noopener nofollow">another</a></li>\n</ol>`,
        text: "First one thing.\n\n1. then\n2. another (https://plans.example/b?c=d&e=f)",
      },
      notes: null,
      meals: [{ introduction: null, notes: { text: "Eat it\n\n- warm" }, tips: { html: "<p>Salt last.</p>" } }],
      components: [
        {
          equipment: ["a wide pot"],
          credits: [{ name: "An old letter", url: "https://plans.example/letter", licence: "CC0", adapted: true }],
          introduction: { html: "<p>Barley <em>waits</em> for you.</p>" },
        },
      ],
    });
  });

  it("are named by a comparison where they changed", async () => {
    expect(await save([plan("Another beginning."), component("notes: New.\n")], 1)).toEqual([]);
    const { data } = await app.ask(
      `{ compare(publisher: "${publisher}", slug: "worded") { kind path before after } }`,
      {},
      writer,
    );
    expect(JSON.stringify(data)).toContain("INTRODUCTION");
    expect(JSON.stringify(data)).toContain("Another beginning.");
    expect(JSON.stringify(data)).toContain("NOTES");
  });

  it("are refused with their line where they are more than words", async () => {
    for (const [text, told] of [
      ["Fine.\n\n# Not a heading", "line 3"],
      ["<b>bold</b>", "no HTML"],
      ["![x](https://plans.example/x.png)", "no picture"],
      ["[x](javascript:alert(1))", "https://"],
      ["`code`", "no code"],
      ["> said", "no quotation"],
    ] as const) {
      const problems = await save([plan(text), component()], 2);
      expect(problems.map(({ code }) => code)).toEqual(["BAD_SHAPE"]);
      expect(problems[0]?.message).toContain(told);
    }
    const [twice] = await save([plan("Fine.").replace("winter]", "ONE POT]"), component()], 2);
    expect(twice?.message).toContain("not there yet");
    const [long] = await save([plan("a".repeat(8001)), component()], 2);
    expect(long).toMatchObject({ code: "TOO_LARGE" });
  });
});
