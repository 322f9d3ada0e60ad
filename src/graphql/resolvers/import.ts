import { feedSettingsSchema } from "../../services/imports/feeds/feed-settings.js";
import { findFeed, listFeeds } from "../../services/imports/feeds/find-feeds.js";
import { findImport, findQuarantined, listImports, listQuarantined } from "../../services/imports/find-imports.js";
import { morningReport, morningReportMarkdown } from "../../services/imports/reports/morning-report.js";
import { removeFeed } from "../../services/imports/feeds/remove-feed.js";
import { importReportMarkdown, reportImport } from "../../services/imports/reports/report-import.js";
import { saveFeed } from "../../services/imports/feeds/save-feed.js";
import { resolveRow } from "../../services/imports/rows/resolve-row.js";
import { cancelImport, replayImport, startImport, undoImport } from "../../services/imports/start-import.js";
import type { Context } from "../context.js";
import { valueOf } from "../errors.js";
import type {
  FeedResolvers,
  FeedSettingsInput,
  ImportRunResolvers,
  MutationResolvers,
  QueryResolvers,
} from "../generated/resolver-types.js";
import type { FeedParent, ImportRunParent } from "../parent-types.js";
import { payload } from "../payload.js";
import { connection } from "./connection.js";
import type { FieldsToResolve } from "./fields-to-resolve.js";

type ImportQuery = "feeds" | "feed" | "importRun" | "importRuns" | "quarantinedRows" | "importReport" | "morningReport";

export const importQueries: Pick<QueryResolvers, ImportQuery> = {
  feeds: (_, { publisher = null }, { deps, actor }) => listFeeds(deps, actor, publisher),
  feed: (_, { publisher = null, slug }, { deps, actor }) => findFeed(deps, actor, publisher, slug),
  importRun: (_, { id }, { deps, actor }) => findImport(deps, actor, id),
  importRuns: async (_, { publisher = null, feed: slug, ...page }, { deps, actor }) => {
    const feed = await findFeed(deps, actor, publisher, slug);
    if (feed === null) return null;
    return connection(valueOf(await listImports(deps, feed, page)), (run): ImportRunParent => ({ run, feed }));
  },
  quarantinedRows: async (_, { run: id, ...page }, { deps, actor }) => {
    const found = await findImport(deps, actor, id);
    return found === null ? null : connection(valueOf(await listQuarantined(deps, found.run, page)), (row) => row);
  },
  importReport: async (_, { run: id }, { deps, actor }) => {
    const found = await findImport(deps, actor, id);
    if (found === null) return null;
    const report = await reportImport(deps, found);
    return { ...report, run: found, markdown: importReportMarkdown(report) };
  },
  morningReport: async (_, { hours }, { deps, actor }) => {
    const { report, found, plans, keptBack } = valueOf(await morningReport(deps, actor, hours));
    const { from, to, imports, moreImports, importOnlyTokens = [] } = report;
    return {
      ...{ from, to, moreImports, importOnlyTokens, keptBack, markdown: morningReportMarkdown(report) },
      imports: found.map((run, at) => ({
        run,
        superseded: imports[at]?.superseded ?? [],
        toMend: imports[at]?.toMend ?? 0,
      })),
      plans: plans.map(({ plan, review: { lessSafe, changedAt, differences } }) => ({
        ...{ plan, lessSafe, changedAt },
        differences: differences.map((each) => ({ ...each, path: each.path.map(String) })),
      })),
    };
  },
};

type ImportMutation =
  "saveFeed" | "removeFeed" | "startImport" | "cancelImport" | "undoImport" | "replayImport" | "settleRow";

export const importMutations: Pick<MutationResolvers, ImportMutation> = {
  saveFeed: async (_, { input }, context) => {
    const { publisher = null, settings } = input;
    const saved = await saveFeed(context.deps, context, { ...input, publisher, settings: settingsOf(settings) });
    return payload("feed", saved, ({ slug }) => findFeed(context.deps, context.actor, publisher, slug));
  },
  removeFeed: async (_, { input }, context) => {
    const removed = await removeFeed(context.deps, context, { ...input, publisher: input.publisher ?? null });
    return payload("removed", removed, ({ slug }) => slug);
  },
  startImport: async (_, { input }, context) => {
    const started = await startImport(context.deps, context, { ...input, publisher: input.publisher ?? null });
    return payload("run", started, ({ run }) => freshRun(context, run));
  },
  cancelImport: async (_, { input }, context) =>
    payload("run", await cancelImport(context.deps, context, input), ({ run }) => freshRun(context, run)),
  undoImport: async (_, { input }, context) =>
    payload("run", await undoImport(context.deps, context, input), ({ run }) => freshRun(context, run)),
  replayImport: async (_, { input }, context) =>
    payload("run", await replayImport(context.deps, context, input), ({ run }) => freshRun(context, run)),
  settleRow: async (_, { input }, context) => {
    const settled = await resolveRow(context.deps, context, input);
    const answer = await payload("row", settled, ({ run, line, part }) =>
      findQuarantined(context.deps, run, line, part),
    );
    const replay = settled.ok ? settled.value.replay : null;
    return { ...answer, run: replay === null ? null : await freshRun(context, replay) };
  },
};

const freshRun = ({ deps, actor }: Context, id: string): Promise<ImportRunParent | null> => findImport(deps, actor, id);

/** As the services take it: what is left out is not there at all, and gets its default. */
function settingsOf({ articles, columns, place, ...settings }: FeedSettingsInput): object {
  return given({
    ...settings,
    place: place ? given(place) : null,
    articles: articles ? Object.fromEntries(articles.map(({ article, food }) => [article, food])) : null,
    columns: columns ? Object.fromEntries(columns.map(({ inFile, ours }) => [inFile, ours])) : null,
  });
}

const given = (fields: object): object =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== null && value !== undefined));

export const feedResolvers: FieldsToResolve<FeedResolvers, FeedParent> = {
  publisher: ({ publisher }, _, { loaders }) => (publisher === null ? null : loaders.publishers.load(publisher)),
  settings: ({ settings }) => {
    const { articles, place, columns, ...read } = feedSettingsSchema.parse(settings);
    return {
      ...read,
      place: {
        kind: place.kind,
        path: "path" in place ? place.path : null,
        url: "url" in place ? place.url : null,
        hosts: "hosts" in place ? place.hosts : [],
      },
      articles: Object.entries(articles).map(([article, food]) => ({ article, food })),
      columns: Object.entries(columns).map(([inFile, ours]) => ({ inFile, ours })),
    };
  },
};

export const importRunResolvers: FieldsToResolve<ImportRunResolvers, ImportRunParent> = {
  id: ({ run }) => run.id,
  kind: ({ run }) => run.kind,
  state: ({ run }) => run.state,
  file: ({ run }) => run.file,
  undoes: ({ run }) => run.undoes,
  force: ({ run }) => run.force,
  createdAt: ({ run }) => run.createdAt,
  startedAt: ({ run }) => run.startedAt,
  endedAt: ({ run }) => run.endedAt,
  heartbeatAt: ({ run }) => run.heartbeatAt,
  fetchesFailed: ({ run }) => run.fetchesFailed,
  nextAt: ({ run }) => run.dueAt,
  counts: ({ run }) => run,
  problems: ({ run }) => run.problems,
};
