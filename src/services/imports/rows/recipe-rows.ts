import { mostProblems } from "../../../domain/first-problems.js";
import type { Problem } from "../../../domain/problem.js";
import type { FoodMatch } from "../../../domain/quantity/food-name.js";
import { openPointText } from "../../../exports/sentences/open-point-text.js";
import { placedProblem } from "../../../imports/documents/yaml/placed-problem.js";
import { readDocumentsInSlices } from "../../../imports/documents/read-documents.js";
import { readRecipesInSlices, type RecipeProblem, type RecipeRecord } from "../../../imports/recipes/read-recipes.js";
import {
  recipeDraft,
  recipeDraftText,
  type DraftOptions,
  type OpenPoint,
} from "../../../imports/recipes/recipe-draft.js";
import { originLine, originOf, recipeOrigin, type RecipeOrigin } from "../../../imports/recipes/recipe-origin.js";
import { slugOf } from "../../../imports/recipes/recipe-slug.js";
import { foodsForLines } from "../../drafts/line-foods.js";
import { draftAuthorOf } from "../../access/draft-author.js";
import { importCaller } from "../../drafts/store-draft.js";
import type { Deps } from "../../deps.js";
import { runInSlices, yieldToOthers } from "../../time-slices.js";
import type { DraftRow, DraftRows } from "../../drafts/draft-row.js";
import type { RunningImport } from "../running-import.js";
import { recipeSlugs } from "./recipe-slugs.js";
import { recipeTitles, type RecipeTitles } from "./recipe-titles.js";
import { readWholeFile } from "../files/read-whole-file.js";

/**
 * The recipes of a page or a JSON-LD file as drafts of plans. What of a recipe a person must still say puts it aside, with
 * the draft as far as it goes to start from. A recipe that says what it said when it was last read is left alone, whatever a
 * writer has made of its draft since.
 */
export async function recipeRows(deps: Deps, job: RunningImport, publisher: string): Promise<DraftRows> {
  const bytes = await readWholeFile(job.bytes());
  const { records, problems } = await runInSlices(deps, () => readRecipesInSlices(bytes, job.fileName));
  const { locale, measures, region } = job.settings;
  const ingredients = records.flatMap(({ recipe }) => recipe?.ingredients ?? []);
  const { named: foods } = await foodsForLines(deps, ingredients, { publisher, as: "SAVED" });
  const options = { publisher, locale: locale ?? "en", measures, region, foods };
  const taken = new Map<string, string>();
  const last = new Map(records.map((record) => [recipeOrigin(record)?.name, record]));
  const names = records.flatMap(({ recipe }) => recipe?.name ?? []);
  const titles = await recipeTitles(deps.data, publisher, names);
  const rows: DraftRow[] = [];
  const parts = new Map<number, number>();
  const add = (line: number, raw: string, state: DraftRow["state"]): void => {
    const part = parts.get(line) ?? 0;
    parts.set(line, part + 1);
    rows.push({ line, part, raw, state });
  };
  for (const problem of problems) add(problem.line, "", bad([problem], null));
  for (const record of records) {
    await yieldToOthers(deps);
    const origin = recipeOrigin(record);
    if (record.recipe === null || origin === null) add(record.line, record.raw, bad(record.problems, null));
    else if (last.get(origin.name) !== record) add(record.line, record.raw, { kind: "REPEATED" });
    else add(record.line, record.raw, await stateOf(deps, job, options, record, origin, { taken, titles }));
  }
  return async function* inOrder() {
    yield* rows;
    await Promise.resolve();
  };
}

function bad(problems: readonly RecipeProblem[], offer: string | null): DraftRow["state"] {
  return { kind: "BAD", problems: problems.map(placedProblem), offer, component: null };
}

/** Of the recipes of the file that were looked at. */
interface NamesSoFar {
  readonly taken: Map<string, string>;
  readonly titles: RecipeTitles;
}

async function stateOf(
  deps: Deps,
  { feed, fileName }: RunningImport,
  options: Omit<DraftOptions, "slug" | "title">,
  record: RecipeRecord,
  origin: RecipeOrigin,
  { taken, titles }: NamesSoFar,
): Promise<DraftRow["state"]> {
  const { data } = deps;
  const { recipe } = record;
  if (recipe === null) return bad(record.problems, null);
  const { publisher } = options;
  const slugs = recipeSlugs(slugOf(recipe.name) ?? "recipe", origin);
  const drafts = await data.drafts.texts(slugs.map((slug) => ({ kind: "PLAN", publisher, slug })));
  const published = await data.revisions.summaries(slugs.map((slug) => ({ publisher, slug, revision: null })));
  const own = slugs.findIndex((_, at) => originOf(drafts[at]?.text ?? "")?.name === origin.name);
  const draft = own < 0 ? null : (drafts[own] ?? null);
  const isFree = (slug: string, at: number): boolean => !drafts[at] && !published[at] && !taken.has(slug);
  const slug = slugs[own] ?? slugs.find(isFree) ?? slugs[1];
  const title = titles.take(recipe.name, own < 0 ? null : slug);
  taken.set(slug, origin.name);
  if (draft !== null && originOf(draft.text ?? "")?.mark === origin.mark) return { kind: "SAME" };

  const made = recipeDraft(recipe, { ...options, slug, title });
  const text = originLine(origin) + recipeDraftText(made, (point) => openPointText(openProblem(point)));
  const problems: Problem[] = [...record.problems.map(placedProblem), ...made.open.map(openProblem)];
  // A writer has worked on it since: what the page says now is offered, and theirs stays.
  if (draft !== null && draft.updatedBy !== draftAuthorOf(importCaller(feed.slug).actor)) {
    problems.push({ code: "STALE_DRAFT", path: [], draft: "PLAN", slug, expected: null, actual: draft.version });
  }
  const { documents } = await runInSlices(deps, (work) => readDocumentsInSlices(text, fileName, mostProblems, work));
  const [read] = documents;
  if (problems.length > 0 || read === undefined) return { kind: "BAD", problems, offer: text, component: null };
  return { kind: "TEXT", draft: "PLAN", slug, text, firstLine: 1, offer: text, read };
}

const openProblem = (point: OpenPoint): Extract<Problem, { readonly code: "RECIPE_OPEN" }> => ({
  ...{ code: "RECIPE_OPEN", path: [], open: point.kind },
  written: "written" in point ? point.written : null,
  reasons: point.kind === "LINE" ? point.reasons : [],
  foods: point.kind === "LINE" ? foodsOf(point.match) : null,
});

const foodsOf = (match: FoodMatch): readonly string[] | null =>
  match.kind === "FOUND" ? null : match.kind === "AMBIGUOUS" ? match.slugs : [];
