import type { Problem } from "../../domain/problem.js";
import { importedPublisherSchema } from "../../exports/json/archive.js";
import { exportPublisher } from "../../services/archive/export-publisher.js";
import { importPublisher, type ImportedPublisher } from "../../services/archive/import-publisher.js";
import { largestArchive } from "../../services/archive/open-archive.js";
import { spoolFile } from "../../services/archive/spool-file.js";
import { requireScope } from "../../services/access/actor.js";
import { pointsBeyond, pointsOfRow } from "../endpoint-cost.js";
import {
  asJson,
  endpoint,
  found,
  refused,
  streamedEndpoint,
  type Endpoint,
  type Found,
  type Question,
} from "../endpoint.js";
import { inPath, inQuery, isYes, yesOrNo } from "../parameter.js";
import { badParameters, notFound, notProcessable } from "../refusal.js";
import { mebibytes, readUpload } from "../upload-body.js";

const publisherIn = inPath("publisher", "Slug of the publisher.");
const unknown = "There is no such publisher.";

const exportEndpoint: Endpoint = streamedEndpoint(
  {
    method: "GET",
    path: "/v1/publishers/{publisher}/export",
    operationId: "exportPublisher",
    tag: "publishers",
    summary: "Everything of a publisher, as a zip file",
    description:
      "Its own document, its drafts as they were written, its pictures, every revision byte for byte with dates, notes and withdrawals, what is scheduled, and its feeds and webhooks without secrets" +
      " (feeds only with the scope IMPORT too, webhooks with ADMIN). Sent while it is read; `manifest.json` at its end lists every file with its SHA-256. Each draft, revision and picture costs 20 points.",
    parameters: [publisherIn],
    scope: "READ_DRAFTS",
    refusals: ["not-found"],
    caching: "NEVER",
  },
  "zip",
  "The archive.",
  async ({ deps, caller, path }) => {
    const publisher = path["publisher"] ?? "";
    const made = await exportPublisher(deps, caller, publisher);
    if (!made.ok) return refused(notFound(unknown, made.problems));
    const { documents, bytes } = made.value;
    return found({ name: `${publisher}.zip`, points: pointsBeyond(documents, pointsOfRow), bytes });
  },
);

const archives = { what: "Archives", largest: largestArchive } as const;

async function upload(question: Question): Promise<Found<ImportedPublisher>> {
  const { deps, caller, query, path } = question;
  requireScope(caller.actor, "ADMIN", null);
  const wrong: Problem[] = [];
  const dryRun = isYes(query, "dryRun", wrong);
  if (wrong.length > 0) return refused(badParameters(wrong));
  const publisher = path["publisher"] ?? "";
  return readUpload(question, archives, async (body) => {
    const done = await spoolFile(body, largestArchive, (file, bytes) =>
      importPublisher(deps, caller, { publisher, path: file, bytes, dryRun }),
    );
    if (done.ok) return found(done.value);
    const isUnknown = done.problems.some(({ code }) => code === "UNKNOWN_PUBLISHER");
    return refused(isUnknown ? notFound(unknown, done.problems) : notProcessable(done.problems));
  });
}

const importEndpoint: Endpoint = endpoint(
  {
    method: "POST",
    path: "/v1/publishers/{publisher}/import",
    operationId: "importPublisher",
    tag: "publishers",
    summary: "Import an archive into an empty publisher",
    description:
      `The body is the zip file of an export, up to ${mebibytes(largestArchive)}, in any media type. Requires an operator's token. The publisher exists, has the slug that` +
      " was exported, and has no drafts, plans, pictures, feeds or webhooks. All of the archive is imported or nothing: revisions keep their numbers, dates, bytes and checksums.",
    parameters: [publisherIn, inQuery("dryRun", "`yes` checks the archive and imports nothing.", yesOrNo)],
    scope: "ADMIN",
    upload: true,
    refusals: ["not-found", "not-processable", "too-large"],
    caching: "NEVER",
  },
  upload,
  [asJson(importedPublisherSchema, "What came in.", (done: ImportedPublisher) => done)],
);

export const archiveEndpoints: readonly Endpoint[] = [exportEndpoint, importEndpoint];
