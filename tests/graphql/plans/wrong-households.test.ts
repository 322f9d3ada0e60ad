import { createHash } from "node:crypto";
import request from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { describeOnBothDatabases, describeOnEmbedded } from "../../kit/databases.js";
import { wrongHouseholds } from "../../kit/wrong-households.js";
import { demo, demoBundle, openTestApp, renamed, type TestApp } from "../open-test-app.js";

interface Shown {
  readonly code: string;
  readonly path: readonly string[];
  readonly where: string;
  readonly title: string;
  readonly message: string;
  readonly text: string;
  readonly parameters: readonly { readonly name: string; readonly values: readonly string[] }[];
}
type Scaling = { readonly scaled: object | null; readonly problems: readonly Shown[] };

const problems = "problems { code path where title message text parameters { name values } }";
const publisher = "third-gate-allotments";
const placesOf = (found: readonly Shown[]): readonly string[] => found.map(({ where }) => where).toSorted();

// What a database has to do with it is the same for one plan and for fifty.
describeOnEmbedded("wrong households over a page", (open) => {
  let app: TestApp;
  const pageOf50 = 50;

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    await loadSeeds(app.deps, demo);
    for (let at = 0; at < pageOf50; at++)
      await app.deps.data.revisions.publish(
        renamed(demoBundle(["bean-night", "roots-and-barley"][at % 2] ?? ""), `plan-${at}`),
        new Date(Date.UTC(2026, 1, 1, 0, at)),
      );
  });
  afterAll(() => app.close());

  it("leave all 50 plans of a page in the answer, each with everything that is wrong, and are no error", async () => {
    const aliases = 25;
    const wrong = wrongHouseholds(200);
    for (let from = 0; from < wrong.length; from += aliases) {
      const some = wrong.slice(from, from + aliases);
      const heads = some.map((_, at) => `$h${at}: HouseholdInput`).join(", ");
      const asked = some.map(
        (_, at) => `a${at}: scaling(servings: 2, household: $h${at}) { scaled { servings } problems { where text } }`,
      );
      const { status, data, errors } = await app.ask(
        `query (${heads}) { plans(first: ${pageOf50}) { edges { node { slug ${asked.join(" ")} } } } }`,
        Object.fromEntries(some.map(({ household }, at) => [`h${at}`, household])),
      );
      expect([status, errors]).toEqual([200, []]);
      const { edges } = data?.["plans"] as { readonly edges: readonly { readonly node: Record<string, Scaling> }[] };
      expect(edges).toHaveLength(pageOf50);
      for (const { node } of edges)
        some.forEach(({ household, at }, index) => {
          const { scaled, problems: found } = node[`a${index}`] ?? { scaled: null, problems: [] };
          expect(scaled).toBeNull();
          expect(placesOf(found), JSON.stringify(household)).toEqual(at);
          for (const { text } of found) expect(text).not.toBe("");
        });
    }
  }, 240_000);
});

describeOnBothDatabases("wrong households", (open) => {
  let app: TestApp;

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    await loadSeeds(app.deps, demo);
  });
  afterAll(() => app.close());

  const one = wrongHouseholds(16);
  const asAddress = (household: Readonly<Record<string, unknown>>): string => {
    const given = household as unknown as Readonly<Record<string, string>> & {
      readonly diets?: readonly string[];
      readonly avoidAllergens?: readonly string[];
      readonly dislikes?: readonly string[];
      readonly eaters?: readonly { readonly count: number; readonly portion: string }[];
      readonly swaps?: readonly { readonly from: string; readonly to: string }[];
      readonly onHand?: readonly { readonly food?: string; readonly amount: string; readonly unit: string }[];
      readonly kitchen?: {
        readonly cooks?: number;
        readonly appliances?: readonly { readonly appliance: string; readonly count: number }[];
      };
      readonly sessionStart?: { readonly local: string; readonly zone: string };
    };
    const query = new URLSearchParams({ servings: "2" });
    for (const name of ["region", "currency", "locale"]) if (given[name]) query.set(name, given[name]);
    for (const diet of given.diets ?? []) query.append("diet", diet);
    for (const allergen of given.avoidAllergens ?? []) query.append("avoid-allergen", allergen);
    for (const food of given.dislikes ?? []) query.append("dislike", food);
    for (const { count, portion } of given.eaters ?? []) query.append("eaters", `${count}x${portion}`);
    for (const { from, to } of given.swaps ?? []) query.append("swap", `${from}:${to}`);
    for (const { food = "", amount, unit } of given.onHand ?? []) query.append("on-hand", `${food}:${amount} ${unit}`);
    if (given.kitchen?.cooks !== undefined) query.set("cooks", String(given.kitchen.cooks));
    for (const { appliance, count } of given.kitchen?.appliances ?? [])
      query.append("appliance", `${appliance}:${count}`);
    if (given.sessionStart) query.set("start", given.sessionStart.local);
    if (given.sessionStart) query.set("zone", given.sessionStart.zone);
    return query.toString();
  };

  it.each(one)(
    "are told of in one shape and with one status, however they are asked: $at",
    async ({ household, at }) => {
      const { data } = await app.ask(
        `query ($h: HouseholdInput) {
        plan(publisher: "${publisher}", slug: "bean-night") { scaling(servings: 2, household: $h) { ${problems} } }
        shopping(plans: [{ publisher: "${publisher}", slug: "bean-night", servings: 2 }], household: $h) { list { lines { open } } ${problems} }
      }`,
        { h: household },
      );
      const scaling = (data?.["plan"] as { readonly scaling: Scaling }).scaling.problems;
      expect((data?.["shopping"] as Scaling).problems).toEqual(scaling);
      expect(placesOf(scaling)).toEqual(at);
      for (const { where: place, path } of scaling) expect(place).toBe(path.join("."));

      // An address leaves blank values out and has no way to leave out the food.
      const written =
        JSON.stringify(household).includes('""') || at.includes("household.onHand.0") ? null : asAddress(household);
      if (written === null) return;
      const rest = await request(app.app.server).get(`/v1/plans/${publisher}/bean-night?${written}`);
      const card = await request(app.app.server).get(`/p/${publisher}/bean-night/card?${written}`);
      expect([rest.status, card.status]).toEqual([400, 400]);
      expect(card.headers["content-type"]).toMatch(/^application\/problem\+json/);
      expect(card.body.problems).toEqual(rest.body.problems);
      // What an address cannot even be split into is wrong as a whole, and an amount stands there with its unit.
      const inAddress = at.map((each) => each.replace(/(?<=\.onHand\.\d+\.)unit$/, "amount"));
      for (const place of placesOf(rest.body.problems))
        expect(inAddress.some((each) => each === place || each.startsWith(`${place}.`))).toBe(true);
      expect(Object.keys(rest.body.problems[0])).toEqual(Object.keys(scaling[0] ?? {}));
    },
  );

  it("and unknown plans and servings are listed together over one list", async () => {
    const { data, errors } = await app.ask(
      `{ shopping(
          plans: [
            { publisher: "${publisher}", slug: "gone", servings: 2 }
            { publisher: "${publisher}", slug: "bean-night", servings: 0 }
            { publisher: "${publisher}", slug: "roots-and-barley", servings: 2 }
          ]
          household: { diets: ["vegn"], routes: { byName: [{ component: "boiled-lentils", route: "x" }] } }
        ) { list { lines { open } } ${problems} } }`,
    );
    expect(errors).toEqual([]);
    const { problems: found } = data?.["shopping"] as Scaling;
    expect(placesOf(found)).toEqual(["household.diets.0", "plans.0", "plans.1.servings"]);
  });

  it("are said in the reader's language, with the facts for those who make their own sentences", async () => {
    const { data } = await app.ask(
      `{ plan(publisher: "${publisher}", slug: "bean-night") {
          scaling(servings: 0, household: { locale: "de", onHand: [{ food: "carrot", amount: "1", unit: "gramz" }] }) { ${problems} }
      } }`,
    );
    const { problems: found } = (data?.["plan"] as { readonly scaling: Scaling }).scaling;
    expect(found).toMatchObject([
      {
        code: "UNKNOWN_UNIT",
        title: "Unbekannte Einheit",
        text: expect.stringContaining("Die Einheit „gramz“ gibt es nicht."),
        parameters: expect.arrayContaining([{ name: "unit", values: ["gramz"] }]),
      },
      { code: "SERVINGS_OUT_OF_RANGE", title: "Portionen außerhalb des Bereichs", where: "servings" },
    ]);
  });

  it("make answers by hash that caches keep, with what is wrong in them", async () => {
    const document = `query ($h: HouseholdInput) { plans(first: 2) { edges { node { slug scaling(servings: 2, household: $h) { scaled { title } problems { where } } } } } }`;
    const documentId = `sha256:${createHash("sha256").update(document).digest("hex")}`;
    const variables = JSON.stringify({ h: { diets: ["vegn"] } });
    const sent = await request(app.app.server).post("/graphql").send({ query: document, documentId });
    expect(sent.body.errors).toBeUndefined();
    const get = (headers: Readonly<Record<string, string>> = {}) =>
      request(app.app.server).get("/graphql").query({ documentId, variables }).set(headers);
    const first = await get();
    expect([first.status, first.headers["cache-control"]]).toEqual([
      200,
      "public, max-age=60, stale-while-revalidate=60",
    ]);
    expect(first.body.data.plans.edges).toHaveLength(2);
    expect(first.body.data.plans.edges[0].node.scaling).toEqual({
      scaled: null,
      problems: [{ where: "household.diets.0" }],
    });
    expect((await get({ "if-none-match": String(first.headers["etag"]) })).status).toBe(304);
  });

  it("are no reason to lose warnings: each has a title, names in place of slugs, and its facts", async () => {
    const warnings = "warnings { code title text message parameters { name values } }";
    const { data, errors } = await app.ask(
      `{ shopping(
          plans: [{ publisher: "${publisher}", slug: "bean-night", servings: 3 }]
          household: { locale: "de", diets: ["vegan"], onHand: [{ food: "millet", amount: "1", unit: "kg" }] }
        ) { list { ${warnings} } }
        plan(publisher: "${publisher}", slug: "bean-night") {
          scaling(servings: 3, household: { locale: "de", diets: ["vegan"] }) { scaled { ${warnings} } }
        } }`,
    );
    expect(errors).toEqual([]);
    type Warned = { readonly warnings: readonly Shown[] };
    const { list } = data?.["shopping"] as { readonly list: Warned };
    const { scaled } = (data?.["plan"] as { readonly scaling: { readonly scaled: Warned } }).scaling;
    expect(list.warnings).toContainEqual(
      expect.objectContaining({
        code: "ON_HAND_NOT_NEEDED",
        title: "Vorhanden, nicht gebraucht",
        parameters: expect.arrayContaining([{ name: "item", values: ["millet"] }]),
      }),
    );
    expect(scaled.warnings.map(({ text }) => text).join(" ")).toContain("Haselnüsse");
    for (const { title, text } of [...list.warnings, ...scaled.warnings]) {
      expect(title).not.toBe("");
      expect(text).not.toMatch(/ > /);
    }
    const rest = await request(app.app.server).get(
      `/v1/plans/${publisher}/bean-night?servings=3&locale=de&diet=vegan&on-hand=millet:1+kg`,
    );
    const overRest = [rest.body, rest.body.storage, rest.body.shoppingList].flatMap((each: Warned) => each.warnings);
    for (const { code, title, text, parameters } of [...list.warnings, ...scaled.warnings])
      expect(overRest).toContainEqual(expect.objectContaining({ code, title, text, parameters }));
  });
});
