import type { Problem } from "../../../domain/problem.js";
import { originOf } from "../../../imports/recipes/recipe-origin.js";
import type { Deps } from "../../deps.js";
import { documentRows } from "../../drafts/document-rows.js";
import { placedInFile, type DraftRow, type DraftRows } from "../../drafts/draft-row.js";
import type { RunningImport } from "../running-import.js";
import { recipeSlugs } from "./recipe-slugs.js";

/**
 * Recipes that were put aside, mended as the documents that they are to become. Two of one name may have been offered the same slug: what is of
 * another page, or a writer's own, is never written over.
 */
export async function mendedRecipeRows(deps: Deps, job: RunningImport, publisher: string): Promise<DraftRows> {
  const rows = await documentRows(deps, job, publisher);
  return async function* guarded() {
    for await (const row of rows()) yield await guardedRow(deps, publisher, job.fileName, row);
  };
}

async function guardedRow({ data }: Deps, publisher: string, file: string, row: DraftRow): Promise<DraftRow> {
  const { state } = row;
  if (state.kind !== "TEXT" || state.draft !== "PLAN") return row;
  const { slug, text, read, firstLine } = state;
  const [draft] = await data.drafts.texts([{ kind: "PLAN", publisher, slug }]);
  if (!draft || draft.text === text) return row;
  const mine = originOf(text);
  const theirs = originOf(draft.text ?? "");
  if (mine !== null && mine.name === theirs?.name) return row;
  const own = mine === null ? `${slug.slice(0, 78)}-2` : recipeSlugs(slug, mine)[1];
  const problem: Problem = {
    ...{ code: "BAD_SHAPE", path: ["slug"] },
    expected:
      mine === null && theirs !== null
        ? `a slug and a title of its own, such as ${own}, or the line "# Read from …" that was offered, to replace the draft`
        : `a slug and a title of its own, such as ${own}`,
    got: theirs === null ? `${slug}, which is another plan` : `${slug}, which was read from ${theirs.name}`,
    place: { file, ...read.place(["slug"], "VALUE") },
  };
  return { ...row, state: { kind: "BAD", problems: [placedInFile(problem, firstLine)], offer: null, component: null } };
}
