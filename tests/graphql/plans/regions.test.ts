import { afterAll, beforeAll, expect, it } from "vitest";
import { food } from "../../kit/builders.js";
import { describeOnBothDatabases, type TestDatabase } from "../../kit/databases.js";
import { prepareWriting, publisher } from "../../kit/plan-writer.js";
import { openTestApp, type Answer, type TestApp } from "../open-test-app.js";

const save = `mutation ($input: SaveDocumentsInput!) { saveDocuments(input: $input) {
  drafts { kind slug version } problems { code message path file line } } }`;
const publish = `mutation ($input: PublishPlanInput!) { publishPlan(input: $input) { created problems { code message } } }`;

const rice = `kind: component
slug: boiled-barley-cold
title: Boiled barley
measured-in: metric
lines:
  - { food: pearl-barley, amount: 300 g }
yield: { amount: 900 g }
keeps-as: cooked-rice
keeping: [{ place: fridge, days: 4 }]
steps:
  - { do: Boil., time: 40 min, hands: off, appliance: hob-ring, uses: [pearl-barley] }
`;
const plan = (slug: string, region: string | null): string => `kind: plan
publisher: ${publisher}
slug: ${slug}
title: Barley week
locale: en-GB
${region === null ? "" : `region: ${region}\n`}measured-in: metric
serves: 2
kitchen: { appliances: { hob-ring: 2 } }
meals:
  - slug: bowl
    title: Bowl
    day: 3
    lines:
      - { component: boiled-barley-cold, amount: 400 g }
      - { food: bought-rice, amount: 50 g }
`;
const described = (facts: string): string => `kind: publisher\nslug: ${publisher}\n${facts}\n`;

const problemsOf = ({ data, errors }: Answer) => {
  if (errors.length > 0) throw new Error(JSON.stringify(errors));
  return (data?.["saveDocuments"] as { readonly problems: readonly { readonly code: string }[] }).problems;
};

interface Scaled {
  readonly regions: readonly { readonly region: string; readonly owner: string }[];
  readonly storage: readonly {
    readonly place: string;
    readonly tooLateFor: readonly unknown[];
    readonly scope: {
      readonly asked: string | null;
      readonly used: string;
      readonly reach: string;
      readonly whose: string | null;
    } | null;
  }[];
  readonly allergens: {
    readonly asked: string | null;
    readonly whose: string | null;
    readonly reach: string;
    readonly lists: readonly { readonly region: string }[];
  };
  readonly warnings: readonly { readonly code: string }[];
}

describeOnBothDatabases("whose region an answer goes by", (open) => {
  let database: TestDatabase;
  let app: TestApp;
  let writer: string;

  beforeAll(async () => {
    database = await open();
    app = await openTestApp(database.data);
    writer = await prepareWriting(database);
    await database.data.foods.save([food("bought-rice", { keepsAs: "cooked-rice" })]);
    expect(problemsOf(await saved(writer, rice))).toEqual([]);
    await print(plan("nowhere", null));
    await print(plan("in-us", "us"));
  });
  afterAll(() => app.close());

  const saved = (token: string, text: string, expected: readonly unknown[] = []) =>
    app.ask(save, { input: { publisher, texts: [{ name: "a.yaml", text }], expected } }, token);

  async function print(text: string): Promise<void> {
    const slug = /slug: (\S+)\ntitle: Barley week/.exec(text)?.[1] ?? "";
    expect(problemsOf(await saved(writer, text))).toEqual([]);
    const done = await app.ask(publish, { input: { publisher, slug, expectedVersion: 1 } }, writer);
    expect(done.errors).toEqual([]);
    expect(done.data?.["publishPlan"]).toMatchObject({ created: true, problems: [] });
  }

  async function scaled(slug: string, household = "{}"): Promise<Scaled> {
    const { data, errors } = await app.ask(
      `{ plan(publisher: "${publisher}", slug: "${slug}") { scaled(servings: 2, household: ${household}) {
        regions { region owner }
        storage { place tooLateFor { meal { slug } } scope { asked used reach whose } }
        allergens { asked whose reach lists { region } }
        warnings { code }
      } } }`,
    );
    expect(errors).toEqual([]);
    return (data?.["plan"] as { readonly scaled: Scaled }).scaled;
  }
  const fridge = ({ storage }: Scaled) => storage.find(({ place }) => place === "FRIDGE");
  const describe = (facts: string) => saved(writer, described(facts));

  it("is the strictest of all where nobody says, and that is said", async () => {
    await describe("");
    const answer = await scaled("nowhere");
    expect(answer.regions).toEqual([]);
    expect(fridge(answer)?.scope).toMatchObject({ asked: null, whose: null, reach: "REGION_NOT_GIVEN" });
    expect(answer.allergens).toMatchObject({ asked: null, whose: null, reach: "REGION_NOT_GIVEN" });
    expect(answer.warnings.map(({ code }) => code)).toContain("REGION_NOT_GIVEN");
  });

  it("is the plan's where a reader gives none, then the publisher's; a reader's own goes first", async () => {
    await describe("region: GB");
    expect((await scaled("in-us")).regions).toEqual([
      { region: "US", owner: "PLAN" },
      { region: "GB", owner: "PUBLISHER" },
    ]);
    const ofPlan = await scaled("in-us");
    expect(fridge(ofPlan)?.scope).toEqual({ asked: null, used: "US", reach: "REGION", whose: "PLAN" });
    expect(ofPlan.allergens).toMatchObject({ asked: null, whose: "PLAN", reach: "REGION", lists: [{ region: "US" }] });
    const ofPublisher = await scaled("nowhere");
    expect(fridge(ofPublisher)?.scope).toEqual({ asked: null, used: "GB", reach: "REGION", whose: "PUBLISHER" });
    const own = await scaled("in-us", `{ region: "GB" }`);
    expect(fridge(own)?.scope).toEqual({ asked: "GB", used: "GB", reach: "REGION", whose: "READER" });
    for (const answer of [ofPlan, ofPublisher, own])
      expect(answer.warnings.map(({ code }) => code)).not.toContain("REGION_NOT_GIVEN");
  });

  it("is the same for a food, a component and the whole, whichever of them is asked", async () => {
    await describe("region: GB");
    const alone = async (slug: string, region: string) => {
      const asked = `storage(region: ${region}) { place scope { asked used reach whose } }`;
      const { data, errors } = await app.ask(
        `{ plan(publisher: "${publisher}", slug: "${slug}") { foods { slug ${asked} } components { ${asked} } } }`,
      );
      expect(errors).toEqual([]);
      const { foods, components } = data?.["plan"] as Record<string, readonly (Scaled & { readonly slug: string })[]>;
      const things = [foods?.find((each) => each.slug === "bought-rice"), components?.[0]];
      return things.map((each) => each && fridge(each)?.scope);
    };
    for (const [slug, region] of [
      ["in-us", null],
      ["nowhere", null],
      ["in-us", "GB"],
    ] as const) {
      const whole = fridge(await scaled(slug, `{ region: ${JSON.stringify(region)} }`))?.scope;
      expect(await alone(slug, JSON.stringify(region))).toEqual([whole, whole]);
    }
    // On its own it belongs to nobody's plan.
    const { data } = await app.ask(`{ food(slug: "bought-rice") { storage { scope { whose reach } } } }`);
    const [first] = (data?.["food"] as Scaled).storage;
    expect(first).toMatchObject({ scope: { whose: null, reach: "REGION_NOT_GIVEN" } });
  });

  it.each(["DE", "FR", "ES", "PL", "BR"])("never is another's in silence for a reader in %s", async (region) => {
    await describe("region: US");
    const answer = await scaled("nowhere", `{ region: "${region}" }`);
    const scope = fridge(answer)?.scope;
    expect(scope).toEqual({ asked: region, used: "US", reach: "REGION_WITHOUT_RULE", whose: "PUBLISHER" });
    await describe("");
    expect(fridge(await scaled("nowhere", `{ region: "${region}" }`))?.scope).toMatchObject({
      asked: region,
      reach: "REGION_WITHOUT_RULE",
      whose: null,
    });
  });

  it("of a part of a country without rules is the country's", async () => {
    await describe("");
    const parts = await Promise.all(["US-OR", "us-or", "US"].map((code) => scaled("nowhere", `{ region: "${code}" }`)));
    expect(parts.map(({ regions }) => regions)).toEqual(Array(3).fill([{ region: "US", owner: "READER" }]));
    expect((await scaled("nowhere", `{ region: "US-WA" }`)).regions).toEqual([{ region: "US-WA", owner: "READER" }]);
  });

  it("can be read off the plan and the publisher", async () => {
    await describe(`region: US\ncurrency: XTS\nlanguages: [en-US, de]\ndescription: News of the allotments.`);
    const { data } = await app.ask(
      `{ plan(publisher: "${publisher}", slug: "in-us") { region publisher { region currency languages description } } }`,
    );
    expect(data).toEqual({
      plan: {
        region: "US",
        publisher: {
          ...{ region: "US", currency: "XTS", languages: ["en-US", "de"] },
          description: "News of the allotments.",
        },
      },
    });
    const [kept] = await database.data.publishers.bySlugs([publisher]);
    expect(kept).toMatchObject({ slug: publisher, name: "Third Gate", region: "US" });
  });
});

describeOnBothDatabases("a publisher's own document", (open) => {
  let database: TestDatabase;
  let app: TestApp;

  beforeAll(async () => {
    database = await open();
    app = await openTestApp(database.data);
    await database.data.publishers.save({ slug: publisher, name: "Third Gate" });
    await database.data.publishers.save({ slug: "elsewhere", name: "Elsewhere" });
  });
  afterAll(() => app.close());

  const saved = (token: string | undefined, text: string) =>
    app.ask(save, { input: { publisher, texts: [{ name: "publisher.yaml", text }] } }, token);
  const now = async () => (await database.data.publishers.bySlugs([publisher]))[0];

  it.each([
    ["none", null],
    ["WRITE", ["WRITE"]],
    ["PUBLISH", ["PUBLISH"]],
    ["READ_DRAFTS", ["READ_DRAFTS"]],
  ] as const)("is not taken from a token with the scope %s alone", async (_, scopes) => {
    const token = scopes === null ? undefined : await app.tokenFor(publisher, scopes);
    const { errors } = await saved(token, described("region: GB"));
    expect(errors[0]?.extensions["code"]).toMatch(/^(FORBIDDEN|UNAUTHENTICATED)$/);
    expect((await now())?.region).toBeNull();
  });

  it("is not taken of another publisher, nor from another publisher's token", async () => {
    const own = await app.tokenFor(publisher, ["WRITE", "PUBLISH"]);
    const [problem] = problemsOf(await saved(own, "kind: publisher\nslug: elsewhere\nregion: GB\n"));
    expect(problem).toMatchObject({ code: "BAD_SHAPE", path: ["slug"], line: 2 });
    const other = await app.tokenFor("elsewhere", ["WRITE", "PUBLISH"]);
    const { errors } = await saved(other, described("region: GB"));
    expect(errors[0]?.extensions["code"]).toBe("FORBIDDEN");
  });

  it.each([
    ["region: UK", "GB"],
    ["region: Atlantis", "US-WA"],
    ["currency: euro", "ISO 4217"],
    ["languages: [english]", "languages"],
    ["name: Another", "region | currency | languages | description"],
    ["quota: 9", "slug"],
  ])("is refused with `%s`, and says where and what to do", async (facts, said) => {
    const own = await app.tokenFor(publisher, ["WRITE", "PUBLISH"]);
    const [problem] = problemsOf(await saved(own, described(facts)));
    expect(problem).toMatchObject({ code: "BAD_SHAPE", file: "publisher.yaml", line: 3 });
    if (!said.includes("|") && said !== "slug") expect(JSON.stringify(problem)).toContain(said);
  });

  it("is in force at once, and takes back what it leaves out", async () => {
    const own = await app.tokenFor(publisher, ["WRITE", "PUBLISH"]);
    await saved(own, described("region: US\ncurrency: XTS\nlanguages: [en-US]"));
    expect(await now()).toMatchObject({ region: "US", currency: "XTS", languages: ["en-US"], description: null });
    await saved(own, described("description: Only this."));
    expect(await now()).toMatchObject({ region: null, currency: null, languages: [], description: "Only this." });
  });
});
