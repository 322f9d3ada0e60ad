import { withOwnPacks } from "../../../domain/component/inherit-from-base.js";
import type { Component } from "../../../domain/model/component.js";
import type { Food } from "../../../domain/model/food.js";
import type { Line } from "../../../domain/model/line.js";
import type { Plan, PlanBundle } from "../../../domain/model/plan.js";
import { translationSlug } from "../../../domain/model/translation.js";
import { withTranslations } from "../../../domain/plan/translate/texts-of.js";
import { bundleOf } from "../../../domain/plan/compile/plan-bundle.js";
import { checkBundleInSlices } from "../../../domain/plan/check/check-bundle.js";
import { checkFood } from "../../../domain/plan/check/check-facts.js";
import type { Problem } from "../../../domain/problem.js";
import { runToEnd, unlimitedWork, type InSlices, type Work } from "../../../domain/counted-work.js";
import type { CodeLists } from "../../../domain/model/code-lists.js";
import { checkCodes } from "./check-codes.js";
import { checkAllergens } from "./check-allergens.js";
import { locateProblem } from "../yaml/locate-problem.js";
import type { DocumentProblem, DocumentsRead, ReadDocument } from "../read-documents.js";
import { problemAt, resolveInSlices, type DocumentsResolved, type KnownThings } from "../resolve-documents.js";

/** What documents come to. */
export interface DocumentsChecked {
  readonly resolved: DocumentsResolved;
  /** Every plan among them, with as much of what it refers to as is at hand. */
  readonly plans: readonly { readonly bundle: PlanBundle; readonly read: ReadDocument }[];
  readonly problems: readonly DocumentProblem[];
}

/** What documents may name beside one another, and the closed lists that their codes are of. */
export interface KnownBeside extends KnownThings {
  readonly codes: CodeLists;
  /** Whose documents they are; left out: nobody's yet. */
  readonly publisher?: string;
}

/**
 * Resolves documents and checks that everything they refer to fits together, among them and with what is `known`: every
 * plan, and every component also where no plan draws on it. All problems at once, each where it is to be mended, and
 * none that only follows from another: what names a document at fault is not at fault itself.
 */
export const checkDocuments = (read: DocumentsRead, known: KnownBeside): DocumentsChecked =>
  runToEnd(checkDocumentsInSlices(read, known, unlimitedWork));

/** The same turn by turn. */
export function* checkDocumentsInSlices(
  { documents, faulty, problems }: DocumentsRead,
  known: KnownBeside,
  work: Work,
): InSlices<DocumentsChecked> {
  const resolved = yield* resolveInSlices(documents, known, work);
  const absent = absentNames(documents, faulty, resolved);
  const components = together(
    resolved.components.map(({ value }) => value),
    known.components,
  );
  const { inherit = (food: Food) => food } = known;
  yield;
  const packs = new Map(resolved.packs.map(({ value }) => [value.slug, value]));
  const foods = together(
    resolved.foods.map(({ value }) => inherit(value)),
    known.foods,
  ).map((food) => {
    const own = packs.get(food.slug);
    return own === undefined ? food : withOwnPacks(known.publisher ?? "", food, own);
  });
  const written = resolved.translations.map(({ value }) => value);
  const names = new Set(written.map(translationSlug));
  const translations = [...written, ...(known.translations ?? []).filter((each) => !names.has(translationSlug(each)))];
  const bundle = (plan: Plan): PlanBundle => withTranslations(bundleOf(plan, components, foods), translations);
  const whole = yield* checkTogether(resolved, bundle, inherit, work);
  const own = [...resolved.problems, ...whole].filter(({ problem }) => !absent.has(namedBy(problem)));
  const plans: DocumentsChecked["plans"][number][] = [];
  for (const { value, read } of resolved.plans) {
    yield;
    plans.push({ bundle: bundle(value), read });
  }
  const codes = checkCodes([...documents, ...faulty], known.codes);
  return { resolved, plans, problems: distinct([...problems, ...codes, ...own]) };
}

function* checkTogether(
  resolved: DocumentsResolved,
  bundle: (plan: Plan) => PlanBundle,
  inherit: (food: Food) => Food,
  work: Work,
): InSlices<readonly DocumentProblem[]> {
  const check = function* (plan: Plan, read: ReadDocument): InSlices<readonly DocumentProblem[]> {
    yield;
    const whole = bundle(plan);
    work.step(linesIn(whole));
    return (yield* checkBundleInSlices(whole)).map((problem) => locateProblem(problem, resolved, read));
  };
  const [first] = resolved.components;
  const everything = planOfAll(resolved.components.map(({ value }) => value));
  const made = first === undefined ? [] : yield* check(everything, first.read);
  const ofPlans: DocumentProblem[] = [];
  for (const { value, read } of resolved.plans) ofPlans.push(...(yield* check(value, read)));
  return [
    ...resolved.foods.flatMap(({ value, read }) =>
      checkFood(value.extends === undefined ? value : inherit(value)).map((problem) =>
        locateProblem(problem, resolved, read),
      ),
    ),
    ...resolved.foods.flatMap(({ value, read }) => checkAllergens(value).map((problem) => problemAt(read, problem))),
    ...ofPlans,
    ...made.filter(({ problem }) => problem.path[0] === "components" || problem.path[0] === "foods"),
  ];
}

const linesIn = ({ plan, components }: PlanBundle): number =>
  [...plan.meals, ...components].reduce((sum, { lines }) => sum + 2 * lines.length, 1);

/** A document goes before what is known of its name. */
const together = <T extends { readonly slug: string }>(written: readonly T[], known: readonly T[]): readonly T[] => {
  const names = new Set(written.map(({ slug }) => slug));
  return [...written, ...known.filter(({ slug }) => !names.has(slug))];
};

/** A batch of each component, so that each is checked as far as it reaches. */
const planOfAll = (components: readonly Component[]): Plan => ({
  publisher: "",
  slug: "components",
  title: "Components",
  summary: null,
  locale: "en",
  measures: "METRIC",
  serves: 1,
  meals: [{ slug: "all", title: "All", day: 0, serves: 1, lines: components.map(batchOf), steps: [] }],
  kitchen: { cooks: 1, appliances: {} },
  promisedMinutes: null,
  claims: [],
});

const batchOf = ({ slug }: Component): Line => ({
  id: slug,
  item: { kind: "COMPONENT", component: slug },
  written: "1 batch",
  amount: { low: "1", high: "1", unit: "batch" },
  extra: false,
  measured: "AS_BOUGHT",
  form: null,
  preparation: null,
  rule: "PROPORTIONAL",
  exponent: null,
  optional: false,
  mark: null,
  swaps: [],
});

/** Kind and slug of the documents that were handed in and could not be read to the end. */
function absentNames(
  documents: readonly ReadDocument[],
  faulty: DocumentsRead["faulty"],
  { foods, components, plans }: DocumentsResolved,
): ReadonlySet<string | null> {
  const present = new Set([
    ...plans.map(({ value }) => `plan ${value.slug}`),
    ...foods.map(({ value }) => `food ${value.slug}`),
    ...components.map(({ value }) => `component ${value.slug}`),
  ]);
  const written = [...documents.map(({ document }) => document), ...faulty].map(({ kind, slug }) => `${kind} ${slug}`);
  return new Set(written.filter((name) => !present.has(name)));
}

function namedBy(problem: Problem): string | null {
  // What a food builds on is never among the documents, even under its own name.
  if (problem.code === "UNKNOWN_FOOD") return problem.path[0] === "extends" ? null : `food ${problem.food}`;
  if (problem.code === "UNKNOWN_DRAFT") return `plan ${problem.slug}`;
  return problem.code === "UNKNOWN_COMPONENT" ? `component ${problem.component}` : null;
}

/** A component is checked with every plan that reaches it; its problem is still one. */
const distinct = (problems: readonly DocumentProblem[]): readonly DocumentProblem[] => [
  ...new Map(problems.map((each) => [JSON.stringify(each), each])).values(),
];
