import { problemText } from "../../exports/sentences/problem-text.js";
import type { ProblemResolvers } from "../generated/resolver-types.js";
import type { ProblemParent } from "../parents.js";
import type { FieldsBeyond } from "./fields-beyond.js";

export const problemResolvers: FieldsBeyond<ProblemResolvers, ProblemParent> = {
  message: (problem) => problemText(problem),
  path: ({ path }) => path.map(String),
  file: ({ place }) => place?.file ?? null,
  line: ({ place }) => place?.line ?? null,
  column: ({ place }) => place?.column ?? null,
};
