import request from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { demo, openTestApp, type TestApp } from "../open-test-app.js";

const query = `query Sessions($servings: Int!) {
  plan(publisher: "third-gate-allotments", slug: "roots-and-barley") {
    scaled(servings: $servings) {
      session { day totalMinutes clearingUpMinutes cooksForADay lateMeals { at readyAt meal { slug } } }
      sessions { cooksForADay lateMeals { at readyAt meal { slug } } day handsOnMinutes totalMinutes clearingUpMinutes components { component { slug } batches loads } tasks { of { __typename } } }
    }
  }
}`;

interface Day {
  readonly day: number;
  readonly handsOnMinutes: number;
  readonly totalMinutes: number;
  readonly clearingUpMinutes: number;
  readonly components: readonly { readonly component: { readonly slug: string }; readonly batches: number }[];
}

describeOnBothDatabases("the sessions of a plan", (open) => {
  let app: TestApp;

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    await loadSeeds(app.deps, demo);
  });
  afterAll(() => app.close());

  const ask = async (servings: number) => {
    const { data, errors } = await app.ask(query, { servings });
    expect(errors).toEqual([]);
    return (data as unknown as { plan: { scaled: { session: Day; sessions: readonly Day[] } } }).plan.scaled;
  };

  it("are the one of `session` where that serves", async () => {
    const { session, sessions } = await ask(4);
    expect(sessions).toEqual([expect.objectContaining({ ...session, day: 0 })]);
    // 77 minutes of hands: 10, and 5 for the hour.
    expect(session.clearingUpMinutes).toBe(15);
  });

  it("are several where it is more than a day's work, in GraphQL, as JSON and in words alike", async () => {
    const { session, sessions } = await ask(30);
    expect(session.totalMinutes).toBeGreaterThan(400);
    expect(sessions.map(({ day }) => day)).toEqual([0, 1]);
    for (const { handsOnMinutes } of sessions) expect(handsOnMinutes).toBeLessThanOrEqual(360);
    const at = "/v1/plans/third-gate-allotments/roots-and-barley";
    const json = await request(app.app.server).get(`${at}?servings=30`);
    const { sessions: asJson } = json.body as { sessions: readonly { day: number; handsOnMinutes: number }[] };
    expect(asJson.map((each) => [each.day, each.handsOnMinutes])).toEqual(
      sessions.map((each) => [each.day, each.handsOnMinutes]),
    );
    const words = await request(app.app.server).get(`${at}.md?servings=30`);
    expect(words.text).toContain("### One day later");
  });
});
