import type { Component } from "../domain/model/component.js";
import type { Plan, PlanBundle } from "../domain/model/plan.js";
import { bundleOf, componentsIn, foodsIn, linesOfComponent } from "../domain/plan/bundle-of.js";
import type { NamedFinding, PlacedFinding } from "../domain/plan/finding.js";
import type { Path, Problem, TextPlace } from "../domain/problem.js";
import type { CodeLists } from "../domain/model/code-lists.js";
import { checkCodes } from "../imports/documents/check-codes.js";
import { placedProblem } from "../imports/documents/placed-problem.js";
import { locatePath, type ResolvedValues } from "../imports/documents/locate-problem.js";
import { readDocuments, type ReadDocument } from "../imports/documents/read-documents.js";
import type { Data, Draft, DraftDocument, OwnedSlug } from "./deps.js";
import { componentDocument, planDocument } from "./draft-document.js";
import { gatherComponents } from "./gather-components.js";
import { inheritFacts } from "./inherit-facts.js";

/** A draft plan with its component drafts and the foods as known today, with what they inherit. */
export interface GatheredPlan {
  readonly draft: Draft<Plan>;
  readonly components: readonly Draft<Component>[];
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
  const foods = await inheritFacts({ data }, await data.foods.bySlugs(slugs));
  return {
    draft,
    components,
    bundle: bundleOf(
      draft.value,
      values,
      foods.filter((food) => food !== null),
    ),
  };
}

/** Puts problems and findings of a gathered plan at their places in the texts of its drafts. */
export function placesIn({ draft, components }: GatheredPlan): {
  readonly problem: (problem: Problem) => Problem;
  readonly finding: (finding: NamedFinding) => PlacedFinding;
} {
  const plan = readBack(planDocument(draft), `plan ${draft.value.slug}`);
  const resolved: ResolvedValues = {
    foods: [],
    components: components.flatMap((each) => {
      const read = readBack(componentDocument(each), `component ${each.value.slug}`);
      return read === null ? [] : [{ value: each.value, read }];
    }),
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
export function unknownCodesIn({ draft, components }: GatheredPlan, lists: CodeLists): readonly Problem[] {
  const read = [
    readBack(planDocument(draft), `plan ${draft.value.slug}`),
    ...components.map((each) => readBack(componentDocument(each), `component ${each.value.slug}`)),
  ];
  return checkCodes(
    read.filter((each) => each !== null),
    lists,
  ).map(placedProblem);
}

/** null: this version of the program reads the text no more; then nothing can be shown in it. */
function readBack({ text }: DraftDocument, file: string): ReadDocument | null {
  return readDocuments(text, file).documents[0] ?? null;
}
