import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { openTestApp, type TestApp } from "../open-test-app.js";

const publisher = "north-gate";
const saveDocuments = `mutation ($input: SaveDocumentsInput!) { saveDocuments(input: $input) {
  drafts { kind slug version } foods { slug owner { slug } } problems { code message path file line } } }`;
const publish = `mutation ($input: PublishPlanInput!) { publishPlan(input: $input) {
  plan { slug revision } created problems { code message path file line } } }`;
const discard = `mutation ($input: DiscardDraftInput!) { discardDraft(input: $input) {
  discarded { kind slug version namedBy { kind slug } } problems { code message } } }`;
const oneFood = `query ($slug: String!, $publisher: String) { food(slug: $slug, publisher: $publisher) {
  id slug name owner { slug } extends packs { code } allergens { code presence } } }`;

const ownFood = (slug: string, facts = ""): string => `kind: food
slug: ${slug}
names: { en-GB: { one: ${slug.replaceAll("-", " ")} } }
aisle: vegetables
shopped-by: mass
single-ingredient: yes
keeping: [{ place: fridge, days: 5, source: writer }]
${facts}`;

const five = ["sea-beet", "oca", "skirret", "salsify", "good-king-henry"];

const plan = (title = "A week from the north beds") => `kind: plan
publisher: ${publisher}
slug: north-week
title: ${title}
locale: en-GB
region: GB
measured-in: metric
serves: 4
meals:
  - slug: stew
    title: Stew
    day: 0
    lines:
${five.map((slug) => `      - { food: ${slug}, amount: 200 g }`).join("\n")}
    steps: [{ do: Cut everything and simmer until soft., time: 40 min, appliance: hob-ring }]
`;

describeOnBothDatabases("a publisher's own foods", (open) => {
  let app: TestApp;
  let writer: string;
  let other: string;

  beforeAll(async () => {
    const database = await open();
    app = await openTestApp(database.data);
    await database.data.publishers.save({ slug: publisher, name: "North Gate" });
    await database.data.publishers.save({ slug: "south-gate", name: "South Gate" });
    writer = await app.tokenFor(publisher, ["WRITE", "READ_DRAFTS", "PUBLISH"]);
    other = await app.tokenFor("south-gate", ["WRITE", "READ_DRAFTS", "PUBLISH"]);
  });
  afterAll(() => app.close());

  const change = async (query: string, input: object, token = writer) => {
    const { data, errors } = await app.ask(query, { input }, token);
    expect(errors).toEqual([]);
    return Object.values(data ?? {})[0] as Record<string, unknown> & { readonly problems: readonly unknown[] };
  };
  const save = (text: string, expected: readonly object[] = [], token = writer, of = publisher) =>
    change(saveDocuments, { publisher: of, texts: [{ name: "all.yaml", text }], expected }, token);
  const read = async (slug: string, token?: string, of: string | null = publisher) =>
    (await app.ask(oneFood, { slug, publisher: of }, token)).data?.["food"] as Record<string, unknown> | null;

  it("take a plan of foods that nobody described before from nothing to readers, with one token", async () => {
    const saved = await save([...five.map((slug) => ownFood(slug)), plan()].join("---\n"));
    expect(saved.problems).toEqual([]);
    expect(saved["foods"]).toEqual(five.toSorted().map(() => expect.objectContaining({ owner: { slug: publisher } })));
    expect(saved["drafts"]).toEqual([
      ...five.map((slug) => ({ kind: "FOOD", slug, version: 1 })),
      { kind: "PLAN", slug: "north-week", version: 1 },
    ]);

    // Nobody else sees one of them yet.
    expect(await read("oca")).toBeNull();
    expect(await read("oca", other)).toBeNull();
    expect(await read("oca", writer)).toMatchObject({ slug: "oca", owner: { slug: publisher } });
    expect((await app.ask(`{ foods(first: 100) { edges { node { slug } } } }`, {}, writer)).data).toEqual({
      foods: { edges: [] },
    });

    const done = await change(publish, { publisher, slug: "north-week", expectedVersion: 1 });
    expect(done).toEqual({ plan: { slug: "north-week", revision: 1 }, created: true, problems: [] });
    const { data } = await app.ask(`{ plan(publisher: "${publisher}", slug: "north-week") {
      scaled(servings: 6) { shoppingList { lines { food { slug owner { slug } } } } } } }`);
    const { plan: found } = data as {
      plan: { scaled: { shoppingList: { lines: readonly { food: { slug: string; owner: unknown } }[] } } };
    };
    expect(found.scaled.shoppingList.lines.map(({ food }) => food.slug).toSorted()).toEqual(five.toSorted());
    expect(await read("oca")).toMatchObject({ slug: "oca", owner: { slug: publisher } });
    expect(await read("oca", undefined, null)).toBeNull();
    const node = await app.ask(`query ($id: ID!) { node(id: $id) { id ... on Food { slug } } }`, {
      id: (await read("oca"))?.["id"],
    });
    expect(node.data).toMatchObject({ node: { slug: "oca" } });
  });

  it("are what its readers have only once they are published again", async () => {
    const text = ownFood("oca", "allergens: [{ code: soy, presence: contains, source: writer }]\n");
    const stale = await save(text);
    expect(stale.problems).toMatchObject([{ code: "STALE_DRAFT" }]);
    expect((await save(text, [{ kind: "FOOD", slug: "oca", version: 1 }])).problems).toEqual([]);
    expect(await read("oca", writer)).toMatchObject({ allergens: [{ code: "soy", presence: "CONTAINS" }] });
    expect(await read("oca")).toMatchObject({ allergens: [] });
    const done = await change(publish, { publisher, slug: "north-week", expectedVersion: 1 });
    expect(done).toMatchObject({ plan: { revision: 2 }, problems: [] });
    expect(await read("oca")).toMatchObject({ allergens: [{ code: "soy", presence: "CONTAINS" }] });
  });

  it("are nobody else's: not in plans, not by extending them, not over their drafts", async () => {
    const theirs = plan().replace(publisher, "south-gate");
    const refused = await save(theirs, [], other, "south-gate");
    expect(refused.problems.length).toBe(five.length);
    expect(refused.problems).toMatchObject(five.map(() => ({ code: "UNKNOWN_FOOD" })));
    const extended = await save("kind: food\nslug: mine\nextends: oca\n", [], other, "south-gate");
    expect(extended.problems).toMatchObject([{ code: "UNKNOWN_FOOD", path: ["extends"] }]);
    const { errors } = await app.ask(
      `{ foodDraft(publisher: "${publisher}", slug: "oca") { document { text } } }`,
      {},
      other,
    );
    expect(errors).toMatchObject([{ extensions: { code: "FORBIDDEN" } }]);
    expect((await save(ownFood("oca"), [], other, "south-gate")).problems).toEqual([]);
    expect(await read("oca", writer)).toMatchObject({ owner: { slug: publisher } });
    expect(await read("oca", other, "south-gate")).toMatchObject({ owner: { slug: "south-gate" } });
  });

  it("build on one that all share, and what they do not say is taken from there", async () => {
    const operator = await app.tokenFor(null, ["WRITE"]);
    const shared = ownFood(
      "kale",
      "packs: [{ id: bag, name: bag, content: 200 g, seen: 2026-01-01, source: invented }]\n",
    );
    const saved = await app.ask(
      `mutation ($input: SaveFoodsInput!) { saveFoods(input: $input) { problems { code } } }`,
      { input: { texts: [{ name: "kale.yaml", text: shared }] } },
      operator,
    );
    expect(saved.data).toEqual({ saveFoods: { problems: [] } });
    expect((await save(ownFood("kale"))).problems).toMatchObject([{ code: "FOOD_IS_SHARED", path: ["slug"] }]);
    const own = `kind: food
slug: kale
extends: kale
packs: [{ id: crate, name: crate, content: 1 kg, price: 4.00 XTS, seen: 2026-02-01, source: writer }]
`;
    expect((await save(own)).problems).toEqual([]);
    expect(await read("kale", writer)).toMatchObject({
      ...{ name: "kale", owner: { slug: publisher }, extends: "kale" },
      packs: [{ code: "crate" }, { code: "bag" }],
    });
    expect(await read("kale", other)).toMatchObject({ owner: null, packs: [{ code: "bag" }] });
  });

  it("are withdrawn, and stay in what was published", async () => {
    const gone = await change(discard, { publisher, kind: "FOOD", slug: "skirret", expectedVersion: 1 });
    expect(gone).toEqual({
      discarded: { kind: "FOOD", slug: "skirret", version: 1, namedBy: [{ kind: "PLAN", slug: "north-week" }] },
      problems: [],
    });
    expect(await read("skirret", writer)).toBeNull();
    const { data } = await app.ask(`{ plan(publisher: "${publisher}", slug: "north-week") {
      meals { lines { food { slug } } } } }`);
    expect(JSON.stringify(data)).toContain("skirret");
    const refused = await change(publish, { publisher, slug: "north-week", expectedVersion: 1 });
    expect(refused.problems).toMatchObject([{ code: "UNKNOWN_FOOD" }]);
    const back = await save(ownFood("skirret"));
    expect(back["drafts"]).toEqual([{ kind: "FOOD", slug: "skirret", version: 2 }]);
  });

  it("are withdrawn with word of every draft that names them: in lines, in swaps and in routes", async () => {
    const component = (slug: string, line: string, route = "") => `kind: component
slug: ${slug}
title: ${slug}
yield: { amount: 1 kg, source: writer }
lines: [${line}]
${route}`;
    const plain = "{ food: salsify, amount: 1 kg }";
    const bought = `routes: [{ name: quick, kind: make, lines: [{ food: sea-kale, amount: 1 kg }] }]\n`;
    const texts = [
      ownFood("sea-kale"),
      component("in-a-line", "{ food: sea-kale, amount: 1 kg }"),
      component("in-a-swap", "{ food: salsify, amount: 1 kg, swaps: [{ food: sea-kale }] }"),
      component("in-a-route", plain, bought),
      component("elsewhere", plain),
    ];
    expect((await save(texts.join("---\n"))).problems).toEqual([]);
    // Another publisher's drafts of the same names are nobody's business.
    expect((await save(ownFood("sea-kale") + "---\n" + texts[1], [], other, "south-gate")).problems).toEqual([]);
    const which = { publisher, kind: "FOOD", slug: "sea-kale", expectedVersion: 1 };
    const gone = await change(discard, which);
    expect(gone["discarded"]).toMatchObject({
      namedBy: ["in-a-line", "in-a-route", "in-a-swap"].map((slug) => ({ kind: "COMPONENT", slug })),
    });
    const theirs = await app.ask(discard, { input: { ...which, publisher: "south-gate" } });
    expect(theirs.errors).toMatchObject([{ extensions: { code: "UNAUTHENTICATED" } }]);
    const hostile = await app.ask(discard, { input: { ...which, publisher: "south-gate" } }, writer);
    expect(hostile.errors).toMatchObject([{ extensions: { code: "FORBIDDEN" } }]);
  });
});
