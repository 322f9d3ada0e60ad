import { failed, ok, type Result } from "../../domain/problem.js";
import type { Caller } from "./actor.js";
import type { Deps } from "../deps.js";
import { findOwner } from "./find-owner.js";
import { write } from "../write.js";

interface RevokeInput {
  /** The public part of the token. */
  readonly id: string;
  readonly idempotencyKey?: string | null | undefined;
}

/** Takes a token away for good: the next request that shows it is refused. Answers with its id. */
export async function revokeToken(deps: Deps, caller: Caller, input: RevokeInput): Promise<Result<string>> {
  const { id, idempotencyKey } = input;
  const find = async () => (await deps.data.accessTokens.find(id))?.token.publisher ?? null;
  const publisher = await findOwner(caller.actor, "ADMIN", find);
  return write(
    deps,
    { caller, scope: "ADMIN", publisher, action: "REVOKE_TOKEN", idempotencyKey, input: { id } },
    async ({ data, clock }) => {
      const found = await data.accessTokens.find(id);
      // Of another publisher: the same as none at all.
      if (found === null || found.token.publisher !== publisher) {
        return failed([{ code: "UNKNOWN_TOKEN", path: ["input", "id"], token: id }]);
      }
      await data.accessTokens.revoke(id, clock());
      await data.scheduled.cancelOfToken(id, clock());
      return ok({ value: id, subject: { kind: "TOKEN", name: id, before: null, after: null } });
    },
  );
}
