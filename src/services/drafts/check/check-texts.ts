import { checkBundleInSlices } from "../../../domain/plan/check/check-bundle.js";
import type { PlacedFinding } from "../../../domain/plan/check/finding.js";
import type { RuleSet } from "../../../domain/plan/compile/rule-set.js";
import {
  checkDocumentsInSlices,
  type DocumentsChecked,
  type KnownBeside,
} from "../../../imports/documents/checks/check-documents.js";
import { explainLines, type LineExplained } from "../../../imports/documents/lines/explain-lines.js";
import { checkFoodsKeeping } from "../../../imports/documents/checks/check-food-keeping.js";
import { locatePath, locateProblem } from "../../../imports/documents/yaml/locate-problem.js";
import type { DocumentProblem, DocumentsRead } from "../../../imports/documents/read-documents.js";
import { checkPublishedPlan } from "./check-plan.js";
import type { Clock } from "../../deps.js";
import { runInSlices, type Sliced } from "../../time-slices.js";
import { noHousehold, resolveRegion, type PublisherReader } from "../../answers/resolve-region.js";
import type { RuleReader } from "../../answers/guide-storage.js";
import { utcDay } from "../../../domain/utc-day.js";

/** What plans are held against. */
interface CheckedBy extends Sliced {
  readonly rules: RuleSet;
  readonly clock: Clock;
  readonly readRules: RuleReader;
  /** ISO 3166 code to check for; null: that of each plan, or else of its publisher. */
  readonly region: string | null;
  readonly readPublishers: PublisherReader;
}

interface TextsCheck {
  readonly problems: readonly DocumentProblem[];
  /** Of the plans that can be computed with what is at hand. */
  readonly findings: readonly PlacedFinding[];
}

/** The same, and how the lines that are written as text were read. */
type TextsChecked = TextsCheck & { readonly lines: readonly LineExplained[] };

/** The writer's check of documents as they were written, with what is known beside them. Needs no database. */
export async function checkTexts(read: DocumentsRead, known: KnownBeside, by: CheckedBy): Promise<TextsChecked> {
  const checked = await runInSlices(by, (work) => checkDocumentsInSlices(read, known, work));
  const kept = checkFoodsKeeping(checked.resolved, by.rules.safety, utcDay(by.clock()));
  const plans: TextsCheck[] = [];
  for (const plan of checked.plans) plans.push(await checkOne(plan, checked, by));
  return {
    problems: [...checked.problems, ...kept, ...plans.flatMap(({ problems }) => problems)],
    findings: plans.flatMap(({ findings }) => findings),
    lines: explainLines(checked.resolved.documents),
  };
}

async function checkOne(
  { bundle, read }: DocumentsChecked["plans"][number],
  { resolved }: DocumentsChecked,
  { rules, readRules, region, readPublishers, ...deps }: CheckedBy,
): Promise<TextsCheck> {
  // These are among the problems of the documents already.
  if ((await runInSlices(deps, () => checkBundleInSlices(bundle))).length > 0) return { problems: [], findings: [] };
  const household = await resolveRegion({ ...noHousehold, region }, [bundle], rules, readPublishers);
  const found = await checkPublishedPlan(bundle, household, rules, deps, readRules);
  if (!found.ok) {
    return { problems: found.problems.map((problem) => locateProblem(problem, resolved, read)), findings: [] };
  }
  const findings = found.value.map((finding): PlacedFinding => {
    const { file, line, column } = locatePath(finding.path, resolved, read);
    return { ...finding, place: { file, line, column } };
  });
  return { problems: [], findings };
}
