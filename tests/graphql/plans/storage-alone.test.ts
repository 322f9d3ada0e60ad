import { afterAll, beforeAll, expect, it } from "vitest";
import type { Food } from "../../../src/domain/model/food.js";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { publishPlan } from "../../../src/services/plans/publish-plan.js";
import { referenceTable, sourceOf, type Row } from "../../domain/quantity/reference-table.js";
import { bundle, food, line, meal, plan } from "../../kit/builders.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { demo, openTestApp, rules, type TestApp } from "../open-test-app.js";

interface Guidance {
  readonly place: string;
  readonly days: number;
  readonly upToDays: number | null;
  readonly counts: string;
  readonly lastDay: string | null;
  readonly keepUntil: string | null;
  readonly limitedBy: { readonly slug: string } | null;
  readonly scope: { readonly asked: string | null; readonly used: string; readonly reach: string } | null;
  readonly basis: readonly {
    readonly of: { readonly slug: string };
    readonly days: number;
    readonly printed: string | null;
    readonly decides: boolean;
    readonly source: { readonly title: string };
  }[];
  readonly tooLateFor: readonly unknown[];
  readonly advice: readonly string[];
}

const fields = `{ place days upToDays counts lastDay keepUntil limitedBy { ... on Component { slug } ... on Food { slug } }
  scope { asked used reach } tooLateFor { meal { slug } } advice
  basis { of { ... on Component { slug } ... on Food { slug } } days printed decides source { title } } }`;

/** A food of one class, which its (invented) writer would keep for years on the shelf, to hear the published times there. */
const ofClass = (keepsAs: string): Food => {
  const source = { kind: "INVENTED" as const, title: "made up for this test", section: null };
  return food(`is-${keepsAs}`, {
    keepsAs,
    keeping: [{ place: "ROOM", days: 3000, container: null, condition: null, source }],
  });
};

const published = new Map(rules.safety.keeping.map((rule) => [rule.id, rule]));
const rows = referenceTable("storage").flatMap((row) => {
  const rule = published.get(row["rule_id"] ?? "");
  const usable = rule !== undefined && rule.place !== "FREEZER" && rule.inForceTo === null;
  return usable ? [{ id: rule.id, row, rule }] : [];
});
const unitDays: Readonly<Record<string, number>> = { day: 1, week: 7, month: 30, hour: 1 / 24 };
const lengthOf = (row: Row): number =>
  Number(row["max_value"]) * (unitDays[(row["unit"] ?? "").split(" ")[0] ?? ""] ?? Number.NaN);

describeOnBothDatabases("how long a single thing keeps", (open) => {
  let app: TestApp;

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    await loadSeeds(app.deps, demo);
    await app.deps.data.foods.save([...new Set(rules.safety.keeping.map(({ keepsAs }) => keepsAs))].map(ofClass));
  });
  afterAll(() => app.close());

  const ofFood = async (slug: string, given: string): Promise<readonly Guidance[]> => {
    const { data, errors } = await app.ask(`{ food(slug: "${slug}") { storage${given} ${fields} } }`);
    expect(errors).toEqual([]);
    return (data?.["food"] as { readonly storage: readonly Guidance[] }).storage;
  };
  const ofComponent = async (slug: string, given: string): Promise<readonly Guidance[]> => {
    const { data, errors } = await app.ask(
      `{ component(publisher: "third-gate-allotments", slug: "${slug}") { storage${given} ${fields} } }`,
    );
    expect(errors).toEqual([]);
    return (data?.["component"] as { readonly storage: readonly Guidance[] }).storage;
  };

  it("is asked of enough published rows to mean something", () => {
    expect(rows.length).toBeGreaterThan(40);
  });

  it.each(rows)("shows the published row $id with its source, and no longer time than that", async ({ row, rule }) => {
    const shown = sourceOf(row);
    const region = ({ ANZ: "NZ", EU: "IE", INT: "XB" } as Record<string, string>)[rule.region] ?? rule.region;
    const kitchen = rule.audience === "FOOD_SERVICE" ? "FOOD_SERVICE" : "HOUSEHOLD";
    const given = `(region: "${region}", kitchen: ${kitchen}, boughtAt: { instant: "2026-06-01T10:00:00Z", zone: "UTC" })`;
    const here = (await ofFood(`is-${rule.keepsAs}`, given)).find(({ place }) => place === rule.place);
    const basis = here?.basis.find(
      ({ printed, source }) => printed === rule.printed && source.title === rule.source.title,
    );
    const days = lengthOf(row) - rule.firstDay;
    expect(basis?.source.title.slice(0, 20), shown).toBe(row["source"]?.slice(0, 20));
    expect(basis?.days, shown).toBeCloseTo(days, 9);
    const last = new Date(Date.UTC(2026, 5, 1, 10) + days * 86_400_000).toISOString().slice(0, 10);
    expect((here?.lastDay ?? "") <= last, shown).toBe(true);
    expect(here?.scope?.asked, shown).toBe(region);
    if (basis?.decides === true) {
      // A range is planned by its lower end, and its upper end is told.
      const planned = rule.daysFrom === null ? days : rule.daysFrom - rule.firstDay;
      const lastPlanned = new Date(Date.UTC(2026, 5, 1, 10) + planned * 86_400_000).toISOString().slice(0, 10);
      expect(here?.lastDay, shown).toBe(lastPlanned);
      expect(here?.scope?.reach, shown).toBe("REGION");
    }
    expect(here?.tooLateFor).toEqual([]);
  });

  it.each([
    // FSIS, Leftovers and Food Safety: 3 to 4 days, planned as 3. Clocks: IANA tz database.
    ["leftovers", "US", `local: "2026-06-01T18:00", zone: "UTC"`, "2026-06-04", "2026-06-04T23:59:59Z"],
    // Adelaide is at +10:30 until 5 April 2026, 03:00, and at +09:30 after it.
    ["leftovers", "US", `local: "2026-04-03T22:00", zone: "Australia/Adelaide"`, "2026-04-06", "2026-04-06T14:29:59Z"],
    // Kathmandu is at +05:45: there it is the next day already.
    [
      "leftovers",
      "US",
      `instant: "2026-06-01T19:00:00Z", zone: "Asia/Kathmandu"`,
      "2026-06-05",
      "2026-06-05T18:14:59Z",
    ],
    // New York goes back an hour on 1 November 2026: a day of 25 hours lies between.
    ["leftovers", "US", `local: "2026-10-29T20:00", zone: "America/New_York"`, "2026-11-01", "2026-11-02T04:59:59Z"],
    // FSA, Cooking your food: 48 hours. London goes back an hour on 25 October 2026; hours are hours.
    ["leftovers", "GB", `local: "2026-10-24T18:00", zone: "Europe/London"`, "2026-10-26", "2026-10-26T17:00:00Z"],
    // And forward on 29 March 2026.
    ["leftovers", "GB", `local: "2026-03-28T18:00", zone: "Europe/London"`, "2026-03-30", "2026-03-30T18:00:00Z"],
  ])("ends in the kitchen's own time: %s in %s from %s", async (keepsAs, region, moment, lastDay, until) => {
    const [best] = (await ofFood(`is-${keepsAs}`, `(region: "${region}", boughtAt: { ${moment} })`)).filter(
      ({ place }) => place === "FRIDGE",
    );
    expect(best?.lastDay).toBe(lastDay);
    expect(Date.parse(best?.keepUntil ?? "")).toBe(Date.parse(until));
  });

  it("O-26: counts the day of making as day 1 where a kitchen that sells food asks, as day 0 at home", async () => {
    const sold = await ofFood(
      "is-chilled-ready-to-eat",
      `(region: "US", kitchen: FOOD_SERVICE, boughtAt: { local: "2026-04-01T09:00", zone: "America/Los_Angeles" })`,
    );
    expect(sold.find(({ place }) => place === "FRIDGE")?.lastDay).toBe("2026-04-07");
    const home = await ofFood(
      "is-leftovers",
      `(region: "US", boughtAt: { local: "2023-11-23T18:00", zone: "America/New_York" })`,
    );
    // 3 to 4 days: the plan goes by 3, and the fourth, Monday the 27th, is the upper end of its source.
    expect(home.find(({ place }) => place === "FRIDGE")).toMatchObject({ lastDay: "2023-11-26", days: 3, upToDays: 4 });
  });

  it("without a region takes the strictest of all, and says so in a word and in a sentence", async () => {
    const [anywhere] = await ofComponent("boiled-lentils", "");
    const [uk] = await ofComponent("boiled-lentils", `(region: "GB")`);
    expect(anywhere?.scope).toMatchObject({ asked: null, reach: "REGION_NOT_GIVEN" });
    expect(anywhere?.advice.join(" ")).toMatch(/No region was given, so the strictest rule was taken/);
    expect(anywhere?.days).toBeLessThanOrEqual(uk?.days ?? Number.NaN);
    expect(uk?.advice.join(" ")).not.toMatch(/No region/);
    expect([anywhere?.lastDay, anywhere?.keepUntil]).toEqual([null, null]);
  });

  it("of a component is that of its shortest part, which is named", async () => {
    // The demo's spread is made of boiled lentils, and shows their rule beside its own.
    const [best] = await ofComponent("lentil-walnut-spread", `(region: "US")`);
    expect(best?.basis.map(({ of }) => of.slug)).toContain("boiled-lentils");
    const decides = best?.basis.find((basis) => basis.decides);
    expect(best?.limitedBy?.slug ?? "lentil-walnut-spread").toBe(decides?.of.slug);
  });

  it("sends to the shop again for later meals, on the list as in the guidance", async () => {
    // USDA FSIS home food storage dataset, id 611: fresh parsley 2 to 3 days
    const parsley = food("flat-parsley", { keepsAs: "fresh-parsley" });
    const meals = [1, 3, 4, 6].map((day) => meal(`day-${day}`, [line("20 g", "flat-parsley")], { day }));
    const publisher = "third-gate-allotments";
    const published = await publishPlan(
      app.deps,
      bundle(plan(meals, { publisher, slug: "parsley-week" }), [], [parsley]),
    );
    expect(published.ok).toBe(true);
    const { data, errors } = await app.ask(`{ plan(publisher: "${publisher}", slug: "parsley-week") {
      scaled(servings: 1, household: { region: "US" }) {
        storage { subject { ... on Food { slug } } tooLateFor { meal { slug } } advice }
        shoppingList { warnings { code path message } lines { need { grams } } } } } }`);
    expect(errors).toEqual([]);
    const path = ["foods", "flat-parsley"];
    const message = expect.stringMatching(
      /keeps 2 days: buy the share for "day-3", "day-4" later, not before day 2\.$/,
    );
    expect(data).toMatchObject({
      plan: {
        scaled: {
          storage: expect.arrayContaining([
            {
              subject: { slug: "flat-parsley" },
              tooLateFor: [{ meal: { slug: "day-3" } }, { meal: { slug: "day-4" } }, { meal: { slug: "day-6" } }],
              advice: [2, 4].map((day) =>
                expect.stringMatching(`^Buy the flat-parsley for .+ later, not before day ${day}\\.$`),
              ),
            },
          ]),
          shoppingList: {
            warnings: expect.arrayContaining([{ code: "BUY_LATER", path, message }]),
            lines: [{ need: { grams: 80 } }],
          },
        },
      },
    });
  });

  it("is nothing at all where nobody says", async () => {
    await app.deps.data.foods.save([food("unheard-of")]);
    expect(await ofFood("unheard-of", `(region: "US")`)).toEqual([]);
  });

  it.each([
    [`(region: "Atlantis")`, "BAD_HOUSEHOLD", ["region"]],
    [`(boughtAt: { zone: "UTC" })`, "BAD_SHAPE", ["boughtAt"]],
    [`(boughtAt: { local: "2026-06-01T10:00", zone: "Mars/Olympus" })`, "BAD_HOUSEHOLD", ["boughtAt", "zone"]],
    [`(boughtAt: { local: "yesterday", zone: "UTC" })`, "BAD_HOUSEHOLD", ["boughtAt", "local"]],
  ])("refuses %s and says where", async (given, code, at) => {
    const { errors } = await app.ask(`{ food(slug: "is-leftovers") { storage${given} ${fields} } }`);
    expect(errors[0]?.extensions).toMatchObject({ code, at });
  });
});
