import { failed, ok, type Problem, type Result } from "../../domain/problem.js";
import { checkDocumentsInSlices } from "../../imports/documents/checks/check-documents.js";
import { checkFoodsKeeping } from "../../imports/documents/checks/check-food-keeping.js";
import { placedProblem } from "../../imports/documents/yaml/placed-problem.js";
import type { Caller } from "../access/actor.js";
import type { Deps } from "../deps.js";
import { listsOfToday, numbersIn } from "../drafts/load-references.js";
import { rulesToday } from "../rules/find-rules.js";
import { runInSlices } from "../time-slices.js";
import { readTextsInSlices, type GivenText } from "../drafts/read-texts.js";
import { write } from "../write.js";
import { utcDay } from "../../domain/utc-day.js";

interface FoodsInput {
  readonly texts: readonly GivenText[];
  readonly idempotencyKey?: string | null | undefined;
}

type SavedFoods = {
  /** Slugs, in the order of the documents. */
  readonly foods: readonly string[];
  /** How many of them are new or different now. */
  readonly changed: number;
};

/** Saves foods, which all publishers share: only the operator may. All of them or none. */
export async function saveFoods(deps: Deps, caller: Caller, input: FoodsInput): Promise<Result<SavedFoods>> {
  const { texts, idempotencyKey } = input;
  return write(
    deps,
    {
      caller,
      scope: "WRITE",
      publisher: null,
      action: "SAVE_FOODS",
      idempotencyKey,
      input: { texts: texts.map(({ name, text }) => ({ name, text })) },
    },
    async (inside) => {
      const { data } = inside;
      const read = await runInSlices(inside, (work) => readTextsInSlices(texts, ["input"], work));
      if (!read.ok) return read;
      const foods = read.value.documents.filter(({ document }) => document.kind === "food");
      const others = read.value.documents.filter(({ document }) => document.kind !== "food");
      const codes = await listsOfToday(inside, numbersIn(read.value));
      const known = { foods: [], components: [], codes };
      const { resolved, problems } = await runInSlices(inside, (work) =>
        checkDocumentsInSlices({ ...read.value, documents: foods }, known, work),
      );
      const { safety } = await rulesToday(inside);
      const today = utcDay(inside.clock());
      const kept = checkFoodsKeeping(resolved, safety, today);
      const extending = foods.flatMap(({ document, file, place }): readonly Problem[] =>
        document.kind !== "food" || document.extends === null
          ? []
          : [
              {
                code: "BAD_SHAPE",
                path: ["extends"],
                expected: "a food of its own, since only a publisher's builds on another",
                got: document.extends,
                place: { file, ...place(["extends"], "VALUE") },
              },
            ],
      );
      if (extending.length > 0) return failed(extending);
      const refused: readonly Problem[] = [
        ...kept.map(placedProblem),
        ...problems.map(placedProblem),
        ...others.map(({ document, file, place }): Problem => ({
          code: "BAD_SHAPE",
          path: ["kind"],
          expected: "food",
          got: document.kind,
          place: { file, ...place(["kind"], "VALUE") },
        })),
      ];
      if (refused.length > 0) return failed(refused);
      const values = resolved.foods.map(({ value }) => value);
      const { changed } = await data.foods.save(values);
      const slugs = values.map(({ slug }) => slug);
      return ok({
        value: { foods: slugs, changed },
        subject: slugs.map((name) => ({ kind: "FOOD" as const, name, before: null, after: null })),
      });
    },
  );
}
