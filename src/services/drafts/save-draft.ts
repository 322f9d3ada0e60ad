import { failed, ok, type Problem, type Result } from "../../domain/problem.js";
import { placedProblem } from "../../imports/documents/yaml/placed-problem.js";
import type { Caller } from "../access/actor.js";
import type { Deps, DraftKind } from "../deps.js";
import { runInSlices, type Sliced } from "../time-slices.js";
import { readTextsInSlices } from "./read-texts.js";
import { saveTexts, type SavedDraft } from "./save-documents.js";
import { write } from "../write.js";

interface DraftInput {
  readonly publisher: string;
  /** What problems call the text. */
  readonly name: string;
  readonly text: string;
  /** null or left out: there must be no draft yet. */
  readonly expectedVersion?: number | null | undefined;
  readonly idempotencyKey?: string | null | undefined;
}

/** One draft that was saved, and whose it is. */
export type OneSaved = SavedDraft & { readonly publisher: string };

/** Saves the document of one plan. */
export const savePlanDraft = (deps: Deps, caller: Caller, input: DraftInput): Promise<Result<OneSaved>> =>
  saveDraft(deps, caller, "PLAN", input);

/** Saves the document of one component. */
export const saveComponentDraft = (deps: Deps, caller: Caller, input: DraftInput): Promise<Result<OneSaved>> =>
  saveDraft(deps, caller, "COMPONENT", input);

/** Saves the document of one food of the publisher's own. */
export const saveFoodDraft = (deps: Deps, caller: Caller, input: DraftInput): Promise<Result<OneSaved>> =>
  saveDraft(deps, caller, "FOOD", input);

async function saveDraft(deps: Deps, caller: Caller, kind: DraftKind, input: DraftInput): Promise<Result<OneSaved>> {
  const { publisher, name, text, expectedVersion = null, idempotencyKey } = input;
  const asked = { kind, name, text, expectedVersion };
  return write(
    deps,
    { caller, scope: "WRITE", publisher, action: "SAVE_DRAFTS", idempotencyKey, input: asked },
    async (inside) => {
      const one = await readOne(inside, kind, name, text);
      if (!one.ok) return one;
      const expected = expectedVersion === null ? [] : [{ kind, slug: one.value, version: expectedVersion }];
      const saved = await saveTexts(inside, caller.actor, {
        publisher,
        texts: [{ name, text }],
        expected,
        path: ["input"],
        codes: "REFUSED",
      });
      if (!saved.ok) return failed(saved.problems.map(asOneField));
      const [draft] = saved.value.value.drafts;
      if (draft === undefined) return failed([operatorsFood]);
      return ok({ ...saved.value, value: { ...draft, publisher } });
    },
  );
}

/** Of the operator, only a food that extends another is a publisher's. */
const operatorsFood: Problem = {
  code: "BAD_SHAPE",
  path: ["input", "text"],
  expected: "a food that extends another; saveFoods saves those that all publishers share",
  got: "one that extends none, from the operator",
};

/** The slug of the one document of that kind that the text is meant to hold. */
async function readOne(paced: Sliced, kind: DraftKind, name: string, text: string): Promise<Result<string>> {
  const read = await runInSlices(paced, (work) => readTextsInSlices([{ name, text }], ["input"], work));
  if (!read.ok) return failed(read.problems.map(asOneField));
  const { documents, faulty, count, problems } = read.value;
  const word = kind.toLowerCase();
  const [first] = [...documents.map(({ document }) => document), ...faulty];
  const refuse = (got: string): Result<never> =>
    failed([{ code: "BAD_SHAPE", path: ["input", "text"], expected: `one document of the kind ${word}`, got }]);
  if (count !== 1) return refuse(`${count} documents`);
  if (first !== undefined && first.kind !== word) return refuse(`one of the kind ${first.kind}`);
  // What has no slug to be saved under is refused for its faults.
  return first === undefined ? failed(problems.map(placedProblem)) : ok(first.slug);
}

/** One text and its version stand in fields of their own, where several stand in lists. */
function asOneField(problem: Problem): Problem {
  const [root, list] = problem.path;
  if (problem.place !== undefined || root !== "input") return problem;
  if (list === "expected") return { ...problem, path: ["input", "expectedVersion"] };
  return list === "texts" ? { ...problem, path: ["input", "text"] } : problem;
}
