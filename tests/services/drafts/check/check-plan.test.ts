import { describe, expect, it } from "vitest";
import type { Component } from "../../../../src/domain/model/component.js";
import type { Food } from "../../../../src/domain/model/food.js";
import type { Line } from "../../../../src/domain/model/line.js";
import type { PlanBundle } from "../../../../src/domain/model/plan.js";
import type { Finding } from "../../../../src/domain/plan/check/finding.js";
import { noHousehold } from "../../../../src/domain/model/household.js";
import { checkPublishedPlan } from "../../../../src/services/drafts/check/check-plan.js";
import { findingText } from "../../../../src/exports/sentences/finding-text.js";
import { publishedRules } from "../../../imports/rules/published-rules.js";
import { bundle, component, food, line, made, meal, plan, step } from "../../../kit/builders.js";

const clock = () => new Date("2026-12-01T09:00:00Z");

async function check(given: PlanBundle, region: string | null = null): Promise<readonly Finding[]> {
  const found = await checkPublishedPlan(given, { ...noHousehold, region }, publishedRules, { clock }, () =>
    Promise.resolve(publishedRules.safety),
  );
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value;
}

const writer = { kind: "WRITER" as const, title: "the writer", section: null };
const fridge = (days: number) => [{ place: "FRIDGE" as const, days, container: null, condition: null, source: writer }];

/** A pot of one kilogram that a meal of one eats whole; nothing about it is to be found but what `facts` bring. */
const pot = (facts: Partial<Component> = {}, lines: readonly Line[] = [line("1 kg", "leek")]): Component =>
  component("pot", "1 kg", lines, { keepsAs: "cooked-vegetable", keeping: fridge(2), ...facts });
const eaten = (...components: readonly Component[]) =>
  bundle(
    plan([
      meal(
        "supper",
        components.map(({ slug }) => line("1 kg", made(slug))),
      ),
    ]),
    components,
  );
const without = (slug: string, facts: Partial<Food> = {}): Food =>
  food(slug, {
    ...facts,
    allergens: ["cereals-with-gluten", "wheat"].map((code) => ({
      code,
      presence: "DOES_NOT_CONTAIN" as const,
      source: writer,
    })),
  });

interface Fault {
  readonly code: Finding["code"];
  readonly path: readonly (string | number)[];
  readonly faulty: PlanBundle;
  readonly mended: PlanBundle;
}

const bake = (facts: Parameters<typeof step>[2] = {}) =>
  step("bake", 40, { appliance: "oven-shelf", attention: "UNATTENDED", lines: ["l1"], temperatureC: 200, ...facts });
const preheat = step("heat", 15, { appliance: "oven-shelf", attention: "UNATTENDED", temperatureC: 200 });

const faults: readonly Fault[] = [
  {
    code: "LINE_IN_NO_STEP",
    path: ["components", "pot", "lines", "l2"],
    faulty: eaten(pot({ steps: [step("boil", 10, { lines: ["l1"] })] }, [line("1 kg", "leek"), line("10 g", "dill")])),
    mended: eaten(
      pot({ steps: [step("boil", 10, { lines: ["l1", "l2"] })] }, [line("1 kg", "leek"), line("10 g", "dill")]),
    ),
  },
  {
    code: "AMOUNT_MISSING",
    path: ["meals", "supper", "lines", "l2"],
    faulty: bundle(plan([meal("supper", [line("1 kg", made("pot")), line(null, made("pot"))])]), [pot()]),
    mended: bundle(plan([meal("supper", [line("1 kg", made("pot")), line(null, "salt")])]), [pot()]),
  },
  {
    code: "NOT_MEASURABLE",
    path: ["components", "pot", "lines", "l2"],
    faulty: eaten(pot({}, [line("1 kg", "leek"), line("1/5 g", "saffron")])),
    mended: eaten(pot({}, [line("1 kg", "leek"), line("2 g", "saffron")])),
  },
  {
    code: "COMPONENT_NEVER_EATEN",
    path: ["components", "pot"],
    faulty: bundle(plan([meal("supper", [line("1 kg", "bread"), line(null, made("pot"))])]), [pot()]),
    mended: eaten(pot()),
  },
  {
    code: "COMPONENT_LEFT_OVER",
    path: ["components", "pot"],
    faulty: bundle(plan([meal("supper", [line("500 g", made("pot"))])]), [
      pot({ batch: { min: "1", max: null, increment: null } }),
    ]),
    mended: bundle(plan([meal("supper", [line("500 g", made("pot"))])]), [pot()]),
  },
  {
    code: "KEPT_TOO_LONG",
    path: ["components", "pot"],
    faulty: bundle(plan([meal("supper", [line("1 kg", made("pot"))], { day: 3 })]), [pot()]),
    mended: bundle(plan([meal("supper", [line("1 kg", made("pot"))], { day: 1 })]), [pot()]),
  },
  {
    code: "NOBODY_SAYS_HOW_LONG",
    path: ["components", "pot"],
    faulty: eaten(pot({ keepsAs: null, keeping: [] })),
    mended: eaten(pot({ keepsAs: null })),
  },
  {
    code: "OVEN_WITHOUT_TEMPERATURE",
    path: ["components", "pot", "steps", "bake"],
    faulty: eaten(pot({ steps: [preheat, bake({ after: ["heat"], temperatureC: null })] })),
    mended: eaten(pot({ steps: [preheat, bake({ after: ["heat"] })] })),
  },
  {
    code: "OVEN_NOT_PREHEATED",
    path: ["components", "pot", "steps", "bake"],
    faulty: eaten(pot({ steps: [bake()] })),
    mended: eaten(pot({ steps: [preheat, bake({ after: ["heat"] })] })),
  },
  {
    // Another component's preheating to another temperature does not serve it; to the same it does.
    code: "OVEN_NOT_PREHEATED",
    path: ["components", "pot", "steps", "bake"],
    faulty: eaten(pot({ steps: [bake()] }), { ...pot({ steps: [{ ...preheat, temperatureC: 160 }] }), slug: "other" }),
    mended: eaten(pot({ steps: [bake()] }), { ...pot({ steps: [preheat] }), slug: "other" }),
  },
  {
    code: "CAUTION_NOT_NAMED",
    path: ["components", "pot"],
    faulty: eaten(pot({}, [line("1 kg", "red-kidney-beans")])),
    mended: eaten(
      pot({ cautions: publishedRules.safety.cautions.map(({ code }) => code) }, [line("1 kg", "red-kidney-beans")]),
    ),
  },
  {
    code: "CAUTION_UNKNOWN",
    path: ["components", "pot", "cautions"],
    faulty: eaten(pot({ cautions: ["mind-the-step"] })),
    mended: eaten(pot()),
  },
  {
    code: "CLAIM_BROKEN",
    path: ["claims", 0],
    faulty: bundle(
      plan([meal("supper", [line("1 kg", "barley")])], { claims: ["gluten-free"] }),
      [],
      [food("barley", { allergens: [{ code: "barley", presence: "CONTAINS", source: writer }] })],
    ),
    mended: bundle(plan([meal("supper", [line("1 kg", "barley")])])),
  },
  {
    code: "CLAIM_NOT_KNOWN",
    path: ["claims", 0],
    faulty: bundle(plan([meal("supper", [line("1 kg", "leek")])], { claims: ["gluten-free"] })),
    mended: bundle(
      plan([meal("supper", [line("1 kg", "leek")])], { claims: ["gluten-free"] }),
      [],
      [without("leek", { diets: [{ diet: "gluten-free", fits: true, source: writer }] })],
    ),
  },
  {
    code: "CLAIM_WITHOUT_RULE",
    path: ["claims", 0],
    faulty: bundle(plan([meal("supper", [line("1 kg", "leek")])], { claims: ["wholesome"] })),
    mended: bundle(plan([meal("supper", [line("1 kg", "leek")])])),
  },
  {
    code: "SESSION_TOO_LONG",
    path: ["promised-time"],
    faulty: { ...eaten(pot({ steps: [step("chop", 45)] })), plan: { ...eaten(pot()).plan, promisedMinutes: 44 } },
    mended: { ...eaten(pot({ steps: [step("chop", 45)] })), plan: { ...eaten(pot()).plan, promisedMinutes: 45 } },
  },
];

describe("the writer's check", () => {
  it.each(faults)("finds $code, and no longer once it is mended", async ({ code, path, faulty, mended }) => {
    const found = (await check(faulty)).filter((finding) => finding.code === code);
    expect(found.map((finding) => finding.path)).toContainEqual(path);
    for (const finding of found) {
      expect(findingText(finding)).toMatch(/^("?(pot|supper|tray)\b|\d|The |Nobody|Readers|.*").+[.]$/i);
      expect(findingText(finding)).not.toMatch(/ > |: ".*": /);
      expect(finding.severity).toBe(code.startsWith("CLAIM_") ? "STOPS" : "LOOK");
    }
    expect((await check(mended)).map((finding) => finding.code)).not.toContain(code);
  });

  it("says how hot in the degrees of the region it checks for", async () => {
    const hot = async (region: string | null) =>
      (await Promise.all(faults.map(({ faulty }) => check(faulty, region)))).flat().map(findingText).join("\n");
    // 200 °C is 392 °F, and 400 is the nearest mark on a dial.
    expect(await hot("US")).toContain("bakes at 400 °F");
    expect(await hot("US")).not.toContain("°C");
    for (const region of [null, "GB", "DE"]) {
      expect(await hot(region)).toContain("bakes at 200 °C");
      expect(await hot(region)).not.toContain("°F");
    }
  });

  it("names things by their titles, and says where only if the sentence does not", async () => {
    const titled = pot({ title: "Pot of leeks", steps: [step("boil", 10, { lines: ["l1"] })] }, [
      line("1 kg", "leek"),
      line("10 g", "dill"),
    ]);
    const supper = { ...meal("supper", [line("1 kg", made("pot"))], { day: 2 }), title: "Leek supper" };
    const texts = (await check(bundle(plan([supper]), [titled]))).map(findingText);
    expect(texts).toContain('Pot of leeks: No step uses "dill". Name it in a step, or remove the line.');
    // Nine in the morning to six in the evening two days later: 57 hours; the British rule for cooked vegetables gives 48.
    expect(texts).toContain(
      '"Pot of leeks" keeps 48 hours, and "Leek supper" is eaten 57 hours after a session that begins at 09:00. Freeze a share, make it later, or move the meal.',
    );
    for (const text of texts) expect(text).not.toMatch(/"(pot|supper)"|^pot: |components|meals/);
  });

  it("refuses a plan that cannot be computed", async () => {
    const circle = pot({ steps: [step("a", 1, { after: ["b"] }), step("b", 1, { after: ["a"] })] });
    const found = await checkPublishedPlan(eaten(circle), noHousehold, publishedRules, { clock }, () =>
      Promise.resolve({ keeping: [], classes: [] }),
    );
    expect(found).toMatchObject({ ok: false, problems: [{ code: "STEPS_IN_A_CIRCLE" }] });
  });
});
