import { z } from "zod";
import type { ImportReport } from "../../domain/model/import-report.js";
import type { MorningReport } from "../../domain/model/morning-report.js";
import type { Problem } from "../../domain/problem.js";
import { count, instant, list, named, text, type Json } from "./named-schema.js";
import { problemJson, warningSchema } from "./warning.js";

const shape = {
  id: text("Id of the import.", 60),
  feed: text("Slug of its feed.", 100),
  publisher: text("Slug of the feed's publisher; null if it is the operator's.", 2_000).nullable(),
  kind: z.enum(["LOAD", "DRY_RUN", "UNDO"]).describe("What it is to do."),
  state: z.enum(["QUEUED", "RUNNING", "DONE", "STOPPED", "FAILED", "CANCELLED"]).describe("Its progress."),
  endedAt: instant("When it ended; null if it has not.").nullable(),
  counts: z
    .object({
      read: count("Rows, documents or recipes read so far."),
      created: count("New."),
      changed: count("Known, and different from before."),
      unchanged: count("Known, and as before."),
      quarantined: count("Put aside, to be mended."),
      repeated: count("Replaced by a later one of the same file."),
    })
    .describe("How many. Once the import is done, `read` is the sum of the others."),
  problems: list(warningSchema, "Why it stopped or failed."),
};

export const importRunSchema = named("ImportRun", "One import of a file.", z.object(shape));

export const importReportSchema = named(
  "ImportReport",
  "The result of an import.",
  z.object({
    ...shape,
    fileName: text("Name of its file.").nullable(),
    changes: list(
      z.object({
        what: text("Such as `plan barley-days`, `food egg` or `pack box-of-6 of egg`."),
        isNew: z.boolean().describe("It was not there before."),
        differences: list(
          z.object({
            what: text("Which thing."),
            before: text("What it was; null if it is new.", 20_000).nullable(),
            after: text("What it is; null if it is gone.", 20_000).nullable(),
          }),
          "What changed for readers.",
        ),
        superseded: text(
          "The earlier source that was replaced; null if it was the feed's own, or there was none.",
        ).nullable(),
      }),
      "What it changed for readers, or in a dry run would; the first 200.",
    ),
    moreChanges: z.boolean().describe("There are more changes."),
    warnings: list(
      z.object({
        line: count("The line it begins on."),
        part: count("From 0: several recipes may begin on one line."),
        problem: warningSchema.describe("What is wrong with it."),
      }),
      "Rows that were taken although something is wrong with them, such as a code that no list has; the first of them.",
    ),
    rows: list(
      z.object({
        line: count("The line it begins on."),
        part: count("From 0: several recipes may begin on one line."),
        problems: list(warningSchema, "Everything that is wrong with it."),
        isSettled: z.boolean().describe("It was corrected or skipped."),
      }),
      "What was quarantined; the first 200.",
    ),
    moreRows: z.boolean().describe("There are more rows."),
  }),
);

export const morningReportSchema = named(
  "MorningReport",
  "What became of the imports that ended lately.",
  z.object({
    from: instant("Start of the time it covers."),
    to: instant("End of the time it covers: the moment of the request."),
    imports: list(
      z.object({
        ...shape,
        superseded: list(text("A source, or who had saved a draft."), "The earlier source that it replaced."),
        toMend: count("Quarantined rows that nobody has corrected or skipped yet."),
      }),
      "The newest first; the first 200.",
    ),
    moreImports: z.boolean().describe("There were more."),
    plans: list(
      z.object({
        publisher: text("Slug of its publisher."),
        slug: text("Slug of the plan."),
        title: text("Its title."),
        revision: z.number().int().min(1),
        lessSafe: z.boolean().describe("What was said before is less careful than what is said now."),
        changedAt: instant("When that was first found."),
        differences: list(
          z.object({
            kind: text("The kind of change.", 100),
            path: list(text("A slug, an id or a code."), "Where, from the plan downwards."),
            before: text("What it said. Null if there is nothing.").nullable(),
            after: text("What it says. Null if there is nothing.").nullable(),
            lessSafe: z.boolean(),
          }),
          "What changed for readers since it was frozen, the less safe first; the first 200.",
        ),
      }),
      "Published plans of which a review found something new in that time, the less safe first; the first 100.",
    ),
    keptBack: list(
      z.object({
        scheduled: text("Its id."),
        publisher: text("Slug of its publisher."),
        slug: text("Slug of the plan."),
        kind: z.enum(["PUBLISH", "WITHDRAW"]).describe("What was to be done."),
        localTime: text("When, on the clock of `zone`.", 100),
        zone: text("IANA name of the time zone.", 100),
        problems: list(warningSchema, "Why it could not be carried out."),
      }),
      "Scheduled publications and withdrawals that could not be carried out in that time; the first 100.",
    ),
    importOnlyTokens: list(
      z.object({
        token: text("Id of the token."),
        name: text("What it is called."),
        publisher: text("Slug of its publisher. Null if it is the operator's.").nullable(),
        feeds: list(text("PUBLISHER/FEED."), "Feeds through which it publishes."),
        until: instant("From then on it needs PUBLISH too."),
      }),
      "Access tokens from before 0.2.0 that publish with the scope IMPORT alone, through feeds of that time; the first 100.",
    ),
  }),
);

export const morningReportJson = (report: MorningReport): Json<typeof morningReportSchema> => ({
  from: report.from.toISOString(),
  to: report.to.toISOString(),
  imports: report.imports.map((each) => ({
    ...importRunJson(each),
    superseded: each.superseded,
    toMend: each.toMend,
  })),
  moreImports: report.moreImports,
  keptBack: (report.keptBack ?? []).map(({ problems, ...kept }) => ({ ...kept, problems: problems.map(problemJson) })),
  importOnlyTokens: (report.importOnlyTokens ?? []).map(({ until, ...token }) => ({
    ...token,
    until: until.toISOString(),
  })),
  plans: (report.plans ?? []).map(({ changedAt, differences, ...plan }) => ({
    ...plan,
    changedAt: changedAt.toISOString(),
    differences: differences.map(({ path, ...said }) => ({ ...said, path: path.map(String) })),
  })),
});

type Summary = Pick<ImportReport, "feed" | "publisher" | "kind" | "state" | "endedAt" | "counts"> & {
  readonly run: string;
  readonly problems: readonly Problem[];
};

export const importRunJson = (found: Summary): Json<typeof importRunSchema> => ({
  id: found.run,
  feed: found.feed,
  publisher: found.publisher,
  kind: found.kind,
  state: found.state,
  endedAt: found.endedAt?.toISOString() ?? null,
  counts: found.counts,
  problems: found.problems.map(problemJson),
});

export const importReportJson = (report: ImportReport): Json<typeof importReportSchema> => ({
  ...importRunJson(report),
  fileName: report.fileName,
  changes: report.changes,
  moreChanges: report.moreChanges,
  warnings: report.warnings.map(({ line, part, problem }) => ({ line, part, problem: problemJson(problem) })),
  rows: report.rows.map(({ line, part, problems, isSettled }) => ({
    ...{ line, part, isSettled },
    problems: problems.map(problemJson),
  })),
  moreRows: report.moreRows,
});
