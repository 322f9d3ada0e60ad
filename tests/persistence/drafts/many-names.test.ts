import { afterAll, beforeAll, expect, it } from "vitest";
import type { Data } from "../../../src/services/deps.js";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { demo, openTestApp, type TestApp } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../../kit/databases.js";

// Two hundred text lines may name a thousand foods, and all of them are looked up among a publisher's own.
describeOnBothDatabases("drafts of two thousand names at once", (open) => {
  let app: TestApp;
  let data: Data;

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    data = app.deps.data;
    await loadSeeds(app.deps, demo);
    const token = await app.tokenFor("third-gate-allotments", ["WRITE"]);
    const text = `kind: food\nslug: food-7\nnames: { en: food seven }\naisle: vegetables\nshopped-by: mass\n`;
    const save = `mutation ($input: SaveDocumentsInput!) { saveDocuments(input: $input) { problems { message } } }`;
    const input = { publisher: "third-gate-allotments", texts: [{ name: "f.yaml", text }], expected: [] };
    const { data: saved } = await app.ask(save, { input }, token);
    expect(saved).toEqual({ saveDocuments: { problems: [] } });
  });
  afterAll(() => app.close());

  it.each(["third-gate-allotments", "nobody-here"])("are looked up among those of %s", async (publisher) => {
    const names = Array.from({ length: 2000 }, (_, at) => ({ publisher, slug: `food-${at}` }));
    const foods = await data.publisherFoods.drafts(names);
    expect(foods.map((each) => each?.value.slug ?? null)).toEqual(
      names.map(({ slug }) => (publisher === "third-gate-allotments" && slug === "food-7" ? slug : null)),
    );
    for (const found of [
      await data.publisherFoods.published(names),
      await data.publisherPacks.drafts(names),
      await data.publisherPacks.published(names),
      await data.components.drafts(names),
      await data.plans.drafts(names),
      await data.translations.drafts(names),
    ])
      expect([found.length, found.filter((each) => each !== null).length]).toEqual([2000, 0]);
  });
});
