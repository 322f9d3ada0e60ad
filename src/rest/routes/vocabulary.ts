import type { Path } from "../../domain/problem.js";
import { vocabularySchema } from "../../exports/json/vocabulary.js";
import { listVocabulary, type Vocabulary } from "../../services/answers/list-vocabulary.js";
import { asJson, endpoint, found, refused } from "../endpoint.js";
import { inQuery, one } from "../parameter.js";
import { badParameters } from "../refusal.js";

const path: Path = ["locale"];

export const vocabularyEndpoint = endpoint(
  {
    method: "GET",
    path: "/v1/vocabulary",
    operationId: "getVocabulary",
    tag: "catalogue",
    summary: "Every closed list, codes of problems, regions with rules and currencies with prices",
    description:
      "`regionsWithRules` is where rules were published, `currenciesWithPrices` what a household can be told a cost in, `problemKinds` and " +
      "`warningKinds` every code with a title and the names of its `parameters`. `lists`: keeping classes, allergens, diets, cautions, aisles, appliances, units, measures, places, regions, currencies and languages, as " +
      "they are today, each with the other spellings that are taken for a code. Documents are checked against the same lists. " +
      "Cautions, measures and places are named in English, the rest in the locale. A code that is not listed says nothing of a food: " +
      "unknown is never free from it.",
    parameters: [inQuery("locale", "BCP 47 tag of the names. Default: `en`.", undefined, { example: "de-AT" })],
    refusals: [],
    caching: "LIVE",
  },
  async ({ deps, query }) => {
    const answer = await listVocabulary(deps, one(query, "locale"), path);
    return answer.ok ? found(answer.value) : refused(badParameters(answer.problems));
  },
  [asJson(vocabularySchema, "The lists.", (vocabulary: Vocabulary) => vocabulary)],
);
