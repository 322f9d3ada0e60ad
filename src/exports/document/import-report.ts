import type {
  ImportReport,
  ReportedChange,
  ReportedDifference,
  ReportedRow,
  RowWarning,
} from "../../domain/model/import-report.js";
import { markdownText } from "./markdown-text.js";
import { problemText } from "../sentences/problem-text.js";

export const importKindWords = { LOAD: "Import", DRY_RUN: "Dry run of an import", UNDO: "Undo of an import" } as const;

export const importStateWords: Readonly<Record<ImportReport["state"], string>> = {
  QUEUED: "It waits for its turn.",
  RUNNING: "It is going on.",
  DONE: "It is done.",
  STOPPED: "It was stopped by a limit of the feed; nothing was loaded.",
  FAILED: "It failed.",
  CANCELLED: "It was cancelled.",
};

/** The report of an import as CommonMark: what was counted, why it stopped, what changed for readers, and what waits to be mended. */
export function importReportMarkdown(report: ImportReport): string {
  const { feed, publisher, kind, state, fileName, counts } = report;
  const owner = publisher === null ? "" : `${publisher}/`;
  const changed = kind === "DRY_RUN" ? "would change" : "changed";
  const created = kind === "DRY_RUN" ? "would be new" : "new";
  return (
    [
      `# ${markdownText(`${importKindWords[kind]}: ${owner}${feed}`)}`,
      [importStateWords[state], ...(fileName === null ? [] : [`The file is ${markdownText(`"${fileName}"`)}.`])].join(
        " ",
      ),
      [
        `- ${counts.read} read`,
        `- ${counts.created} ${created}`,
        `- ${counts.changed} ${changed}`,
        `- ${counts.unchanged} unchanged`,
        `- ${counts.quarantined} put aside`,
        `- ${counts.repeated} replaced by a later row of the same file`,
      ].join("\n"),
      ...reportPart(
        "Why",
        report.problems.map((problem) => `- ${markdownText(problemText(problem))}`),
      ),
      ...reportPart("Taken, and to be mended", report.warnings.map(warningText)),
      ...reportPart("What changes for readers", report.changes.map(changeText), report.moreChanges),
      ...reportPart("Put aside", report.rows.map(rowText), report.moreRows),
    ].join("\n\n") + "\n"
  );
}

/** A heading with a line each; nothing where there is none. */
export const reportPart = (title: string, lines: readonly string[], more = false): readonly string[] =>
  lines.length === 0 ? [] : [`## ${title}`, [...lines, ...(more ? ["- and more"] : [])].join("\n")];

function changeText({ what, isNew, differences, superseded }: ReportedChange): string {
  const head = `- ${markdownText(what)}${isNew ? ": new" : ""}`;
  const over = superseded === null ? "" : ` ${markdownText(`(in place of what ${superseded} said)`)}`;
  return [`${head}${over}`, ...differences.map((each) => `  - ${differenceText(each)}`)].join("\n");
}

const differenceText = ({ what, before, after }: ReportedDifference): string =>
  markdownText(`${what}: ${before ?? "nothing"} → ${after ?? "nothing"}`);

/** Several recipes may begin on one line. */
const placeText = ({ line, part }: Pick<ReportedRow, "line" | "part">): string =>
  `line ${line}${part === 0 ? "" : `, part ${part + 1}`}`;

const warningText = (row: RowWarning): string => `- ${placeText(row)}: ${markdownText(problemText(row.problem))}`;

const rowText = (row: ReportedRow): string =>
  `- ${placeText(row)}${row.isSettled ? " (settled)" : ""}: ${row.problems.map((problem) => markdownText(problemText(problem))).join(" ")}`;
