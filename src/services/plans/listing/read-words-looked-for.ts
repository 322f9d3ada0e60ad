import { failed, ok, type Path, type Result } from "../../../domain/problem.js";
import { wordsLookedFor } from "../../../persistence/plans/searched-words.js";
import type { Deps, FactFilter } from "../../deps.js";
import type { WantedPlans } from "./wanted-plans.js";

/** The most words of a search, since each is looked for in several forms. */
const mostWords = 12;
/** Words that a misspelt one is taken for. */
const mostNear = 5;

/** The words of a search; of a word that no plan has, those that are nearly the same. */
export async function readWordsLookedFor(
  { data }: Deps,
  { search, publisher }: WantedPlans,
  path: Path,
): Promise<Result<FactFilter["words"]>> {
  const words = wordsLookedFor(search ?? "");
  if (words.length > mostWords) {
    const size = words.length;
    return failed([{ code: "TOO_LARGE", path: [...path, "search"], what: "words", size, limit: mostWords }]);
  }
  const strange = new Set(await data.planFacts.withoutPlans(words));
  return ok(
    await Promise.all(
      words.map(async (word) => ({
        word,
        near: strange.has(word) ? await data.planFacts.nearWords(word, publisher ?? null, mostNear) : [],
      })),
    ),
  );
}
