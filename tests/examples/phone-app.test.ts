import { connect } from "prepwright-client";
import { afterAll, beforeAll, expect, it } from "vitest";
import { planScreen, type PlanView, type Screen, type Store } from "../../examples/phone-app/plan-screen.js";
import { loadSeeds } from "../../src/services/drafts/load-seeds.js";
import { demo, openTestApp, type TestApp } from "../graphql/open-test-app.js";
import { describeOnEmbedded } from "../kit/databases.js";

const oats = { publisher: "third-gate-allotments", slug: "eggs-and-oats" };

function openStore(): Store {
  const kept = new Map<string, string>();
  return {
    getItem: (key) => Promise.resolve(kept.get(key) ?? null),
    setItem: (key, value) => Promise.resolve(kept.set(key, value)),
  };
}

function planOf(screen: Screen): PlanView {
  if (screen.kind !== "PLAN") throw new Error(JSON.stringify(screen));
  return screen.plan;
}

describeOnEmbedded("the example of a phone app", (open) => {
  let app: TestApp;
  let isOnline = true;
  let screen: ReturnType<typeof planScreen>;
  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    await loadSeeds(app.deps, demo);
    const address = await app.app.listen({ port: 0, host: "127.0.0.1" });
    const prepwright = connect({
      address,
      fetch: (request) => (isOnline ? fetch(request) : Promise.reject(new TypeError("Network request failed"))),
    });
    screen = planScreen(prepwright, openStore());
  });
  afterAll(() => app.close());

  it("shows what to buy, what to do when, and the allergens that are not ruled out, in the reader's language", async () => {
    const plan = planOf(await screen.open(oats, { servings: 5, locale: "de", measures: "METRIC" }));
    expect(plan.title).toBe("Eier, Hafer und ein Glas grünes Öl");
    expect(plan.toBuy.map(({ text }) => text).join("\n")).toMatch(/^glutenfreie Haferflocken, \d+ g, 1 × /m);
    expect(plan.toDo[0]).toMatchObject({
      at: expect.stringMatching(/^-?\d+:\d\d$/),
      text: expect.stringMatching(/\S/),
    });
    expect(plan.allergens.map(({ presence }) => presence)).toEqual(expect.arrayContaining(["CONTAINS"]));
    for (const items of [plan.toBuy, plan.toDo]) expect(new Set(items.map(({ key }) => key)).size).toBe(items.length);
    expect(JSON.stringify(plan)).not.toMatch(/undefined|NaN|\[object/);
  });

  it("shows without a network what it showed before, for that household alone", async () => {
    const shown = planOf(await screen.open(oats, { servings: 3 }));
    isOnline = false;
    expect(await screen.open(oats, { servings: 3 })).toEqual({ kind: "PLAN", plan: shown, isOffline: true });
    expect(await screen.open(oats, { servings: 40 })).toEqual({ kind: "TRY_LATER", seconds: 30 });
    isOnline = true;
  });

  it("says at each field what is wrong, and when a plan is gone", async () => {
    const wrong = await screen.open(oats, { servings: 0, diet: ["vegn"], locale: "de" });
    if (wrong.kind !== "WRONG") throw new Error(wrong.kind);
    expect(wrong.fields.map(({ where }) => where)).toEqual(["servings", "household.diets.0"]);
    expect(await screen.open({ ...oats, slug: "nothing" }, {})).toMatchObject({ kind: "GONE" });
  });
});
