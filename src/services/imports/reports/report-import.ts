import type { ImportReport, ReportedChange, ReportedDifference } from "../../../domain/model/import-report.js";
import type { KnownCatalogueRow } from "../../../domain/model/catalogue-row.js";
import type { Food } from "../../../domain/model/food.js";
import { catalogueRowFacts, replacedTitles } from "../../foods/catalogue-row-facts.js";
import { changeDifferences } from "./compare-imported.js";
import type { Deps, ImportChange } from "../../deps.js";
import { differencesOf, foodFacts, packFacts, packsFacts, type NotedPack } from "../../plans/change-facts.js";
import { feedSettingsSchema } from "../feeds/feed-settings.js";
import type { FoundImport } from "../find-imports.js";
import { countsOf } from "../running-import.js";
import type { PacksAfter } from "../rows/load-own-prices.js";
import { draftAuthorOf } from "../../access/draft-author.js";
import { importCaller, type DraftBefore } from "../../drafts/store-draft.js";

export { importReportMarkdown } from "../../../exports/document/import-report.js";

/** The most changes, and the most rows put aside, that one report shows. */
export const longestReport = 200;

/** What became of an import that was found for its actor before. */
export async function reportImport(deps: Deps, { run, feed }: FoundImport): Promise<ImportReport> {
  const { data } = deps;
  const file = run.file === null ? null : await data.importFiles.byId(run.file);
  const changes = await data.importRuns.changes(run.id, longestReport + 1);
  const page = { first: longestReport, after: null, last: null, before: null };
  const rows = await data.importRuns.quarantined(run.id, page);
  const reported: ReportedChange[] = [];
  for (const change of changes.slice(0, longestReport))
    reported.push(await reportedChange(deps, { run, feed }, change, changes));
  return {
    ...summaryOf({ run, feed }),
    fileName: file?.name ?? null,
    changes: reported,
    moreChanges: changes.length > longestReport,
    rows: rows.items.map(({ item: { line, part, problems, settledAt } }) => ({
      ...{ line, part, problems, isSettled: settledAt !== null },
    })),
    moreRows: rows.hasNext,
  };
}

/** An import without what it did. */
export const summaryOf = ({ run, feed }: FoundImport) => ({
  ...{ feed: feed.slug, publisher: feed.publisher, run: run.id, kind: run.kind, state: run.state },
  ...{ endedAt: run.endedAt, counts: countsOf(run), problems: run.problems, warnings: run.warnings },
});

async function reportedChange(
  deps: Deps,
  { feed }: FoundImport,
  change: ImportChange,
  all: readonly ImportChange[],
): Promise<ReportedChange> {
  const { key, before, after } = change;
  const isNew = before === null;
  if (feed.kind === "PRICES" && feed.publisher === null) {
    const [food, pack] = JSON.parse(key) as readonly [string, string];
    const differences = differencesOf(packFacts(before as NotedPack | null), packFacts(after as NotedPack | null));
    return { what: `pack ${pack} of ${food}`, isNew, differences, superseded: null };
  }
  const superseded = supersededBy(feed, change);
  if (feed.kind === "FOODS") {
    const differences: readonly ReportedDifference[] = differencesOf(
      foodFacts(before as Food | null),
      foodFacts(after as Food | null),
    );
    return { what: `food ${key}`, isNew, differences, superseded };
  }
  if (feed.kind === "CATALOGUE") {
    const known = after as KnownCatalogueRow;
    const differences = differencesOf(catalogueRowFacts(before as KnownCatalogueRow | null), catalogueRowFacts(known));
    return { what: `open table ${key}, ${known.row.description}`, isNew, differences, superseded };
  }
  if (feed.kind === "PRICES") {
    const was = before as { readonly value: Food } | null;
    const differences = differencesOf(packsFacts(was?.value ?? null), packsFacts((after as PacksAfter).value));
    return { what: whatOf(key), isNew, differences, superseded };
  }
  const differences = await changeDifferences(deps, feed.publisher ?? "", change, all);
  return { what: whatOf(key), isNew, differences, superseded };
}

/** Whose word a change replaced: a source, or who had saved the draft; null: the feed's own, or nobody's. */
export function supersededBy(feed: FoundImport["feed"], { before, after }: ImportChange): string | null {
  if (feed.kind === "PRICES" && feed.publisher === null) return null;
  if (feed.kind === "FOODS") {
    const other = (before as Food | null)?.nutrients?.source.title;
    return other === undefined || other === feedSettingsSchema.parse(feed.settings).source ? null : other;
  }
  if (feed.kind === "CATALOGUE") {
    const titles = replacedTitles(before as KnownCatalogueRow | null, after as KnownCatalogueRow);
    const { source } = feedSettingsSchema.parse(feed.settings);
    return titles.filter((title) => title !== source).join("; ") || null;
  }
  const by = (before as Partial<DraftBefore> | null)?.updatedBy ?? null;
  return by === draftAuthorOf(importCaller(feed.slug).actor) ? null : by;
}

const whatOf = (key: string): string => {
  const [kind = "", slug = ""] = key.split(" ");
  return `${kind === "REVISION" ? "published plan" : kind.toLowerCase()} ${slug}`;
};
