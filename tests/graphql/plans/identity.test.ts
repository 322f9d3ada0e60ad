import request from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { demo, demoBundle, openTestApp, renamed, type TestApp } from "../open-test-app.js";

const publisher = "third-gate-allotments";
const slug = "corrected";
const times = "planId firstPublishedAt updatedAt revision meals { mealId slug } components { componentId slug }";

interface Dated {
  readonly planId: string;
  readonly firstPublishedAt: string;
  readonly updatedAt: string;
  readonly revision: number;
  readonly meals: readonly { readonly mealId: string; readonly slug: string }[];
  readonly components: readonly { readonly componentId: string; readonly slug: string }[];
}

describeOnBothDatabases("a plan over time", (open) => {
  let app: TestApp;
  const days = ["2026-01-01T06:00:00.000Z", "2026-01-20T06:00:00.000Z", "2026-02-10T06:00:00.000Z"];

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    await loadSeeds(app.deps, demo);
    for (const [at, day] of days.entries())
      await app.deps.data.revisions.publish(renamed(demoBundle("bean-night"), slug, `Beans ${at}`), new Date(day));
  });
  afterAll(() => app.close());

  const dated = async (revision: number | null): Promise<Dated> => {
    const { data, errors } = await app.ask(
      `query ($r: Int) { plan(publisher: "${publisher}", slug: "${slug}", revision: $r) { ${times} } }`,
      { r: revision },
    );
    expect(errors).toEqual([]);
    return data?.["plan"] as Dated;
  };

  it("keeps one id, which feeds use, and the ids of its meals and components, in every revision", async () => {
    const all = [await dated(1), await dated(2), await dated(3), await dated(null)];
    expect(all.map(({ revision }) => revision)).toEqual([1, 2, 3, 3]);
    for (const { planId, meals, components, firstPublishedAt, updatedAt } of all) {
      expect(planId).toBe(all[0]?.planId);
      expect([meals, components]).toEqual([all[0]?.meals, all[0]?.components]);
      expect([firstPublishedAt, updatedAt]).toEqual([days[0], days[2]]);
    }
    const [first] = all;
    const ids = [
      ...(first?.meals ?? []).map((each) => each.mealId),
      ...(first?.components ?? []).map((each) => each.componentId),
    ];
    expect(new Set(ids).size).toBe(ids.length);
    const feed = await request(app.app.server).get(`/v1/publishers/${publisher}/feed.json`);
    expect(feed.body.items.map(({ id }: { readonly id: string }) => id)).toContain(first?.planId);
    const rest = await request(app.app.server).get(`/v1/plans/${publisher}/${slug}?revision=2`);
    expect(rest.body).toMatchObject({
      planId: first?.planId,
      ...{ firstPublishedAt: days[0], publishedAt: days[1], updatedAt: days[2] },
    });
    const jsonLd = await request(app.app.server).get(`/v1/plans/${publisher}/${slug}.jsonld`);
    const recipe = jsonLd.body["@graph"].find((each: Record<string, string>) => each["@type"] === "Recipe");
    expect([recipe.datePublished, recipe.dateModified]).toEqual([days[0], days[2]]);
  });

  it("gives a meal in another language another id, which finds it in that language", async () => {
    const { data, errors } = await app.ask(
      `query { plan(publisher: "${publisher}", slug: "eggs-and-oats") {
        languages meals { id mealId title }
        scaling(servings: 2, household: { locale: "de" }) { scaled { language meals { meal { id mealId title } } components { component { id title } } } }
      } }`,
    );
    expect(errors).toEqual([]);
    type Named = { readonly id: string; readonly mealId: string; readonly title: string };
    const plan = data?.["plan"] as {
      readonly meals: readonly Named[];
      readonly scaling: {
        readonly scaled: { readonly language: string; readonly meals: readonly { readonly meal: Named }[] };
      };
    };
    const { scaled } = plan.scaling;
    expect(scaled.language).toBe("de");
    const german = scaled.meals.map(({ meal }) => meal);
    expect(german.map(({ mealId }) => mealId).toSorted()).toEqual(plan.meals.map(({ mealId }) => mealId).toSorted());
    for (const { id } of german) expect(plan.meals.map((each) => each.id)).not.toContain(id);
    const found = await app.ask("query ($ids: [ID!]!) { nodes(ids: $ids) { id ... on Meal { title } } }", {
      ids: [...german, ...plan.meals].map(({ id }) => id),
    });
    expect(found.data?.["nodes"]).toEqual([...german, ...plan.meals].map(({ id, title }) => ({ id, title })));
  });

  it("is found by name and by id among others, in the order asked for, with null for what is not there", async () => {
    const { data, errors } = await app.ask(
      `query ($plans: [PlanNameInput!]!) {
        plansBySlug(plans: $plans) { slug revision }
        nodes(ids: ["", "nonsense", "RGlzaDoxMg"]) { id }
        publisher(slug: "${publisher}") { slug plans(first: 100) { edges { node { slug } } } }
        nobody: publisher(slug: "nobody") { slug }
        publishers { edges { node { slug } } pageInfo { hasNextPage } }
      }`,
      {
        plans: [
          { publisher, slug, revision: 2 },
          { publisher, slug: "\0" },
          { publisher: "nobody", slug },
          { publisher, slug },
        ],
      },
    );
    expect(errors).toEqual([]);
    expect(data).toMatchObject({
      plansBySlug: [{ slug, revision: 2 }, null, null, { slug, revision: 3 }],
      nodes: [null, null, null],
      nobody: null,
      publishers: { edges: [{ node: { slug: publisher } }], pageInfo: { hasNextPage: false } },
    });
    const { plans } = data?.["publisher"] as { readonly plans: { readonly edges: readonly object[] } };
    expect(plans.edges).toHaveLength(demo.bundles.length + 1);
  });

  it("asks for at least one, and at most a hundred at once", async () => {
    for (const [count, code] of [
      [0, "BAD_SHAPE"],
      [101, "TOO_LARGE"],
    ] as const) {
      const ids = await app.ask("query ($ids: [ID!]!) { nodes(ids: $ids) { id } }", { ids: Array(count).fill("x") });
      expect(ids.errors[0]?.extensions["code"]).toBe(code);
      const plans = Array.from({ length: count }, () => ({ publisher, slug }));
      const named = await app.ask("query ($p: [PlanNameInput!]!) { plansBySlug(plans: $p) { id } }", { p: plans });
      expect(named.errors[0]?.extensions["code"]).toBe(code);
    }
  });

  it("lists a publisher only while a plan of its is in force", async () => {
    await app.deps.data.publishers.save({ slug: "new-here", name: "New here" });
    const listed = async () => {
      const { data } = await app.ask("{ publishers(first: 100) { edges { node { slug } } } }");
      return (
        data?.["publishers"] as { readonly edges: readonly { readonly node: { readonly slug: string } }[] }
      ).edges.map(({ node }) => node.slug);
    };
    expect(await listed()).toEqual([publisher]);
  });
});
