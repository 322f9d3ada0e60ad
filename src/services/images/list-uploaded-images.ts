import { failed, ok, type Result } from "../../domain/problem.js";
import type { KeptImage } from "../../persistence/images/image-data.js";
import { mayUse, requireScope, type Actor } from "../access/actor.js";
import type { Deps } from "../deps.js";

/** Names in one question. */
const mostFiles = 300;

interface UploadedImage extends KeptImage {
  readonly file: string;
}

/** What documents of a publisher mean by the names of these files now; names of nothing are left out. @throws NotAllowed */
export async function listUploadedImages(
  { data }: Deps,
  actor: Actor,
  publisher: string,
  files: readonly string[],
): Promise<Result<readonly UploadedImage[]>> {
  // Who writes documents needs it, and who takes them along.
  if (!mayUse(actor, "READ_DRAFTS", publisher)) requireScope(actor, "WRITE", publisher);
  if (files.length > mostFiles) {
    return failed([{ code: "TOO_LARGE", path: ["files"], what: "names", size: files.length, limit: mostFiles }]);
  }
  const found = await data.images.byNames(publisher, files);
  return ok(files.flatMap((file, at) => (found[at] ? [{ ...found[at], file }] : [])));
}
