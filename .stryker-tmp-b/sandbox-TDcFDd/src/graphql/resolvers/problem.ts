// @ts-nocheck
import { problemText } from "../../services/explain.js";
import type { ProblemResolvers } from "../generated/resolver-types.js";
import type { ProblemParent } from "../parents.js";
import type { FieldsBeyond } from "./fields-beyond.js";

export const problemResolvers: FieldsBeyond<ProblemResolvers, ProblemParent> = {
  message: (problem) => problemText(problem),
  path: ({ path }) => path.map(String),
  line: ({ line }) => line ?? null,
  column: ({ column }) => column ?? null,
};
