import request from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { demo, openTestApp, type TestApp } from "../open-test-app.js";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";

const session = `query Session($household: HouseholdInput) {
  plan(publisher: "third-gate-allotments", slug: "roots-and-barley") {
    scaled(servings: 12, household: $household) {
      session { longerThanPromised moreThanADay handsOnMinutes tasks { startMinute endMinute appliance lanes cooks } }
    }
  }
}`;

interface Answer {
  readonly plan: {
    readonly scaled: {
      readonly session: {
        readonly longerThanPromised: number | null;
        readonly moreThanADay: boolean;
        readonly tasks: readonly { appliance: string | null; lanes: readonly number[]; cooks: readonly number[] }[];
      };
    };
  };
}

describeOnBothDatabases("the reader's own kitchen", (open) => {
  let app: TestApp;

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    await loadSeeds(app.deps, demo);
  });
  afterAll(() => app.close());

  const ask = async (kitchen?: object) => {
    const { data, errors } = await app.ask(session, { household: { kitchen } });
    expect(errors).toEqual([]);
    return (data as unknown as Answer).plan.scaled.session;
  };
  const shelves = (found: Answer["plan"]["scaled"]["session"]) =>
    Math.max(...found.tasks.flatMap(({ appliance, lanes }) => (appliance === "oven-shelf" ? lanes : [])));

  it("of one shelf has one tray in the oven, where the plan's has two", async () => {
    expect(shelves(await ask())).toBe(2);
    expect(shelves(await ask({ appliances: [{ appliance: "oven-shelf", count: 1 }] }))).toBe(1);
  });

  it("shares the work among those who cook", async () => {
    const { tasks } = await ask({ cooks: 3 });
    expect(new Set(tasks.flatMap(({ cooks }) => cooks))).toEqual(new Set([1, 2, 3]));
  });

  it("says where the session is longer than its writer promises", async () => {
    expect(await ask()).toMatchObject({ longerThanPromised: 150, moreThanADay: false });
  });

  it("is the same in an address", async () => {
    const at = "/v1/plans/third-gate-allotments/roots-and-barley/session?servings=12&appliance=oven-shelf:1";
    const { body, status } = await request(app.app.server).get(at);
    expect(status).toBe(200);
    expect(shelves(body as Answer["plan"]["scaled"]["session"])).toBe(1);
  });

  it.each([
    "cooks=none",
    "cooks=0",
    "cooks=21",
    "appliance=oven-shelf",
    "appliance=oven-shelv:1",
    "appliance=oven-shelf:999",
  ])("is refused with its place where it is none: %s", async (query) => {
    const at = `/v1/plans/third-gate-allotments/roots-and-barley/session?servings=12&${query}`;
    const { status, text } = await request(app.app.server).get(at);
    expect(status).toBe(400);
    expect(text).toContain(query.split("=")[0]!);
  });
});
