import { messageParameters } from "../../domain/message-parameters.js";
import { parametersJson, placeAsked } from "../../exports/json/problem.js";
import { problemTitle } from "../../exports/sentences/problem-title.js";
import { readerProblemText } from "../../exports/sentences/reader-problem-text.js";
import { wordsFor } from "../../exports/words/words-for.js";
import { problemText } from "../../exports/sentences/problem-text.js";
import type { ProblemResolvers } from "../generated/resolver-types.js";
import type { ProblemParent } from "../parent-types.js";
import type { FieldsToResolve } from "./fields-to-resolve.js";

/** Where something is wrong in what was handed in: in the request, or in a file. */
export const placeResolvers = {
  path: ({ path }: Placed) => path.map(String),
  file: ({ place }: Placed) => place?.file ?? null,
  line: ({ place }: Placed) => place?.line ?? null,
  column: ({ place }: Placed) => place?.column ?? null,
};

type Placed = Pick<ProblemParent, "path" | "place">;

export const problemResolvers: FieldsToResolve<ProblemResolvers, ProblemParent> = {
  message: (problem) => problemText(problem),
  ...placeResolvers,
  where: (problem) => placeAsked(problem),
  title: ({ code, locale }) => problemTitle(code, wordsFor(locale ?? "en")),
  text: (problem) => readerProblemText(problem, wordsFor(problem.locale ?? "en")),
  parameters: (problem) => parametersJson(messageParameters(problem)),
};
