import { failed, ok, type Result } from "../../domain/problem.js";
import type { Caller } from "../access/actor.js";
import type { Deps } from "../deps.js";
import { write } from "../write.js";

interface RemoveImageInput {
  readonly publisher: string;
  /** SHA-256, hex, of the picture: it stands in its addresses. */
  readonly hash: string;
  readonly idempotencyKey?: string | null | undefined;
}

type RemovedImage = { readonly publisher: string; readonly hash: string };

/**
 * Takes a picture away for good, whatever was published with it: its bytes are deleted, plans are shown without it, and the same
 * picture is not taken again. Who has it in a cache has it for a day at most.
 */
export async function removeImage(
  deps: Deps,
  caller: Caller,
  { publisher, hash, idempotencyKey }: RemoveImageInput,
): Promise<Result<RemovedImage>> {
  return write(
    deps,
    { caller, scope: "PUBLISH", publisher, action: "REMOVE_IMAGE", idempotencyKey, input: { hash } },
    async ({ data, clock }) => {
      if (!(await data.images.remove(publisher, hash, clock()))) {
        return failed([{ code: "UNKNOWN_IMAGE", path: ["input", "hash"], image: hash }]);
      }
      return ok({ value: { publisher, hash }, subject: { kind: "IMAGE", name: hash, before: null, after: null } });
    },
  );
}
