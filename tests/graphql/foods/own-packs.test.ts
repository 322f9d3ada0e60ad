import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { openTestApp, type TestApp } from "../open-test-app.js";

const saveDocuments = `mutation ($input: SaveDocumentsInput!) { saveDocuments(input: $input) {
  drafts { kind slug version } problems { code message path } } }`;
const publish = `mutation ($input: PublishPlanInput!) { publishPlan(input: $input) {
  plan { revision } problems { code message } } }`;
const oneFood = `query ($slug: String!, $publisher: String) { food(slug: $slug, publisher: $publisher) {
  name owner { slug } packs { code price { amount } source { title } } allergens { code presence } } }`;

const kale = `kind: food
slug: kale
names: { en: kale, de: Grünkohl }
aisle: vegetables
shopped-by: mass
measures: [{ name: bunch, one: bunch, many: bunches, grams: 200, source: writer }]
allergens: [{ code: celery, presence: does not contain, source: writer }]
packs: [{ id: bag, name: bag, content: 200 g, price: 1.00 XTS, seen: 2026-01-01, source: invented }]
`;
const packsOf = (slug: string, id: string, price: string, content = "1 kg"): string => `kind: packs
slug: ${slug}
packs: [{ id: ${id}, name: crate, content: ${content}, price: ${price} XTS, seen: 2026-02-01, source: writer }]
`;
const planOf = (publisher: string) => `kind: plan
publisher: ${publisher}
slug: week
title: A week
locale: en-GB
region: GB
measured-in: metric
serves: 2
meals: [{ slug: stew, title: Stew, day: 0, lines: [{ food: kale, amount: 600 g }] }]
`;

describeOnBothDatabases("packs that a publisher adds to a food", (open) => {
  let app: TestApp;
  const tokens = new Map<string, string>();

  beforeAll(async () => {
    const { data } = await open();
    app = await openTestApp(data);
    for (const slug of ["north-gate", "south-gate"]) {
      await data.publishers.save({ slug, name: slug });
      tokens.set(slug, await app.tokenFor(slug, ["WRITE", "READ_DRAFTS", "PUBLISH"]));
    }
    const operator = await app.tokenFor(null, ["WRITE"]);
    const input = { texts: [{ name: "kale.yaml", text: kale }] };
    const query = `mutation ($input: SaveFoodsInput!) { saveFoods(input: $input) { problems { code message } } }`;
    expect((await app.ask(query, { input }, operator)).data).toEqual({ saveFoods: { problems: [] } });
  });
  afterAll(() => app.close());

  const change = async (query: string, input: object, publisher: string) => {
    const { data, errors } = await app.ask(query, { input: { publisher, ...input } }, tokens.get(publisher));
    expect(errors).toEqual([]);
    return Object.values(data ?? {})[0] as {
      readonly drafts: unknown;
      readonly plan: unknown;
      readonly problems: readonly { readonly code: string; readonly path: readonly string[] }[];
    };
  };
  const save = (publisher: string, text: string, expected: readonly object[] = []) =>
    change(saveDocuments, { texts: [{ name: "all.yaml", text }], expected }, publisher);
  const food = async (as: string | null, of: string | null) => {
    const token = as === null ? undefined : tokens.get(as);
    const { data, errors } = await app.ask(oneFood, { slug: "kale", publisher: of }, token);
    expect(errors).toEqual([]);
    return data?.["food"] as { readonly packs: readonly { readonly code: string }[]; readonly owner: unknown };
  };
  const codes = async (as: string | null, of: string | null) => (await food(as, of)).packs.map(({ code }) => code);

  it("go before those that all share, for its own plans alone, and change nothing else of the food", async () => {
    const saved = await save("north-gate", packsOf("kale", "crate", "3.00"));
    expect(saved).toEqual({ drafts: [{ kind: "PACKS", slug: "kale", version: 1 }], problems: [] });
    expect(await codes("north-gate", "north-gate")).toEqual(["crate", "bag"]);
    expect((await food("north-gate", "north-gate")) as object).toMatchObject({
      name: "kale",
      allergens: [{ code: "celery", presence: "DOES_NOT_CONTAIN" }],
    });
    for (const as of [null, "south-gate"]) expect(await codes(as, "north-gate")).toEqual(["bag"]);
    expect(await codes("north-gate", null)).toEqual(["bag"]);
    expect((await save("north-gate", packsOf("kale", "crate", "3.50"))).problems).toMatchObject([
      { code: "STALE_DRAFT" },
    ]);
  });

  it("are frozen with a plan, and are the packs of all publishers on a list over their plans, in any order", async () => {
    expect((await save("north-gate", planOf("north-gate"))).problems).toEqual([]);
    // In bunches, which only the food itself has; the packs and the plan in one call.
    const south = `${packsOf("kale", "crate", "2.00", "4 bunches")}---\n${planOf("south-gate")}`;
    expect((await save("south-gate", south)).problems).toEqual([]);
    for (const publisher of tokens.keys())
      expect(await change(publish, { slug: "week", expectedVersion: 1 }, publisher)).toEqual({
        plan: { revision: 1 },
        problems: [],
      });
    expect(await codes(null, "north-gate")).toEqual(["crate", "bag"]);
    const list = async (publishers: readonly string[]) => {
      const plans = publishers
        .map((publisher) => `{ publisher: "${publisher}", slug: "week", servings: 2 }`)
        .join(", ");
      const { data, errors } = await app.ask(
        `{ shoppingList(plans: [${plans}], household: { region: "GB" }) { lines { need { grams } food { slug packs { code } } buy { count pack { code } } } } }`,
      );
      expect(errors).toEqual([]);
      return data;
    };
    const both = await list(["north-gate", "south-gate"]);
    expect(await list(["south-gate", "north-gate"])).toEqual(both);
    expect(both).toMatchObject({
      shoppingList: {
        lines: [
          {
            need: { grams: 1200 },
            food: { packs: [{ code: "bag" }, { code: "crate" }, { code: "crate-south-gate" }] },
          },
        ],
      },
    });
    const alone = await list(["north-gate"]);
    expect(JSON.stringify(alone)).not.toContain("south-gate");
  });

  it("go with a food of the publisher's own too, and are withdrawn without it", async () => {
    const own = `kind: food\nslug: oca\nnames: { en: oca }\naisle: vegetables\nshopped-by: mass\n`;
    const found = async () =>
      (await app.ask(oneFood, { slug: "oca", publisher: "north-gate" }, tokens.get("north-gate"))).data?.["food"];
    expect((await save("north-gate", `${packsOf("oca", "net", "1.00")}---\n${own}`)).problems).toEqual([]);
    expect(await found()).toMatchObject({ packs: [{ code: "net", price: { amount: "1.00" } }] });
    const draft = `{ packsDraft(publisher: "north-gate", slug: "oca") { kind document { text } } }`;
    expect((await app.ask(draft, {}, tokens.get("north-gate"))).data).toMatchObject({
      packsDraft: { kind: "PACKS", document: { text: packsOf("oca", "net", "1.00") } },
    });
    expect((await app.ask(draft, {}, tokens.get("south-gate"))).errors).toMatchObject([
      { extensions: { code: "FORBIDDEN" } },
    ]);
    const discard = `mutation ($input: DiscardDraftInput!) { discardDraft(input: $input) { discarded { kind } problems { code } } }`;
    await change(discard, { kind: "PACKS", slug: "oca", expectedVersion: 1 }, "north-gate");
    expect(await found()).toMatchObject({ packs: [] });
  });

  it("are refused for a food that is not there, that only another has, and ten thousand at once", async () => {
    for (const slug of ["kael", "oca"])
      expect((await save("south-gate", packsOf(slug, "net", "1.00"))).problems).toMatchObject([
        { code: "UNKNOWN_FOOD", path: ["slug"] },
      ]);
    const one = (at: number) => `{ id: p-${at}, name: bag, content: 1 g, seen: 2026-02-01, source: writer }`;
    const many = `kind: packs\nslug: kale\npacks:\n${Array.from({ length: 10_000 }, (_, at) => `  - ${one(at)}`).join("\n")}\n`;
    const refused = await save("south-gate", many, [{ kind: "PACKS", slug: "kale", version: 1 }]);
    expect(refused.problems.length).toBeGreaterThan(0);
    expect(await codes("south-gate", "south-gate")).toEqual(["crate", "bag"]);
    const input = { publisher: "north-gate", texts: [{ name: "x", text: packsOf("kale", "mine", "0.01") }] };
    const hostile = await app.ask(saveDocuments, { input }, tokens.get("south-gate"));
    expect(hostile.errors).toMatchObject([{ extensions: { code: "FORBIDDEN" } }]);
  });
});
