import { z } from "zod";
import { importedPublisherSchema } from "../../exports/json/archive.js";
import { exportPublisher } from "../../services/archive/export-publisher.js";
import { importPublisher, type ImportedPublisher } from "../../services/archive/import-publisher.js";
import { largestArchive } from "../../services/archive/open-archive.js";
import { spoolFile } from "../../services/archive/spool-file.js";
import { requireScope } from "../../services/access/actor.js";
import { FileTooLarge } from "../../services/imports/files/receive-file.js";
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
import { one } from "../pagination.js";
import { badParameter, inPath, inQuery } from "../parameter.js";
import { badParameters, notFound, notProcessable, refusal } from "../refusal.js";

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
      "Its own document, its drafts as they were written, its pictures, every revision byte for byte with dates, notes and withdrawals, and its webhooks without secrets" +
      " (these only with the scope ADMIN too). Sent while it is read; `manifest.json` at its end lists every file with its SHA-256. Each draft, revision and picture costs 20 points.",
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

async function upload({ deps, caller, query, path, body, bodyLength }: Question): Promise<Found<ImportedPublisher>> {
  requireScope(caller.actor, "ADMIN", null);
  const dryRun = one(query, "dryRun");
  if (dryRun !== null && dryRun !== "yes" && dryRun !== "no")
    return refused(badParameters([badParameter("dryRun", "yes or no", dryRun)]));
  const tooLarge = refused(
    refusal("too-large", `Archives are taken up to ${largestArchive / 1024 / 1024} MiB.`, {
      headers: { connection: "close" },
    }),
  );
  if (bodyLength !== null && bodyLength > largestArchive) return tooLarge;
  const publisher = path["publisher"] ?? "";
  try {
    const done = await spoolFile(streamOf(body), largestArchive, (file, bytes) =>
      importPublisher(deps, caller, { publisher, path: file, bytes, dryRun: dryRun === "yes" }),
    );
    if (done.ok) return found(done.value);
    const isUnknown = done.problems.some(({ code }) => code === "UNKNOWN_PUBLISHER");
    return refused(isUnknown ? notFound(unknown, done.problems) : notProcessable(done.problems));
  } catch (error) {
    if (error instanceof FileTooLarge) return tooLarge;
    throw error;
  }
}

const streamOf = (body: unknown): AsyncIterable<Uint8Array> =>
  typeof body === "object" && body !== null && Symbol.asyncIterator in body
    ? (body as AsyncIterable<Uint8Array>)
    : nothing();

async function* nothing(): AsyncGenerator<Uint8Array> {
  yield* [];
  await Promise.resolve();
}

const importEndpoint: Endpoint = endpoint(
  {
    method: "POST",
    path: "/v1/publishers/{publisher}/import",
    operationId: "importPublisher",
    tag: "publishers",
    summary: "Import an archive into an empty publisher",
    description:
      `The body is the zip file of an export, up to ${largestArchive / 1024 / 1024} MiB, in any media type. Requires an operator's token. The publisher exists, has the slug that` +
      " was exported, and has no drafts, plans, pictures or webhooks. All of the archive is imported or nothing: revisions keep their numbers, dates, bytes and checksums.",
    parameters: [
      publisherIn,
      inQuery("dryRun", "`yes` checks the archive and imports nothing.", z.enum(["yes", "no"])),
    ],
    scope: "ADMIN",
    upload: true,
    refusals: ["not-found", "not-processable", "too-large"],
    caching: "NEVER",
  },
  upload,
  [asJson(importedPublisherSchema, "What came in.", (done: ImportedPublisher) => done)],
);

export const archiveEndpoints: readonly Endpoint[] = [exportEndpoint, importEndpoint];
