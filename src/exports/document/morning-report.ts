import { utcDay } from "../../domain/utc-day.js";
import type {
  ChangedPlan,
  ImportOnlyToken,
  KeptBack,
  MorningImport,
  MorningReport,
} from "../../domain/model/morning-report.js";
import { importKindWords, importStateWords, reportPart } from "./import-report.js";
import { markdownText } from "./markdown-text.js";
import { problemText } from "../sentences/problem-text.js";

/** The report of a morning as CommonMark: first what waits for somebody, then every import. */
export function morningReportMarkdown({
  from,
  to,
  imports,
  moreImports,
  plans = [],
  importOnlyTokens = [],
  keptBack = [],
}: MorningReport): string {
  const waiting = imports.filter(needsSomebody);
  return (
    [
      "# Imports",
      `From ${from.toISOString()} to ${to.toISOString()}.`,
      imports.length === 0 ? "There were none." : countText(imports, waiting.length),
      ...reportPart("To look after", waiting.map(importText)),
      ...reportPart("Done", imports.filter((each) => !needsSomebody(each)).map(importText)),
      ...(moreImports ? ["There were more imports than are shown here."] : []),
      ...reportPart("Plans that were to be published or withdrawn, and were not", keptBack.map(keptBackText)),
      ...reportPart("Published plans that became less safe", plans.filter(({ lessSafe }) => lessSafe).map(planText)),
      ...reportPart(
        "Published plans that changed for readers",
        plans.filter(({ lessSafe }) => !lessSafe).map(planText),
      ),
      ...reportPart("Access tokens that will publish no more", importOnlyTokens.map(tokenText)),
    ].join("\n\n") + "\n"
  );
}

const needsSomebody = ({ state, toMend }: MorningImport): boolean => state !== "DONE" || toMend > 0;

const countText = (imports: readonly MorningImport[], waiting: number): string =>
  `${imports.length} ended, ${waiting} of them to look after.`;

function importText({
  feed,
  publisher,
  run,
  kind,
  state,
  counts,
  problems,
  superseded,
  toMend,
}: MorningImport): string {
  const owner = publisher === null ? "" : `${publisher}/`;
  const { read, created, changed, unchanged, quarantined, repeated } = counts;
  return [
    `- ${markdownText(`${importKindWords[kind]}: ${owner}${feed}`)}. ${importStateWords[state]}`,
    `  - ${read} read, ${created} new, ${changed} changed, ${unchanged} unchanged, ${quarantined} put aside, ${repeated} replaced by a later row`,
    ...(toMend > 0 ? [`  - ${toMend} to mend`] : []),
    ...problems.map((problem) => `  - ${markdownText(problemText(problem))}`),
    ...(superseded.length > 0 ? [`  - ${markdownText(`in place of what was said by ${superseded.join("; ")}`)}`] : []),
    `  - ${run}`,
  ].join("\n");
}

function keptBackText({ publisher, slug, kind, localTime, zone, problems }: KeptBack): string {
  const what = kind === "PUBLISH" ? "to be published" : "to be withdrawn";
  return [
    `- ${markdownText(`${publisher}/${slug}, ${what} ${localTime} (${zone})`)}`,
    ...problems.slice(0, mostDifferences).map((problem) => `  - ${markdownText(problemText(problem))}`),
  ].join("\n");
}

/** Feeds shown of one token. */
const mostFeeds = 5;

function tokenText({ token, name, publisher, feeds, until }: ImportOnlyToken): string {
  const whose = publisher ?? "the operator";
  const rest = feeds.length > mostFeeds ? ` and ${feeds.length - mostFeeds} more` : "";
  const day = utcDay(until);
  const said = `${name} (${token}, of ${whose}) publishes with the scope IMPORT alone, through ${feeds.slice(0, mostFeeds).join(", ")}${rest}.`;
  return `- ${markdownText(said)} From ${day} that needs PUBLISH too: make a token with both, and revoke this one.`;
}

/** Differences shown of one plan. */
const mostDifferences = 10;

function planText({ publisher, slug, title, revision, differences }: ChangedPlan): string {
  const rest = differences.length - mostDifferences;
  return [
    `- ${markdownText(`${title} (${publisher}/${slug}, revision ${revision})`)}`,
    ...differences
      .slice(0, mostDifferences)
      .map(({ path, before, after }) =>
        markdownText(`${path.join(" > ")}: ${before ?? "not said"}, now ${after ?? "not said"}`),
      )
      .map((said) => `  - ${said}`),
    ...(rest > 0 ? [`  - and ${rest} more`] : []),
  ].join("\n");
}
