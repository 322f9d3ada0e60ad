import { afterAll, beforeAll, expect, it } from "vitest";
import { seedDatabase } from "../../../src/app/setup/seed-database.js";
import { checkTranslations } from "../../../src/domain/plan/check/check-translations.js";
import { frozenTranslations, languagesOfPlan } from "../../../src/domain/plan/translate/texts-of.js";
import { demo, openTestApp, type TestApp } from "../../graphql/open-test-app.js";
import { describeOnEmbedded } from "../../kit/databases.js";

describeOnEmbedded("the demo that a first start loads", (open) => {
  let app: TestApp;

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    await seedDatabase(app.deps, process.cwd());
  });
  afterAll(() => app.close());

  it("is all that stands in its documents, with the pictures", async () => {
    const refs = demo.bundles.map(({ plan: { publisher, slug } }) => ({ publisher, slug, revision: null }));
    const found = await app.deps.data.revisions.summaries(refs);
    const bundles = await app.deps.data.revisions.bundles(found.map((each) => each?.id ?? ""));
    for (const [at, { plan, components, foods, ...rest }] of demo.bundles.entries()) {
      const loaded = bundles[at];
      expect(loaded?.plan).toEqual({ ...plan, image: expect.anything() as unknown });
      expect(loaded?.components.map(({ slug }) => slug).toSorted()).toEqual(
        components.map(({ slug }) => slug).toSorted(),
      );
      expect(loaded?.foods.map(({ slug }) => slug).toSorted()).toEqual(foods.map(({ slug }) => slug).toSorted());
      const translations = frozenTranslations({ plan, components, foods, ...rest });
      expect(loaded?.translations ?? []).toEqual(translations);
    }
  });

  it("leaves no text of a plan untranslated that it translates", () => {
    expect(demo.bundles.flatMap(checkTranslations)).toEqual([]);
  });

  it("can be read in each language that a plan of it was translated into", async () => {
    const { data, errors } = await app.ask(`{ plans(first: 10) { edges { node { slug languages
      scaled(servings: 40, household: { locale: "de" }) { language title } } } } }`);
    expect(errors).toEqual([]);
    const { edges } = (data as { plans: { edges: { node: { slug: string; languages: string[]; scaled: object } }[] } })
      .plans;
    const languages = Object.fromEntries(edges.map(({ node }) => [node.slug, node.languages]));
    expect(languages).toEqual(Object.fromEntries(demo.bundles.map((each) => [each.plan.slug, languagesOfPlan(each)])));
    const eggs = edges.find(({ node }) => node.slug === "eggs-and-oats");
    expect(eggs?.node.scaled).toMatchObject({ language: "de", title: expect.stringContaining("Eier") as string });
  });
});
