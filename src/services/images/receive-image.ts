import { hash as hashOf } from "node:crypto";
import { isImageFile, longestImageFile } from "../../domain/model/image.js";
import { failed, ok, type Problem, type Result } from "../../domain/problem.js";
import { largestImageFile } from "../../imports/images/image-limits.js";
import { readImage, type ReadImage } from "../../imports/images/read-image.js";
import type { KeptImage } from "../../persistence/images/image-data.js";
import { requireScope, type Caller } from "../access/actor.js";
import type { Deps } from "../deps.js";
import { collect, upTo } from "../byte-stream.js";
import { utcDay } from "../../domain/utc-day.js";
import { authorName, write } from "../write.js";
import { uploadTurns } from "./upload-turns.js";

export { largestImageFile } from "../../imports/images/image-limits.js";

/** Pictures of one publisher. */
const mostImages = 5_000;

interface HandedIn {
  /** Slug. */
  readonly publisher: string;
  /** What documents call it; null: nothing yet. */
  readonly file: string | null;
  readonly bytes: AsyncIterable<Uint8Array>;
}

/** A picture that can be used, and whether these bytes made it or were here before. */
export interface ReceivedImage {
  readonly image: KeptImage;
  readonly created: boolean;
}

/**
 * Takes a picture: decodes it, keeps it without what its camera wrote into it, and makes the sizes that readers get. From then on documents
 * mean it by the name. The same bytes as before are the picture from before.
 * @throws NotAllowed before a byte is read; FileTooLarge; TooManyUploads
 */
export async function receiveImage(deps: Deps, caller: Caller, handed: HandedIn): Promise<Result<ReceivedImage>> {
  const { publisher, file } = handed;
  requireScope(caller.actor, "WRITE", publisher);
  if (file !== null && !isImageFile(file)) return failed([badFileName(file, ["file"])]);
  return uploadTurns.receiving(async () => {
    const bytes = await collect(upTo(largestImageFile, handed.bytes));
    const fileHash = hashOf("sha256", bytes);
    // A picture as it is kept, such as one that was pulled, is the very same: it is not written anew each time that it comes around.
    const known =
      (await deps.data.images.byFileHash(publisher, fileHash)) ?? (await deps.data.images.byHash(publisher, fileHash));
    if (known !== null) return store(deps, caller, handed, known, null);
    const read = await uploadTurns.decoding(() => readImage(bytes));
    if (!read.ok) return read;
    return store(deps, caller, handed, keptOf(read.value, fileHash, caller, deps.clock()), read.value);
  });
}

/** What a name of a file has to be. */
const badFileName = (name: string, path: Problem["path"]): Problem => ({
  code: "BAD_SHAPE",
  path,
  expected: `a file beside or below the document, such as photos/soup.jpg, of at most ${longestImageFile} characters`,
  got: name.length > 60 ? `${name.slice(0, 59)}…` : name,
});

function keptOf(read: ReadImage, fileHash: string, caller: Caller, at: Date): KeptImage {
  const { hash, width, height, placeholder, format } = read;
  const createdBy = authorName(caller.actor);
  return { hash, width, height, placeholder, format, fileHash, createdAt: at, createdBy, removedAt: null };
}

/** `read` null: it is here already, and only its name may be new. */
async function store(
  deps: Deps,
  caller: Caller,
  { publisher, file }: HandedIn,
  given: KeptImage,
  read: ReadImage | null,
): Promise<Result<ReceivedImage>> {
  const { hash } = given;
  const before = await deps.data.images.byHash(publisher, hash);
  if (before !== null && before.removedAt !== null) return removed(before.removedAt);
  if (before !== null && (await isNamed(deps, publisher, file, hash))) return ok({ image: before, created: false });
  let received: ReceivedImage = { image: given, created: false };
  const written = await write(
    deps,
    {
      ...{ caller, scope: "WRITE", publisher, action: "UPLOAD_IMAGE", idempotencyKey: null, path: [] },
      input: { hash, file },
    },
    async ({ data, clock }) => {
      await data.publishers.lock(publisher);
      // Another process may have decoded the same picture meanwhile, or an archive brought it: the first one stays.
      const first = await data.images.byHash(publisher, hash);
      if (first !== null && first.removedAt !== null) return removed(first.removedAt);
      received = { image: first ?? given, created: first === null };
      if (first === null) {
        if (read === null) throw new Error(`the picture ${hash} was kept and is not`);
        const count = await data.images.count(publisher);
        if (count >= mostImages) {
          return failed([{ code: "IMAGE_REFUSED", path: ["body"], fault: "TOO_MANY", found: `${count} pictures` }]);
        }
        const files = [{ width: 0, format: read.format, bytes: read.kept }, ...read.made];
        await data.images.add(publisher, { ...given, files });
      }
      if (file !== null) await data.images.name(publisher, file, received.image, clock());
      return ok({ value: null, subject: { kind: "IMAGE", name: file ?? hash, before: null, after: null } });
    },
  );
  return written.ok ? ok(received) : written;
}

const removed = (at: Date): Result<never> =>
  failed([{ code: "IMAGE_REFUSED", path: ["body"], fault: "REMOVED", found: utcDay(at) }]);

/** Whether there is nothing to be written for a picture that is here: documents mean it by that name, or no name is asked for. */
async function isNamed({ data }: Deps, publisher: string, file: string | null, hash: string): Promise<boolean> {
  if (file === null) return true;
  const [named] = await data.images.byNames(publisher, [file]);
  return named?.hash === hash;
}
