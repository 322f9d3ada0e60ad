import request from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { demo, openTestApp, type TestApp } from "../open-test-app.js";

const publisher = "third-gate-allotments";
const slug = "bean-night";
const plan = `/v1/plans/${publisher}/${slug}`;

interface Listed {
  readonly food: string;
  readonly onHand: string | null;
}
interface Fault {
  readonly code: string;
  readonly where?: string;
  readonly message: string;
  readonly text?: string;
}
interface Said {
  readonly lines: readonly Listed[];
  readonly warnings: readonly string[];
  readonly problems: readonly Fault[];
}
interface OnHand {
  readonly food: string;
  readonly amount: string;
  readonly unit?: string;
}
type Asked = { readonly onHand?: readonly OnHand[] } & Readonly<Record<string, unknown>>;

describeOnBothDatabases("what is on hand, as people say it", (open) => {
  let app: TestApp;

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    await loadSeeds(app.deps, demo);
  });
  afterAll(() => app.close());

  const graphql = async (household: Asked, servings: number | null = 3): Promise<Said> => {
    const query = `query ($h: HouseholdInput, $servings: Int) { shopping(plans: [{ publisher: "${publisher}", slug: "${slug}", servings: $servings }], household: $h) {
      list { lines { food { slug } onHand { text } } warnings { code } } problems { code where message text } } }`;
    const { data, errors } = await app.ask(query, { h: household, servings });
    expect(errors).toEqual([]);
    const { list, problems } = data?.["shopping"] as {
      readonly list: {
        readonly lines: readonly {
          readonly food: { readonly slug: string };
          readonly onHand: { readonly text: string };
        }[];
        readonly warnings: readonly { readonly code: string }[];
      } | null;
      readonly problems: readonly Fault[];
    };
    return {
      lines: (list?.lines ?? []).map(({ food, onHand }) => ({ food: food.slug, onHand: onHand?.text ?? null })),
      warnings: (list?.warnings ?? []).map(({ code }) => code).filter((code) => code.startsWith("ON_HAND")),
      problems,
    };
  };
  const onHandOf = ({ lines }: Said, food: string): string | null =>
    lines.find((line) => line.food === food)?.onHand ?? null;

  /** The same household in an address, by the names of addresses or by those of bodies. */
  const address = ({ onHand = [], ...rest }: Asked, name: "on-hand" | "onHand", more: string): string => {
    const query = new URLSearchParams(more);
    for (const { food, amount, unit } of onHand)
      query.append(name, `${food}:${amount}${unit === undefined ? "" : ` ${unit}`}`);
    for (const [key, value] of Object.entries(rest)) query.append(key, String(value));
    return query.toString();
  };

  it.each([
    [{ food: "honey", amount: "half a jar" }, { food: "honey", amount: "170", unit: "g" }, null],
    [{ food: "Honig", amount: "ein halbes Glas" }, { food: "honey", amount: "170", unit: "g" }, "de"],
    [{ food: "miel", amount: "un demi bocal" }, { food: "honey", amount: "170", unit: "g" }, "fr"],
    [{ food: "miód", amount: "pół słoika" }, { food: "honey", amount: "170", unit: "g" }, "pl"],
    [
      { food: "tinned-red-kidney-beans", amount: "2 tins" },
      { food: "tinned-red-kidney-beans", amount: "2", unit: "own:tin" },
      null,
    ],
    [{ food: "carrot", amount: "500g" }, { food: "carrot", amount: "500", unit: "g" }, null],
    [{ food: "carrot", amount: "1/2 lb" }, { food: "carrot", amount: "1/2", unit: "lb" }, null],
    [{ food: "Karotten", amount: "0,5 kg" }, { food: "carrot", amount: "1/2", unit: "kg" }, "de"],
    [{ food: "olive-oil", amount: "0,5 l" }, { food: "olive-oil", amount: "1/2", unit: "l" }, "de"],
    [{ food: "onion", amount: "3" }, { food: "onion", amount: "3", unit: "piece" }, null],
  ] as const)("%o is as much as %o (%s)", async (said, counted, locale) => {
    const more = locale === null ? {} : { locale };
    const wanted = await graphql({ onHand: [counted], ...more });
    expect(wanted.problems).toEqual([]);
    expect(await graphql({ onHand: [said], ...more })).toEqual(wanted);

    const written = await request(app.app.server).get(
      `${plan}/list?${address({ onHand: [counted], ...more }, "on-hand", "servings=3")}`,
    );
    expect(written.status).toBe(200);
    for (const name of ["on-hand", "onHand"] as const) {
      const got = await request(app.app.server).get(
        `${plan}/list?${address({ onHand: [said], ...more }, name, "servings=3")}`,
      );
      expect([got.status, got.text]).toEqual([200, written.text]);
    }
    const posted = await Promise.all(
      [said, counted].map((each) =>
        request(app.app.server)
          .post("/v1/shopping-list")
          .send({ plans: [{ publisher, slug, servings: 3 }], household: { onHand: [each], ...more } }),
      ),
    );
    expect(posted.map(({ status }) => status)).toEqual([200, 200]);
    expect(posted[0]?.text).toBe(posted[1]?.text);
  });

  it("takes it off the list", async () => {
    const before = onHandOf(await graphql({}), "onion");
    const after = onHandOf(await graphql({ onHand: [{ food: "onion", amount: "100g" }] }), "onion");
    expect([before, after]).toEqual([expect.stringMatching(/^0\b/), expect.stringMatching(/^[1-9½⅓⅔¼¾⅛]/)]);
  });

  it("asks which pack is meant where there are several, and takes each answer it offers", async () => {
    const { problems, lines } = await graphql({ onHand: [{ food: "olive-oil", amount: "half a bottle" }] });
    expect(lines).toEqual([]);
    expect(problems).toMatchObject([{ code: "AMBIGUOUS_UNIT", where: "household.onHand.0.amount" }]);
    const choices = /Write one of: (.*)\.$/.exec(problems[0]?.message ?? "")?.[1]?.split(", ") ?? [];
    expect(choices).toEqual(expect.arrayContaining(["bottle (500 ml)", "bottle (1 l)"]));
    for (const choice of choices)
      expect((await graphql({ onHand: [{ food: "olive-oil", amount: `half a ${choice}` }] })).problems).toEqual([]);
    const page = await request(app.app.server)
      .get(
        `/p/${publisher}/${slug}?${address({ onHand: [{ food: "olive-oil", amount: "eine Flasche" }], locale: "de" }, "on-hand", "servings=3")}`,
      )
      .set("host", "plans.example");
    expect(page.text).toContain("flasche (500 ml)");
    expect(page.text).toContain('value="eine Flasche"');
  });

  it("refuses a food that there is not with those near it, in each door and at its place", async () => {
    const onHand = [
      { food: "onion", amount: "1", unit: "kg" },
      { food: "carot", amount: "500g" },
    ];
    const { problems } = await graphql({ onHand });
    expect(problems).toMatchObject([{ code: "UNKNOWN_FOOD", where: "household.onHand.1.food" }]);
    expect(problems[0]?.message).toMatch(/There is no food "carot" here\. Did you mean .*carrots/);
    const got = await request(app.app.server).get(`${plan}?${address({ onHand }, "on-hand", "servings=3")}`);
    const posted = await request(app.app.server)
      .post("/v1/shopping-list")
      .send({ plans: [{ publisher, slug }], household: { onHand } });
    expect([got.status, posted.status]).toEqual([400, 422]);
    for (const { text } of [got, posted]) expect(text).toMatch(/There is no food \\"carot\\" here/);
    const german = await graphql({ onHand: [{ food: "Karoten", amount: "500g" }], locale: "de" });
    expect(german.problems[0]?.text).toMatch(/Ein Lebensmittel „Karoten“ gibt es hier nicht\. Meinten Sie .*Karotten/);
  });

  it("lets a food of other plans pass, as one that is not needed", async () => {
    const { problems, warnings } = await graphql({ onHand: [{ food: "Hirse", amount: "500g" }], locale: "de" });
    expect([problems, warnings]).toEqual([[], ["ON_HAND_NOT_NEEDED"]]);
  });

  it("refuses what is no amount, at its place", async () => {
    for (const amount of ["lots", "-1 g", "1/0 g", "500 g flour", "\0", "1.500 g", "500"]) {
      const { problems } = await graphql({ onHand: [{ food: "onion", amount }], locale: "de" });
      expect(
        problems.map(({ where }) => where),
        amount,
      ).toEqual(["household.onHand.0.amount"]);
    }
  });

  it("counts the eaters where nobody says for how many it is, in each door alike", async () => {
    const eaters = [
      { count: 38, portion: "1" },
      { count: 2, portion: "1/2" },
    ];
    const scaled = async (servings: number | null): Promise<unknown> => {
      const query = `query ($h: HouseholdInput, $servings: Int) { plan(publisher: "${publisher}", slug: "${slug}") {
        scaling(servings: $servings, household: $h) { scaled { servings } problems { where } } } }`;
      const { data, errors } = await app.ask(query, { h: { eaters }, servings });
      expect(errors).toEqual([]);
      return (data?.["plan"] as { readonly scaling: unknown }).scaling;
    };
    expect(await scaled(null)).toEqual({ scaled: { servings: 40 }, problems: [] });
    expect(await scaled(40)).toEqual(await scaled(null));
    expect(await scaled(39)).toMatchObject({ scaled: null, problems: [{ where: "household.eaters" }] });
    expect(await graphql({ eaters }, null)).toEqual(await graphql({ eaters }, 40));
    const list = (servings: object) =>
      request(app.app.server)
        .post("/v1/shopping-list")
        .send({ plans: [{ publisher, slug, ...servings }], household: { eaters } });
    expect((await list({})).text).toBe((await list({ servings: 40 })).text);
    const by = async (servings: string) =>
      (await request(app.app.server).get(`${plan}/list?eaters=38x1&eaters=2x1/2${servings}`)).text;
    expect(await by("")).toBe(await by("&servings=40"));
  });

  it("reads the names of bodies in an address, and both together", async () => {
    const of = async (query: string) => {
      const { status, text } = await request(app.app.server).get(`${plan}/list?servings=3&${query}`);
      expect(status, query).toBe(200);
      return text;
    };
    const both = await of("diet=vegan&diet=gluten-free&swap=walnuts:sunflower-seeds");
    expect(await of("diets=vegan&diets=gluten-free&swaps=walnuts:sunflower-seeds")).toBe(both);
    expect(await of("diet=vegan&diets=gluten-free&swaps=walnuts:sunflower-seeds")).toBe(both);
  });
});
