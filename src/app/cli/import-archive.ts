import { openAsBlob } from "node:fs";
import { basename } from "node:path";
import { z } from "zod";
import { archiveFaultSentence } from "../../exports/sentences/archive-fault-sentence.js";
import { slugSchema } from "../../imports/documents/schemas/scalar-schemas.js";
import { BadArchive, withArchive } from "../../services/archive/open-archive.js";
import { remote, type ServiceOptions } from "./command.js";
import { countNoun } from "./count-noun.js";
import { CommandFailed, exitCodes, type Outcome } from "./outcome.js";
import type { Progress } from "./progress.js";

const importedSchema = z.object({
  publisher: z.string(),
  drafts: z.number(),
  plans: z.number(),
  revisions: z.number(),
  images: z.number(),
  webhooks: z.number(),
  // A service of version 0.1 says nothing of these.
  feeds: z.number().default(0),
  scheduled: z.number().default(0),
  scheduledPassed: z
    .array(z.object({ slug: z.string(), kind: z.string(), localTime: z.string(), zone: z.string() }))
    .default([]),
  ruleSetsMissing: z.array(z.string()),
});

/** Sends the archive of an export to a service, into the publisher that it is of. */
export async function importArchive(
  path: string,
  options: ServiceOptions & { readonly dryRun?: boolean },
  progress: Progress,
): Promise<Outcome> {
  const file = await openAsBlob(path).catch((error: unknown) => {
    const why = error instanceof Error && "code" in error ? String(error.code) : String(error);
    throw new CommandFailed(exitCodes.usage, "CANNOT_READ", `${path} cannot be read: ${why}.`);
  });
  const publisher = await publisherOf(path, file.size);
  progress.at(`Sending ${basename(path)}, bytes`, 0, file.size);
  const question = options.dryRun === true ? "?dryRun=yes" : "";
  const sent = remote(options).upload(`v1/publishers/${publisher}/import${question}`, file);
  const done = importedSchema.parse(await sent.finally(() => progress.end()));
  const would = options.dryRun === true ? " would come in (a dry run: nothing was imported)" : "";
  return {
    exit: exitCodes.ok,
    result: done,
    said: [
      `${done.publisher}: ${countNoun(done.plans, "plan")} in ${countNoun(done.revisions, "revision")}, ${countNoun(done.drafts, "draft")}, ${countNoun(done.images, "picture")}, ${countNoun(done.webhooks, "webhook")}, ${countNoun(done.feeds, "feed")}, ${countNoun(done.scheduled, "scheduled change")}${would}.`,
    ],
    notes: [
      ...(done.webhooks > 0
        ? ["Webhooks are disabled and have new secrets: rotate each secret, hand it on, and enable the webhook."]
        : []),
      ...(done.feeds > 0
        ? ["Feeds are disabled, and the addresses that files come from lack their query: complete and enable them."]
        : []),
      ...done.scheduledPassed.map(
        ({ slug, kind, localTime, zone }) =>
          `Not imported, since its time has passed: ${kind === "PUBLISH" ? "publish" : "withdraw"} ${slug} at ${localTime} ${zone}.`,
      ),
      ...done.ruleSetsMissing.map(
        (code) => `Revisions were checked against the rule set "${code}", which this installation does not have.`,
      ),
    ],
  };
}

async function publisherOf(path: string, bytes: number): Promise<string> {
  try {
    return await withArchive(path, bytes, ({ publisher }) => Promise.resolve(slugSchema.parse(publisher)));
  } catch (error) {
    if (!(error instanceof BadArchive)) throw error;
    const place = error.file === null ? path : `${path}, ${error.file}`;
    throw new CommandFailed(exitCodes.problems, "BAD_ARCHIVE", `${place}: ${archiveFaultSentence(error.fault)}`);
  }
}
