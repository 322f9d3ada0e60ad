import type { ChangedPlan, ImportOnlyToken, KeptBack, MorningImport, MorningReport } from "../../../domain/model/morning-report.js";
import { failed, ok, type Result } from "../../../domain/problem.js";
import { requireScope, type Actor } from "../../access/actor.js";
import type { Data, Deps, Feed, RevisionReview, RevisionSummary, ScheduledChange } from "../../deps.js";
import type { FoundImport } from "../find-imports.js";
import { importPublishesUntil, publishes } from "../../access/publish-right.js";
import { longestReport, summaryOf, supersededBy } from "./report-import.js";

export { morningReportMarkdown } from "../../../exports/document/morning-report.js";

const hour = 60 * 60 * 1000;
/** The longest time that a report may look back, in hours. */
export const longestMorning = 31 * 24;
/** The most imports that one report shows. */
const mostImports = 200;

/** The report with the imports themselves, in the same order. */
interface FoundMorning {
  readonly report: MorningReport;
  readonly found: readonly FoundImport[];
  readonly plans: readonly FoundReview[];
  readonly keptBack: readonly ScheduledChange[];
}

/** A published plan of which a review found something new. */
interface FoundReview {
  readonly plan: RevisionSummary;
  readonly review: RevisionReview;
}

/**
 * What became of the imports that ended in the last hours: all of them for the operator, a publisher's own for its token. @throws
 * NotAllowed
 */
export async function morningReport(deps: Deps, actor: Actor, hours: number): Promise<Result<FoundMorning>> {
  const publisher = actor.kind === "TOKEN" ? actor.publisher : null;
  requireScope(actor, "IMPORT", publisher);
  if (!Number.isInteger(hours) || hours < 1 || hours > longestMorning) {
    const expected = `a whole number from 1 to ${longestMorning}`;
    return failed([{ code: "BAD_SHAPE", path: ["hours"], expected, got: String(hours) }]);
  }
  return ok(await gatherMorning(deps, publisher ?? undefined, hours));
}

/** The most plans that one report shows. */
const mostPlans = 100;

/** Published plans whose reviews found something new, with which revision it is. */
async function changedPlans(data: Data, from: Date, publisher: string | null): Promise<readonly FoundReview[]> {
  const reviews = await data.reviews.changedSince(from, publisher, mostPlans);
  const revisions = await data.revisions.summariesByIds(reviews.map(({ revisionId }) => revisionId));
  return reviews.flatMap((review, at): readonly FoundReview[] => {
    const plan = revisions[at];
    return plan ? [{ plan, review }] : [];
  });
}

/** @param publisher slug; undefined: every feed */
export async function gatherMorning(
  { data, clock }: Deps,
  publisher: string | undefined,
  hours: number,
): Promise<FoundMorning> {
  const to = clock();
  const from = new Date(to.getTime() - hours * hour);
  const feeds = new Map((await data.feeds.all(publisher)).map((feed) => [feed.id, feed]));
  const runs = await data.importRuns.endedSince(from, [...feeds.keys()], mostImports + 1);
  const found = runs.slice(0, mostImports).flatMap((run): readonly FoundImport[] => {
    const feed = feeds.get(run.feed);
    return feed === undefined ? [] : [{ run, feed }];
  });
  const plans = await changedPlans(data, from, publisher ?? null);
  const shown = plans.map(({ plan: { publisher: of, slug, title, revision }, review }): ChangedPlan => {
    const { lessSafe, changedAt, differences } = review;
    return { publisher: of, slug, title, revision, lessSafe, changedAt, differences };
  });
  const toMend = await data.importRuns.toMend(found.map(({ run }) => run.id));
  const imports: MorningImport[] = [];
  for (const [at, each] of found.entries()) {
    const changes = each.feed.kind === "PRICES" ? [] : await data.importRuns.changes(each.run.id, longestReport);
    const superseded = changes.map((change) => supersededBy(each.feed, change)).filter((who) => who !== null);
    imports.push({ ...summaryOf(each), superseded: [...new Set(superseded)].toSorted(), toMend: toMend[at] ?? 0 });
  }
  const importOnlyTokens = await tokensOfOld(data, publisher ?? null, [...feeds.values()], to);
  const keptBack = await data.scheduled.keptBackSince(from, publisher ?? null, mostKeptBack);
  const kept = keptBack.map(
    ({ id, publisher: of, slug, kind, localTime, zone, problems }): KeptBack => ({
      ...{ scheduled: id, publisher: of, slug, kind, localTime, zone, problems },
    }),
  );
  const moreImports = runs.length > mostImports;
  const report = { from, to, imports, moreImports, plans: shown, importOnlyTokens, keptBack: kept };
  return { report, found, plans, keptBack };
}

/** The most scheduled changes that one report names. */
const mostKeptBack = 100;

/** The most tokens that one report names. */
const mostTokens = 100;

/** Each morning they are named, so that nobody finds out on the day. A publisher is told of its own. */
async function tokensOfOld(
  data: Data,
  publisher: string | null,
  feeds: readonly Feed[],
  now: Date,
): Promise<readonly ImportOnlyToken[]> {
  if (now >= importPublishesUntil) return [];
  const ofOld = feeds.filter((feed) => feed.importPublishes && publishes(feed));
  if (ofOld.length === 0) return [];
  const tokens = await data.accessTokens.importOnly(publisher, now);
  return tokens
    .map(({ id, name, publisher: whose }): ImportOnlyToken => {
      const through = ofOld.filter((feed) => whose === null || whose === feed.publisher);
      const names = through.map((feed) => `${feed.publisher ?? ""}/${feed.slug}`);
      return { token: id, name, publisher: whose, feeds: names, until: importPublishesUntil };
    })
    .filter((each) => each.feeds.length > 0)
    .slice(0, mostTokens);
}
