import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { readSeeds } from "../../../src/app/setup/read-seeds.js";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import { planPage } from "../../../src/exports/page/plan-page.js";
import { blankForm, type PlanForm } from "../../../src/exports/page/form/plan-form.js";
import { answerOf, shippedRules } from "../../kit/answer-of.js";
import { elementsOf, parseErrors } from "../../kit/html-page.js";

const links = { origin: "https://plans.example", style: "/p-assets/page.css", ticks: null, cook: null };

const start = { start: "2026-03-01T10:00:00Z", zone: "Europe/Lisbon" };

function pageOf(bundle: PlanBundle, form: PlanForm = blankForm): string {
  const answer = answerOf(bundle, 7, { region: "XA", currency: "XTS", session: start });
  const { publication } = answer;
  const diets = shippedRules.allergens.diets;
  return planPage({ publication, bundle, form, diets, answer, problems: [], links });
}

/** Fields in which a writer writes whatever they like. */
const written = new Set([
  "title",
  "summary",
  "text",
  "one",
  "many",
  "preparation",
  "mark",
  "container",
  "condition",
  "note",
  "section",
]);

/** Every such text, each different, so that no two things become one. */
function poisoned<T>(value: T, poison: (at: number) => string): T {
  let at = 0;
  const walk = (each: unknown, key: string): unknown => {
    if (typeof each === "string") return written.has(key) ? poison(at++) : each;
    if (Array.isArray(each)) return each.map((item) => walk(item, key));
    if (typeof each !== "object" || each === null) return each;
    return Object.fromEntries(Object.entries(each).map(([name, item]) => [name, walk(item, name)]));
  };
  return walk(value, "") as T;
}

/** Elements and the names of their attributes: what a text must never change. */
const skeleton = (html: string): readonly string[] =>
  elementsOf(html).map(({ tagName, attrs }) => `${tagName} ${attrs.map(({ name }) => name).join(" ")}`);

const hostile = fc.oneof(
  fc.constantFrom(
    "</title><script>alert(1)</script>",
    `"><img src=x onerror=alert(1)>`,
    "' autofocus onfocus='alert(1)",
    "<!--",
    "]]><svg onload=alert(1)>",
    "&lt;b&gt; &amp;#60;",
    "</textarea></style></svg><base href=//evil.example>",
    "\u0000\u0008\u009f\ufffe",
    "javascript:alert(1)",
    "\u202e drawkcab",
  ),
  fc.string({ unit: "binary", minLength: 1, maxLength: 40 }),
);

describe("whatever a writer or a reader writes", () => {
  let bundle: PlanBundle;

  beforeAll(async () => {
    const { bundles } = await readSeeds("seeds");
    const found = bundles.find(({ plan }) => plan.slug === "bean-night");
    if (found === undefined) throw new Error("the demo has no bean night");
    bundle = found;
  });

  it("stays text on a plan's page", () => {
    const harmless = skeleton(pageOf(poisoned(bundle, (at) => `words ${at}`)));
    expect(harmless.length).toBeGreaterThan(200);
    fc.assert(
      fc.property(hostile, (text) => {
        const html = pageOf(poisoned(bundle, (at) => `${text} ${at}`));
        expect(parseErrors(html)).toEqual([]);
        expect(skeleton(html)).toEqual(harmless);
      }),
      { numRuns: 40 },
    );
  });

  it("stays text in the form", () => {
    const filled = (text: string): PlanForm => ({
      ...blankForm,
      servings: text,
      revision: text,
      region: text,
      currency: text,
      measures: text,
      routes: text,
      zone: text,
      start: text,
      locale: text,
      diets: [text],
      swaps: [text],
      route: [text],
      // Cut at an x and at a colon: the first half is never blank, so that each has its own option.
      eaters: [`2x~${text}`],
      onHand: [`~${text}`],
    });
    const harmless = skeleton(pageOf(bundle, filled("words")));
    fc.assert(
      fc.property(hostile, (text) => {
        const html = pageOf(bundle, filled(text));
        expect(parseErrors(html)).toEqual([]);
        expect(skeleton(html)).toEqual(harmless);
      }),
      { numRuns: 40 },
    );
  });
});
