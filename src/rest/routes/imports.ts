import { z } from "zod";
import type { Problem } from "../../domain/problem.js";
import {
  importReportJson,
  importReportSchema,
  importRunJson,
  importRunSchema,
  morningReportJson,
  morningReportSchema,
} from "../../exports/json/import-run.js";
import { findImport, type FoundImport } from "../../services/imports/find-imports.js";
import { longestMorning, morningReport, morningReportMarkdown } from "../../services/imports/reports/morning-report.js";
import { largestUpload, receiveFile } from "../../services/imports/files/receive-file.js";
import { importReportMarkdown, reportImport, summaryOf } from "../../services/imports/reports/report-import.js";
import { isStorable } from "../../services/storable-text.js";
import { asJson, asText, endpoint, found, refused, type Endpoint, type Found, type Question } from "../endpoint.js";
import { badParameter, inPath, inQuery, isYes, one, yesOrNo } from "../parameter.js";
import { badParameters, notFound, notProcessable } from "../refusal.js";
import { mebibytes, readUpload } from "../upload-body.js";

const unknownRun = notFound("This feed has had no such import, or it is none of yours.");
const files = { what: "Files", largest: largestUpload } as const;

const feedIn = inPath("feed", "Slug of the feed.");
const runIn = inPath("run", "Id of the import.");

export const morningEndpoint: Endpoint = endpoint(
  {
    method: "GET",
    path: "/v1/imports/report",
    operationId: "getMorningReport",
    tag: "imports",
    summary: "What became of the imports of the night",
    description: "The operator's token sees every import that ended, a publisher's its own.",
    parameters: [
      inQuery("hours", "How far back, in hours; 24 if left out.", z.coerce.number().int().min(1).max(longestMorning)),
    ],
    scope: "IMPORT",
    refusals: [],
    caching: "NEVER",
  },
  async ({ deps, caller, query }) => {
    const hours = one(query, "hours") ?? "24";
    const report = await morningReport(deps, caller.actor, /^\d{1,4}$/.test(hours) ? Number(hours) : NaN);
    if (report.ok) return found(report.value.report);
    return refused(badParameters([badParameter("hours", `a whole number from 1 to ${longestMorning}`, hours)]));
  },
  [
    asJson(morningReportSchema, "The report.", morningReportJson),
    asText("markdown", "The report to read.", morningReportMarkdown),
  ],
);

/** The same addresses for feeds of a publisher and for those of the operator. */
const owners = [
  {
    root: "/v1/publishers/{publisher}/feeds/{feed}",
    of: [inPath("publisher", "Slug of the publisher."), feedIn],
    name: "",
  },
  { root: "/v1/feeds/{feed}", of: [feedIn], name: "Operator" },
] as const;

const ownerOf = ({ path }: Question): string | null => path["publisher"] ?? null;

async function upload(question: Question): Promise<Found<FoundImport>> {
  const { deps, caller, query, path } = question;
  const wrong: Problem[] = [];
  const [dryRun, force] = [isYes(query, "dryRun", wrong), isYes(query, "force", wrong)];
  const name = one(query, "name") ?? "upload";
  if (!isStorable(name) || name.length > 200) wrong.push(badParameter("name", "at most 200 characters", "others"));
  if (wrong.length > 0) return refused(badParameters(wrong));
  return readUpload(question, files, async (bytes) => {
    const received = await receiveFile(deps, caller, {
      ...{ publisher: ownerOf(question), slug: path["feed"] ?? "", name },
      ...{ bytes, dryRun, force },
    });
    if (received.ok) return findRun(question, received.value.run);
    const isUnknown = received.problems.some(({ code }) => code === "UNKNOWN_FEED");
    return refused(
      isUnknown ? notFound("There is no such feed.", received.problems) : notProcessable(received.problems),
    );
  });
}

async function findRun({ deps, caller }: Question, id: string): Promise<Found<FoundImport>> {
  const run = await findImport(deps, caller.actor, id);
  return run === null ? refused(unknownRun) : found(run);
}

/** An import of another feed, or of another publisher, is not there. */
async function runOf(question: Question): Promise<Found<FoundImport>> {
  const { path } = question;
  const run = await findRun(question, path["run"] ?? "");
  if (!run.ok) return run;
  const { slug, publisher } = run.value.feed;
  return slug === path["feed"] && publisher === ownerOf(question) ? run : refused(unknownRun);
}

export const importEndpoints: readonly Endpoint[] = owners.flatMap(({ root, of, name }) => [
  endpoint(
    {
      method: "POST",
      path: `${root}/files`,
      operationId: `upload${name}File`,
      tag: "imports",
      summary: "Hand in a file for a feed, and import it",
      description:
        `The body is the file itself, up to ${mebibytes(largestUpload)}, in any media type. It is stored as it comes in and imported by a` +
        " worker: ask for the run to see its progress. The same bytes as before are the file from before.",
      parameters: [
        ...of,
        inQuery("name", "The name that problems and reports use for the file."),
        inQuery("dryRun", "`yes` only finds out what the import would do.", yesOrNo),
        inQuery("force", "`yes` loads the file even if the import exceeds a limit of its feed.", yesOrNo),
      ],
      scope: "IMPORT",
      upload: true,
      status: 202,
      refusals: ["not-found", "not-processable", "too-large"],
      caching: "NEVER",
    },
    upload,
    [asJson(importRunSchema, "The import that waits.", (run: FoundImport) => importRunJson(summaryOf(run)))],
  ),
  endpoint(
    {
      method: "GET",
      path: `${root}/runs/{run}`,
      operationId: `get${name}Run`,
      tag: "imports",
      summary: "The progress of an import",
      description: "Counts as they stand; once it is done, what was read is the sum of the others.",
      parameters: [...of, runIn],
      scope: "IMPORT",
      refusals: ["not-found"],
      caching: "NEVER",
    },
    runOf,
    [asJson(importRunSchema, "The import.", (run: FoundImport) => importRunJson(summaryOf(run)))],
  ),
  endpoint(
    {
      method: "GET",
      path: `${root}/runs/{run}/report`,
      operationId: `get${name}Report`,
      tag: "imports",
      summary: "The result of an import",
      description: "What it changed for readers, or in a dry run would, and what it quarantined with every reason.",
      parameters: [...of, runIn],
      scope: "IMPORT",
      refusals: ["not-found"],
      caching: "NEVER",
    },
    async (question) => {
      const run = await runOf(question);
      return run.ok ? found(await reportImport(question.deps, run.value)) : run;
    },
    [
      asJson(importReportSchema, "The report.", importReportJson),
      asText("markdown", "The report to read.", importReportMarkdown),
    ],
  ),
]);
