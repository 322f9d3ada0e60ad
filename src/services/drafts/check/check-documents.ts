import { firstProblems } from "../../../domain/first-problems.js";
import type { PlacedFinding } from "../../../domain/plan/check/finding.js";
import type { Problem } from "../../../domain/problem.js";
import type { LineExplained } from "../../../imports/documents/lines/explain-lines.js";
import { placedProblem } from "../../../imports/documents/yaml/placed-problem.js";
import { requireScope, type Actor } from "../../access/actor.js";
import { checkTexts } from "./check-texts.js";
import type { Deps } from "../../deps.js";
import { rulesToday } from "../../rules/find-rules.js";
import { ownershipProblems, takenSlugs } from "../document-ownership.js";
import { loadReferences } from "../load-references.js";
import { findKeepingRules } from "../../answers/guide-storage.js";
import { runInSlices } from "../../time-slices.js";
import { readRegion } from "../../answers/read-region.js";
import { readTextsInSlices, type GivenText } from "../read-texts.js";
import { namedPublisher } from "../../access/find-publishers.js";

interface DocumentsToCheck {
  /** Slug. */
  readonly publisher: string;
  readonly texts: readonly GivenText[];
  /** ISO 3166 code to check for; left out: that of each plan, or else of its publisher. */
  readonly region?: string | null | undefined;
}

/** What saving documents and publishing their plans would meet. */
interface DocumentsCheck {
  readonly problems: readonly Problem[];
  /** Empty where there are problems. */
  readonly findings: readonly PlacedFinding[];
  /** How the lines that are written as text were read. */
  readonly lines: readonly LineExplained[];
}

/**
 * What saving some documents and publishing their plans would meet, with the publisher's component drafts and the foods of
 * today. Saves nothing. @throws NotAllowed
 */
export async function checkDocuments(
  deps: Deps,
  actor: Actor,
  { publisher, texts, region }: DocumentsToCheck,
): Promise<DocumentsCheck> {
  requireScope(actor, "READ_DRAFTS", publisher);
  const { data, clock } = deps;
  const refused = (problems: readonly Problem[], lines: readonly LineExplained[] = []): DocumentsCheck => ({
    problems: firstProblems(problems),
    findings: [],
    lines,
  });
  const owner = await namedPublisher(deps, publisher);
  if (!owner.ok) return refused(owner.problems);
  const asked = readRegion(region, ["region"]);
  if (!asked.ok) return refused(asked.problems);
  const read = await runInSlices(deps, (work) => readTextsInSlices(texts, [], work));
  if (!read.ok) return refused(read.problems);
  const known = await loadReferences(deps, publisher, actor, read.value);
  const described = read.value.documents.find(({ document }) => document.kind === "publisher");
  const by = {
    ...{ rules: await rulesToday(deps), clock, region: asked.value, ...(deps.work && { work: deps.work }) },
    readRules: (date: string) => findKeepingRules(deps, date),
    // What is to be saved with the plans goes before what is known.
    readPublishers: () => Promise.resolve([{ ...owner.value, ...described?.document }]),
  };
  const checked = await checkTexts(read.value, known, by);
  const { documents } = read.value;
  const foreign = ownershipProblems(documents, publisher, await takenSlugs(data, actor, publisher, documents));
  const problems = [...foreign, ...checked.problems.map(placedProblem)];
  const { findings, lines } = checked;
  return problems.length > 0 ? refused(problems, lines) : { problems: [], findings, lines };
}
