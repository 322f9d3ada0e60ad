import { describe, expect, it } from "vitest";
import { noHousehold } from "../../../../src/domain/model/household.js";
import type { PlanBundle } from "../../../../src/domain/model/plan.js";
import type { DietStatement } from "../../../../src/domain/nutrition/diets.js";
import { checkPlan, leftOverLimit, type PlanToCheck } from "../../../../src/domain/plan/check/check-plan.js";
import { scalePlan } from "../../../../src/domain/plan/scale-plan.js";
import { scaledSession } from "../../../../src/domain/plan/session/scaled-session.js";
import { firstKeepingClasses } from "../../../../src/domain/storage/first-keeping-classes.js";
import type { Caution } from "../../../../src/domain/storage/cautions.js";
import type { StorageGuidance, Subject } from "../../../../src/domain/storage/guidance.js";
import { bundle, component, invented, line, made, meal, plan, route, step } from "../../../kit/builders.js";

/** A plan as the check gets it; nothing is said of keeping, cautions and diets unless a test says it. */
function look(written: PlanBundle, facts: Partial<PlanToCheck> = {}) {
  const scaled = scalePlan(written, 1, noHousehold);
  if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
  const session = scaledSession(scaled.value, noHousehold, firstKeepingClasses);
  if (!session.ok) throw new Error(JSON.stringify(session.problems));
  const nothing = {
    storage: { guidance: [], unknown: [], warnings: [] },
    cautions: { cautions: [], unknown: [] },
    diets: [],
    rules: { classes: [], keeping: [] },
    today: "2026-03-01",
  };
  return checkPlan({ scaled: scaled.value, session: session.value, ...nothing, ...facts });
}

const ofOvens = (found: ReturnType<typeof look>) => found.filter(({ code }) => code.startsWith("OVEN"));

const subject = (kind: Subject["kind"], slug: string): Subject => ({ kind, slug });

const keeps = (about: Subject, days: number, tooLateFor: readonly string[]): StorageGuidance => ({
  subject: about,
  place: "FRIDGE",
  days,
  upToDays: null,
  counts: "DAYS",
  purpose: "SAFETY",
  lastDay: null,
  keepUntil: null,
  container: null,
  condition: null,
  basis: [],
  limitedBy: null,
  scope: null,
  tooLateFor,
  advice: [],
});

const caution = (code: string, about: readonly Subject[]): Caution => ({
  code,
  text: code,
  source: invented,
  restsOn: [],
  about,
});

const diet = (code: string, facts: Partial<DietStatement>): DietStatement => ({
  diet: code,
  name: code,
  fits: null,
  breaks: [],
  unknown: [],
  traces: "UNKNOWN",
  claims: [],
  ...facts,
});

const barley = component("barley", "500 g", [line("200 g", "pearl-barley")]);
const bowl = meal("bowl", [line("500 g", made("barley"))]);

describe("the writer's check", () => {
  it("finds nothing in a plan that comes out", () => {
    expect(look(bundle([bowl], [barley]))).toEqual([]);
  });

  it("tells what it finds in the order of the document: claims, time, meals, components, keeping, cautions", () => {
    const late = meal("bowl", [line("100 g", made("barley")), line("1/10 g", "salt")], { day: 5 });
    const slow = component("barley", "500 g", [line("1/5 g", "pepper"), line("200 g", "pearl-barley")], {
      batch: { min: "1", max: null, increment: "1" },
      steps: [step("boil", 40, { attention: "UNATTENDED" })],
    });
    const found = look(bundle(plan([late], { claims: ["vegan"], promisedMinutes: 30 }), [slow]), {
      storage: { guidance: [keeps(subject("COMPONENT", "barley"), 3, ["bowl"])], unknown: [], warnings: [] },
      cautions: { cautions: [], unknown: [{ subject: subject("COMPONENT", "barley"), code: "hot" }] },
    });
    expect(found.map(({ code, path }) => [code, path.join("/")])).toEqual([
      ["CLAIM_WITHOUT_RULE", "claims/0"],
      ["SESSION_TOO_LONG", "promised-time"],
      ["NOT_MEASURABLE", "meals/bowl/lines/l2"],
      ["NOT_MEASURABLE", "components/barley/lines/l1"],
      ["COMPONENT_LEFT_OVER", "components/barley"],
      ["KEPT_TOO_LONG", "components/barley"],
      ["CAUTION_UNKNOWN", "components/barley/cautions"],
    ]);
  });
});

describe("a component in the writer's check", () => {
  const eating = (grams: number) =>
    look(
      bundle(
        [meal("bowl", [line(`${grams} g`, made("barley"))])],
        [{ ...barley, batch: { min: "1", max: null, increment: "1" } }],
      ),
    );

  it("may leave a fifth over and not more", () => {
    expect(leftOverLimit).toBe(0.2);
    expect(eating(400)).toEqual([]);
    expect(eating(350)).toEqual([
      {
        code: "COMPONENT_LEFT_OVER",
        severity: "LOOK",
        path: ["components", "barley"],
        component: "barley",
        share: 0.3,
        limit: 0.2,
      },
    ]);
  });

  it("of which nothing is eaten is said once, and nothing else of it", () => {
    const none = meal("bowl", [line("1 g", "salt"), line(null, made("barley"))]);
    const unlit = { ...barley, steps: [step("bake", 10, { appliance: "oven" })] };
    const found = look(bundle([none], [unlit])).filter(({ path }) => path[0] === "components");
    expect(found).toEqual([
      { code: "COMPONENT_NEVER_EATEN", severity: "LOOK", path: ["components", "barley"], component: "barley" },
    ]);
  });

  it("is looked at with the steps of the way it is made", () => {
    const bake = step("bake", 10, { appliance: "oven" });
    const bought = { ...barley, routes: [route("tin", [line("1 g", "tin")], { steps: [bake] })] };
    const scaled = scalePlan(bundle([bowl], [bought]), 1, {
      ...noHousehold,
      routes: { mode: "AS_WRITTEN", byName: [{ component: "barley", route: "tin" }] },
    });
    if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
    expect(look(bundle([bowl], [bought]), { scaled: scaled.value }).map(({ code }) => code)).toEqual([
      "OVEN_WITHOUT_TEMPERATURE",
      "HOT_MAY_WAIT",
    ]);
    expect(look(bundle([bowl], [bought]))).toEqual([]);
  });

  const heat = (celsius: number | null) =>
    step("heat", 15, { appliance: "oven", attention: "UNATTENDED", temperatureC: celsius });
  const roast = step("roast", 30, { appliance: "oven", temperatureC: 200 });
  const roots = component("roots", "300 g", [line("400 g", "beetroot")], { steps: [roast] });
  const both = meal("bowl", [line("500 g", made("barley")), line("300 g", made("roots"))]);

  it.each([
    ["at the same temperature needs no heating of its own", 200, []],
    ["at another temperature does", 180, ["OVEN_NOT_PREHEATED"]],
    ["with an oven that is heated to nobody knows what does", null, ["OVEN_NOT_PREHEATED"]],
  ])("beside another %s", (_, celsius, codes) => {
    const lit = { ...barley, steps: [heat(celsius)] };
    expect(ofOvens(look(bundle([both], [lit, roots]))).map(({ code }) => code)).toEqual(codes);
  });

  it("lights no oven for others by baking in it", () => {
    const baked = { ...barley, steps: [step("bake", 30, { appliance: "oven", temperatureC: 200 })] };
    expect(ofOvens(look(bundle([both], [baked, roots]))).map(({ code, path }) => [code, path[1]])).toEqual([
      ["OVEN_NOT_PREHEATED", "barley"],
      ["OVEN_NOT_PREHEATED", "roots"],
    ]);
  });
});

describe("the steps of a session in the writer's check", () => {
  const codes = (steps: Parameters<typeof component>[3], of = "250 g") =>
    look(bundle([meal("bowl", [line(of, made("pot"))])], [component("pot", "250 g", [leek], steps)])).map(
      ({ code, path }) => [code, path.at(-1)],
    );
  const leek = line("200 g", "leek", { preparation: "sliced" });
  const slice = step("slice", 5, { lines: ["l1"] });

  it("may be fixed for one batch, and heat or cut no more than that in the same time", () => {
    const boil = step("boil", 9, { attention: "UNATTENDED", appliance: "hob-ring", growthStated: true });
    const cut = { ...slice, text: "Slice the leeks.", growthStated: true as const };
    const drain = step("drain", 2, { after: ["boil"], maxWait: 5 });
    expect(codes({ steps: [cut, boil, drain] })).toEqual([]);
    expect(codes({ steps: [cut, boil, drain] }, "1 kg")).toEqual([
      ["FIXED_FOR_MORE", "slice"],
      ["FIXED_FOR_MORE", "boil"],
    ]);
  });

  it.each(["Slice the leeks.", "Die Stangen in Ringe schneiden.", "Émincer les poireaux."])(
    "cut what is cut: %s",
    (text) => {
      expect(codes({ steps: [{ ...slice, text }] })).toEqual([]);
      expect(codes({ steps: [{ ...slice, text: "Do it." }] })).toEqual([["CUT_IN_NO_STEP", "l1"]]);
    },
  );

  it("say how long something hot may stand", () => {
    const boil = step("boil", 9, { appliance: "hob-ring" });
    expect(codes({ steps: [{ ...slice, text: "Slice." }, boil] })).toEqual([["HOT_MAY_WAIT", "boil"]]);
    const tipped = { ...step("tip", 1, { after: ["boil"] }), text: "Tip them out at once." };
    expect(codes({ steps: [{ ...slice, text: "Slice." }, boil, tipped] })).toEqual([]);
    const cool = step("cool", 1, { after: ["boil"] });
    expect(codes({ steps: [{ ...slice, text: "Slice." }, boil, cool] })).toEqual([["HOT_MAY_WAIT", "boil"]]);
    // Crisps go cold on their tray: what needs no cold may stand.
    const dry = { code: "crisp-bakes", what: "crisp bakes", within: null, perishable: false, byAnalogy: false };
    const crisps = component("pot", "250 g", [leek], {
      steps: [{ ...slice, text: "Slice." }, boil, cool],
      keepsAs: dry.code,
    });
    const days = bundle([meal("bowl", [line("250 g", made("pot"))])], [crisps]);
    expect(look(days, { rules: { classes: [dry], keeping: [] } })).toEqual([]);
  });
});

describe("keeping in the writer's check", () => {
  it("names the meal that comes too late, its day and how long the thing keeps", () => {
    const days = bundle([{ ...bowl, day: 1 }, meal("soup", [line("100 g", "leek")], { day: 6 })], [barley]);
    const guidance = [
      keeps(subject("COMPONENT", "barley"), 3, ["bowl", "soup"]),
      keeps(subject("MEAL", "soup"), 2, ["soup"]),
      keeps(subject("FOOD", "leek"), 4, ["soup"]),
    ];
    expect(look(days, { storage: { guidance, unknown: [], warnings: [] } })).toEqual(
      [
        { path: ["components", "barley"], subject: "barley", meal: "bowl", day: 1, days: 3 },
        { path: ["components", "barley"], subject: "barley", meal: "soup", day: 6, days: 3 },
        { path: ["meals", "soup"], subject: "soup", meal: "soup", day: 6, days: 2 },
      ].map((each) => ({ code: "KEPT_TOO_LONG", severity: "LOOK", ...each })),
    );
  });

  it("names components nobody gives a time for, and leaves meals and foods to them", () => {
    const unknown = (["COMPONENT", "MEAL", "FOOD"] as const).map((kind) => ({
      subject: subject(kind, `some-${kind.toLowerCase()}`),
      part: subject("FOOD", "leek"),
    }));
    expect(look(bundle([bowl], [barley]), { storage: { guidance: [], unknown, warnings: [] } })).toEqual([
      {
        code: "NOBODY_SAYS_HOW_LONG",
        severity: "LOOK",
        path: ["components", "some-component"],
        subject: "some-component",
      },
    ]);
  });
});

describe("cautions in the writer's check", () => {
  const named = bundle([bowl], [{ ...barley, cautions: ["COOL_FAST"] }]);

  it("are told where the rules find one due and the writer names another or none", () => {
    const cautions = [
      caution("COOL_FAST", [subject("COMPONENT", "barley"), subject("MEAL", "bowl")]),
      caution("REHEAT", [subject("COMPONENT", "barley"), subject("MEAL", "barley"), subject("COMPONENT", "elsewhere")]),
    ];
    expect(look(named, { cautions: { cautions, unknown: [] } })).toEqual([
      {
        code: "CAUTION_NOT_NAMED",
        severity: "LOOK",
        path: ["components", "barley"],
        subject: "barley",
        caution: "REHEAT",
      },
    ]);
  });

  it("that no rule knows are told", () => {
    const unknown = [{ subject: subject("COMPONENT", "barley"), code: "HOT_STUFF" }];
    expect(look(named, { cautions: { cautions: [], unknown } })).toEqual([
      {
        code: "CAUTION_UNKNOWN",
        severity: "LOOK",
        path: ["components", "barley", "cautions"],
        subject: "barley",
        caution: "HOT_STUFF",
      },
    ]);
  });
});

describe("a claim in the writer's check", () => {
  const claiming = (claims: readonly string[], diets: readonly DietStatement[]) =>
    look(bundle(plan([bowl], { claims }), [barley]), { diets });

  it("holds where every food fits", () => {
    expect(
      claiming(["vegan"], [diet("vegetarian", { fits: false, breaks: ["stock"] }), diet("vegan", { fits: true })]),
    ).toEqual([]);
  });

  it("that a food breaks stops the plan, with the foods", () => {
    const gluten = diet("gluten-free", { fits: false, breaks: ["pearl-barley"], unknown: ["oats"] });
    expect(claiming(["gluten-free"], [gluten])).toEqual([
      { code: "CLAIM_BROKEN", severity: "STOPS", path: ["claims", 0], claim: "gluten-free", foods: ["pearl-barley"] },
    ]);
  });

  it("that nobody can bear out stops it too: unknown is never free from", () => {
    expect(claiming(["vegan"], [diet("vegan", { fits: null, unknown: ["stock"] })])).toEqual([
      { code: "CLAIM_NOT_KNOWN", severity: "STOPS", path: ["claims", 0], claim: "vegan", foods: ["stock"] },
    ]);
  });

  it("that no rule knows stops it", () => {
    expect(claiming(["vegan", "moonfood"], [diet("vegan", { fits: true })])).toEqual([
      { code: "CLAIM_WITHOUT_RULE", severity: "STOPS", path: ["claims", 1], claim: "moonfood" },
    ]);
  });
});

describe("a promised time in the writer's check", () => {
  const promising = (promisedMinutes: number | null) =>
    look(bundle(plan([bowl], { promisedMinutes }), [{ ...barley, steps: [step("boil", 40)] }]));

  it.each([
    ["is kept to the minute", 40],
    ["is kept with time to spare", 41],
    ["may be left out", null],
  ])("%s", (_, minutes) => expect(promising(minutes)).toEqual([]));

  it("that is too short is told, with what it takes", () => {
    expect(promising(39)).toEqual([
      { code: "SESSION_TOO_LONG", severity: "LOOK", path: ["promised-time"], minutes: 40, promised: 39 },
    ]);
  });
});
