import type { Component } from "../../domain/model/component.js";
import type { Plan, PlanBundle } from "../../domain/model/plan.js";
import { translationSlug, type TranslatedThing, type Translation } from "../../domain/model/translation.js";
import { withTranslations } from "../../domain/plan/translate/texts-of.js";
import { bundleOf, componentsIn, foodsIn, linesOfComponent } from "../../domain/plan/compile/plan-bundle.js";
import type { NamedFinding, PlacedFinding } from "../../domain/plan/check/finding.js";
import type { Path, Problem, TextPlace } from "../../domain/problem.js";
import type { CodeLists } from "../../domain/model/code-lists.js";
import { checkCodes } from "../../imports/documents/checks/check-codes.js";
import { placedProblem } from "../../imports/documents/yaml/placed-problem.js";
import { locatePath, type ResolvedValues } from "../../imports/documents/yaml/locate-problem.js";
import { readDocumentsInSlices, type ReadDocument } from "../../imports/documents/read-documents.js";
import type { Data, Draft, DraftDocument, OwnedSlug } from "../deps.js";
import { componentDocument, planDocument, translationDocument } from "../drafts/draft-document.js";
import { gatherComponents } from "./gather-components.js";
import { mostProblems } from "../../domain/first-problems.js";
import { runInSlices, type Sliced } from "../time-slices.js";
import { findFoodsOf } from "../foods/find-foods-of.js";

/** A draft plan with its component drafts and the foods as known today, with what they inherit. */
export interface GatheredPlan {
  readonly draft: Draft<Plan>;
  readonly components: readonly Draft<Component>[];
  readonly translations: readonly Draft<Translation>[];
  readonly bundle: PlanBundle;
}

/** null: there is no draft of that plan. Inside a transaction that locks the publisher, all of it is of one moment. */
export async function gatherPlan(data: Data, name: OwnedSlug): Promise<GatheredPlan | null> {
  const [draft] = await data.plans.drafts([name]);
  if (!draft) return null;
  const lines = draft.value.meals.flatMap((meal) => meal.lines);
  const components = await gatherComponents(data, name.publisher, componentsIn(lines));
  const values = components.map(({ value }) => value);
  const slugs = [...new Set(foodsIn([...lines, ...values.flatMap(linesOfComponent)]))];
  const foods = await findFoodsOf(data, name.publisher, slugs);
  const bundle = bundleOf(
    draft.value,
    values,
    foods.filter((food) => food !== null),
  );
  const things: readonly TranslatedThing[] = [
    { kind: "PLAN", slug: name.slug },
    ...values.map(({ slug }) => ({ kind: "COMPONENT" as const, slug })),
  ];
  const translations = await data.translations.of(name.publisher, things);
  return {
    draft,
    components,
    translations,
    bundle: withTranslations(
      bundle,
      translations.map(({ value }) => value),
    ),
  };
}

/** Puts problems and findings of a gathered plan at their places in the texts of its drafts. */
export async function placesIn(
  paced: Sliced,
  gathered: GatheredPlan,
): Promise<{
  readonly problem: (problem: Problem) => Problem;
  readonly finding: (finding: NamedFinding) => PlacedFinding;
}> {
  const { draft } = gathered;
  const { plan, components, translations } = await readBack(paced, gathered);
  const resolved: ResolvedValues = {
    foods: [],
    translations: translations.flatMap(({ value, read }) => (read === null ? [] : [{ value, read }])),
    components: components.flatMap(({ value, read }) => (read === null ? [] : [{ value, read }])),
    plans: plan === null ? [] : [{ value: draft.value, read: plan }],
  };
  const placeOf = (given: Path): { readonly path: Path; readonly place: TextPlace } | null => {
    if (plan === null) return null;
    const { path, file, line, column } = locatePath(given, resolved, plan);
    return { path, place: { file, line, column } };
  };
  return {
    problem: (problem) => ({ ...problem, ...placeOf(problem.path) }),
    finding: (finding) => {
      const found = placeOf(finding.path);
      return found === null ? finding : { ...finding, place: found.place };
    },
  };
}

/** The codes of its drafts that no list has, at their places: drafts saved before the lists were closed may hold some. */
export async function unknownCodesIn(
  paced: Sliced,
  gathered: GatheredPlan,
  lists: CodeLists,
): Promise<readonly Problem[]> {
  const { plan, components } = await readBack(paced, gathered);
  return checkCodes(
    [plan, ...components.map(({ read }) => read)].filter((each) => each !== null),
    lists,
  ).map(placedProblem);
}

/** What was read back of each: its places and its codes are looked for in the same texts. */
const known = new WeakMap<GatheredPlan, ReturnType<typeof readAll>>();

function readBack(paced: Sliced, gathered: GatheredPlan): ReturnType<typeof readAll> {
  const reading = known.get(gathered) ?? readAll(paced, gathered);
  known.set(gathered, reading);
  return reading;
}

/** Its drafts as they are written; null: this version of the program reads the text no more; then nothing can be shown in it. */
async function readAll(paced: Sliced, { draft, components, translations }: GatheredPlan) {
  const readOne = async ({ text }: DraftDocument, file: string): Promise<ReadDocument | null> => {
    const { documents } = await runInSlices(paced, (work) => readDocumentsInSlices(text, file, mostProblems, work));
    return documents[0] ?? null;
  };
  const plan = await readOne(planDocument(draft), `plan ${draft.value.slug}`);
  const read: { readonly value: Component; readonly read: ReadDocument | null }[] = [];
  for (const each of components)
    read.push({ value: each.value, read: await readOne(componentDocument(each), `component ${each.value.slug}`) });
  const translated: { readonly value: Translation; readonly read: ReadDocument | null }[] = [];
  for (const each of translations) {
    const file = `translation ${translationSlug(each.value)}`;
    translated.push({ value: each.value, read: await readOne(translationDocument(each), file) });
  }
  return { plan, components: read, translations: translated };
}
