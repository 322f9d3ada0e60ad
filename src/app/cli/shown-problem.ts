import type { PlacedFinding } from "../../domain/plan/check/finding.js";
import type { Problem } from "../../domain/problem.js";
import { aboutWhat, findingText } from "../../exports/sentences/finding-text.js";
import { problemText } from "../../exports/sentences/problem-text.js";
import type { ShownFinding, ShownProblem } from "./outcome.js";

/** A problem found here, as a service would say it. */
export const shownProblem = (problem: Problem): ShownProblem => ({
  code: problem.code,
  message: problemText(problem),
  path: problem.path.map(String),
  file: problem.place?.file ?? null,
  line: problem.place?.line ?? null,
  column: problem.place?.column ?? null,
});

/** A finding made here, as a service would say it. */
export const shownFinding = (finding: PlacedFinding): ShownFinding => ({
  severity: finding.severity,
  code: finding.code,
  message: findingText(finding),
  about: aboutWhat(finding),
  caution: "caution" in finding ? finding.caution : null,
  path: finding.path.map(String),
  file: finding.place?.file ?? null,
  line: finding.place?.line ?? null,
  column: finding.place?.column ?? null,
});
