import { isTimeZone } from "../../domain/time-zone.js";
import type { Actor } from "../access/actor.js";
import type { Deps } from "../deps.js";
import { authorOf } from "../write.js";
import { fileNames, scheduledFileSchema } from "./archive-format.js";
import { BadArchive, parseFile, shaped, type OpenArchive } from "./open-archive.js";
import { readScheduledDocument } from "./read-archive.js";

/** A publication or withdrawal that was not done in time where it came from. */
export type PassedChange = {
  readonly slug: string;
  readonly kind: "PUBLISH" | "WITHDRAW";
  readonly localTime: string;
  readonly zone: string;
};

/**
 * What waits, once the revisions are there. What is due already is told of and not taken: whether it still holds is for a person to say.
 * An archive of version 1 has none. @throws BadArchive
 */
export async function takeScheduled(
  deps: Deps,
  archive: OpenArchive,
  publisher: string,
  maker: Actor,
): Promise<{ readonly waiting: number; readonly passed: readonly PassedChange[] }> {
  const { data, clock } = deps;
  const file = fileNames.scheduled;
  if (!archive.names.has(file)) return { waiting: 0, passed: [] };
  const listed = shaped(file, scheduledFileSchema, parseFile(file, await archive.read(file)));
  if (new Set(listed.map(({ slug, kind }) => `${kind} ${slug}`)).size < listed.length)
    throw new BadArchive({ kind: "CONTENT", detail: "a plan is scheduled twice" }, file);
  const passed: PassedChange[] = [];
  for (const { dueAt, createdAt, inForce, ...change } of listed) {
    const { slug, kind, localTime, zone, version, reason } = change;
    if (!isTimeZone(zone)) throw new BadArchive({ kind: "CONTENT", detail: "there is no such time zone" }, file);
    const isWhole = kind === "PUBLISH" ? version !== null : reason !== null;
    if (!isWhole) throw new BadArchive({ kind: "CONTENT", detail: "it lacks a version or a reason" }, file);
    const bundle = kind === "PUBLISH" ? await readScheduledDocument(deps, archive, publisher, slug) : null;
    if (new Date(dueAt) <= clock()) {
      passed.push({ slug, kind, localTime, zone });
      continue;
    }
    const ref = { publisher, slug, revision: inForce };
    const [before] = inForce === null ? [null] : await data.revisions.summaries([ref]);
    if (before === undefined || (inForce !== null && before === null))
      throw new BadArchive({ kind: "CONTENT", detail: "it names a revision that is not in the archive" }, file);
    await data.scheduled.add({
      ...{ ...change, publisher, bundle },
      ...{ dueAt: new Date(dueAt), createdAt: new Date(createdAt) },
      ...{ inForce: before?.id ?? null, createdBy: authorOf(maker) },
    });
  }
  return { waiting: listed.length - passed.length, passed };
}
