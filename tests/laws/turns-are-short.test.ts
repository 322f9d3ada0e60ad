import { describe, expect, it } from "vitest";
import { noHousehold } from "../../src/domain/model/household.js";
import { asFrozen } from "../../src/domain/plan/review/foods-today.js";
import { planStorageInSlices } from "../../src/domain/plan/plan-storage.js";
import { scalePlan, scalePlanInSlices } from "../../src/domain/plan/scale-plan.js";
import { shopInSlices } from "../../src/domain/plan/shop.js";
import type { InSlices, Work } from "../../src/domain/counted-work.js";
import { mailHtmlInSlices } from "../../src/exports/document/mail-html.js";
import { planMarkdownInSlices } from "../../src/exports/document/markdown.js";
import { plainTextInSlices } from "../../src/exports/document/plain-text.js";
import { planJsonInSlices } from "../../src/exports/json/plan.js";
import { listPageInSlices } from "../../src/exports/page/list-page.js";
import { planPageInSlices } from "../../src/exports/page/plan-page.js";
import { schemaOrgTextInSlices } from "../../src/exports/schema-org/schema-org.js";
import { readPlanForm } from "../../src/rest/read-plan-form.js";
import { readDocumentsInSlices } from "../../src/imports/documents/read-documents.js";
import {
  findCautionsInSlices,
  stateContentsInSlices,
  stateNutritionInSlices,
} from "../../src/services/answers/state-contents.js";
import { rules } from "../graphql/open-test-app.js";
import { answerOf } from "../kit/answer-of.js";
import { documentShapes } from "../kit/document-shapes.js";
import { largeBundle } from "../kit/large-bundle.js";

/** Some five milliseconds of a usual processor. */
const mostSteps = 5_000;

interface Taken {
  readonly turns: number;
  readonly steps: number;
  /** The most that were counted between two turns. */
  readonly longest: number;
}

function take(begin: (work: Work) => InSlices<unknown>): Taken {
  let [turns, steps, longest, own] = [0, 0, 0, 0];
  const going = begin({ step: (count) => void (own += count) });
  for (let isDone = false; !isDone; turns += 1) {
    own = 0;
    isDone = going.next().done === true;
    steps += own;
    longest = Math.max(longest, own);
  }
  return { turns, steps, longest };
}

const size = { components: 150, lines: 30, meals: 60 };
const lines = (size.components + size.meals) * size.lines + size.components;
const household = { ...noHousehold, region: "GB" };
const clock = (): Date => new Date("2026-03-01T09:00:00Z");

describe("what is asked of a plan of 6,000 lines", () => {
  it("is checked, compiled and scaled a hundred lines at a time", () => {
    const bundle = largeBundle(size);
    const { turns } = take((work) => scalePlanInSlices(bundle, 40, household, asFrozen, work));
    // Checked, then compiled.
    expect(turns).toBeGreaterThan((2 * lines) / 100);
  });

  const scaled = scalePlan(largeBundle(size), 40, household);
  if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems.slice(0, 3)));
  const { keeping, classes } = rules.safety;
  const question = { rules: keeping, classes, region: "GB", today: "2026-03-01", session: null };
  const asked: Readonly<Record<string, (work: Work) => InSlices<unknown>>> = {
    statements: (work) => stateContentsInSlices(scaled.value, household, rules, clock, work),
    nutrition: (work) => stateNutritionInSlices(scaled.value, household, work),
    cautions: (work) => findCautionsInSlices(scaled.value, household, rules, work),
    "keeping times": (work) => planStorageInSlices(scaled.value, question, work),
  };
  it.each(Object.keys(asked))("%s: no turn is long", (name) => {
    const { steps, longest } = take(asked[name] ?? (() => expect.unreachable()));
    expect(steps).toBeGreaterThan(4_000);
    expect(longest).toBeLessThanOrEqual(mostSteps);
  });

  it("is put on a list five hundred lines at a time", () => {
    const { turns } = take((work) => shopInSlices([scaled.value], household, asFrozen, work));
    expect(turns).toBeGreaterThan(lines / 500);
  });
});

describe("a plan of 40 components and 10 meals", () => {
  const answer = answerOf(largeBundle({ components: 40, lines: 4, meals: 10 }), 8);
  const at = "https://plans.example/p";
  const addresses = { plan: at, revision: at, publisher: at, list: at, calendar: at };
  const links = { origin: "https://p.example", style: null, ticks: null, cook: null };
  const form = readPlanForm(new Map()).form;
  const { publication, scaled } = answer;
  const page = { publication, bundle: scaled.bundle, form, diets: [], answer, problems: [], links };
  const { list, reader, household } = answer;
  const plan = { bundle: scaled.bundle, publisher: publication.publisher, servings: 8, form };
  const listed = { plans: [plan] as const, list, reader, household, labels: new Set<string>(), links, others: "" };
  const written: Readonly<Record<string, readonly [pieces: number, write: () => InSlices<unknown>]>> = {
    JSON: [50, () => planJsonInSlices(answer)],
    Markdown: [50, () => planMarkdownInSlices(answer, addresses, null)],
    mail: [50, () => mailHtmlInSlices(answer, addresses, null)],
    "plain text": [40, () => plainTextInSlices(answer)],
    "schema.org data": [10, () => schemaOrgTextInSlices(answer, addresses)],
    "a page": [50, () => planPageInSlices(page)],
    "the page of a list": [answer.list.lines.length, () => listPageInSlices(listed)],
  };
  it.each(Object.keys(written))("is written as %s in as many turns", (form) => {
    const [pieces, write] = written[form] ?? [0, () => expect.unreachable()];
    expect(take(write).turns).toBeGreaterThan(pieces);
  });
});

describe("a text of 200,000 bytes", () => {
  it.each(["keys of maps in a list", "empty lines", "lines of a component"])("%s: is read in many turns", (shape) => {
    const text = documentShapes[shape]?.(200_000) ?? "";
    const { turns, steps } = take((work) => readDocumentsInSlices(text, "text.yaml", 100, work));
    expect(steps).toBeGreaterThan(50_000);
    // The composer builds all nodes of a document at once; the rest is cut.
    expect(turns).toBeGreaterThan(100);
  });
});
