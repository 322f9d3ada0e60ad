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
};
