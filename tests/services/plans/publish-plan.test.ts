import { afterAll, beforeAll, expect, it } from "vitest";
import type { Food } from "../../../src/domain/model/food.js";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import { problemText } from "../../../src/exports/sentences/problem-text.js";
import { findPlans } from "../../../src/services/plans/find-plans.js";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { publishPlan } from "../../../src/services/plans/publish-plan.js";
import { openTestApp, type TestApp } from "../../graphql/open-test-app.js";
import { bundle, component, food, line, made, meal, plan, step } from "../../kit/builders.js";
import { describeOnBothDatabases } from "../../kit/databases.js";

const publisher = "third-gate-allotments";

const stating = (slug: string, allergens: readonly string[]): Food =>
  food(slug, {
    allergens: ["egg", "milk", "wheat", "tree-nuts"].map((code) => ({
      code,
      presence: allergens.includes(code) ? ("CONTAINS" as const) : ("DOES_NOT_CONTAIN" as const),
      source: { kind: "WRITER" as const, title: "label", section: null },
    })),
  });

const claiming = (slug: string, claims: readonly string[], foods: readonly Food[]): PlanBundle =>
  bundle(
    plan(
      [
        meal(
          "supper",
          foods.map((each) => line("100 g", each.slug)),
        ),
      ],
      { publisher, slug, claims },
    ),
    [],
    foods,
  );

describeOnBothDatabases("publishing a plan", (open) => {
  let app: TestApp;

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    await app.deps.data.publishers.save({ slug: publisher, name: "Third Gate Allotments" });
  });
  afterAll(() => app.close());

  const stored = async (slug: string) => (await findPlans(app.deps, [{ publisher, slug, revision: null }]))[0] ?? null;

  it("refuses a claim that a food contradicts: says which and where, and stores nothing", async () => {
    const yoghurt = stating("yoghurt", ["milk"]);
    const refused = await publishPlan(app.deps, claiming("broken", ["vegetarian", "vegan"], [yoghurt]));
    expect(refused).toMatchObject({ ok: false });
    const problems = refused.ok ? [] : refused.problems;
    expect(problems).toContainEqual(
      expect.objectContaining({ code: "CLAIM_BROKEN", path: ["claims", 1], claim: "vegan", foods: ["yoghurt"] }),
    );
    expect(problems.map(problemText)).toContainEqual(expect.stringMatching(/^claims > 1: .*"vegan".*"yoghurt"/));
    expect(await stored("broken")).toBeNull();
  });

  it("refuses a claim of which facts are missing: unknown is never free from", async () => {
    const stock = food("stock-cube");
    const refused = await publishPlan(app.deps, claiming("unknown", ["vegan"], [stating("kale", []), stock]));
    const problem = { code: "CLAIM_NOT_KNOWN", path: ["claims", 0], foods: expect.arrayContaining(["stock-cube"]) };
    expect(refused).toMatchObject({ ok: false, problems: [problem] });
    expect(await stored("unknown")).toBeNull();
  });

  it("refuses a claim that no rule knows", async () => {
    const refused = await publishPlan(app.deps, claiming("nobody-knows", ["wholesome"], [food("kale")]));
    expect(refused).toMatchObject({
      ok: false,
      problems: [{ code: "CLAIM_WITHOUT_RULE", path: ["claims", 0], claim: "wholesome" }],
    });
    expect(await stored("nobody-knows")).toBeNull();
  });

  it("refuses steps that fit no order", async () => {
    const soup = component("soup", "1 kg", [line("1 kg", "leek")], {
      steps: [step("chop", 5, { after: ["boil"] }), step("boil", 20, { after: ["chop"] })],
    });
    const circle = bundle(plan([meal("supper", [line("300 g", made("soup"))])], { publisher, slug: "circle" }), [soup]);
    const refused = await publishPlan(app.deps, circle);
    expect(refused).toMatchObject({ ok: false, problems: [{ code: "STEPS_IN_A_CIRCLE" }] });
    expect(await stored("circle")).toBeNull();
  });

  it("publishes what only needs a look, and says what to look at", async () => {
    const late = bundle(
      plan([meal("supper", [line("300 g", made("soup"))], { day: 3 })], { publisher, slug: "to-look-at" }),
      [component("soup", "1 kg", [line("1 kg", "leek")])],
    );
    const first = await publishPlan(app.deps, late);
    const finding = { code: "NOBODY_SAYS_HOW_LONG", severity: "LOOK", path: ["components", "soup"] };
    expect(first).toMatchObject({ ok: true, value: { created: true, summary: { revision: 1 } } });
    expect(first.ok && first.value.findings).toContainEqual(expect.objectContaining(finding));
    // Published again, nothing is new, and the findings are said again.
    const again = await publishPlan(app.deps, late);
    expect(again).toMatchObject({ ok: true, value: { created: false, summary: { revision: 1 } } });
    expect(again.ok && again.value.findings).toEqual(first.ok && first.value.findings);
  });

  it("holds demo data to the same: one claim that does not hold and nothing of it is there", async () => {
    const good = claiming("good-one", [], [food("kale")]);
    const bad = claiming("bad-one", ["vegan"], [stating("egg", ["egg"])]);
    const seeds = { publisher: { slug: "other-plot", name: "Other Plot" }, foods: [], bundles: [good, bad] };
    const loaded = await loadSeeds(app.deps, seeds);
    expect(loaded).toMatchObject({ ok: false });
    expect(loaded.ok ? [] : loaded.problems.map(({ code }) => code)).toContain("CLAIM_BROKEN");
    expect(await stored("good-one")).toBeNull();
  });
});
