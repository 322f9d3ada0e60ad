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

  // Marks of an oven's dial: common practice, no source. Which regions read Fahrenheit: Unicode CLDR.
  it("say how hot in the degrees of the reader's region, over GraphQL and REST alike", async () => {
    interface Hot {
      readonly temperatureC: number | null;
      readonly temperature: { readonly value: number; readonly unit: string; readonly text: string } | null;
    }
    const told = "tasks { temperatureC temperature { value unit text } }";
    const plan = { publisher: "third-gate-allotments", slug: "roots-and-barley" };
    const inRegion = async (region: string | null): Promise<readonly Hot[]> => {
      const { data, errors } = await app.ask(
        `query ($h: HouseholdInput) { plan(publisher: "${plan.publisher}", slug: "${plan.slug}") { scaled(servings: 4, household: $h) { session { ${told} } sessions { ${told} } } } }`,
        { h: { region } },
      );
      expect(errors).toEqual([]);
      type Tasks = { readonly tasks: readonly Hot[] };
      const { scaled } = (data as unknown as { plan: { scaled: { session: Tasks; sessions: readonly Tasks[] } } }).plan;
      expect(scaled.sessions.flatMap(({ tasks }) => tasks)).toEqual(scaled.session.tasks);
      const { body } = await request(app.app.server).get(
        `/v1/plans/${plan.publisher}/${plan.slug}/session?servings=4${region === null ? "" : `&region=${region}`}`,
      );
      const rest = (body as Tasks).tasks.map(({ temperatureC, temperature }) => ({ temperatureC, temperature }));
      expect(rest).toEqual(scaled.session.tasks);
      return scaled.session.tasks.filter(({ temperatureC }) => temperatureC !== null);
    };
    const celsius = await inRegion("DE");
    expect(celsius.length).toBeGreaterThan(0);
    for (const { temperatureC, temperature } of celsius)
      expect(temperature).toEqual({ value: temperatureC, unit: "CELSIUS", text: `${temperatureC} °C` });
    const dial: Readonly<Record<number, number>> = { 180: 350, 190: 375, 200: 400, 210: 400, 220: 425, 230: 450 };
    for (const { temperatureC, temperature } of await inRegion("US-WA")) {
      const value = dial[temperatureC ?? 0];
      expect(temperature).toEqual({ value, unit: "FAHRENHEIT", text: `${value} °F` });
    }
    expect(await inRegion(null)).toEqual(celsius);
  });

  it("have steps whose heat is told in the degrees that are asked for", async () => {
    const { data, errors } = await app.ask(
      '{ plan(publisher: "third-gate-allotments", slug: "roots-and-barley") { components { steps { temperatureC c: temperature { text } f: temperature(unit: FAHRENHEIT) { text } } } } }',
    );
    expect(errors).toEqual([]);
    const steps = (
      data as unknown as {
        plan: { components: { steps: { temperatureC: number | null; c: unknown; f: unknown }[] }[] };
      }
    ).plan.components.flatMap((component) => component.steps);
    expect(steps).toContainEqual({ temperatureC: 200, c: { text: "200 °C" }, f: { text: "400 °F" } });
    expect(steps).toContainEqual({ temperatureC: null, c: null, f: null });
  });
});
