import { problemText } from "../../exports/sentences/problem-text.js";
import type { ProblemResolvers } from "../generated/resolver-types.js";
import type { ProblemParent } from "../parent-types.js";
import type { FieldsToResolve } from "./fields-to-resolve.js";

export const problemResolvers: FieldsToResolve<ProblemResolvers, ProblemParent> = {
  message: (problem) => problemText(problem),
  path: ({ path }) => path.map(String),
  file: ({ place }) => place?.file ?? null,
  line: ({ place }) => place?.line ?? null,
  column: ({ place }) => place?.column ?? null,
};
